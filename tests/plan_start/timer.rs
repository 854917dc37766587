//! Timers: a clock that was set proves nothing.

use crate::{NONE, told, value};
use plumbmark::plan::Sheet;
use proptest::prelude::*;

const TIMER: Sheet = Sheet::Timer;
const RUNNING: f64 = 1.0;
const ENDED: f64 = 2.0;
const CLOCK_SET: f64 = 3.0;

/// 90 minutes, started 10 minutes ago on this page, always in sight.
const NOW: [(&str, f64); 8] = [
    ("due_s", 5400.0),
    ("wall_s", 600.0),
    ("page_wall_s", 600.0),
    ("page_steady_s", 600.0),
    ("unseen_s", 0.0),
    ("hidden", 0.0),
    ("clock", 0.0),
    ("seen", 0.0),
];

/// Left, state, clock, time on the wall clock alone.
fn look(but: &[(&str, f64)]) -> [f64; 4] {
    let now: Vec<_> = NOW.iter().chain(but).copied().collect();
    let worked = TIMER.work(&told(TIMER, &now), &[]).unwrap();
    ["left_s", "state", "clock", "alone_s"].map(|name| value(TIMER, &worked, name))
}

#[test]
fn it_runs_and_ends() {
    assert_eq!(look(&[]), [4800.0, RUNNING, 0.0, 0.0]);
    let late = |s| [("wall_s", s), ("page_wall_s", s), ("page_steady_s", s)];
    assert_eq!(look(&late(5399.5))[1], RUNNING);
    assert_eq!(look(&late(5400.0))[..2], [0.0, ENDED]);
    // Being seen early is no end of a time that is due.
    assert_eq!(look(&[("seen", 1.0)])[1], RUNNING);
    // Without one, being seen is.
    let [left, state, ..] = look(&[("due_s", NONE)]);
    assert!(left.is_nan() && state == RUNNING);
    assert_eq!(look(&[("due_s", NONE), ("seen", 1.0)])[1], ENDED);
}

#[test]
fn a_clock_that_was_set_is_noticed() {
    // Set back while in sight or out of it; across a reload; before the start.
    for but in [
        [("page_wall_s", 590.0), ("hidden", 0.0)],
        [("page_wall_s", 590.0), ("hidden", 1.0)],
        [("unseen_s", -30.0), ("hidden", 0.0)],
        [("wall_s", -5.0), ("hidden", 0.0)],
    ] {
        assert_eq!(look(&but)[1..3], [CLOCK_SET, 1.0], "{but:?}");
    }
    // Put on while in sight.
    let on = look(&[("page_wall_s", 4200.0), ("wall_s", 6000.0)]);
    assert_eq!(on[1..3], [CLOCK_SET, 2.0]);
    // What was found once stays, however well the clocks agree now.
    for clock in [1.0, 2.0] {
        assert_eq!(look(&[("clock", clock)])[1..3], [CLOCK_SET, clock]);
    }
    // Two seconds and a thousandth are what a phone does by itself.
    assert_eq!(look(&[("page_wall_s", 602.5)])[1], RUNNING);
    assert_eq!(look(&[("page_wall_s", 597.5)])[1], RUNNING);
    assert_eq!(look(&[("page_wall_s", 602.7)])[1], CLOCK_SET);
}

#[test]
fn sleep_and_reload_rest_on_the_wall_clock_and_say_so() {
    // The steady clock stood still for 50 minutes in a locked phone.
    let slept = [("wall_s", 3600.0), ("page_wall_s", 3600.0), ("hidden", 1.0)];
    assert_eq!(look(&slept), [1800.0, RUNNING, 0.0, 3000.0]);
    // Reloaded after 20 minutes, 10 minutes ago.
    let reloaded = [("wall_s", 1800.0), ("unseen_s", 1200.0)];
    assert_eq!(look(&reloaded), [3600.0, RUNNING, 0.0, 1200.0]);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// By random lives of a page: a clock that is set by more than it may drift is always noticed
    /// while in sight, and one that is set back even out of it.
    #[test]
    fn every_set_clock_is_noticed(
        life in 0.0..20_000.0f64, set in prop_oneof![-9000.0..-3.0f64, 3.0..9000.0f64],
        before in 0.0..9000.0f64, hidden in 0..2u8,
    ) {
        let noticed = set.abs() > 2.0 + 0.001 * life && (set < 0.0 || hidden == 0);
        let now = [
            ("wall_s", before + life + set), ("page_wall_s", life + set), ("page_steady_s", life),
            ("unseen_s", before), ("hidden", f64::from(hidden)),
        ];
        let [_, state, clock, alone] = look(&now);
        prop_assert!(!noticed || state == CLOCK_SET);
        prop_assert!(state != CLOCK_SET || clock > 0.0);
        prop_assert!(alone >= before);
    }
}
