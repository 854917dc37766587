//! Pressure that a metering pump sees at both of its ends in the middle of a stroke: height and
//! loss of the line, at the flow of the stroke and not at the mean flow.

use super::bubble::GRAVITY_M_PER_S2;
use super::fuel_run::{LENGTH, LIFT};
use super::liquid::{self, Fuel, VISCOSITY_CELSIUS};
use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Problem, Refusal, Unit};
use crate::plan::row::{Row, row};

/// Reynolds number up to which flow in a pipe is surely laminar (handbooks: 2000 to 2300).
pub const LAMINAR_RE: f64 = 2000.0;

/// Peak of a stroke's flow against its mean: 1 for a stroke of even speed, π/2 for half a sine;
/// line and hose that give spread it. So 1 ± 0.5 (assumed).
const PULSE: f64 = 0.5;

/// A real bore differs from the one printed by about 0.1 mm (assumed); the loss goes with its
/// fourth power.
const REAL_BORE: Kind = Kind::new(Unit::Mm, 0.5, 12.0).give_or_take(0.1, 0.0);
const SPREAD: Kind = Kind::new(Unit::Ratio, -1.0, 1.0).give_or_take(1.0, 0.0);
const VISCOSITY: Kind = Kind::new(Unit::Mm2PerS, 0.4, 60.0).give_or_take(0.0, 0.02);

row! {
    /// Fuel, stroke and both ends of the line.
    FuelPressure {
        /// Diesel or petrol, by its code.
        fuel: Kind::choice(Fuel::ALL.len()),
        /// The coldest that the fuel in the line gets.
        fuel_celsius: Kind::new(Unit::Celsius, -40.0, 60.0).give_or_take(2.0, 0.0),
        /// Diesel's cloud point, from its supplier; petrol has none. Reproducibility of ASTM D2500
        /// 4 K (value from memory), so 2 K either way.
        cloud_point_celsius: Kind::new(Unit::Celsius, -60.0, 30.0).give_or_take(2.0, 0.0).or_none(),
        /// Viscosity at 40 °C, from the fuel's paper; empty: what the standard permits.
        viscosity_40_mm2_per_s: VISCOSITY.or_none(),
        /// Viscosity at another temperature, from the same paper; empty: the usual steepness.
        other_viscosity_mm2_per_s: VISCOSITY.or_none(),
        /// The temperature of that.
        other_celsius: Kind::new(Unit::Celsius, -40.0, 60.0).or_none(),
        /// Density at 15 °C, from the fuel's paper; empty: what the standard permits.
        density_15_kg_per_m3: Kind::new(Unit::KgPerM3, 650.0, 950.0).give_or_take(1.0, 0.0).or_none(),
        /// What the pump moves in one stroke.
        stroke_ml: Kind::new(Unit::Ml, 0.001, 0.5).give_or_take(0.0, 0.05),
        /// How long the stroke takes, of the faster of the two ways.
        stroke_ms: Kind::new(Unit::Ms, 2.0, 1000.0).give_or_take(0.0, 0.1),
        /// Bore from tank to pump.
        suction_bore_mm: REAL_BORE,
        /// Length from tank to pump.
        suction_length_m: LENGTH,
        /// Height of the pump above the lowest fuel level.
        suction_lift_mm: LIFT,
        /// What a filter before the pump costs at this flow, from its paper; empty: no filter.
        filter_pa: Kind::new(Unit::Pa, 0.0, 50_000.0).give_or_take(0.0, 0.2).or_none(),
        /// Bore from pump to heater.
        pressure_bore_mm: REAL_BORE,
        /// Length from pump to heater.
        pressure_length_m: LENGTH,
        /// Height of the heater above the pump.
        pressure_lift_mm: LIFT,
        /// Where the density lies within the fuel's span.
        density_spread: SPREAD,
        /// Where the viscosity at 40 °C lies within the fuel's span.
        viscosity_spread: SPREAD,
        /// Where the steepness lies within the fuel's span.
        steepness_spread: SPREAD,
        /// Peak of the stroke's flow against its mean: 1 ± 0.5.
        pulse_spread: SPREAD,
    }
}

row! {
    /// What the pump sees.
    FuelPressureGiven {
        /// Fuel above its cloud point; below it no formula holds.
        above_cloud_kelvin: Kind::result(Unit::Kelvin).only_within(0.0, f64::INFINITY),
        /// Reynolds number, tank to pump; beyond [`LAMINAR_RE`] the formula does not hold.
        suction_reynolds: Kind::result(Unit::Ratio).only_within(f64::NEG_INFINITY, LAMINAR_RE),
        /// The same, pump to heater.
        pressure_reynolds: Kind::result(Unit::Ratio).only_within(f64::NEG_INFINITY, LAMINAR_RE),
        /// Density at the temperature.
        density_kg_per_m3: Kind::result(Unit::KgPerM3),
        /// Viscosity at the temperature.
        viscosity_mm2_per_s: Kind::result(Unit::Mm2PerS),
        /// Flow during a stroke.
        peak_l_per_h: Kind::result(Unit::LPerH),
        /// Loss from tank to pump.
        suction_loss_pa: Kind::result(Unit::Pa),
        /// Loss from pump to heater.
        pressure_loss_pa: Kind::result(Unit::Pa),
        /// Below the air's pressure at the pump's inlet: height, loss and filter.
        suction_pa: Kind::result(Unit::Pa),
        /// Above the air's pressure at the pump's outlet: height and loss.
        pump_pressure_pa: Kind::result(Unit::Pa),
    }
}

/// The two pressures have their limits.
pub const CHECKS: &[Checked] = &[
    Checked::new(8, BoundId::Suction),
    Checked::new(9, BoundId::PumpPressure),
];

/// Loss in Pa of a round pipe in laminar flow, 128·µ·L·Q/(π·d⁴) (Hagen–Poiseuille). Viscosity in
/// mm²/s, density in kg/m³, flow in L/h. Up to [`LAMINAR_RE`].
#[must_use]
pub fn laminar_loss_pa(
    viscosity_mm2_per_s: f64,
    density_kg_per_m3: f64,
    flow_l_per_h: f64,
    bore_mm: f64,
    length_m: f64,
) -> f64 {
    let viscosity_pa_s = viscosity_mm2_per_s * 1e-6 * density_kg_per_m3;
    let bore2_m2 = bore_mm * bore_mm * 1e-6;
    let flow_m3_per_s = flow_l_per_h / 3.6e6;
    128.0 * viscosity_pa_s * length_m * flow_m3_per_s
        / (core::f64::consts::PI * bore2_m2 * bore2_m2)
}

/// Reynolds number of a round pipe, 4·Q/(π·d·ν). Units as [`laminar_loss_pa`].
#[must_use]
pub fn reynolds(viscosity_mm2_per_s: f64, flow_l_per_h: f64, bore_mm: f64) -> f64 {
    let flow_m3_per_s = flow_l_per_h / 3.6e6;
    4.0 * flow_m3_per_s / (core::f64::consts::PI * bore_mm * 1e-3 * viscosity_mm2_per_s * 1e-6)
}

/// Pressure in Pa of a column of liquid `height_mm` high, ρ·g·h.
#[must_use]
pub fn column_pa(density_kg_per_m3: f64, height_mm: f64) -> f64 {
    density_kg_per_m3 * GRAVITY_M_PER_S2 * height_mm / 1000.0
}

/// Flow in L/h during a stroke, on its mean: stroke over stroke time.
#[must_use]
pub fn stroke_flow_l_per_h(stroke_ml: f64, stroke_ms: f64) -> f64 {
    stroke_ml / stroke_ms * 3600.0
}

/// The sheet.
pub const SHEET: Declared =
    Declared::new::<FuelPressure, FuelPressureGiven>("fuel_pressure", fuel_pressure).checks(CHECKS);

/// What the pump sees at both ends, Pa: ρ·g·h ([`column_pa`]) + Hagen and Poiseuille's loss at the
/// stroke's peak flow ([`laminar_loss_pa`]), on the suction side with the filter's. Neither the
/// inertia of the column nor what couplers cost is in it.
///
/// # Errors
/// Fuel below its cloud point; a cloud point, or half of a second viscosity, that is missing;
/// viscosities that do not fall with temperature; flow that is no longer laminar.
pub fn fuel_pressure(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let line = FuelPressure::read(x);
    let fuel = Fuel::of(line.fuel);
    let above_cloud_kelvin = above_cloud(&line, fuel)?;
    let density = density(&line, fuel);
    let viscosity = viscosity(&line, fuel)?;
    let flow =
        stroke_flow_l_per_h(line.stroke_ml, line.stroke_ms) * (1.0 + PULSE * line.pulse_spread);
    let re = |bore_mm, place| match reynolds(viscosity, flow, bore_mm) {
        re if re <= LAMINAR_RE => Ok(re),
        _ => Err(Refusal::at(place, Problem::BeyondFormula)),
    };
    let loss = |bore_mm, length_m| laminar_loss_pa(viscosity, density, flow, bore_mm, length_m);
    let suction_loss_pa = loss(line.suction_bore_mm, line.suction_length_m);
    let pressure_loss_pa = loss(line.pressure_bore_mm, line.pressure_length_m);
    // `max` passes over what is not a number: no filter.
    let filter_pa = line.filter_pa.max(0.0);
    FuelPressureGiven {
        above_cloud_kelvin,
        suction_reynolds: re(line.suction_bore_mm, 9)?,
        pressure_reynolds: re(line.pressure_bore_mm, 13)?,
        density_kg_per_m3: density,
        viscosity_mm2_per_s: viscosity,
        peak_l_per_h: flow,
        suction_loss_pa,
        pressure_loss_pa,
        suction_pa: column_pa(density, line.suction_lift_mm) + suction_loss_pa + filter_pa,
        pump_pressure_pa: column_pa(density, line.pressure_lift_mm) + pressure_loss_pa,
    }
    .write(to);
    Ok(())
}

fn above_cloud(line: &FuelPressure, fuel: Fuel) -> Result<f64, Refusal> {
    if !fuel.properties().has_cloud_point {
        return Ok(f64::NAN);
    }
    let above = line.fuel_celsius - line.cloud_point_celsius;
    if above.is_nan() {
        Err(Refusal::at(2, Problem::Missing))
    } else if above < 0.0 {
        Err(Refusal::at(1, Problem::BeyondFormula))
    } else {
        Ok(above)
    }
}

fn density(line: &FuelPressure, fuel: Fuel) -> f64 {
    let usual = fuel
        .properties()
        .density_15_kg_per_m3
        .at(line.density_spread);
    let density_15 = entered(line.density_15_kg_per_m3, usual);
    liquid::density_kg_per_m3(fuel, density_15, line.fuel_celsius)
}

fn viscosity(line: &FuelPressure, fuel: Fuel) -> Result<f64, Refusal> {
    let of = fuel.properties();
    let at_40 = entered(
        line.viscosity_40_mm2_per_s,
        of.viscosity_40_mm2_per_s.at(line.viscosity_spread),
    );
    let steepness = match (line.other_viscosity_mm2_per_s, line.other_celsius) {
        (other, at) if other.is_nan() && at.is_nan() => of.steepness.at(line.steepness_spread),
        // The second point is worth something only beside a first one.
        _ if line.viscosity_40_mm2_per_s.is_nan() => return Err(Refusal::at(3, Problem::Missing)),
        (other, _) if other.is_nan() => return Err(Refusal::at(4, Problem::Missing)),
        (_, at) if at.is_nan() => return Err(Refusal::at(5, Problem::Missing)),
        (other, at) => falling(at_40, other, at)?,
    };
    Ok(liquid::viscosity_mm2_per_s(
        at_40,
        steepness,
        line.fuel_celsius,
    ))
}

/// The steepness through two points, far enough apart to tell one.
fn falling(at_40: f64, other: f64, celsius: f64) -> Result<f64, Refusal> {
    if (celsius - VISCOSITY_CELSIUS).abs() < 5.0 {
        return Err(Refusal::at(5, Problem::Contradiction));
    }
    let steepness = liquid::steepness(at_40, other, celsius);
    if steepness > 0.0 {
        Ok(steepness)
    } else {
        Err(Refusal::at(4, Problem::Contradiction))
    }
}

fn entered(told: f64, usual: f64) -> f64 {
    if told.is_nan() { usual } else { told }
}
