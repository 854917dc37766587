//! From what was taken to what is shown of the check chosen.

use crate::lights::{Show, Towards};
use crate::limits::{limit, surface_deg};
use plumbmark::decision::Verdict;
use plumbmark::direct::Taken;
use plumbmark::limits::{Basis, Limit};
use plumbmark::parts::{Check, Quantity};

/// What is shown of `check`, by the limits that the gauge was built with. `turned`: the gauge now
/// lies end for end.
#[must_use]
#[inline(never)]
pub fn shown(taken: &Taken, check: Check, turned: bool) -> Show {
    if !taken.placement.checks.contains(&check) {
        return Show::NoReading;
    }
    // A placement's other check is not shown.
    let limit = limit(check);
    let decided = taken.decided_by(&limit, surface_deg(taken.placement.surface));
    match (decided.verdict, decided.measured) {
        (Verdict::Within, _) if is_given(&limit) => Show::Within,
        (Verdict::Within, _) => Show::WithinUsage,
        (Verdict::Beyond, Some(measured)) => {
            let permitted = limit.permitted_deg();
            let side = rises(check, measured.near(permitted) > permitted.1);
            Show::Beyond(side.map(|side| if turned { opposite(side) } else { side }))
        }
        (Verdict::Beyond, None) => Show::Beyond(None),
        (Verdict::NotProven, _) => Show::NotProven,
        (Verdict::None, Some(_)) => Show::NoVerdict,
        (Verdict::None, None) => Show::NoReading,
    }
}

/// Whether a manual or a law stands behind the limit.
fn is_given(limit: &Limit) -> bool {
    matches!(limit.basis, Basis::Manual | Basis::Law)
}

/// The end or side that has to rise where a value is too high, or too low.
fn rises(check: Check, too_high: bool) -> Option<Towards> {
    let (high, low) = match check.quantity() {
        // The port looks away from the face that the gauge lies on: no end of it has to rise.
        Quantity::Elevation if check == Check::HeaterPort => return None,
        Quantity::Elevation => (Towards::Tail, Towards::Head),
        Quantity::OffPlumb => (Towards::Head, Towards::Tail),
        // A roll grows as the gauge's upper long side rises: body y is device −x.
        Quantity::Roll => (Towards::Lower, Towards::Upper),
    };
    Some(if too_high { high } else { low })
}

fn opposite(side: Towards) -> Towards {
    match side {
        Towards::Tail => Towards::Head,
        Towards::Head => Towards::Tail,
        Towards::Upper => Towards::Lower,
        Towards::Lower => Towards::Upper,
    }
}

/// The side of the gauge that is up; `None` where that is its face or its back.
#[must_use]
pub fn upper([x, y, z]: [i16; 3]) -> Option<Towards> {
    let (right, along, out) = (x.unsigned_abs(), y.unsigned_abs(), z.unsigned_abs());
    if out >= right.max(along) {
        None
    } else if along >= right {
        Some(if y > 0 { Towards::Head } else { Towards::Tail })
    } else {
        // Device x points to the lower long side.
        Some(if x > 0 {
            Towards::Lower
        } else {
            Towards::Upper
        })
    }
}
