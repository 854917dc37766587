//! One check answered: the angle from the up vector, its budget, the verdict, what to do.

use crate::advice::{Advice, advise};
use crate::budget::{Budget, Contact, UpEstimate, coverage_factor, least_factor};
use crate::decision::{Measured, Verdict, Why, decide, margin_deg};
use crate::frames::{Rotation, elevation, roll_deg, roll_sensitivity, to_body, to_device};
use crate::limits::Limit;
use crate::parts::{Check, Quantity};
use crate::vector::{Vec3, cross, dot};

/// Largest combined standard uncertainty of a roll that is still an angle, degrees: three of it
/// are where the linear budget is 5 % short.
const ROLL_LOST_DEG: f32 = 6.0;

/// Nearer to plumb than this the error across the slope counts too, degrees; at 30° it bends an
/// elevation by less than a hundredth of its uncertainty.
const STEEP_DEG: f32 = 30.0;

/// Which end of the part looked lower.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum End {
    /// The end that the axis comes from.
    Tail,
    /// The end that the axis points to.
    Head,
    /// The eye can't tell, and there is no photo.
    CantTell,
    /// The eye can't tell; a photo with the arrow and the flow mark is kept instead.
    Photo,
}

impl End {
    /// All answers.
    pub const ALL: [Self; 4] = [Self::Tail, Self::Head, Self::CantTell, Self::Photo];
}

/// One check, answered.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Outcome {
    /// The check.
    pub check: Check,
    /// Value and uncertainty; `None` for a roll that can't be read.
    pub measured: Option<Measured>,
    /// Where the uncertainty comes from.
    pub budget: Budget,
    /// The answer.
    pub verdict: Verdict,
    /// What stands behind it, where it is not plain.
    pub why: Option<Why>,
    /// Left to the limit, or the excess, degrees.
    pub margin_deg: Option<f32>,
    /// Probability of conformance, for the record only.
    pub probability: Option<f32>,
    /// Whether the value lies in the preferred band, where there is one.
    pub in_preferred: Option<bool>,
    /// What to do next.
    pub advice: Advice,
}

/// One check decided: what is shown live. [`Outcome`] adds what is worth its cost once it is kept.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Decided {
    /// Value and uncertainty; `None` for a roll that can't be read.
    pub measured: Option<Measured>,
    /// Where the uncertainty comes from.
    pub budget: Budget,
    /// The answer.
    pub verdict: Verdict,
    /// What stands behind it, where it is not plain.
    pub why: Option<Why>,
    /// How the value answers to a change of up, body frame.
    sensitivity: Vec3,
}

/// What a check is answered from.
#[derive(Debug, Clone, Copy)]
pub struct Basis<'a> {
    /// The up vector of the channel in charge.
    pub up: &'a UpEstimate,
    /// The up vector of the other channel, where there is one.
    pub other_up: Option<Vec3>,
    /// From device to body.
    pub rotation: &'a Rotation,
    /// How the phone touches the part.
    pub contact: &'a Contact,
}

impl Basis<'_> {
    /// 1.5 times what the other channel differs by, degrees. The channels share zero, scale and
    /// hold: what they differ by is none of those.
    pub(crate) fn by_other_deg(&self, check: Check, value: f32) -> f32 {
        self.other_up.map_or(0.0, |other| {
            let difference = value_deg(check, to_body(self.rotation, other)) - value;
            1.5 * (difference - 360.0 * libm::roundf(difference / 360.0)).abs()
        })
    }
}

/// Decides `check` by `limit`. `end_told` is what the eye said, where it was asked.
#[must_use]
#[inline(never)]
pub fn decided(check: Check, from: &Basis<'_>, limit: &Limit, end_told: Option<End>) -> Decided {
    let device = |c_body: Vec3| to_device(from.rotation, c_body);
    let budget_of = |c: Vec3| Budget::new(from.up, from.contact, device(c));
    let up = to_body(from.rotation, from.up.up);
    let Some((mut measured, budget, sensitivity)) = measure(check, up, &budget_of) else {
        return Decided {
            measured: None,
            budget: budget_of([0.0; 3]),
            verdict: Verdict::None,
            why: Some(Why::RollUndefined),
            sensitivity: [0.0; 3],
        };
    };
    measured.u_deg = measured
        .u_deg
        .max(from.by_other_deg(check, measured.value_deg));
    let (verdict, why) = decide_seen(ends(check, &measured, end_told), &measured, limit);
    Decided {
        measured: Some(measured),
        budget,
        verdict,
        why,
        sensitivity,
    }
}

/// [`decided`] with margin, probability and advice.
#[must_use]
#[inline(never)]
pub fn answer(check: Check, from: &Basis<'_>, limit: &Limit, end_told: Option<End>) -> Outcome {
    let found = decided(check, from, limit, end_told);
    let Some(measured) = found.measured else {
        return Outcome {
            check,
            measured: None,
            budget: found.budget,
            verdict: found.verdict,
            why: found.why,
            margin_deg: None,
            probability: None,
            in_preferred: None,
            advice: Advice::NONE,
        };
    };
    let after = found.budget.after_a_move(from.up, found.sensitivity);
    let verdict = (found.verdict, found.why);
    conclude(check, measured, found.budget, limit, verdict, &after)
}

/// The value of `check` for an up vector of the body frame, degrees: the elevation of its axis
/// ([`crate::frames::elevation_deg`]), 90° less that for an angle off plumb, or the roll
/// ([`roll_deg`]).
#[must_use]
pub fn value_deg(check: Check, up_body: Vec3) -> f32 {
    value_and_sensitivity(check, up_body).0
}

/// The same, and how it answers to a change of up; `None` where a roll is lost.
fn value_and_sensitivity(check: Check, up_body: Vec3) -> (f32, Option<Vec3>) {
    let quantity = check.quantity();
    if quantity == Quantity::Roll {
        return (roll_deg(up_body), roll_sensitivity(up_body));
    }
    let (value, c) = elevation(check.axis_body(), up_body);
    let off_plumb = quantity == Quantity::OffPlumb;
    (if off_plumb { 90.0 - value } else { value }, Some(c))
}

/// Value, budget and sensitivity (body frame) of a check; `None` for a roll that is lost.
/// `budget_of` says what contributes to an angle that answers to up as told.
pub(crate) fn measure(
    check: Check,
    up_body: Vec3,
    budget_of: &dyn Fn(Vec3) -> Budget,
) -> Option<(Measured, Budget, Vec3)> {
    let quantity = check.quantity();
    let (value, c) = value_and_sensitivity(check, up_body);
    let c = c?;
    let mut budget = budget_of(c);
    let mut combined_deg = budget.combined_deg();
    if quantity == Quantity::Roll && combined_deg > ROLL_LOST_DEG {
        return None;
    }
    let off_plumb = off_plumb_deg(quantity, value);
    let mut factor = 0.0;
    if off_plumb < STEEP_DEG {
        let across = budget_of(cross(up_body, c));
        factor = least_factor(off_plumb, combined_deg.max(across.combined_deg()));
        budget = if factor > 0.0 {
            budget.or_larger(&across)
        } else {
            // Axis, up and `c` lie in one plane: the angle's sine and cosine.
            let axis = check.axis_body();
            budget.bent_by(&across, dot(axis, up_body).abs() / dot(axis, c))
        };
        combined_deg = budget.combined_deg();
    }
    factor = factor.max(coverage_factor(budget.rectangle_deg, combined_deg));
    let measured = Measured {
        quantity,
        value_deg: value,
        u_deg: factor * combined_deg,
        combined_deg,
        rectangle_deg: budget.rectangle_deg,
    };
    Some((measured, budget, c))
}

/// How far a value is from plumb, degrees; infinite where plumb is nothing special.
pub(crate) fn off_plumb_deg(quantity: Quantity, value: f32) -> f32 {
    match quantity {
        Quantity::Elevation => 90.0 - value.abs(),
        Quantity::OffPlumb => value.min(180.0 - value),
        Quantity::Roll => f32::INFINITY,
    }
}

/// Compares with the limit, unless the eye forbids a verdict.
pub(crate) fn decide_seen(
    eye: Option<Why>,
    measured: &Measured,
    limit: &Limit,
) -> (Verdict, Option<Why>) {
    match eye {
        Some(why) => (Verdict::None, Some(why)),
        None => decide(measured, limit),
    }
}

/// Margin, probability and advice for what was decided. `after` is the budget to expect after a
/// move.
pub(crate) fn conclude(
    check: Check,
    measured: Measured,
    budget: Budget,
    limit: &Limit,
    (verdict, why): (Verdict, Option<Why>),
    after: &Budget,
) -> Outcome {
    let judged = verdict != Verdict::None && limit.is_entered();
    Outcome {
        check,
        measured: Some(measured),
        budget,
        verdict,
        why,
        margin_deg: margin_deg(verdict, &measured, limit).filter(|_| judged),
        probability: judged.then(|| measured.probability(limit.permitted_deg())),
        in_preferred: limit
            .preferred_deg()
            .map(|(low, high)| (low..=high).contains(&measured.near((low, high)))),
        advice: advise(verdict, why, &measured, limit, after),
    }
}

/// Whether the eye forbids a verdict. Where the interval holds level, either end may look lower.
fn ends(check: Check, measured: &Measured, told: Option<End>) -> Option<Why> {
    if !check.asks_lower_end() {
        return None;
    }
    let elevation = match measured.quantity {
        Quantity::OffPlumb => 90.0 - measured.value_deg,
        _ => measured.value_deg,
    };
    let told_up = match told {
        Some(End::Photo) => return None,
        Some(End::Tail) => 1.0,
        Some(End::Head) => -1.0,
        Some(End::CantTell) | None => return Some(Why::EndNotTold),
    };
    (elevation * told_up < -measured.u_deg).then_some(Why::EndsDisagree)
}
