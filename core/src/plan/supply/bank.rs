//! Where the supply is taken: across the whole bank, never from between two of its batteries.

use super::VOLTS;
use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Refusal, Unit};
use crate::plan::row::{Row, row};

/// Volts that a heater is named by, in the order of their codes.
pub const NOMINAL_V: [f64; 2] = [12.0, 24.0];

row! {
    /// Two readings one after the other, heater off, engine and charger off.
    Bank {
        /// What the heater is named by, by its code.
        nominal: Kind::choice(NOMINAL_V.len()),
        /// From the first plus to the last minus of the bank.
        bank_v: VOLTS.or_none(),
        /// Between the two posts that the heater's cable leaves from.
        take_off_v: VOLTS.or_none(),
    }
}

row! {
    /// What they tell.
    BankGiven {
        /// Across the whole bank.
        bank_v: Kind::result(Unit::V),
        /// At the take-off.
        take_off_v: Kind::result(Unit::V),
        /// What the take-off misses of the bank.
        missed_v: Kind::result(Unit::V),
        /// Take-off of the bank: a centre tap has about half.
        of_bank_percent: Kind::result(Unit::Percent),
        /// Take-off of what the heater is named by.
        of_nominal_percent: Kind::result(Unit::Percent),
    }
}

/// Both voltages have the manual's range. Two readings that differ are of different posts; two that
/// agree may both be of the wrong ones, so that they prove nothing.
pub const CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::SupplyVoltage),
    Checked::new(1, BoundId::SupplyVoltage),
    Checked::only_beyond(2, BoundId::MissedVoltage),
];

/// The sheet.
pub const SHEET: Declared = Declared::new::<Bank, BankGiven>("bank", bank).checks(CHECKS);

/// Compares the take-off with the bank: V_bank − V_take-off, and the take-off as a share of the
/// bank and of the heater's nominal voltage. Differences and ratios; no law is behind them.
///
/// # Errors
/// None of its own.
pub fn bank(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let read = Bank::read(x);
    let [low, high] = NOMINAL_V;
    let nominal_v = if read.nominal < 0.5 { low } else { high };
    BankGiven {
        bank_v: read.bank_v,
        take_off_v: read.take_off_v,
        missed_v: read.bank_v - read.take_off_v,
        of_bank_percent: 100.0 * read.take_off_v / read.bank_v,
        of_nominal_percent: 100.0 * read.take_off_v / nominal_v,
    }
    .write(to);
    Ok(())
}
