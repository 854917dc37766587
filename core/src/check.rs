//! One check answered: the angle from the up vector, its budget, the verdict, what to do.

use crate::advice::{Advice, advise};
use crate::budget::{Budget, Contact, UpEstimate, least_factor};
use crate::decision::{Measured, Verdict, Why, decide, margin_deg};
use crate::frames::{
    Rotation, elevation_deg, elevation_sensitivity, roll_deg, roll_sensitivity, to_body, to_device,
};
use crate::limits::Limit;
use crate::parts::{Check, Quantity};
use crate::vector::{Vec3, cross};

/// Largest combined standard uncertainty of a roll that is still an angle, degrees: three of it
/// are where the linear budget is 5 % short.
const ROLL_LOST_DEG: f32 = 6.0;

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

/// Answers `check` against `limit`. `end_told` is what the eye said, where it was asked.
#[must_use]
pub fn answer(check: Check, from: &Basis<'_>, limit: &Limit, end_told: Option<End>) -> Outcome {
    let Some((measured, budget, sensitivity)) = measure(check, from) else {
        return lost_roll(check, from);
    };
    let mut outcome = Outcome {
        check,
        measured: Some(measured),
        budget,
        verdict: Verdict::None,
        why: None,
        margin_deg: None,
        probability: None,
        in_preferred: limit
            .preferred_deg()
            .map(|(low, high)| (low..=high).contains(&measured.near((low, high)))),
        advice: Advice::NONE,
    };
    (outcome.verdict, outcome.why) = match ends(check, &measured, end_told) {
        Some(why) => (Verdict::None, Some(why)),
        None => decide(&measured, limit),
    };
    if outcome.verdict != Verdict::None && limit.is_entered() {
        outcome.margin_deg = margin_deg(outcome.verdict, &measured, limit);
        outcome.probability = Some(measured.probability(limit.permitted_deg()));
    }
    let after = budget.after_a_move(from.up, sensitivity);
    outcome.advice = advise(outcome.verdict, outcome.why, &measured, limit, &after);
    outcome
}

/// The value of `check` in an up vector of the device frame, degrees.
#[must_use]
pub fn value_deg(check: Check, rotation: &Rotation, up: Vec3) -> f32 {
    let axis = to_device(rotation, check.axis_body());
    match check.quantity() {
        Quantity::Elevation => elevation_deg(axis, up),
        Quantity::OffPlumb => 90.0 - elevation_deg(axis, up),
        Quantity::Roll => roll_deg(to_body(rotation, up)),
    }
}

fn measure(check: Check, from: &Basis<'_>) -> Option<(Measured, Budget, Vec3)> {
    let up = from.up.up;
    let value = value_deg(check, from.rotation, up);
    let (sensitivity, budget, least) = match check.quantity() {
        Quantity::Roll => {
            let c = to_device(from.rotation, roll_sensitivity(to_body(from.rotation, up))?);
            let budget = Budget::new(from.up, from.contact, c);
            if budget.combined_deg() > ROLL_LOST_DEG {
                return None;
            }
            (c, budget, 0.0)
        }
        quantity => {
            let axis = to_device(from.rotation, check.axis_body());
            let c = elevation_sensitivity(axis, up);
            let mut budget = Budget::new(from.up, from.contact, c);
            let off_plumb = match quantity {
                Quantity::OffPlumb => value.min(180.0 - value),
                _ => 90.0 - value.abs(),
            };
            let mut least = least_factor(off_plumb, budget.combined_deg());
            if least > 0.0 {
                let across = Budget::new(from.up, from.contact, cross(up, c));
                budget = budget.or_larger(&across);
                least = least.max(least_factor(off_plumb, budget.combined_deg()));
            }
            (c, budget, least)
        }
    };
    let combined_deg = budget.combined_deg();
    let by_budget = budget.coverage_factor().max(least) * combined_deg;
    // The channels share zero, scale and hold: what they differ by is none of those.
    let by_other = from.other_up.map_or(0.0, |other| {
        let difference = value_deg(check, from.rotation, other) - value;
        1.5 * (difference - 360.0 * libm::roundf(difference / 360.0)).abs()
    });
    let measured = Measured {
        quantity: check.quantity(),
        value_deg: value,
        u_deg: by_budget.max(by_other),
        combined_deg,
        rectangle_deg: budget.rectangle_deg,
    };
    Some((measured, budget, sensitivity))
}

fn lost_roll(check: Check, from: &Basis<'_>) -> Outcome {
    Outcome {
        check,
        measured: None,
        budget: Budget::new(from.up, from.contact, [0.0; 3]),
        verdict: Verdict::None,
        why: Some(Why::RollUndefined),
        margin_deg: None,
        probability: None,
        in_preferred: None,
        advice: Advice::NONE,
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
