//! Vectors in double precision, for truths and simulators: nothing of core's.

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

/// The unit vector along `a`.
#[must_use]
pub fn unit(a: [f64; 3]) -> [f64; 3] {
    let n = dot(a, a).sqrt();
    a.map(|v| v / n)
}

/// Elevation of `axis` against `up`, degrees.
#[must_use]
pub fn elevation_deg(axis: [f64; 3], up: [f64; 3]) -> f64 {
    let c = cross(axis, up);
    dot(axis, up).atan2(dot(c, c).sqrt()).to_degrees()
}

/// `v` turned by `w` radians about `w`'s direction (Rodrigues).
#[must_use]
pub fn turned(v: [f64; 3], w: [f64; 3]) -> [f64; 3] {
    let angle = dot(w, w).sqrt();
    if angle < 1e-12 {
        return v;
    }
    let k = w.map(|c| c / angle);
    let (s, c) = angle.sin_cos();
    let kv = cross(k, v);
    let along = dot(k, v) * (1.0 - c);
    [0, 1, 2].map(|i| v[i] * c + kv[i] * s + k[i] * along)
}
