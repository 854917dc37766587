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

    fn corners(&self) -> [Point; 4] {
        let ([left, bottom], [right, top]) = (self.low, self.high);
        [[left, bottom], [right, bottom], [right, top], [left, top]]
    }

    fn middle(&self) -> Point {
        [
            0.5 * (self.low[0] + self.high[0]),
            0.5 * (self.low[1] + self.high[1]),
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
    /// The two nearest points, on the turned shape and on the other; none where they overlap.
    pub between: Option<(Point, Point)>,
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

    fn corners(&self) -> [Point; 4] {
        self.own().corners().map(|p| self.outwards(p))
    }

    /// Distance of its farthest point from `from`.
    #[must_use]
    pub fn reach_mm(&self, from: Point) -> f64 {
        let far = self.corners().map(|c| length(minus(c, from)));
        far.into_iter().fold(0.0, f64::max) + self.round_mm
    }

    /// The gap to an upright box. Two convex shapes that don't overlap are nearest at a corner of
    /// one of them; two that do are parted soonest square to one of their sides.
    #[must_use]
    pub fn gap(&self, other: &Upright) -> Gap {
        let apart = self.parted_mm(other);
        if apart <= 0.0 {
            return Gap {
                mm: apart - self.round_mm,
                between: None,
            };
        }
        let own = self.corners().map(|c| (c, other.nearest(c)));
        let theirs = other
            .corners()
            .map(|c| (self.outwards(self.own().nearest(self.inwards(c))), c));
        let far = |&(a, b): &(Point, Point)| length(minus(a, b));
        let pairs = own.into_iter().chain(theirs);
        let (mm, between) = pairs.fold((f64::INFINITY, None), |best, pair| {
            let mm = far(&pair);
            if mm < best.0 { (mm, Some(pair)) } else { best }
        });
        let gap_mm = mm - self.round_mm;
        Gap {
            mm: gap_mm,
            between: between.filter(|_| gap_mm > 0.0).map(|(from, to)| {
                let share = self.round_mm / mm;
                let [dx, dy] = minus(to, from);
                ([from[0] + share * dx, from[1] + share * dy], to)
            }),
        }
    }

    /// How far apart the boxes lie square to that side of either where it is most; below zero
    /// where no side parts them.
    fn parted_mm(&self, other: &Upright) -> f64 {
        let way = minus(other.middle(), self.middle);
        let half = minus(other.high, other.middle());
        let [cos, sin] = self.turn;
        let along = |side: Point| {
            let own = (dot(side, [cos, sin]) * self.half[0]).abs()
                + (dot(side, [-sin, cos]) * self.half[1]).abs();
            let theirs = (side[0] * half[0]).abs() + (side[1] * half[1]).abs();
            dot(side, way).abs() - own - theirs
        };
        [[1.0, 0.0], [0.0, 1.0], [cos, sin], [-sin, cos]]
            .map(along)
            .into_iter()
            .fold(f64::NEG_INFINITY, f64::max)
    }
}
