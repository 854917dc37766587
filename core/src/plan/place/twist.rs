//! What two tilts read by a phone on one face tell of its unevenness: at least so much, so the
//! answer can be beyond and never within. Between and beside the places where the phone lay,
//! anything may be.

use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Refusal, Unit};
use crate::plan::row::{Row, row};

/// A tilt on a flat face as the phone tells it at first touch: 1.2° (what it aims at).
const TILT: Kind = Kind::new(Unit::Deg, -45.0, 45.0).give_or_take(1.2, 0.0);

row! {
    /// Two readings along the same direction: on opposite sides of the seal, or one after the
    /// other on one side.
    Twist {
        /// Tilt at the first place.
        first_deg: TILT,
        /// Tilt at the second place, the phone turned the same way.
        second_deg: TILT,
        /// Length on which the phone, or the straight bar under it, rests.
        base_mm: Kind::tape(50.0, 2000.0),
    }
}

row! {
    /// What they tell.
    TwistGiven {
        /// The face is at least so uneven.
        at_least_mm: Kind::result(Unit::Mm),
    }
}

/// It can break the limit and never keep it.
pub const CHECKS: &[Checked] = &[Checked::partial(0, BoundId::Unevenness)];

/// The least unevenness, in mm, of a face whose tilt along one direction differs by
/// `difference_deg` between two places, each read over `base_mm`.
///
/// Four ends on parallel sides, or three along one side, lie at best ±L·sin Δ/4 off a common
/// plane, so L·sin Δ/2 from the lowest to the highest. The sine is cut to Δ − Δ³/6, which is never
/// above it.
#[must_use]
pub fn least_unevenness_mm(difference_deg: f64, base_mm: f64) -> f64 {
    let angle = difference_deg.abs().to_radians();
    0.5 * base_mm * (angle - angle * angle * angle / 6.0).max(0.0)
}

/// The sheet.
pub const SHEET: Declared = Declared::new::<Twist, TwistGiven>("twist", twist).checks(CHECKS);

/// The least unevenness that two tilts tell.
///
/// # Errors
/// None of its own.
pub fn twist(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let read = Twist::read(x);
    TwistGiven {
        at_least_mm: least_unevenness_mm(read.second_deg - read.first_deg, read.base_mm),
    }
    .write(to);
    Ok(())
}
