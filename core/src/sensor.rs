//! What is known of the sensor behind a channel: its zero and its scale, along the device's axes.
//! Assumed until a reversal ([`crate::reversal`]) or a calibration ([`crate::calibration`]) finds
//! some of it; what was not found stays assumed.

use crate::budget::UpEstimate;
use crate::prior::{CROSS_AXIS, SCALE, ZERO_MG};
use crate::vector::{Vec3, minus, norm, unit};

/// Zero and scale of one channel, device frame.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Sensor {
    /// Zero of each axis, share of gravity.
    pub zero: Vec3,
    /// Standard uncertainty of the zero, share of gravity.
    pub u_zero: Vec3,
    /// Number of the finding that each axis's zero comes from; 0: assumed. Readings with the
    /// same number share the error that it left.
    pub zero_from: [u16; 3],
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
    pub fn assumed() -> Self {
        Self {
            zero: [0.0; 3],
            u_zero: [libm::hypotf(ZERO_MG / 1000.0, CROSS_AXIS); 3],
            zero_from: [0; 3],
            scale: [1.0; 3],
            u_scale: [SCALE; 3],
            scale_from: 0,
        }
    }

    /// The sensor as two placements, one turned by half about `normal`, leave it: only the zero
    /// along the normal counts.
    #[must_use]
    pub fn after_a_turn(&self, normal: Vec3) -> Self {
        let along = |v: Vec3| core::array::from_fn(|i| v[i] * normal[i].abs());
        Self {
            zero: along(self.zero),
            u_zero: along(self.u_zero),
            ..*self
        }
    }

    /// A zero that was found while up was `found_at`, used where it is `up`: the cross-axis error
    /// that was found with it is another one at another attitude.
    #[must_use]
    pub fn used_at(&self, found_at: Vec3, up: Vec3) -> Self {
        let moved = CROSS_AXIS * norm(minus(up, found_at));
        Self {
            u_zero: self.u_zero.map(|u| libm::hypotf(u, moved)),
            ..*self
        }
    }

    /// An up vector freed of zero and scale.
    #[must_use]
    pub fn corrected(&self, up: Vec3) -> Vec3 {
        let freed = core::array::from_fn(|i| (up[i] - self.zero[i]) / self.scale[i]);
        // Zero and scale are small: the vector keeps its length but for some per cent.
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
