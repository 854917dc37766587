//! What is around the gauge: the sensor's model, buttons, supply, flash, an eye on its lights and
//! whoever listens to its line.

use crate::flash::Flash;
use crate::seen::Seen;
use core::cell::RefCell;
use gauge_model::{Felt, Sensor};
use heapless::Vec;
use plumbmark::line::LONGEST;

/// All of it.
pub struct World {
    /// The accelerometer.
    pub sensor: Sensor,
    /// Whether a transfer never ends.
    pub bus_hangs: bool,
    /// Whether the gauge panics when it next looks at its buttons or writes to flash.
    pub panics: bool,
    /// Contacts of the buttons at the tail and at the head end.
    pub pressed: [bool; 2],
    /// Supply, mV.
    pub supply_mv: u16,
    /// The two pages.
    pub flash: Flash,
    /// The lights.
    pub seen: Seen,
    /// What came over the line since it was last looked at.
    pub line: Vec<u8, { LONGEST + 1 }>,
    /// Whether the board says that it had to start anew.
    pub restarted: bool,
    /// Ticks since the beginning.
    pub ticks: u32,
    /// Transfers since the beginning.
    pub transfers: u32,
}

impl World {
    /// At rest, everything well.
    pub const fn new() -> Self {
        let felt = Felt {
            force_mg: [0.0, 0.0, -1000.0],
            zero_mg: [0.0; 3],
            scale: [1.0; 3],
            noise_mg: 3.0,
        };
        Self {
            sensor: Sensor::new(felt, 0x9e37_79b9),
            bus_hangs: false,
            panics: false,
            pressed: [false; 2],
            supply_mv: 3_000,
            flash: Flash::ERASED,
            seen: Seen::NOTHING,
            line: Vec::new(),
            restarted: false,
            ticks: 0,
            transfers: 0,
        }
    }
}

struct Shared(RefCell<World>);

// SAFETY: one core, no interrupts; script and gauge run in turn.
unsafe impl Sync for Shared {}

static WORLD: Shared = Shared(RefCell::new(World::new()));

/// Looks at the world, or changes it. Only on the script's stack.
pub fn world<R>(work: impl FnOnce(&mut World) -> R) -> R {
    assert!(
        !crate::stack::gauge_runs(),
        "the world is not on the gauge's stack"
    );
    work(&mut WORLD.0.borrow_mut())
}
