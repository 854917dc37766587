//! The sheets of the tape-measure half, by numbers in order. Names and units stand in the
//! catalogue; not a number stands for "not entered".

use alloc::vec::Vec;
use plumbmark::limits::Basis;
use plumbmark::plan::Sheet;
use plumbmark::plan::bound::BoundId;
use plumbmark::plan::bound_error::{Cited, validate};
use plumbmark::plan::kind::Refusal;
use plumbmark::plan::propagate::MOST_OUT;
use wasm_bindgen::prelude::wasm_bindgen;

/// Works a sheet out. `limits` has, for each check of the sheet in order, the lowest and the
/// highest value permitted. Gives 0 and then, for each result: value, U, place of the input that
/// adds most to U (not a number for none); then for each check: codes of the verdict and of what
/// stands behind it (0 when plain), margin, change that would settle it, probability. Or 1, the
/// place that is refused, the problem's code, the code of the unit that it was likely typed in.
#[wasm_bindgen]
#[must_use]
pub fn sheet_work(sheet: usize, x: &[f64], half: &[f64], limits: &[f64]) -> Vec<f64> {
    let Some(sheet) = Sheet::ALL.get(sheet) else {
        return Vec::new();
    };
    let worked = match sheet.work(x, half) {
        Ok(worked) => worked,
        Err(refusal) => return refused(refusal),
    };
    let mut numbers = Vec::with_capacity(1 + 3 * MOST_OUT + 5 * limits.len() / 2);
    numbers.push(0.0);
    let mut place = 0;
    while let Some(given) = worked.result(place) {
        numbers.push(given.value);
        numbers.push(given.u);
        numbers.push(given.dominant.map_or(f64::NAN, |place| place as f64));
        place += 1;
    }
    for (place, limit) in limits.chunks_exact(2).enumerate() {
        if let [low, high] = limit
            && let Some(check) = worked.check(place)
            && let Some(judged) = worked.judged(&check, *low, *high)
        {
            numbers.push(f64::from(judged.verdict as u8));
            numbers.push(judged.why.map_or(0.0, |w| f64::from(w as u8 + 1)));
            numbers.push(judged.margin);
            numbers.push(judged.change);
            numbers.push(judged.probability);
        }
    }
    numbers
}

/// What each input adds to the uncertainty of the result at `output`: a standard uncertainty for
/// each input in order.
#[wasm_bindgen]
#[must_use]
pub fn sheet_parts(sheet: usize, x: &[f64], half: &[f64], output: usize) -> Vec<f64> {
    let mut parts = Vec::new();
    parts.resize(x.len(), 0.0);
    if let Some(sheet) = Sheet::ALL.get(sheet) {
        // Refused numbers have no parts; their refusal was told before.
        let _ = sheet.contributions(x, half, output, &mut |input, u| {
            if let Some(part) = parts.get_mut(input) {
                *part = u;
            }
        });
    }
    parts
}

/// Checks a limit of the tape-measure half; the texts beside it by their lengths. 0, or the code
/// of what is wrong.
#[wasm_bindgen]
#[must_use]
pub fn bound_problem(bound: usize, low: f64, high: f64, basis: usize, letters: &[u32]) -> u8 {
    let known = BoundId::ALL.get(bound).zip(Basis::ALL.get(basis));
    let (Some((&id, &basis)), &[source, vehicles, reason]) = (known, letters) else {
        return 0;
    };
    let cited = Cited {
        basis,
        source: source as usize,
        vehicles: vehicles as usize,
        reason: reason as usize,
    };
    validate(id, low, high, &cited).err().map_or(0, |e| e as u8)
}

fn refused(refusal: Refusal) -> Vec<f64> {
    let (problem, slip) = refusal.problem.code();
    [
        1.0,
        refusal.place as f64,
        f64::from(problem),
        f64::from(slip),
    ]
    .into()
}
