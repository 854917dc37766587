//! Decisions against ILAC-G8:09/2019, JCGM 106 and ISO 14253-1; probabilities against scipy.

use plumbmark::decision::{Measured, Verdict, Why, decide, margin_deg};
use plumbmark::holds::Surface;
use plumbmark::limits::{Basis, Limit, LimitSet};
use plumbmark::parts::{Check, Quantity};
use plumbmark_tests::{Table, Worst};

/// Achieved 4.1e-5, where a narrow rectangle is left out.
const PROBABILITY_TOLERANCE: f64 = 8e-5;

fn measured(value_deg: f32, u_deg: f32) -> Measured {
    Measured {
        quantity: Quantity::Elevation,
        value_deg,
        u_deg,
        combined_deg: u_deg / 2.0,
        rectangle_deg: 0.0,
    }
}

fn at_most(high: f32) -> Limit {
    Limit {
        high_deg: Some(high),
        ..Limit::not_entered(Check::PipeFall)
    }
}

/// ILAC-G8:09/2019 §4.2.3 with TL = 5, U = 1 (u = 0.5), and its conformance probabilities.
#[test]
fn the_table_of_ilac_g8() {
    for (y, verdict, p) in [
        (3.9, Verdict::Within, 0.9861),
        (4.1, Verdict::NotProven, 0.9641),
        (5.0, Verdict::NotProven, 0.5),
        (5.9, Verdict::NotProven, 0.0359),
        (6.1, Verdict::Beyond, 0.0139),
    ] {
        let m = measured(y, 1.0);
        assert_eq!(decide(&m, &at_most(5.0)), (verdict, None), "{y}");
        let got = m.probability((f32::NEG_INFINITY, 5.0));
        approx::assert_abs_diff_eq!(f64::from(got), p, epsilon = 1e-4);
    }
}

/// JCGM 106: one-sided factors at which conformance is 90, 95, 99, 99.9 %.
#[test]
fn the_factors_of_jcgm_106() {
    for (factor, p) in [
        (1.2816, 0.90),
        (1.6449, 0.95),
        (2.3263, 0.99),
        (3.0902, 0.999),
    ] {
        let m = Measured {
            combined_deg: 1.0,
            ..measured(5.0 - factor, 2.0)
        };
        let got = f64::from(m.probability((f32::NEG_INFINITY, 5.0)));
        approx::assert_abs_diff_eq!(got, p, epsilon = 2e-5);
    }
}

#[test]
fn conformance_probabilities_as_by_scipy() {
    let mut worst = Worst::new("probability");
    for row in Table::open("probability.csv", 300).rows() {
        let m = Measured {
            combined_deg: row.get("combined") as f32,
            rectangle_deg: row.get("rectangle") as f32,
            ..measured(row.get("value") as f32, 1.0)
        };
        let got = m.probability((row.get("low") as f32, row.get("high") as f32));
        worst.see(f64::from(got) - row.get("p"), PROBABILITY_TOLERANCE);
    }
}

/// ISO 14253-1: inside only when y + U is inside, outside only when y − U is outside; the limit
/// itself belongs to the permitted side.
#[test]
fn an_interval_that_touches_the_limit_is_within() {
    assert_eq!(
        decide(&measured(4.0, 1.0), &at_most(5.0)).0,
        Verdict::Within
    );
    assert_eq!(
        decide(&measured(6.0, 1.0), &at_most(5.0)).0,
        Verdict::NotProven
    );
    let both = Limit {
        low_deg: Some(-5.0),
        ..at_most(5.0)
    };
    assert_eq!(decide(&measured(0.0, 5.0), &both).0, Verdict::Within);
    assert_eq!(decide(&measured(0.0, 5.1), &both).0, Verdict::NotProven);
    assert_eq!(decide(&measured(-7.0, 1.5), &both).0, Verdict::Beyond);
}

#[test]
fn an_interval_ends_where_the_quantity_ends() {
    // No elevation is above 90°: a limit there is never in the way.
    let limit = Limit {
        low_deg: Some(15.0),
        high_deg: Some(90.0),
        ..at_most(90.0)
    };
    assert_eq!(decide(&measured(89.5, 1.2), &limit).0, Verdict::Within);
    // Nor is room needed to it, and what is left is left to the other end.
    assert_eq!(
        margin_deg(Verdict::Within, &measured(60.0, 1.0), &limit),
        Some(44.0)
    );
    let down = Limit {
        low_deg: Some(-90.0),
        ..at_most(0.0)
    };
    assert_eq!(
        margin_deg(Verdict::Within, &measured(-89.5, 1.2), &down),
        Some(88.3)
    );
    assert!(measured(-89.5, 1.2).probability(down.permitted_deg()) > 0.999);
    let any = Limit {
        low_deg: Some(-90.0),
        ..at_most(90.0)
    };
    assert_eq!(decide(&measured(12.0, 1.0), &any).0, Verdict::Within);
    assert_eq!(
        margin_deg(Verdict::Within, &measured(12.0, 1.0), &any),
        None
    );
    // +179° and −181° are one roll.
    let roll = |value_deg| Measured {
        quantity: Quantity::Roll,
        ..measured(value_deg, 2.0)
    };
    let upside_down = Limit {
        low_deg: Some(150.0),
        high_deg: Some(180.0),
        ..Limit::not_entered(Check::PumpRoll)
    };
    assert_eq!(decide(&roll(-179.0), &upside_down).0, Verdict::NotProven);
    assert_eq!(decide(&roll(170.0), &upside_down).0, Verdict::Within);
    assert_eq!(decide(&roll(-170.0), &upside_down).0, Verdict::Beyond);
}

#[test]
fn margins_are_what_is_left_after_the_uncertainty() {
    let limit = at_most(5.0);
    let m = |y| {
        margin_deg(
            decide(&measured(y, 1.0), &limit).0,
            &measured(y, 1.0),
            &limit,
        )
    };
    assert_eq!(m(2.5), Some(1.5));
    assert_eq!(m(7.5), Some(-1.5));
    assert_eq!(m(5.5), None);
}

#[test]
fn what_the_manual_must_say_is_not_made_up() {
    let nothing = Limit::not_entered(Check::PipeFall);
    let (verdict, why) = decide(&measured(-40.0, 1.0), &nothing);
    assert_eq!(
        (verdict, why),
        (Verdict::NotProven, Some(Why::LimitNotEntered))
    );

    // A level outlet that "may not look up": at the limit only an allowance can decide.
    let level = Limit {
        at_limit_allowed: true,
        ..at_most(0.0)
    };
    let open = (Verdict::NotProven, Some(Why::AllowanceNotEntered));
    assert_eq!(decide(&measured(0.3, 1.0), &level), open);
    assert_eq!(decide(&measured(-3.0, 1.0), &level).0, Verdict::Within);
    assert_eq!(decide(&measured(3.0, 1.0), &level).0, Verdict::Beyond);
    let allowed = Limit {
        allowance_deg: Some(2.0),
        ..level
    };
    assert_eq!(
        decide(&measured(0.3, 1.0), &allowed),
        (Verdict::Within, None)
    );
    assert_eq!(
        decide(&measured(2.3, 1.0), &allowed),
        (Verdict::NotProven, None)
    );
}

#[test]
fn the_examples_are_trade_usage_and_say_so() {
    let set = LimitSet::trade_usage();
    set.validate().unwrap();
    assert_eq!(set.lines.len(), Check::ALL.len());
    for line in &set.lines {
        assert_eq!(line.basis, Basis::TradeUsage);
        assert_eq!(line.source, "common practice, no source");
        assert_eq!(line.allowance_deg, None, "an allowance is the manual's");
    }
    let blank = LimitSet::not_entered();
    blank.validate().unwrap();
    assert!(blank.lines.iter().all(|l| !l.is_entered()));
}

#[test]
fn limit_sets_go_out_and_in_as_json_and_bad_ones_are_refused_by_field() {
    let set = LimitSet::trade_usage();
    let json = serde_json::to_string(&set).unwrap();
    assert_eq!(serde_json::from_str::<LimitSet>(&json).unwrap(), set);
    let message = |change: &dyn Fn(&mut LimitSet)| {
        let mut bad = set.clone();
        change(&mut bad);
        bad.validate().unwrap_err().to_string()
    };
    let starts = |text: String, start: &str| assert!(text.starts_with(start), "{text}");
    starts(
        message(&|s| s.lines[2].low_deg = Some(f32::NAN)),
        "pump_outlet.low_deg: ",
    );
    starts(
        message(&|s| s.lines[2].low_deg = Some(91.0)),
        "pump_outlet.low_deg: ",
    );
    starts(
        message(&|s| s.lines[2].high_deg = Some(10.0)),
        "pump_outlet.high_deg: ",
    );
    starts(
        message(&|s| s.lines[3].low_deg = None),
        "pump_roll.high_deg: ",
    );
    starts(
        message(&|s| s.lines[4].preferred_high_deg = Some(95.0)),
        "filter_upright.preferred_low_deg: ",
    );
    starts(
        message(&|s| s.lines[1].allowance_deg = Some(1.0)),
        "heater_outlet.allowance_deg: ",
    );
    starts(
        message(&|s| {
            s.lines[5].basis = Basis::Manual;
            s.lines[5].source.clear();
        }),
        "pipe_fall.source: ",
    );
    starts(
        message(&|s| s.lines[0].length_mm = Some(0.0)),
        "heater_port.length_mm: ",
    );
    starts(
        message(&|s| {
            let l = s.lines[0].clone();
            s.lines[1] = l;
        }),
        "heater_port.check: ",
    );
    starts(
        message(&|s| s.surfaces[0].hold_deg = 0.0),
        "metal_face.hold_deg: ",
    );
    starts(message(&|s| s.format.clear()), "format: ");
    starts(message(&|s| s.version = 2), "version: ");
    let unknown = json.replace("\"name\"", "\"surprise\":1,\"name\"");
    assert!(serde_json::from_str::<LimitSet>(&unknown).is_err());
}

/// The names in messages are those in JSON.
#[test]
fn names_of_lines_are_those_of_the_file() {
    for surface in Surface::ALL {
        let json = serde_json::to_string(&surface).unwrap();
        assert_eq!(json, format!("\"{}\"", surface.name()));
    }
    for check in Check::ALL {
        let json = serde_json::to_string(&check).unwrap();
        assert_eq!(json, format!("\"{}\"", check.name()));
    }
}
