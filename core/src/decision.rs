//! Three answers: within, beyond, not proven. Guard band w = U, as in JCGM 106 and
//! ILAC-G8:09/2019 §4.2.3: stricter than one-sided 95 % conformance.

use crate::bounded::bounded;
use crate::limits::Limit;
use crate::parts::Quantity;

/// The answer of a check.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum Verdict {
    /// The whole interval satisfies the limit.
    Within,
    /// The whole interval breaks the limit.
    Beyond,
    /// The limit lies within the interval, or is not known.
    NotProven,
    /// The reading stands, but no verdict may be drawn from it; see [`Why`].
    None,
}

impl Verdict {
    /// All verdicts, in the order of their codes, from 0.
    pub const ALL: [Self; 4] = [Self::Within, Self::Beyond, Self::NotProven, Self::None];
}

/// What stands behind a verdict that is not plain.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
#[non_exhaustive]
pub enum Why {
    /// The manual must speak, and its limit has not been entered.
    LimitNotEntered,
    /// Position allowed; the manual's allowance has not been entered.
    AllowanceNotEntered,
    /// The eye and the phone name different ends as the lower one.
    EndsDisagree,
    /// Nobody said which end is lower.
    EndNotTold,
    /// So near plumb, no roll can be read.
    RollUndefined,
}

impl Why {
    /// All of them, in the order of their codes, from 1; 0 is left for "plain".
    pub const ALL: [Self; 5] = [
        Self::LimitNotEntered,
        Self::AllowanceNotEntered,
        Self::EndsDisagree,
        Self::EndNotTold,
        Self::RollUndefined,
    ];
}

/// A value with its interval and the distribution behind it, degrees.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Measured {
    /// What kind of angle.
    pub quantity: Quantity,
    /// Best value.
    pub value_deg: f32,
    /// Expanded uncertainty, two-sided 95 %.
    pub u_deg: f32,
    /// Combined standard uncertainty.
    pub combined_deg: f32,
    /// Half-width of the largest rectangle in it.
    pub rectangle_deg: f32,
}

impl Measured {
    /// The 95 % interval, cut to what the quantity can be. Roll is turned by whole turns to lie
    /// nearest to the middle of `about`, so that +179° and −181° are one.
    #[must_use]
    pub fn interval_deg(&self, about: (f32, f32)) -> (f32, f32) {
        let value = self.near(about);
        let (low, high) = (value - self.u_deg, value + self.u_deg);
        match self.quantity {
            Quantity::Roll => (low, high),
            other => {
                let range = other.range_deg();
                (low.max(range.0), high.min(range.1))
            }
        }
    }

    /// The value, roll turned by whole turns to lie nearest to the middle of `about`.
    #[must_use]
    pub fn near(&self, about: (f32, f32)) -> f32 {
        let middle = 0.5 * (about.0 + about.1);
        if self.quantity == Quantity::Roll && middle.is_finite() {
            self.value_deg - 360.0 * libm::roundf((self.value_deg - middle) / 360.0)
        } else {
            self.value_deg
        }
    }

    /// Probability that the quantity lies inside `permitted`, from the same distribution as k:
    /// a normal convolved with its largest rectangle (JCGM 106 §7 with that density).
    #[must_use]
    pub fn probability(&self, permitted: (f32, f32)) -> f32 {
        let value = self.near(permitted);
        let below = |limit: f32| {
            if limit == f32::INFINITY {
                1.0
            } else if limit == f32::NEG_INFINITY {
                0.0
            } else {
                below(limit - value, self.combined_deg, self.rectangle_deg)
            }
        };
        bounded(below(permitted.1) - below(permitted.0), 0.0, 1.0)
    }
}

/// Compares a measured angle with its limit: within and beyond where the whole interval is (JCGM 106
/// and ILAC-G8:09/2019 §4.2.3, guard band w = U).
#[must_use]
pub fn decide(measured: &Measured, limit: &Limit) -> (Verdict, Option<Why>) {
    if !limit.is_entered() {
        return (Verdict::NotProven, Some(Why::LimitNotEntered));
    }
    let permitted = limit.permitted_deg();
    let (low, high) = measured.interval_deg(permitted);
    if low >= permitted.0 && high <= permitted.1 {
        (Verdict::Within, None)
    } else if low > permitted.1 || high < permitted.0 {
        (Verdict::Beyond, None)
    } else if limit.at_limit_allowed && limit.allowance_deg.is_none() {
        (Verdict::NotProven, Some(Why::AllowanceNotEntered))
    } else {
        (Verdict::NotProven, None)
    }
}

/// Compares a measured angle with a limit that holds in operation, where the vehicle's working
/// slope moves the value by up to `takes_deg` either way; `None`: by any amount. The worst of
/// these positions must satisfy the limit, and when it surely doesn't the check is beyond.
#[must_use]
pub fn decide_in_operation(
    measured: &Measured,
    limit: &Limit,
    takes_deg: Option<f32>,
) -> (Verdict, Option<Why>) {
    let (verdict, why) = decide(measured, limit);
    if matches!(verdict, Verdict::Beyond | Verdict::None) || !limit.is_entered() {
        return (verdict, why);
    }
    let Some(takes) = takes_deg else {
        return (Verdict::NotProven, None);
    };
    let (low, high) = limit.permitted_deg();
    let value = measured.near((low, high));
    let u = measured.u_deg;
    if value + takes + u <= high && value - takes - u >= low {
        (Verdict::Within, None)
    } else if value + takes - u > high || value - takes + u < low {
        (Verdict::Beyond, None)
    } else {
        (Verdict::NotProven, why)
    }
}

/// What is left to the limit when within (positive), or the excess when beyond (negative), after
/// the uncertainty, degrees: from the nearer end of y ± U to the limit (JCGM 106, guard band U).
/// `None` when not proven, and when every value is permitted.
#[must_use]
pub fn margin_deg(verdict: Verdict, measured: &Measured, limit: &Limit) -> Option<f32> {
    let permitted = limit.permitted_deg();
    let (low, high) = measured.interval_deg(permitted);
    match verdict {
        Verdict::Within => Some((low - permitted.0).min(permitted.1 - high)),
        Verdict::Beyond => Some(-(low - permitted.1).max(permitted.0 - high)),
        Verdict::NotProven | Verdict::None => None,
    }
    .filter(|margin| margin.is_finite())
}

/// Distribution function at `x` of a normal convolved with a rectangle of half-width `rectangle`,
/// `combined` in all, about zero.
fn below(x: f32, combined: f32, rectangle: f32) -> f32 {
    let a = rectangle.min(combined * 1.732);
    // Beyond 6 σ of the normal less than 1e-9 is left, and the functions below cost a small board
    // more than all else.
    if x.abs() > a + 6.0 * combined {
        return if x > 0.0 { 1.0 } else { 0.0 };
    }
    let sigma = libm::sqrtf((combined * combined - a * a / 3.0).max(0.0));
    if a <= 0.05 * combined {
        // Too narrow to divide by; the normal alone is within 1e-4 of it.
        return phi(x / combined.max(1e-9));
    }
    if sigma < 1e-3 * a {
        return bounded(0.5 + 0.5 * x / a, 0.0, 1.0);
    }
    let integral = |z: f32| z * phi(z) + density(z);
    let span = integral((x + a) / sigma) - integral((x - a) / sigma);
    bounded(sigma / (2.0 * a) * span, 0.0, 1.0)
}

fn phi(z: f32) -> f32 {
    0.5 * libm::erfcf(-z * core::f32::consts::FRAC_1_SQRT_2)
}

fn density(z: f32) -> f32 {
    0.398_942_3 * libm::expf(-0.5 * z * z)
}
