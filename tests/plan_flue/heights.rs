//! Heights and their uncertainty; readings that share a zero; a boat that rolls.

use super::legs::{ASHORE, Leg, NONE, ROAD, numbers, of, road, try_pipe};
use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::flue::leg::sway_deg;
use plumbmark::plan::flue::pipe::MOST_LEGS;
use plumbmark::plan::kind::{Problem, Refusal};
use proptest::prelude::*;

/// Standard uncertainty of the end's height.
fn end_u(legs: &[Leg]) -> f64 {
    road(legs).result(2).unwrap().u / 2.0
}

#[test]
fn a_common_zero_adds_up() {
    // Five legs of 0.4 m, zero 0.5°: 2000 mm · 0.5° = 17.5 mm, by definition; 7.8 mm were each its
    // own (JCGM 100 §5.2.2).
    let shared = end_u(&[Leg::read(-3.0, 0.4, 0.5, 0.5); 5]);
    assert!((shared - 17.5).abs() < 0.1, "{shared}");
    let own = end_u(&[Leg::read(-3.0, 0.4, 0.5, 0.0); 5]);
    assert!((own - 7.8).abs() < 0.1, "{own}");
    // Two checks of the phone, so two zeros: 3 and 2 legs of one each.
    let mut two = [Leg::read(-3.0, 0.4, 0.5, 0.5); 5];
    for leg in &mut two[3..] {
        leg.zero_of = 2.0;
    }
    let of_two = (13f64.sqrt() / 5.0) * 17.45;
    assert!((end_u(&two) - of_two).abs() < 0.05);
    // A level or protractor has none to share.
    let mut typed = [Leg::read(-3.0, 0.4, 0.5, 0.5); 5];
    for leg in &mut typed {
        leg.zero_of = 0.0;
    }
    assert!((end_u(&typed) - 7.8).abs() < 0.05);
}

#[test]
fn zero_scale_and_level_share_and_the_rest_is_own() {
    let mut leg = Leg::read(0.0, 1.0, 1.3, 0.3);
    leg.u = [1.3, 0.3, 0.4, 0.4, 0.8, 0.8];
    let (mm, one) = (1000f64.to_radians(), |u: f64| u * u);
    // One leg: the report's own u, whatever it is made of.
    assert!((end_u(&[leg]) - 1.3 * mm).abs() < 0.02);
    // Two: what is shared counts with its sum, the rest (0.0 here) with its root.
    assert!((end_u(&[leg; 2]) - 2.0 * 1.3 * mm).abs() < 0.05);
    leg.u = [1.3, 0.3, 0.4, NONE, NONE, NONE];
    let (shared, own) = (one(0.3) + one(0.4), one(1.3) - one(0.3) - one(0.4));
    let want = mm * (4.0 * shared + 2.0 * own).sqrt();
    assert!((end_u(&[leg; 2]) - want).abs() < 0.05);
}

#[test]
fn heights_lengths_and_bends_add_up() {
    // 5.71059° is a slope of 10 %, 2.86241° one of 5 % (computed).
    let legs = [Leg::exact(-5.71059, 0.5), Leg::exact(-2.86241, 1.5)];
    let worked = road(&legs);
    let share = |leg| of(&worked, leg, 0).value / of(&worked, leg, 1).value;
    assert!((share(0) + 0.1).abs() < 1e-6);
    let second = (of(&worked, 1, 0).value - of(&worked, 0, 0).value)
        / (of(&worked, 1, 1).value - of(&worked, 0, 1).value);
    assert!((second + 0.05).abs() < 1e-6);
    assert_eq!(worked.result(0).unwrap().value, 2.0);
    assert_eq!(worked.result(2).unwrap().value, of(&worked, 1, 0).value);
    let mut bent = legs;
    (bent[0].bend, bent[1].bend) = (90.0, 45.0);
    let worked = road(&bent);
    assert_eq!(worked.result(1).unwrap().value, 135.0);
    let judged = |place: usize, low, high| {
        let check = worked.check(place).unwrap();
        worked.judged(&check, low, high).unwrap().verdict
    };
    assert_eq!(judged(0, 0.3, 2.4), Verdict::Within);
    assert_eq!(judged(0, 0.3, 1.8), Verdict::Beyond);
    assert_eq!(judged(1, NONE, 270.0), Verdict::Within);
    assert_eq!(judged(1, NONE, NONE), Verdict::NotProven);
    // Straight down has no length along the level.
    let worked = road(&[Leg::exact(-90.0, 0.7)]);
    assert_eq!(of(&worked, 0, 0).value, -700.0);
    assert!(of(&worked, 0, 1).value.abs() < 1e-9);
}

#[test]
fn no_legs_no_answers() {
    let worked = road(&[]);
    for place in 0..3 {
        assert!(worked.result(place).unwrap().value.is_nan());
    }
    let (x, half) = numbers(ROAD, &[Leg::typed(-3.0, 0.5); MOST_LEGS]);
    assert!(Sheet::AirPipe.work(&x, &half).is_ok());
    let (x, half) = numbers(ROAD, &[Leg::typed(-3.0, 0.5); MOST_LEGS + 1]);
    let refused = Sheet::AirPipe.work(&x, &half).unwrap_err();
    assert_eq!(refused, Refusal::at(9 + MOST_LEGS * 15, Problem::TooMany));
}

#[test]
fn afloat_a_leg_counts_only_as_a_long_mean() {
    let legs = [Leg::exact(-4.0, 1.0)];
    let told = |boat: [f64; 6]| try_pipe(boat, &legs);
    let refused = |boat| told(boat).unwrap_err();
    let missing = |place| Refusal::at(place, Problem::Missing);
    assert_eq!(refused([NONE; 6]), missing(0));
    assert_eq!(refused([1.0, NONE, NONE, NONE, NONE, NONE]), missing(1));
    assert_eq!(refused([1.0, 1.0, NONE, NONE, NONE, NONE]), missing(2));
    assert_eq!(refused([1.0, 1.0, 4.0, NONE, 2.0, NONE]), missing(3));
    assert_eq!(refused([1.0, 1.0, 4.0, 40.0, NONE, NONE]), missing(4));
    let short = Refusal::at(3, Problem::BeyondFormula);
    assert_eq!(refused([1.0, 1.0, 4.0, 39.0, 2.0, NONE]), short);
    // Ten periods: off by 2°/(10 π) at most, a rectangle.
    let u = told([1.0, 1.0, 4.0, 40.0, 2.0, NONE]).unwrap();
    let want = 1000.0 * (2.0 / (10.0 * std::f64::consts::PI)).to_radians() / 3f64.sqrt();
    let leg_u = of(&u, 0, 2).u / 2.0;
    assert!((leg_u - want).abs() < 0.01 * want, "{leg_u} {want}");
    // Ashore, or no boat, nothing rolls, whatever stands there.
    assert_eq!(told(ASHORE).unwrap().result(2).unwrap().u, 0.0);
    let idle = [0.0, 1.0, 4.0, 1.0, 2.0, NONE];
    assert_eq!(told(idle).unwrap().result(2).unwrap().u, 0.0);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// The mean of a swing, summed up step by step, is never farther off; at the worst phase of a
    /// whole number of periods and a half it is as far off.
    #[test]
    fn a_mean_of_a_swing(
        roll in 0.1..20.0f64, period in 1.0..20.0f64, periods in 0.3..40.0f64, phase in 0.0..6.3f64,
    ) {
        let mean = |periods: f64, phase: f64| {
            let n = 20_000;
            let angle = |i: usize| std::f64::consts::TAU * periods * (i as f64 + 0.5) / n as f64;
            (0..n).map(|i| roll * (angle(i) + phase).sin()).sum::<f64>() / n as f64
        };
        let bound = sway_deg(roll, period, periods * period);
        prop_assert!(mean(periods, phase).abs() <= bound * (1.0 + 1e-4));
        let half = periods.floor() + 0.5;
        let worst = mean(half, 0.0);
        prop_assert!((worst - sway_deg(roll, period, half * period)).abs() < 1e-4 * roll);
    }
}
