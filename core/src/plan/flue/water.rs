//! Where water stays in a pipe: which way it leaves each leg, and how deep it can stand at a low
//! point. The heater is a closed end: what stands against it has no way out there.

/// A leg as water sees it, in order from the heater.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slope {
    /// How much higher its end lies than its start, mm.
    pub rise_mm: f64,
    /// Whether water leaves by a drain where it starts.
    pub drained: bool,
}

impl Slope {
    /// A leg that is none.
    pub const NONE: Self = Self {
        rise_mm: 0.0,
        drained: false,
    };
}

/// How high this leg, by itself, holds water back, mm: its rise against the way that water leaves
/// it, negative where water runs off. Water leaves towards the pipe's end; on a leg that rises from
/// a drain, and on those that rise after it, back to the drain. `back` says whether it ran back on
/// the leg before, and is told whether it does on this one.
///
/// It is linear in what is told of the leg, so its uncertainty is too; a pipe each of whose legs is
/// below 0 holds no water.
#[must_use]
pub fn standing_mm(leg: &Slope, back: &mut bool) -> f64 {
    *back = (*back || leg.drained) && leg.rise_mm > 0.0;
    if *back { -leg.rise_mm } else { leg.rise_mm }
}

/// Whether the pipe is lower where the legs `before` end and the legs `after` start than on both
/// sides, and has no drain there.
#[must_use]
pub fn is_low_point(before: &[Slope], after: &[Slope]) -> bool {
    let comes_down = before.last().is_none_or(|leg| leg.rise_mm <= 0.0);
    let goes_up = after
        .first()
        .is_some_and(|leg| leg.rise_mm > 0.0 && !leg.drained);
    comes_down && goes_up
}

/// How deep water can stand, mm, where the legs `before` end and the legs `after` start: as far as
/// the pipe rises on both sides, on each as far as its next drain; the end is open, the heater
/// closed. Not a number where none can.
#[must_use]
pub fn depth_mm(before: &[Slope], after: &[Slope]) -> f64 {
    let Some((first, rest)) = after.split_first() else {
        return f64::NAN;
    };
    if first.drained {
        return f64::NAN;
    }
    let (mut height, mut depth) = (first.rise_mm, first.rise_mm);
    for leg in rest.iter().take_while(|leg| !leg.drained) {
        height += leg.rise_mm;
        depth = depth.max(height);
    }
    let (mut height, mut back) = (0.0, 0.0_f64);
    for leg in before.iter().rev() {
        height -= leg.rise_mm;
        back = back.max(height);
        if leg.drained {
            depth = depth.min(back);
            break;
        }
    }
    if depth > 0.0 { depth } else { f64::NAN }
}
