//! The vehicle's own level: a reading on its floor or rail, for how long it counts, whether the
//! vehicle has moved since.

use crate::budget::{Budget, Contact, UpEstimate};
use crate::frames::{
    Rotation, angle_deg, elevation_deg, elevation_sensitivity, to_body, to_device,
};
use crate::live::Live;
use crate::reason::NoReading;
use crate::vector::{Vec3, any_perpendicular, hypot};
use crate::vehicle::{Pointing, VehicleField, VehicleTerms};

/// For how long a vehicle's level counts, ms: one hour. Assumed: it settles, is loaded, is moved.
pub const LEVEL_FOR_MS: f64 = 3_600_000.0;
/// Steepest face that is a vehicle's floor or rail, degrees. Assumed.
const FACE_DEG: f32 = 30.0;
/// How many standard uncertainties two readings of one level may differ by: both lateral
/// directions count (Rayleigh, 95 %).
const MOVED: f32 = 2.45;

/// Why a check can't be answered in the vehicle.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
#[non_exhaustive]
pub enum LevelRefusal {
    /// The level is older than an hour, or the clock has gone back.
    Stale,
    /// So near plumb the part has no heading: another face is needed.
    NoHeading,
    /// The face is too steep to be a floor or a rail.
    TooSteep,
}

impl LevelRefusal {
    /// All refusals, in the order of their codes, from 1; 0 is left for "answered".
    pub const ALL: [Self; 3] = [Self::Stale, Self::NoHeading, Self::TooSteep];

    /// The refusal's name in reports and messages.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Stale => "stale",
            Self::NoHeading => "no_heading",
            Self::TooSteep => "too_steep",
        }
    }
}

impl core::fmt::Display for LevelRefusal {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.name())
    }
}

impl core::error::Error for LevelRefusal {}

/// A reading of the vehicle's own level.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Level {
    /// Up, device frame.
    pub up: UpEstimate,
    /// How the phone lay.
    pub contact: Contact,
    /// From device to body.
    pub rotation: Rotation,
    /// When, by the wall clock, ms.
    pub taken_ms: f64,
}

impl Level {
    /// Takes a reading as the vehicle's level.
    ///
    /// # Errors
    /// [`LevelRefusal::TooSteep`].
    pub fn new(
        up: UpEstimate,
        contact: Contact,
        rotation: Rotation,
        taken_ms: f64,
    ) -> Result<Self, LevelRefusal> {
        let level = Self {
            up,
            contact,
            rotation,
            taken_ms,
        };
        // NaN is no floor either.
        if angle_deg(level.up_body(), [0.0, 0.0, 1.0]) <= FACE_DEG {
            Ok(level)
        } else {
            Err(LevelRefusal::TooSteep)
        }
    }

    /// Up in the rail's body frame.
    #[must_use]
    pub fn up_body(&self) -> Vec3 {
        to_body(&self.rotation, self.up.up)
    }

    /// Whether it still counts at `now_ms`, by the wall clock.
    #[must_use]
    pub fn counts_at(&self, now_ms: f64) -> bool {
        (0.0..LEVEL_FOR_MS).contains(&(now_ms - self.taken_ms))
    }

    /// Whether a later reading of the same face by the same hold says that the vehicle has moved:
    /// by more than 2.45 of √(u₁² + u₂²), both readings' noise, step and hold: 95 % of Rayleigh's
    /// distribution, √(−2·ln 0.05). `None` where the hold is another one.
    #[must_use]
    pub fn has_moved(&self, later: &Self) -> Option<bool> {
        if self.rotation != later.rotation {
            return None;
        }
        let own = |l: &Self| {
            let across = any_perpendicular(l.up.up);
            Budget::new(&l.up, &l.contact, across).repeat_deg()
        };
        let apart = angle_deg(self.up_body(), later.up_body());
        Some(apart > MOVED * hypot(own(self), own(later)))
    }

    /// Slope of the face, lengthwise and crosswise ([`elevation_deg`] of body x and y), each with
    /// its U = k·u (two-sided 95 %), degrees; GUM 5.1.2 and 6.2.1.
    #[must_use]
    pub fn slope_deg(&self) -> [(f32, f32); 2] {
        let up = self.up_body();
        [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0]].map(|axis| {
            let c = to_device(&self.rotation, elevation_sensitivity(axis, up));
            let budget = Budget::new(&self.up, &self.contact, c);
            let u_deg = budget.coverage_factor() * budget.combined_deg();
            (elevation_deg(axis, up), u_deg)
        })
    }
}

/// Why a level was not kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum LevelError {
    /// There is no reading.
    NoReading(NoReading),
    /// It is no level.
    Refused(LevelRefusal),
}

impl Live {
    /// Keeps this second as the vehicle's level; the phone rests on its floor or rail. Returns
    /// whether the vehicle has moved since the level before: `None` where there was none, or by
    /// another hold.
    ///
    /// # Errors
    /// Why there is no reading, or why it is no level; the level before stays.
    pub fn keep_level(&mut self) -> Result<Option<bool>, LevelError> {
        let reading = self.reading().map_err(LevelError::NoReading)?;
        let placement = self
            .placement
            .filter(|p| p.part.is_none())
            .ok_or(LevelError::NoReading(NoReading::Starting))?;
        let level = Level::new(
            reading.up,
            self.contact(&placement),
            placement.hold.rotation(),
            self.clock_ms,
        )
        .map_err(LevelError::Refused)?;
        let before = self.level.replace(level);
        Ok(before.and_then(|before| before.has_moved(&level)))
    }

    /// The vehicle's level, whether it still counts or not.
    #[must_use]
    pub fn level(&self) -> Option<&Level> {
        self.level.as_ref()
    }

    /// Forgets the vehicle's level.
    pub fn forget_level(&mut self) {
        self.level = None;
        self.answer_again();
    }

    /// Takes what is told of the vehicle.
    ///
    /// # Errors
    /// The first term that can't be; the terms before stay.
    pub fn set_vehicle(&mut self, terms: VehicleTerms) -> Result<(), VehicleField> {
        match terms.wrong_field() {
            Some(field) => Err(field),
            None => {
                self.vehicle = terms;
                self.answer_again();
                Ok(())
            }
        }
    }

    /// What is told of the vehicle.
    #[must_use]
    pub fn vehicle(&self) -> &VehicleTerms {
        &self.vehicle
    }

    /// Says which way the part points against the phone on the rail.
    pub fn point(&mut self, pointing: Pointing) {
        self.pointing = pointing;
        self.answer_again();
    }

    /// Which way it points.
    #[must_use]
    pub fn pointing(&self) -> Pointing {
        self.pointing
    }
}
