//! The gauge on a micro:bit v2.
#![no_std]
#![no_main]

mod bus;
mod memory;
mod microbit_v2;

use core::panic::PanicInfo;
use cortex_m_rt::entry;
use plumbmark_gauge::run::Running;

#[entry]
fn main() -> ! {
    let mut gauge = Running::new(microbit_v2::MicrobitV2::take());
    loop {
        gauge.turn();
    }
}

/// No verdict stays on the lights: the gauge starts again and says so.
#[panic_handler]
fn panic(_: &PanicInfo<'_>) -> ! {
    microbit_v2::start_again()
}
