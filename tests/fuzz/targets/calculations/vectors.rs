//! `vector`.

use arbitrary::{Result, Unstructured};
use plumbmark::vector::{any_perpendicular, cross, dot, minus, norm, scaled, unit};
use plumbmark_fuzz::any;

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    let (a, b) = (any::vector(u)?, any::vector(u)?);
    let _ = (dot(a, b), cross(a, b), minus(a, b));
    let _ = (scaled(a, any::number(u)?), any_perpendicular(a));
    assert!(norm(a).is_nan() || norm(a) >= 0.0);
    if let Some(of) = unit(a) {
        assert!((norm(of) - 1.0).abs() < 1e-5, "{a:?} {of:?}");
    }
    let up = any::direction(u)?;
    let p = any_perpendicular(up);
    assert!((norm(p) - 1.0).abs() < 1e-5 && dot(p, up).abs() < 1e-5);
    Ok(())
}
