//! Where water stays: signs, low points, what is proven, advice that settles.

use super::legs::{Leg, NONE, of, road, verdicts};
use plumbmark::decision::Verdict::{Beyond, None as NoVerdict, NotProven, Within};
use plumbmark::plan::flue::water::{Slope, depth_mm, is_low_point};
use proptest::prelude::*;

#[test]
fn one_leg_has_the_sign_of_its_elevation() {
    for (deg, verdict) in [
        (-3.0_f64, Within),
        (-0.6, NotProven),
        (0.0, NotProven),
        (0.6, NotProven),
        (3.0, Beyond),
    ] {
        let worked = road(&[Leg::typed(deg, 0.8)]);
        let standing = of(&worked, 0, 2);
        let rise_mm = 800.0 * deg.to_radians().sin();
        assert!((standing.value - rise_mm).abs() < 1e-3);
        // 1° of half-width on 0.8 m: 2 · 14 mm/√3, and never nothing.
        assert!(standing.u > 16.0, "{deg}: {}", standing.u);
        assert_eq!(verdicts(&worked, 0)[0], verdict, "{deg}");
    }
}

#[test]
fn a_pipe_that_falls_all_the_way_has_no_low_point() {
    let worked = road(&[
        Leg::typed(-4.0, 0.5),
        Leg::typed(-90.0, 0.2),
        Leg::typed(-3.0, 1.0),
    ]);
    for leg in 0..3 {
        assert_eq!(verdicts(&worked, leg), [Within, NoVerdict, NoVerdict]);
        assert_eq!(of(&worked, leg, 4).value, 0.0);
    }
}

#[test]
fn water_stands_as_high_as_the_pipe_rises() {
    // Falls 300 mm, rises 50 and 40, falls, rises 200: 3-4-5 slopes (sin 36.87° = 0.6).
    let up = 36.869_897_645_844_02;
    let legs = [
        Leg::exact(-up, 0.5),
        Leg::exact(up, 0.05 / 0.6),
        Leg::exact(up, 0.04 / 0.6),
        Leg::exact(-up, 0.05),
        Leg::exact(up, 0.2 / 0.6),
    ];
    let worked = road(&legs);
    let depth = |leg| of(&worked, leg, 3).value;
    // The first low point fills until it runs over the last rise: 50 + 40 − 30 + 200.
    assert!((depth(1) - 260.0).abs() < 1e-3);
    assert!((depth(4) - 200.0).abs() < 1e-3);
    // Between them the legs stand in it; above it they don't.
    assert!((depth(2) - 210.0).abs() < 1e-3 && (depth(3) - 170.0).abs() < 1e-3);
    assert!(depth(0).is_nan());
    let remedies = [0, 1, 2, 3, 4].map(|leg| of(&worked, leg, 4).value);
    assert_eq!(remedies, [0.0, 1.0, 0.0, 0.0, 1.0]);
    let standing = |leg| of(&worked, leg, 2).value;
    assert!((standing(2) - 40.0).abs() < 1e-3 && (standing(3) + 30.0).abs() < 1e-3);
    // The heater is a closed end: a pipe that rises from it fills as high.
    let worked = road(&[Leg::exact(up, 0.1), Leg::exact(up, 0.1)]);
    assert!((of(&worked, 0, 3).value - 120.0).abs() < 1e-3);
    assert!((of(&worked, 1, 3).value - 60.0).abs() < 1e-3);
    for leg in 0..2 {
        assert_eq!(verdicts(&worked, leg)[..2], [Beyond, Beyond]);
    }
}

#[test]
fn several_legs_together_can_hold_water_and_never_none() {
    // Each by itself could be level; together they rise for sure.
    let legs = [Leg::typed(-5.0, 0.5)]
        .into_iter()
        .chain([Leg::typed(0.9, 0.3); 6]);
    let worked = road(&legs.collect::<Vec<_>>());
    assert_eq!(verdicts(&worked, 1)[..2], [NotProven, Beyond]);
    assert!(of(&worked, 1, 3).value > 28.0);
}

#[test]
fn doing_what_is_told_settles_it() {
    for deg in [-1.0_f64, -0.3, 0.2, 1.5, 8.0] {
        let judged = |deg: f64| {
            let worked = road(&[Leg::typed(-6.0, 0.4), Leg::typed(deg, 0.7)]);
            let check = worked.check(2 + 3).unwrap();
            worked.judged(&check, NONE, NONE).unwrap()
        };
        let before = judged(deg);
        assert_ne!(before.verdict, Within);
        // The leg's end goes down by as much.
        let rise = 700.0 * deg.to_radians().sin() + before.change;
        let after = judged(f64::asin(rise / 700.0).to_degrees());
        assert_eq!(after.verdict, Within, "{deg}: {}", before.change);
    }
}

fn slopes(rises: &[f64]) -> Vec<Slope> {
    let each = rises.iter().map(|&rise_mm| Slope {
        rise_mm,
        drained: false,
    });
    each.collect()
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// Water stands as deep as the highest place behind is high.
    #[test]
    fn as_deep_as_the_highest_place_behind(rises in prop::collection::vec(-50.0..50.0f64, 1..12)) {
        let all = slopes(&rises);
        for at in 0..rises.len() {
            let depth = depth_mm(&all[..at], &all[at..]);
            let heights = rises[at..].iter().scan(0.0, |h, r| { *h += r; Some(*h) });
            let highest = heights.fold(f64::MIN, f64::max);
            prop_assert_eq!(depth.is_nan(), highest <= 0.0);
            let low = rises[at] > 0.0 && (at == 0 || rises[at - 1] <= 0.0);
            prop_assert_eq!(is_low_point(&all[..at], &all[at..]), low);
            if highest > 0.0 {
                prop_assert!((depth - highest).abs() < 1e-9);
            }
        }
    }

    /// Every leg within: none of them rises in any pipe that the numbers allow.
    #[test]
    fn within_means_falling(degs in prop::collection::vec(-8.0..2.0f64, 1..8), off in -1.0..1.0f64) {
        let legs: Vec<Leg> = degs.iter().map(|&deg| Leg::typed(deg, 0.6)).collect();
        let worked = road(&legs);
        for (leg, deg) in degs.iter().enumerate() {
            if verdicts(&worked, leg)[0] == Within {
                // Half-width 1°: the true leg is at most so steep.
                prop_assert!(deg + off <= 0.0);
            }
        }
    }
}
