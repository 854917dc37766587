//! Where an interval comes from: contributions, their sum, the factor k.

use crate::frames::DEG;
use crate::prior::{K_NORMAL, K_PLUMB};
use crate::sensor::Sensor;
use crate::shared::Share;
use crate::vector::{Vec3, cross, dot, norm};

/// Squared degrees in one squared radian.
const DEG2: f32 = DEG * DEG;

/// What an uncertainty is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum Source {
    /// Scatter of the samples, for as many as are independent.
    Noise,
    /// Rounding of the readings.
    Step,
    /// Creeping of the fused orientation after a turn.
    Settle,
    /// Zero offset of the sensor.
    Zero,
    /// Scale error of the sensor.
    Scale,
    /// How the phone lies on the surface: case, camera bump, dirt, hand.
    Hold,
    /// The phone's edge against the part's axis.
    Align,
    /// The reading of the vehicle's own level: its noise, step, settling and hold.
    Datum,
    /// The part's heading in the vehicle.
    Heading,
    /// Load, springs, frame against floor: the vehicle's level against its rail.
    Rake,
}

impl Source {
    /// All sources, in the order of [`Budget::variances`].
    pub const ALL: [Self; 10] = [
        Self::Noise,
        Self::Step,
        Self::Settle,
        Self::Zero,
        Self::Scale,
        Self::Hold,
        Self::Align,
        Self::Datum,
        Self::Heading,
        Self::Rake,
    ];
}

/// What a channel knows of its up vector, device frame.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct UpEstimate {
    /// Unit vector opposite to gravity.
    pub up: Vec3,
    /// Standard uncertainty of each component from noise, radians.
    pub noise: Vec3,
    /// Change of `up` over half of each independent rounding rectangle, radians: three of one
    /// placement, six of two.
    pub half_steps: [Vec3; 6],
    /// Largest half-width that a rounding rectangle of this channel can have, radians.
    pub worst_half_step: f32,
    /// Standard uncertainty from settling, degrees.
    pub settle_deg: f32,
    /// What is known of the sensor; already taken into `up`.
    pub sensor: Sensor,
}

/// How the phone touches the part: standard uncertainties, degrees, and the contact's normal.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Contact {
    /// Tilt of the phone on the surface, about any axis.
    pub hold_deg: f32,
    /// Turn of the phone about the contact's normal.
    pub align_deg: f32,
    /// Normal of the surface, device frame.
    pub normal: Vec3,
}

/// Contributions to one angle. Kept squared: a root is drawn when one is asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Budget {
    /// Variances, degrees², in the order of [`Source::ALL`].
    pub variances: [f32; 10],
    /// Half-width of the largest single rectangle among them, degrees.
    pub rectangle_deg: f32,
}

impl Budget {
    /// Budget of an angle that answers to a change of up by `sensitivity` (d angle = c · d up).
    /// Law of propagation, GUM 5.1.2; zero and scale by their sensor's terms.
    #[must_use]
    pub fn new(from: &UpEstimate, contact: &Contact, sensitivity: Vec3) -> Self {
        let c = sensitivity;
        let length = squared(c);
        let (mut squares, mut widest) = (0.0, 0.0_f32);
        // One placement leaves half of them empty.
        for half_step in from.half_steps.iter().filter(|h| **h != [0.0; 3]) {
            let half_width = dot(c, *half_step).abs();
            squares += half_width * half_width;
            widest = widest.max(half_width);
        }
        let noise: Vec3 = core::array::from_fn(|i| c[i] * from.noise[i]);
        let turn = contact.align_deg * dot(c, cross(contact.normal, from.up));
        let shared = Share::new(from, c);
        Self {
            variances: [
                squared(noise) * DEG2,
                squares * (DEG2 / 3.0),
                from.settle_deg * from.settle_deg * length,
                shared.zero_covariance(&shared),
                squared(shared.scale_deg),
                contact.hold_deg * contact.hold_deg * length,
                turn * turn,
                0.0,
                0.0,
                0.0,
            ],
            rectangle_deg: widest * DEG,
        }
    }

    /// The larger of two budgets, source by source: near plumb either lateral direction may rule.
    #[must_use]
    pub fn or_larger(&self, other: &Self) -> Self {
        Self {
            variances: core::array::from_fn(|i| self.variances[i].max(other.variances[i])),
            rectangle_deg: self.rectangle_deg.max(other.rectangle_deg),
        }
    }

    /// The budget with what the error `across` the slope does to an elevation: it bends it by
    /// e²/2 times the elevation's tangent, its `steepness`, a term of second order (GUM 5.1.2,
    /// note). The root mean square of that goes to what it mostly comes from.
    #[must_use]
    pub fn bent_by(&self, across: &Self, steepness: f32) -> Self {
        let bend_deg = across.variance_deg2() * steepness * (0.5 / DEG);
        let source = across.dominant() as usize;
        let mut bent = *self;
        if let Some(variance) = bent.variances.get_mut(source) {
            // The mean square of a normal's square is 3.
            *variance += 3.0 * bend_deg * bend_deg;
        }
        bent
    }

    /// Combined standard uncertainty, degrees (GUM 5.1.2, no correlation within one reading).
    #[must_use]
    pub fn combined_deg(&self) -> f32 {
        libm::sqrtf(self.variance_deg2())
    }

    fn variance_deg2(&self) -> f32 {
        self.variances.iter().sum()
    }

    /// One source's standard uncertainty, degrees.
    #[must_use]
    pub fn of(&self, source: Source) -> f32 {
        libm::sqrtf(self.variance(source))
    }

    fn variance(&self, source: Source) -> f32 {
        self.variances[source as usize]
    }

    /// The largest contribution.
    #[must_use]
    pub fn dominant(&self) -> Source {
        Source::ALL.into_iter().fold(Source::Noise, |m, s| {
            if self.variance(s) > self.variance(m) {
                s
            } else {
                m
            }
        })
    }

    /// Factor k for a two-sided 95 % interval.
    #[must_use]
    pub fn coverage_factor(&self) -> f32 {
        coverage_factor(self.rectangle_deg, self.combined_deg())
    }

    /// The budget that a reading after a move can be expected to have at worst: same phone and
    /// hold, the rounding at its widest (half-width/√3; GUM 4.3.7), the scale at its steepest, at
    /// 45°, where u·sin 2T/√2 is largest: u²/2 (GUM 5.1.2).
    #[must_use]
    pub fn after_a_move(&self, from: &UpEstimate, sensitivity: Vec3) -> Self {
        let length = norm(sensitivity) * DEG;
        let worst_deg = from.worst_half_step * length;
        let scale = from.sensor.u_scale.into_iter().fold(0.0, f32::max) * length;
        let mut after = *self;
        let step = &mut after.variances[Source::Step as usize];
        *step = step.max(worst_deg * worst_deg * (1.0 / 3.0));
        let of_scale = &mut after.variances[Source::Scale as usize];
        *of_scale = of_scale.max(scale * scale * 0.5);
        after.rectangle_deg = worst_deg.max(self.rectangle_deg);
        after
    }

    /// Standard uncertainty of what differs between two readings by the same phone and hold,
    /// degrees: all but zero and scale, which they share (GUM 5.1.2).
    #[must_use]
    pub fn repeat_deg(&self) -> f32 {
        use Source::{Align, Hold, Noise, Settle, Step};
        let parts = [Noise, Step, Settle, Hold, Align].map(|s| self.variance(s));
        libm::sqrtf(parts.iter().sum())
    }
}

/// Squared length.
fn squared(v: Vec3) -> f32 {
    dot(v, v)
}

/// Coverage factor for 95 % of a normal convolved with one rectangle of half-width `rectangle`
/// in a total of standard uncertainty `combined`: 1.965 with none, 1.647 for a rectangle alone.
///
/// A fit, never more than 0.0083 above the exact quantile and never below it (scipy).
#[must_use]
pub fn coverage_factor(rectangle: f32, combined: f32) -> f32 {
    if combined <= 0.0 {
        return K_NORMAL;
    }
    let g = (rectangle * rectangle / (3.0 * combined * combined)).min(1.0);
    let g2 = g * g;
    K_NORMAL - 0.168 * g2 - 0.150 * g2 * g2 * g2
}

/// The least factor near plumb, where both lateral errors count and the result has one sign: that of
/// Rayleigh's distribution, [`K_PLUMB`]; 0 elsewhere. Both in degrees.
#[must_use]
pub fn least_factor(off_plumb_deg: f32, combined_deg: f32) -> f32 {
    if off_plumb_deg < 2.5 * combined_deg {
        K_PLUMB
    } else {
        0.0
    }
}
