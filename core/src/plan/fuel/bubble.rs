//! Why a narrow line carries air out and a wide one keeps it: a long bubble in a still, upright
//! tube rises or sticks. It explains the manual's bore; it passes none that the manual does not
//! list, so nothing here is held against a limit.

use super::liquid::{Fuel, density_kg_per_m3};
use crate::plan::form::Declared;
use crate::plan::kind::{Kind, Refusal, Unit};
use crate::plan::row::{Row, row};

/// Standard gravity, m/s² (3rd CGPM 1901, exact).
pub const GRAVITY_M_PER_S2: f64 = 9.806_65;
/// Below this number the bubble sticks: Bretherton, J. Fluid Mech. 10 (1961) 166.
pub const BRETHERTON_LIMIT: f64 = 0.842;
/// Density of air, kg/m³, 20 °C (`CoolProp`).
const AIR_KG_PER_M3: f64 = 1.2;

row! {
    /// A line and what is in it.
    Bubble {
        /// Diesel or petrol, by its code.
        fuel: Kind::choice(Fuel::ALL.len()),
        /// Inner diameter of the line.
        bore_mm: Kind::new(Unit::Mm, 0.5, 12.0),
        /// Where the density lies within the fuel's span.
        density_spread: Kind::new(Unit::Ratio, -1.0, 1.0).give_or_take(1.0, 0.0),
        /// Where the surface tension lies within the fuel's span.
        tension_spread: Kind::new(Unit::Ratio, -1.0, 1.0).give_or_take(1.0, 0.0),
    }
}

row! {
    /// What a long bubble does in it.
    BubbleGiven {
        /// [`bretherton_number`]; below [`BRETHERTON_LIMIT`] the bubble sticks.
        bubble_number: Kind::result(Unit::Ratio),
        /// [`critical_bore_mm`].
        critical_bore_mm: Kind::result(Unit::Mm),
    }
}

/// Buoyancy against surface tension, Δρ·g·r²/σ, of a bubble that fills a tube of `bore_mm`.
/// Density of the liquid less that of air in kg/m³, tension in N/m.
#[must_use]
pub fn bretherton_number(difference_kg_per_m3: f64, tension_n_per_m: f64, bore_mm: f64) -> f64 {
    let radius_m = bore_mm / 2000.0;
    difference_kg_per_m3 * GRAVITY_M_PER_S2 * radius_m * radius_m / tension_n_per_m
}

/// The widest bore, in mm, in which a long bubble does not rise by itself: 2·√(Bo·σ/(Δρ·g)) with
/// [`BRETHERTON_LIMIT`] for Bo. A still, upright tube wetted by the liquid; units as
/// [`bretherton_number`].
#[must_use]
pub fn critical_bore_mm(difference_kg_per_m3: f64, tension_n_per_m: f64) -> f64 {
    let radius2_m2 = BRETHERTON_LIMIT * tension_n_per_m / (difference_kg_per_m3 * GRAVITY_M_PER_S2);
    2000.0 * libm::sqrt(radius2_m2)
}

/// The sheet.
pub const SHEET: Declared = Declared::new::<Bubble, BubbleGiven>("bubble", bubble);

/// What a long bubble does in the line, about 20 °C.
///
/// # Errors
/// None of its own.
pub fn bubble(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let line = Bubble::read(x);
    let fuel = Fuel::of(line.fuel);
    let of = fuel.properties();
    let density = density_kg_per_m3(fuel, of.density_15_kg_per_m3.at(line.density_spread), 20.0);
    let difference = density - AIR_KG_PER_M3;
    let tension = of.tension_n_per_m.at(line.tension_spread);
    BubbleGiven {
        bubble_number: bretherton_number(difference, tension, line.bore_mm),
        critical_bore_mm: critical_bore_mm(difference, tension),
    }
    .write(to);
    Ok(())
}
