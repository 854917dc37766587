//! The border between the page and the core: numbers and codes only. Codes are places in the
//! catalogue's lists; a number below zero is a refusal (see `refusals`); more than one number goes
//! by way of `numbers`. No text, no object, and nothing is ever allocated.
//!
//! Built once for each feature, so that a page loads the sheets, and what reads a gauge's line, only
//! when they are wanted.

#![cfg_attr(target_arch = "wasm32", no_std)]

mod numbers;
mod page;

#[cfg(feature = "gauge")]
mod gauge;
#[cfg(any(feature = "phone", feature = "gauge"))]
mod limits;
#[cfg(feature = "phone")]
mod live;
#[cfg(feature = "phone")]
mod phone;
#[cfg(any(feature = "phone", feature = "gauge"))]
mod refusals;
#[cfg(any(feature = "phone", feature = "gauge"))]
mod report;
#[cfg(feature = "phone")]
mod vehicle;

#[cfg(feature = "sheets")]
mod sheets;

// Linking asks for one; nothing here does.
#[cfg(target_arch = "wasm32")]
#[global_allocator]
static ALLOCATOR: lol_alloc::FailAllocator = lol_alloc::FailAllocator;

// The page builds the core anew after a trap; there is nobody to read a message.
#[cfg(target_arch = "wasm32")]
#[panic_handler]
fn trap(_: &core::panic::PanicInfo<'_>) -> ! {
    core::arch::wasm32::unreachable()
}
