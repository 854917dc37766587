//! The pieces of a cut and its plate, laid on the panel: see [`super::cut`].

use super::cut_told::Cut;
use super::flat::{Point, Turned};
use crate::plan::kind::{Problem, Refusal};

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

/// The refusal of a number that was not told.
pub(super) const fn missing(place: usize) -> Refusal {
    Refusal::at(place, Problem::Missing)
}

/// What a plate has beyond a piece, where it has least; both before the turn.
pub(super) fn land_mm(plate: &Turned, piece: &Turned) -> f64 {
    let side = |plate: f64, own: f64, off: f64| plate - own - piece.round_mm - off.abs();
    let [x, y] = piece.middle;
    let across = side(plate.half[0], piece.half[0], x - plate.middle[0]);
    across.min(side(plate.half[1], piece.half[1], y - plate.middle[1]))
}

/// The pieces of a cut from its middle, before the turn: `cut`, and the same in order.
pub(super) fn pieces(cut: &Cut, x: &[f64]) -> Result<[Turned; PIECES], Refusal> {
    let mut pieces = [Turned::NONE; PIECES];
    let [rectangle, holes @ ..] = &mut pieces;
    let sides = [cut.width_mm, cut.height_mm];
    let is_told = sides.iter().chain([&cut.corner_mm]).any(|n| !n.is_nan());
    if is_told {
        *rectangle = self::rectangle(sides, cut)?;
    }
    let mut any = is_told;
    let told = x.get(place::CIRCLES..place::PLATE).unwrap_or_default();
    for (i, (hole, told)) in holes.iter_mut().zip(told.as_chunks().0).enumerate() {
        if all_or_none(told, place::CIRCLES + 3 * i)? {
            let [diameter, right, up] = *told;
            *hole = Turned {
                round_mm: 0.5 * diameter + cut.wander_mm,
                ..Turned::upright([right, up], [0.0; 2])
            };
            any = true;
        }
    }
    if any {
        Ok(pieces)
    } else {
        Err(missing(place::WIDTH))
    }
}

fn rectangle(sides: Point, cut: &Cut) -> Result<Turned, Refusal> {
    for (side, place) in sides.iter().zip([place::WIDTH, place::HEIGHT]) {
        if side.is_nan() {
            return Err(missing(place));
        }
    }
    let least = 0.5 * sides[0].min(sides[1]);
    // `max` passes over a radius that was not told.
    let corner = cut.corner_mm.max(0.0);
    if corner > least {
        return Err(Refusal::at(place::CORNER, Problem::Contradiction));
    }
    let corner = corner.min(least + cut.wander_mm);
    Ok(Turned {
        round_mm: corner,
        ..Turned::upright([0.0; 2], sides.map(|s| 0.5 * s + cut.wander_mm - corner))
    })
}

/// The plate, from the middle of the cut.
pub(super) fn plate(cut: &Cut, x: &[f64]) -> Result<Turned, Refusal> {
    let told = x.get(place::PLATE..).unwrap_or_default();
    if !all_or_none(told, place::PLATE)? {
        return Ok(Turned::NONE);
    }
    Ok(Turned::upright(
        [cut.plate_right_mm, cut.plate_up_mm],
        [0.5 * cut.plate_width_mm, 0.5 * cut.plate_height_mm],
    ))
}

/// Whether all are told; the first missing one where only some are.
#[inline(never)]
fn all_or_none(told: &[f64], place: usize) -> Result<bool, Refusal> {
    match told.iter().position(|n| n.is_nan()) {
        None => Ok(true),
        Some(_) if told.iter().all(|n| n.is_nan()) => Ok(false),
        Some(first) => Err(missing(place + first)),
    }
}
