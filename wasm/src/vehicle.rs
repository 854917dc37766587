//! The vehicle's level across the border. Its checks are read like the others, two places further
//! on: see `Live::number`.

use crate::{Live, known, no_reading};
use plumbmark::level::{Level, LevelError};
use plumbmark::vehicle::{Pointing, VehicleTerms};
use wasm_bindgen::prelude::{JsError, wasm_bindgen};

#[wasm_bindgen]
impl Live {
    /// Keeps this second as the vehicle's level: 0 the first one, 1 the vehicle stands as before,
    /// 2 it has moved. An error names why not.
    pub fn keep_level(&mut self) -> Result<u8, JsError> {
        match self.0.keep_level() {
            Ok(moved) => Ok(moved.map_or(0, |m| if m { 2 } else { 1 })),
            Err(LevelError::NoReading(reason)) => Err(no_reading(reason)),
            Err(LevelError::Refused(refusal)) => Err(JsError::new(refusal.name())),
        }
    }

    /// Forgets the vehicle's level.
    pub fn forget_level(&mut self) {
        self.0.forget_level();
    }

    /// When the level was read, by the wall clock, ms; NaN without one.
    #[wasm_bindgen(getter)]
    pub fn level_taken_ms(&self) -> f64 {
        self.0.level().map_or(f64::NAN, |l| l.taken_ms)
    }

    /// Whether the level still counts at `unix_ms`.
    pub fn level_counts(&self, unix_ms: f64) -> bool {
        self.0.level().is_some_and(|l| l.counts_at(unix_ms))
    }

    /// Slope of the face that the phone lies on now, lengthwise (0) or crosswise (1), degrees.
    pub fn face_slope_deg(&self, i: usize) -> f32 {
        self.face(i).0
    }

    /// Its U, degrees.
    pub fn face_u_deg(&self, i: usize) -> f32 {
        self.face(i).1
    }

    /// Puts in what is told of the vehicle, degrees; an error names the field.
    pub fn set_vehicle(
        &mut self,
        heading_deg: f32,
        lean_lengthwise_deg: f32,
        lean_crosswise_deg: f32,
        rake_deg: f32,
        working_lengthwise_deg: f32,
        working_crosswise_deg: f32,
    ) -> Result<(), JsError> {
        let terms = VehicleTerms {
            heading_deg,
            lean_lengthwise_deg,
            lean_crosswise_deg,
            rake_deg,
            working_lengthwise_deg,
            working_crosswise_deg,
        };
        self.0.set_vehicle(terms).map_err(JsError::new)
    }

    /// Says which way the part points: its place in the catalogue's list.
    pub fn point(&mut self, pointing: u8) -> Result<(), JsError> {
        self.0.point(known(&Pointing::ALL, pointing)?);
        Ok(())
    }

    /// Whether a level has been read: there are answers in the vehicle, or a refusal.
    #[wasm_bindgen(getter)]
    pub fn has_level(&self) -> bool {
        self.reading().is_some_and(|r| r.in_vehicle.is_some())
    }

    /// Code of why there are no answers in the vehicle; 0 where there are.
    #[wasm_bindgen(getter)]
    pub fn level_refusal(&self) -> u8 {
        let answers = self.reading().and_then(|r| r.in_vehicle.as_ref());
        let refusal = answers.and_then(|a| a.as_ref().err());
        refusal.map_or(0, |r| *r as u8 + 1)
    }

    /// What the working slope takes of check `i`'s margin in the vehicle, degrees; infinite where
    /// it can take all, NaN where none was told.
    pub fn working_takes_deg(&self, i: usize) -> f32 {
        let answers = self.reading().and_then(|r| r.in_vehicle.as_ref());
        let of_check = answers.and_then(|a| a.as_ref().ok()?.get(i));
        let working = of_check.and_then(|v| v.working);
        working.map_or(f32::NAN, |w| w.takes_deg.unwrap_or(f32::INFINITY))
    }
}

impl Live {
    fn face(&self, i: usize) -> (f32, f32) {
        let lost = (f32::NAN, f32::NAN);
        let Some((reading, placement)) = self.reading().zip(self.0.placement()) else {
            return lost;
        };
        let contact = self.0.contact(placement);
        let level = Level::new(reading.up, contact, placement.hold.rotation(), 0.0);
        level.map_or(lost, |l| l.slope_deg().get(i).copied().unwrap_or(lost))
    }
}
