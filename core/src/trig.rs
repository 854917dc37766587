//! Sine and cosine of an angle in degrees. Reduced by quarter turns before any radian is made,
//! which is exact, so that 90° has a cosine of 0; the general reduction of radians costs a board
//! without floating point several kilobytes of double arithmetic.

/// Degrees in a quarter turn.
const QUARTER_DEG: f32 = 90.0;
/// Radians in one degree.
const RAD: f32 = core::f32::consts::PI / 180.0;

/// Sine and cosine; angles up to some thousand degrees, within 1.2e-7.
///
/// Taylor's series over ±45°: what is left out is below 3e-8.
#[must_use]
pub fn sin_cos_deg(angle_deg: f32) -> (f32, f32) {
    let quarters = libm::roundf(angle_deg / QUARTER_DEG);
    let x = (angle_deg - quarters * QUARTER_DEG) * RAD;
    let x2 = x * x;
    let sin = x * (1.0 - x2 / 6.0 * (1.0 - x2 / 20.0 * (1.0 - x2 / 42.0 * (1.0 - x2 / 72.0))));
    let cos = 1.0 - x2 / 2.0 * (1.0 - x2 / 12.0 * (1.0 - x2 / 30.0 * (1.0 - x2 / 56.0)));
    // Casts saturate, and NaN gives 0: nothing here can panic.
    match (quarters as i32) & 3 {
        0 => (sin, cos),
        1 => (cos, -sin),
        2 => (-sin, -cos),
        _ => (-cos, sin),
    }
}
