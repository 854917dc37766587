//! What is measured at the first start.

use crate::{NONE, near, told, u, value, verdict};
use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::kind::{Problem, Refusal};
use plumbmark::plan::start::started::resistance_mohm;
use proptest::prelude::*;

const STARTED: Sheet = Sheet::Started;

const READ: [(&str, f64); 13] = [
    ("battery_glow_v", 12.4),
    ("heater_glow_v", 11.9),
    ("glow_a", 9.6),
    ("battery_run_v", 12.6),
    ("heater_run_v", 12.5),
    ("run_a", 2.1),
    ("low_a", 0.9),
    ("intake_celsius", 12.0),
    ("outlet_celsius", 78.0),
    ("outlet_low_celsius", 55.0),
    ("flame_min", 2.5),
    ("starts", 2.0),
    ("after_run_min", 3.2),
];

#[test]
fn readings_become_a_baseline() {
    let worked = STARTED.work(&told(STARTED, &READ), &[]).unwrap();
    let value = |name| value(STARTED, &worked, name);
    near(value("drop_glow_v"), 0.5, 1e-12);
    near(value("drop_run_v"), 0.1, 1e-9);
    // Ohm: 0.5 V at 9.6 A are 52.083 mΩ.
    near(value("cable_mohm"), 52.083, 1e-4);
    near(resistance_mohm(0.5, 10.0), 50.0, 1e-12);
    assert_eq!(value("rise_kelvin"), 66.0);
    // What is read and held against nothing is in the baseline all the same.
    for (name, read) in READ.iter().filter(|(name, _)| !name.starts_with("heater")) {
        assert_eq!(value(name), *read, "{name}");
    }
    // Two rectangles of 0.02 V + 0.5 % (JCGM 100 §4.3.7).
    let halves = [0.02 + 0.005 * 12.4, 0.02 + 0.005 * 11.9f64];
    let want = 2.0 * ((halves[0].powi(2) + halves[1].powi(2)) / 3.0).sqrt();
    near(u(STARTED, &worked, "drop_glow_v"), want, 1e-9);
}

#[test]
fn each_is_held_against_its_limit() {
    let verdicts = |but: &[(&str, f64)]| {
        let read: Vec<_> = READ.iter().chain(but).copied().collect();
        let worked = STARTED.work(&told(STARTED, &read), &[]).unwrap();
        let of = |name, low, high| verdict(STARTED, &worked, name, low, high);
        [
            of("heater_glow_v", 11.0, NONE),
            of("heater_run_v", 10.8, 15.5),
            of("drop_glow_v", NONE, 0.8),
            of("outlet_celsius", NONE, 95.0),
            of("outlet_low_celsius", NONE, 95.0),
            of("starts", NONE, 3.0),
            of("after_run_min", 2.0, 5.0),
        ]
    };
    assert_eq!(verdicts(&[]), [Verdict::Within; 7]);
    let read = verdicts(&[
        ("heater_glow_v", 10.5),
        ("outlet_low_celsius", 94.0),
        ("starts", 4.0),
    ]);
    assert_eq!(read[0], Verdict::Beyond);
    assert_eq!(read[2], Verdict::Beyond);
    assert_eq!(read[4], Verdict::NotProven);
    assert_eq!(read[5], Verdict::Beyond);
    // Switched off at the battery too early.
    assert_eq!(verdicts(&[("after_run_min", 1.0)])[6], Verdict::Beyond);
    assert_eq!(verdicts(&[("heater_glow_v", NONE)])[0], Verdict::None);
    // The manual was not asked.
    let worked = STARTED.work(&told(STARTED, &READ), &[]).unwrap();
    assert_eq!(
        verdict(STARTED, &worked, "outlet_celsius", NONE, NONE),
        Verdict::NotProven
    );
}

#[test]
fn more_at_the_heater_than_at_the_battery_was_not_read_at_one_moment() {
    for (name, place) in [("heater_glow_v", 1), ("heater_run_v", 4)] {
        let read: Vec<_> = READ.iter().chain(&[(name, 13.4)]).copied().collect();
        let refused = STARTED.work(&told(STARTED, &read), &[]).unwrap_err();
        assert_eq!(refused, Refusal::at(place, Problem::Contradiction));
    }
    // Two voltmeters' errors apart is no contradiction.
    let read: Vec<_> = READ
        .iter()
        .chain(&[("heater_run_v", 12.65)])
        .copied()
        .collect();
    assert!(STARTED.work(&told(STARTED, &read), &[]).is_ok());
    let read: Vec<_> = READ.iter().chain(&[("starts", 1.5)]).copied().collect();
    let refused = STARTED.work(&told(STARTED, &read), &[]).unwrap_err();
    assert_eq!(refused, Refusal::at(11, Problem::NotWhole));
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn doing_what_is_told_settles_it(volts in 9.0..12.0f64, low in 10.0..11.5f64) {
        let answer = |volts: f64| {
            let worked = STARTED.work(&told(STARTED, &[("heater_glow_v", volts)]), &[]).unwrap();
            worked.judged(&worked.check(0).unwrap(), low, NONE).unwrap()
        };
        let before = answer(volts);
        if before.verdict != Verdict::Within {
            prop_assert_eq!(answer(volts + before.change).verdict, Verdict::Within);
        }
    }
}
