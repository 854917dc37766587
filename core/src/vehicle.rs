//! What is told or assumed of the vehicle that a part is bolted to.

use crate::frames::DEG;
use crate::trig::sin_cos_deg;
use crate::vector::{Vec3, hypot};

/// What is told or assumed of the vehicle; degrees.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct VehicleTerms {
    /// Standard uncertainty of the part's heading against the phone's on the rail.
    pub heading_deg: f32,
    /// Lean of the rail on known level ground, lengthwise: positive with its head end up.
    pub lean_lengthwise_deg: f32,
    /// The same crosswise: positive with its left side up.
    pub lean_crosswise_deg: f32,
    /// Standard uncertainty of that lean: load, springs, frame against floor.
    pub rake_deg: f32,
    /// Slope that the vehicle works on, lengthwise.
    pub working_lengthwise_deg: f32,
    /// Slope that the vehicle works on, crosswise.
    pub working_crosswise_deg: f32,
}

/// A term of [`VehicleTerms`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
#[expect(missing_docs, reason = "each is documented where the term is")]
pub enum VehicleField {
    HeadingDeg,
    LeanLengthwiseDeg,
    LeanCrosswiseDeg,
    RakeDeg,
    WorkingLengthwiseDeg,
    WorkingCrosswiseDeg,
}

impl VehicleField {
    /// All of them, in the order of their codes, from 0.
    pub const ALL: [Self; 6] = [
        Self::HeadingDeg,
        Self::LeanLengthwiseDeg,
        Self::LeanCrosswiseDeg,
        Self::RakeDeg,
        Self::WorkingLengthwiseDeg,
        Self::WorkingCrosswiseDeg,
    ];
}

impl VehicleTerms {
    /// Nothing known: heading by eye, rake 1° until read on a known level, no working slope.
    /// Assumed.
    pub const ASSUMED: Self = Self {
        heading_deg: 5.0,
        lean_lengthwise_deg: 0.0,
        lean_crosswise_deg: 0.0,
        rake_deg: 1.0,
        working_lengthwise_deg: 0.0,
        working_crosswise_deg: 0.0,
    };

    /// The first term that can't be, if any: an uncertainty below what a reading has, a
    /// lean or slope that no vehicle stands on.
    #[must_use]
    pub fn wrong_field(&self) -> Option<VehicleField> {
        let terms = [
            (VehicleField::HeadingDeg, self.heading_deg, 1.0, 45.0),
            (
                VehicleField::LeanLengthwiseDeg,
                self.lean_lengthwise_deg,
                -15.0,
                15.0,
            ),
            (
                VehicleField::LeanCrosswiseDeg,
                self.lean_crosswise_deg,
                -15.0,
                15.0,
            ),
            (VehicleField::RakeDeg, self.rake_deg, 0.1, 10.0),
            (
                VehicleField::WorkingLengthwiseDeg,
                self.working_lengthwise_deg,
                0.0,
                45.0,
            ),
            (
                VehicleField::WorkingCrosswiseDeg,
                self.working_crosswise_deg,
                0.0,
                45.0,
            ),
        ];
        let wrong = terms
            .iter()
            .find(|(_, v, low, high)| !(low..=high).contains(&v));
        wrong.map(|t| t.0)
    }

    /// Steepest slope that the vehicle works on, degrees: of the plane that leans by both,
    /// atan(√(tan² lengthwise + tan² crosswise)), by geometry.
    #[must_use]
    pub fn working_slope_deg(&self) -> f32 {
        // Of the plane that leans by both: how far its normal is from plumb.
        let lengthwise = sin_cos_deg(self.working_lengthwise_deg);
        let crosswise = sin_cos_deg(self.working_crosswise_deg);
        let (along, across) = (lengthwise.0 * crosswise.1, crosswise.0 * lengthwise.1);
        let up = lengthwise.1 * crosswise.1;
        libm::atan2f(hypot(along, across), up) * DEG
    }

    /// Up in the rail's body frame when the vehicle stands level: (sin lengthwise, sin crosswise,
    /// √(1 − both squares)), a unit vector by its elevations.
    #[must_use]
    pub fn level_up(&self) -> Vec3 {
        let x = sin_cos_deg(self.lean_lengthwise_deg).0;
        let y = sin_cos_deg(self.lean_crosswise_deg).0;
        [x, y, libm::sqrtf((1.0 - x * x - y * y).max(0.0))]
    }
}

/// Which way the part's head end points, seen from above, against the phone's on the rail.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum Pointing {
    /// The same way.
    Same,
    /// To the phone's left.
    Left,
    /// The opposite way.
    Opposite,
    /// To the phone's right.
    Right,
}

impl Pointing {
    /// All ways, in the order of their codes, from 0.
    pub const ALL: [Self; 4] = [Self::Same, Self::Left, Self::Opposite, Self::Right];

    /// Cosine and sine of the turn, anticlockwise from above.
    #[must_use]
    pub fn turn(self) -> (f32, f32) {
        match self {
            Self::Same => (1.0, 0.0),
            Self::Left => (0.0, 1.0),
            Self::Opposite => (-1.0, 0.0),
            Self::Right => (0.0, -1.0),
        }
    }
}
