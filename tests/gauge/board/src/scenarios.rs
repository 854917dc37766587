//! Everything that the gauge can meet.

mod calibrating;
mod capturing;
mod faults;
mod flash;
mod pressing;
mod reading;
mod starting;
mod turning;

use crate::motions::Motion;
use crate::rig::{A, LONG_MS, SHORT_MS, comes, lay, power_on, press, run};
use plumbmark::parts::Check;

/// A name and what is played.
type Scenario = (&'static str, fn());

/// All of them.
pub const ALL: &[Scenario] = &[
    ("start: the self test runs", starting::self_test),
    ("start: each side that is up", starting::sides),
    ("start: without a sensor", starting::without_sensor),
    ("start: not at rest", starting::not_still),
    ("reading: every answer of every check", reading::answers),
    ("reading: moved, and at rest again", reading::moved),
    ("reading: a drift is no rest", reading::drifting),
    ("reading: shaken", reading::shaken),
    ("buttons: through all checks", pressing::through_all),
    ("buttons: bouncing contacts", pressing::bouncing),
    ("buttons: touched too shortly", pressing::touched),
    ("buttons: held for good", pressing::held),
    ("buttons: without meaning here", pressing::without_meaning),
    ("buttons: the eye's answer taken back", pressing::eye_again),
    ("buttons: calibration left", pressing::calibration_left),
    ("capture: its line", capturing::sent),
    ("capture: counted", capturing::counted),
    ("capture: on whose word", capturing::on_whose_word),
    ("capture: waits for rest", capturing::waits),
    (
        "capture: does not wait for ever",
        capturing::waits_no_longer,
    ),
    ("capture: moved before it", capturing::moved_before),
    ("turn: proves what one placement does not", turning::proves),
    ("turn: level", turning::level),
    ("turn: said, but not done", turning::not_turned),
    ("turn: not end for end", turning::not_end_for_end),
    ("turn: too late", turning::too_late),
    ("turn: given up", turning::given_up),
    ("calibration: found, kept and used", calibrating::kept),
    ("calibration: upside down", calibrating::upside_down),
    ("calibration: another first pose", calibrating::first_pose),
    ("calibration: the same pose again", calibrating::same_pose),
    (
        "calibration: poses that contradict",
        calibrating::contradicting,
    ),
    ("calibration: flash that fails", calibrating::flash_fails),
    ("fault: each one, and back", faults::each),
    ("fault: another sensor", faults::other_sensor),
    ("fault: one after the other", faults::in_turn),
    ("fault: a loose wire", faults::loose_wire),
    ("fault: while a capture is wanted", faults::while_wanted),
    ("fault: supply low, and recovered", faults::supply),
    ("fault: a transfer that never ends", faults::hangs),
    ("fault: a panic", faults::panics),
    ("flash: power goes after any byte", flash::torn_anywhere),
    (
        "flash: power goes while the first is written",
        flash::torn_first,
    ),
    ("flash: the only record damaged", flash::damaged),
    ("flash: goes on after a torn write", flash::goes_on),
    ("flash: a panic of its driver", flash::panicking),
    ("flash: any bit flips", flash::flipped),
];

/// The gauge is on, its test passed; it lies as said.
fn ready(to: [f32; 3]) {
    lay(to);
    power_on();
    comes(Motion::SelfTest, 100);
    run(2_500);
}

/// The gauge reads `check`, lying as said.
pub fn reads(check: Check, to: [f32; 3]) {
    ready(to);
    press(A, SHORT_MS);
    for _ in 0..check as usize {
        press(A, LONG_MS);
    }
    comes(Motion::Chosen(check as u8 + 1), 500);
    run(1_600);
}

/// The eye says which end is lower; then the answer.
fn answered(eye: [bool; 2], motion: Motion) {
    comes(Motion::WhichEnd, 500);
    press(eye, SHORT_MS);
    comes(motion, 2_000);
}
