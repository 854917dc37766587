//! Whether the heater with its clearances finds room in a compartment, in which of the 24 square
//! orientations, and how much room is left.
//!
//! The measure is the room left all round: how much wider every clearance could be, at the best
//! place, before something is touched. Below zero, that much is lacking on every side. It changes
//! by no more than what is told changes, so the uncertainties of the tape carry over.

use super::orientation::Orientation;
use super::space::Space;
use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Problem, Refusal, Unit};
use crate::plan::row::{Row, row};

const INNER: Kind = Kind::tape(100.0, 10_000.0);
const OUTER: Kind = Kind::tape(50.0, 2000.0);
/// Exact: what the manual says.
const CLEAR: Kind = Kind::new(Unit::Mm, 0.0, 3000.0);
const CORNER: Kind = Kind::tape(-1000.0, 10_000.0);
const SIZE: Kind = Kind::tape(1.0, 10_000.0);
const RESULT: Kind = Kind::result(Unit::Mm);

/// Most things in the way that a fit takes.
pub const MOST_BOXES: usize = 8;

row! {
    /// Compartment, heater and clearances. The compartment as seen from its door.
    Fit {
        /// Compartment, inside, from left to right.
        inner_x_mm: INNER,
        /// From the door inwards.
        inner_y_mm: INNER,
        /// Upwards.
        inner_z_mm: INNER,
        /// Heater, from end to end.
        length_mm: OUTER,
        /// Across, square to its fuel port.
        width_mm: OUTER,
        /// Along its fuel port.
        height_mm: OUTER,
        /// Clearance beyond the warm-air end.
        outlet_end_mm: CLEAR,
        /// Before the intake end.
        intake_end_mm: CLEAR,
        /// On the heater's side that is away from its fuel port.
        top_mm: CLEAR,
        /// On the side of its fuel port.
        bottom_mm: CLEAR,
        /// Left, seen from the intake end, port down.
        left_mm: CLEAR,
        /// Right.
        right_mm: CLEAR,
        /// The orientation to tell more of: its place in [`Orientation::ALL`].
        orientation: Kind::choice(24).or_none(),
    }
}

row! {
    /// A box in the way: its corner at the left, at the door, at the bottom; and its size.
    InTheWay {
        /// From the left wall.
        x_mm: CORNER,
        /// From the door.
        y_mm: CORNER,
        /// From the floor.
        z_mm: CORNER,
        /// From left to right.
        size_x_mm: SIZE,
        /// Inwards.
        size_y_mm: SIZE,
        /// Upwards.
        size_z_mm: SIZE,
    }
}

row! {
    /// Room left all round by [`Orientation::lay`], and more of one orientation.
    FitGiven {
        /// Length along x, height along y.
        room_xy_mm: RESULT,
        /// Length along x, height along z.
        room_xz_mm: RESULT,
        /// Length along y, height along x.
        room_yx_mm: RESULT,
        /// Length along y, height along z.
        room_yz_mm: RESULT,
        /// Length along z, height along x.
        room_zx_mm: RESULT,
        /// Length along z, height along y.
        room_zy_mm: RESULT,
        /// The allowed orientation with the most room; of several the first in the list.
        best: Kind::choice(24),
        /// Room left all round in the chosen orientation.
        room_mm: RESULT,
        /// How far it could be shifted from left to right.
        spare_x_mm: RESULT,
        /// Inwards.
        spare_y_mm: RESULT,
        /// Upwards.
        spare_z_mm: RESULT,
        /// Best place of the heater itself: its left side from the left wall.
        at_x_mm: RESULT,
        /// Its near side from the door.
        at_y_mm: RESULT,
        /// Its underside from the floor.
        at_z_mm: RESULT,
        /// Its extent from left to right.
        extent_x_mm: RESULT,
        /// Inwards.
        extent_y_mm: RESULT,
        /// Upwards.
        extent_z_mm: RESULT,
    }
}

/// Each way that the heater lies finds its room or doesn't; the chosen orientation counts.
pub const CHECKS: &[Checked] = &[
    Checked::alternative(0, BoundId::SpareRoom),
    Checked::alternative(1, BoundId::SpareRoom),
    Checked::alternative(2, BoundId::SpareRoom),
    Checked::alternative(3, BoundId::SpareRoom),
    Checked::alternative(4, BoundId::SpareRoom),
    Checked::alternative(5, BoundId::SpareRoom),
    Checked::new(7, BoundId::SpareRoom),
];

/// The sheet.
pub const SHEET: Declared = Declared::new::<Fit, FitGiven>("fit", fit)
    .rows::<InTheWay>()
    .checks(CHECKS);

/// Finds the room for every orientation, and where the chosen one has most.
///
/// # Errors
/// More boxes than [`MOST_BOXES`] ([`Problem::TooMany`], at the first that is one too many).
pub fn fit(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let (fixed, rows) = x.split_at_checked(Fit::KINDS.len()).unwrap_or_default();
    let fit = Fit::read(fixed);
    let told = rows.as_chunks::<{ InTheWay::KINDS.len() }>().0;
    let mut boxes = [Space::NOTHING; MOST_BOXES];
    let Some(boxes) = boxes.get_mut(..told.len()) else {
        let place = Fit::KINDS.len() + MOST_BOXES * InTheWay::KINDS.len();
        return Err(Refusal::at(place, Problem::TooMany));
    };
    for (to, [x, y, z, size @ ..]) in boxes.iter_mut().zip(told) {
        let low = [*x, *y, *z];
        let high = add(low, *size);
        *to = Space { low, high };
    }
    let inside = Space {
        low: [0.0; 3],
        high: [fit.inner_x_mm, fit.inner_y_mm, fit.inner_z_mm],
    };
    let mut rooms = [f64::NAN; 6];
    let mut best = (f64::NEG_INFINITY, f64::NAN);
    let mut chosen = Placed::NONE;
    for (place, orientation) in Orientation::ALL.iter().enumerate() {
        let place = place as f64;
        let Some(room) = rooms.get_mut(orientation.lay()) else {
            continue;
        };
        let is_chosen = place == fit.orientation;
        if room.is_nan() || is_chosen {
            let placed = fit.placed(&inside, boxes, *orientation);
            *room = placed.room_mm;
            if is_chosen {
                chosen = placed;
            }
        }
        if orientation.is_allowed() && *room > best.0 {
            best = (*room, place);
        }
    }
    chosen.given(rooms, best.1).write(to);
    Ok(())
}

/// Where a heater has most room in one orientation.
struct Placed {
    room_mm: f64,
    /// How far it could be shifted along each axis.
    spare_mm: [f64; 3],
    /// Its low corner, without clearances.
    at_mm: [f64; 3],
    extent_mm: [f64; 3],
}

impl Placed {
    const NONE: Self = Self {
        room_mm: f64::NAN,
        spare_mm: [f64::NAN; 3],
        at_mm: [f64::NAN; 3],
        extent_mm: [f64::NAN; 3],
    };

    fn given(&self, rooms: [f64; 6], best: f64) -> FitGiven {
        FitGiven {
            room_xy_mm: rooms[0],
            room_xz_mm: rooms[1],
            room_yx_mm: rooms[2],
            room_yz_mm: rooms[3],
            room_zx_mm: rooms[4],
            room_zy_mm: rooms[5],
            best,
            room_mm: self.room_mm,
            spare_x_mm: self.spare_mm[0],
            spare_y_mm: self.spare_mm[1],
            spare_z_mm: self.spare_mm[2],
            at_x_mm: self.at_mm[0],
            at_y_mm: self.at_mm[1],
            at_z_mm: self.at_mm[2],
            extent_x_mm: self.extent_mm[0],
            extent_y_mm: self.extent_mm[1],
            extent_z_mm: self.extent_mm[2],
        }
    }
}

impl Fit {
    /// Its place in one orientation; clearances turn with the heater.
    fn placed(&self, inside: &Space, boxes: &[Space], orientation: Orientation) -> Placed {
        // Of each axis of the heater: its size, what it needs behind and before.
        let told = [
            [self.length_mm, self.intake_end_mm, self.outlet_end_mm],
            [self.width_mm, self.right_mm, self.left_mm],
            [self.height_mm, self.bottom_mm, self.top_mm],
        ];
        let (mut extent_mm, mut low_mm, mut total_mm) = ([0.0; 3], [0.0; 3], [0.0; 3]);
        for (way, [size, behind, before]) in orientation.axes().iter().zip(told) {
            let to = extent_mm.iter_mut().zip(&mut low_mm).zip(&mut total_mm);
            for (way, ((extent, low), total)) in way.iter().zip(to) {
                if *way != 0 {
                    *extent = size;
                    *low = if *way > 0 { behind } else { before };
                    *total = size + behind + before;
                }
            }
        }
        let (room_mm, space) = inside.roomiest(boxes, &total_mm);
        let spare_mm = add(space.size_mm(), total_mm.map(|t| -t));
        Placed {
            room_mm,
            spare_mm,
            at_mm: add(add(space.low, spare_mm.map(|s| 0.5 * s)), low_mm),
            extent_mm,
        }
    }
}

fn add(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
}
