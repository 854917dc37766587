//! The sheets of the tape-measure half. Names and units stand in the catalogue; not a number stands
//! for "not entered".

use crate::numbers::Numbers;
use crate::page::page;
use crate::refusals::UNKNOWN;
use plumbmark::limits::Basis;
use plumbmark::parts::Check;
use plumbmark::plan::Sheet;
use plumbmark::plan::bound::BoundId;
use plumbmark::plan::bound_error::{Cited, validate, validate_angle};
use plumbmark::plan::kind::Refusal;
use plumbmark::plan::work::Worked;
use wasm_bindgen::prelude::wasm_bindgen;

/// Works a sheet out. The page has put in: `given` inputs, as many half-widths, and for each check
/// of the sheet in order the lowest and the highest value permitted, `limits` numbers. Leaves 0 and
/// then, for each result: value, U, place of the input that adds most to U (not a number for none);
/// then for each check: codes of the verdict and of what stands behind it (0 when plain), margin,
/// change that would settle it, probability. Or 1, the place that is refused, the problem's code,
/// the code of the unit that it was likely typed in.
#[wasm_bindgen]
pub fn sheet_work(sheet: usize, given: usize, limits: usize) -> i32 {
    let numbers = &mut page().numbers;
    let Some(sheet) = Sheet::ALL.get(sheet) else {
        return UNKNOWN;
    };
    let all = numbers.first(2 * given + limits);
    let (x, rest) = all.split_at_checked(given).unwrap_or_default();
    let (half, told) = rest.split_at_checked(given).unwrap_or_default();
    // The results take the place of what was put in.
    let mut kept = [f64::NAN; MOST_LIMITS];
    for (kept, told) in kept.iter_mut().zip(told) {
        *kept = *told;
    }
    let worked = sheet.work(x, half);
    numbers.clear();
    match worked {
        Ok(worked) => put_results(numbers, &worked, kept.get(..limits).unwrap_or_default()),
        Err(refusal) => put_refusal(numbers, refusal),
    }
    numbers.count()
}

/// Most numbers of limits: two for each check.
const MOST_LIMITS: usize = 256;

fn put_results(numbers: &mut Numbers, worked: &Worked, limits: &[f64]) {
    numbers.put(0.0);
    let mut place = 0;
    while let Some(given) = worked.result(place) {
        numbers.put(given.value);
        numbers.put(given.u);
        numbers.put(given.dominant.map_or(f64::NAN, |place| place as f64));
        place += 1;
    }
    for (place, limit) in limits.chunks_exact(2).enumerate() {
        if let [low, high] = limit
            && let Some(check) = worked.check(place)
            && let Some(judged) = worked.judged(&check, *low, *high)
        {
            numbers.put_code(judged.verdict as u8);
            numbers.put_code(judged.why.map_or(0, |w| w as u8 + 1));
            numbers.put(judged.margin);
            numbers.put(judged.change);
            numbers.put(judged.probability);
        }
    }
}

fn put_refusal(numbers: &mut Numbers, refusal: Refusal) {
    let (problem, slip) = refusal.problem.code();
    numbers.put(1.0);
    numbers.put(refusal.place as f64);
    numbers.put_code(problem);
    numbers.put_code(slip);
}

/// What each input adds to the uncertainty of the result at `output`: leaves a standard uncertainty
/// for each of the `given` inputs that the page has put in before as many half-widths.
#[wasm_bindgen]
pub fn sheet_parts(sheet: usize, given: usize, output: usize) -> i32 {
    let numbers = &mut page().numbers;
    let Some(sheet) = Sheet::ALL.get(sheet) else {
        return UNKNOWN;
    };
    let mut parts = [0.0; plumbmark::plan::propagate::MOST_IN];
    let all = numbers.first(2 * given);
    let (x, half) = all.split_at_checked(given).unwrap_or_default();
    // Refused numbers have no parts; their refusal was told before.
    let _ = sheet.contributions(x, half, output, &mut |input, u| {
        if let Some(part) = parts.get_mut(input) {
            *part = u;
        }
    });
    numbers.clear();
    for part in parts.iter().take(given) {
        numbers.put(*part);
    }
    numbers.count()
}

/// Checks a limit of the tape-measure half, or, after those, what stands beside the limit of an
/// angle; texts by their lengths. 0, or the code of what is wrong.
#[wasm_bindgen]
pub fn bound_problem(
    bound: usize,
    low: f64,
    high: f64,
    basis: usize,
    source: usize,
    vehicles: usize,
    reason: usize,
) -> i32 {
    let Some(&basis) = Basis::ALL.get(basis) else {
        return UNKNOWN;
    };
    let cited = Cited {
        basis,
        source,
        vehicles,
        reason,
    };
    let angle = bound.wrapping_sub(BoundId::ALL.len());
    let fine = match (BoundId::ALL.get(bound), Check::ALL.get(angle)) {
        (Some(&id), _) => validate(id, low, high, &cited),
        (_, Some(&check)) => validate_angle(check, low as f32, high as f32, &cited),
        _ => return UNKNOWN,
    };
    fine.err().map_or(0, |e| i32::from(e as u8))
}
