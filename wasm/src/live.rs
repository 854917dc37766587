//! The phone held to a part: chosen, fed, answered.

use crate::page::page;
use crate::refusals::{UNKNOWN, coded, known};
use plumbmark::check::{End, Outcome};
use plumbmark::holds::{Hold, Surface};
use plumbmark::live::{Blind, Reading};
use plumbmark::parts::{Check, Part};
use wasm_bindgen::prelude::wasm_bindgen;

/// Place of the first check in the vehicle; those as parked come before.
const IN_VEHICLE: usize = 2;

/// Chooses part, hold and surface; 0, or a refusal.
#[wasm_bindgen]
pub fn select(part: u8, hold: u8, surface: u8) -> i32 {
    let part = known(&Part::ALL, part);
    let placed = part.zip(known(&Hold::ALL, hold).zip(known(&Surface::ALL, surface)));
    placed.map_or(UNKNOWN, |(part, (hold, surface))| {
        coded(page().live.select(part, hold, surface).map(|()| 0))
    })
}

/// Says which end of a check's axis looked lower, or nothing; 0, or a refusal.
#[wasm_bindgen]
pub fn tell_end(check: u8, end: Option<u8>) -> i32 {
    let told = end.map(|e| known(&End::ALL, e));
    match (known(&Check::ALL, check), told) {
        (None, _) | (_, Some(None)) => UNKNOWN,
        (Some(check), end) => {
            page().live.tell_end(check, end.flatten());
            0
        }
    }
}

/// Takes a sign known from before, or 0 to learn it again.
#[wasm_bindgen]
pub fn set_sign(sign: i8) {
    page().live.set_sign(sign);
}

/// Decides the sign for a phone that lies face up now; 0 when it does not.
#[wasm_bindgen]
pub fn learn_sign_face_up() -> i8 {
    page().live.learn_sign_face_up()
}

/// One motion event, ms and m/s².
#[wasm_bindgen]
pub fn motion(t_ms: f64, x: Option<f64>, y: Option<f64>, z: Option<f64>) {
    page().live.motion(t_ms, [x, y, z]);
}

/// One orientation event, degrees. Its time is that of the motion events around it.
#[wasm_bindgen]
pub fn orientation(beta_deg: Option<f64>, gamma_deg: Option<f64>) {
    page().live.orientation(beta_deg, gamma_deg);
}

/// Answers anew; 0 for a reading, else the code of a reason.
#[wasm_bindgen]
pub fn tick(now_ms: f64) -> u8 {
    let found = page().live.tick(now_ms);
    found.err().map_or(0, |reason| reason.code())
}

/// Arms a blind reading.
#[wasm_bindgen]
pub fn arm(now_ms: f64) {
    page().live.arm(now_ms);
}

/// Ends a blind reading.
#[wasm_bindgen]
pub fn disarm() {
    page().live.disarm();
}

/// 0 off, 1 armed, 2 moved, 3 at rest: capture now.
#[wasm_bindgen]
pub fn blind() -> u8 {
    match page().live.blind() {
        Blind::Off => 0,
        Blind::Armed(_) => 1,
        Blind::Moved => 2,
        Blind::Ready => 3,
    }
}

/// Number of checks in the reading.
#[wasm_bindgen]
pub fn count() -> usize {
    reading().map_or(0, |r| r.outcomes.len())
}

/// Share of the window that is filled.
#[wasm_bindgen]
pub fn progress() -> f32 {
    page().live.progress()
}

/// Sign of this browser's gravity; 0 while not known.
#[wasm_bindgen]
pub fn sign() -> i8 {
    page().live.sign()
}

/// A number of check `i`, NaN where there is none: 0 value and 1 U, degrees; 2 margin and 3 turn
/// that would settle it, degrees; 4 rise of the head end for that turn and 5 the length it is
/// for, mm; codes of 6 the verdict, 7 what stands behind it (0 when plain), 8 the kind of
/// advice, 9 the largest contribution. The first two places `i` are the checks as parked, the
/// next two the same in the vehicle.
#[wasm_bindgen]
pub fn number(i: usize, what: u8) -> f32 {
    let number = outcome(i).and_then(|o| match what {
        0 => o.measured.map(|m| m.value_deg),
        1 => o.measured.map(|m| m.u_deg),
        2 => o.margin_deg,
        3 => o.advice.turn_deg,
        4 => o.advice.rise_mm,
        5 => o.advice.over_mm,
        6 => Some(f32::from(o.verdict as u8)),
        7 => Some(o.why.map_or(0.0, |w| f32::from(w as u8 + 1))),
        8 => Some(f32::from(o.advice.kind as u8)),
        9 => Some(f32::from(o.budget.dominant() as u8)),
        _ => None,
    });
    number.unwrap_or(f32::NAN)
}

pub fn reading() -> Option<&'static Reading> {
    page().live.reading().ok()
}

/// Check `i` as parked; from [`IN_VEHICLE`] on, in the vehicle.
fn outcome(i: usize) -> Option<&'static Outcome> {
    let reading = reading()?;
    match i.checked_sub(IN_VEHICLE) {
        None => reading.outcomes.get(i),
        Some(i) => Some(&reading.in_vehicle.as_ref()?.as_ref().ok()?.get(i)?.outcome),
    }
}
