//! Whether the heater with its clearances finds room in a compartment, in which of the 24 square
//! orientations, and how much room is left.
//!
//! The measure is the room left all round: how much wider every clearance could be, at the best
//! place, before something is touched. Below zero, that much is lacking on every side. It changes
//! by no more than what is told changes, so the uncertainties of the tape carry over.

use super::bound::BoundId;
use super::kind::{Kind, Problem, Refusal, Unit};
use super::orientation::Orientation;
use super::row::{Row, row};
use super::sheets::Checked;
use super::space::Space;

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

/// Finds the room for every orientation, and where the chosen one has most.
///
/// # Errors
/// More boxes than [`MOST_BOXES`] ([`Problem::TooMany`], at the first that is one too many).
pub fn fit(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let (fixed, rows) = x.split_at_checked(Fit::KINDS.len()).unwrap_or_default();
    let fit = Fit::read(fixed);
    let mut boxes = [Space::NOTHING; MOST_BOXES];
    let Some(boxes) = boxes.get_mut(..rows.len() / InTheWay::KINDS.len()) else {
        let place = Fit::KINDS.len() + MOST_BOXES * InTheWay::KINDS.len();
        return Err(Refusal::at(place, Problem::TooMany));
    };
    for (i, row) in rows.chunks_exact(InTheWay::KINDS.len()).enumerate() {
        if let Some(to) = boxes.get_mut(i) {
            *to = InTheWay::read(row).space();
        }
    }
    let inside = fit.inside();
    let mut rooms = [f64::NAN; 6];
    let mut best = (f64::NEG_INFINITY, f64::NAN);
    for (place, orientation) in Orientation::ALL.into_iter().enumerate() {
        let Some(room) = rooms.get_mut(orientation.lay()) else {
            continue;
        };
        if room.is_nan() {
            *room = inside.roomiest(boxes, fit.needs(orientation).total_mm()).0;
        }
        if orientation.is_allowed() && *room > best.0 {
            best = (*room, place as f64);
        }
    }
    fit.given(boxes, rooms, best.1).write(to);
    Ok(())
}

/// What a heater needs along the axes of the compartment.
struct Needs {
    low_mm: [f64; 3],
    extent_mm: [f64; 3],
    high_mm: [f64; 3],
}

impl Needs {
    /// With its clearances.
    fn total_mm(&self) -> [f64; 3] {
        add(add(self.low_mm, self.extent_mm), self.high_mm)
    }
}

impl InTheWay {
    fn space(&self) -> Space {
        let low = [self.x_mm, self.y_mm, self.z_mm];
        let size = [self.size_x_mm, self.size_y_mm, self.size_z_mm];
        Space {
            low,
            high: add(low, size),
        }
    }
}

impl Fit {
    fn inside(&self) -> Space {
        Space {
            low: [0.0; 3],
            high: [self.inner_x_mm, self.inner_y_mm, self.inner_z_mm],
        }
    }

    /// Clearances turn with the heater.
    fn needs(&self, orientation: Orientation) -> Needs {
        let [x, y, z] = orientation.axes();
        // What of the heater's axes lies along each axis of the compartment.
        let along = [[x[0], y[0], z[0]], [x[1], y[1], z[1]], [x[2], y[2], z[2]]];
        let size = [self.length_mm, self.width_mm, self.height_mm];
        let ends = [
            (self.intake_end_mm, self.outlet_end_mm),
            (self.right_mm, self.left_mm),
            (self.bottom_mm, self.top_mm),
        ];
        let sum = |ways: [i8; 3], of: &dyn Fn(i8, (f64, f64), f64) -> f64| -> f64 {
            let each = ways.into_iter().zip(ends).zip(size);
            each.filter(|((way, _), _)| *way != 0)
                .map(|((way, ends), size)| of(way, ends, size))
                .sum()
        };
        Needs {
            low_mm: along.map(|w| sum(w, &|way, (low, high), _| if way > 0 { low } else { high })),
            extent_mm: along.map(|w| sum(w, &|_, _, size| size)),
            high_mm: along.map(|w| sum(w, &|way, (low, high), _| if way > 0 { high } else { low })),
        }
    }

    fn given(&self, boxes: &[Space], rooms: [f64; 6], best: f64) -> FitGiven {
        let chosen = Orientation::ALL.into_iter().zip(0u8..);
        let chosen = chosen.filter(|(_, i)| f64::from(*i) == self.orientation);
        let more = chosen.map(|(o, _)| self.placed(boxes, o)).next();
        let none = [f64::NAN; 3];
        let (room_mm, spare, at, extent) = more.unwrap_or((f64::NAN, none, none, none));
        FitGiven {
            room_xy_mm: rooms[0],
            room_xz_mm: rooms[1],
            room_yx_mm: rooms[2],
            room_yz_mm: rooms[3],
            room_zx_mm: rooms[4],
            room_zy_mm: rooms[5],
            best,
            room_mm,
            spare_x_mm: spare[0],
            spare_y_mm: spare[1],
            spare_z_mm: spare[2],
            at_x_mm: at[0],
            at_y_mm: at[1],
            at_z_mm: at[2],
            extent_x_mm: extent[0],
            extent_y_mm: extent[1],
            extent_z_mm: extent[2],
        }
    }

    /// Room, spare each way, best place and extent of the heater in one orientation.
    fn placed(
        &self,
        boxes: &[Space],
        orientation: Orientation,
    ) -> (f64, [f64; 3], [f64; 3], [f64; 3]) {
        let needs = self.needs(orientation);
        let total = needs.total_mm();
        let (room, space) = self.inside().roomiest(boxes, total);
        let spare = add(space.size_mm(), total.map(|t| -t));
        let at = add(add(space.low, spare.map(|s| 0.5 * s)), needs.low_mm);
        (room, spare, at, needs.extent_mm)
    }
}

fn add(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
}
