//! Reversal: the same reading with the phone turned end for end about the surface's normal. Half
//! the difference is the part's, half the sum is the phone's zero; the zero along the normal stays
//! unknown, the hold counts in full.

use crate::budget::{Contact, UpEstimate};
use crate::frames::{DEG, Rotation};
use crate::prior::{CROSS_AXIS, K_NORMAL, LARGEST_ZERO};
use crate::sensor::{Sensor, felt};
use crate::vector::{Vec3, cross, dot, hypot, minus, norm, scaled, unit};

/// Why placements don't make a reversal.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
#[non_exhaustive]
pub enum TurnRefusal {
    /// The surface's slope differs between the placements by more than noise and hold: the phone
    /// was tipped, it rocks, or the part has moved.
    Tipped,
    /// The zero that they would mean is larger than any sensor's.
    ZeroTooLarge,
    /// Two pairs of placements find different zeros.
    PairsDisagree,
    /// Two placements that belong together were not turned by half against each other.
    NotOpposite,
    /// Two or four placements are needed.
    WrongCount,
}

impl TurnRefusal {
    /// All refusals, in the order of their codes, from 1; 0 is left for "found".
    pub const ALL: [Self; 5] = [
        Self::Tipped,
        Self::ZeroTooLarge,
        Self::PairsDisagree,
        Self::NotOpposite,
        Self::WrongCount,
    ];

    /// The refusal's name in messages.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Tipped => "tipped",
            Self::ZeroTooLarge => "zero_too_large",
            Self::PairsDisagree => "pairs_disagree",
            Self::NotOpposite => "not_opposite",
            Self::WrongCount => "wrong_count",
        }
    }
}

impl core::fmt::Display for TurnRefusal {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.name())
    }
}

impl core::error::Error for TurnRefusal {}

/// A zero found, and the up vector at which it was.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct FoundZero {
    /// The zero, share of gravity, device axes; 0 along the normal, where it can't be found.
    pub zero: Vec3,
    /// Its standard uncertainty.
    pub u_zero: Vec3,
    /// Mean up vector of the placements.
    pub found_at: Vec3,
}

impl FoundZero {
    /// The zero lengthwise and crosswise, each with its U (two-sided 95 %), as an angle at level,
    /// degrees: a·o along the body's axis a, and k·√(Σ aᵢ²·uᵢ²) (GUM 5.1.2).
    #[must_use]
    pub fn in_body_deg(&self, rotation: &Rotation) -> [[f32; 2]; 2] {
        let (zero, u) = (self.zero, self.u_zero);
        let [x, y, _] = rotation;
        [x, y].map(|row| {
            let axis = row.map(f32::from);
            let squared = dot(axis.map(|a| a * a), u.map(|v| v * v));
            [dot(axis, zero) * DEG, K_NORMAL * libm::sqrtf(squared) * DEG]
        })
    }
}

/// How many standard uncertainties two placements may differ by. 99 % of a normal.
const APART: f32 = 2.6;

/// Least share of a zero along the slope that two directions must show to tell it: at 60° they
/// show the cosine's square, 0.25; what lies steeper stays hidden in lengths.
const SHOWN: f32 = 0.25;

/// The part's up vector, in the first placement's frame, from two placements of a phone turned by
/// half about `contact.normal`: half the sum of the first and of the second turned back
/// ([`half_turn`]), each as long as it was felt, so that the zero across the normal cancels;
/// uncertainties as of a mean of two. `sensor` is what is known of it along the normal,
/// `largest_zero` the share of gravity beyond which a zero is taken for a mistake.
///
/// # Errors
/// [`TurnRefusal::Tipped`], [`TurnRefusal::ZeroTooLarge`].
#[inline(never)]
pub fn turned(
    first: &UpEstimate,
    second: &UpEstimate,
    contact: &Contact,
    sensor: &Sensor,
    largest_zero: f32,
) -> Result<UpEstimate, TurnRefusal> {
    let n = contact.normal;
    let found = pair_zero(first, second, contact, largest_zero)?;
    let (one, two) = (felt(first.up, found.zero), felt(second.up, found.zero));
    let back = half_turn(two, n);
    let mean = core::array::from_fn(|i| 0.5 * (one[i] + back[i]));
    let mut both = UpEstimate {
        up: unit(mean).ok_or(TurnRefusal::Tipped)?,
        noise: core::array::from_fn(|i| 0.5 * hypot(first.noise[i], second.noise[i])),
        half_steps: [[0.0; 3]; 6],
        worst_half_step: first.worst_half_step.max(second.worst_half_step),
        settle_deg: 0.5 * hypot(first.settle_deg, second.settle_deg),
        sensor: first.sensor,
    };
    let rectangles = first.half_steps.iter().take(3).copied();
    let others = second.half_steps.iter().take(3).map(|h| half_turn(*h, n));
    for (to, from) in both.half_steps.iter_mut().zip(rectangles.chain(others)) {
        *to = scaled(from, 0.5);
    }
    Ok(sensor.after_a_turn(n, both.up).apply(&both))
}

/// The phone's zero across the normal, from two placements turned by half, or from four turned by a
/// quarter each, either way round: half the sum of what two opposite placements feel across the
/// normal, where the part's share cancels (end-for-end reversal, by geometry).
///
/// # Errors
/// [`TurnRefusal`].
#[inline(never)]
pub fn find_zero(placements: &[UpEstimate], contact: &Contact) -> Result<FoundZero, TurnRefusal> {
    match placements {
        [first, second] => pair_zero(first, second, contact, LARGEST_ZERO),
        [a, b, c, d] => {
            let one = pair_zero(a, c, contact, LARGEST_ZERO)?;
            let two = pair_zero(b, d, contact, LARGEST_ZERO)?;
            let apart = minus(one.zero, two.zero);
            let allowed = |i: usize| APART * hypot(one.u_zero[i], two.u_zero[i]) + 1e-6;
            if (0..3).any(|i| apart[i].abs() > allowed(i)) {
                return Err(TurnRefusal::PairsDisagree);
            }
            let mean = |p: Vec3, q: Vec3| core::array::from_fn(|i| 0.5 * (p[i] + q[i]));
            Ok(FoundZero {
                zero: mean(one.zero, two.zero),
                u_zero: core::array::from_fn(|i| 0.5 * hypot(one.u_zero[i], two.u_zero[i])),
                found_at: mean(one.found_at, two.found_at),
            })
        }
        _ => Err(TurnRefusal::WrongCount),
    }
}

// Its numbers are gone from the stack before the sensor is asked.
#[inline(never)]
fn pair_zero(
    first: &UpEstimate,
    second: &UpEstimate,
    contact: &Contact,
    largest_zero: f32,
) -> Result<FoundZero, TurnRefusal> {
    let n = contact.normal;
    let hold = contact.hold_deg / DEG;
    let settle = hypot(first.settle_deg, second.settle_deg) / DEG;
    let noise: Vec3 = core::array::from_fn(|i| hypot(first.noise[i], second.noise[i]));
    // A zero changes the lengths of what is felt, and not alike: a few rounds settle both.
    let mut zero = [0.0; 3];
    let mut mean = zero;
    let mut apart = zero;
    for _ in 0..3 {
        let (one, two) = (felt(first.up, zero), felt(second.up, zero));
        mean = core::array::from_fn(|i| 0.5 * (one[i] + two[i]));
        apart = core::array::from_fn(|i| 0.5 * (one[i] - two[i]));
        let step = minus(across(mean, n), zero);
        let along = across(apart, n);
        let hidden = dot(along, step) / (1.0 - dot(along, along)).max(SHOWN);
        zero = core::array::from_fn(|i| zero[i] + step[i] + along[i] * hidden);
    }
    let slope = norm(cross(n, apart));
    // What is left of the largest zero along the slope: nothing up to 60°, all of it upright.
    let shown = 1.0 - slope * slope;
    let missed = 1.0 - shown * (1.0 + slope * slope / shown.max(SHOWN));
    let left = largest_zero * missed * missed;
    // Along the normal both placements must say the same, but for what each is unsure of.
    let steps: f32 = [first, second]
        .iter()
        .flat_map(|p| p.half_steps.iter())
        .map(|h| dot(*h, n).abs())
        .sum();
    let unsure = dot(noise, n).abs() + settle + (1.5 * hold + 2.0 * CROSS_AXIS) * slope;
    let hidden = 2.0 * left * dot(mean, n).abs();
    if 2.0 * dot(apart, n).abs() > steps + APART * unsure + hidden + 1e-4 {
        return Err(TurnRefusal::Tipped);
    }
    if zero.iter().any(|z| z.abs() > largest_zero) {
        return Err(TurnRefusal::ZeroTooLarge);
    }
    let align = contact.align_deg / DEG * slope;
    let variance = |p: &UpEstimate, axis: Vec3| {
        // Only directions are known: what moves the part along the normal moves the zero too.
        let along = dot(p.up, n);
        let by = dot(p.up, axis) / libm::copysignf(along.abs().max(0.5), along);
        let c = minus(axis, scaled(n, by));
        let noise: Vec3 = core::array::from_fn(|j| c[j] * p.noise[j]);
        let steps: f32 = p.half_steps.iter().map(|h| dot(c, *h) * dot(c, *h)).sum();
        let settle = p.settle_deg / DEG;
        let turns = dot(c, c) * (settle * settle + hold * hold) + align * align;
        dot(noise, noise) + steps / 3.0 + turns
    };
    let u_zero = core::array::from_fn(|i| {
        let axis = core::array::from_fn(|j| if i == j { 1.0 } else { 0.0 });
        let squared = 0.25 * (variance(first, axis) + variance(second, axis)) + left * left / 3.0;
        libm::sqrtf(squared) * (1.0 - n[i].abs())
    });
    Ok(FoundZero {
        zero,
        u_zero,
        found_at: mean,
    })
}

/// `v` turned by half about the unit vector `n`: 2·(v·n)·n − v (Rodrigues' rotation by 180°).
#[must_use]
pub fn half_turn(v: Vec3, n: Vec3) -> Vec3 {
    minus(scaled(n, 2.0 * dot(v, n)), v)
}

/// `v` without its part along `n`.
fn across(v: Vec3, n: Vec3) -> Vec3 {
    minus(v, scaled(n, dot(v, n)))
}
