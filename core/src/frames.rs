//! Angles of a body against gravity, and how they answer to small changes of the up vector.
//!
//! `up` is the unit vector opposite to gravity, in the frame of the axis it is compared with.
//! Every angle comes from `atan2`: `acos` loses small angles (in `f32` the smallest one it can
//! tell from zero is 0.02°).

use crate::trig::sin_cos_deg;
use crate::vector::{Vec3, any_perpendicular, cross, dot, minus, norm, scaled};

/// Degrees in one radian.
pub const DEG: f32 = 57.295_78;

/// Earth-up in the device frame from the W3C angles β and γ, degrees; α drops out.
///
/// Third row of R = Z(α)·X(β)·Y(γ): (−cos β·sin γ, sin β, cos β·cos γ).
/// Source: W3C *Device Orientation and Motion*, rotation Z-X'-Y''.
#[must_use]
pub fn up_from_angles(beta_deg: f32, gamma_deg: f32) -> Vec3 {
    let (sb, cb) = sin_cos_deg(beta_deg);
    let (sg, cg) = sin_cos_deg(gamma_deg);
    [-cb * sg, sb, cb * cg]
}

/// A direction of the device, on the earth: R = Z(α)·X(β)·Y(γ) applied to it, angles in degrees.
/// Source: W3C *Device Orientation and Motion*, rotation Z-X'-Y''.
#[must_use]
pub fn on_earth(angles_deg: Vec3, v: Vec3) -> Vec3 {
    let [(sa, ca), (sb, cb), (sg, cg)] = angles_deg.map(sin_cos_deg);
    let (x, z) = (cg * v[0] + sg * v[2], cg * v[2] - sg * v[0]);
    let (y, z) = (cb * v[1] - sb * z, sb * v[1] + cb * z);
    [ca * x - sa * y, sa * x + ca * y, z]
}

/// Partial derivatives of [`up_from_angles`] by β and by γ, per radian: (sin β·sin γ, cos β, −sin
/// β·cos γ) and (−cos β·cos γ, 0, −cos β·sin γ).
#[must_use]
pub fn up_by_angles(beta_deg: f32, gamma_deg: f32) -> [Vec3; 2] {
    let (sb, cb) = sin_cos_deg(beta_deg);
    let (sg, cg) = sin_cos_deg(gamma_deg);
    [[sb * sg, cb, -sb * cg], [-cb * cg, 0.0, -cb * sg]]
}

/// Elevation of the unit axis `axis` above level, −90° to 90°: atan2(a·u, |a × u|), which keeps its
/// digits near plumb where an arc sine loses them.
#[must_use]
pub fn elevation_deg(axis: Vec3, up: Vec3) -> f32 {
    elevation(axis, up).0
}

/// [`elevation_deg`] and [`elevation_sensitivity`], which share their sine and cosine.
#[must_use]
pub fn elevation(axis: Vec3, up: Vec3) -> (f32, Vec3) {
    let (sine, cosine) = (dot(axis, up), norm(cross(axis, up)));
    let sensitivity = if cosine > 1e-3 {
        scaled(minus(axis, scaled(up, sine)), 1.0 / cosine)
    } else {
        any_perpendicular(up)
    };
    (libm::atan2f(sine, cosine) * DEG, sensitivity)
}

/// Angle between two directions of any length, 0° to 180°: atan2(|p × q|, p·q).
#[must_use]
pub fn angle_deg(p: Vec3, q: Vec3) -> f32 {
    libm::atan2f(norm(cross(p, q)), dot(p, q)) * DEG
}

/// Roll about body x: atan2(up·y, up·z), −180° to 180°; `up_body` in the body frame.
#[must_use]
pub fn roll_deg(up_body: Vec3) -> f32 {
    libm::atan2f(up_body[1], up_body[2]) * DEG
}

/// How the elevation of `axis` answers to a change of `up`: d(elevation) = c · d(up), radians. A
/// unit vector, (a − (a·u)·u)/|a × u|, the derivative of atan2(a·u, |a × u|); on plumb, where the
/// direction is lost, any lateral one.
#[must_use]
pub fn elevation_sensitivity(axis: Vec3, up: Vec3) -> Vec3 {
    elevation(axis, up).1
}

/// How the roll about body x answers to a change of `up_body`; its length is 1/|up × x|,
/// so the roll's uncertainty grows without bound towards plumb.
/// `None` within 0.06° of plumb, where no roll exists.
#[must_use]
pub fn roll_sensitivity(up_body: Vec3) -> Option<Vec3> {
    let s2 = up_body[1] * up_body[1] + up_body[2] * up_body[2];
    (s2 > 1e-6).then(|| [0.0, up_body[2] / s2, -up_body[1] / s2])
}

/// A rotation that only swaps and flips axes, as rows: `body = R · device`.
pub type Rotation = [[i8; 3]; 3];

/// `v` of the device frame, expressed in the body frame.
#[must_use]
pub fn to_body(r: &Rotation, v: Vec3) -> Vec3 {
    r.map(|row| along(row, v))
}

/// `v` of the body frame, expressed in the device frame.
#[must_use]
pub fn to_device(r: &Rotation, v: Vec3) -> Vec3 {
    core::array::from_fn(|i| along([r[0][i], r[1][i], r[2][i]], v))
}

/// The component of `v` along an axis or against it: picked, as a product costs a small board
/// four times the rest. By way of zero, so that no zero is negative.
fn along(axis: [i8; 3], v: Vec3) -> f32 {
    let (sign, v) = match axis {
        [0, 0, sign] => (sign, v[2]),
        [0, sign, _] => (sign, v[1]),
        [sign, ..] => (sign, v[0]),
    };
    if sign < 0 { 0.0 - v } else { 0.0 + v }
}
