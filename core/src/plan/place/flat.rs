//! Distances on a flat panel between boxes that may be turned and have round corners. Lengths in mm;
//! right and up are positive. A box that is not there is [`Turned::NONE`]: what is told of it is not
//! a number, which smallest and largest values pass over.

/// A point, or the way from one to another: right, up.
pub type Point = [f64; 2];

/// No point.
pub const NOWHERE: Point = [f64::NAN; 2];

/// Longer than any panel: how far something runs whose ends are not told.
pub const ENDLESS_MM: f64 = 1e5;

const fn minus(a: Point, b: Point) -> Point {
    [a[0] - b[0], a[1] - b[1]]
}

const fn dot(a: Point, b: Point) -> f64 {
    a[0] * b[0] + a[1] * b[1]
}

#[inline(never)]
fn length(a: Point) -> f64 {
    libm::sqrt(dot(a, a))
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
    /// The nearest point of the one; none where they overlap.
    pub from: Point,
    /// The nearest point of the other.
    pub to: Point,
}

impl Gap {
    /// A gap between no points.
    #[must_use]
    pub const fn of(mm: f64) -> Self {
        Self {
            mm,
            from: NOWHERE,
            to: NOWHERE,
        }
    }

    #[inline(never)]
    fn or_nearer(&mut self, from: Point, to: Point) {
        let mm = length(minus(to, from));
        if mm < self.mm {
            *self = Self { mm, from, to };
        }
    }
}

impl Turned {
    /// No box.
    pub const NONE: Self = Self {
        middle: NOWHERE,
        half: NOWHERE,
        turn: NOWHERE,
        round_mm: f64::NAN,
    };

    /// An upright box with sharp corners; a point or a line where `half` is nothing.
    #[must_use]
    pub const fn upright(middle: Point, half: Point) -> Self {
        Self {
            middle,
            half,
            turn: [1.0, 0.0],
            round_mm: 0.0,
        }
    }

    /// A way on the panel as the box sees it.
    fn inwards(&self, way: Point) -> Point {
        let [cos, sin] = self.turn;
        [dot(way, [cos, sin]), dot(way, [-sin, cos])]
    }

    /// A point of the box on the panel.
    #[inline(never)]
    #[must_use]
    pub fn outwards(&self, [x, y]: Point) -> Point {
        let [cos, sin] = self.turn;
        let [mx, my] = self.middle;
        [mx + x * cos - y * sin, my + x * sin + y * cos]
    }

    fn corners(&self) -> [Point; 4] {
        let [x, y] = self.half;
        [[x, y], [-x, y], [x, -y], [-x, -y]].map(|p| self.outwards(p))
    }

    /// Distance of its farthest point from `from`.
    #[must_use]
    pub fn reach_mm(&self, from: Point) -> f64 {
        let [x, y] = self.inwards(minus(from, self.middle));
        let [w, h] = self.half;
        length([x.abs() + w, y.abs() + h]) + self.round_mm
    }

    /// Its point that is nearest, `round` left out.
    #[inline(never)]
    fn nearest(&self, to: Point) -> Point {
        let [x, y] = self.inwards(minus(to, self.middle));
        let [w, h] = self.half;
        self.outwards([x.max(-w).min(w), y.max(-h).min(h)])
    }

    /// The gap to a box with sharp corners. Two convex shapes that don't overlap are nearest at a
    /// corner of one of them; two that do are parted soonest square to one of their sides.
    #[must_use]
    pub fn gap(&self, other: &Self) -> Gap {
        let apart = self.parted_mm(other);
        if apart <= 0.0 {
            return Gap::of(apart - self.round_mm);
        }
        let mut gap = Gap::of(f64::INFINITY);
        for corner in &self.corners() {
            gap.or_nearer(*corner, other.nearest(*corner));
        }
        for corner in &other.corners() {
            gap.or_nearer(self.nearest(*corner), *corner);
        }
        let mm = gap.mm - self.round_mm;
        if mm > 0.0 {
            let share = self.round_mm / gap.mm;
            let [dx, dy] = minus(gap.to, gap.from);
            let [x, y] = gap.from;
            let from = [x + share * dx, y + share * dy];
            Gap { mm, from, ..gap }
        } else {
            Gap::of(mm)
        }
    }

    /// How far apart the boxes lie square to that side of either where it is most; below zero
    /// where no side parts them.
    fn parted_mm(&self, other: &Self) -> f64 {
        let way = minus(other.middle, self.middle);
        let mut most = f64::NAN;
        for [cos, sin] in [self.turn, other.turn] {
            for side in [[cos, sin], [-sin, cos]] {
                let between = dot(side, way).abs() - self.half_along(side) - other.half_along(side);
                most = most.max(between);
            }
        }
        most
    }

    #[inline(never)]
    fn half_along(&self, side: Point) -> f64 {
        let [x, y] = self.inwards(side);
        (x * self.half[0]).abs() + (y * self.half[1]).abs()
    }
}
