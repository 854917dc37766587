//! Faults, one by one and back. The gauge is turned while a fault lasts, so that an old answer
//! would be a wrong one: after the fault has shown itself no answer may be shown and nothing sent,
//! until somebody has asked anew and a whole second of rest is there.

use super::{reads, ready};
use crate::motions::{Motion, Side};
use crate::rig::{
    A, SHORT_MS, comes, lay, line, never, no_verdict_since, press, restart, run, run_or_lose,
    shows, up,
};
use crate::stack::Left;
use crate::world::{World, world};
use gauge_model::Fault;
use plumbmark::parts::Check;

/// How a fault comes, its number, the longest time until it shows, ms.
type Case = (&'static str, fn(&mut World), u8, u32);

fn sensor(world: &mut World, fault: Fault) {
    world.sensor.fault = Some(fault);
}

const CASES: [Case; 14] = [
    ("unplugged", |w| sensor(w, Fault::NoAcknowledge), 1, 50),
    ("a wire is held", |w| sensor(w, Fault::StuckBus), 1, 50),
    ("no new sample", |w| sensor(w, Fault::NeverReady), 1, 200),
    ("settings lost", |w| w.sensor.power_again(), 1, 200),
    ("frozen", |w| sensor(w, Fault::Frozen), 3, 1_000),
    ("x stuck", |w| sensor(w, Fault::StuckAxis(0)), 3, 1_000),
    ("y stuck", |w| sensor(w, Fault::StuckAxis(1)), 3, 1_000),
    ("z stuck", |w| sensor(w, Fault::StuckAxis(2)), 3, 1_000),
    (
        "x at its end",
        |w| sensor(w, Fault::SaturatedAxis(0)),
        4,
        300,
    ),
    (
        "y at its end",
        |w| sensor(w, Fault::SaturatedAxis(1)),
        4,
        300,
    ),
    (
        "z at its end",
        |w| sensor(w, Fault::SaturatedAxis(2)),
        4,
        300,
    ),
    (
        "far from gravity",
        |w| w.sensor.felt.scale = [0.8; 3],
        5,
        2_200,
    ),
    (
        "not quite gravity",
        |w| w.sensor.felt.scale = [0.87; 3],
        5,
        4_000,
    ),
    ("supply low", |w| w.supply_mv = 1_990, 7, 600),
];

fn mended(world: &mut World) {
    world.sensor.fault = None;
    world.sensor.felt.scale = [1.0; 3];
    world.sensor.power_again();
    world.supply_mv = 3_000;
}

/// Each fault: it shows in time, stays, and ends; then what there is now
/// is answered, and what was answered before does not come back.
pub fn each() {
    for (what, begin, number, within_ms) in CASES {
        reads(Check::PumpRoll, up(0.0, 100.0));
        comes(Motion::Beyond(Some(Side::Lower)), 2_000);
        world(begin);
        run(within_ms);
        world(|world| world.seen.forget());
        lay(up(0.0, 20.0));
        if what != "settings lost" {
            run(2_000);
            no_verdict_since(what);
            shows(Motion::Fault(number));
            no_verdict_since(what);
            world(mended);
        }
        comes(Motion::Ready(None), 6_000);
        no_verdict_since(what);
        press(A, SHORT_MS);
        comes(Motion::Chosen(4), 300);
        no_verdict_since(what);
        comes(Motion::Within, 3_000);
        never(Motion::Beyond(Some(Side::Lower)), what);
    }
}

/// Something else is plugged in where the accelerometer was.
pub fn other_sensor() {
    ready(up(0.0, 0.0));
    world(|world| sensor(world, Fault::NoAcknowledge));
    comes(Motion::Fault(1), 300);
    world(|world| sensor(world, Fault::WrongIdentity));
    comes(Motion::Fault(2), 1_500);
    world(mended);
    comes(Motion::Ready(None), 6_000);
}

/// One fault after the other: the last one is shown.
pub fn in_turn() {
    reads(Check::PumpRoll, up(0.0, 20.0));
    comes(Motion::Within, 2_000);
    for (what, begin, number, within_ms) in CASES {
        if what == "settings lost" {
            continue;
        }
        world(mended);
        world(begin);
        // The self test begins anew before it can judge.
        run(within_ms + 2_500);
        shows(Motion::Fault(number));
        no_verdict_since(what);
    }
}

/// A transfer that fails once in a while: each time a fault, and never a verdict behind it.
pub fn loose_wire() {
    reads(Check::PumpRoll, up(0.0, 20.0));
    comes(Motion::Within, 2_000);
    for _ in 0..5 {
        world(|world| sensor(world, Fault::NoAcknowledge));
        run(20);
        world(|world| world.sensor.fault = None);
        world(|world| world.seen.forget());
        run(1_000);
        no_verdict_since("a loose wire");
    }
    comes(Motion::Ready(None), 6_000);
}

/// A capture is wanted, then the sensor goes: nothing is sent, not even when it is back.
pub fn while_wanted() {
    reads(Check::PumpRoll, up(0.0, 20.0));
    world(|world| world.sensor.felt.noise_mg = 150.0);
    run(1_000);
    press(crate::rig::B, SHORT_MS);
    world(|world| sensor(world, Fault::StuckBus));
    comes(Motion::Fault(1), 300);
    world(|world| world.sensor.felt.noise_mg = 3.0);
    world(mended);
    comes(Motion::Ready(None), 6_000);
    run(12_000);
    assert!(line().is_none(), "nothing is sent");
}

/// The supply must come back by more than it fell short, or it would come and go.
pub fn supply() {
    reads(Check::PumpRoll, up(0.0, 20.0));
    comes(Motion::Within, 2_000);
    world(|world| world.supply_mv = 2_000);
    run(2_000);
    shows(Motion::Within);
    world(|world| world.supply_mv = 1_999);
    comes(Motion::Fault(7), 900);
    world(|world| world.supply_mv = 2_050);
    run(2_000);
    shows(Motion::Fault(7));
    world(|world| world.supply_mv = 2_150);
    comes(Motion::Ready(None), 4_000);
}

/// A transfer that never ends: the rows stop, the watchdog starts the gauge anew, and it says so
/// until somebody has seen it.
pub fn hangs() {
    reads(Check::PumpRoll, up(0.0, 20.0));
    comes(Motion::Within, 2_000);
    world(|world| world.bus_hangs = true);
    assert_eq!(run_or_lose(100), Left::Watchdog);
    seen_before_it_goes_on();
}

/// A panic does the same.
pub fn panics() {
    reads(Check::PumpRoll, up(0.0, 20.0));
    comes(Motion::Within, 2_000);
    world(|world| world.panics = true);
    assert_eq!(run_or_lose(100), Left::Panic);
    seen_before_it_goes_on();
}

fn seen_before_it_goes_on() {
    restart();
    lay(up(0.0, 100.0));
    comes(Motion::Fault(9), 100);
    run(5_000);
    shows(Motion::Fault(9));
    no_verdict_since("started anew");
    press(A, SHORT_MS);
    comes(Motion::Ready(Some(Side::Upper)), 2_500);
    no_verdict_since("started anew");
    reads(Check::PumpRoll, up(0.0, 100.0));
    comes(Motion::Beyond(Some(Side::Lower)), 2_000);
}
