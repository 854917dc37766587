//! Calibration by faces: found, kept, used, refused.

use super::reads;
use crate::motions::{CROSS_FRAME, MIDDLE_ROW, Motion, Side};
use crate::rig::{
    B, BOTH, LONG_MS, SHORT_MS, comes, lay, lift, line, picture, power_on, press, run, shows, up,
};
use crate::seen::Frame;
use crate::world::world;
use plumbmark::parts::Check;
use plumbmark::reading::ZeroBy;
use plumbmark_gauge::kept::{Found, load};

/// Pitch and roll of six faces and of twelve edges, the tail end first.
const POSES: [(f32, f32); 18] = [
    (90.0, 0.0),
    (-90.0, 0.0),
    (0.0, 0.0),
    (0.0, 180.0),
    (0.0, 90.0),
    (0.0, -90.0),
    (45.0, 0.0),
    (-45.0, 0.0),
    (45.0, 180.0),
    (-45.0, 180.0),
    (45.0, 90.0),
    (-45.0, 90.0),
    (45.0, -90.0),
    (-45.0, -90.0),
    (0.0, 45.0),
    (0.0, 135.0),
    (0.0, -45.0),
    (0.0, -135.0),
];

/// Zero, mg, and scale that are to be found.
const ZERO_MG: [f32; 3] = [60.0, -45.0, 70.0];
const SCALE: [f32; 3] = [1.01, 0.99, 1.005];

/// Lays the gauge on one after the other until `last` is seen; how many it took.
fn through_poses(last: Frame) -> usize {
    for (count, (pitch, roll)) in POSES.into_iter().enumerate() {
        lift(up(pitch, roll));
        for _ in 0..30 {
            run(50);
            if picture() == last {
                return count + 1;
            }
        }
        shows(Motion::Poses(count as u8 + 1));
    }
    POSES.len() + 1
}

fn begins() {
    world(|world| {
        world.sensor.felt.zero_mg = ZERO_MG;
        world.sensor.felt.scale = SCALE;
    });
    reads(Check::PumpRoll, up(0.0, 0.0));
    press(BOTH, LONG_MS);
    comes(Motion::Poses(0), 300);
}

fn captured(truth_cdeg: i32, most_u_cdeg: i32) {
    comes(Motion::Within, 3_000);
    press(B, SHORT_MS);
    comes(Motion::Sent, 1_500);
    let line = line().expect("a line is sent");
    assert_eq!(line.taken.zero_by, ZeroBy::Found);
    let at = line
        .limits
        .iter()
        .position(|limit| limit.check == Check::PumpRoll);
    let (value_cdeg, u_cdeg) = line.shown[at.expect("the roll")]
        .measured_cdeg
        .expect("it was read");
    assert!(
        (value_cdeg - truth_cdeg).abs() < u_cdeg,
        "{truth_cdeg}: {value_cdeg} +- {u_cdeg}"
    );
    assert!(u_cdeg < most_u_cdeg, "calibrated, U is {u_cdeg}");
}

/// The zero and the scale are found, kept in flash, used at once and after power was away.
pub fn kept() {
    begins();
    let took = through_poses(MIDDLE_ROW);
    assert!((9..=18).contains(&took), "it took {took} poses");
    comes(Motion::Stored, 500);
    let Found::Good(kept) = world(|world| load(&mut world.flash)) else {
        panic!("nothing is kept");
    };
    // In the gauge's own axes.
    let zero = [-ZERO_MG[1], -ZERO_MG[0], -ZERO_MG[2]].map(|mg| mg / 1000.0);
    for ((found, u), truth) in kept
        .calibration
        .zero
        .iter()
        .zip(kept.calibration.u_zero)
        .zip(zero)
    {
        assert!(
            (found - truth).abs() < 3.0 * u && u < 0.005,
            "{truth}: {found} +- {u}"
        );
    }
    lift(up(0.0, 57.0));
    run(1_600);
    captured(5_700, 300);
    lay(up(0.0, 57.0));
    power_on();
    run(2_500);
    reads(Check::PumpRoll, up(0.0, 57.0));
    captured(5_700, 300);
}

/// The gauge stands on its head end where the tail end was asked for: the axes are not as thought.
pub fn upside_down() {
    begins();
    lift(up(-90.0, 0.0));
    comes(Motion::Fault(6), 2_500);
    run(5_000);
    shows(Motion::Fault(6));
    press(B, SHORT_MS);
    comes(Motion::Ready(Some(Side::Tail)), 2_500);
    assert_eq!(world(|world| load(&mut world.flash)), Found::Nothing);
}

/// Another first pose is not taken.
pub fn first_pose() {
    begins();
    lift(up(0.0, 90.0));
    run(3_000);
    shows(Motion::Poses(0));
}

/// A pose that is held on does not count twice.
pub fn same_pose() {
    begins();
    lift(up(90.0, 0.0));
    run(5_000);
    shows(Motion::Poses(1));
    lift(up(82.0, 0.0));
    run(3_000);
    shows(Motion::Poses(1));
}

/// A sensor whose zero jumps between the poses: they contradict each other, and nothing is kept.
pub fn contradicting() {
    begins();
    for (at, (pitch, roll)) in POSES.into_iter().enumerate() {
        let jump = if at % 2 == 0 { 60.0 } else { -60.0 };
        world(|world| world.sensor.felt.zero_mg = [jump, -jump, jump]);
        lift(up(pitch, roll));
        run(1_500);
    }
    run(3_000);
    assert_eq!(world(|world| load(&mut world.flash)), Found::Nothing);
}

/// Flash that cannot be written is a fault, and not a calibration.
pub fn flash_fails() {
    begins();
    world(|world| world.flash.is_broken = true);
    through_poses(CROSS_FRAME);
    comes(Motion::Fault(8), 2_000);
}
