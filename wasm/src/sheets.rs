//! The sheets of the tape-measure half, by numbers in order. Names and units stand in the
//! catalogue; not a number stands for "not entered".

use crate::numbers::Numbers;
use crate::page::page;
use plumbmark::limits::Basis;
use plumbmark::parts::Check;
use plumbmark::plan::Sheet;
use plumbmark::plan::bound::BoundId;
use plumbmark::plan::bound_error::{Cited, validate, validate_angle};
use plumbmark::plan::kind::Refusal;
use plumbmark::plan::moved::change;
use plumbmark::plan::propagate::MOST_IN;
use plumbmark::plan::work::Worked;
use wasm_bindgen::prelude::wasm_bindgen;

/// Works a sheet out. Given are `inputs` numbers, as many half-widths, then `limits` numbers: for
/// each check of the sheet in order the lowest and the highest value permitted. Gives 0 and then,
/// for each result: value, U, place of the input that adds most to U (not a number for none); then
/// for each check: codes of the verdict and of what stands behind it (0 when plain), margin, change
/// that would settle it, probability; then for each input what it adds to the result at `output`, a
/// standard uncertainty. Or 1, the place that is refused, the problem's code, the code of the unit
/// that it was likely typed in. Nothing where there is no such sheet.
#[wasm_bindgen]
#[must_use]
pub fn sheet_work(sheet: usize, inputs: usize, limits: usize, output: usize) -> i32 {
    let page = page();
    let (given, to) = (&page.given, &mut page.numbers);
    to.clear();
    let Some(sheet) = Sheet::ALL.get(sheet) else {
        return 0;
    };
    let (x, half) = (given.row(0, inputs), given.row(inputs, inputs));
    let mut parts = [0.0; MOST_IN];
    let worked = sheet.contributions(x, half, &mut |input, at, u| {
        if at == output
            && let Some(part) = parts.get_mut(input)
        {
            *part = u;
        }
    });
    match worked {
        Ok(worked) => put(to, &worked, given.row(2 * inputs, limits)),
        Err(refusal) => return refused(to, refusal),
    }
    for part in parts.into_iter().take(inputs) {
        to.put(part);
    }
    to.count()
}

fn put(to: &mut Numbers, worked: &Worked, limits: &[f64]) {
    to.put_code(0);
    let mut place = 0;
    while let Some(result) = worked.result(place) {
        to.put(result.value);
        to.put(result.u);
        to.put(result.dominant.map_or(f64::NAN, |place| place as f64));
        place += 1;
    }
    for (place, [low, high]) in limits.as_chunks().0.iter().enumerate() {
        if let Some(check) = worked.check(place)
            && let Some(judged) = worked.judged(&check, *low, *high)
        {
            to.put_code(judged.verdict as u8);
            to.put_code(judged.why.map_or(0, |w| w as u8 + 1));
            to.put(judged.margin);
            to.put(judged.change);
            to.put(judged.probability);
        }
    }
}

/// Whether a value has changed since it was last read; given are the value and its U before and now.
/// Gives the change, its U, and 1 where the change is larger than that.
#[wasm_bindgen]
#[must_use]
pub fn value_moved() -> i32 {
    let page = page();
    let (given, to) = (&page.given, &mut page.numbers);
    to.clear();
    if let [before, u_before, now, u_now] = *given.row(0, 4) {
        let change = change((before, u_before), (now, u_now));
        to.put(change.by);
        to.put(change.u);
        to.put_code(u8::from(change.shown));
    }
    to.count()
}

/// Checks a limit of the tape-measure half, or, after those, what stands beside the limit of an
/// angle; texts by their lengths. 0, or the code of what is wrong.
#[wasm_bindgen]
#[must_use]
pub fn bound_problem(
    bound: usize,
    low: f64,
    high: f64,
    basis: usize,
    source: usize,
    vehicles: usize,
    reason: usize,
) -> u8 {
    let Some(&basis) = Basis::ALL.get(basis) else {
        return 0;
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
        _ => Ok(()),
    };
    fine.err().map_or(0, |e| e as u8)
}

fn refused(to: &mut Numbers, refusal: Refusal) -> i32 {
    let (problem, slip) = refusal.problem.code();
    to.put_code(1);
    to.put(refusal.place as f64);
    to.put_code(problem);
    to.put_code(slip);
    to.count()
}
