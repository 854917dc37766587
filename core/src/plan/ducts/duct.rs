//! Runs of ducts: what they cost at a flow, how long they are and how far they bend, in one or two
//! layouts. Each layout is one way of the air, from where it leaves the room to where it comes back;
//! where ducts part, the other way is the other layout.
//!
//! Darcy and Weisbach: Δp = Σ (f·L/D + K)·ρ·v²/2. The return run has the density of the room's
//! air, the warm run that of the heated air all along: it cools on the way, so the loss is rather
//! too high than too low. Mass flow is the same in both.
//!
//! Where a fan's curve is told, the loss is taken along a power of the flow to where the two meet.

use super::duct_rows::{BothGiven, CHECKS, DuctAir, DuctsGiven, LayoutGiven, PieceGiven};
use super::fan;
use super::piece::{Piece, PieceKind};
use super::piece_cost::Wrong;
use super::run::{self, Stream};
use crate::plan::air;
use crate::plan::form::Declared;
use crate::plan::kind::{Problem, Refusal};
use crate::plan::row::Row;

/// The air on both sides of the heater.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Air {
    /// In the return run.
    pub cold: Stream,
    /// In the warm run.
    pub warm: Stream,
    /// Heated air.
    pub outlet_celsius: f64,
}

impl Air {
    /// Air of which the heater draws in what is told; `None` when that gets hotter than
    /// [`air::HOTTEST_CELSIUS`].
    #[must_use]
    pub fn drawn(given: &DuctAir) -> Option<Self> {
        let pressure = air::pressure_pa(given.altitude_m);
        let density = air::density_kg_per_m3(given.inlet_celsius, pressure);
        let mass = density * given.flow_m3_per_h / 3600.0;
        let outlet = air::heated_celsius(given.inlet_celsius, given.power_w / mass)?;
        let stream = |celsius: f64| Stream {
            mass_kg_per_s: mass,
            density_kg_per_m3: air::density_kg_per_m3(celsius, pressure),
            viscosity_pa_s: air::viscosity_pa_s(celsius),
        };
        Some(Self {
            cold: stream(given.inlet_celsius),
            warm: stream(outlet),
            outlet_celsius: outlet,
        })
    }
}

/// Places of what is told of the fan, among all numbers.
const POWER: usize = 7;
const CURVE: usize = 9;

/// The sheet.
pub const SHEET: Declared = Declared::new::<DuctAir, DuctsGiven>("ducts", ducts)
    .rows::<Piece>()
    .row_results::<PieceGiven>()
    .checks(CHECKS)
    .moved(ducts_moved);

/// Loss and the rest, see [`DuctAir`] and [`DuctsGiven`].
///
/// # Errors
/// A field that its piece needs or contradicts; a bore that does not follow from the one before;
/// air hotter than the formulas are for; a fan's curve that does not fall.
pub fn ducts(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    some(x, None, to)
}

/// [`ducts`] where one number was moved: where that is one of a piece's own, only the piece has to
/// be done again. A branch changes others too.
///
/// # Errors
/// As [`ducts`], but for bores that follow.
pub fn ducts_moved(x: &[f64], place: usize, to: &mut [f64]) -> Result<(), Refusal> {
    let row = place.checked_sub(DuctAir::KINDS.len());
    some(x, row.map(|past| past / Piece::KINDS.len()), to)
}

/// Does `only` one piece again, or all.
fn some(x: &[f64], only: Option<usize>, to: &mut [f64]) -> Result<(), Refusal> {
    let given = DuctAir::read(x);
    let air = Air::drawn(&given).ok_or(Refusal::at(0, Problem::BeyondFormula))?;
    let rows = x.get(DuctAir::KINDS.len()..).unwrap_or_default();
    let pieces = rows.as_chunks().0;
    let alone = |row: &usize| {
        let piece = pieces.get(*row).map(|row| Piece::read(row).kind());
        piece.is_some_and(|kind| kind != PieceKind::Branch)
    };
    let only = only.filter(alone);
    let curve = curve(x, &given)?;
    let (own, rows) = to
        .split_at_mut_checked(DuctsGiven::KINDS.len())
        .unwrap_or_default();
    let mut layouts = [LayoutGiven::NONE; 2];
    for (layout, of_layout) in layouts.iter_mut().enumerate() {
        if pieces.iter().any(|row| Piece::read(row).makes(layout)) {
            let total = run::layout(pieces, layout, only, &given, &air, rows).map_err(refused)?;
            *of_layout = with_fan(&total, curve, &given, &air);
        }
        if let Some(to) = own.get_mut(layout * LayoutGiven::KINDS.len()..) {
            of_layout.write(to);
        }
    }
    let [a, b] = layouts;
    if let Some(to) = own.get_mut(2 * LayoutGiven::KINDS.len()..) {
        BothGiven {
            loss_difference_pa: b.loss_pa - a.loss_pa,
            fan_flow_difference_m3_per_h: b.fan_flow_m3_per_h - a.fan_flow_m3_per_h,
            outlet_air_celsius: air.outlet_celsius,
            rise_k: air.outlet_celsius - given.inlet_celsius,
            mass_flow_kg_per_h: 3600.0 * air.cold.mass_kg_per_s,
            return_density_kg_per_m3: air.cold.density_kg_per_m3,
            warm_density_kg_per_m3: air.warm.density_kg_per_m3,
        }
        .write(to);
    }
    Ok(())
}

/// A refusal of a piece's field.
fn refused((piece, (field, problem)): (usize, Wrong)) -> Refusal {
    let row = DuctAir::KINDS.len() + piece * Piece::KINDS.len();
    Refusal::at(row + field, problem)
}

/// The fan's curve, checked.
fn curve<'a>(x: &'a [f64], given: &DuctAir) -> Result<&'a [f64], Refusal> {
    let curve = x.get(CURVE..DuctAir::KINDS.len()).unwrap_or_default();
    fan::check(curve).map_err(|(place, problem)| Refusal::at(CURVE + place, problem))?;
    for (place, needed) in [given.power, given.curve_density_kg_per_m3]
        .iter()
        .enumerate()
    {
        if needed.is_nan() && !given.flow_1_m3_per_h.is_nan() {
            return Err(Refusal::at(POWER + place, Problem::Missing));
        }
    }
    Ok(curve)
}

/// A layout and where the fan settles with it: the rise goes with one over the flow.
fn with_fan(total: &run::Total, curve: &[f64], given: &DuctAir, air: &Air) -> LayoutGiven {
    let density = air.cold.density_kg_per_m3 / given.curve_density_kg_per_m3;
    let flow = if given.flow_1_m3_per_h.is_nan() {
        f64::NAN
    } else {
        fan::meets(
            curve,
            density,
            total.loss_pa,
            given.flow_m3_per_h,
            given.power,
        )
    };
    let rise_k = air.outlet_celsius - given.inlet_celsius;
    LayoutGiven {
        bends_deg: total.bends_deg,
        length_m: total.length_m,
        loss_pa: total.loss_pa,
        dearest: total.dearest,
        fan_flow_m3_per_h: flow,
        fan_outlet_celsius: given.inlet_celsius + rise_k * given.flow_m3_per_h / flow,
    }
}
