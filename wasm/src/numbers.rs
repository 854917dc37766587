//! Numbers that cross together stand in memory that never moves: those that the page gives in one
//! row, those that it gets in another. A call that gets some says how many it was given; one that
//! gives some returns how many they are. NaN stands for none.

use crate::page::page;
use wasm_bindgen::prelude::wasm_bindgen;

/// Room for the longest: what a sheet of tables gives, verdicts and shares of the uncertainty.
const ROOM: usize = 768;

/// Numbers in a row.
pub struct Numbers {
    all: [f64; ROOM],
    used: usize,
}

impl Numbers {
    /// None yet.
    pub const NONE: Self = Self {
        all: [0.0; ROOM],
        used: 0,
    };

    /// Begins anew.
    pub fn clear(&mut self) {
        self.used = 0;
    }

    /// Adds one.
    #[inline(never)]
    pub fn put(&mut self, number: f64) {
        if let Some(place) = self.all.get_mut(self.used) {
            *place = number;
            self.used += 1;
        }
    }

    /// Adds a code.
    #[inline(never)]
    pub fn put_code(&mut self, code: u8) {
        self.put(f64::from(code));
    }

    /// How many there are.
    pub fn count(&self) -> i32 {
        self.used as i32
    }

    /// `count` of them, from place `from` on; none where there are not so many.
    pub fn row(&self, from: usize, count: usize) -> &[f64] {
        let rest = self.all.get(from..).unwrap_or(&[]);
        rest.get(..count).unwrap_or(&[])
    }
}

#[cfg(any(feature = "phone", feature = "gauge"))]
impl Numbers {
    /// Adds some.
    #[inline(never)]
    pub fn put_all(&mut self, numbers: &[f32]) {
        for number in numbers {
            self.put(f64::from(*number));
        }
    }

    /// Adds one, or NaN.
    #[inline(never)]
    pub fn put_option(&mut self, number: Option<f32>) {
        self.put(f64::from(number.unwrap_or(f32::NAN)));
    }

    /// Adds a code, or NaN.
    pub fn put_option_code(&mut self, code: Option<u8>) {
        self.put_option(code.map(f32::from));
    }
}

/// How many there is room for, either way.
#[wasm_bindgen]
pub fn numbers_room() -> usize {
    ROOM
}

/// Where those stand that the page gets.
#[wasm_bindgen]
pub fn numbers_at() -> *const f64 {
    page().numbers.all.as_ptr()
}

/// Where the page puts those that it gives.
#[wasm_bindgen]
pub fn given_at() -> *const f64 {
    page().given.all.as_ptr()
}
