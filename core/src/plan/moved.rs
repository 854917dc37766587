//! Whether a value has changed since it was last read: the difference of two readings against the
//! uncertainty of both.

/// What has become of a value.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Change {
    /// Now less before.
    pub by: f64,
    /// Expanded uncertainty of that, 95 %.
    pub u: f64,
    /// Whether the change is larger than its uncertainty. Where it is not, no change was shown, which
    /// is not the same as none.
    pub shown: bool,
}

/// Compares two readings, each a value with its expanded uncertainty. Their errors may hang together
/// either way: a phone's zero falls out of the difference when it points the same way both times, and
/// counts twice when it points the other way. So U = U₁ + U₂, the most that any correlation can make
/// of it (JCGM 100 §5.2.2, r = −1).
#[must_use]
pub fn change(before: (f64, f64), now: (f64, f64)) -> Change {
    let by = now.0 - before.0;
    let u = before.1 + now.1;
    Change {
        by,
        u,
        shown: by.abs() > u,
    }
}
