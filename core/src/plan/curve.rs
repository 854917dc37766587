//! A fan's curve by its points, and where a loss meets it.

use super::kind::Problem;

/// Points of a curve at most.
pub const POINTS: usize = 5;

/// A fan's curve: points of flow in m³/h and pressure in Pa; what is left over is not a number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Curve {
    points: [(f64, f64); POINTS],
}

impl Curve {
    /// A curve of the points, their pressures at `density` over the density of the curve.
    ///
    /// # Errors
    /// Place among the points' numbers: a point left out; a flow that does not rise, a pressure
    /// that does not fall.
    pub fn new(points: &[f64], density: f64) -> Result<Self, (usize, Problem)> {
        let mut curve = Self {
            points: [(f64::NAN, f64::NAN); POINTS],
        };
        let mut last = (f64::NEG_INFINITY, f64::INFINITY);
        let mut ended = false;
        for (i, (to, point)) in curve
            .points
            .iter_mut()
            .zip(points.chunks_exact(2))
            .enumerate()
        {
            let &[flow, pressure] = point else { continue };
            if flow.is_nan() && pressure.is_nan() {
                ended = true;
                continue;
            }
            let missing = if ended || flow.is_nan() {
                Some((2 * i, Problem::Missing))
            } else if pressure.is_nan() {
                Some((2 * i + 1, Problem::Missing))
            } else {
                None
            };
            let wrong = if flow <= last.0 {
                Some((2 * i, Problem::Contradiction))
            } else if pressure >= last.1 {
                Some((2 * i + 1, Problem::Contradiction))
            } else {
                None
            };
            if let Some(refused) = missing.or(wrong) {
                return Err(refused);
            }
            last = (flow, pressure);
            *to = (flow, pressure * density);
        }
        Ok(curve)
    }

    fn pairs(&self) -> impl Iterator<Item = ((f64, f64), (f64, f64))> + '_ {
        let next = self.points.iter().skip(1);
        let pairs = self.points.iter().copied().zip(next.copied());
        pairs.filter(|(_, to)| !to.0.is_nan())
    }

    /// Flow in the middle of it.
    #[must_use]
    pub fn middle_m3_per_h(&self) -> f64 {
        let ends = self
            .pairs()
            .fold((f64::NAN, f64::NAN), |(low, _), (from, to)| {
                (low.min(from.0), to.0)
            });
        0.5 * (ends.0 + ends.1)
    }

    /// Flow at which it meets a loss that is `loss_pa` at `flow` and goes with a power of it;
    /// `None` where it does not. By false position in the one stretch where the difference changes
    /// sign (Illinois), to 1e-9 of the flow.
    #[must_use]
    pub fn meets(&self, loss_pa: f64, flow: f64, power: f64) -> Option<f64> {
        let lost = |q: f64| loss_pa * libm::exp(power * libm::log(q / flow));
        self.pairs().find_map(|(from, to)| {
            let slope = (to.1 - from.1) / (to.0 - from.0);
            let left_over = |flow: f64| from.1 + slope * (flow - from.0) - lost(flow);
            settle(from.0, to.0, &left_over)
        })
    }
}

/// Root of a falling function between `low` and `high`, or `None`.
fn settle(mut low: f64, mut high: f64, left_over: &dyn Fn(f64) -> f64) -> Option<f64> {
    let (mut over, mut under) = (left_over(low), left_over(high));
    if over.is_nan() || under.is_nan() || over < 0.0 || under > 0.0 {
        return None;
    }
    let close = 1e-9 * high;
    let mut kept = 0;
    for _ in 0..60 {
        let flow = (low * under - high * over) / (under - over);
        let here = left_over(flow);
        if here.abs() < 1e-12 || high - low < close {
            return Some(flow);
        }
        if here > 0.0 {
            (low, over) = (flow, here);
            under *= if kept > 0 { 0.5 } else { 1.0 };
            kept = 1;
        } else {
            (high, under) = (flow, here);
            over *= if kept < 0 { 0.5 } else { 1.0 };
            kept = -1;
        }
    }
    Some(0.5 * (low + high))
}
