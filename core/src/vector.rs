//! Three-vectors in `f32`. Just what the frames and the budget need.

/// Components along x, y, z of one frame.
pub type Vec3 = [f32; 3];

/// Scalar product.
#[must_use]
pub fn dot(a: Vec3, b: Vec3) -> f32 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

/// Vector product a × b, right-handed.
#[must_use]
pub fn cross(a: Vec3, b: Vec3) -> Vec3 {
    [
        a[1] * b[2] - a[2] * b[1],
        a[2] * b[0] - a[0] * b[2],
        a[0] * b[1] - a[1] * b[0],
    ]
}

/// Length.
#[must_use]
pub fn norm(a: Vec3) -> f32 {
    libm::sqrtf(dot(a, a))
}

/// √(a² + b²), of numbers whose squares are neither too large nor too small for `f32`.
#[must_use]
pub fn hypot(a: f32, b: f32) -> f32 {
    libm::sqrtf(a * a + b * b)
}

/// a · s.
#[must_use]
pub fn scaled(a: Vec3, s: f32) -> Vec3 {
    a.map(|v| v * s)
}

/// a − b.
#[must_use]
pub fn minus(a: Vec3, b: Vec3) -> Vec3 {
    [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

/// The vector of length 1 along `a`, or `None` where `a` is too short or too long to have a
/// direction.
#[must_use]
pub fn unit(a: Vec3) -> Option<Vec3> {
    let length = norm(a);
    (length > 1e-6 && length.is_finite()).then(|| scaled(a, 1.0 / length))
}

/// Some unit vector at right angles to the unit vector `a`.
#[must_use]
pub fn any_perpendicular(a: Vec3) -> Vec3 {
    // Cross with the axis that `a` is furthest from, so that the product is never short.
    let smallest = (0..3).fold(0, |m, i| if a[i].abs() < a[m].abs() { i } else { m });
    let mut axis = [0.0; 3];
    axis[smallest] = 1.0;
    let p = cross(a, axis);
    scaled(p, 1.0 / norm(p))
}
