//! The gauge without hardware: its logic and its real driver run on a Cortex-M in QEMU, over a
//! model of the sensor. A script plays scenarios and looks at the lights and the line. Prints one
//! `ok<TAB>name` each, then `name<TAB>number` of what was measured.
#![no_std]
#![no_main]

mod cost;
mod count;
mod fake;
mod flash;
// The firmware's own, where its machine code runs.
#[cfg(target_abi = "eabihf")]
#[path = "../../../../core/gauge/src/memory.rs"]
mod memory;
mod motions;
mod rig;
mod scenarios;
mod seen;
mod stack;
mod world;

use core::panic::PanicInfo;
use cortex_m_rt::entry;
use cortex_m_semihosting::{debug, hprintln};

#[entry]
fn main() -> ! {
    let peripherals = cortex_m::Peripherals::take().expect("taken once");
    count::Counter::start(peripherals.SYST);
    let mut deepest = 0;
    for (name, scenario) in scenarios::ALL {
        world::world(|world| *world = world::World::new());
        scenario();
        deepest = deepest.max(stack::deepest());
        hprintln!("ok\t{}", name);
    }
    cost::say(deepest);
    debug::exit(debug::EXIT_SUCCESS);
    unreachable!("the machine has ended");
}

/// On the gauge's stack, as the firmware's handler: the gauge is started anew. Else a scenario has
/// failed.
#[panic_handler]
fn panic(info: &PanicInfo<'_>) -> ! {
    if stack::gauge_runs() {
        stack::lost(stack::Left::Panic);
    }
    hprintln!("FAIL\t{}", info);
    loop {
        debug::exit(debug::EXIT_FAILURE);
    }
}
