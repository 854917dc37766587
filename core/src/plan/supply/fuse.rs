//! The fuse: the manual's, never above what its conductor carries where it lies, near the battery.

use super::conductor::{self, boat_law_a};
use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Refusal, Unit};
use crate::plan::row::{Row, row};

/// What is left of a rating, as its table says; 1 where nothing lowers it.
const LEFT: Kind = Kind::new(Unit::Ratio, 0.1, 1.0);

row! {
    /// The fuse and its conductor.
    Fuse {
        /// As printed on it.
        fuse_a: Kind::new(Unit::A, 0.5, 200.0).or_none(),
        /// From the battery to the fuse, along the conductor.
        fuse_to_battery_mm: Kind::tape(0.0, 5000.0).give_or_take(10.0, 0.01).or_none(),
        /// Size, by its place in both lists; only for the orientation.
        conductor: Kind::choice(conductor::COUNT).or_none(),
        /// What the conductor carries in free air, from its paper: 5 % (assumed).
        ampacity_a: Kind::new(Unit::A, 1.0, 500.0).give_or_take(0.0, 0.05).or_none(),
        /// What an engine space leaves of it.
        engine_space: LEFT.or_none(),
        /// What a bundle leaves of it.
        bundle: LEFT.or_none(),
    }
}

row! {
    /// What comes of it.
    FuseGiven {
        /// As printed.
        fuse_a: Kind::result(Unit::A),
        /// What the conductor carries where it lies.
        carries_a: Kind::result(Unit::A),
        /// What it carries beyond its fuse; below zero: it burns before the fuse blows.
        spare_a: Kind::result(Unit::A),
        /// From the battery to the fuse.
        fuse_to_battery_mm: Kind::result(Unit::Mm),
        /// What one law lets this size carry in the boats that it is for, before engine space and
        /// bundle; it goes into nothing.
        boat_law_a: Kind::result(Unit::A),
    }
}

/// The manual's fuse, current to spare, near the battery.
pub const CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::Fuse),
    Checked::new(2, BoundId::SpareCurrent),
    Checked::new(3, BoundId::FuseToBattery),
];

/// The sheet.
pub const SHEET: Declared = Declared::new::<Fuse, FuseGiven>("fuse", fuse).checks(CHECKS);

/// What the conductor carries where it lies, its ampacity in free air times both factors, and
/// beyond its fuse: that less the fuse. The factors' product is common practice (from memory), each
/// factor its table's. A factor that is not told leaves both open.
///
/// # Errors
/// None of its own.
pub fn fuse(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let told = Fuse::read(x);
    let carries_a = told.ampacity_a * told.engine_space * told.bundle;
    FuseGiven {
        fuse_a: told.fuse_a,
        carries_a,
        spare_a: carries_a - told.fuse_a,
        fuse_to_battery_mm: told.fuse_to_battery_mm,
        boat_law_a: boat_law_a(told.conductor),
    }
    .write(to);
    Ok(())
}
