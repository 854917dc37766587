//! Errors that several readings share. Readings by one phone have one zero and one scale, so their
//! errors add up, or cancel, instead of averaging out (GUM 5.2.2).

use crate::budget::{Budget, UpEstimate};
use crate::frames::DEG;
use crate::prior::CROSS_AXIS;
use crate::vector::{Vec3, dot, minus, scaled};

/// How one angle answers to the errors it shares with others, and what is its own.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Share {
    /// Change for one standard uncertainty of each axis's zero, degrees, with its sign.
    pub zero_deg: Vec3,
    /// The findings that left these errors: [`crate::sensor::Sensor::zero_from`].
    pub zero_from: [u16; 3],
    /// Change for what another side of the phone adds, degrees, with its sign.
    pub side_deg: Vec3,
    /// That side: [`crate::sensor::Sensor::side`].
    pub side: u8,
    /// How the angle answers to up, for one standard uncertainty of the cross-axis error, degrees.
    pub cross_deg: Vec3,
    /// Part of up that this error turns.
    pub cross_at: Vec3,
    /// Change for one standard uncertainty of each axis's scale, degrees, with its sign.
    pub scale_deg: Vec3,
    /// The finding that left these: [`crate::sensor::Sensor::scale_from`].
    pub scale_from: u16,
    /// Standard uncertainty of everything that is not shared, degrees.
    pub own_deg: f32,
}

impl Share {
    /// Zero and scale of an angle that answers to a change of up by `c`, degrees: cᵢ·u(zeroᵢ) and
    /// cᵢ·upᵢ·u(scaleᵢ) (law of propagation, GUM 5.1.2); nothing of its own.
    #[must_use]
    pub fn new(from: &UpEstimate, c: Vec3) -> Self {
        let sensor = &from.sensor;
        let c = scaled(c, DEG);
        let by = |u: Vec3| core::array::from_fn(|i| c[i] * u[i]);
        let scale_deg = by(sensor.u_scale);
        Self {
            zero_deg: by(sensor.u_zero),
            zero_from: sensor.zero_from,
            side_deg: by(sensor.u_side),
            side: sensor.side,
            cross_deg: scaled(c, CROSS_AXIS),
            cross_at: minus(from.up, sensor.found_at),
            scale_deg: core::array::from_fn(|i| from.up[i] * scale_deg[i]),
            scale_from: sensor.scale_from,
            own_deg: 0.0,
        }
    }

    /// The same with the rest of its budget as its own: noise, step, settling, hold and alignment
    /// are fresh at every placement.
    #[must_use]
    pub fn with_own(self, budget: &Budget) -> Self {
        Self {
            own_deg: budget.repeat_deg(),
            ..self
        }
    }

    /// Covariance by the zeros of two readings, degrees²: zero, side and cross-axis error, Σ u·u′
    /// over what both share (GUM 5.2.2). The last is a matrix with independent entries, so its
    /// covariance is that of both factors.
    #[must_use]
    pub fn zero_covariance(&self, other: &Self) -> f32 {
        let mut total = 0.0;
        for (i, from) in self.zero_from.into_iter().enumerate() {
            if from == other.zero_from[i] {
                total += self.zero_deg[i] * other.zero_deg[i];
            }
        }
        if self.side == other.side {
            total += dot(self.side_deg, other.side_deg);
        }
        total + dot(self.cross_deg, other.cross_deg) * dot(self.cross_at, other.cross_at)
    }

    /// Covariance by the scales of two readings, degrees²: Σ u·u′ where both have the same (GUM
    /// 5.2.2).
    #[must_use]
    pub fn scale_covariance(&self, other: &Self) -> f32 {
        if self.scale_from == other.scale_from {
            dot(self.scale_deg, other.scale_deg)
        } else {
            0.0
        }
    }

    /// Covariance of two different readings, degrees².
    #[must_use]
    pub fn covariance(&self, other: &Self) -> f32 {
        self.zero_covariance(other) + self.scale_covariance(other)
    }

    /// Variance of one reading, degrees².
    #[must_use]
    pub fn variance(&self) -> f32 {
        self.covariance(self) + self.own_deg * self.own_deg
    }
}

/// Standard uncertainty of Σ weight · angle, in the weights' unit times degrees: every pair with
/// its covariance (GUM equation 16).
#[must_use]
pub fn combined(terms: &[(f32, Share)]) -> f32 {
    let mut total = 0.0;
    for (i, (weight, share)) in terms.iter().enumerate() {
        total += weight * weight * share.variance();
        for (other_weight, other) in terms.iter().take(i) {
            total += 2.0 * weight * other_weight * share.covariance(other);
        }
    }
    libm::sqrtf(total.max(0.0))
}
