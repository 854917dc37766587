//! What the heater burns in an hour, and how long the fuel that it reaches lasts.

use super::liquid::Fuel;
use crate::plan::form::Declared;
use crate::plan::kind::{Kind, Refusal, Unit};
use crate::plan::row::{Row, row};

/// Share of the fuel's energy that becomes heat in the air.
pub const EFFICIENCY: Kind = Kind::new(Unit::Ratio, 0.3, 1.0).give_or_take(0.05, 0.0);

row! {
    /// Heat asked for, and what there is.
    Burn {
        /// Diesel or petrol, by its code.
        fuel: Kind::choice(Fuel::ALL.len()),
        /// Heat that comes out.
        output_w: Kind::new(Unit::W, 200.0, 50_000.0).give_or_take(0.0, 0.1),
        /// Share of the fuel's energy that becomes heat in the air.
        efficiency: EFFICIENCY,
        /// Fuel that the standpipe reaches.
        reach_l: Kind::new(Unit::L, 0.0, 2000.0).give_or_take(0.0, 0.05).or_none(),
        /// Where the energy lies within the fuel's span.
        energy_spread: Kind::new(Unit::Ratio, -1.0, 1.0).give_or_take(1.0, 0.0),
    }
}

row! {
    /// What it takes.
    BurnGiven {
        /// Fuel burnt.
        burn_l_per_h: Kind::result(Unit::LPerH),
        /// Hours that the fuel lasts.
        lasts_h: Kind::result(Unit::H),
    }
}

/// Fuel in L/h that gives `output_w`, of `energy_kwh_per_l` at `efficiency` (a share of 1): P/(η·E),
/// the balance of energy.
#[must_use]
pub fn burn_l_per_h(output_w: f64, efficiency: f64, energy_kwh_per_l: f64) -> f64 {
    output_w / 1000.0 / (efficiency * energy_kwh_per_l)
}

/// The sheet.
pub const SHEET: Declared = Declared::new::<Burn, BurnGiven>("burn", burn);

/// Consumption and hours: [`burn_l_per_h`], and the litres reached over it.
///
/// # Errors
/// None of its own.
pub fn burn(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let asked = Burn::read(x);
    let of = Fuel::of(asked.fuel).properties();
    let energy = of.energy_kwh_per_l.at(asked.energy_spread);
    let burn_l_per_h = burn_l_per_h(asked.output_w, asked.efficiency, energy);
    BurnGiven {
        burn_l_per_h,
        lasts_h: asked.reach_l / burn_l_per_h,
    }
    .write(to);
    Ok(())
}
