//! Checks read: each answer that they can have, live.

use super::{answered, reads};
use crate::motions::{Motion, Side};
use crate::rig::{A, B, BOTH, SHORT_MS, comes, lay, press, run, shows, up};
use crate::world::world;
use plumbmark::parts::Check;

/// How the gauge lies, which end the eye says is lower, and what is shown.
type Case = (Check, [f32; 3], Option<[bool; 2]>, Motion);

/// Every answer of every check. The data sheet's zero leaves some 6° uncertain.
pub fn answers() {
    let cases: [Case; 19] = [
        (Check::HeaterPort, up(0.0, 0.0), Some(B), Motion::Within),
        (Check::HeaterPort, up(65.0, 0.0), Some(B), Motion::NotProven),
        (
            Check::HeaterPort,
            up(0.0, 120.0),
            Some(A),
            Motion::Beyond(None),
        ),
        (
            Check::HeaterOutlet,
            up(-20.0, 0.0),
            Some(B),
            Motion::WithinUsage,
        ),
        (
            Check::HeaterOutlet,
            up(10.0, 0.0),
            Some(A),
            Motion::NotProven,
        ),
        (
            Check::HeaterOutlet,
            up(30.0, 0.0),
            Some(A),
            Motion::Beyond(Some(Side::Tail)),
        ),
        (Check::PumpOutlet, up(45.0, 0.0), Some(A), Motion::Within),
        (Check::PumpOutlet, up(24.0, 0.0), Some(A), Motion::NotProven),
        (
            Check::PumpOutlet,
            up(8.0, 0.0),
            Some(A),
            Motion::Beyond(Some(Side::Head)),
        ),
        (
            Check::PumpOutlet,
            up(-60.0, 0.0),
            Some(B),
            Motion::Beyond(Some(Side::Head)),
        ),
        (Check::PumpOutlet, up(45.0, 0.0), Some(B), Motion::NoVerdict),
        (
            Check::PumpOutlet,
            up(45.0, 0.0),
            Some(BOTH),
            Motion::NoVerdict,
        ),
        (Check::PumpRoll, up(0.0, 20.0), None, Motion::Within),
        (Check::PumpRoll, up(0.0, 61.0), None, Motion::NotProven),
        (
            Check::PumpRoll,
            up(0.0, 100.0),
            None,
            Motion::Beyond(Some(Side::Lower)),
        ),
        (
            Check::PumpRoll,
            up(0.0, -100.0),
            None,
            Motion::Beyond(Some(Side::Upper)),
        ),
        (Check::PumpRoll, up(88.0, 0.0), None, Motion::NoReading),
        (
            Check::FilterUpright,
            up(70.0, 0.0),
            Some(A),
            Motion::WithinUsage,
        ),
        (Check::PipeFall, up(-20.0, 0.0), Some(B), Motion::NotProven),
    ];
    for (check, to, eye, motion) in cases {
        reads(check, to);
        if let Some(eye) = eye {
            shows(Motion::WhichEnd);
            press(eye, SHORT_MS);
        }
        comes(motion, 2_000);
    }
}

/// While the gauge is moved there is no reading; at rest there is one within two seconds, by the
/// new attitude, and the eye is asked anew.
pub fn moved() {
    reads(Check::PumpOutlet, up(45.0, 0.0));
    answered(A, Motion::Within);
    for at in 0..40 {
        lay(up(40.0 + 30.0 * libm::cosf(at as f32), 0.0));
        run(20);
        if at > 2 {
            crate::rig::no_verdict_now("moved");
        }
    }
    lay(up(8.0, 0.0));
    comes(Motion::WhichEnd, 500);
    answered(A, Motion::Beyond(Some(Side::Head)));
}

/// A slow drift is no rest.
pub fn drifting() {
    reads(Check::PumpRoll, up(0.0, 0.0));
    comes(Motion::Within, 2_000);
    for at in 0..300 {
        lay(up(0.0, at as f32 * 0.1));
        run(10);
        if at > 60 {
            crate::rig::no_verdict_now("drifting");
        }
    }
}

/// Shaken at the board's own rhythm, or by an engine, there is no reading.
pub fn shaken() {
    reads(Check::PumpRoll, up(0.0, 0.0));
    comes(Motion::Within, 2_000);
    world(|world| world.sensor.felt.noise_mg = 150.0);
    run(600);
    shows(Motion::NoReading);
}
