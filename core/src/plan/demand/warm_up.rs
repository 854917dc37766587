//! How long a heater at full power takes to warm a space: one temperature for all that is inside,
//! a loss that grows with how much warmer it is, C·dT/dt = P − H·(T − Tₒ), solved exactly.

use super::{AIR, LOSS, OUTPUT};
use crate::plan::form::Declared;
use crate::plan::kind::{Kind, Problem, Refusal, Unit};
use crate::plan::row::{Row, row};

row! {
    /// The heater, the space, and how cold it is.
    WarmUp {
        /// Heat at full power.
        power_w: OUTPUT,
        /// Heat lost by the hour at the wanted temperature.
        loss_w: LOSS,
        /// Wanted inside.
        inside_celsius: AIR,
        /// Air outside.
        outside_celsius: AIR,
        /// Inside at the start.
        start_celsius: AIR,
        /// Heat that everything inside takes for a kelvin: its mass times its specific heat. Hardly
        /// ever known better than to a third.
        heat_kj_per_k: Kind::new(Unit::KjPerK, 1.0, 100_000.0).give_or_take(0.0, 0.3),
    }
}

row! {
    /// What comes of it.
    WarmUpGiven {
        /// How much warmer than wanted it would get in the end; the time is bounded only where this
        /// is surely above zero.
        beyond_wanted_k: Kind::result(Unit::Kelvin).only_within(0.0, f64::INFINITY),
        /// Until it is as warm as wanted; none where it never is.
        warm_min: Kind::result(Unit::Min),
    }
}

/// The sheet.
pub const SHEET: Declared = Declared::new::<WarmUp, WarmUpGiven>("warm_up", warm_up);

/// Places in [`WarmUp`] of what is refused.
const OUTSIDE: usize = 3;
const START: usize = 4;

/// Time in s from `start_celsius` to `wanted_celsius` of something that takes `heat_j_per_k`, goes
/// towards `end_celsius` and loses `loss_w_per_k`: t = C/H · ln((T∞ − T₀)/(T∞ − T)), the exact
/// solution of C·dT/dt = H·(T∞ − T), Newton's law of cooling. Not a number where it never gets
/// there.
#[must_use]
pub fn warm_s(
    heat_j_per_k: f64,
    loss_w_per_k: f64,
    end_celsius: f64,
    start_celsius: f64,
    wanted_celsius: f64,
) -> f64 {
    let left = end_celsius - wanted_celsius;
    if left <= 0.0 {
        return f64::NAN;
    }
    heat_j_per_k / loss_w_per_k * libm::log((end_celsius - start_celsius) / left)
}

/// Time to get warm, see [`WarmUp`] and [`warm_s`]: H = Φ/(T − Tₒ) from the loss at the wanted
/// temperature, T∞ = Tₒ + P/H where the heater's heat and the loss balance.
///
/// # Errors
/// An outside no colder than what is wanted, a start warmer than that
/// ([`Problem::Contradiction`]).
pub fn warm_up(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let told = WarmUp::read(x);
    if told.outside_celsius >= told.inside_celsius {
        return Err(Refusal::at(OUTSIDE, Problem::Contradiction));
    }
    if told.start_celsius > told.inside_celsius {
        return Err(Refusal::at(START, Problem::Contradiction));
    }
    let loss_w_per_k = told.loss_w / (told.inside_celsius - told.outside_celsius);
    let end_celsius = told.outside_celsius + told.power_w / loss_w_per_k;
    let seconds = warm_s(
        1000.0 * told.heat_kj_per_k,
        loss_w_per_k,
        end_celsius,
        told.start_celsius,
        told.inside_celsius,
    );
    WarmUpGiven {
        beyond_wanted_k: end_celsius - told.inside_celsius,
        warm_min: seconds / 60.0,
    }
    .write(to);
    Ok(())
}
