//! Where a fan and its ducts settle: the flow at which the fan gives what the ducts cost. The
//! fan's curve is told by two to five points, straight between them; beyond them nothing is told.

use super::air;
use super::bound::BoundId;
use super::duct::{Air, DuctAir};
use super::kind::{Kind, Problem, Refusal, Unit};
use super::piece::SPREAD;
use super::row::{Row, row};
use super::run;
use super::sheets::Checked;

/// Points of a curve.
pub const POINTS: usize = 5;

const FLOW: Kind = Kind::new(Unit::M3PerH, 0.0, 3000.0).give_or_take(0.0, 0.05);
const PRESSURE: Kind = Kind::new(Unit::Pa, 0.0, 5000.0).give_or_take(0.0, 0.05);

row! {
    /// The air as in [`DuctAir`], then the fan: points by rising flow and falling pressure.
    FanAir {
        /// Volume at which `other_loss_pa` is told.
        flow_m3_per_h: Kind::new(Unit::M3PerH, 5.0, 2000.0).give_or_take(0.0, 0.1),
        /// Heat that goes into the air.
        power_w: Kind::new(Unit::W, 0.0, 30_000.0).give_or_take(0.0, 0.1),
        /// Air that the heater draws in.
        inlet_celsius: Kind::new(Unit::Celsius, -40.0, 60.0).give_or_take(2.0, 0.0),
        /// Height above the sea; the half-width is the weather's.
        altitude_m: Kind::new(Unit::M, -430.0, 6000.0).give_or_take(250.0, 0.0),
        /// What else the air must pass: grows with the square of the flow.
        other_loss_pa: Kind::new(Unit::Pa, 0.0, 2000.0).give_or_take(0.0, 0.3).or_none(),
        /// Place of the true loss within the spread of all fittings: 0, by definition.
        fittings_spread: SPREAD,
        /// The same for all flexible ducts.
        flexible_spread: SPREAD,
        /// Density at which the curve was measured; 1.2 kg/m³ is usual. Pressure goes with it.
        curve_density_kg_per_m3: Kind::new(Unit::KgPerM3, 0.5, 2.0),
        /// First point.
        flow_1_m3_per_h: FLOW,
        /// First point.
        pressure_1_pa: PRESSURE,
        /// Second point.
        flow_2_m3_per_h: FLOW,
        /// Second point.
        pressure_2_pa: PRESSURE,
        /// Third point.
        flow_3_m3_per_h: FLOW.or_none(),
        /// Third point.
        pressure_3_pa: PRESSURE.or_none(),
        /// Fourth point.
        flow_4_m3_per_h: FLOW.or_none(),
        /// Fourth point.
        pressure_4_pa: PRESSURE.or_none(),
        /// Fifth point.
        flow_5_m3_per_h: FLOW.or_none(),
        /// Fifth point.
        pressure_5_pa: PRESSURE.or_none(),
    }
}

/// Passes over the pieces after the first.
const STEPS: usize = 2;
/// Place of the first point's flow.
const FIRST: usize = 8;

row! {
    /// Where they settle; none where the curve's points don't reach that far.
    FanGiven {
        /// Volume that the heater draws in, layout A.
        flow_a_m3_per_h: Kind::result(Unit::M3PerH),
        /// What the ducts cost then.
        loss_a_pa: Kind::result(Unit::Pa),
        /// Heated air.
        outlet_air_a_celsius: Kind::result(Unit::Celsius),
        /// The same for layout B.
        flow_b_m3_per_h: Kind::result(Unit::M3PerH),
        /// Cost.
        loss_b_pa: Kind::result(Unit::Pa),
        /// Heated air.
        outlet_air_b_celsius: Kind::result(Unit::Celsius),
        /// B less A.
        flow_difference_m3_per_h: Kind::result(Unit::M3PerH),
    }
}

/// Flow against what the heater needs, temperature against what it may have.
pub const CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::AirFlow),
    Checked::new(2, BoundId::OutletAir),
    Checked::new(3, BoundId::AirFlow),
    Checked::new(5, BoundId::OutletAir),
];

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
    fn middle_m3_per_h(&self) -> f64 {
        let ends = self
            .pairs()
            .fold((f64::NAN, f64::NAN), |(low, _), (from, to)| {
                (low.min(from.0), to.0)
            });
        0.5 * (ends.0 + ends.1)
    }

    /// Flow at which it meets a loss that falls nowhere; `None` where it does not. By false
    /// position in the one stretch where the difference changes sign (Illinois), 1e-9 of the
    /// flow at most.
    #[must_use]
    pub fn meets(&self, loss_pa: &dyn Fn(f64) -> f64) -> Option<f64> {
        self.pairs().find_map(|(from, to)| {
            let slope = (to.1 - from.1) / (to.0 - from.0);
            let left_over = |flow: f64| from.1 + slope * (flow - from.0) - loss_pa(flow);
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

/// What the ducts of a layout cost at a flow; `None` without pieces or where the air gets too hot.
fn loss_pa(x: &[f64], layout: f64, told: &DuctAir, flow: f64) -> Result<Option<f64>, Refusal> {
    let Some(air) = Air::drawn(told, flow) else {
        return Ok(None);
    };
    let faster = flow / told.flow_m3_per_h;
    let told = DuctAir {
        other_loss_pa: told.other_loss_pa * faster * faster,
        ..*told
    };
    let total = run::layout(x, FanAir::KINDS.len(), layout, &told, &air, &mut |_, _| ())?;
    Ok((total.loss_pa > 0.0).then_some(total.loss_pa))
}

/// Flow through the ducts of a layout, m³/h, and its loss. The loss goes with a power of the flow,
/// near enough for a step: from the middle of the curve with 2, then with the power found.
fn settled(
    x: &[f64],
    layout: f64,
    told: &DuctAir,
    curve: &Curve,
) -> Result<Option<(f64, f64)>, Refusal> {
    let (mut flow, mut power) = (curve.middle_m3_per_h(), 2.0);
    let Some(mut at_pa) = loss_pa(x, layout, told, flow)? else {
        return Ok(None);
    };
    for _ in 0..STEPS {
        let like = |q: f64| at_pa * libm::exp(power * libm::log(q / flow));
        let Some(next) = curve.meets(&like) else {
            return Ok(None);
        };
        let Some(next_pa) = loss_pa(x, layout, told, next)? else {
            return Ok(None);
        };
        let apart = libm::log(next / flow);
        if apart.abs() > 1e-3 {
            power = libm::log(next_pa / at_pa) / apart;
        }
        (flow, at_pa) = (next, next_pa);
    }
    Ok(Some((flow, at_pa)))
}

/// Fan and ducts, see [`FanAir`]; rows are pieces as in [`super::duct`].
///
/// # Errors
/// A curve that does not fall, and what [`super::duct::ducts`] refuses.
pub fn fan_duty(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let told = DuctAir::read(x);
    let fan = FanAir::read(x);
    let density = air::density_kg_per_m3(told.inlet_celsius, air::pressure_pa(told.altitude_m));
    let points = x.get(FIRST..FanAir::KINDS.len()).unwrap_or_default();
    let curve = Curve::new(points, density / fan.curve_density_kg_per_m3)
        .map_err(|(place, problem)| Refusal::at(FIRST + place, problem))?;
    let duty = |layout| -> Result<[f64; 3], Refusal> {
        let Some((flow, loss)) = settled(x, layout, &told, &curve)? else {
            return Ok([f64::NAN; 3]);
        };
        let outlet = Air::drawn(&told, flow).map_or(f64::NAN, |a| a.outlet_celsius);
        Ok([flow, loss, outlet])
    };
    let ([flow_a, loss_a, outlet_a], [flow_b, loss_b, outlet_b]) = (duty(run::A)?, duty(run::B)?);
    FanGiven {
        flow_a_m3_per_h: flow_a,
        loss_a_pa: loss_a,
        outlet_air_a_celsius: outlet_a,
        flow_b_m3_per_h: flow_b,
        loss_b_pa: loss_b,
        outlet_air_b_celsius: outlet_b,
        flow_difference_m3_per_h: flow_b - flow_a,
    }
    .write(to);
    Ok(())
}
