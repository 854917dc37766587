//! What one page holds: one core, the limit set that it is writing, numbers on their way.

use crate::numbers::Numbers;
use core::cell::UnsafeCell;
#[cfg(any(feature = "phone", feature = "gauge"))]
use plumbmark::limits::LimitSet;
#[cfg(feature = "phone")]
use plumbmark::live::Live;
use wasm_bindgen::prelude::wasm_bindgen;

/// One page's own.
pub struct Page {
    /// The phone held to a part.
    #[cfg(feature = "phone")]
    pub live: Live,
    /// The limit set that is being put in.
    #[cfg(any(feature = "phone", feature = "gauge"))]
    pub draft: LimitSet,
    /// Numbers that the page gets.
    pub numbers: Numbers,
    /// Numbers that the page gives.
    pub given: Numbers,
}

struct Held(UnsafeCell<Option<Page>>);

// SAFETY: a module belongs to one page, and a page has one thread.
unsafe impl Sync for Held {}

static HELD: Held = Held(UnsafeCell::new(None));

/// Begins: nothing received yet, no limit entered.
#[wasm_bindgen]
pub fn start() {
    // SAFETY: as in `page`.
    unsafe { &mut *HELD.0.get() }.replace(Page {
        #[cfg(feature = "phone")]
        live: Live::with_limits(LimitSet::not_entered()),
        #[cfg(any(feature = "phone", feature = "gauge"))]
        draft: LimitSet::empty(),
        numbers: Numbers::NONE,
        given: Numbers::NONE,
    });
}

/// The page's own; traps before it has begun.
pub fn page() -> &'static mut Page {
    // SAFETY: one thread, and no call from here leads back into the page: what the last call
    // borrowed is gone.
    match unsafe { &mut *HELD.0.get() } {
        Some(page) => page,
        None => panic!(),
    }
}
