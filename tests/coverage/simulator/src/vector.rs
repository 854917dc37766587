//! Vectors and the rotation of W3C's angles, in double precision and by definition.

/// Scalar product.
#[must_use]
pub fn dot(a: [f64; 3], b: [f64; 3]) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

/// Vector product.
#[must_use]
pub fn cross(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    [
        a[1] * b[2] - a[2] * b[1],
        a[2] * b[0] - a[0] * b[2],
        a[0] * b[1] - a[1] * b[0],
    ]
}

/// a + s · b.
#[must_use]
pub fn plus(a: [f64; 3], s: f64, b: [f64; 3]) -> [f64; 3] {
    [a[0] + s * b[0], a[1] + s * b[1], a[2] + s * b[2]]
}

/// The unit vector along `a`.
#[must_use]
pub fn unit(a: [f64; 3]) -> [f64; 3] {
    let length = libm::sqrt(dot(a, a));
    a.map(|v| v / length)
}

/// The part of `a` that is at right angles to the unit vector `n`.
#[must_use]
pub fn across(a: [f64; 3], n: [f64; 3]) -> [f64; 3] {
    plus(a, -dot(a, n), n)
}

/// `v` turned about the direction of `turn_deg` by its length in degrees (Rodrigues).
#[must_use]
pub fn turned(v: [f64; 3], turn_deg: [f64; 3]) -> [f64; 3] {
    let angle_deg = libm::sqrt(dot(turn_deg, turn_deg));
    if angle_deg == 0.0 {
        return v;
    }
    let k = turn_deg.map(|c| c / angle_deg);
    let (s, c) = libm::sincos(angle_deg.to_radians());
    plus(
        plus(v.map(|x| x * c), s, cross(k, v)),
        dot(k, v) * (1.0 - c),
        k,
    )
}

/// Elevation of `axis` against `up`, degrees.
#[must_use]
pub fn elevation_deg(axis: [f64; 3], up: [f64; 3]) -> f64 {
    let c = cross(axis, up);
    libm::atan2(dot(axis, up), libm::sqrt(dot(c, c))).to_degrees()
}

/// Up in the device frame at W3C's angles β and γ: third row of Z(α)·X(β)·Y(γ).
#[must_use]
pub fn up_of_angles(beta_deg: f64, gamma_deg: f64) -> [f64; 3] {
    let (sb, cb) = libm::sincos(beta_deg.to_radians());
    let (sg, cg) = libm::sincos(gamma_deg.to_radians());
    [-cb * sg, sb, cb * cg]
}

/// W3C's angles of a phone whose up is `up`: β in [−180°, 180°], γ in [−90°, 90°].
#[must_use]
pub fn angles_of_up(up: [f64; 3]) -> [f64; 2] {
    // cos γ is never negative, so the sign of cos β is that of z.
    let side = if up[2] < 0.0 { -1.0 } else { 1.0 };
    let beta = libm::atan2(up[1], side * libm::hypot(up[0], up[2]));
    let gamma = libm::atan2(-side * up[0], up[2].abs());
    [beta.to_degrees(), gamma.to_degrees()]
}
