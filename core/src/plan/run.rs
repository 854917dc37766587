//! One piece after the other in the order of the flow: which share of it each has, what it costs,
//! whether one follows from the other.

use super::duct::{Air, DuctAir};
use super::kind::{Problem, Refusal};
use super::piece::{Piece, field};
use super::piece_cost::Wrong;
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

/// Pieces among a sheet's numbers.
#[derive(Debug, Clone, Copy)]
pub struct Pieces<'a> {
    numbers: &'a [f64],
    /// How many numbers come before them.
    others: usize,
}

impl<'a> Pieces<'a> {
    /// The pieces after `others` other numbers.
    #[must_use]
    pub fn after(x: &'a [f64], others: usize) -> Self {
        Self {
            numbers: x.get(others..).unwrap_or_default(),
            others,
        }
    }

    /// All of them in order.
    pub fn each(self) -> impl Iterator<Item = Piece> + 'a {
        self.numbers
            .chunks_exact(Piece::KINDS.len())
            .map(Piece::read)
    }

    /// Which piece the number at `place` of the sheet belongs to, and that piece.
    #[must_use]
    pub fn of_number(self, place: usize) -> Option<(usize, Piece)> {
        let row = place.checked_sub(self.others)? / Piece::KINDS.len();
        Some((row, self.each().nth(row)?))
    }

    /// A refusal of a piece's field.
    fn refused(self, piece: usize, (field, problem): Wrong) -> Refusal {
        Refusal::at(self.others + piece * Piece::KINDS.len() + field, problem)
    }

    /// Whether there is such a layout: A is what is not B's alone, B needs a piece of its own.
    #[must_use]
    pub fn has(self, layout: f64) -> bool {
        self.each().any(|piece| {
            if layout < B {
                piece.is_in(A)
            } else {
                piece.layout > A
            }
        })
    }

    /// Share of a layout's flow that goes through a piece. It parts at the branches before, or
    /// joins at the ones after, on the return side; a branch itself is told by the whole.
    fn share(self, layout: f64, place: usize, piece: &Piece) -> f64 {
        let counts = |(i, other): &(usize, Piece)| {
            let past = if piece.is_warm() {
                *i < place
            } else {
                *i > place
            };
            past && other.is_warm() == piece.is_warm() && other.is_in(layout)
        };
        let others = self.each().enumerate().filter(counts);
        others.map(|(_, other)| other.kept()).product()
    }

    /// What a piece costs in a layout; nothing where it is not in it.
    ///
    /// # Errors
    /// A field that it needs or contradicts.
    pub fn cost(
        self,
        layout: f64,
        place: usize,
        piece: &Piece,
        given: &DuctAir,
        air: &Air,
    ) -> Result<Option<Cost>, Refusal> {
        if !piece.is_in(layout) || !self.has(layout) {
            return Ok(None);
        }
        let share = self.share(layout, place, piece);
        let cost = cost(piece, given, air, share);
        cost.map(Some).map_err(|wrong| self.refused(place, wrong))
    }

    /// Checks that in a layout each piece begins with the bore that the one before it ends with.
    ///
    /// # Errors
    /// The bore that does not follow; more than a tenth needs a reducer between.
    pub fn follow(self, layout: f64) -> Result<(), Refusal> {
        let (mut cold, mut warm) = (f64::NAN, f64::NAN);
        for (place, piece) in self.each().enumerate() {
            if !piece.is_in(layout) {
                continue;
            }
            let bore = if piece.is_warm() {
                &mut warm
            } else {
                &mut cold
            };
            let (enters, leaves) = piece.ends_mm();
            if (enters - *bore).abs() > STEP * *bore {
                return Err(self.refused(place, (field::BORE, Problem::Contradiction)));
            }
            *bore = leaves;
        }
        Ok(())
    }
}

/// What a piece costs with a share of the whole flow.
fn cost(piece: &Piece, given: &DuctAir, air: &Air, share: f64) -> Result<Cost, Wrong> {
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
