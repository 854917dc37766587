//! Sine and cosine of an angle in degrees. Reduced by quarter turns before any radian is made,
//! which is exact, so that 90° has a cosine of 0; the general reduction of radians costs a board
//! without floating point several kilobytes of double arithmetic.

/// Degrees in a quarter turn.
const QUARTER_DEG: f32 = 90.0;
/// Radians in one degree.
const RAD: f32 = core::f32::consts::PI / 180.0;

/// Sine and cosine; angles up to some thousand degrees, within 1.2e-7.
#[must_use]
pub fn sin_cos_deg(angle_deg: f32) -> (f32, f32) {
    (sine(angle_deg, 0), sine(angle_deg, 1))
}

/// Sine alone, at half the cost.
#[must_use]
pub fn sin_deg(angle_deg: f32) -> f32 {
    sine(angle_deg, 0)
}

/// Sine of an angle so many quarter turns ahead. Taylor's series over ±45°: what is left out is
/// below 3e-8.
fn sine(angle_deg: f32, ahead: i32) -> f32 {
    let quarters = libm::roundf(angle_deg * (1.0 / QUARTER_DEG));
    let x = (angle_deg - quarters * QUARTER_DEG) * RAD;
    let x2 = x * x;
    // Casts saturate, and NaN gives 0: nothing here can panic.
    let quarters = (quarters as i32).wrapping_add(ahead);
    let size = if quarters & 1 == 0 {
        x + x
            * x2
            * (-1.0 / 6.0 + x2 * (1.0 / 120.0 + x2 * (-1.0 / 5040.0 + x2 * (1.0 / 362_880.0))))
    } else {
        1.0 + x2 * (-0.5 + x2 * (1.0 / 24.0 + x2 * (-1.0 / 720.0 + x2 * (1.0 / 40_320.0))))
    };
    if quarters & 2 == 0 { size } else { -size }
}
