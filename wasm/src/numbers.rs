//! Numbers that cross together: written in a row here, read in the same order by the page, in
//! memory that never moves. What fills them returns how many there are.

use crate::page::page;
use wasm_bindgen::prelude::wasm_bindgen;

/// Room for the longest: a sheet's inputs with half-widths and limits, or its results and answers.
const ROOM: usize = 1024;

/// Numbers in a row; NaN stands for none.
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
    pub fn put(&mut self, number: f64) {
        if let Some(place) = self.all.get_mut(self.used) {
            *place = number;
            self.used += 1;
        }
    }

    /// Adds some.
    pub fn put_all(&mut self, numbers: &[f32]) {
        for number in numbers {
            self.put(f64::from(*number));
        }
    }

    /// Adds one, or NaN.
    pub fn put_option(&mut self, number: Option<f32>) {
        self.put(f64::from(number.unwrap_or(f32::NAN)));
    }

    /// Adds a code.
    pub fn put_code(&mut self, code: u8) {
        self.put(f64::from(code));
    }

    /// Adds a code, or NaN.
    pub fn put_option_code(&mut self, code: Option<u8>) {
        self.put_option(code.map(f32::from));
    }

    /// How many there are.
    pub fn count(&self) -> i32 {
        self.used as i32
    }

    /// The first `count`.
    pub fn first(&self, count: usize) -> &[f64] {
        self.all.get(..count).unwrap_or(&[])
    }
}

/// How many there is room for.
#[wasm_bindgen]
pub fn numbers_room() -> usize {
    ROOM
}

/// Where they stand in memory: the page reads them there, and writes what it gives back.
#[wasm_bindgen]
pub fn numbers_at() -> *const f64 {
    page().numbers.all.as_ptr()
}
