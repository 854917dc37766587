//! Distances on a flat panel between what is cut and what lies there: boxes that may be turned and
//! have round corners, and upright boxes. Lengths in mm; right and up are positive.

/// A point, or the way from one to another: right, up.
pub type Point = [f64; 2];

/// Longer than any panel: how far something runs whose ends are not told.
pub const ENDLESS_MM: f64 = 1e5;

const fn minus(a: Point, b: Point) -> Point {
    [a[0] - b[0], a[1] - b[1]]
}

const fn dot(a: Point, b: Point) -> f64 {
    a[0] * b[0] + a[1] * b[1]
}

fn length(a: Point) -> f64 {
    libm::sqrt(dot(a, a))
}

/// An upright box; a point or a line where its ends are one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Upright {
    /// Left, bottom.
    pub low: Point,
    /// Right, top.
    pub high: Point,
}

impl Upright {
    fn nearest(&self, to: Point) -> Point {
        [
            to[0].max(self.low[0]).min(self.high[0]),
            to[1].max(self.low[1]).min(self.high[1]),
        ]
    }

    /// Left or right by the first bit, bottom or top by the second.
    fn corner(&self, which: u8) -> Point {
        let end = |bit: u8, low: f64, high: f64| if which & bit == 0 { low } else { high };
        [
            end(1, self.low[0], self.high[0]),
            end(2, self.low[1], self.high[1]),
        ]
    }
}

/// A box turned about its middle, with `round` more on every side: a rectangle with round corners,
/// or a circle where `half` is nothing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turned {
    /// Middle.
    pub middle: Point,
    /// Half its width and height, without `round`.
    pub half: Point,
    /// Cosine and sine of its turn, anticlockwise.
    pub turn: Point,
    /// What is added all round.
    pub round_mm: f64,
}

/// The gap between two shapes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gap {
    /// From edge to edge; below zero where they overlap: how far they would have to be moved.
    pub mm: f64,
    /// The nearest point of the turned shape; not numbers where they overlap.
    pub from: Point,
    /// The nearest point of the other.
    pub to: Point,
}

impl Gap {
    /// Of nothing to nothing.
    pub const ENDLESS: Self = Self::without_ends(f64::INFINITY);

    /// A gap whose ends are not known.
    #[must_use]
    pub const fn without_ends(mm: f64) -> Self {
        Self {
            mm,
            from: [f64::NAN; 2],
            to: [f64::NAN; 2],
        }
    }

    /// The smaller of two.
    fn or_between(self, from: Point, to: Point) -> Self {
        let mm = length(minus(from, to));
        if mm < self.mm {
            Self { mm, from, to }
        } else {
            self
        }
    }
}

impl Turned {
    /// A panel's point as the shape sees it.
    fn inwards(&self, p: Point) -> Point {
        let d = minus(p, self.middle);
        let [cos, sin] = self.turn;
        [dot(d, [cos, sin]), dot(d, [-sin, cos])]
    }

    /// A point of the shape on the panel.
    fn outwards(&self, [x, y]: Point) -> Point {
        let [cos, sin] = self.turn;
        let [mx, my] = self.middle;
        [mx + x * cos - y * sin, my + x * sin + y * cos]
    }

    fn own(&self) -> Upright {
        let [x, y] = self.half;
        Upright {
            low: [-x, -y],
            high: [x, y],
        }
    }

    /// Distance of its farthest point from `from`.
    #[must_use]
    pub fn reach_mm(&self, from: Point) -> f64 {
        let [x, y] = self.inwards(from);
        let [half_x, half_y] = self.half;
        length([x.abs() + half_x, y.abs() + half_y]) + self.round_mm
    }

    /// The gap to an upright box. Two convex shapes that don't overlap are nearest at a corner of
    /// one of them; two that do are parted soonest square to one of their sides.
    #[must_use]
    pub fn gap(&self, other: &Upright) -> Gap {
        let apart = self.parted_mm(other);
        if apart <= 0.0 {
            return Gap::without_ends(apart - self.round_mm);
        }
        let own = self.own();
        let mut least = Gap::ENDLESS;
        for which in 0..4 {
            let corner = self.outwards(own.corner(which));
            least = least.or_between(corner, other.nearest(corner));
            let corner = other.corner(which);
            let across = self.outwards(own.nearest(self.inwards(corner)));
            least = least.or_between(across, corner);
        }
        let mm = least.mm - self.round_mm;
        if mm <= 0.0 {
            return Gap::without_ends(mm);
        }
        let share = self.round_mm / least.mm;
        let [dx, dy] = minus(least.to, least.from);
        let [x, y] = least.from;
        Gap {
            mm,
            from: [x + share * dx, y + share * dy],
            to: least.to,
        }
    }

    /// How far apart the boxes lie square to that side of either where it is most; below zero
    /// where no side parts them.
    fn parted_mm(&self, other: &Upright) -> f64 {
        let [cos, sin] = self.turn;
        let sides = [[1.0, 0.0], [0.0, 1.0], [cos, sin], [-sin, cos]];
        let mut most = f64::NEG_INFINITY;
        for side in &sides {
            most = most.max(self.parted_along_mm(other, *side));
        }
        most
    }

    fn parted_along_mm(&self, other: &Upright, side: Point) -> f64 {
        let [cos, sin] = self.turn;
        // Twice the middle, and twice half the size.
        let sum = minus(other.high, [-other.low[0], -other.low[1]]);
        let size = minus(other.high, other.low);
        let way = [0.5 * sum[0] - self.middle[0], 0.5 * sum[1] - self.middle[1]];
        let own = (dot(side, [cos, sin]) * self.half[0]).abs()
            + (dot(side, [-sin, cos]) * self.half[1]).abs();
        let theirs = 0.5 * ((side[0] * size[0]).abs() + (side[1] * size[1]).abs());
        dot(side, way).abs() - own - theirs
    }
}
