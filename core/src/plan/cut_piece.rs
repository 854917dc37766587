//! The pieces of a cut and its plate, laid on the panel: see [`super::cut`].

use super::cut_told::Cut;
use super::flat::{Point, Turned};
use super::kind::{Problem, Refusal};
use crate::trig::sin_cos_deg;

/// Most pieces of a cut: a rectangle and four round holes.
const PIECES: usize = 5;

/// Places in [`Cut`] of what is refused.
mod place {
    pub const WIDTH: usize = 7;
    pub const HEIGHT: usize = 8;
    pub const CORNER: usize = 9;
    pub const HOLES: usize = 10;
    pub const PLATE: usize = 22;
}

/// A rectangle or a round hole, from the middle of the cut, before the turn.
#[derive(Debug, Clone, Copy)]
struct Piece {
    middle: Point,
    half: Point,
    round_mm: f64,
}

/// The cut and its plate on the panel.
#[derive(Debug)]
pub(super) struct Laid {
    pieces: [Turned; PIECES],
    count: usize,
    /// The plate.
    pub plate: Option<Turned>,
    /// What the plate has beyond the cut and the seal where it has least; not a number without a
    /// plate.
    pub spare_mm: f64,
}

/// The refusal of a number that was not told.
pub(super) const fn missing(place: usize) -> Refusal {
    Refusal::at(place, Problem::Missing)
}

impl Laid {
    /// Lays the pieces of a cut, `x` its numbers in order.
    pub fn of(cut: &Cut, x: &[f64]) -> Result<Self, Refusal> {
        let plate = cut.plate()?;
        let nothing = Piece {
            middle: [0.0; 2],
            half: [0.0; 2],
            round_mm: 0.0,
        };
        let lay = Laying::of(cut);
        let mut laid = Self {
            pieces: [lay.piece(&nothing); PIECES],
            count: 0,
            plate: plate.map(|p| lay.piece(&p)),
            spare_mm: if plate.is_some() {
                f64::INFINITY
            } else {
                f64::NAN
            },
        };
        let mut add = |piece: Option<Piece>| {
            if let Some(piece) = piece
                && let Some(to) = laid.pieces.get_mut(laid.count)
            {
                *to = lay.piece(&piece);
                laid.count += 1;
                if let Some(plate) = &plate {
                    laid.spare_mm = laid.spare_mm.min(plate.beyond_mm(&piece) - cut.seal_mm);
                }
            }
        };
        add(cut.rectangle()?);
        let holes = x.get(place::HOLES..place::PLATE).unwrap_or_default();
        for (told, which) in holes.chunks_exact(3).zip(0..) {
            add(round_hole(told, cut.wander_mm, place::HOLES + 3 * which)?);
        }
        if laid.count == 0 {
            return Err(missing(place::WIDTH));
        }
        Ok(laid)
    }

    /// The pieces of the cut.
    pub fn pieces(&self) -> &[Turned] {
        self.pieces.get(..self.count).unwrap_or_default()
    }

    /// Distance of the farthest point of the cut from `from`.
    pub fn reach_mm(&self, from: Point) -> f64 {
        let each = self.pieces().iter();
        each.fold(0.0, |most, piece| piece.reach_mm(from).max(most))
    }
}

/// The way from the middle of the cut to the panel.
struct Laying {
    middle: Point,
    turn: Point,
}

impl Laying {
    fn of(cut: &Cut) -> Self {
        let (sin, cos) = sin_cos_deg(cut.turn_deg as f32);
        Self {
            middle: [cut.middle_right_mm, cut.middle_up_mm],
            turn: [f64::from(cos), f64::from(sin)],
        }
    }

    fn piece(&self, piece: &Piece) -> Turned {
        let ([x, y], [cos, sin]) = (piece.middle, self.turn);
        Turned {
            middle: [
                self.middle[0] + x * cos - y * sin,
                self.middle[1] + x * sin + y * cos,
            ],
            half: piece.half,
            turn: self.turn,
            round_mm: piece.round_mm,
        }
    }
}

impl Piece {
    /// What this plate has beyond a piece on that of its four sides where it has least.
    fn beyond_mm(&self, piece: &Self) -> f64 {
        let side = |axis: fn(&Point) -> f64| {
            let off = axis(&piece.middle) - axis(&self.middle);
            axis(&self.half) - axis(&piece.half) - piece.round_mm - off.abs()
        };
        side(|p| p[0]).min(side(|p| p[1]))
    }
}

impl Cut {
    fn rectangle(&self) -> Result<Option<Piece>, Refusal> {
        if self.width_mm.is_nan() && self.height_mm.is_nan() && self.corner_mm.is_nan() {
            return Ok(None);
        }
        if self.width_mm.is_nan() {
            return Err(missing(place::WIDTH));
        }
        if self.height_mm.is_nan() {
            return Err(missing(place::HEIGHT));
        }
        let smaller = 0.5 * self.width_mm.min(self.height_mm);
        // `max` passes over a radius that was not told.
        let corner = self.corner_mm.max(0.0);
        if corner > smaller {
            return Err(Refusal::at(place::CORNER, Problem::Contradiction));
        }
        let corner = corner.min(smaller + self.wander_mm);
        let half = |side: f64| 0.5 * side + self.wander_mm - corner;
        Ok(Some(Piece {
            middle: [0.0; 2],
            half: [half(self.width_mm), half(self.height_mm)],
            round_mm: corner,
        }))
    }

    /// The plate, from the middle of the cut.
    fn plate(&self) -> Result<Option<Piece>, Refusal> {
        let told = [
            self.plate_width_mm,
            self.plate_height_mm,
            self.plate_right_mm,
            self.plate_up_mm,
            self.seal_mm,
        ];
        Ok(all_or_none(&told, place::PLATE)?.then_some(Piece {
            middle: [self.plate_right_mm, self.plate_up_mm],
            half: [0.5 * self.plate_width_mm, 0.5 * self.plate_height_mm],
            round_mm: 0.0,
        }))
    }
}

/// A round hole of a diameter, right and up.
fn round_hole(told: &[f64], wander_mm: f64, place: usize) -> Result<Option<Piece>, Refusal> {
    let all = all_or_none(told, place)?;
    Ok(match told {
        [diameter, right, up] if all => Some(Piece {
            middle: [*right, *up],
            half: [0.0; 2],
            round_mm: 0.5 * diameter + wander_mm,
        }),
        _ => None,
    })
}

/// Whether all are told; the first missing one where only some are.
fn all_or_none(told: &[f64], place: usize) -> Result<bool, Refusal> {
    match told.iter().position(|n| n.is_nan()) {
        None => Ok(true),
        Some(_) if told.iter().all(|n| n.is_nan()) => Ok(false),
        Some(first) => Err(missing(place + first)),
    }
}
