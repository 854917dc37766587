//! The limits built in, and how the gauge lies for each check.

use plumbmark::holds::{Hold, Surface};
use plumbmark::limits::{Basis, LimitSet};
use plumbmark::parts::Check;
use plumbmark_gauge::limits::{limit, limits, placement, surface_deg};

/// Without a limit file, core's examples: number for number, and named as what they are.
#[test]
fn they_are_cores_examples() {
    let examples = LimitSet::trade_usage();
    for check in Check::ALL {
        let (mine, cores) = (limit(check), examples.limit(check));
        assert_eq!(mine.check, check);
        assert_eq!(mine.permitted_deg(), cores.permitted_deg());
        assert_eq!(
            (mine.low_deg, mine.high_deg),
            (cores.low_deg, cores.high_deg)
        );
        assert_eq!(mine.at_limit_allowed, cores.at_limit_allowed);
        assert_eq!(mine.allowance_deg, cores.allowance_deg);
        assert_eq!(mine.basis, Basis::TradeUsage);
    }
    for surface in Surface::ALL {
        assert_eq!(surface_deg(surface), examples.surface_deg(surface));
    }
}

#[test]
fn each_check_has_a_placement_that_gives_it() {
    for check in Check::ALL {
        let placement = placement(check);
        assert_eq!(placement.part, Some(check.part()));
        assert_eq!(placement.hold, Hold::Back);
        assert!(placement.checks.contains(&check), "{check:?}");
        let limits = limits(&placement);
        for (of, limit) in placement.checks.iter().zip(limits) {
            assert_eq!(limit.check, *of);
        }
    }
}
