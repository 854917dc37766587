//! Whether a heater gives what is lost, at the height where it works, and how far it can be turned
//! down.

use super::{LOSS, OUTPUT};
use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Refusal, Unit};
use crate::plan::row::{Row, row};

/// What a loss stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum LossIs {
    /// Everything is in it.
    Whole,
    /// At least so much is lost: ribs or gaps are not in it.
    AtLeast,
}

impl LossIs {
    /// All of them, in the order of their codes.
    pub const ALL: [Self; 2] = [Self::Whole, Self::AtLeast];
}

row! {
    /// What is lost, and the heater.
    HeaterSize {
        /// Heat lost by the hour.
        loss_w: LOSS,
        /// What that stands for, by its code.
        loss_is: Kind::choice(LossIs::ALL.len()),
        /// Heat at full power, from the manual.
        full_w: OUTPUT,
        /// Heat at the lowest power, from the manual.
        lowest_w: OUTPUT.or_none(),
        /// Height above the sea where it works.
        altitude_m: Kind::new(Unit::M, -430.0, 6000.0).give_or_take(50.0, 0.0),
        /// Share of its heat that it loses there, from the manual; 0: the manual names none.
        altitude_share: Kind::new(Unit::Ratio, 0.0, 0.9),
    }
}

row! {
    /// What comes of it.
    HeaterSizeGiven {
        /// Heat at full power at that height.
        available_w: Kind::result(Unit::W),
        /// Left at full power, where everything lost is told.
        spare_w: Kind::result(Unit::W),
        /// Where not: at most so much is left.
        spare_at_most_w: Kind::result(Unit::W),
        /// Height, as told.
        altitude_m: Kind::result(Unit::M),
        /// Heat at the lowest power as a multiple of what is lost.
        lowest_ratio: Kind::result(Unit::Ratio),
    }
}

/// A loss that is a lower end can show a heater too small, never large enough.
pub const CHECKS: &[Checked] = &[
    Checked::new(1, BoundId::SparePower),
    Checked::partial(2, BoundId::SparePower),
    Checked::new(3, BoundId::Altitude),
];

/// The sheet.
pub const SHEET: Declared =
    Declared::new::<HeaterSize, HeaterSizeGiven>("heater_size", heater_size).checks(CHECKS);

/// Heat to spare, see [`HeaterSize`]: P·(1 − s) − Φ, with the share s that the manual takes off at
/// that height, and the lowest power over Φ. A balance of heat; what a share comes from is the
/// manual's.
///
/// # Errors
/// None of its own.
pub fn heater_size(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let told = HeaterSize::read(x);
    let left = 1.0 - told.altitude_share;
    let available_w = told.full_w * left;
    let spare_w = available_w - told.loss_w;
    let whole = told.loss_is == f64::from(LossIs::Whole as u8);
    HeaterSizeGiven {
        available_w,
        spare_w: if whole { spare_w } else { f64::NAN },
        spare_at_most_w: if whole { f64::NAN } else { spare_w },
        altitude_m: told.altitude_m,
        lowest_ratio: told.lowest_w * left / told.loss_w,
    }
    .write(to);
    Ok(())
}
