//! Empty boxes among boxes, all of them square to one another: where a box of a given size has most
//! room round it.

/// A box, from its low to its high corner; mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Space {
    /// Lowest along each axis.
    pub low: [f64; 3],
    /// Highest.
    pub high: [f64; 3],
}

impl Space {
    /// A box that is none.
    pub const NOTHING: Self = Self {
        low: [0.0; 3],
        high: [0.0; 3],
    };

    /// How long it is along each axis.
    #[must_use]
    pub fn size_mm(&self) -> [f64; 3] {
        let ([a, b, c], [d, e, f]) = (self.low, self.high);
        [d - a, e - b, f - c]
    }

    /// The empty box among `boxes`, within this one, that leaves a thing of `size_mm` most room all
    /// round, and that room; below zero, as much is lacking.
    ///
    /// What avoids a box lies wholly on one of its six sides. So the search takes one box after the
    /// other and tries the six sides of each that is in the way, without thickness where there is none; a side that leaves less than the
    /// best so far is not followed.
    #[must_use]
    pub fn roomiest(&self, boxes: &[Self], size_mm: &[f64; 3]) -> (f64, Self) {
        let mut found = (f64::NEG_INFINITY, Self::NOTHING);
        self.search(boxes, size_mm, &mut found);
        found
    }

    fn search(self, boxes: &[Self], size_mm: &[f64; 3], found: &mut (f64, Self)) {
        let room = self.room_mm(size_mm);
        if room <= found.0 {
            return;
        }
        let mut rest = boxes;
        while let Some((first, others)) = rest.split_first() {
            rest = others;
            if first.overlaps(&self) {
                for axis in 0..3 {
                    let (low, high) = (self.low[axis], self.high[axis]);
                    let mut before = self;
                    before.high[axis] = first.low[axis].max(low).min(high);
                    before.search(rest, size_mm, found);
                    let mut after = self;
                    after.low[axis] = first.high[axis].min(high).max(low);
                    after.search(rest, size_mm, found);
                }
                return;
            }
        }
        *found = (room, self);
    }

    /// How much wider a thing in its middle could become on every side.
    fn room_mm(&self, size_mm: &[f64; 3]) -> f64 {
        let ([a, b, c], [d, e, f]) = (self.size_mm(), *size_mm);
        0.5 * (a - d).min(b - e).min(c - f)
    }

    fn overlaps(&self, other: &Self) -> bool {
        let below = |low: &[f64; 3], high: &[f64; 3]| low.iter().zip(high).all(|(l, h)| l < h);
        below(&self.low, &other.high) && below(&other.low, &self.high)
    }
}
