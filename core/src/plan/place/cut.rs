//! The cut plan: what is cut into a panel, told from one pilot hole, and how far its edge stays from
//! everything on both faces; the plate that covers it.
//!
//! Right and up are as seen from the face that the pilot hole was drilled from, the near face. What
//! lies on the far face is told as seen from there, where right and left have changed places, and
//! from where the pilot hole comes out, which is as far off as the drill leaned.

use super::cut_piece::{self, land_mm, missing};
use super::cut_told::{Cut, CutGiven, Obstacle, ObstacleGiven};
use super::flat::{ENDLESS_MM, Gap, NOWHERE, Point, Turned};
use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Problem, Refusal};
use crate::plan::row::Row;
use crate::trig::sin_cos_deg;

/// The plate has its room for the seal.
pub const CHECKS: &[Checked] = &[Checked::new(1, BoundId::SpareRoom)];

/// Each obstacle keeps off the cut, and is not under the plate.
pub const ROW_CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::CutToObstacle),
    Checked::new(1, BoundId::SpareRoom),
];

/// Places in [`Obstacle`] of what is refused.
mod place {
    pub const RIGHT: usize = 1;
    pub const UP: usize = 2;
    pub const DISTANCE: usize = 5;
}

/// What an obstacle covers, from the pilot hole, seen from the near face.
enum Extent {
    Box(Turned),
    /// Somewhere at this distance from this point.
    Round {
        from: Point,
        distance_mm: f64,
    },
}

/// The sheet.
pub const SHEET: Declared = Declared::new::<Cut, CutGiven>("cut_plan", cut_plan)
    .rows::<Obstacle>()
    .row_results::<ObstacleGiven>()
    .checks(CHECKS)
    .row_checks(ROW_CHECKS);

/// Tells for each obstacle how far the cut and the plate stay from it.
///
/// Valid for a flat panel. Wander moves every side of the cut outwards by as much; what the saw does
/// between the faces is part of it.
///
/// # Errors
/// A rectangle, a round hole, a plate or an obstacle told in part ([`Problem::Missing`]); corners
/// rounder than the rectangle, an obstacle told two ways ([`Problem::Contradiction`]).
pub fn cut_plan(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let (fixed, rows) = x.split_at_checked(Cut::KINDS.len()).unwrap_or_default();
    let cut = Cut::read(fixed);
    let mut pieces = cut_piece::pieces(&cut, fixed)?;
    let mut plate = cut_piece::plate(&cut, fixed)?;
    let seat = Turned {
        turn: direction(cut.turn_deg),
        ..Turned::upright([cut.middle_right_mm, cut.middle_up_mm], [0.0; 2])
    };
    let (mut land, mut reach) = (f64::NAN, f64::NAN);
    for piece in &mut pieces {
        land = land.min(land_mm(&plate, piece));
        lay(piece, &seat);
        reach = reach.max(piece.reach_mm([0.0; 2]));
    }
    lay(&mut plate, &seat);
    let width = CutGiven::KINDS.len();
    let (own, given) = to.split_at_mut_checked(width).unwrap_or_default();
    CutGiven {
        reach_mm: reach,
        seal_spare_mm: land - cut.seal_mm,
    }
    .write(own);
    let told = rows.as_chunks::<{ Obstacle::KINDS.len() }>().0;
    let each = given.as_chunks_mut::<{ ObstacleGiven::KINDS.len() }>().0;
    let pilot = [cut.lean_right * cut.panel_mm, cut.lean_up * cut.panel_mm];
    for (i, (row, to)) in told.iter().zip(each).enumerate() {
        let first = Cut::KINDS.len() + i * Obstacle::KINDS.len();
        let obstacle = Obstacle::read(row);
        let extent = obstacle
            .extent(pilot)
            .map_err(|r| Refusal::at(first + r.place, r.problem))?;
        let on_near = obstacle.face < 0.5;
        let plate = if on_near { &plate } else { &Turned::NONE };
        extent.judge(&pieces, plate).write(to);
    }
    Ok(())
}

/// Cosine and sine of an angle from the right.
fn direction(deg: f64) -> Point {
    let (sin, cos) = sin_cos_deg(deg as f32);
    [f64::from(cos), f64::from(sin)]
}

/// Lays a piece on the panel.
fn lay(piece: &mut Turned, seat: &Turned) {
    piece.middle = seat.outwards(piece.middle);
    piece.turn = seat.turn;
}

impl Extent {
    #[inline(never)]
    fn gap(&self, piece: &Turned) -> Gap {
        match self {
            Self::Box(area) => piece.gap(area),
            Self::Round { from, distance_mm } => Gap::of(distance_mm - piece.reach_mm(*from)),
        }
    }

    fn judge(&self, pieces: &[Turned], plate: &Turned) -> ObstacleGiven {
        let mut least = Gap::of(f64::INFINITY);
        for piece in pieces {
            let gap = self.gap(piece);
            if gap.mm < least.mm {
                least = gap;
            }
        }
        let ([x, y], [w, h]) = match self {
            Self::Box(area) => (area.middle, area.half),
            Self::Round { .. } => (NOWHERE, NOWHERE),
        };
        ObstacleGiven {
            gap_mm: least.mm,
            plate_gap_mm: self.gap(plate).mm,
            left_mm: x - w,
            right_mm: x + w,
            bottom_mm: y - h,
            top_mm: y + h,
            from_right_mm: least.from[0],
            from_up_mm: least.from[1],
            to_right_mm: least.to[0],
            to_up_mm: least.to[1],
        }
    }
}

impl Obstacle {
    /// Its extent; on the far face from where the pilot hole comes out there.
    fn extent(&self, pilot: Point) -> Result<Extent, Refusal> {
        let far = self.face > 0.5;
        let (pilot, flip) = if far { (pilot, -1.0) } else { ([0.0; 2], 1.0) };
        let square = [self.right_mm, self.up_mm, self.right_to_mm, self.up_to_mm];
        let by_square = square.iter().any(|n| !n.is_nan());
        let (distance_mm, by_direction) = (self.distance_mm, !self.direction_deg.is_nan());
        let by_distance = !distance_mm.is_nan();
        let ([x, y], half) = if by_square {
            if by_distance || by_direction {
                return Err(Refusal::at(place::DISTANCE, Problem::Contradiction));
            }
            let (x, w) = span(self.right_mm, self.right_to_mm, place::RIGHT)?;
            let (y, h) = span(self.up_mm, self.up_to_mm, place::UP)?;
            ([x, y], [w, h])
        } else if by_distance && by_direction {
            let way = direction(self.direction_deg);
            (way.map(|w| distance_mm * w), [0.0; 2])
        } else if by_distance {
            let from = pilot;
            return Ok(Extent::Round { from, distance_mm });
        } else {
            let place = [place::RIGHT, place::DISTANCE][usize::from(by_direction)];
            return Err(missing(place));
        };
        let middle = [pilot[0] + flip * x, pilot[1] + y];
        Ok(Extent::Box(Turned::upright(middle, half)))
    }
}

/// Middle and half of what lies from one end to the other; without ends, past everything.
#[inline(never)]
fn span(from: f64, to: f64, place: usize) -> Result<(f64, f64), Refusal> {
    match (from.is_nan(), to.is_nan()) {
        (true, true) => Ok((0.0, ENDLESS_MM)),
        (true, false) => Err(missing(place)),
        (false, true) => Ok((from, 0.0)),
        (false, false) => Ok((0.5 * (from + to), 0.5 * (to - from).abs())),
    }
}
