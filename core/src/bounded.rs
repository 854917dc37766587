//! A clamp for `f32` that cannot panic: `f32::clamp` does where its ends are NaN or out of order.

/// `v`, but at least `low` and at most `high`; NaN stays NaN.
pub(crate) fn bounded(v: f32, low: f32, high: f32) -> f32 {
    if v < low {
        low
    } else if v > high {
        high
    } else {
        v
    }
}
