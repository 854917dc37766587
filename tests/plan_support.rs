//! Unevenness under the seal: the list must be whole, and the phone never says within.

use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::kind::{Problem, Refusal, Slip};
use plumbmark::plan::place::support::Line;
use plumbmark::plan::place::twist::least_unevenness_mm;
use plumbmark::plan::usage::USAGE;
use plumbmark::plan::work::Worked;
use proptest::prelude::*;

const NONE: f64 = f64::NAN;
/// Seal 180 × 120 mm, straightedge 300 mm, straight to 0.02 mm.
const SEAL: [f64; 5] = [180.0, 120.0, 300.0, 0.02, 0.0];

/// All six lines, each with a blade that goes in and one that does not.
fn list(goes_mm: f64, stays_mm: f64) -> Vec<f64> {
    let lines = (0..6).flat_map(|line| [f64::from(line), goes_mm, stays_mm, 0.0]);
    SEAL.into_iter().chain(lines).collect()
}

fn work(x: &[f64]) -> Worked {
    Sheet::Support.work(x, &[]).unwrap()
}

/// Verdicts of the whole list and of a part of it.
fn verdicts(worked: &Worked, high: f64) -> [Verdict; 2] {
    [0, 1].map(|place| {
        let check = worked.check(place).unwrap();
        worked.judged(&check, NONE, high).unwrap().verdict
    })
}

#[test]
fn a_gap_lies_between_two_blades() {
    let worked = work(&list(0.3, 0.4));
    let given = worked.result(0).unwrap();
    assert!((given.value - 0.35).abs() < 1e-12);
    // JCGM 100 §4.3.7: 0.1 mm of step is a rectangle of 0.05 mm; six lines, any of them the
    // largest; the edge adds 0.02 mm, the blades 0.005 mm each.
    let one = 0.05f64.powi(2) + 2.0 * 0.005f64.powi(2);
    let want = 2.0 * ((6.0 * one + 0.02f64.powi(2)) / 3.0).sqrt();
    assert!((given.u - want).abs() < 1e-3, "{} {want}", given.u);
    assert_eq!(verdicts(&worked, 0.8), [Verdict::Within, Verdict::None]);
    assert_eq!(verdicts(&worked, 0.4), [Verdict::NotProven, Verdict::None]);
    assert_eq!(verdicts(&worked, 0.05), [Verdict::Beyond, Verdict::None]);
}

#[test]
fn the_largest_gap_counts() {
    let mut x = list(0.0, 0.05);
    x[5 + 4 * 4 + 1] = 1.2;
    x[5 + 4 * 4 + 2] = 1.3;
    let worked = work(&x);
    assert!((worked.result(0).unwrap().value - 1.25).abs() < 1e-12);
    assert!((worked.result(3 + 4).unwrap().value - 1.25).abs() < 1e-12);
    // Common practice, no source: level out to 1 mm under the seal.
    let usage = USAGE.iter().find(|u| u.id.name() == "unevenness_mm");
    let high = usage.unwrap().high.unwrap();
    assert_eq!(verdicts(&worked, high)[0], Verdict::Beyond);
}

#[test]
fn a_list_with_a_line_missing_is_never_within() {
    for missing in 0..6 {
        let mut x = list(0.0, 0.05);
        x.drain(5 + 4 * missing..9 + 4 * missing);
        let worked = work(&x);
        assert!(worked.result(0).unwrap().value.is_nan());
        assert_eq!(worked.result(2).unwrap().value, 1.0);
        let [whole, part] = verdicts(&worked, 10.0);
        assert_eq!((whole, part), (Verdict::None, Verdict::NotProven));
    }
    // A line that is listed and not read is as good as missing.
    let mut x = list(0.0, 0.05);
    (x[5 + 1], x[5 + 2]) = (NONE, NONE);
    let worked = work(&x);
    assert_eq!(worked.result(2).unwrap().value, 1.0);
    assert_eq!(verdicts(&worked, 10.0), [Verdict::None, Verdict::NotProven]);
    // None read at all.
    let worked = work(&SEAL);
    assert_eq!(worked.result(2).unwrap().value, 6.0);
    assert_eq!(verdicts(&worked, 10.0), [Verdict::None; 2]);
}

#[test]
fn one_large_gap_is_enough_to_be_beyond() {
    let x: Vec<f64> = SEAL.into_iter().chain([4.0, 2.0, 2.2, 0.0]).collect();
    assert_eq!(verdicts(&work(&x), 1.0), [Verdict::None, Verdict::Beyond]);
}

#[test]
fn a_short_straightedge_leaves_the_diagonals_open() {
    // The diagonal of 180 × 120 mm is 216.3 mm.
    let mut x = list(0.0, 0.05);
    x[2] = 200.0;
    let worked = work(&x);
    assert_eq!(worked.result(2).unwrap().value, 2.0);
    assert_eq!(verdicts(&worked, 10.0)[0], Verdict::None);
}

#[test]
fn a_gap_no_blade_fills_has_no_upper_end() {
    let mut x = list(0.0, 0.05);
    x[5 + 1] = 1.0;
    x[5 + 2] = NONE;
    let worked = work(&x);
    assert_eq!(worked.result(1).unwrap().value, 1.0);
    assert_eq!(verdicts(&worked, 5.0), [Verdict::None, Verdict::NotProven]);
    assert_eq!(verdicts(&worked, 0.8), [Verdict::None, Verdict::Beyond]);
}

#[test]
fn refusals_name_the_blade() {
    let mut x = list(0.2, 0.3);
    x[5 + 4 + 2] = 0.2;
    let refused = Sheet::Support.work(&x, &[]).unwrap_err();
    let place = 5 + 4 + 2;
    assert_eq!(refused, Refusal::at(place, Problem::Contradiction));
    x[5 + 4 + 1] = NONE;
    let refused = Sheet::Support.work(&x, &[]).unwrap_err();
    assert_eq!(refused, Refusal::at(place - 1, Problem::Missing));
    x[0] = 0.18;
    let refused = Sheet::Support.work(&x, &[]).unwrap_err();
    let problem = Problem::OtherUnit(Slip::Metres);
    assert_eq!(refused, Refusal::at(0, problem));
    let refused = Sheet::Support.work(&x[..7], &[]).unwrap_err();
    assert_eq!(refused.problem, Problem::Missing);
    assert_eq!(Line::ALL.len(), 6);
}

#[test]
fn two_tilts_can_only_break_the_limit() {
    // 3° over 150 mm: 150·sin 3°/2 = 3.9252 mm at least.
    assert!((least_unevenness_mm(3.0, 150.0) - 3.9252).abs() < 2e-4);
    let worked = |second: f64| {
        let worked = Sheet::Twist.work(&[0.4, second, 150.0], &[0.25, 0.25, 2.0]);
        let worked = worked.unwrap();
        let check = worked.check(0).unwrap();
        worked.judged(&check, NONE, 1.0).unwrap()
    };
    assert_eq!(worked(3.4).verdict, Verdict::Beyond);
    assert_eq!(worked(0.4).verdict, Verdict::NotProven);
    // What would settle it is not known: an even face is never proven this way.
    assert!(worked(3.4).change.is_nan());
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn the_phone_never_says_within(
        first in -45.0..45.0f64, second in -45.0..45.0f64, base in 50.0..2000.0f64,
        half in 0.0..3.0f64, low in prop_oneof![Just(NONE), 0.0..20.0f64], high in 0.0..20.0f64,
    ) {
        let worked = Sheet::Twist.work(&[first, second, base], &[half, half, 1.0]).unwrap();
        let judged = worked.judged(&worked.check(0).unwrap(), low, high).unwrap();
        prop_assert_ne!(judged.verdict, Verdict::Within);
    }

    /// A lower bound: no plane fits the four ends of two bases better (checked by trying).
    #[test]
    fn no_plane_fits_better(
        a in -10.0..10.0f64, b in -10.0..10.0f64, base in 50.0..300.0f64,
        slope in -0.3..0.3f64, shift in -20.0..20.0f64,
    ) {
        let rise = |deg: f64| base * deg.to_radians().sin();
        let tilt = slope * base;
        let ends = [0.0, rise(a) - tilt, shift, shift + rise(b) - tilt];
        let high = ends.iter().fold(f64::MIN, |m, e| m.max(*e));
        let low = ends.iter().fold(f64::MAX, |m, e| m.min(*e));
        // sin a − sin b = 2·cos((a + b)/2)·sin((a − b)/2): the face itself may lean.
        let lean = ((a + b) / 2.0).to_radians().cos();
        prop_assert!((high - low) * 1.02 >= least_unevenness_mm(a - b, base) * lean);
    }
}
