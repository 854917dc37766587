//! Counts instructions with the core's own SysTick. Under `-icount shift=0` QEMU lets 1 ns of
//! virtual time pass with each instruction, and SysTick runs at the board's 16 MHz.

use core::hint::black_box;
use cortex_m::peripheral::{SYST, syst::SystClkSource};

/// Instructions for sixteen ticks of 62.5 ns.
const PER_16_TICKS: u64 = 1000;
const RELOAD: u32 = 0x00ff_ffff;

/// SysTick, running.
pub struct Counter(SYST);

impl Counter {
    /// Starts it.
    pub fn new(mut syst: SYST) -> Self {
        syst.set_clock_source(SystClkSource::Core);
        syst.set_reload(RELOAD);
        syst.clear_current();
        syst.enable_counter();
        Self(syst)
    }

    /// Hundredths of instructions that `work` takes for one of `inputs`, over `rounds` of all of
    /// them, less an empty loop over the same.
    pub fn hundredths<T: Copy, R>(
        &mut self,
        rounds: u32,
        inputs: &[T],
        mut work: impl FnMut(T) -> R,
    ) -> u64 {
        let empty = self.instructions(rounds, inputs, |_| ());
        let full = self.instructions(rounds, inputs, &mut work);
        (full - empty) * 100 / (u64::from(rounds) * inputs.len() as u64)
    }

    fn instructions<T: Copy, R>(
        &mut self,
        rounds: u32,
        inputs: &[T],
        mut work: impl FnMut(T) -> R,
    ) -> u64 {
        self.0.clear_current();
        let before = SYST::get_current();
        for _ in 0..rounds {
            for input in inputs {
                black_box(work(black_box(*input)));
            }
        }
        let after = SYST::get_current();
        assert!(!self.0.has_wrapped(), "too many rounds for 24 bits");
        u64::from(before.wrapping_sub(after) & RELOAD) * PER_16_TICKS / 16
    }
}
