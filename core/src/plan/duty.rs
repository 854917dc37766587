//! Where a layout of ducts and a fan settle.

use super::curve::Curve;
use super::duct::{Air, DuctAir};
use super::kind::Refusal;
use super::run::Pieces;

/// Passes over the pieces after the first.
const STEPS: usize = 3;

/// Where a layout settles.
#[derive(Debug, Clone, Copy)]
pub struct Duty {
    /// Volume that the heater draws in.
    pub flow_m3_per_h: f64,
    /// Loss.
    pub loss_pa: f64,
    /// Heated air.
    pub outlet_celsius: f64,
    /// The power of the flow with which the loss goes, near there.
    pub power: f64,
}

/// Nowhere.
pub const NO_DUTY: Duty = Duty {
    flow_m3_per_h: f64::NAN,
    loss_pa: f64::NAN,
    outlet_celsius: f64::NAN,
    power: f64::NAN,
};

impl Duty {
    /// At a flow.
    #[must_use]
    pub fn at(told: &DuctAir, flow: f64, loss_pa: f64, power: f64) -> Self {
        Self {
            flow_m3_per_h: flow,
            loss_pa,
            outlet_celsius: Air::drawn(told, flow).map_or(f64::NAN, |air| air.outlet_celsius),
            power,
        }
    }
}

/// What the ducts of a layout cost at a flow, each piece told to `each`; `None` without pieces or
/// where the air gets too hot.
fn loss_pa(
    pieces: Pieces,
    layout: f64,
    told: &DuctAir,
    flow: f64,
    each: &mut dyn FnMut(usize, f64),
) -> Result<Option<f64>, Refusal> {
    let Some(air) = Air::drawn(told, flow) else {
        return Ok(None);
    };
    let faster = flow / told.flow_m3_per_h;
    let mut sum = told.other_loss_pa.max(0.0) * faster * faster;
    for (place, piece) in pieces.each().enumerate() {
        if let Some(cost) = pieces.cost(layout, place, &piece, told, &air)? {
            each(place, cost.loss_pa);
            sum += cost.loss_pa;
        }
    }
    Ok((sum > 0.0).then_some(sum))
}

/// Where a layout settles, what each piece costs there told to `each`. The loss goes with a power of the flow, near enough for a step: from the
/// middle of the curve with 2, then with the power found.
///
/// # Errors
/// What [`super::duct::ducts`] refuses.
pub fn settled(
    pieces: Pieces,
    layout: f64,
    told: &DuctAir,
    curve: &Curve,
    each: &mut dyn FnMut(usize, f64),
) -> Result<Duty, Refusal> {
    let mut power = 2.0;
    let mut flow = curve.middle_m3_per_h();
    let Some(mut loss) = loss_pa(pieces, layout, told, flow, each)? else {
        return Ok(NO_DUTY);
    };
    for _ in 0..STEPS {
        let Some(next) = curve.meets(loss, flow, power) else {
            return Ok(NO_DUTY);
        };
        let Some(next_loss) = loss_pa(pieces, layout, told, next, each)? else {
            return Ok(NO_DUTY);
        };
        let apart = libm::log(next / flow);
        if apart.abs() > 1e-3 {
            power = libm::log(next_loss / loss) / apart;
        }
        (flow, loss) = (next, next_loss);
    }
    Ok(Duty::at(told, flow, loss, power))
}
