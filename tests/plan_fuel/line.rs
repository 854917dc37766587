//! What is told of the line, priming, and what holds for any number.

use super::{NONE, checks, line, near, refusal, told, value, verdict, work};
use plumbmark::decision::{Verdict, Why};
use plumbmark::plan::Sheet;
use plumbmark::plan::kind::Problem;
use proptest::prelude::*;

#[test]
fn absurd_numbers_are_refused() {
    use plumbmark::plan::kind::Slip;
    let run = |named: &[(&str, f64)]| refusal(Sheet::FuelRun, named);
    assert_eq!(
        run(&[("suction_length_m", 40_000.0)]).1,
        Problem::OutOfRange
    );
    assert_eq!(
        run(&[("suction_length_m", 1400.0)]).1,
        Problem::OtherUnit(Slip::Millimetres)
    );
    assert_eq!(
        run(&[("suction_bore_mm", 0.03)]).1,
        Problem::OtherUnit(Slip::Inches)
    );
    assert_eq!(run(&[("suction_lift_mm", 9000.0)]).1, Problem::OutOfRange);
    assert_eq!(
        refusal(Sheet::FuelPressure, &line(&[("stroke_ml", 22.0)])).1,
        Problem::OutOfRange
    );
    assert_eq!(
        refusal(Sheet::FuelPressure, &line(&[("fuel", 2.0)])),
        ("fuel", Problem::OutOfRange)
    );
}

#[test]
fn a_bore_is_what_the_manual_lists() {
    let sheet = Sheet::FuelRun;
    let answer = |bore| {
        let worked = work(sheet, &[("suction_bore_mm", bore)]);
        verdict(sheet, &worked, "suction_bore_mm", 2.0, 2.0)
    };
    assert_eq!(answer(2.0), Verdict::Within);
    // A narrower bore holds bubbles even better, and is not listed.
    assert_eq!(answer(1.5), Verdict::Beyond);
    assert_eq!(answer(3.0), Verdict::Beyond);
    // A gauged bore has a half-width, and is then not proven to be the listed one.
    let gauged = sheet
        .work(&told(sheet, &[("suction_bore_mm", 2.0)]), &[0.1])
        .unwrap();
    assert_eq!(
        verdict(sheet, &gauged, "suction_bore_mm", 2.0, 2.0),
        Verdict::NotProven
    );
    // Nothing entered, nothing judged.
    let empty = work(sheet, &[("suction_bore_mm", 2.0)]);
    let check = empty.check(0).unwrap();
    let exact = empty.judged(&check, 2.0, 2.0).unwrap();
    assert_eq!((exact.verdict, exact.probability), (Verdict::Within, 1.0));
    assert_eq!(empty.judged(&check, 2.5, 2.5).unwrap().probability, 0.0);
    let judged = empty.judged(&check, NONE, NONE).unwrap();
    assert_eq!(judged.why, Some(Why::LimitNotEntered));
    assert_eq!(
        verdict(sheet, &empty, "suction_length_m", NONE, 2.0),
        Verdict::None
    );
}

#[test]
fn priming_is_never_proven_short_enough() {
    let sheet = Sheet::Prime;
    let long = &[
        ("suction_bore_mm", 2.0),
        ("suction_length_m", 1.4),
        ("pressure_bore_mm", 2.0),
        ("pressure_length_m", 3.1),
        ("stroke_ml", 0.03),
        ("stroke_hz", 2.0),
        ("start_s", 90.0),
        ("starts_made", 2.0),
    ];
    let worked = work(sheet, long);
    // π/4·2²·4.5 m = 14.137 mL at 0.06 mL/s.
    near(value(sheet, &worked, "prime_s"), 235.62, 1e-4);
    near(value(sheet, &worked, "starts_worth"), 2.618, 1e-3);
    let of = |name, high| verdict(sheet, &worked, name, NONE, high);
    assert_eq!(of("starts_worth", 20.0), Verdict::NotProven);
    assert_eq!(of("starts_worth", 2.0), Verdict::Beyond);
    // Starts made are counted: the manual's number is the last that may be made.
    assert_eq!(of("starts_made", 2.0), Verdict::Within);
    assert_eq!(of("starts_made", 1.0), Verdict::Beyond);
}

#[test]
fn doing_what_is_told_settles_it() {
    let cases = [
        (Sheet::FuelRun, "suction_length_m", 2.4, NONE, 1.0),
        (Sheet::FuelRun, "suction_lift_mm", 900.0, NONE, 500.0),
        (Sheet::FuelRun, "pressure_length_m", 6.05, NONE, 6.0),
        (Sheet::FuelRun, "fuel_to_hot_mm", 20.0, 60.0, NONE),
        (Sheet::FuelRun, "pump_air_celsius", 60.0, NONE, 45.0),
    ];
    for (sheet, name, first, low, high) in cases {
        let judged = |x: f64| {
            let worked = work(sheet, &[(name, x)]);
            let names = sheet.names().outputs;
            let check = checks(&worked).find(|c| names[c.output] == name).unwrap();
            worked.judged(&check, low, high).unwrap()
        };
        let before = judged(first);
        assert_ne!(before.verdict, Verdict::Within, "{name}");
        let after = judged(first + before.change).verdict;
        assert_eq!(after, Verdict::Within, "{name}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_number_panics(
        x in prop::collection::vec(prop_oneof![
            any::<f64>(), -10.0..500.0f64, Just(f64::NAN), Just(0.0)
        ], 20),
    ) {
        for sheet in Sheet::ALL {
            let n = sheet.form().inputs.len();
            if let Ok(worked) = sheet.work(x.get(..n).unwrap_or(&x), &x) {
                for check in checks(&worked) {
                    prop_assert!(worked.judged(&check, NONE, 10.0).is_some());
                }
            }
        }
    }
}
