//! What a night costs: fuel and current, and the same night with the engine idling instead.

use super::LOSS;
use crate::plan::form::Declared;
use crate::plan::fuel::burn::{EFFICIENCY, burn_l_per_h};
use crate::plan::fuel::liquid::Fuel;
use crate::plan::kind::{Kind, Refusal, Unit};
use crate::plan::row::{Row, row};

row! {
    /// A night.
    Night {
        /// Hours that it lasts.
        hours_h: Kind::new(Unit::H, 0.1, 1000.0),
        /// Heat lost by the hour, which the heater makes good.
        loss_w: LOSS,
        /// Diesel or petrol, by its code.
        fuel: Kind::choice(Fuel::ALL.len()),
        /// Share of the fuel's energy that becomes heat in the air.
        efficiency: EFFICIENCY,
        /// Energy of a litre; empty: that of the fuel ([`Fuel::properties`]).
        energy_kwh_per_l: Kind::new(Unit::KwhPerL, 5.0, 12.0).give_or_take(0.0, 0.02).or_none(),
        /// Where that lies within the fuel's span.
        energy_spread: Kind::new(Unit::Ratio, -1.0, 1.0).give_or_take(1.0, 0.0),
        /// Electrical power that the heater draws, averaged over the night.
        electrical_w: Kind::new(Unit::W, 0.0, 2000.0).give_or_take(0.0, 0.2).or_none(),
        /// Voltage of its battery.
        battery_v: Kind::new(Unit::V, 5.0, 60.0).give_or_take(0.0, 0.05).or_none(),
        /// What the engine burns idling, from its paper or a measurement.
        idle_l_per_h: Kind::new(Unit::LPerH, 0.05, 50.0).give_or_take(0.0, 0.1).or_none(),
    }
}

row! {
    /// What it costs.
    NightGiven {
        /// Fuel burnt in an hour.
        burn_l_per_h: Kind::result(Unit::LPerH),
        /// Fuel of the night.
        night_l: Kind::result(Unit::L),
        /// Charge drawn from the battery.
        charge_ah: Kind::result(Unit::Ah),
        /// Fuel of the engine, idling all night.
        idle_l: Kind::result(Unit::L),
        /// How much less the heater burns; below zero: more.
        saved_l: Kind::result(Unit::L),
    }
}

/// The sheet.
pub const SHEET: Declared = Declared::new::<Night, NightGiven>("night", night);

/// Fuel and charge of a night, see [`Night`]: hours times [`burn_l_per_h`], and P·t/V in A·h, by
/// the definitions of power and charge.
///
/// # Errors
/// None of its own.
pub fn night(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let told = Night::read(x);
    let energy = if told.energy_kwh_per_l.is_nan() {
        let usual = Fuel::of(told.fuel).properties().energy_kwh_per_l;
        usual.at(told.energy_spread)
    } else {
        told.energy_kwh_per_l
    };
    let burn_l_per_h = burn_l_per_h(told.loss_w, told.efficiency, energy);
    let night_l = burn_l_per_h * told.hours_h;
    let idle_l = told.idle_l_per_h * told.hours_h;
    NightGiven {
        burn_l_per_h,
        night_l,
        charge_ah: told.electrical_w * told.hours_h / told.battery_v,
        idle_l,
        saved_l: idle_l - night_l,
    }
    .write(to);
    Ok(())
}
