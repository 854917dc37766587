//! Fuse and take-off.

use super::{NONE, exact, given, judged, near, refusal, value, verdict, work};
use plumbmark::decision::Verdict;
use plumbmark::limits::Basis;
use plumbmark::plan::Sheet::{Bank, Fuse};
use plumbmark::plan::bound::BoundId;
use plumbmark::plan::bound_error::is_looser;
use plumbmark::plan::kind::Problem;
use plumbmark::plan::usage::LAW;
use plumbmark::plan::work::Worked;
use proptest::prelude::*;

/// An invented fuse and conductor.
const FUSED: &[(&str, f64)] = &[
    ("fuse_a", 15.0),
    ("fuse_to_battery_mm", 140.0),
    ("ampacity_a", 32.0),
    ("engine_space", 0.8),
    ("bundle", 0.7),
];

fn fused(with: &[(&'static str, f64)]) -> Vec<(&'static str, f64)> {
    FUSED.iter().chain(with).copied().collect()
}

#[test]
fn a_conductor_carries_what_is_left_of_its_rating() {
    let worked = work(Fuse, FUSED);
    near(value(Fuse, &worked, "carries_a"), 32.0 * 0.8 * 0.7, 1e-12);
    let spare = given(Fuse, &worked, "spare_a");
    near(spare.value, 2.92, 1e-9);
    // 5 % of 17.92 A, a rectangle.
    near(spare.u, 2.0 / 3f64.sqrt() * 0.05 * 17.92, 1e-9);
    let of = |worked: &Worked| verdict(Fuse, worked, "spare_a", NONE, NONE);
    assert_eq!(of(&worked), Verdict::Within);
    let closer = |amperes| work(Fuse, &fused(&[("fuse_a", amperes)]));
    assert_eq!(of(&closer(17.5)), Verdict::NotProven);
    assert_eq!(of(&closer(20.0)), Verdict::Beyond);
    // A fuse may lie at 150 % for one law; here it burns the cable before it blows.
    assert_eq!(of(&closer(1.5 * 17.92)), Verdict::Beyond);
}

#[test]
fn a_factor_that_is_not_told_leaves_it_open() {
    for name in ["ampacity_a", "engine_space", "bundle", "fuse_a"] {
        let worked = work(Fuse, &fused(&[(name, NONE)]));
        assert_eq!(
            verdict(Fuse, &worked, "spare_a", NONE, NONE),
            Verdict::None,
            "{name}"
        );
    }
    let more = fused(&[("bundle", 1.2)]);
    assert_eq!(refusal(Fuse, &more), ("bundle", Problem::OutOfRange));
}

#[test]
fn the_boat_law_goes_into_nothing() {
    // AWG 12 stands at place 11; 33 CFR 183.425: 45 A.
    let with = work(Fuse, &fused(&[("conductor", 11.0), ("ampacity_a", NONE)]));
    assert_eq!(value(Fuse, &with, "boat_law_a"), 45.0);
    assert!(value(Fuse, &with, "carries_a").is_nan());
    let law = LAW.iter().find(|l| l.id == BoundId::FuseToBattery).unwrap();
    // 33 CFR 183.455: 7 in, and for whom.
    near(law.high.unwrap(), 7.0 * 25.4, 1e-12);
    assert_eq!((law.basis, law.vehicles), (Basis::Law, "US petrol boats"));
    assert!(is_looser(BoundId::FuseToBattery, NONE, 300.0));
    let worked = work(Fuse, FUSED);
    let of = |name, low, high| verdict(Fuse, &worked, name, low, high);
    assert_eq!(of("fuse_to_battery_mm", NONE, 177.8), Verdict::Within);
    assert_eq!(of("fuse_to_battery_mm", NONE, 145.0), Verdict::NotProven);
    // What is printed is a name: the manual's own end is in it.
    assert_eq!(of("fuse_a", 15.0, 15.0), Verdict::Within);
    assert_eq!(of("fuse_a", 16.0, 20.0), Verdict::Beyond);
}

#[test]
fn a_smaller_fuse_settles_it() {
    for amperes in [17.0, 17.9, 19.0] {
        let before = work(Fuse, &fused(&[("fuse_a", amperes)]));
        let told = judged(Fuse, &before, "spare_a", NONE, NONE);
        let after = work(Fuse, &fused(&[("fuse_a", amperes - told.change)]));
        let settled = verdict(Fuse, &after, "spare_a", NONE, NONE);
        assert_eq!(settled, Verdict::Within, "{amperes}");
        // So does a thicker conductor that carries as much more.
        let carries = 32.0 + told.change / 0.56;
        let thicker = fused(&[("fuse_a", amperes), ("ampacity_a", carries)]);
        let after = work(Fuse, &thicker);
        let settled = verdict(Fuse, &after, "spare_a", NONE, NONE);
        assert_eq!(settled, Verdict::Within, "{amperes}");
    }
}

#[test]
fn a_centre_tap_is_found() {
    let bank = |bank_v, take_off_v| {
        work(
            Bank,
            &[
                ("nominal", 1.0),
                ("bank_v", bank_v),
                ("take_off_v", take_off_v),
            ],
        )
    };
    let tapped = bank(25.3, 12.6);
    let of = |worked: &Worked, name| verdict(Bank, worked, name, 20.0, 30.0);
    assert_eq!(of(&tapped, "missed_v"), Verdict::Beyond);
    assert_eq!(of(&tapped, "take_off_v"), Verdict::Beyond);
    assert_eq!(of(&tapped, "bank_v"), Verdict::Within);
    near(value(Bank, &tapped, "of_bank_percent"), 49.8, 1e-3);
    near(value(Bank, &tapped, "of_nominal_percent"), 52.5, 1e-9);
    // Readings that agree prove nothing, not even exact ones.
    assert_eq!(of(&bank(25.3, 25.2), "missed_v"), Verdict::NotProven);
    let same = [("nominal", 1.0), ("bank_v", 25.3), ("take_off_v", 25.3)];
    assert_ne!(of(&exact(Bank, &same), "missed_v"), Verdict::Within);
    // A take-off above its bank is as wrong: the readings are of other posts than told.
    assert_eq!(of(&bank(12.6, 25.3), "missed_v"), Verdict::Beyond);
    // One of them alone tells nothing of it.
    assert_eq!(of(&bank(25.3, NONE), "missed_v"), Verdict::None);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn two_readings_never_prove_the_take_off(
        bank_v in 5.0..60.0f64, take_off_v in 5.0..60.0f64, half in 0.0..1.0f64,
    ) {
        let worked = Bank.work(&[1.0, bank_v, take_off_v], &[0.0, half, half]).unwrap();
        let judged = judged(Bank, &worked, "missed_v", NONE, NONE);
        prop_assert_ne!(judged.verdict, Verdict::Within);
    }
}
