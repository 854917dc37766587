//! The fuel line and its pump as a tape, a thermometer and the print on the line tell them: each
//! number has its limit in the manual.

use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Refusal, Unit};
use crate::plan::row::{Row, row};

/// A bore as printed on the line or its packing is a name, not a reading: exact. A bore that was
/// gauged has its own half-width.
pub const BORE: Kind = Kind::new(Unit::Mm, 0.5, 12.0);
/// Length of a line, told by a tape along its bends: 10 mm and 1 % (assumed).
pub const LENGTH: Kind = Kind::new(Unit::M, 0.0, 15.0).give_or_take(0.01, 0.01);
/// A height told by a tape between two points that are not above each other: 10 mm and 1 %
/// (assumed).
pub const LIFT: Kind = Kind::tape(-3000.0, 3000.0).give_or_take(10.0, 0.01);

row! {
    /// Line and pump as told. What was not measured stays empty.
    FuelRun {
        /// Bore from tank to pump.
        suction_bore_mm: BORE.or_none(),
        /// Length from tank to pump.
        suction_length_m: LENGTH.or_none(),
        /// Height of the pump above the lowest fuel level; below it: negative.
        suction_lift_mm: LIFT.or_none(),
        /// Bore from pump to heater.
        pressure_bore_mm: BORE.or_none(),
        /// Length from pump to heater.
        pressure_length_m: LENGTH.or_none(),
        /// Height of the heater's fuel port above the pump; below it: negative.
        pressure_lift_mm: LIFT.or_none(),
        /// Warmest air where the pump sits: an air thermometer, after a drive.
        pump_air_celsius: Kind::new(Unit::Celsius, -40.0, 150.0).give_or_take(2.0, 0.0).or_none(),
        /// From pump and line to the nearest hot part.
        fuel_to_hot_mm: Kind::tape(0.0, 5000.0).or_none(),
    }
}

row! {
    /// The same.
    FuelRunGiven {
        /// Bore from tank to pump.
        suction_bore_mm: Kind::result(Unit::Mm),
        /// Length from tank to pump.
        suction_length_m: Kind::result(Unit::M),
        /// Pump above the lowest fuel level.
        suction_lift_mm: Kind::result(Unit::Mm),
        /// Bore from pump to heater.
        pressure_bore_mm: Kind::result(Unit::Mm),
        /// Length from pump to heater.
        pressure_length_m: Kind::result(Unit::M),
        /// Heater above the pump.
        pressure_lift_mm: Kind::result(Unit::Mm),
        /// Warmest air at the pump.
        pump_air_celsius: Kind::result(Unit::Celsius),
        /// Pump and line to the nearest hot part.
        fuel_to_hot_mm: Kind::result(Unit::Mm),
    }
}

/// Each has its limit.
pub const CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::FuelBore),
    Checked::new(1, BoundId::SuctionLine),
    Checked::new(2, BoundId::SuctionLift),
    Checked::new(3, BoundId::FuelBorePressure),
    Checked::new(4, BoundId::PressureLine),
    Checked::new(5, BoundId::PressureLift),
    Checked::new(6, BoundId::PumpAir),
    Checked::new(7, BoundId::FuelToHot),
];

/// The sheet.
pub const SHEET: Declared =
    Declared::new::<FuelRun, FuelRunGiven>("fuel_run", fuel_run).checks(CHECKS);

/// The numbers as they are.
///
/// # Errors
/// None of its own.
pub fn fuel_run(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    FuelRun::read(x).write(to);
    Ok(())
}
