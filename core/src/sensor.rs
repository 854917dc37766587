//! What is known of the sensor behind a channel: its zero and its scale, along the device's axes.
//! Assumed until a reversal ([`crate::reversal`]) or a calibration ([`crate::calibration`]) finds
//! some of it; what was not found stays assumed.

use crate::budget::UpEstimate;
use crate::calibration::Calibration;
use crate::prior::{SCALE, ZERO_MG};
use crate::vector::{Vec3, dot, hypot, scaled, unit};

/// Zero and scale of one channel, device frame.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Sensor {
    /// Zero of each axis, share of gravity.
    pub zero: Vec3,
    /// Standard uncertainty of the zero, share of gravity; cross-axis error comes beside it.
    pub u_zero: Vec3,
    /// Number of the finding that each axis's zero comes from; 0: assumed. Readings with the
    /// same number share the error that it left.
    pub zero_from: [u16; 3],
    /// What another side of the phone adds where a zero was found on one and is used on another,
    /// share of gravity: case and bump differ. Shared by readings on the same side.
    pub u_side: Vec3,
    /// That side, from 1; 0: the zero is this side's own.
    pub side: u8,
    /// Part of up at which cross-axis error was found with the zero, and so does not count: what
    /// counts is the difference of up from it.
    pub found_at: Vec3,
    /// Scale of each axis.
    pub scale: Vec3,
    /// Standard uncertainty of the scale.
    pub u_scale: Vec3,
    /// Number of the finding that the scale comes from; 0: assumed.
    pub scale_from: u16,
}

impl Sensor {
    /// An unchecked phone.
    #[must_use]
    pub const fn assumed() -> Self {
        Self::unchecked(ZERO_MG / 1000.0, SCALE)
    }

    /// A sensor of which nothing has been found yet: standard uncertainties of each axis's zero,
    /// share of gravity, and of its scale, as its data sheet gives them.
    #[must_use]
    pub const fn unchecked(u_zero: f32, u_scale: f32) -> Self {
        Self {
            zero: [0.0; 3],
            u_zero: [u_zero; 3],
            zero_from: [0; 3],
            u_side: [0.0; 3],
            side: 0,
            found_at: [0.0; 3],
            scale: [1.0; 3],
            u_scale: [u_scale; 3],
            scale_from: 0,
        }
    }

    /// The sensor with the zero and scale of a calibration, the finding of this number.
    #[must_use]
    pub fn calibrated(&self, by: &Calibration, number: u16) -> Self {
        Self {
            zero: by.zero,
            u_zero: by.u_zero,
            zero_from: [number; 3],
            scale: by.scale,
            u_scale: by.u_scale,
            scale_from: number,
            ..*self
        }
    }

    /// The sensor after its zero may have crept by the standard uncertainty `u`, share of gravity:
    /// with temperature and time since it was found. √(u_zero² + u²) (GUM 5.1.2, independent).
    #[must_use]
    pub fn crept(&self, u: f32) -> Self {
        Self {
            u_zero: self.u_zero.map(|known| hypot(known, u)),
            ..*self
        }
    }

    /// The sensor as two placements of a phone that felt `up`, one turned by half about `normal`,
    /// leave it: only the zero along the normal counts, and of the cross-axis error what the
    /// surface's slope makes of it.
    #[must_use]
    pub fn after_a_turn(&self, normal: Vec3, up: Vec3) -> Self {
        let along = |v: Vec3| core::array::from_fn(|i| v[i] * normal[i].abs());
        Self {
            zero: along(self.zero),
            u_zero: along(self.u_zero),
            u_side: along(self.u_side),
            found_at: scaled(normal, dot(up, normal)),
            ..*self
        }
    }

    /// An up vector freed of zero and scale.
    ///
    /// What is felt is zero + scale · up, of a length that is not known: the one that leaves up a
    /// length of 1. With a = felt/scale and b = zero/scale, up = λ·a − b, where λ is the larger
    /// root of |λ·a − b|² = 1 (the sensor's own equation, solved).
    #[must_use]
    pub fn corrected(&self, up: Vec3) -> Vec3 {
        let a: Vec3 = core::array::from_fn(|i| up[i] / self.scale[i]);
        let b: Vec3 = core::array::from_fn(|i| self.zero[i] / self.scale[i]);
        let (aa, ab, bb) = (dot(a, a), dot(a, b), dot(b, b));
        let root = libm::sqrtf((ab * ab + aa * (1.0 - bb)).max(0.0));
        let length = (ab + root) / aa;
        let freed = core::array::from_fn(|i| length * a[i] - b[i]);
        // Of length 1 but for rounding, where zero and scale are a sensor's.
        unit(freed).unwrap_or(up)
    }

    /// An estimate freed of zero and scale.
    #[must_use]
    pub fn apply(&self, estimate: &UpEstimate) -> UpEstimate {
        UpEstimate {
            up: self.corrected(estimate.up),
            sensor: *self,
            ..*estimate
        }
    }
}

/// What a phone with this zero, share of gravity, feels along the unit vector `up`, with its
/// length: so that up without the zero has a length of 1. λ·up, λ = up·o + √(1 − |o|² + (up·o)²),
/// the larger root of |λ·up − o|² = 1.
#[must_use]
pub fn felt(up: Vec3, zero: Vec3) -> Vec3 {
    let along = dot(up, zero);
    let rest = (1.0 - dot(zero, zero) + along * along).max(0.0);
    scaled(up, along + libm::sqrtf(rest))
}
