//! What is measured at the first start and kept as the baseline for service: voltages, currents,
//! air temperatures, times, starts.

use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Problem, Refusal, Unit};
use crate::plan::row::{Row, row};

/// A hand-held voltmeter: 0.5 % and two steps of 10 mV (assumed).
const VOLTS: Kind = Kind::new(Unit::V, 0.0, 60.0)
    .give_or_take(0.02, 0.005)
    .or_none();
/// A clamp: 3 % and 0.1 A (assumed).
const CURRENT: Kind = Kind::new(Unit::A, 0.05, 150.0)
    .give_or_take(0.1, 0.03)
    .or_none();
/// A probe held in the air stream: 2 K (assumed).
const AIR: Kind = Kind::new(Unit::Celsius, -50.0, 250.0)
    .give_or_take(2.0, 0.0)
    .or_none();
/// By a watch.
const WATCH: Kind = Kind::new(Unit::Min, 0.0, 120.0)
    .give_or_take(0.1, 0.0)
    .or_none();

/// A heater that reads more than its battery, by more than two voltmeters can differ, was read at
/// another moment (assumed).
const MORE_THAN_BATTERY: f64 = 1.02;

row! {
    /// Measured at the first start.
    Started {
        /// Battery, while the glow pin draws its current.
        battery_glow_v: VOLTS,
        /// At the heater's plug, at the same moment.
        heater_glow_v: VOLTS,
        /// Current then.
        glow_a: CURRENT,
        /// Battery, while it runs at full power.
        battery_run_v: VOLTS,
        /// At the heater's plug, at the same moment.
        heater_run_v: VOLTS,
        /// Current at full power.
        run_a: CURRENT,
        /// Current at low power.
        low_a: CURRENT,
        /// Air that goes in, at full power.
        intake_celsius: AIR,
        /// Air at the outlet, at full power.
        outlet_celsius: AIR,
        /// Air at the outlet, at low power.
        outlet_low_celsius: AIR,
        /// From switching on to the flame.
        flame_min: WATCH,
        /// Starts that it took.
        starts: Kind::new(Unit::Count, 1.0, 50.0).or_none(),
        /// From switching off to standing still.
        after_run_min: WATCH,
    }
}

row! {
    /// What is held against limits, and what a service compares.
    StartedGiven {
        /// At the heater's plug, glow pin on.
        heater_glow_v: Kind::result(Unit::V),
        /// At the heater's plug, running.
        heater_run_v: Kind::result(Unit::V),
        /// What the cable costs, glow pin on.
        drop_glow_v: Kind::result(Unit::V),
        /// What it costs, running.
        drop_run_v: Kind::result(Unit::V),
        /// Resistance of the cable, out and back, with its joints and fuse.
        cable_mohm: Kind::result(Unit::Mohm),
        /// Air at the outlet, at full power.
        outlet_celsius: Kind::result(Unit::Celsius),
        /// Air at the outlet, at low power.
        outlet_low_celsius: Kind::result(Unit::Celsius),
        /// How much warmer the air comes out, at full power.
        rise_kelvin: Kind::result(Unit::Kelvin),
        /// From switching on to the flame.
        flame_min: Kind::result(Unit::Min),
        /// Starts that it took.
        starts: Kind::result(Unit::Count),
        /// From switching off to standing still.
        after_run_min: Kind::result(Unit::Min),
        /// Battery, glow pin on: for the baseline, as all that follow.
        battery_glow_v: Kind::result(Unit::V),
        /// Current then.
        glow_a: Kind::result(Unit::A),
        /// Battery, running.
        battery_run_v: Kind::result(Unit::V),
        /// Current at full power.
        run_a: Kind::result(Unit::A),
        /// Current at low power.
        low_a: Kind::result(Unit::A),
        /// Air that goes in.
        intake_celsius: Kind::result(Unit::Celsius),
    }
}

/// What the manual limits.
pub const CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::StartVoltage),
    Checked::new(1, BoundId::SupplyVoltage),
    Checked::new(2, BoundId::CableDrop),
    Checked::new(3, BoundId::CableDrop),
    Checked::new(5, BoundId::OutletAir),
    Checked::new(6, BoundId::OutletAir),
    Checked::new(9, BoundId::StartsInARow),
    Checked::new(10, BoundId::AfterRun),
];

/// The sheet.
pub const SHEET: Declared =
    Declared::new::<Started, StartedGiven>("started", started).checks(CHECKS);

/// Milliohm of what costs `drop_v` at `current_a` (Ohm's law).
#[must_use]
pub fn resistance_mohm(drop_v: f64, current_a: f64) -> f64 {
    1000.0 * drop_v / current_a
}

/// What was measured, as it is held against limits.
///
/// # Errors
/// More volts at the heater than at the battery ([`Problem::Contradiction`]).
pub fn started(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let read = Started::read(x);
    let more = |heater: f64, battery: f64| heater > MORE_THAN_BATTERY * battery;
    if more(read.heater_glow_v, read.battery_glow_v) {
        return Err(Refusal::at(1, Problem::Contradiction));
    }
    if more(read.heater_run_v, read.battery_run_v) {
        return Err(Refusal::at(4, Problem::Contradiction));
    }
    let drop_glow_v = read.battery_glow_v - read.heater_glow_v;
    StartedGiven {
        heater_glow_v: read.heater_glow_v,
        heater_run_v: read.heater_run_v,
        drop_glow_v,
        drop_run_v: read.battery_run_v - read.heater_run_v,
        cable_mohm: resistance_mohm(drop_glow_v, read.glow_a),
        outlet_celsius: read.outlet_celsius,
        outlet_low_celsius: read.outlet_low_celsius,
        rise_kelvin: read.outlet_celsius - read.intake_celsius,
        flame_min: read.flame_min,
        starts: read.starts,
        after_run_min: read.after_run_min,
        battery_glow_v: read.battery_glow_v,
        glow_a: read.glow_a,
        battery_run_v: read.battery_run_v,
        run_a: read.run_a,
        low_a: read.low_a,
        intake_celsius: read.intake_celsius,
    }
    .write(to);
    Ok(())
}
