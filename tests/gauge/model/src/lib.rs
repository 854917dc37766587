//! The accelerometer of an LSM303AGR as its data sheet (DocID027765) describes it: registers, times
//! and what may be wrong with it, so that a driver written for the part runs unchanged. Time is
//! what the test says that it is, and stands still during a transfer.
//!
//! Registers and their bits are chapter 8's; values marked "from memory" could not be looked up
//! when this was written.
#![no_std]
#![forbid(unsafe_code)]

mod bus;
mod fault;
mod felt;
mod registers;

pub use fault::Fault;
pub use felt::{Felt, Spread};

use registers::Registers;

/// Time that the part needs after power came, µs; until then it does not answer (value from
/// memory).
pub const BOOT_US: u32 = 5_000;

/// The part, in its world.
#[derive(Debug, Clone)]
pub struct Sensor {
    registers: Registers,
    /// What it feels.
    pub felt: Felt,
    /// What is wrong with it.
    pub fault: Option<Fault>,
    spread: Spread,
    /// Time since power came, µs; stays at the boot's end.
    on_us: u32,
    /// Time since the last sample, µs.
    since_us: u32,
}

impl Sensor {
    /// Power comes. `seed` begins the noise.
    #[must_use]
    pub const fn new(felt: Felt, seed: u32) -> Self {
        Self {
            registers: Registers::AT_POWER_ON,
            felt,
            fault: None,
            spread: Spread::new(seed),
            on_us: 0,
            since_us: 0,
        }
    }

    /// Power was away: settings are lost.
    pub fn power_again(&mut self) {
        self.registers = Registers::AT_POWER_ON;
        (self.on_us, self.since_us) = (0, 0);
    }

    /// Time passes.
    pub fn pass(&mut self, us: u32) {
        self.on_us = (self.on_us + us).min(BOOT_US);
        let Some(period_us) = self.registers.period_us() else {
            self.since_us = 0;
            return;
        };
        self.since_us += us;
        while self.since_us >= period_us {
            self.since_us -= period_us;
            self.sample();
        }
    }

    fn sample(&mut self) {
        if self.fault == Some(Fault::NeverReady) {
            return;
        }
        if self.fault == Some(Fault::Frozen) {
            self.registers.ready();
            return;
        }
        let Some(step_mg) = self.registers.step_mg() else {
            return;
        };
        let mut counts = self
            .felt
            .counts(&mut self.spread, step_mg, self.registers.bits());
        match self.fault {
            Some(Fault::StuckAxis(axis)) => counts[axis] = self.registers.axis(axis),
            Some(Fault::SaturatedAxis(axis)) => {
                counts[axis] = (1 << (self.registers.bits() - 1)) - 1
            }
            _ => {}
        }
        self.registers.put(counts);
    }
}
