//! Power comes: the self test, then the side that is up.

use super::ready;
use crate::motions::{Motion, Side};
use crate::rig::{comes, lay, power_on, run, shows, up};
use crate::world::world;
use gauge_model::Fault;

/// The test runs, and no verdict is shown meanwhile.
pub fn self_test() {
    lay(up(0.0, 0.0));
    power_on();
    run(40);
    comes(Motion::SelfTest, 100);
}

/// Each side of the gauge, and its face.
pub fn sides() {
    let sides = [
        (up(0.0, 0.0), None),
        (up(0.0, 180.0), None),
        (up(-90.0, 0.0), Some(Side::Tail)),
        (up(90.0, 0.0), Some(Side::Head)),
        (up(0.0, 90.0), Some(Side::Upper)),
        (up(0.0, -90.0), Some(Side::Lower)),
    ];
    ready(up(0.0, 0.0));
    for (to, side) in sides {
        lay(to);
        run(500);
        shows(Motion::Ready(side));
    }
}

/// Without its sensor the gauge says so at once, and finds it when it comes.
pub fn without_sensor() {
    world(|world| world.sensor.fault = Some(Fault::NoAcknowledge));
    lay(up(0.0, 0.0));
    power_on();
    comes(Motion::Fault(1), 300);
    world(|world| {
        world.sensor.fault = None;
        world.sensor.power_again();
    });
    comes(Motion::Ready(None), 5_000);
}

/// A self test that is shaken goes on until the gauge lies still.
pub fn not_still() {
    lay(up(0.0, 0.0));
    world(|world| world.sensor.felt.noise_mg = 150.0);
    power_on();
    run(5_000);
    shows(Motion::SelfTest);
    world(|world| world.sensor.felt.noise_mg = 3.0);
    comes(Motion::Ready(None), 3_000);
}
