//! Air flow from a measured rise: the heat that goes into the air, over what it does to it,
//! ṁ = P/∫cp·dT.

use crate::plan::air;
use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Problem, Refusal, Unit};
use crate::plan::row::{Row, row};

row! {
    /// What was measured, with the heater at full power for some minutes.
    AirMeasured {
        /// Heat that goes into the air, from the manual or the fuel used.
        power_w: Kind::new(Unit::W, 100.0, 30_000.0).give_or_take(0.0, 0.1),
        /// Air at the intake.
        inlet_celsius: Kind::new(Unit::Celsius, -40.0, 60.0).give_or_take(2.0, 0.0),
        /// Air at the warm outlet, in the middle of the stream.
        outlet_celsius: Kind::new(Unit::Celsius, -20.0, 250.0).give_or_take(3.0, 0.0),
        /// Height above the sea; the half-width is the weather's.
        altitude_m: Kind::new(Unit::M, -430.0, 6000.0).give_or_take(250.0, 0.0),
    }
}

row! {
    /// What comes of it.
    AirMeasuredGiven {
        /// Rise.
        rise_k: Kind::result(Unit::Kelvin),
        /// Mass of air.
        mass_flow_kg_per_h: Kind::result(Unit::KgPerH),
        /// Volume that the heater draws in.
        flow_m3_per_h: Kind::result(Unit::M3PerH),
        /// The same air as it leaves, warmer and wider.
        outlet_flow_m3_per_h: Kind::result(Unit::M3PerH),
        /// Air at the warm outlet, as told.
        outlet_air_celsius: Kind::result(Unit::Celsius),
    }
}

/// Flow against what the heater needs, temperature against what it may have.
pub const CHECKS: &[Checked] = &[
    Checked::new(2, BoundId::AirFlow),
    Checked::new(4, BoundId::OutletAir),
];

/// The sheet.
pub const SHEET: Declared =
    Declared::new::<AirMeasured, AirMeasuredGiven>("air_flow", air_flow).checks(CHECKS);

/// Air flow, see [`AirMeasured`]: ṁ = P/∫cp·dT, the balance of a steady flow (cp by
/// [`air::heat_between_j_per_kg`]); volumes are ṁ/ρ in and out.
///
/// # Errors
/// An outlet no warmer than the intake.
pub fn air_flow(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let told = AirMeasured::read(x);
    let heat = air::heat_between_j_per_kg(told.inlet_celsius, told.outlet_celsius);
    if heat <= 0.0 {
        return Err(Refusal::at(2, Problem::Contradiction));
    }
    let mass_kg_per_h = 3600.0 * told.power_w / heat;
    let pressure = air::pressure_pa(told.altitude_m);
    let volume = |celsius| mass_kg_per_h / air::density_kg_per_m3(celsius, pressure);
    AirMeasuredGiven {
        rise_k: told.outlet_celsius - told.inlet_celsius,
        mass_flow_kg_per_h: mass_kg_per_h,
        flow_m3_per_h: volume(told.inlet_celsius),
        outlet_flow_m3_per_h: volume(told.outlet_celsius),
        outlet_air_celsius: told.outlet_celsius,
    }
    .write(to);
    Ok(())
}
