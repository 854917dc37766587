//! What the cable costs, against worked values.

use super::{NONE, code, exact, given, judged, near, refusal, told, value, verdict, work};
use plumbmark::decision::{Verdict, Why};
use plumbmark::plan::Sheet::Cable;
use plumbmark::plan::kind::{Problem, Slip};
use plumbmark::plan::supply::conductor::Series;
use proptest::prelude::*;

/// 5 m out and back at 10 A from 12 V: the worked example, joints left out of it.
fn example(mm2: f64, celsius: f64) -> Vec<(&'static str, f64)> {
    vec![
        ("out_m", 5.0),
        ("back_by", 0.0),
        ("back_m", 5.0),
        ("conductor", code(Series::Area, mm2)),
        ("conductor_celsius", celsius),
        ("joints_mohm", 0.0),
        ("start_supply_v", 12.0),
        ("start_a", 10.0),
    ]
}

/// An invented installation.
pub(crate) fn invented() -> Vec<(&'static str, f64)> {
    vec![
        ("out_m", 4.2),
        ("back_by", 0.0),
        ("back_m", 3.7),
        ("conductor", code(Series::Area, 4.0)),
        ("conductor_celsius", 45.0),
        ("joints_mohm", 9.0),
        ("start_supply_v", 12.3),
        ("start_a", 11.0),
        ("running_supply_v", 12.6),
        ("running_a", 2.4),
    ]
}

#[test]
fn drops_as_worked_out() {
    // ΔU = 2·L·I·R', computed: 0.798 V (6.65 % of 12 V), 0.92345 V at 60 °C; 0.495; 0.330.
    for (mm2, celsius, volts) in [
        (2.5, 20.0, 0.798),
        (2.5, 60.0, 0.923_45),
        (4.0, 20.0, 0.495),
        (6.0, 20.0, 0.330),
    ] {
        let worked = exact(Cable, &example(mm2, celsius));
        near(value(Cable, &worked, "start_drop_v"), volts, 1e-5);
        near(value(Cable, &worked, "heater_start_v"), 12.0 - volts, 1e-6);
    }
    let worked = exact(Cable, &example(2.5, 20.0));
    near(value(Cable, &worked, "start_drop_percent"), 6.65, 1e-9);
    // A way back that is forgotten would halve it; here it cannot be.
    near(value(Cable, &worked, "start_back_v"), 0.399, 1e-9);
    let mut forgotten = example(2.5, 20.0);
    forgotten.push(("back_m", NONE));
    assert_eq!(refusal(Cable, &forgotten), ("back_m", Problem::Missing));
}

#[test]
fn what_is_lost_adds_up() {
    let worked = work(Cable, &invented());
    let of = |name| value(Cable, &worked, name);
    let parts = of("start_out_v") + of("start_joints_v") + of("start_back_v");
    near(parts, of("start_drop_v"), 1e-12);
    near(parts + of("heater_start_v"), 12.3, 1e-12);
    near(of("running_drop_v") + of("heater_running_v"), 12.6, 1e-12);
    near(of("running_drop_v"), 2.4 * of("loop_mohm") / 1000.0, 1e-12);
    // 4.95 Ω/km (IEC 60228), 45 °C: ×1.09825.
    near(of("loop_mohm"), 4.95 * 7.9 * 1.098_25 + 9.0, 1e-12);
}

#[test]
fn uncertainty_as_by_hand() {
    // JCGM 100 §5.1.3: I·R·L alone, relative variances add: conductor 12 %, 0.1 A + 3 % of 10 A,
    // 10 K of warmth, 150 mm of each way, 1 mΩ of joints; each a rectangle.
    let worked = work(Cable, &example(2.5, 20.0));
    let drop = given(Cable, &worked, "start_drop_v");
    let parts = [
        0.798 * 0.12,
        0.798 * 0.04,
        0.798 * 0.0393,
        0.0798 * 0.15,
        0.0798 * 0.15,
        0.01,
    ];
    let sum: f64 = parts.iter().map(|p| p * p / 3.0).sum();
    near(drop.u, 2.0 * sum.sqrt(), 1e-9);
    let spread = Cable.names().inputs.len() - 1;
    assert_eq!(drop.dominant, Some(spread));
    // The cable's own paper is worth more than the list, and can be told.
    let mut paper = example(2.5, 20.0);
    paper.push(("paper_ohm_per_km", 7.6));
    let worked = work(Cable, &paper);
    let better = given(Cable, &worked, "start_drop_v");
    near(better.value, 0.76, 1e-9);
    assert!(better.u < 0.6 * drop.u);
}

#[test]
fn the_body_is_a_way_back_of_its_own() {
    let mut body = invented();
    body.extend([("back_by", 1.0), ("back_m", 0.6), ("body_mohm", 3.5)]);
    let worked = exact(Cable, &body);
    let back = 4.95 * 0.6 * 1.098_25 + 3.5;
    near(value(Cable, &worked, "start_back_v"), 0.011 * back, 1e-12);
    body.push(("body_mohm", NONE));
    assert_eq!(refusal(Cable, &body), ("body_mohm", Problem::Missing));
    body.extend([("back_by", 0.0), ("body_mohm", 3.5)]);
    assert_eq!(refusal(Cable, &body), ("body_mohm", Problem::Contradiction));
}

#[test]
fn verdicts_wait_for_the_whole_interval() {
    let worked = work(Cable, &invented());
    let drop = given(Cable, &worked, "start_drop_v");
    for (high, want) in [
        (drop.value + 1.01 * drop.u, Verdict::Within),
        (drop.value + 0.99 * drop.u, Verdict::NotProven),
        (drop.value - 0.99 * drop.u, Verdict::NotProven),
        (drop.value - 1.01 * drop.u, Verdict::Beyond),
    ] {
        assert_eq!(verdict(Cable, &worked, "start_drop_v", NONE, high), want);
    }
    let open = judged(Cable, &worked, "heater_start_v", NONE, NONE);
    assert_eq!(open.why, Some(Why::LimitNotEntered));
    // What was not measured has no verdict: no reading, no verdict.
    let mut unread = invented();
    unread.push(("running_supply_v", NONE));
    let worked = work(Cable, &unread);
    let of = |name, low, high| verdict(Cable, &worked, name, low, high);
    assert_eq!(of("heater_running_v", 10.5, 16.0), Verdict::None);
    assert_eq!(of("running_drop_v", NONE, 0.5), Verdict::Within);
}

#[test]
fn doing_what_is_told_settles_it() {
    // By a shorter cable, whose joints stay as they are; by a battery that holds its voltage.
    for high in [0.3, 0.45, 0.5] {
        let before = work(Cable, &invented());
        let told = judged(Cable, &before, "start_drop_v", NONE, high);
        assert_ne!(told.verdict, Verdict::Within);
        let mut shorter = invented();
        let left = 1.0 + told.change / (0.011 * 4.95 * 1.098_25 * 7.9);
        shorter.extend([("out_m", 4.2 * left), ("back_m", 3.7 * left)]);
        let after = work(Cable, &shorter);
        let settled = verdict(Cable, &after, "start_drop_v", NONE, high);
        assert_eq!(settled, Verdict::Within, "{high}");
    }
    let before = work(Cable, &invented());
    let told = judged(Cable, &before, "heater_start_v", 11.7, NONE);
    assert_eq!(told.verdict, Verdict::NotProven);
    let mut stronger = invented();
    stronger.push(("start_supply_v", 12.3 + told.change));
    let after = work(Cable, &stronger);
    let settled = verdict(Cable, &after, "heater_start_v", 11.7, NONE);
    assert_eq!(settled, Verdict::Within);
}

#[test]
fn refusals_name_the_field() {
    for (name, wrong, problem) in [
        ("out_m", 4200.0, Problem::OtherUnit(Slip::Millimetres)),
        ("conductor_celsius", NONE, Problem::Missing),
        ("joints_mohm", NONE, Problem::Missing),
        ("conductor", 2.5, Problem::NotWhole),
        ("conductor", 15.0, Problem::OutOfRange),
        ("start_supply_v", 230.0, Problem::OutOfRange),
    ] {
        let mut x = invented();
        x.push((name, wrong));
        assert_eq!(refusal(Cable, &x), (name, problem));
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn longer_warmer_or_more_current_never_costs_less(
        field in 0..5usize, more in 1.0..2.0f64, conductor in 0..15u8, start in 0.0..40.0f64,
    ) {
        let mut x = invented();
        x.extend([("conductor", f64::from(conductor)), ("start_a", start)]);
        let first = value(Cable, &exact(Cable, &x), "start_drop_v");
        let name = ["out_m", "back_m", "conductor_celsius", "joints_mohm", "start_a"][field];
        let at = Cable.names().inputs.iter().position(|n| *n == name).unwrap();
        let now = told(Cable, &x)[at];
        x.push((name, now * more));
        let second = value(Cable, &exact(Cable, &x), "start_drop_v");
        prop_assert!(second >= first);
    }
}
