//! What would settle a check: how far to move the part so that a reading again would prove it.

use crate::bounded::bounded;
use crate::budget::{Budget, coverage_factor, least_factor};
use crate::check::off_plumb_deg;
use crate::decision::{Measured, Verdict, Why};
use crate::limits::Limit;
use crate::parts::Quantity;
use crate::trig::sin_deg;
use core::f32::consts::SQRT_2;

/// One-sided 95 % of a normal, for what differs between two readings (scipy `norm.ppf(0.95)`).
const ONE_SIDED: f32 = 1.645;
/// Length that a height difference is given over where the part's own was not entered, mm.
const DEFAULT_LENGTH_MM: f32 = 100.0;
/// Advice is rounded up to this, degrees: nobody sets a part finer.
const ADVICE_STEP_DEG: f32 = 0.1;

/// What kind of advice it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
#[non_exhaustive]
pub enum AdviceKind {
    /// Nothing to do.
    None,
    /// Move it: a reading again would then prove it.
    Move,
    /// Within; moved so far it would also lie in the preferred band.
    MoveToPreferred,
    /// The limits are closer together than this reading's interval: no move can prove it.
    TooNarrow,
    /// Enter the limit from the heater's manual.
    EnterLimit,
    /// Enter the allowance from the heater's manual, or move it as said.
    EnterAllowance,
    /// Look again which end is lower, and which way round the phone lies.
    CheckEnds,
}

impl AdviceKind {
    /// All kinds, in the order of their codes, from 0.
    pub const ALL: [Self; 7] = [
        Self::None,
        Self::Move,
        Self::MoveToPreferred,
        Self::TooNarrow,
        Self::EnterLimit,
        Self::EnterAllowance,
        Self::CheckEnds,
    ];
}

/// What to do next.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Advice {
    /// The kind.
    pub kind: AdviceKind,
    /// By how much the value must change, degrees; for an elevation, positive raises the head end.
    pub turn_deg: Option<f32>,
    /// By how much the head end rises over `over_mm`, mm.
    pub rise_mm: Option<f32>,
    /// Length that the rise is for, mm.
    pub over_mm: Option<f32>,
}

impl Advice {
    /// Nothing to do.
    pub const NONE: Self = Self::only(AdviceKind::None);

    const fn only(kind: AdviceKind) -> Self {
        Self {
            kind,
            turn_deg: None,
            rise_mm: None,
            over_mm: None,
        }
    }
}

/// Advice for a check that has been decided. `after` is the budget to expect of a reading after
/// the move ([`Budget::after_a_move`]).
#[must_use]
#[inline(never)]
pub fn advise(
    verdict: Verdict,
    why: Option<Why>,
    measured: &Measured,
    limit: &Limit,
    after: &Budget,
) -> Advice {
    let kind = match (verdict, why) {
        (_, Some(Why::LimitNotEntered)) => return Advice::only(AdviceKind::EnterLimit),
        (_, Some(Why::EndsDisagree | Why::EndNotTold)) => {
            return Advice::only(AdviceKind::CheckEnds);
        }
        (_, Some(Why::RollUndefined)) | (Verdict::None, _) => {
            return Advice::NONE;
        }
        (_, Some(Why::AllowanceNotEntered)) => AdviceKind::EnterAllowance,
        (Verdict::Within, None) => AdviceKind::MoveToPreferred,
        (Verdict::Beyond | Verdict::NotProven, None) => AdviceKind::Move,
    };
    let value = measured.near(limit.permitted_deg());
    let preferred = limit.preferred_deg();
    if kind == AdviceKind::MoveToPreferred
        && preferred.is_none_or(|(low, high)| {
            // Where the interval reaches the band, this reading can't say that it is outside.
            value + measured.u_deg >= low && value - measured.u_deg <= high
        })
    {
        return Advice::NONE;
    }
    match target_deg(value, measured.quantity, limit, after) {
        Some(target) => towards(kind, value, target, measured.quantity, limit.length_mm),
        None if kind == AdviceKind::Move => Advice::only(AdviceKind::TooNarrow),
        None => Advice::only(kind),
    }
}

/// The nearest value from which a reading again would prove the limit, in the preferred band
/// where that is possible.
fn target_deg(value: f32, quantity: Quantity, limit: &Limit, after: &Budget) -> Option<f32> {
    let range = quantity.range_deg();
    let permitted = limit.permitted_deg();
    let reach = |guard: f32| {
        let low = (permitted.0 + guard).max(range.0);
        let high = (permitted.1 - guard).min(range.1);
        let (low, high) = match limit.preferred_deg() {
            Some((p_low, p_high)) if p_low.max(low) <= p_high.min(high) => {
                (p_low.max(low), p_high.min(high))
            }
            _ => (low, high),
        };
        (low <= high).then(|| bounded(value, low, high))
    };
    let combined = after.combined_deg();
    let repeat = ONE_SIDED * SQRT_2 * after.repeat_deg();
    let factor = coverage_factor(after.rectangle_deg, combined);
    let first = reach(factor * combined + repeat)?;
    let least = least_factor(off_plumb_deg(quantity, first), combined);
    if least <= factor {
        return Some(first);
    }
    reach(least * combined + repeat)
}

fn towards(
    kind: AdviceKind,
    value: f32,
    target: f32,
    quantity: Quantity,
    length_mm: Option<f32>,
) -> Advice {
    let exact = target - value;
    let steps = libm::ceilf(exact.abs() / ADVICE_STEP_DEG - 1e-3);
    let turn = libm::copysignf(steps * ADVICE_STEP_DEG, exact);
    let height = |deg: f32| match quantity {
        Quantity::Elevation => Some(sin_deg(deg)),
        Quantity::OffPlumb => Some(sin_deg(90.0 - deg)),
        Quantity::Roll => None,
    };
    let over_mm = length_mm.unwrap_or(DEFAULT_LENGTH_MM);
    let rise_mm = height(value + turn)
        .zip(height(value))
        .map(|(to, from)| over_mm * (to - from));
    Advice {
        kind,
        turn_deg: Some(turn),
        rise_mm,
        over_mm: rise_mm.map(|_| over_mm),
    }
}
