//! Runs of ducts: what they cost at a flow, how long they are and how far they bend, in one or two
//! layouts. Each layout is one way of the air, from where it leaves the room to where it comes back;
//! where ducts part, the other way is the other layout.
//!
//! Darcy and Weisbach: Δp = Σ (f·L/D + K)·ρ·v²/2. The return run has the density of the room's
//! air, the warm run that of the heated air all along: it cools on the way, so the loss is rather
//! too high than too low. Mass flow is the same in both.

use super::air;
use super::bound::BoundId;
use super::kind::{Kind, Problem, Refusal, Unit};
use super::piece::{Piece, SPREAD};
use super::row::{Row, row};
use super::run::{self, Stream};
use super::sheets::Checked;

row! {
    /// The air that goes through.
    DuctAir {
        /// Volume that the heater draws in, at the room's density.
        flow_m3_per_h: Kind::new(Unit::M3PerH, 5.0, 2000.0).give_or_take(0.0, 0.1),
        /// Heat that goes into the air.
        power_w: Kind::new(Unit::W, 0.0, 30_000.0).give_or_take(0.0, 0.1),
        /// Air that the heater draws in.
        inlet_celsius: Kind::new(Unit::Celsius, -40.0, 60.0).give_or_take(2.0, 0.0),
        /// Height above the sea; the half-width is the weather's.
        altitude_m: Kind::new(Unit::M, -430.0, 6000.0).give_or_take(250.0, 0.0),
        /// What else the air must pass at this flow: a filter, a grille in a wall.
        other_loss_pa: Kind::new(Unit::Pa, 0.0, 2000.0).give_or_take(0.0, 0.3).or_none(),
        /// Place of the true loss within the spread of all fittings: 0, by definition.
        fittings_spread: SPREAD,
        /// The same for all flexible ducts.
        flexible_spread: SPREAD,
    }
}

row! {
    /// What comes of it. A layout that no piece is in has none.
    DuctsGiven {
        /// Bends of layout A, both runs.
        bends_a_deg: Kind::result(Unit::Deg),
        /// Length of layout A, both runs.
        length_a_m: Kind::result(Unit::M),
        /// Loss of layout A.
        loss_a_pa: Kind::result(Unit::Pa),
        /// Bends of layout B.
        bends_b_deg: Kind::result(Unit::Deg),
        /// Length of layout B.
        length_b_m: Kind::result(Unit::M),
        /// Loss of layout B.
        loss_b_pa: Kind::result(Unit::Pa),
        /// B less A; what both share cancels, in its uncertainty too.
        loss_difference_pa: Kind::result(Unit::Pa),
        /// Heated air as it leaves the heater.
        outlet_air_celsius: Kind::result(Unit::Celsius),
        /// By how much it is warmer than the room's.
        rise_k: Kind::result(Unit::Kelvin),
        /// Mass of air.
        mass_flow_kg_per_h: Kind::result(Unit::KgPerH),
        /// Density in the return run.
        return_density_kg_per_m3: Kind::result(Unit::KgPerM3),
        /// Density in the warm run.
        warm_density_kg_per_m3: Kind::result(Unit::KgPerM3),
        /// Which piece of layout A costs most, counted from 1.
        dearest_a: Kind::result(Unit::Count),
        /// Which piece of layout B.
        dearest_b: Kind::result(Unit::Count),
    }
}

row! {
    /// What comes of one piece; of layout A's flow where it is in both.
    PieceGiven {
        /// Loss.
        loss_pa: Kind::result(Unit::Pa),
        /// Its share of its layout's loss.
        loss_share: Kind::result(Unit::Ratio),
        /// Speed of the air where it enters.
        speed_m_per_s: Kind::result(Unit::MPerS),
        /// Share of the dynamic pressure that it costs: f·L/D + K.
        coefficient: Kind::result(Unit::Ratio),
    }
}

/// Both layouts against the same limits.
pub const CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::DuctBends),
    Checked::new(1, BoundId::DuctLength),
    Checked::new(2, BoundId::DuctLoss),
    Checked::new(3, BoundId::DuctBends),
    Checked::new(4, BoundId::DuctLength),
    Checked::new(5, BoundId::DuctLoss),
    Checked::new(7, BoundId::OutletAir),
];

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
    /// Air of which the heater draws in `flow_m3_per_h`; `None` when that gets hotter than
    /// [`air::HOTTEST_CELSIUS`].
    #[must_use]
    pub fn drawn(given: &DuctAir, flow_m3_per_h: f64) -> Option<Self> {
        let pressure = air::pressure_pa(given.altitude_m);
        let density = air::density_kg_per_m3(given.inlet_celsius, pressure);
        let mass = density * flow_m3_per_h / 3600.0;
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

/// Pieces among a sheet's numbers, after so many others.
pub fn pieces(x: &[f64], others: usize) -> impl DoubleEndedIterator<Item = Piece> + Clone + '_ {
    let rows = x.get(others..).unwrap_or_default();
    rows.chunks_exact(Piece::KINDS.len()).map(Piece::read)
}

/// Loss and the rest, see [`DuctAir`] and [`DuctsGiven`].
///
/// # Errors
/// A field that its piece needs or contradicts; a bore that does not follow from the one before;
/// air hotter than the formulas are for.
pub fn ducts(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let given = DuctAir::read(x);
    let others = DuctAir::KINDS.len();
    let air =
        Air::drawn(&given, given.flow_m3_per_h).ok_or(Refusal::at(0, Problem::BeyondFormula))?;
    let mut costs = |layout: f64| {
        run::layout(x, others, layout, &given, &air, &mut |piece, cost| {
            let place = DuctsGiven::KINDS.len() + piece * PieceGiven::KINDS.len();
            let Some(row) = to.get_mut(place..) else {
                return;
            };
            // Layout A comes first; a piece of both keeps what it costs there.
            if row.first().is_some_and(|loss| loss.is_nan()) {
                row_of(&cost).write(row);
            }
        })
    };
    let (a, b) = (costs(run::A)?, costs(run::B)?);
    shares(x, to, others, [a.loss_pa, b.loss_pa]);
    DuctsGiven {
        bends_a_deg: a.bends_deg,
        length_a_m: a.length_m,
        loss_a_pa: a.loss_pa,
        bends_b_deg: b.bends_deg,
        length_b_m: b.length_m,
        loss_b_pa: b.loss_pa,
        loss_difference_pa: b.loss_pa - a.loss_pa,
        outlet_air_celsius: air.outlet_celsius,
        rise_k: air.outlet_celsius - given.inlet_celsius,
        mass_flow_kg_per_h: 3600.0 * air.cold.mass_kg_per_s,
        return_density_kg_per_m3: air.cold.density_kg_per_m3,
        warm_density_kg_per_m3: air.warm.density_kg_per_m3,
        dearest_a: a.dearest,
        dearest_b: b.dearest,
    }
    .write(to);
    Ok(())
}

fn row_of(cost: &run::Cost) -> PieceGiven {
    PieceGiven {
        loss_pa: cost.loss_pa,
        loss_share: f64::NAN,
        speed_m_per_s: cost.speed_m_per_s,
        coefficient: cost.coefficient,
    }
}

/// Fills in each piece's share of its layout's loss.
fn shares(x: &[f64], to: &mut [f64], others: usize, losses_pa: [f64; 2]) {
    let rows = to.get_mut(DuctsGiven::KINDS.len()..).unwrap_or_default();
    let rows = rows.chunks_exact_mut(PieceGiven::KINDS.len());
    for (row, piece) in rows.zip(pieces(x, others)) {
        let [a, b] = losses_pa;
        let all = if piece.is_in(run::A) { a } else { b };
        if let [loss, share, ..] = row {
            *share = *loss / all;
        }
    }
}
