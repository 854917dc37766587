//! Every public calculation of core in one image for a small board, with values that the compiler
//! cannot know. The panic handler calls a function that exists nowhere: as long as the optimiser
//! proves every panic unreachable the linker drops the handler, else the link fails.

#![no_std]
#![no_main]

mod angles;
mod direct;
mod limits;
mod live;
mod phone;
mod plan;
mod samples;
mod vehicle;
mod verdicts;

pub(crate) use core::hint::black_box as any;
use plumbmark::budget::{Contact, UpEstimate};
use plumbmark::sensor::Sensor;

/// Any vector.
pub(crate) fn any_vector() -> plumbmark::vector::Vec3 {
    any([0.0; 3])
}

/// What a channel may say, any numbers.
pub(crate) fn any_estimate() -> UpEstimate {
    any(UpEstimate {
        up: [0.0; 3],
        noise: [0.0; 3],
        half_steps: [[0.0; 3]; 6],
        worst_half_step: 0.0,
        settle_deg: 0.0,
        sensor: Sensor::assumed(),
    })
}

/// How a phone may lie, any numbers.
pub(crate) fn any_contact() -> Contact {
    any(Contact {
        hold_deg: 0.0,
        align_deg: 0.0,
        normal: [0.0; 3],
    })
}

/// Takes text and forgets it.
struct Nowhere;

impl core::fmt::Write for Nowhere {
    fn write_str(&mut self, text: &str) -> core::fmt::Result {
        any(text);
        Ok(())
    }
}

/// Writes a message to nowhere.
pub(crate) fn write_to_nowhere(message: &dyn core::fmt::Display) {
    use core::fmt::Write;
    any(write!(Nowhere, "{message}")).ok();
}

// Unsafe because a fixed name may collide with another: nothing else is linked into this image.
/// What the linker starts from.
#[unsafe(no_mangle)]
pub extern "C" fn _start() -> ! {
    angles::call();
    samples::call();
    live::call();
    limits::call();
    verdicts::call();
    phone::call();
    vehicle::call();
    plan::call();
    direct::call();
    #[cfg(feature = "control")]
    any([0_u8; 4]).get(any(4)).unwrap();
    loop {
        core::hint::spin_loop();
    }
}

#[cfg(not(feature = "diagnose"))]
// Unsafe because nobody can promise what a foreign function does; this one is never there.
unsafe extern "C" {
    safe fn a_panic_is_reachable() -> !;
}

#[cfg(feature = "diagnose")]
fn a_panic_is_reachable() -> ! {
    loop {
        core::hint::spin_loop();
    }
}

#[panic_handler]
fn on_panic(_: &core::panic::PanicInfo<'_>) -> ! {
    a_panic_is_reachable()
}
