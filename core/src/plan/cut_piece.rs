//! The pieces of a cut and its plate, laid on the panel: see [`super::cut`].

use super::cut_told::Cut;
use super::flat::{Point, Turned};
use super::kind::{Problem, Refusal};
use crate::trig::sin_cos_deg;

/// Most pieces of a cut: a rectangle and four round holes.
pub(super) const PIECES: usize = 5;

/// Places in [`Cut`] of what is refused.
mod place {
    pub const WIDTH: usize = 7;
    pub const HEIGHT: usize = 8;
    pub const CORNER: usize = 9;
    pub const CIRCLES: usize = 10;
    pub const PLATE: usize = 22;
}

/// A rectangle or a round hole, from the middle of the cut, before the turn.
#[derive(Debug, Clone, Copy)]
pub(super) struct Piece {
    middle: Point,
    half: Point,
    round_mm: f64,
}

/// The refusal of a number that was not told.
pub(super) const fn missing(place: usize) -> Refusal {
    Refusal::at(place, Problem::Missing)
}

impl Piece {
    /// What this plate has beyond the pieces, where it has least.
    pub(super) fn land_mm(&self, pieces: &[Option<Self>; PIECES]) -> f64 {
        let beyond = |p: &Self| {
            let side = |plate: f64, own: f64, off: f64| plate - own - p.round_mm - off.abs();
            let [x, y] = [p.middle[0] - self.middle[0], p.middle[1] - self.middle[1]];
            side(self.half[0], p.half[0], x).min(side(self.half[1], p.half[1], y))
        };
        pieces
            .iter()
            .flatten()
            .map(beyond)
            .fold(f64::INFINITY, f64::min)
    }
}

impl Cut {
    pub(super) fn pieces(&self) -> Result<[Option<Piece>; PIECES], Refusal> {
        let hole = |which: usize, told: [f64; 3]| {
            round_hole(told, self.wander_mm, place::CIRCLES + 3 * which)
        };
        let pieces = [
            self.rectangle()?,
            hole(0, [self.a_diameter_mm, self.a_right_mm, self.a_up_mm])?,
            hole(1, [self.b_diameter_mm, self.b_right_mm, self.b_up_mm])?,
            hole(2, [self.c_diameter_mm, self.c_right_mm, self.c_up_mm])?,
            hole(3, [self.d_diameter_mm, self.d_right_mm, self.d_up_mm])?,
        ];
        if pieces.iter().all(Option::is_none) {
            return Err(missing(place::WIDTH));
        }
        Ok(pieces)
    }

    fn rectangle(&self) -> Result<Option<Piece>, Refusal> {
        let sides = [self.width_mm, self.height_mm];
        if sides.iter().all(|s| s.is_nan()) && self.corner_mm.is_nan() {
            return Ok(None);
        }
        if sides[0].is_nan() {
            return Err(missing(place::WIDTH));
        }
        if sides[1].is_nan() {
            return Err(missing(place::HEIGHT));
        }
        let half = sides.map(|s| 0.5 * s);
        // `max` passes over a radius that was not told.
        let corner = self.corner_mm.max(0.0);
        if corner > half[0].min(half[1]) {
            return Err(Refusal::at(place::CORNER, Problem::Contradiction));
        }
        let half = half.map(|h| h + self.wander_mm);
        let corner = corner.min(half[0].min(half[1]));
        Ok(Some(Piece {
            middle: [0.0; 2],
            half: half.map(|h| h - corner),
            round_mm: corner,
        }))
    }

    /// The plate, from the middle of the cut.
    pub(super) fn plate(&self) -> Result<Option<Piece>, Refusal> {
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

    /// A piece on the panel.
    pub(super) fn lay(&self, piece: &Piece) -> Turned {
        let (sin, cos) = sin_cos_deg(self.turn_deg as f32);
        let (sin, cos) = (f64::from(sin), f64::from(cos));
        let [x, y] = piece.middle;
        Turned {
            middle: [
                self.right_mm + x * cos - y * sin,
                self.up_mm + x * sin + y * cos,
            ],
            half: piece.half,
            turn: [cos, sin],
            round_mm: piece.round_mm,
        }
    }
}

fn round_hole(told: [f64; 3], wander_mm: f64, place: usize) -> Result<Option<Piece>, Refusal> {
    let [diameter, right, up] = told;
    Ok(all_or_none(&told, place)?.then_some(Piece {
        middle: [right, up],
        half: [0.0; 2],
        round_mm: 0.5 * diameter + wander_mm,
    }))
}

/// Whether all are told; the first missing one where only some are.
fn all_or_none(told: &[f64], place: usize) -> Result<bool, Refusal> {
    match told.iter().position(|n| n.is_nan()) {
        None => Ok(true),
        Some(_) if told.iter().all(|n| n.is_nan()) => Ok(false),
        Some(first) => Err(missing(place + first)),
    }
}
