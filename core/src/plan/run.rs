//! One layout, piece by piece in the order of the flow.

use super::duct::{Air, DuctAir, pieces};
use super::kind::{Problem, Refusal};
use super::piece::{Piece, PieceKind, field};
use super::row::Row;

/// Layout A, as pieces name it.
pub const A: f64 = 1.0;
/// Layout B.
pub const B: f64 = 2.0;

/// Most that a bore can differ from the one before it; more needs a reducer between.
const STEP: f64 = 0.1;

/// Air in a run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stream {
    /// Mass flow of the whole.
    pub mass_kg_per_s: f64,
    /// Density.
    pub density_kg_per_m3: f64,
    /// Dynamic viscosity.
    pub viscosity_pa_s: f64,
}

/// What one piece costs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cost {
    /// Loss.
    pub loss_pa: f64,
    /// Speed where the flow enters.
    pub speed_m_per_s: f64,
    /// Share of the dynamic pressure.
    pub coefficient: f64,
}

/// A layout as a whole; not numbers where no piece is in it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Total {
    /// Bends of both runs.
    pub bends_deg: f64,
    /// Length of both runs.
    pub length_m: f64,
    /// Loss of both runs.
    pub loss_pa: f64,
    /// The piece that costs most, counted from 1.
    pub dearest: f64,
}

/// No layout.
const NONE: Total = Total {
    bends_deg: f64::NAN,
    length_m: f64::NAN,
    loss_pa: f64::NAN,
    dearest: f64::NAN,
};

/// State of a run while its pieces are gone through.
#[derive(Clone, Copy)]
struct Along {
    /// Share of the whole flow that is in it here.
    share: f64,
    /// Bore where the last piece ended, mm; not a number before the first.
    bore_mm: f64,
}

/// What a piece costs, of the whole flow's `share`.
///
/// # Errors
/// A field that it needs or contradicts.
fn cost(piece: &Piece, given: &DuctAir, air: &Air, share: f64) -> Result<Cost, (usize, Problem)> {
    let stream = if piece.is_warm() {
        &air.warm
    } else {
        &air.cold
    };
    let bore_m = 0.001 * piece.bore_mm;
    let area = core::f64::consts::FRAC_PI_4 * bore_m * bore_m;
    let mass = share * stream.mass_kg_per_s;
    let speed = mass / (stream.density_kg_per_m3 * area);
    let k = piece.coefficient(mass * bore_m / (area * stream.viscosity_pa_s))?;
    let coefficient = k.k
        + given.fittings_spread * k.fittings_half
        + given.flexible_spread * k.flexible_half
        + piece.spread * k.own_half;
    Ok(Cost {
        loss_pa: coefficient * 0.5 * stream.density_kg_per_m3 * speed * speed,
        speed_m_per_s: speed,
        coefficient,
    })
}

/// Goes through the pieces of a layout that stand in `x` after `others` other numbers; tells
/// `each` piece's place and cost.
///
/// # Errors
/// See [`super::duct::ducts`].
pub fn layout(
    x: &[f64],
    others: usize,
    layout: f64,
    given: &DuctAir,
    air: &Air,
    each: &mut dyn FnMut(usize, Cost),
) -> Result<Total, Refusal> {
    // Layout A is what is not B alone; B needs a piece of its own.
    let own = |p: &Piece| if layout < B { p.is_in(A) } else { p.layout > A };
    if !pieces(x, others).any(|p| own(&p)) {
        return Ok(NONE);
    }
    let here = || {
        pieces(x, others)
            .enumerate()
            .filter(|(_, p)| p.is_in(layout))
    };
    // Flows join on the way to the heater, where the share is whole.
    let joining = here().filter(|(_, p)| !p.is_warm()).map(|(_, p)| p.kept());
    let start = |share| Along {
        share,
        bore_mm: f64::NAN,
    };
    let (mut cold, mut warm) = (start(joining.product()), start(1.0));
    let mut total = Total {
        bends_deg: 0.0,
        length_m: 0.0,
        loss_pa: given.other_loss_pa.max(0.0),
        dearest: f64::NAN,
    };
    let mut dearest_pa = f64::NEG_INFINITY;
    for (place, piece) in here() {
        let along = if piece.is_warm() {
            &mut warm
        } else {
            &mut cold
        };
        let at =
            |(field, problem)| Refusal::at(others + place * Piece::KINDS.len() + field, problem);
        let whole = pass(&piece, along).map_err(at)?;
        let cost = cost(&piece, given, air, whole).map_err(at)?;
        total.bends_deg += piece.bends_deg();
        total.length_m += piece.along_m();
        total.loss_pa += cost.loss_pa;
        if cost.loss_pa > dearest_pa {
            dearest_pa = cost.loss_pa;
            total.dearest = (place + 1) as f64;
        }
        each(place, cost);
    }
    Ok(total)
}

/// Takes a run through a piece; gives the share of the flow that the piece's cost is of: at a
/// branch the whole, before the flow parts or after it joins.
fn pass(piece: &Piece, along: &mut Along) -> Result<f64, (usize, Problem)> {
    let (enters, leaves) = piece.ends_mm();
    if (enters - along.bore_mm).abs() > STEP * along.bore_mm {
        return Err((field::BORE, Problem::Contradiction));
    }
    along.bore_mm = leaves;
    let before = along.share;
    if piece.kind() != PieceKind::Branch {
        return Ok(before);
    }
    if piece.share.is_nan() {
        return Err((field::SHARE, Problem::Missing));
    }
    if piece.is_warm() {
        along.share = before * piece.share;
        Ok(before)
    } else {
        along.share = before / piece.share;
        Ok(along.share)
    }
}
