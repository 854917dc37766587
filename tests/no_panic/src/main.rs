//! Every public calculation of core in one image for a small board, with values that the compiler
//! cannot know. The panic handler calls a function that exists nowhere: as long as the optimiser
//! proves every panic unreachable the linker drops the handler, else the link fails.

#![no_std]
#![no_main]

mod angles;
mod limits;
mod samples;
mod verdicts;

pub(crate) use core::hint::black_box as any;

/// Any vector.
pub(crate) fn any_vector() -> plumbmark::vector::Vec3 {
    any([0.0; 3])
}

// Unsafe because a fixed name may collide with another: nothing else is linked into this image.
/// What the linker starts from.
#[unsafe(no_mangle)]
pub extern "C" fn _start() -> ! {
    angles::call();
    samples::call();
    limits::call();
    verdicts::call();
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
