//! One layout, piece by piece in the order of the flow: which share of it each has, what it costs,
//! whether one follows from the other.

use super::duct::Air;
use super::duct_rows::{DuctAir, PieceGiven};
use super::piece::{Piece, field};
use super::piece_cost::Wrong;
use crate::plan::kind::Problem;
use crate::plan::row::Row;

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

/// A layout as a whole.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Total {
    /// Bends of both runs.
    pub bends_deg: f64,
    /// Length of both runs.
    pub length_m: f64,
    /// Loss of both runs, and what else there is.
    pub loss_pa: f64,
    /// The piece that costs most, counted from 1.
    pub dearest: f64,
}

/// State of a run while its pieces are gone through.
struct Along {
    /// Share of the whole flow that is in it here.
    share: f64,
    /// Bore where the last piece ended, mm; not a number before the first.
    bore_mm: f64,
}

impl Along {
    /// Checks that a piece begins with the bore that the one before it ends with.
    fn follow(&mut self, piece: &Piece) -> Result<(), Wrong> {
        let (enters, leaves) = piece.ends_mm();
        if (enters - self.bore_mm).abs() > STEP * self.bore_mm {
            return Err((field::BORE, Problem::Contradiction));
        }
        self.bore_mm = leaves;
        Ok(())
    }

    /// Takes the run through a piece; gives the share of the flow that the piece's cost is of: at a
    /// branch the whole, before the flow parts or after it joins.
    fn pass(&mut self, piece: &Piece) -> f64 {
        let before = self.share;
        if piece.is_warm() {
            self.share *= piece.kept();
            before
        } else {
            self.share /= piece.kept();
            self.share
        }
    }
}

/// Goes through the pieces of a layout, 0 for A and 1 for B, and leaves what each costs among the
/// pieces' results `rows`. Where `only` one was moved, the others' stand there already.
///
/// # Errors
/// Place of a piece, and what is wrong with it.
pub fn layout(
    pieces: &[[f64; Piece::KINDS.len()]],
    layout: usize,
    only: Option<usize>,
    given: &DuctAir,
    air: &Air,
    rows: &mut [f64],
) -> Result<Total, (usize, Wrong)> {
    // Flows join on the way to the heater, where the share is whole.
    let mut joining = 1.0;
    for row in pieces {
        let piece = Piece::read(row);
        if !piece.is_warm() && piece.is_in(layout) {
            joining *= piece.kept();
        }
    }
    let start = |share| Along {
        share,
        bore_mm: f64::NAN,
    };
    let mut runs = (start(joining), start(1.0));
    let mut total = Total {
        bends_deg: 0.0,
        length_m: 0.0,
        loss_pa: given.other_loss_pa.max(0.0),
        dearest: f64::NAN,
    };
    let mut most_pa = f64::NEG_INFINITY;
    let rows = rows.as_chunks_mut::<{ PieceGiven::KINDS.len() }>().0;
    for (place, (piece, row)) in pieces.iter().zip(rows).enumerate() {
        let piece = &Piece::read(piece);
        if !piece.is_in(layout) {
            continue;
        }
        let (along, stream) = if piece.is_warm() {
            (&mut runs.1, &air.warm)
        } else {
            (&mut runs.0, &air.cold)
        };
        if only.is_none() {
            along.follow(piece).map_err(|wrong| (place, wrong))?;
        }
        let share = along.pass(piece);
        if only.is_none_or(|only| only == place) {
            spend(piece, given, stream, share, layout, row).map_err(|wrong| (place, wrong))?;
        }
        let loss_pa = row.get(layout).copied().unwrap_or(f64::NAN);
        total.bends_deg += piece.bends_deg();
        total.length_m += piece.along_m();
        total.loss_pa += loss_pa;
        if loss_pa > most_pa {
            most_pa = loss_pa;
            total.dearest = (place + 1) as f64;
        }
    }
    Ok(total)
}

/// Leaves what a piece costs with a share of the whole flow.
fn spend(
    piece: &Piece,
    given: &DuctAir,
    stream: &Stream,
    share: f64,
    layout: usize,
    row: &mut [f64],
) -> Result<(), Wrong> {
    let bore_m = 0.001 * piece.bore_mm;
    let area = core::f64::consts::FRAC_PI_4 * bore_m * bore_m;
    let mass = share * stream.mass_kg_per_s;
    let speed = mass / (stream.density_kg_per_m3 * area);
    let k = piece.coefficient(mass * bore_m / (area * stream.viscosity_pa_s))?;
    let coefficient = k.k
        + given.fittings_spread * k.fittings_half
        + given.flexible_spread * k.flexible_half
        + piece.spread * k.own_half;
    let loss_pa = coefficient * 0.5 * stream.density_kg_per_m3 * speed * speed;
    if let [a, b, its_speed, its_coefficient] = row {
        *(if layout == 0 { &mut *a } else { b }) = loss_pa;
        // Of layout A, where it is in both.
        if layout == 0 || a.is_nan() {
            *its_speed = speed;
            *its_coefficient = coefficient;
        }
    }
    Ok(())
}
