//! The turn end for end: two placements take the zero out.

use super::{answered, reads};
use crate::motions::{Motion, Side};
use crate::rig::{A, B, LONG_MS, SHORT_MS, comes, lift, line, press, run, shows, up};
use crate::world::world;
use plumbmark::line::Line;
use plumbmark::parts::Check;
use plumbmark::reading::ZeroBy;

/// The gauge on its surface, and turned end for end on it.
fn both(pitch_deg: f32, roll_deg: f32) -> [[f32; 3]; 2] {
    let [x, y, z] = up(pitch_deg, roll_deg);
    [[x, y, z], [-x, -y, z]]
}

/// A zero along the gauge's two axes and across them.
fn zero(along_mg: f32) {
    world(|world| world.sensor.felt.zero_mg = [-along_mg, along_mg, 20.0]);
}

/// 3° above the limit nothing is proven; after the turn it is, and the line says how. The end that
/// has to rise is the part's, not the gauge's.
pub fn proves() {
    zero(35.0);
    let [first, second] = both(15.0, 0.0);
    reads(Check::HeaterOutlet, first);
    answered(A, Motion::NotProven);
    press(B, LONG_MS);
    comes(Motion::Turn, 2_000);
    lift(second);
    press(B, SHORT_MS);
    comes(Motion::Beyond(Some(Side::Head)), 3_000);
    press(B, SHORT_MS);
    comes(Motion::Sent, 1_500);
    let line = line().expect("a line is sent");
    assert_eq!(line.taken.zero_by, ZeroBy::Turn);
    near(&line, Check::HeaterOutlet, 1_500, 300);
    // The turn holds for one capture.
    lift(first);
    run(1_600);
    answered(A, Motion::NotProven);
}

/// The value lies within its U of the truth, and U is no larger than said.
fn near(line: &Line, check: Check, truth_cdeg: i32, most_u_cdeg: i32) {
    let at = line.limits.iter().position(|limit| limit.check == check);
    let shown = &line.shown[at.expect("the check is in the line")];
    let (value_cdeg, u_cdeg) = shown.measured_cdeg.expect("it was read");
    let off_cdeg = (value_cdeg - truth_cdeg).abs();
    assert!(
        off_cdeg < u_cdeg && u_cdeg < most_u_cdeg,
        "{truth_cdeg}: {value_cdeg} +- {u_cdeg}"
    );
}

/// Level, the turn leaves a small U and takes the whole zero out.
pub fn level() {
    // Nearly what its maker states, 4°.
    zero(70.0);
    let [first, second] = both(4.0, 0.0);
    reads(Check::PumpRoll, first);
    press(B, LONG_MS);
    comes(Motion::Turn, 2_000);
    lift(second);
    press(B, SHORT_MS);
    comes(Motion::Within, 3_000);
    press(B, SHORT_MS);
    comes(Motion::Sent, 1_500);
    let line = line().expect("a line is sent");
    near(&line, Check::PumpOutlet, 400, 200);
    near(&line, Check::PumpRoll, 0, 200);
}

/// Said to be turned, but only knocked: it is not believed, the turn is still wanted.
pub fn not_turned() {
    reads(Check::PumpRoll, up(0.0, 20.0));
    press(B, LONG_MS);
    comes(Motion::Turn, 2_000);
    press(B, SHORT_MS);
    comes(Motion::Refused, 200);
    run(2_000);
    shows(Motion::Turn);
    assert!(line().is_none());
}

/// Lifted, but laid down as before: the two placements disagree, and the turn is given up.
pub fn not_end_for_end() {
    reads(Check::PumpRoll, up(0.0, 40.0));
    press(B, LONG_MS);
    comes(Motion::Turn, 2_000);
    lift(up(0.0, 40.0));
    press(B, SHORT_MS);
    comes(Motion::Refused, 3_000);
    assert!(line().is_none());
}

/// A first placement does not count for ever.
pub fn too_late() {
    let [first, second] = both(0.0, 20.0);
    reads(Check::PumpRoll, first);
    press(B, LONG_MS);
    comes(Motion::Turn, 2_000);
    lift(second);
    run(200_000);
    press(B, SHORT_MS);
    comes(Motion::Refused, 3_000);
    assert!(line().is_none());
}

/// The turn can be given up by hand.
pub fn given_up() {
    reads(Check::PumpRoll, up(0.0, 20.0));
    press(B, LONG_MS);
    comes(Motion::Turn, 2_000);
    press(A, SHORT_MS);
    comes(Motion::Chosen(4), 300);
    run(1_600);
    comes(Motion::Within, 2_000);
}
