//! What readings by one phone share adds up or cancels (GUM 5.2.2): values by their definition.

use approx::assert_relative_eq;
use plumbmark::budget::{Budget, Contact, Source};
use plumbmark::frames::DEG;
use plumbmark::shared::{Share, combined};
use plumbmark_tests::certain;

const ACROSS: [f32; 3] = [1.0, 0.0, 0.0];

/// Weight of a leg's elevation in the height difference of its ends, mm a degree.
const LEG_MM: f32 = 400.0 / DEG;

/// A level leg by a phone with a zero of 0.5°, left by finding `number`.
fn leg(number: u16) -> Share {
    let mut up = certain([0.0, 0.0, 1.0]);
    up.sensor.u_zero = [0.5 / DEG; 3];
    up.sensor.zero_from = [number; 3];
    Share::new(&up, ACROSS)
}

/// Five legs of 0.4 m: 5 · 400 mm · 0.5° = 17.45 mm with one zero, √5 · 400 mm · 0.5° = 7.80 mm if
/// each had its own.
#[test]
fn five_legs_share_one_zero() {
    let half_degree = 0.5_f64.to_radians();
    let one_phone = [0; 5].map(|_| (LEG_MM, leg(0)));
    let got = f64::from(combined(&one_phone));
    assert_relative_eq!(got, 5.0 * 400.0 * half_degree, max_relative = 1e-6);
    assert!((got - 17.45).abs() < 0.005, "{got}");

    let five_phones = [1, 2, 3, 4, 5].map(|number| (LEG_MM, leg(number)));
    let got = f64::from(combined(&five_phones));
    assert_relative_eq!(got, 5_f64.sqrt() * 400.0 * half_degree, max_relative = 1e-6);
    assert!((got - 7.80).abs() < 0.01, "{got}");
}

/// A run that falls and rises again by the same zero: legs read the other way round cancel.
#[test]
fn a_leg_that_is_taken_away_cancels() {
    assert!(combined(&[(LEG_MM, leg(0)), (-LEG_MM, leg(0))]) < 1e-6);
    let apart = combined(&[(LEG_MM, leg(1)), (-LEG_MM, leg(2))]);
    assert_relative_eq!(apart, 2_f32.sqrt() * 400.0 * 0.5 / DEG, max_relative = 1e-6);
}

/// 0.2 % of what one axis feels shows in another: at another attitude it is another error, so that
/// two readings by the same hold do not cancel it. Shares of 0.002 by the scalar products of both
/// directions and of both ups: 1 + 1 − 2 · 0.8 · 0.8.
#[test]
fn cross_axis_error_of_another_attitude_does_not_cancel() {
    let at = |up: [f64; 3], c| {
        let mut up = certain(up);
        up.sensor.found_at = [0.0; 3];
        Share::new(&up, c)
    };
    let level = at([0.0, 0.0, 1.0], ACROSS);
    let steep = at([0.6, 0.0, 0.8], [0.8, 0.0, -0.6]);
    assert!(combined(&[(1.0, level), (-1.0, level)]) < 1e-6);
    let apart = combined(&[(1.0, level), (-1.0, steep)]);
    assert_relative_eq!(apart, 0.002 * DEG * 0.72_f32.sqrt(), max_relative = 1e-5);
    // Found with the zero where it is used, it is not there.
    assert_relative_eq!(
        combined(&[(1.0, at([0.0, 0.0, 1.0], ACROSS))]),
        0.002 * DEG,
        max_relative = 1e-5
    );
    assert!(combined(&[(1.0, Share::new(&certain([0.0, 0.0, 1.0]), ACROSS))]) == 0.0);
}

/// The rail is read on the back, where the zero was found, the part on the long edge, which adds
/// 0.2° of its own: the zero cancels, that does not. Two parts on the long edge share it.
#[test]
fn what_another_side_adds_does_not_cancel() {
    let mut edge = leg(1);
    edge.side_deg = [0.2, 0.0, 0.0];
    edge.side = 2;
    let mut short = edge;
    short.side = 3;
    let difference = |a, b| combined(&[(1.0, a), (-1.0, b)]);
    assert_relative_eq!(difference(leg(1), edge), 0.2, max_relative = 1e-4);
    assert!(difference(edge, edge) < 1e-3);
    assert_relative_eq!(
        difference(edge, short),
        0.2 * 2_f32.sqrt(),
        max_relative = 1e-4
    );
}

/// What is fresh at every placement averages out; what is shared doesn't.
#[test]
fn own_terms_average_and_shared_ones_do_not() {
    let mut up = certain([0.0, 0.0, 1.0]);
    up.noise = [0.3 / DEG; 3];
    up.sensor.u_zero = [0.4 / DEG; 3];
    let contact = Contact {
        hold_deg: 0.0,
        align_deg: 0.0,
        normal: [0.0, 0.0, 1.0],
    };
    let budget = Budget::new(&up, &contact, ACROSS);
    assert_relative_eq!(budget.combined_deg(), 0.5, max_relative = 1e-5);
    assert_relative_eq!(budget.of(Source::Zero), 0.4, max_relative = 1e-5);
    let share = Share::new(&up, ACROSS).with_own(&budget);
    assert_relative_eq!(share.variance(), 0.25, max_relative = 1e-5);
    let mean_of_nine = combined(&[(1.0 / 9.0, share); 9]);
    assert_relative_eq!(
        mean_of_nine,
        (0.16_f32 + 0.09 / 9.0).sqrt(),
        max_relative = 1e-5
    );
}

/// Scales are shared by finding, zeros by finding and axis.
#[test]
fn only_the_same_finding_is_shared() {
    let mut up = certain([0.6, 0.0, 0.8]);
    up.sensor.u_zero = [0.01; 3];
    up.sensor.u_scale = [0.02; 3];
    let one = Share::new(&up, [0.8, 0.0, -0.6]);
    up.sensor.zero_from = [0, 0, 7];
    let other = Share::new(&up, [0.8, 0.0, -0.6]);
    let zero_deg = |c: f32| c * 0.01 * DEG;
    assert_relative_eq!(
        one.zero_covariance(&other),
        zero_deg(0.8) * zero_deg(0.8),
        max_relative = 1e-5
    );
    // Twice 0.8 · 0.6 · 0.02, squared and added.
    let scale_deg = 0.48 * 0.02 * DEG;
    assert_relative_eq!(
        one.scale_covariance(&other),
        2.0 * scale_deg * scale_deg,
        max_relative = 1e-5
    );
    up.sensor.scale_from = 3;
    let third = Share::new(&up, [0.8, 0.0, -0.6]);
    assert!(one.scale_covariance(&third) == 0.0);
}
