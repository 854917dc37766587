//! What a cut plan is told and what it gives: see [`super::cut`].
//!
//! Right and up are as seen from the face that the pilot hole was drilled from, the near face. What
//! lies on the far face is told as seen from there, where right and left have changed places.

use crate::plan::kind::{Kind, Unit};
use crate::plan::row::row;

const OFFSET: Kind = Kind::tape(-3000.0, 3000.0);
/// A mark set by rule and punch beside the pilot hole: 1 mm (assumed).
const MARK: Kind = Kind::new(Unit::Mm, -3000.0, 3000.0).give_or_take(1.0, 0.002);
const SIDE: Kind = Kind::new(Unit::Mm, 5.0, 2000.0).give_or_take(0.5, 0.002);
/// How far a drill goes sideways for each mm that it goes in. By hand within 3° of square
/// (assumed).
const LEAN: Kind = Kind::new(Unit::Ratio, -0.5, 0.5).give_or_take(0.05, 0.0);
const RESULT: Kind = Kind::result(Unit::Mm);

row! {
    /// The cut and its plate. The cut is a rectangle, or up to four round holes, or both; they turn
    /// together about the middle of the cut. Of the plate, everything or nothing.
    Cut {
        /// Thickness of the panel.
        panel_mm: Kind::new(Unit::Mm, 0.3, 300.0).give_or_take(0.5, 0.0),
        /// How far the pilot drill went to the right for each mm of panel.
        lean_right: LEAN,
        /// How far it went up.
        lean_up: LEAN,
        /// How far the edge as cut lies outside its line. A hand-led saw: 0 ± 1.5 mm (assumed).
        wander_mm: Kind::new(Unit::Mm, -2.0, 20.0).give_or_take(1.5, 0.0),
        /// Middle of the cut, right of the pilot hole.
        middle_right_mm: MARK,
        /// Middle of the cut, above the pilot hole.
        middle_up_mm: MARK,
        /// Turn of the cut, anticlockwise.
        turn_deg: Kind::new(Unit::Deg, -180.0, 180.0).give_or_take(1.0, 0.0),
        /// Width of the rectangle.
        width_mm: SIDE.or_none(),
        /// Its height.
        height_mm: SIDE.or_none(),
        /// Radius of its corners.
        corner_mm: Kind::new(Unit::Mm, 0.0, 1000.0).give_or_take(0.5, 0.0).or_none(),
        /// First round hole: diameter.
        a_diameter_mm: SIDE.or_none(),
        /// Right of the middle of the cut.
        a_right_mm: MARK.or_none(),
        /// Above the middle of the cut.
        a_up_mm: MARK.or_none(),
        /// Second round hole: diameter.
        b_diameter_mm: SIDE.or_none(),
        /// Right of the middle.
        b_right_mm: MARK.or_none(),
        /// Above the middle.
        b_up_mm: MARK.or_none(),
        /// Third round hole: diameter.
        c_diameter_mm: SIDE.or_none(),
        /// Right of the middle.
        c_right_mm: MARK.or_none(),
        /// Above the middle.
        c_up_mm: MARK.or_none(),
        /// Fourth round hole: diameter.
        d_diameter_mm: SIDE.or_none(),
        /// Right of the middle.
        d_right_mm: MARK.or_none(),
        /// Above the middle.
        d_up_mm: MARK.or_none(),
        /// Width of the plate.
        plate_width_mm: SIDE.or_none(),
        /// Its height.
        plate_height_mm: SIDE.or_none(),
        /// Its middle, right of the middle of the cut.
        plate_right_mm: MARK.or_none(),
        /// Its middle, above the middle of the cut.
        plate_up_mm: MARK.or_none(),
        /// Width that the seal needs all round the cut.
        seal_mm: Kind::new(Unit::Mm, 0.0, 200.0).give_or_take(0.5, 0.0).or_none(),
    }
}

row! {
    /// Something on one face, told from the pilot hole: by right and up, to its far side where it
    /// has one (only one of right and up told: it runs on past the cut); or by distance and
    /// direction; or by distance alone, and then it may lie in any direction.
    Obstacle {
        /// 0 near face, 1 far face.
        face: Kind::choice(2),
        /// Right of the pilot hole, seen from its face.
        right_mm: OFFSET.or_none(),
        /// Above the pilot hole.
        up_mm: OFFSET.or_none(),
        /// As far right as this.
        right_to_mm: OFFSET.or_none(),
        /// As far up as this.
        up_to_mm: OFFSET.or_none(),
        /// Distance from the middle of the pilot hole.
        distance_mm: Kind::tape(0.0, 3000.0).or_none(),
        /// Its direction, anticlockwise from right, seen from its face.
        direction_deg: Kind::new(Unit::Deg, -360.0, 360.0).give_or_take(3.0, 0.0).or_none(),
    }
}

row! {
    /// The cut as a whole.
    CutGiven {
        /// Farthest point of the cut from the pilot hole: both faces are looked at beyond that.
        reach_mm: RESULT,
        /// What the plate has left beyond the cut and the seal where it has least.
        seal_spare_mm: RESULT,
    }
}

row! {
    /// One obstacle, seen from the near face.
    ObstacleGiven {
        /// From the edge of the cut; below zero: in the cut.
        gap_mm: RESULT,
        /// From the edge of the plate, on the near face; below zero: under the plate.
        plate_gap_mm: RESULT,
        /// Its left side.
        left_mm: RESULT,
        /// Its right side.
        right_mm: RESULT,
        /// Its bottom.
        bottom_mm: RESULT,
        /// Its top.
        top_mm: RESULT,
        /// The cut's nearest point, right of the pilot hole.
        from_right_mm: RESULT,
        /// Above it.
        from_up_mm: RESULT,
        /// The obstacle's nearest point, right of the pilot hole.
        to_right_mm: RESULT,
        /// Above it.
        to_up_mm: RESULT,
    }
}
