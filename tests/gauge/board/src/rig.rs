//! The script's hands and eyes: it lays the gauge, presses its buttons, watches its lights, reads
//! its line.

use crate::fake::gauge;
use crate::motions::{Cycle, DARK_FRAME, Motion, VERDICTS, cycle};
use crate::seen::{Frame, Stood};
use crate::stack::{Left, prepare, resume};
use crate::world::world;
use heapless::Vec;
use plumbmark::line::{Line, read};

/// Time of a short and of a long press, ms.
pub const SHORT_MS: u32 = 100;
pub const LONG_MS: u32 = 1_000;
/// Buttons.
pub const A: [bool; 2] = [true, false];
pub const B: [bool; 2] = [false, true];
pub const BOTH: [bool; 2] = [true, true];

/// Power comes; flash is as it was, and so is the sensor if it kept its power.
pub fn power_on() {
    world(|world| {
        world.flash.power_for = None;
        world.flash.is_off = false;
        world.bus_hangs = false;
        world.panics = false;
        world.restarted = false;
        world.pressed = [false; 2];
        world.sensor.power_again();
    });
    start();
}

/// The board starts anew, as after a watchdog or a panic: the sensor keeps its power.
pub fn restart() {
    world(|world| {
        world.bus_hangs = false;
        world.panics = false;
        world.restarted = true;
    });
    start();
}

fn start() {
    world(|world| {
        world.seen.begin();
        world.line.clear();
    });
    prepare(gauge);
    assert_eq!(resume(), Left::Tick, "the gauge starts");
}

/// Runs the gauge for so long, ms, or until it is lost.
pub fn run_or_lose(ms: u32) -> Left {
    for _ in 0..ms / 2 {
        let left = resume();
        if left != Left::Tick {
            return left;
        }
    }
    Left::Tick
}

/// Runs the gauge for so long, ms.
pub fn run(ms: u32) {
    assert_eq!(run_or_lose(ms), Left::Tick, "the gauge runs");
}

/// Presses and lets go; waits until that has been seen. A finger knocks the gauge both times.
pub fn press(buttons: [bool; 2], ms: u32) {
    knock();
    world(|world| world.pressed = buttons);
    run(ms);
    world(|world| world.pressed = [false; 2]);
    run(20);
    knock();
    run(40);
}

/// A quarter of gravity across the lights for 30 ms.
fn knock() {
    let still_mg = world(|world| world.sensor.felt.force_mg);
    world(|world| world.sensor.felt.force_mg[2] += 250.0);
    run(30);
    world(|world| world.sensor.felt.force_mg = still_mg);
}

/// Up in the gauge's own axes, with its head end raised by `pitch_deg` and its upper long side by
/// `roll_deg`.
pub fn up(pitch_deg: f32, roll_deg: f32) -> [f32; 3] {
    let (pitch, roll) = (pitch_deg.to_radians(), roll_deg.to_radians());
    let level = libm::cosf(pitch);
    [
        -level * libm::sinf(roll),
        libm::sinf(pitch),
        level * libm::cosf(roll),
    ]
}

/// Lays the gauge down so that `up` is up in its own axes.
pub fn lay(up: [f32; 3]) {
    let [x, y, z] = up.map(|u| u * 1000.0);
    world(|world| world.sensor.felt.force_mg = [-y, -x, -z]);
}

/// Lifts the gauge, moves it about, and lays it down.
pub fn lift(to: [f32; 3]) {
    for at in 0..40 {
        // Never as it will lie.
        let about = to.map(|u| -u + 0.3 * libm::sinf(at as f32));
        lay(about);
        run(20);
    }
    lay(to);
}

/// The picture that the lights show now.
pub fn picture() -> Frame {
    world(|world| world.seen.now())
}

/// Waits until `motion` is seen to move.
pub fn comes(motion: Motion, within_ms: u32) {
    let cycle = cycle(motion);
    let look_ms = longest(&cycle) + 50;
    let mut left_ms = within_ms;
    while left_ms > 0 {
        run(10);
        left_ms = left_ms.saturating_sub(10);
        if cycle.iter().any(|(frame, _)| *frame == picture()) {
            world(|world| world.seen.forget());
            run(look_ms);
            if is(&cycle, 1).is_ok() {
                return;
            }
            left_ms = left_ms.saturating_sub(look_ms);
        }
    }
    shows(motion);
}

fn longest(cycle: &Cycle) -> u32 {
    cycle.iter().map(|(_, ms)| *ms).max().unwrap_or(0)
}

/// Watches for a round, and fails unless it is the motion's, each picture in its time.
pub fn shows(motion: Motion) {
    let cycle = cycle(motion);
    world(|world| world.seen.forget());
    let round: u32 = cycle.iter().map(|(_, ms)| ms).sum();
    run(round.min(2_400) + longest(&cycle) + 20);
    if let Err(why) = is(&cycle, 2) {
        let seen: Vec<Stood, 48> = world(|world| world.seen.pictures().collect());
        panic!("{why}: not {motion:?} but {seen:x?}");
    }
}

/// Whether what was seen is a stretch of the cycle, with so many changes at least.
fn is(cycle: &Cycle, changes: usize) -> Result<(), &'static str> {
    let seen: Vec<Stood, 48> = world(|world| world.seen.pictures().collect());
    if seen.len() < changes + 1 {
        return Err("too few pictures");
    }
    let fits = |from: usize| {
        let of_cycle = cycle.iter().cycle().skip(from);
        let inner = 1..seen.len().saturating_sub(1);
        seen.iter()
            .zip(of_cycle)
            .enumerate()
            .all(|(at, (stood, (frame, ms)))| {
                // The first and the last picture were seen in part.
                let long = if inner.contains(&at) {
                    stood.ms == *ms
                } else {
                    stood.ms <= *ms
                };
                stood.frame == *frame && long
            })
    };
    if (0..cycle.len()).any(fits) {
        Ok(())
    } else {
        Err("another motion")
    }
}

/// Fails if a verdict was seen since pictures were last forgotten, or anything was sent.
pub fn no_verdict_since(what: &str) {
    let seen: Vec<Stood, 48> = world(|world| world.seen.pictures().collect());
    for stood in seen {
        assert!(
            !is_of_verdict(stood.frame),
            "{what}: a verdict is shown: {:x?}",
            stood.frame
        );
    }
    assert!(
        world(|world| world.line.is_empty()),
        "{what}: a line is sent"
    );
}

/// Fails if a picture that only `motion` has was seen since pictures were last forgotten.
pub fn never(motion: Motion, what: &str) {
    let seen: Vec<Stood, 48> = world(|world| world.seen.pictures().collect());
    let cycle = cycle(motion);
    let of_motion = |stood: &Stood| cycle.iter().any(|(frame, _)| *frame == stood.frame);
    let found = seen
        .iter()
        .find(|stood| is_of_verdict(stood.frame) && of_motion(stood));
    assert!(found.is_none(), "{what}: {motion:?} is shown");
}

/// Fails if a verdict is shown now.
pub fn no_verdict_now(what: &str) {
    assert!(
        !is_of_verdict(picture()),
        "{what}: a verdict is shown: {:x?}",
        picture()
    );
}

/// Whether a picture is one that only verdicts have.
pub fn is_of_verdict(frame: Frame) -> bool {
    let has = |motion: &Motion| cycle(*motion).iter().any(|(picture, _)| *picture == frame);
    frame != DARK_FRAME && VERDICTS.iter().any(has)
}

/// The line sent since the last one was taken.
pub fn line() -> Option<Line> {
    let bytes = world(|world| core::mem::take(&mut world.line));
    (!bytes.is_empty()).then(|| read(&bytes).expect("a line that can be read"))
}
