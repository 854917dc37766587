//! What the gauge costs: its stack over all scenarios, and instructions of its real loop.

use crate::count::{Counter, Work};
use crate::fake::Fake;
use crate::motions::Motion;
use crate::rig::{A, B, SHORT_MS, comes, press, run, up};
use crate::scenarios::reads;
use crate::world::world;
use core::hint::black_box;
use core::mem::size_of;
use cortex_m_semihosting::hprintln;
use plumbmark::parts::Check;
use plumbmark_gauge::lights::{Show, frame};
use plumbmark_gauge::run::Running;

/// Samples that a reading is amortised over.
const WINDOW: u64 = 60;
/// Time that the loop is watched for, ms.
const WATCHED_MS: u32 = 10_000;
/// Captures that are watched.
const CAPTURES: u64 = 5;

/// Instructions of looks, lines and everything else so far.
fn spent() -> [u64; 3] {
    [Work::Look, Work::Line, Work::Board].map(Counter::instructions)
}

fn since(before: [u64; 3]) -> [u64; 3] {
    let now = spent();
    core::array::from_fn(|i| now[i] - before[i])
}

/// Prints it all; `deepest` is the stack's.
pub fn say(deepest: usize) {
    hprintln!("stack bytes\t{}", deepest);
    hprintln!("Running bytes\t{}", size_of::<Running<Fake>>());
    reads(Check::PumpOutlet, up(45.0, 0.0));
    press(A, SHORT_MS);
    comes(Motion::Within, 2_000);
    let before = spent();
    run(WATCHED_MS);
    let [looks, _, board] = since(before);
    let samples = u64::from(WATCHED_MS / 10);
    let live = looks / samples - picture();
    hprintln!("live\t{}", live);
    hprintln!("picture\t{}", picture());
    hprintln!("driver, lights and supply\t{}", board / samples);
    let mut captures = 0;
    for _ in 0..CAPTURES {
        captures += captured(live);
    }
    let capture = captures / CAPTURES;
    hprintln!("capture\t{}", capture);
    hprintln!("longest look\t{}", Counter::most());
    hprintln!("share\t{}", live + capture / WINDOW);
}

/// Instructions of a picture of a verdict, which a look also makes: the lights' share of it.
fn picture() -> u64 {
    const PICTURES: u32 = 300;
    Counter::begin();
    for at in 0..PICTURES {
        black_box(frame(black_box(Show::Within), at * 10));
    }
    Counter::spent() / u64::from(PICTURES)
}

/// Instructions that a capture takes beside the live answers of its time.
fn captured(live: u64) -> u64 {
    let (before, ticks) = (spent(), world(|world| world.ticks));
    // A press that does not knock: the live answers go on.
    for pressed in [B, [false; 2]] {
        world(|world| world.pressed = pressed);
        run(SHORT_MS);
    }
    comes(Motion::Sent, 1_500);
    let [looks, line, _] = since(before);
    let samples = u64::from(world(|world| world.ticks) - ticks) / 5;
    world(|world| world.line.clear());
    run(1_600);
    press(A, SHORT_MS);
    comes(Motion::Within, 2_000);
    (looks + line).saturating_sub((live + picture()) * samples)
}
