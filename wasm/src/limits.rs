//! A limit set on its way across the border, line by line in numbers. Its texts stay on the page:
//! core asks how long they are, and whether there is one.

use crate::page::page;
use crate::refusals::{UNKNOWN, known};
use plumbmark::holds::Surface;
use plumbmark::limits::{Basis, Limit, LimitError, LimitSet, Row, SurfaceTerms};
use plumbmark::parts::Check;
use wasm_bindgen::prelude::wasm_bindgen;

/// Begins a set without any line, its name so many bytes long; 0, or an error of so many numbers.
#[wasm_bindgen]
pub fn limits_begin(name_bytes: usize) -> i32 {
    page().draft = LimitSet::empty();
    told(LimitSet::name_fits(name_bytes))
}

/// Adds the line of a check; codes are places in the catalogue's lists. 0, or an error of so many
/// numbers.
#[expect(
    clippy::too_many_arguments,
    reason = "one flat call a line, no object to take apart"
)]
#[wasm_bindgen]
pub fn limits_line(
    check: u8,
    low_deg: Option<f32>,
    high_deg: Option<f32>,
    preferred_low_deg: Option<f32>,
    preferred_high_deg: Option<f32>,
    at_limit_allowed: bool,
    allowance_deg: Option<f32>,
    basis: u8,
    source_bytes: usize,
    source_blank: bool,
    holds_in_operation: bool,
    length_mm: Option<f32>,
) -> i32 {
    let Some((check, basis)) = known(&Check::ALL, check).zip(known(&Basis::ALL, basis)) else {
        return UNKNOWN;
    };
    let mut line = Limit {
        low_deg,
        high_deg,
        preferred_low_deg,
        preferred_high_deg,
        at_limit_allowed,
        allowance_deg,
        basis,
        holds_in_operation,
        length_mm,
        ..Limit::not_entered(check)
    };
    if !source_blank {
        // Stands for the text; there is room for one letter.
        _ = line.source.push('-');
    }
    let fits = line.source_fits(source_bytes);
    told(fits.and_then(|()| page().draft.add_line(line)))
}

/// Sets a surface's contact uncertainties; 0, or an error.
#[wasm_bindgen]
pub fn limits_surface(surface: u8, hold_deg: f32, align_deg: f32) -> i32 {
    let Some(surface) = known(&Surface::ALL, surface) else {
        return UNKNOWN;
    };
    page().draft.set_surface(SurfaceTerms {
        surface,
        hold_deg,
        align_deg,
    });
    0
}

/// Whether the set can be; 0, or an error of so many numbers.
#[wasm_bindgen]
pub fn limits_check() -> i32 {
    told(page().draft.validate())
}

/// Puts the set in force; 0, or an error of so many numbers.
#[cfg(feature = "phone")]
#[wasm_bindgen]
pub fn limits_use() -> i32 {
    let draft = core::mem::replace(&mut page().draft, LimitSet::empty());
    told(page().live.set_limits(draft))
}

/// An error as numbers: row (0 the set, then checks, then surfaces), field, problem and the
/// problem's own two numbers. The words are the page's.
fn told(result: Result<(), LimitError>) -> i32 {
    let numbers = &mut page().numbers;
    numbers.clear();
    if let Err(error) = result {
        let row = match error.row {
            Row::Set => 0,
            Row::Check(check) => 1 + check as u8,
            Row::Surface(surface) => 1 + Check::ALL.len() as u8 + surface as u8,
        };
        for code in [row, error.field as u8, error.problem.code()] {
            numbers.put_code(code);
        }
        let (low, high) = error.problem.numbers();
        numbers.put(f64::from(low));
        numbers.put(f64::from(high));
    }
    numbers.count()
}
