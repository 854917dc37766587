//! The steps: nothing is passed over in silence, and what rests on a step left out is not proven.

use crate::{NONE, named, value};
use plumbmark::plan::Sheet;
use plumbmark::plan::work::Worked;
use proptest::prelude::*;

const STEPS: Sheet = Sheet::FirstStart;
const OPEN: f64 = 0.0;
const DONE: f64 = 1.0;
const SKIPPED: f64 = 2.0;
const NOT_PROVEN: f64 = 3.0;
/// Done before a stop.
const BEFORE: f64 = 3.0;
const WITHIN: f64 = 0.0;
const BEYOND: f64 = 1.0;
const UNPROVEN: f64 = 2.0;
const RUNNING: f64 = 1.0;
const ENDED: f64 = 2.0;
const CLOCK_SET: f64 = 3.0;

const NAMES: [&str; 17] = [
    "extinguisher",
    "outdoors",
    "meter",
    "closed",
    "leaks_cold",
    "prime",
    "ignition",
    "voltage",
    "outlet",
    "low",
    "co_test",
    "leaks_hot",
    "after_run",
    "torques",
    "driver",
    "filler",
    "alarms",
];

/// Everything done and borne out but for `but`; alarms by their days left.
fn work(but: &[(&str, f64)], alarms: &[f64]) -> Worked {
    let borne = [
        ("prime_timer", ENDED),
        ("co_timer", ENDED),
        ("after_run_timer", ENDED),
        ("start_voltage", WITHIN),
        ("outlet_air", WITHIN),
        ("after_run_time", WITHIN),
        ("co_rise", UNPROVEN),
        ("co_time", WITHIN),
    ];
    let done = NAMES.map(|name| (name, DONE));
    let all: Vec<_> = done.iter().chain(&borne).chain(but).copied().collect();
    let mut x = named(STEPS.names().inputs, &all);
    x.extend(alarms);
    STEPS.work(&x, &[]).unwrap()
}

/// The steps that are worth something else than done.
fn but_for(worked: &Worked) -> Vec<(&'static str, f64)> {
    let all = NAMES.map(|name| (name, value(STEPS, worked, name)));
    all.into_iter()
        .filter(|(_, worth)| *worth != DONE)
        .collect()
}

fn not_proven(names: &[&'static str]) -> Vec<(&'static str, f64)> {
    names.iter().map(|name| (*name, NOT_PROVEN)).collect()
}

#[test]
fn the_order_is_that_of_the_work() {
    assert_eq!(STEPS.names().inputs[..17], NAMES);
    assert_eq!(STEPS.names().outputs[..17], NAMES);
    let nothing = NAMES.map(|name| (name, OPEN));
    for (i, name) in NAMES.iter().enumerate() {
        let mut told = nothing;
        for step in told.iter_mut().take(i) {
            step.1 = DONE;
        }
        assert_eq!(
            value(STEPS, &work(&told, &[400.0]), "next"),
            i as f64,
            "{name}"
        );
    }
    let worked = work(&[], &[400.0]);
    assert_eq!(but_for(&worked), []);
    assert!(value(STEPS, &worked, "next").is_nan());
    assert_eq!(value(STEPS, &work(&nothing, &[]), "to_do"), 17.0);
}

#[test]
fn what_rests_on_a_skipped_step_is_not_proven() {
    // Written from the words of the work: what would be worth nothing without it.
    let rests: [(&str, &[&str]); 17] = [
        ("extinguisher", &[]),
        ("outdoors", &["meter", "co_test"]),
        ("meter", &["co_test"]),
        ("closed", &["co_test"]),
        (
            "leaks_cold",
            &[
                "ignition",
                "voltage",
                "outlet",
                "low",
                "co_test",
                "leaks_hot",
                "after_run",
                "torques",
            ],
        ),
        (
            "prime",
            &[
                "ignition",
                "voltage",
                "outlet",
                "low",
                "co_test",
                "leaks_hot",
                "after_run",
                "torques",
            ],
        ),
        (
            "ignition",
            &[
                "voltage",
                "outlet",
                "low",
                "co_test",
                "leaks_hot",
                "after_run",
                "torques",
            ],
        ),
        ("voltage", &[]),
        ("outlet", &[]),
        ("low", &["co_test"]),
        ("co_test", &[]),
        ("leaks_hot", &[]),
        ("after_run", &["torques"]),
        ("torques", &[]),
        ("driver", &[]),
        ("filler", &[]),
        ("alarms", &[]),
    ];
    for (name, unproven) in rests {
        for told in [SKIPPED, OPEN] {
            let worked = work(&[(name, told)], &[400.0]);
            let mut want = vec![(name, told)];
            want.extend(not_proven(unproven));
            want.sort_by_key(|(n, _)| NAMES.iter().position(|m| m == n));
            assert_eq!(but_for(&worked), want);
            assert_eq!(value(STEPS, &worked, "not_proven"), unproven.len() as f64);
            let skipped = f64::from(u8::from(told == SKIPPED));
            assert_eq!(value(STEPS, &worked, "skipped"), skipped);
        }
    }
}

#[test]
fn time_readings_and_dates_must_bear_it_out() {
    let one = |name: &str, told: f64| but_for(&work(&[(name, told)], &[400.0]));
    for told in [RUNNING, CLOCK_SET] {
        assert_eq!(one("prime_timer", told)[0], ("prime", NOT_PROVEN));
        assert_eq!(one("co_timer", told), not_proven(&["co_test"]));
        assert_eq!(
            one("after_run_timer", told),
            not_proven(&["after_run", "torques"])
        );
    }
    // A watch may have been used instead.
    for timer in ["prime_timer", "co_timer", "after_run_timer"] {
        assert_eq!(one(timer, 0.0), []);
    }
    for told in [BEYOND, UNPROVEN, NONE] {
        assert_eq!(one("co_time", told), not_proven(&["co_test"]));
        assert_eq!(one("start_voltage", told), not_proven(&["voltage"]));
        assert_eq!(one("outlet_air", told), not_proven(&["outlet"]));
        assert_eq!(
            one("after_run_time", told),
            not_proven(&["after_run", "torques"])
        );
    }
    for told in [BEYOND, WITHIN, NONE] {
        assert_eq!(one("co_rise", told), not_proven(&["co_test"]));
    }
    for dates in [&[][..], &[NONE], &[400.0, NONE], &[400.0, -1.0], &[0.0]] {
        assert_eq!(
            but_for(&work(&[], dates)),
            not_proven(&["alarms"]),
            "{dates:?}"
        );
    }
    let worked = work(&[], &[NONE, -3.0, 0.0, 1.0, 3650.0, 63_000.0, -740_000.0]);
    let states: Vec<_> = (0..)
        .map_while(|row| worked.result(21 + row))
        .map(|g| g.value)
        .collect();
    assert_eq!(states, [0.0, 1.0, 1.0, 2.0, 2.0, 0.0, 1.0]);
}

#[test]
fn a_stop_undoes_what_came_before_it() {
    let before = NAMES.map(|name| (name, BEFORE));
    let worked = work(&before, &[400.0]);
    assert_eq!(
        but_for(&worked)
            .iter()
            .map(|(name, _)| *name)
            .collect::<Vec<_>>(),
        NAMES[1..14]
    );
    assert_eq!(value(STEPS, &worked, "to_do"), 13.0);
    assert_eq!(value(STEPS, &worked, "next"), 1.0);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// Doing less, or less well, never makes any step worth more.
    #[test]
    fn leaving_out_never_helps(told in prop::collection::vec(0..4u8, 17), which in 0..17usize) {
        let steps = |told: &[u8]| -> Vec<_> {
            NAMES.iter().zip(told).map(|(name, told)| (*name, f64::from(*told))).collect()
        };
        let done = |worked: &Worked| NAMES.map(|name| value(STEPS, worked, name) == DONE);
        let mut less = told.clone();
        less[which] = 2;
        let (before, after) = (work(&steps(&told), &[9.0]), work(&steps(&less), &[9.0]));
        for (before, after) in done(&before).iter().zip(done(&after)) {
            prop_assert!(*before || !after);
        }
        // Each step stands somewhere.
        let count = |name| value(STEPS, &before, name);
        let done = done(&before).iter().filter(|d| **d).count() as f64;
        let open = told.iter().filter(|t| **t == 0).count() as f64;
        prop_assert_eq!(done + open + count("skipped") + count("not_proven"), 17.0);
    }
}
