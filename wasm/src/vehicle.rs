//! The vehicle's level across the border. Its checks are read like the others, two places further
//! on: see `number`.

use crate::live::reading;
use crate::page::page;
use crate::refusals::{UNKNOWN, coded, known};
use plumbmark::level::Level;
use plumbmark::vehicle::{Pointing, VehicleTerms};
use wasm_bindgen::prelude::wasm_bindgen;

/// Keeps this second as the vehicle's level: 0 the first one, 1 the vehicle stands as before,
/// 2 it has moved; or a refusal.
#[wasm_bindgen]
pub fn keep_level() -> i32 {
    let kept = page().live.keep_level();
    coded(kept.map(|moved| moved.map_or(0, |m| if m { 2 } else { 1 })))
}

/// Forgets the vehicle's level.
#[wasm_bindgen]
pub fn forget_level() {
    page().live.forget_level();
}

/// When the level was read, by the wall clock, ms; NaN without one.
#[wasm_bindgen]
pub fn level_taken_ms() -> f64 {
    page().live.level().map_or(f64::NAN, |l| l.taken_ms)
}

/// Whether the level still counts at `unix_ms`.
#[wasm_bindgen]
pub fn level_counts(unix_ms: f64) -> bool {
    page().live.level().is_some_and(|l| l.counts_at(unix_ms))
}

/// Slope of the face that the phone lies on now, lengthwise (0) or crosswise (1), degrees.
#[wasm_bindgen]
pub fn face_slope_deg(i: usize) -> f32 {
    face(i).0
}

/// Its U, degrees.
#[wasm_bindgen]
pub fn face_u_deg(i: usize) -> f32 {
    face(i).1
}

/// Puts in what is told of the vehicle, degrees; 0, or the place of the wrong field, from 1.
#[wasm_bindgen]
pub fn set_vehicle(
    heading_deg: f32,
    lean_lengthwise_deg: f32,
    lean_crosswise_deg: f32,
    rake_deg: f32,
    working_lengthwise_deg: f32,
    working_crosswise_deg: f32,
) -> u8 {
    let taken = page().live.set_vehicle(VehicleTerms {
        heading_deg,
        lean_lengthwise_deg,
        lean_crosswise_deg,
        rake_deg,
        working_lengthwise_deg,
        working_crosswise_deg,
    });
    taken.err().map_or(0, |field| field as u8 + 1)
}

/// Says which way the part points; 0, or a refusal.
#[wasm_bindgen]
pub fn point(pointing: u8) -> i32 {
    known(&Pointing::ALL, pointing).map_or(UNKNOWN, |pointing| {
        page().live.point(pointing);
        0
    })
}

/// Whether a level has been read: there are answers in the vehicle, or a refusal.
#[wasm_bindgen]
pub fn has_level() -> bool {
    reading().is_some_and(|r| r.in_vehicle.is_some())
}

/// Code of why there are no answers in the vehicle; 0 where there are.
#[wasm_bindgen]
pub fn level_refusal() -> u8 {
    let answers = reading().and_then(|r| r.in_vehicle.as_ref());
    let refusal = answers.and_then(|a| a.as_ref().err());
    refusal.map_or(0, |r| *r as u8 + 1)
}

/// What the working slope takes of check `i`'s margin in the vehicle, degrees; infinite where
/// it can take all, NaN where none was told.
#[wasm_bindgen]
pub fn working_takes_deg(i: usize) -> f32 {
    let answers = reading().and_then(|r| r.in_vehicle.as_ref());
    let of_check = answers.and_then(|a| a.as_ref().ok()?.get(i));
    let working = of_check.and_then(|v| v.working);
    working.map_or(f32::NAN, |w| w.takes_deg.unwrap_or(f32::INFINITY))
}

fn face(i: usize) -> (f32, f32) {
    let live = &page().live;
    let lost = (f32::NAN, f32::NAN);
    let Some((reading, placement)) = live.reading().ok().zip(live.placement()) else {
        return lost;
    };
    let contact = live.contact(placement);
    let level = Level::new(reading.up, contact, placement.hold.rotation(), 0.0);
    level.map_or(lost, |l| l.slope_deg().get(i).copied().unwrap_or(lost))
}
