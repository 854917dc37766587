//! The gauge in the hand: from switching on to captures, a turn end for end, a calibration.

use gauge_host::Hand;
use plumbmark::check::End;
use plumbmark::limits::LimitSet;
use plumbmark::parts::Check;
use plumbmark::reading::ZeroBy;
use plumbmark_gauge::fault::Fault;
use plumbmark_gauge::gauge::Look;
use plumbmark_gauge::kept::Found;
use plumbmark_gauge::lights::{Show, Towards};

const A: [bool; 2] = [true, false];
const B: [bool; 2] = [false, true];
const BOTH: [bool; 2] = [true; 2];
const SHORT: u32 = 100;
const LONG: u32 = 1_000;

/// Up along the gauge's axes with its head end raised by so many degrees.
fn raised(deg: f64) -> [f64; 3] {
    [0.0, deg.to_radians().sin(), deg.to_radians().cos()]
}

/// A gauge whose check is the pump's outlet: its third one.
fn on_a_pump() -> Hand {
    let mut hand = Hand::new(&Found::Nothing);
    hand.begin();
    for _ in 0..2 {
        hand.press(A, LONG);
    }
    hand.wait(2_000);
    assert_eq!(hand.gauge.check(), Check::PumpOutlet);
    hand
}

#[test]
fn it_tests_itself_and_shows_which_side_is_up() {
    let mut hand = Hand::new(&Found::Nothing);
    assert_eq!(hand.shows(), Show::SelfTest);
    hand.wait(500);
    assert_eq!(hand.shows(), Show::SelfTest);
    hand.wait(2_000);
    assert_eq!(hand.shows(), Show::Ready(None));
    for (up, side) in [
        ([0.0, 1.0, 0.0], Towards::Head),
        ([0.0, -1.0, 0.0], Towards::Tail),
        ([1.0, 0.0, 0.0], Towards::Lower),
        ([-1.0, 0.0, 0.0], Towards::Upper),
    ] {
        hand.up = up;
        hand.wait(100);
        assert_eq!(hand.shows(), Show::Ready(Some(side)));
    }
}

#[test]
fn it_asks_for_the_lower_end_and_answers() {
    let mut hand = on_a_pump();
    hand.lay(raised(40.0));
    hand.wait(2_000);
    assert_eq!(hand.shows(), Show::WhichEnd);
    hand.press(A, SHORT);
    hand.wait(1_500);
    // 15° or more, by common practice alone.
    assert_eq!(hand.shows(), Show::WithinUsage);
    hand.lay(raised(-20.0));
    assert_eq!(hand.shows(), Show::WhichEnd);
    hand.press(B, SHORT);
    hand.wait(1_500);
    assert_eq!(hand.shows(), Show::Beyond(Some(Towards::Head)));
    hand.lay(raised(15.0));
    hand.press(A, SHORT);
    hand.wait(1_500);
    assert_eq!(hand.shows(), Show::NotProven);
}

#[test]
fn the_wrong_end_gives_no_verdict() {
    let mut hand = on_a_pump();
    hand.lay(raised(40.0));
    hand.press(B, SHORT);
    hand.wait(1_500);
    assert_eq!(hand.shows(), Show::NoVerdict);
    hand.press(A, SHORT);
    assert_eq!(hand.shows(), Show::WhichEnd);
    hand.press(BOTH, SHORT);
    hand.wait(1_500);
    assert_eq!(hand.shows(), Show::NoVerdict);
}

#[test]
fn a_capture_is_sent_once_and_the_next_is_asked_for_anew() {
    let mut hand = on_a_pump();
    hand.lay(raised(40.0));
    hand.press(A, SHORT);
    hand.wait(1_500);
    hand.press(B, SHORT);
    hand.wait(500);
    assert_eq!(hand.shows(), Show::Sent);
    hand.wait(3_000);
    assert_eq!(hand.shows(), Show::WhichEnd);
    let [(taken, 1)] = hand.out.sent[..] else {
        panic!("{:?}", hand.out.sent);
    };
    assert_eq!(taken.ends, [Some(End::Tail), None]);
    assert_eq!(taken.zero_by, ZeroBy::Assumed);
    let limits = LimitSet::trade_usage();
    let outcome = &taken.outcomes(&limits.lines, (0.3, 1.5))[0];
    let measured = outcome.measured.expect("an elevation");
    assert!((measured.value_deg - 40.0).abs() < 0.2, "{measured:?}");
    // 80 mg of zero is all that is known of this sensor: 1.96 · 0.082 rad is 9.2°.
    assert!((9.2..10.0).contains(&measured.u_deg), "{measured:?}");
}

#[test]
fn turned_end_for_end_its_zero_is_out() {
    let mut hand = on_a_pump();
    hand.zero = [0.0, -0.03, 0.0];
    hand.lay(raised(20.0));
    hand.press(A, SHORT);
    hand.wait(1_500);
    assert_eq!(hand.shows(), Show::NotProven);
    hand.press(B, LONG);
    hand.wait(1_500);
    assert_eq!(hand.shows(), Show::Turn);
    hand.lay(raised(-20.0));
    hand.wait(2_000);
    assert_eq!(hand.shows(), Show::Turn);
    hand.press(B, SHORT);
    hand.wait(1_500);
    assert_eq!(hand.shows(), Show::WithinUsage);
    hand.press(B, SHORT);
    hand.wait(1_500);
    let [(taken, 1)] = hand.out.sent[..] else {
        panic!("{:?}", hand.out.sent);
    };
    assert_eq!(taken.zero_by, ZeroBy::Turn);
    let limits = LimitSet::trade_usage();
    let measured = taken.outcomes(&limits.lines, (0.3, 1.5))[0]
        .measured
        .expect("an elevation");
    assert!((measured.value_deg - 20.0).abs() < 0.3, "{measured:?}");
    // What is left is mostly the zero along the face, which the turn does not find: 1.96 · 0.082 rad
    // · sin 20° is 3.15°.
    assert!((3.15..3.6).contains(&measured.u_deg), "{measured:?}");
}

/// The buttons then lie at the other ends: the lower one is not asked for again.
#[test]
fn a_turn_given_up_begins_anew() {
    for turned in [false, true] {
        let mut hand = on_a_pump();
        hand.lay(raised(20.0));
        hand.press(A, SHORT);
        hand.press(B, LONG);
        hand.wait(1_500);
        hand.lay(raised(-20.0));
        if turned {
            hand.press(B, SHORT);
            hand.wait(1_500);
            assert_eq!(hand.shows(), Show::WithinUsage);
        }
        hand.press(A, SHORT);
        assert_eq!(hand.shows(), Show::Chosen(3));
        hand.wait(2_000);
        assert_eq!(hand.shows(), Show::WhichEnd);
        assert!(hand.out.sent.is_empty());
    }
}

/// Six faces and three edges, the tail end's face first.
const POSES: [[f64; 3]; 9] = [
    [0.0, 1.0, 0.0],
    [0.0, -1.0, 0.0],
    [1.0, 0.0, 0.0],
    [-1.0, 0.0, 0.0],
    [0.0, 0.0, 1.0],
    [0.0, 0.0, -1.0],
    [0.6, 0.0, 0.8],
    [0.0, 0.6, 0.8],
    [0.6, 0.8, 0.0],
];

#[test]
fn nine_poses_find_zero_and_scale() {
    let mut hand = on_a_pump();
    hand.zero = [0.02, -0.03, 0.01];
    hand.press(BOTH, LONG);
    hand.wait(2_000);
    // Not the first pose: it still lies on its back.
    assert_eq!(hand.shows(), Show::Poses(0));
    for (at, pose) in POSES.into_iter().enumerate() {
        assert_eq!(hand.shows(), Show::Poses(at as u8));
        hand.lay(pose);
        hand.wait(2_000);
    }
    let [calibration] = hand.out.kept[..] else {
        panic!("{:?}", hand.out.kept);
    };
    for (found, zero) in calibration.zero.into_iter().zip(hand.zero) {
        assert!((f64::from(found) - zero).abs() < 0.002, "{calibration:?}");
    }
    hand.lay(raised(30.0));
    hand.press(A, SHORT);
    hand.wait(1_500);
    hand.press(B, SHORT);
    hand.wait(1_500);
    let [(taken, _)] = hand.out.sent[..] else {
        panic!("{:?}", hand.out.sent);
    };
    assert_eq!(taken.zero_by, ZeroBy::Found);
}

#[test]
fn axes_the_wrong_way_round_are_found_out() {
    let mut hand = on_a_pump();
    hand.press(BOTH, LONG);
    hand.lay([0.0, -1.0, 0.0]);
    hand.wait(2_000);
    assert_eq!(hand.shows(), Show::Fault(Fault::Axes));
    hand.wait(10_000);
    assert_eq!(hand.shows(), Show::Fault(Fault::Axes));
    hand.press(A, SHORT);
    hand.wait(1_500);
    assert_eq!(hand.shows(), Show::Ready(Some(Towards::Tail)));
}

/// While a fault lasts it alone is shown; afterwards the self test, never what was there before.
#[test]
fn nothing_from_before_a_fault_is_shown() {
    for fault in [Fault::NoAnswer, Fault::WrongSensor, Fault::SupplyLow] {
        let mut hand = on_a_pump();
        hand.lay(raised(40.0));
        hand.press(A, SHORT);
        hand.wait(1_500);
        assert_eq!(hand.shows(), Show::WithinUsage);
        for _ in 0..50 {
            let sample = hand.sample();
            hand.look(Look {
                sample: if fault == Fault::SupplyLow {
                    Ok(Some(sample))
                } else {
                    Err(fault)
                },
                pressed: [false; 2],
                supply_low: fault == Fault::SupplyLow,
            });
            assert_eq!(hand.shows(), Show::Fault(fault));
        }
        let mut seen = Vec::new();
        for _ in 0..400 {
            hand.wait(10);
            if seen.last() != Some(&hand.shows()) {
                seen.push(hand.shows());
            }
        }
        assert_eq!(seen, [Show::Fault(fault), Show::Ready(None)]);
    }
}
