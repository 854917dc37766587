//! What single pieces cost, as shares K of the dynamic pressure ρ·v²/2. Each formula names its
//! source; how far other sources lie from it stands beside the pieces ([`super::piece`]).

use crate::trig::sin_deg;

fn sine(deg: f64) -> f64 {
    f64::from(sin_deg(deg as f32))
}

/// Smooth bend with a radius of `radius_ratio` bores, its own length's friction left out (that is
/// f·α·r/D more): Rennels and Hudson, *Pipe Flow* (2012), by way of fluids 1.3.1. Turbulent flow.
#[must_use]
pub fn bend(angle_deg: f64, radius_ratio: f64, friction: f64) -> f64 {
    let half = sine(0.5 * angle_deg);
    let tight = libm::exp(-angle_deg / 45.0 * libm::log(radius_ratio));
    (0.10 + 2.4 * friction) * half + 6.6 * friction * (libm::sqrt(half) + half) * tight
}

/// Length of a bend's middle line, in bores: an arc, α·r/D.
#[must_use]
pub fn arc_bores(angle_deg: f64, radius_ratio: f64) -> f64 {
    angle_deg.to_radians() * radius_ratio
}

/// Mitred bend, one cut: Rennels and Hudson (2012), by way of fluids 1.3.1: K = 0.42·s + 2.56·s³
/// with s = sin(α/2). Up to 135°.
#[must_use]
pub fn mitre(angle_deg: f64) -> f64 {
    let half = sine(0.5 * angle_deg);
    half * (0.42 + 2.56 * half * half)
}

/// Open end that air leaves by, behind a grille with a share `free` of free area: Idelchik,
/// *Handbook of Hydraulic Resistance*, thin sharp-edged grid at an exit (from memory): K = ((1 +
/// √½·√(1 − f))/f)². 1 without a grille.
#[must_use]
pub fn exit(free: f64) -> f64 {
    let through = (1.0 + core::f64::consts::FRAC_1_SQRT_2 * libm::sqrt(1.0 - free)) / free;
    through * through
}

/// Open end that air enters by: Idelchik, the same before an entrance (from memory): K = ((1 + √½ −
/// f)/f)². 0.5 without a grille, sharp edges.
#[must_use]
pub fn entrance(free: f64) -> f64 {
    let through = (1.0 + core::f64::consts::FRAC_1_SQRT_2 - free) / free;
    through * through
}

/// Sine of half the cone's angle from which Crane takes the change as sudden: 45° in all.
const SUDDEN: f64 = 0.382_683_432_365_089_8;

/// Cone between two bores, of the dynamic pressure at its narrow end; length 0 is a sudden change.
/// With β the ratio of the bores and s the sine of half the cone's angle: narrowing 0.8·s·(1 − β²),
/// above 45° 0.5·√s·(1 − β²); widening 2.6·s·(1 − β²)², above 45° (1 − β²)². Crane TP 410 (2009),
/// by way of fluids 1.3.1, and the integral of the friction along it.
#[must_use]
pub fn cone(wide_mm: f64, narrow_mm: f64, length_mm: f64, friction: f64, narrows: bool) -> f64 {
    let rise = 0.5 * (wide_mm - narrow_mm);
    let half = rise / libm::sqrt(rise * rise + length_mm * length_mm);
    let ratio = narrow_mm / wide_mm;
    let lost = 1.0 - ratio * ratio;
    let sudden = half > SUDDEN;
    let shape = match (narrows, sudden) {
        (true, true) => 0.5 * libm::sqrt(half),
        (true, false) => 0.8 * half,
        (false, true) => lost,
        (false, false) => 2.6 * half * lost,
    };
    let along = 0.125 * friction * length_mm / rise * (1.0 + ratio * ratio);
    (shape + along) * lost
}

/// Where a flow parts, of the dynamic pressure before it: a share goes off at an angle, faster or
/// slower by `speed`, its speed over the whole flow's. Momentum, as in Crane TP 410 (2009) with
/// G = 1.
#[must_use]
pub fn parting_off(speed: f64, angle_deg: f64) -> f64 {
    1.0 + speed * speed - 2.0 * speed * sine(90.0 - angle_deg)
}

/// The same, going straight on: 0.4 · (1 - v₂/v₁)², Crane TP 410 (2009) for small branches.
#[must_use]
pub fn parting_straight(speed: f64) -> f64 {
    0.4 * (1.0 - speed) * (1.0 - speed)
}

/// Where flows join, of the dynamic pressure after it: a `share` comes in at an angle, at `speed`
/// of the whole flow's. Momentum, as in Crane TP 410 (2009) with C = 1. Never below 0: what one
/// flow draws from the other is not counted on.
#[must_use]
pub fn joining_aside(share: f64, speed: f64, angle_deg: f64) -> f64 {
    let rest = 1.0 - share;
    let along = 2.0 * speed * share * sine(90.0 - angle_deg);
    (1.0 + speed * speed - 2.0 * rest * rest - along).max(0.0)
}

/// The same, coming straight: a share `aside` joins it at a right angle. Momentum: q·(2 - q).
#[must_use]
pub fn joining_straight(aside: f64) -> f64 {
    aside * (2.0 - aside)
}

/// By how much a flexible duct costs more than one pulled tight, when it lies shorter by a share:
/// 1 + 58·share·exp(-0.00496·D), D in mm: Abushakra, Walker and Sherman, ASHRAE Transactions 110
/// (2004), their fit as it stands in ASHRAE Fundamentals (value from memory); measured on 150 to
/// 250 mm, up to 30 %.
#[must_use]
pub fn slack_factor(share: f64, bore_mm: f64) -> f64 {
    1.0 + 58.0 * share * libm::exp(-0.004_96 * bore_mm)
}
