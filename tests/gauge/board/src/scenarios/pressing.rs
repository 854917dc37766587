//! Buttons: short, long, both, bouncing, and what each does where.

use super::{answered, reads, ready};
use crate::motions::{Motion, Side};
use crate::rig::{A, B, BOTH, LONG_MS, SHORT_MS, comes, line, press, run, shows, up};
use crate::world::world;
use plumbmark::parts::Check;

/// Any press leads from the test's end to the first check; long ones lead through all of them and
/// round.
pub fn through_all() {
    for first in [A, B, BOTH] {
        ready(up(0.0, 0.0));
        press(first, SHORT_MS);
        comes(Motion::Chosen(1), 200);
    }
    for number in [2, 3, 4, 5, 6, 1] {
        press(A, LONG_MS);
        comes(Motion::Chosen(number), 200);
    }
}

/// Contacts that bounce for 20 ms at either end of a press make one press.
pub fn bouncing() {
    ready(up(0.0, 0.0));
    for number in [1, 2, 3] {
        bounce(true);
        run(if number == 1 { SHORT_MS } else { LONG_MS });
        bounce(false);
        comes(Motion::Chosen(number), 200);
    }
}

fn bounce(to: bool) {
    for at in 0..5 {
        world(|world| world.pressed = [to ^ (at % 2 == 1), false]);
        run(4);
    }
    world(|world| world.pressed = [to, false]);
}

/// What is shorter than a bounce is no press.
pub fn touched() {
    ready(up(0.0, 0.0));
    for pressed in [A, B, BOTH] {
        world(|world| world.pressed = pressed);
        run(10);
        world(|world| world.pressed = [false; 2]);
        run(100);
    }
    shows(Motion::Ready(None));
}

/// A button held for good is one long press, and no more.
pub fn held() {
    reads(Check::HeaterPort, up(0.0, 0.0));
    world(|world| world.pressed = A);
    comes(Motion::Chosen(2), 1_500);
    run(5_000);
    shows(Motion::WhichEnd);
    world(|world| world.pressed = [false; 2]);
    run(200);
    shows(Motion::WhichEnd);
}

/// What has no meaning where it is pressed is refused, and nothing is sent.
pub fn without_meaning() {
    reads(Check::PumpRoll, up(0.0, 20.0));
    comes(Motion::Within, 2_000);
    press(BOTH, SHORT_MS);
    comes(Motion::Refused, 200);
    run(1_600);
    reads(Check::PumpOutlet, up(45.0, 0.0));
    press(B, LONG_MS);
    comes(Motion::Refused, 200);
    assert!(line().is_none(), "nothing is sent");
}

/// The answer of the eye can be taken back.
pub fn eye_again() {
    reads(Check::PumpOutlet, up(45.0, 0.0));
    answered(B, Motion::NoVerdict);
    press(A, SHORT_MS);
    answered(A, Motion::Within);
    press(A, LONG_MS);
    comes(Motion::Chosen(4), 200);
    press(A, LONG_MS);
    run(1_600);
    // What was said of the pump is not said of the filter.
    shows(Motion::WhichEnd);
}

/// Both for long calibrates; any press leaves it again.
pub fn calibration_left() {
    for leave in [A, B, BOTH] {
        reads(Check::PumpRoll, up(0.0, 100.0));
        press(BOTH, LONG_MS);
        comes(Motion::Poses(0), 200);
        press(leave, SHORT_MS);
        comes(Motion::Refused, 200);
        run(1_600);
        comes(Motion::Beyond(Some(Side::Lower)), 2_000);
    }
}
