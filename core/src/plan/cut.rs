//! The cut plan: what is cut into a panel, told from one pilot hole, and how far its edge stays from
//! everything on both faces; the plate that covers it.
//!
//! Right and up are as seen from the face that the pilot hole was drilled from, the near face. What
//! lies on the far face is told as seen from there, where right and left have changed places, and
//! from where the pilot hole comes out, which is as far off as the drill leaned.

use super::bound::BoundId;
use super::cut_piece::{Laid, missing};
use super::cut_told::{Cut, CutGiven, Obstacle, ObstacleGiven};
use super::flat::{ENDLESS_MM, Gap, Point, Upright};
use super::kind::{Problem, Refusal};
use super::row::Row;
use super::sheets::Checked;
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
    Box(Upright),
    /// Somewhere at this distance from this point.
    Round {
        from: Point,
        distance_mm: f64,
    },
}

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
    let laid = Laid::of(&cut, fixed)?;
    let width = CutGiven::KINDS.len();
    let (own, given) = to.split_at_mut_checked(width).unwrap_or_default();
    CutGiven {
        reach_mm: laid.reach_mm([0.0; 2]),
        seal_spare_mm: laid.spare_mm,
    }
    .write(own);
    for (i, row) in rows.chunks_exact(Obstacle::KINDS.len()).enumerate() {
        let to = given.get_mut(i * ObstacleGiven::KINDS.len()..);
        let first = Cut::KINDS.len() + i * Obstacle::KINDS.len();
        let obstacle = Obstacle::read(row);
        let extent = obstacle
            .extent(&cut)
            .map_err(|r| Refusal::at(first + r.place, r.problem))?;
        extent
            .judge(&laid, obstacle.face < 0.5)
            .write(to.unwrap_or_default());
    }
    Ok(())
}

impl Extent {
    fn judge(&self, laid: &Laid, near: bool) -> ObstacleGiven {
        let plate = laid.plate.as_ref().filter(|_| near);
        let (gap, plate_gap_mm, area) = match self {
            Self::Box(area) => {
                let mut least = Gap::ENDLESS;
                for piece in laid.pieces() {
                    let gap = piece.gap(area);
                    if gap.mm < least.mm {
                        least = gap;
                    }
                }
                (least, plate.map(|p| p.gap(area).mm), *area)
            }
            Self::Round { from, distance_mm } => {
                let none = [f64::NAN; 2];
                (
                    Gap::without_ends(distance_mm - laid.reach_mm(*from)),
                    plate.map(|p| distance_mm - p.reach_mm(*from)),
                    Upright {
                        low: none,
                        high: none,
                    },
                )
            }
        };
        ObstacleGiven {
            gap_mm: gap.mm,
            plate_gap_mm: plate_gap_mm.unwrap_or(f64::NAN),
            left_mm: area.low[0],
            right_mm: area.high[0],
            bottom_mm: area.low[1],
            top_mm: area.high[1],
            from_right_mm: gap.from[0],
            from_up_mm: gap.from[1],
            to_right_mm: gap.to[0],
            to_up_mm: gap.to[1],
        }
    }
}

impl Obstacle {
    fn extent(&self, cut: &Cut) -> Result<Extent, Refusal> {
        let far = self.face > 0.5;
        let flip = if far { -1.0 } else { 1.0 };
        let pilot = if far {
            [cut.lean_right * cut.panel_mm, cut.lean_up * cut.panel_mm]
        } else {
            [0.0; 2]
        };
        let square = [self.right_mm, self.up_mm, self.right_to_mm, self.up_to_mm];
        let by_square = square.iter().any(|n| !n.is_nan());
        let by_distance = !self.distance_mm.is_nan() || !self.direction_deg.is_nan();
        if by_square && by_distance {
            return Err(Refusal::at(place::DISTANCE, Problem::Contradiction));
        }
        if by_distance {
            return self.at_distance(pilot, flip);
        }
        if !by_square {
            return Err(missing(place::RIGHT));
        }
        let [a, b] = span(self.right_mm, self.right_to_mm, place::RIGHT)?;
        let [bottom, top] = span(self.up_mm, self.up_to_mm, place::UP)?;
        let (a, b) = (flip * a, flip * b);
        Ok(Extent::Box(Upright {
            low: [pilot[0] + a.min(b), pilot[1] + bottom],
            high: [pilot[0] + a.max(b), pilot[1] + top],
        }))
    }

    fn at_distance(&self, pilot: Point, flip: f64) -> Result<Extent, Refusal> {
        let distance_mm = self.distance_mm;
        if distance_mm.is_nan() {
            return Err(missing(place::DISTANCE));
        }
        if self.direction_deg.is_nan() {
            return Ok(Extent::Round {
                from: pilot,
                distance_mm,
            });
        }
        let (sin, cos) = sin_cos_deg(self.direction_deg as f32);
        let point = [
            pilot[0] + flip * distance_mm * f64::from(cos),
            pilot[1] + distance_mm * f64::from(sin),
        ];
        Ok(Extent::Box(Upright {
            low: point,
            high: point,
        }))
    }
}

/// From one end to the other, whichever was told first; without ends, past everything.
fn span(from: f64, to: f64, place: usize) -> Result<[f64; 2], Refusal> {
    match (from.is_nan(), to.is_nan()) {
        (true, true) => Ok([-ENDLESS_MM, ENDLESS_MM]),
        (true, false) => Err(missing(place)),
        (false, true) => Ok([from, from]),
        (false, false) => Ok([from.min(to), from.max(to)]),
    }
}
