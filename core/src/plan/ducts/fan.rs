//! Where a fan and its ducts settle: the flow at which the fan gives what the ducts cost. The
//! fan's curve is told by two to five points, straight between them; beyond them nothing is told.

use crate::plan::kind::Problem;

/// Numbers of a curve: flow in m³/h and pressure in Pa of each of its points, by rising flow. What
/// is left over is not a number.
pub const NUMBERS: usize = 10;

/// Checks a curve; one that is not told at all is fine.
///
/// # Errors
/// Place of a number that is left out, though one after it or beside it is told; of a flow that
/// does not rise, of a pressure that does not fall.
pub fn check(curve: &[f64]) -> Result<(), (usize, Problem)> {
    let told = curve.iter().rposition(|number| !number.is_nan());
    let Some(last) = told else {
        return Ok(());
    };
    // Two points at least, and no half one.
    let needed = (last | 1).max(3);
    for (place, number) in curve.iter().enumerate().take(needed + 1) {
        if number.is_nan() {
            return Err((place, Problem::Missing));
        }
    }
    for (place, (before, number)) in curve.iter().zip(curve.iter().skip(2)).enumerate() {
        let wrong = if place % 2 == 0 {
            number <= before
        } else {
            number >= before
        };
        if wrong {
            return Err((place + 2, Problem::Contradiction));
        }
    }
    Ok(())
}

/// Flow in m³/h at which a fan with the curve, its pressures times `density`, meets a loss that is
/// `loss_pa` at `flow` and goes with a power of it, Δp = loss·(q/flow)^power: the root of what is left
/// over, by false position. Not a number where the curve does not reach.
#[must_use]
pub fn meets(curve: &[f64], density: f64, loss_pa: f64, flow: f64, power: f64) -> f64 {
    let lost = |q: f64| loss_pa * libm::exp(power * libm::log(q / flow));
    for stretch in curve.windows(4).step_by(2) {
        let &[from, high_pa, to, low_pa] = stretch else {
            continue;
        };
        let slope = (low_pa - high_pa) / (to - from);
        let left_over = |q: f64| density * (high_pa + slope * (q - from)) - lost(q);
        if left_over(from) >= 0.0 && left_over(to) <= 0.0 {
            return settle(from, to, &left_over);
        }
    }
    f64::NAN
}

/// Root between `low` and `high` of a function that falls from one to the other: false position,
/// the end that stays halved (Illinois).
fn settle(mut low: f64, mut high: f64, left_over: &dyn Fn(f64) -> f64) -> f64 {
    let (mut over, mut under) = (left_over(low), left_over(high));
    let mut flow = low;
    let mut rose = None;
    for _ in 0..40 {
        flow = (low * under - high * over) / (under - over);
        let here = left_over(flow);
        if here.abs() < 1e-9 {
            break;
        }
        let rises = here > 0.0;
        let twice = if rose == Some(rises) { 0.5 } else { 1.0 };
        if rises {
            (low, over) = (flow, here);
            under *= twice;
        } else {
            (high, under) = (flow, here);
            over *= twice;
        }
        rose = Some(rises);
    }
    flow
}
