//! The phone turned end for end: values by hand, every refusal by its name, and the way of it
//! through events.

use plumbmark::budget::{Contact, UpEstimate};
use plumbmark::frames::elevation_deg;
use plumbmark::holds::{Hold, Surface};
use plumbmark::live::Reading;
use plumbmark::parts::Part;
use plumbmark::prior::LARGEST_ZERO;
use plumbmark::reading::ZeroBy;
use plumbmark::reason::NoReading;
use plumbmark::reversal::{TurnRefusal, find_zero, turned};
use plumbmark::sensor::Sensor;
use plumbmark_tests::{Hand, certain};

const ON_BACK: Contact = Contact {
    hold_deg: 0.1,
    align_deg: 1.0,
    normal: [0.0, 0.0, 1.0],
};

/// Up of a phone on its back whose top edge reads `deg`, and its right edge `across_deg`.
fn reads(deg: f64, across_deg: f64) -> UpEstimate {
    let [y, x] = [deg, across_deg].map(|d| d.to_radians().sin());
    UpEstimate {
        // Browser's steps.
        half_steps: [
            [0.005, 0.0, 0.0],
            [0.0, 0.005, 0.0],
            [0.0, 0.0, 0.005],
            [0.0; 3],
            [0.0; 3],
            [0.0; 3],
        ],
        ..certain([x, y, (1.0 - x * x - y * y).sqrt()])
    }
}

/// 4.06° and −2.34°: half the difference is 3.20°, half the sum 0.86°; of tangents, to be exact,
/// since both placements feel the same along the normal.
#[test]
fn half_the_difference_is_the_parts_and_half_the_sum_the_phones() {
    let (first, second) = (reads(4.06, 0.0), reads(-2.34, 0.0));
    let part = turned(&first, &second, &ON_BACK, &Sensor::assumed(), LARGEST_ZERO).unwrap();
    let value = f64::from(elevation_deg([0.0, 1.0, 0.0], part.up));
    let [a, b] = [4.06_f64, 2.34].map(|deg| deg.to_radians().tan());
    let slope = (0.5 * (a + b)).atan();
    assert!((value - slope.to_degrees()).abs() < 1e-5, "{value}");
    assert!((value - 3.20).abs() < 1e-3, "{value}");
    assert!(part.sensor.u_zero[1] == 0.0 && part.sensor.u_zero[2] == Sensor::assumed().u_zero[2]);
    let found = find_zero(&[first, second], &ON_BACK).unwrap();
    let zero = f64::from(found.zero[1]);
    assert!((zero - 0.5 * (a - b) * slope.cos()).abs() < 1e-6, "{zero}");
    assert!((zero.asin().to_degrees() - 0.86).abs() < 2e-3, "{zero}");
    assert!(found.zero[2] == 0.0 && found.u_zero[2] == 0.0);
}

#[test]
fn every_refusal_by_its_name() {
    let zero = |ups: &[UpEstimate]| find_zero(ups, &ON_BACK).err();
    let good = [
        reads(1.0, 0.0),
        reads(0.0, 0.5),
        reads(1.0, 0.0),
        reads(0.0, 0.5),
    ];
    for count in [0, 1, 3] {
        assert_eq!(zero(&good[..count]), Some(TurnRefusal::WrongCount));
    }
    // Level, then tipped by 12°: as if a zero of 6°. Level, then upright: no zero does that.
    let by_little = [reads(0.0, 0.0), reads(12.0, 0.0)];
    assert_eq!(zero(&by_little), Some(TurnRefusal::ZeroTooLarge));
    let tipped = [reads(0.0, 0.0), reads(85.0, 0.0)];
    assert_eq!(zero(&tipped), Some(TurnRefusal::Tipped));
    assert_eq!(
        turned(
            &tipped[0],
            &tipped[1],
            &ON_BACK,
            &Sensor::assumed(),
            LARGEST_ZERO
        )
        .err(),
        Some(TurnRefusal::Tipped)
    );
    // 6° is 0.105 g: no sensor's.
    assert_eq!(zero(&[reads(6.0, 0.0); 2]), Some(TurnRefusal::ZeroTooLarge));
    // One pair sees 0.5°, the other 2°.
    let pairs = [
        reads(0.5, 0.0),
        reads(2.0, 0.0),
        reads(0.5, 0.0),
        reads(2.0, 0.0),
    ];
    assert_eq!(zero(&pairs), Some(TurnRefusal::PairsDisagree));
    let same = [reads(1.0, 0.0); 4];
    assert_eq!(zero(&same), None);
}

/// Up, device frame, of a phone on its back on a heater whose outlet is raised by `deg`; turned
/// end for end or not.
fn lies(deg: f64, turned: bool) -> [f64; 3] {
    let (s, c) = deg.to_radians().sin_cos();
    [0.0, if turned { -s } else { s }, c]
}

fn on_heater(alpha_deg: Option<f64>) -> Hand {
    on_heater_at(-3.0, alpha_deg, [0.004, 0.008, 0.0])
}

fn on_heater_at(deg: f64, alpha_deg: Option<f64>, zero: [f64; 3]) -> Hand {
    let mut hand = Hand::new(zero);
    hand.alpha_deg = alpha_deg;
    hand.live
        .select(Part::Heater, Hold::Back, Surface::MetalFace)
        .unwrap();
    assert_eq!(hand.lie(lies(deg, false), 100), None);
    hand
}

fn outlet(reading: &Reading) -> (f64, f64) {
    let measured = reading.outcomes[1].measured.unwrap();
    (f64::from(measured.value_deg), f64::from(measured.u_deg))
}

#[test]
fn a_part_is_read_by_a_turn() {
    let mut hand = on_heater(Some(10.0));
    let (before, u_before) = outlet(hand.live.reading().unwrap());
    assert!((before + 3.0).abs() > 0.4, "the zero is in it: {before}");
    assert_eq!(hand.live.keep_placement(), Ok(1));
    // As it lies; turned, but never moved; moved, but turned by a quarter only.
    assert_eq!(hand.lie(lies(-3.0, false), 10), Some(NoReading::NotTurned));
    hand.alpha_deg = Some(190.0);
    assert_eq!(hand.lie(lies(-3.0, false), 10), Some(NoReading::NotTurned));
    hand.lift();
    hand.alpha_deg = Some(100.0);
    assert_eq!(hand.lie(lies(-3.0, true), 230), Some(NoReading::NotTurned));
    hand.alpha_deg = Some(190.0);
    assert_eq!(hand.lie(lies(-3.0, true), 230), None);
    let reading = hand.live.reading().unwrap();
    let (value, u) = outlet(reading);
    assert_eq!(reading.zero_by, ZeroBy::Turn);
    assert!((value + 3.0).abs() < 0.05, "{value}");
    assert!(u < 0.4 * u_before, "{u} after {u_before}");
}

/// A zero makes one placement of a steep part feel longer than the other one: that is no tipping.
#[test]
fn an_honest_turn_on_a_slope_gives_a_reading() {
    for slope_deg in [6.0, -12.0, 20.0, -30.0] {
        for zero in [0.008, -0.015] {
            let mut hand = on_heater_at(slope_deg, Some(10.0), [zero, zero, zero]);
            assert_eq!(hand.live.keep_placement(), Ok(1));
            hand.lift();
            hand.alpha_deg = Some(190.0);
            let told = (slope_deg, zero);
            assert_eq!(hand.lie(lies(slope_deg, true), 230), None, "{told:?}");
            let reading = hand.live.reading().unwrap();
            assert_eq!(reading.zero_by, ZeroBy::Turn);
            let (value, u) = outlet(reading);
            // What is left: zero along the normal, by the sine of the slope.
            let left_deg = (zero * slope_deg.to_radians().sin()).abs().to_degrees();
            assert!(
                (value - slope_deg).abs() < left_deg + 0.03,
                "{told:?}: {value}"
            );
            assert!((value - slope_deg).abs() < u, "{told:?}: {value} ± {u}");
        }
    }
}

#[test]
fn the_first_placement_on_a_part_is_the_one_that_counts() {
    let mut hand = on_heater(Some(10.0));
    assert_eq!(hand.live.keep_placement(), Ok(1));
    assert_eq!(hand.live.keep_placement(), Ok(1));
    hand.lift();
    hand.alpha_deg = Some(190.0);
    assert_eq!(hand.lie(lies(-3.0, true), 230), None);
    let before = outlet(hand.live.reading().unwrap());
    assert_eq!(hand.live.keep_placement(), Ok(1));
    assert_eq!(hand.live.placements(), 1);
    assert_eq!(hand.lie(lies(-3.0, true), 10), None);
    let reading = hand.live.reading().unwrap();
    assert_eq!(reading.zero_by, ZeroBy::Turn);
    assert!((outlet(reading).0 - before.0).abs() < 0.02, "{before:?}");
}

#[test]
fn where_no_heading_is_given_somebody_must_tell() {
    let mut hand = on_heater(None);
    assert!(!hand.live.knows_heading());
    assert_eq!(hand.live.keep_placement(), Ok(1));
    hand.lift();
    assert_eq!(hand.lie(lies(-3.0, true), 100), Some(NoReading::NotTurned));
    hand.live.tell_turned();
    assert_eq!(hand.lie(lies(-3.0, true), 10), None);
    // Told, but not moved.
    let mut hand = on_heater(None);
    assert_eq!(hand.live.keep_placement(), Ok(1));
    hand.live.tell_turned();
    assert_eq!(hand.lie(lies(-3.0, true), 10), Some(NoReading::Moving));
}

#[test]
fn a_turn_grows_old_and_must_fit() {
    let mut hand = on_heater(None);
    hand.live.keep_placement().unwrap();
    hand.live.tell_turned();
    hand.t_ms += 181_000.0;
    hand.lift();
    assert_eq!(hand.lie(lies(-3.0, true), 100), Some(NoReading::TurnTooOld));
    let mut hand = on_heater(None);
    hand.live.keep_placement().unwrap();
    hand.live.tell_turned();
    hand.lift();
    assert_eq!(
        hand.lie(lies(-15.0, true), 100),
        Some(NoReading::TurnDisagrees)
    );
}

/// A phone on a table, kept at each of these turns about the vertical, degrees.
fn on_table(turns_deg: &[f64]) -> Hand {
    turned_on_table(Hand::new([0.004, 0.008, 0.0]), turns_deg)
}

fn turned_on_table(mut hand: Hand, turns_deg: &[f64]) -> Hand {
    hand.live
        .select_face(Hold::Back, Surface::MetalFace)
        .unwrap();
    for (i, turn_deg) in turns_deg.iter().enumerate() {
        hand.alpha_deg = Some(*turn_deg);
        hand.lift();
        assert_eq!(hand.lie([0.0, 0.0, 1.0], 230), None);
        assert_eq!(hand.live.keep_placement(), Ok(i + 1));
    }
    hand
}

#[test]
fn a_zero_found_on_a_table_shortens_the_next_interval() {
    for turns in [&[0.0, 180.0][..], &[0.0, 90.0, 180.0, 270.0]] {
        let unchecked = outlet(on_heater(Some(0.0)).live.reading().unwrap()).1;
        let mut hand = on_table(turns);
        let found = hand.live.find_zero().unwrap();
        for i in 0..2 {
            assert!(
                (f64::from(found.zero[i]) - hand.zero[i]).abs() < 0.001,
                "{found:?}"
            );
        }
        assert_eq!(hand.live.placements(), 0);
        hand.live
            .select(Part::Heater, Hold::Back, Surface::MetalFace)
            .unwrap();
        hand.lift();
        assert_eq!(hand.lie(lies(-3.0, false), 230), None);
        let reading = hand.live.reading().unwrap();
        let (value, u) = outlet(reading);
        assert_eq!(reading.zero_by, ZeroBy::Found);
        assert!((value + 3.0).abs() < 0.05, "{value}");
        assert!(u < 0.5 * unchecked, "{u} after {unchecked}");
        // An hour later it is an unchecked phone again.
        hand.live.set_clock(3_600_000.0);
        hand.lie(lies(-3.0, false), 10);
        assert_eq!(hand.live.reading().unwrap().zero_by, ZeroBy::Assumed);
    }
}

/// Acceleration has a zero just beyond 80 mg, the fused orientation one just below it.
#[test]
fn what_acceleration_refuses_the_orientation_does_not_keep() {
    for (zero, refusal) in [(0.0395, None), (0.0408, Some(TurnRefusal::ZeroTooLarge))] {
        let mut hand = Hand::new([0.0, zero, 0.0]);
        hand.fused_zero[1] = 0.0395;
        let mut hand = turned_on_table(hand, &[0.0, 180.0]);
        assert_eq!(hand.live.find_zero().err(), refusal);
        let kept = if refusal.is_none() { 2 } else { 0 };
        assert_eq!(hand.live.findings().zeros().len(), kept, "both, or none");
    }
}

#[test]
fn placements_that_are_no_turn_are_refused() {
    let refused = |turns: &[f64]| on_table(turns).live.find_zero().err();
    assert_eq!(refused(&[]), Some(TurnRefusal::WrongCount));
    assert_eq!(refused(&[0.0]), Some(TurnRefusal::WrongCount));
    assert_eq!(refused(&[0.0, 90.0]), Some(TurnRefusal::NotOpposite));
    assert_eq!(
        refused(&[0.0, 90.0, 180.0, 90.0]),
        Some(TurnRefusal::NotOpposite)
    );
}
