//! Hours on the battery.

use super::{NONE, exact, judged, near, refusal, value, verdict, work};
use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet::Battery;
use plumbmark::plan::kind::Problem;
use plumbmark::plan::supply::battery::full_h;
use plumbmark::plan::work::Worked;
use proptest::prelude::*;

/// 100 Ah in 20 h, half of it usable, 1.5 A: the worked example.
const EXAMPLE: &[(&str, f64)] = &[
    ("capacity_ah", 100.0),
    ("rated_h", 20.0),
    ("usable", 0.5),
    ("cold", 1.0),
    ("average_a", 1.5),
    ("standby_a", 0.0),
    ("starts", 0.0),
];

fn example(with: &[(&'static str, f64)]) -> Vec<(&'static str, f64)> {
    EXAMPLE.iter().chain(with).copied().collect()
}

/// An invented night.
fn night(with: &[(&'static str, f64)]) -> Vec<(&'static str, f64)> {
    let own = [
        ("capacity_ah", 90.0),
        ("cold", 0.75),
        ("average_a", 1.9),
        ("standby_a", 0.15),
        ("starts", 3.0),
        ("start_a", 9.5),
        ("start_min", 2.5),
        ("after_a", 3.0),
        ("after_min", 4.0),
        ("wanted_h", 8.0),
    ];
    example(&[&own, with].concat())
}

#[test]
fn hours_as_worked_out() {
    // Computed: 100 Ah, half usable, 1.5 A: 33.33 h.
    let worked = exact(Battery, EXAMPLE);
    near(value(Battery, &worked, "lasts_h"), 33.333, 1e-4);
    // Peukert 1.2 at 10 A from 100 Ah in 20 h: 8.706 h.
    near(full_h(10.0, 100.0, 20.0, 1.2), 8.706, 1e-4);
    let heavy = [("usable", 1.0), ("average_a", 10.0), ("peukert", 1.2)];
    let worked = exact(Battery, &example(&heavy));
    near(value(Battery, &worked, "lasts_h"), 8.706, 1e-4);
}

#[test]
fn a_gentle_current_finds_no_more_than_the_label() {
    // At its own current a battery gives its own hours; below it the formula would give more.
    near(full_h(5.0, 100.0, 20.0, 1.3), 20.0, 1e-12);
    near(full_h(1.0, 100.0, 20.0, 1.3), 100.0, 1e-12);
    assert!(full_h(5.001, 100.0, 20.0, 1.3) < 20.0);
}

#[test]
fn starts_and_after_runs_are_counted() {
    let worked = exact(Battery, &night(&[]));
    let of = |name| value(Battery, &worked, name);
    near(of("usable_ah"), 90.0 * 0.5 * 0.75, 1e-12);
    near(of("starts_ah"), 3.0 * 9.5 * 2.5 / 60.0, 1e-12);
    near(of("after_ah"), 3.0 * 3.0 * 4.0 / 60.0, 1e-12);
    // Without an exponent, charge is charge.
    let left = of("usable_ah") - of("starts_ah") - of("after_ah");
    near(of("lasts_h"), left / 2.05, 1e-12);
    near(of("spare_h"), of("lasts_h") - 8.0, 1e-12);
    for name in ["start_a", "start_min", "after_a", "after_min"] {
        let missing = night(&[(name, NONE)]);
        assert_eq!(refusal(Battery, &missing), (name, Problem::Missing));
    }
    // With one, starts take more than their charge.
    let worked = exact(Battery, &night(&[("peukert", 1.25)]));
    assert!(value(Battery, &worked, "lasts_h") < left / 2.05);
}

#[test]
fn too_many_starts_end_below_zero() {
    let many = night(&[("starts", 90.0)]);
    let worked = work(Battery, &many);
    assert!(value(Battery, &worked, "lasts_h") < 0.0);
    let spare = verdict(Battery, &worked, "spare_h", NONE, NONE);
    assert_eq!(spare, Verdict::Beyond);
}

#[test]
fn above_its_own_current_only_an_upper_bound_is_known() {
    // 90 Ah in 20 h: 4.5 A.
    let heavy = |with: &[(&'static str, f64)]| {
        let all = [&[("average_a", 6.0), ("wanted_h", 1.0)], with].concat();
        work(Battery, &night(&all))
    };
    let of = |worked: &Worked, name| verdict(Battery, worked, name, NONE, NONE);
    let unknown = heavy(&[]);
    assert!(value(Battery, &unknown, "lasts_h").is_nan());
    assert!(value(Battery, &unknown, "lasts_at_most_h") > 0.0);
    assert_eq!(of(&unknown, "spare_h"), Verdict::None);
    assert_eq!(of(&unknown, "spare_at_most_h"), Verdict::NotProven);
    let long = heavy(&[("wanted_h", 12.0)]);
    assert_eq!(of(&long, "spare_at_most_h"), Verdict::Beyond);
    let known = heavy(&[("peukert", 1.2)]);
    assert_eq!(of(&known, "spare_h"), Verdict::Within);
    assert_eq!(of(&known, "spare_at_most_h"), Verdict::None);
}

#[test]
fn doing_what_is_told_settles_it() {
    for wanted in [14.0, 16.0, 20.0] {
        let before = work(Battery, &night(&[("wanted_h", wanted)]));
        let told = judged(Battery, &before, "spare_h", NONE, NONE);
        assert_ne!(told.verdict, Verdict::Within, "{wanted}");
        // Fewer hours, or a larger battery that lasts as much longer.
        let fewer = work(Battery, &night(&[("wanted_h", wanted - told.change)]));
        let lasts = value(Battery, &before, "lasts_h");
        let charge = 90.0 + told.change * 2.05 / (0.5 * 0.75);
        let wanted = ("wanted_h", wanted);
        let larger = work(Battery, &night(&[wanted, ("capacity_ah", charge)]));
        near(
            value(Battery, &larger, "lasts_h"),
            lasts + told.change,
            1e-9,
        );
        for after in [fewer, larger] {
            let settled = verdict(Battery, &after, "spare_h", NONE, NONE);
            assert_eq!(settled, Verdict::Within, "{wanted:?}");
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn colder_or_busier_never_lasts_longer(
        field in 0..4usize, less in 0.5..1.0f64, running in 0.5..12.0f64, exponent in 1.0..1.5f64,
    ) {
        let base = [("average_a", running), ("peukert", exponent)];
        let first = value(Battery, &exact(Battery, &night(&base)), "lasts_h");
        let worse = [
            ("cold", 0.75 * less),
            ("usable", 0.5 * less),
            ("standby_a", 0.15 / less),
            ("start_min", 2.5 / less),
        ][field];
        let second = exact(Battery, &night(&[&base[..], &[worse]].concat()));
        prop_assert!(value(Battery, &second, "lasts_h") <= first + 1e-9);
    }

    #[test]
    fn an_exponent_only_takes(running in 0.5..20.0f64, exponent in 1.0..1.6f64) {
        let base = ("average_a", running);
        let plain = exact(Battery, &night(&[base]));
        let with = exact(Battery, &night(&[base, ("peukert", exponent)]));
        let with = value(Battery, &with, "lasts_h");
        let bound = value(Battery, &plain, "lasts_at_most_h");
        let plain = value(Battery, &plain, "lasts_h");
        // One of both is told: above the label's current only the bound.
        prop_assert!(with <= plain.max(bound) + 1e-9);
        prop_assert_eq!(bound.is_nan(), running + 0.15 <= 4.5);
    }
}
