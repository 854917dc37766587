//! A boat's outlet as she heels.

use nalgebra::{Rotation3, Vector3};
use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::flue::boat_outlet::height_heeled_mm;
use plumbmark::plan::kind::{Problem, Refusal};
use proptest::prelude::*;

const NONE: f64 = f64::NAN;

#[test]
fn heights_of_a_3_4_5_triangle() {
    // cos 36.87° = 0.8, sin = 0.6.
    let heel = 36.869_897_645_844_02;
    assert!((height_heeled_mm(1000.0, 500.0, heel) - 500.0).abs() < 1e-3);
    assert!((height_heeled_mm(300.0, 1200.0, heel) + 480.0).abs() < 1e-3);
    assert_eq!(height_heeled_mm(420.0, 900.0, 0.0), 420.0);
    assert_eq!(height_heeled_mm(420.0, 900.0, 90.0), -900.0);
}

#[test]
fn it_is_held_against_its_own_limits() {
    let x = [900.0, 1000.0, 1400.0, 600.0, 20.0, 50.0];
    let worked = Sheet::BoatOutlet.work(&x, &[]).unwrap();
    let judged = |place: usize, low: f64| {
        let check = worked.check(place).unwrap();
        worked.judged(&check, low, NONE).unwrap().verdict
    };
    // 900·cos 20° − 1000·sin 20° − 50 = 453.7; 1400·cos 20° − 600·sin 20° − 50 = 1060.4.
    assert!((worked.result(0).unwrap().value - 453.7).abs() < 0.1);
    assert!((worked.result(1).unwrap().value - 1060.4).abs() < 0.1);
    assert_eq!(judged(0, 350.0), Verdict::Within);
    assert_eq!(judged(0, 440.0), Verdict::NotProven);
    assert_eq!(judged(0, 600.0), Verdict::Beyond);
    assert_eq!(judged(1, 600.0), Verdict::Within);
    // 2° of heel, a rectangle, and half of the sinkage that is told.
    assert!(worked.result(0).unwrap().u > 60.0);
}

#[test]
fn a_loop_is_told_whole_or_not_at_all() {
    let with = |height: f64, across: f64| {
        Sheet::BoatOutlet.work(&[900.0, 1000.0, height, across, 20.0, 0.0], &[])
    };
    let missing = |place| Refusal::at(place, Problem::Missing);
    assert_eq!(with(1400.0, NONE).unwrap_err(), missing(3));
    assert_eq!(with(NONE, 600.0).unwrap_err(), missing(2));
    assert!(with(NONE, NONE).unwrap().result(1).unwrap().value.is_nan());
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// nalgebra's rotation about the boat's length: forward x, to the side y, up z.
    #[test]
    fn a_rotation_about_her_length(
        height in -500.0..4000.0f64, across in 0.0..5000.0f64, heel in 0.0..90.0f64,
    ) {
        let turned = Rotation3::from_axis_angle(&Vector3::x_axis(), -heel.to_radians())
            * Vector3::new(0.0, across, height);
        prop_assert!((height_heeled_mm(height, across, heel) - turned.z).abs() < 5e-3);
    }
}
