//! Counts the gauge's instructions with SysTick, without those of the script and of the model.
//! Under `-icount shift=0` QEMU lets 1 ns of virtual time pass with each instruction, and SysTick
//! runs at the board's 16 or 25 MHz. A stretch is known to a tick, 62.5 or 40 instructions; what is
//! lost at one is won at another.

use core::cell::Cell;
use cortex_m::peripheral::{SYST, syst::SystClkSource};

/// Instructions for two ticks.
const PER_2_TICKS: u64 = if cfg!(target_abi = "eabihf") { 80 } else { 125 };
const RELOAD: u32 = 0x00ff_ffff;

/// What the gauge does between two things that it asks its board for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Work {
    /// A look: sample, buttons, answer, and the next picture.
    Look,
    /// A line, byte by byte.
    Line,
    /// Driver, lights, supply.
    Board,
}

/// Ticks, by what they were spent on.
pub struct Counter {
    since: Cell<u32>,
    work: Cell<Work>,
    ticks: [Cell<u64>; 3],
    most: Cell<u32>,
}

// SAFETY: one core, no interrupts.
unsafe impl Sync for Counter {}

static COUNTER: Counter = Counter {
    since: Cell::new(0),
    work: Cell::new(Work::Board),
    ticks: [const { Cell::new(0) }; 3],
    most: Cell::new(0),
};

impl Counter {
    /// Starts SysTick.
    pub fn start(mut syst: SYST) {
        syst.set_clock_source(SystClkSource::Core);
        syst.set_reload(RELOAD);
        syst.clear_current();
        syst.enable_counter();
    }

    /// The gauge goes on.
    pub fn begin() {
        COUNTER.since.set(SYST::get_current());
    }

    /// The gauge stops.
    pub fn end() {
        let spent = COUNTER.since.get().wrapping_sub(SYST::get_current()) & RELOAD;
        let ticks = &COUNTER.ticks[COUNTER.work.get() as usize];
        ticks.set(ticks.get() + u64::from(spent));
        COUNTER.most.set(COUNTER.most.get().max(spent));
    }

    /// Instructions since the last [`Self::begin`].
    pub fn spent() -> u64 {
        let ticks = COUNTER.since.get().wrapping_sub(SYST::get_current()) & RELOAD;
        u64::from(ticks) * PER_2_TICKS / 2
    }

    /// What comes next is this.
    pub fn now(work: Work) {
        COUNTER.work.set(work);
    }

    /// Instructions spent on `work` so far.
    pub fn instructions(work: Work) -> u64 {
        COUNTER.ticks[work as usize].get() * PER_2_TICKS / 2
    }

    /// Instructions of the longest stretch so far.
    pub fn most() -> u64 {
        u64::from(COUNTER.most.get()) * PER_2_TICKS / 2
    }
}
