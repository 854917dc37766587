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
use super::piece::{Piece, PieceKind, SPREAD};
use super::row::{Row, row};
use super::run::{self, Cost, Pieces, Stream};
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
    /// What comes of one piece.
    PieceGiven {
        /// Loss in layout A.
        loss_a_pa: Kind::result(Unit::Pa),
        /// Loss in layout B; another one where only one of them parts the flow.
        loss_b_pa: Kind::result(Unit::Pa),
        /// Share of layout A's loss.
        share_a: Kind::result(Unit::Ratio),
        /// Share of layout B's loss.
        share_b: Kind::result(Unit::Ratio),
        /// Speed of the air where it enters; in layout A, where the piece is in both.
        speed_m_per_s: Kind::result(Unit::MPerS),
        /// Share of the dynamic pressure that it costs, f·L/D + K; likewise.
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

/// Loss and the rest, see [`DuctAir`] and [`DuctsGiven`].
///
/// # Errors
/// A field that its piece needs or contradicts; a bore that does not follow from the one before;
/// air hotter than the formulas are for.
pub fn ducts(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let pieces = pieces(x);
    let (given, air) = drawn(x)?;
    pieces.follow(run::A)?;
    pieces.follow(run::B)?;
    for (place, piece) in pieces.each().enumerate() {
        of_piece(pieces, place, &piece, &given, &air, to)?;
    }
    together(pieces, &given, &air, to);
    Ok(())
}

/// [`ducts`] where one number was moved: where that is one of a piece's own, only the piece has to
/// be done again. A branch changes others too.
///
/// # Errors
/// As [`ducts`], but for bores that follow.
pub fn ducts_moved(x: &[f64], place: usize, to: &mut [f64]) -> Result<(), Refusal> {
    let pieces = pieces(x);
    match pieces.of_number(place) {
        Some((row, piece)) if piece.kind() != PieceKind::Branch => {
            let (given, air) = drawn(x)?;
            of_piece(pieces, row, &piece, &given, &air, to)?;
            together(pieces, &given, &air, to);
            Ok(())
        }
        _ => ducts(x, to),
    }
}

fn pieces(x: &[f64]) -> Pieces<'_> {
    Pieces::after(x, DuctAir::KINDS.len())
}

fn drawn(x: &[f64]) -> Result<(DuctAir, Air), Refusal> {
    let given = DuctAir::read(x);
    let air = Air::drawn(&given, given.flow_m3_per_h);
    let air = air.ok_or(Refusal::at(0, Problem::BeyondFormula))?;
    Ok((given, air))
}

/// Results of the pieces among all results.
fn rows(to: &mut [f64]) -> core::slice::ChunksExactMut<'_, f64> {
    let rows = to.get_mut(DuctsGiven::KINDS.len()..).unwrap_or_default();
    rows.chunks_exact_mut(PieceGiven::KINDS.len())
}

fn of_piece(
    pieces: Pieces,
    place: usize,
    piece: &Piece,
    given: &DuctAir,
    air: &Air,
    to: &mut [f64],
) -> Result<(), Refusal> {
    let a = pieces.cost(run::A, place, piece, given, air)?;
    let b = pieces.cost(run::B, place, piece, given, air)?;
    let loss = |cost: Option<Cost>| cost.map_or(f64::NAN, |c| c.loss_pa);
    let first = a.or(b);
    if let Some(row) = rows(to).nth(place) {
        PieceGiven {
            loss_a_pa: loss(a),
            loss_b_pa: loss(b),
            share_a: f64::NAN,
            share_b: f64::NAN,
            speed_m_per_s: first.map_or(f64::NAN, |c| c.speed_m_per_s),
            coefficient: first.map_or(f64::NAN, |c| c.coefficient),
        }
        .write(row);
    }
    Ok(())
}

/// A layout as a whole; not numbers where there is none.
struct Total {
    bends_deg: f64,
    length_m: f64,
    loss_pa: f64,
    dearest: f64,
}

/// Sums up a layout of which each piece's loss is known.
fn total(pieces: Pieces, layout: f64, other_pa: f64, to: &mut [f64]) -> Total {
    if !pieces.has(layout) {
        return Total {
            bends_deg: f64::NAN,
            length_m: f64::NAN,
            loss_pa: f64::NAN,
            dearest: f64::NAN,
        };
    }
    let mut total = Total {
        bends_deg: 0.0,
        length_m: 0.0,
        loss_pa: other_pa.max(0.0),
        dearest: f64::NAN,
    };
    let mut most_pa = f64::NEG_INFINITY;
    for ((place, piece), row) in pieces.each().enumerate().zip(rows(to)) {
        let row = PieceGiven::read(row);
        let loss_pa = if layout < run::B {
            row.loss_a_pa
        } else {
            row.loss_b_pa
        };
        if loss_pa.is_nan() {
            continue;
        }
        total.bends_deg += piece.bends_deg();
        total.length_m += piece.along_m();
        total.loss_pa += loss_pa;
        if loss_pa > most_pa {
            most_pa = loss_pa;
            total.dearest = (place + 1) as f64;
        }
    }
    total
}

/// What both layouts come to, from what their pieces do.
fn together(pieces: Pieces, given: &DuctAir, air: &Air, to: &mut [f64]) {
    let a = total(pieces, run::A, given.other_loss_pa, to);
    let b = total(pieces, run::B, given.other_loss_pa, to);
    for row in rows(to) {
        let mut of = PieceGiven::read(row);
        of.share_a = of.loss_a_pa / a.loss_pa;
        of.share_b = of.loss_b_pa / b.loss_pa;
        of.write(row);
    }
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
}
