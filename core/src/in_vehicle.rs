//! A check in the vehicle: the yard slopes, the part is bolted to the vehicle. A reading on the rail
//! or floor, the phone pointing as on the part, tells what the check is once the vehicle stands
//! level.
//!
//! The two readings fix the rotation up to the part's heading, which is told; it is then solved
//! exactly. How it answers to each reading is a central difference of that solution.

use crate::budget::{Budget, Source};
use crate::check::{Basis, Outcome, conclude, decide_seen, measure};
use crate::decision::{Verdict, Why, decide_in_operation};
use crate::frames::{DEG, to_body, to_device};
use crate::level::{Level, LevelRefusal};
use crate::limits::Limit;
use crate::parts::{Check, Quantity};
use crate::shared::Share;
use crate::trig::sin_cos_deg;
use crate::vector::{Vec3, any_perpendicular, cross, dot, hypot, minus, norm, scaled, unit};
use crate::vehicle::{Pointing, VehicleTerms};
use heapless::Vec;

/// Smallest cosine of body x's elevation that leaves it a heading: 70° is the steepest. Assumed.
const HEADING_COSINE: f32 = 0.342;
/// Step of the central differences, radians.
const DIFFERENCE: f32 = 0.01;

/// What the vehicle's working slope leaves of a check.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Working {
    /// The steepest slope that it works on, degrees.
    pub slope_deg: f32,
    /// What of the margin that slope takes, degrees; `None` where it can take all.
    pub takes_deg: Option<f32>,
    /// Whether the limit holds in operation, so that the verdict counts it.
    pub decides: bool,
}

/// One check in the vehicle.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct VehicleOutcome {
    /// Value, verdict and advice, as if the vehicle stood level.
    pub outcome: Outcome,
    /// The working slope, where one was told.
    pub working: Option<Working>,
}

/// A part's checks in the vehicle, or why there are none.
pub type InVehicle = Result<Vec<VehicleOutcome, 2>, LevelRefusal>;

/// What a check in the vehicle is answered from.
#[derive(Debug, Clone, Copy)]
pub struct Vehicle<'a> {
    /// Its level.
    pub level: &'a Level,
    /// What is told of it.
    pub terms: &'a VehicleTerms,
    /// Which way the part points.
    pub pointing: Pointing,
}

/// Everything that the part's up in a level vehicle follows from.
#[derive(Clone, Copy)]
struct Given {
    part: Vec3,
    level: Vec3,
    level_up: Vec3,
    turn: (f32, f32),
}

impl Given {
    /// Up in the part's body frame when the vehicle stands level.
    fn up(&self) -> Vec3 {
        let (x, y) = horizontal(self.level);
        let (px, py) = horizontal(self.part);
        let seen = [x, y, self.level].map(|axis| dot(self.level_up, axis));
        let (cos, sin) = self.turn;
        let along = seen[0] * cos + seen[1] * sin;
        let left = seen[1] * cos - seen[0] * sin;
        core::array::from_fn(|i| along * px[i] + left * py[i] + seen[2] * self.part[i])
    }

    /// Whether both readings' body x is far enough from plumb to have a heading.
    fn has_heading(&self) -> bool {
        let cosine = |up: Vec3| hypot(up[1], up[2]);
        cosine(self.level) >= HEADING_COSINE && cosine(self.part) >= HEADING_COSINE
    }
}

/// Body x on the horizontal, and the horizontal direction to its left.
fn horizontal(up: Vec3) -> (Vec3, Vec3) {
    let along = minus([1.0, 0.0, 0.0], scaled(up, up[0]));
    let x = unit(along).unwrap_or([1.0, 0.0, 0.0]);
    (x, cross(up, x))
}

/// Answers `parked` anew for a vehicle that stands level.
///
/// # Errors
/// [`LevelRefusal::NoHeading`].
#[inline(never)]
pub fn in_vehicle(
    parked: &Outcome,
    from: &Basis<'_>,
    vehicle: &Vehicle<'_>,
    limit: &Limit,
) -> Result<VehicleOutcome, LevelRefusal> {
    let given = Given {
        part: to_body(from.rotation, from.up.up),
        level: vehicle.level.up_body(),
        level_up: vehicle.terms.level_up(),
        turn: vehicle.pointing.turn(),
    };
    if !given.has_heading() {
        return Err(LevelRefusal::NoHeading);
    }
    let up = given.up();
    let answers = Answers::new(&given);
    let budget_of = |c: Vec3| answers.budget(c, from, vehicle);
    let found = measure(parked.check, up, &budget_of);
    let (Some((mut measured, budget, c)), Some(as_parked)) = (found, parked.measured) else {
        // A roll that can't be read, here or as parked.
        return Ok(VehicleOutcome {
            outcome: Outcome {
                measured: None,
                verdict: Verdict::None,
                why: Some(Why::RollUndefined),
                margin_deg: None,
                probability: None,
                ..*parked
            },
            working: None,
        });
    };
    // What the channels differ by widens the interval here as it did as parked.
    measured.u_deg = measured
        .u_deg
        .max(from.by_other_deg(parked.check, as_parked.value_deg));
    // Ends that the eye contradicts as parked give no verdict in the vehicle either.
    let no_verdict = |w: &Why| matches!(w, Why::EndsDisagree | Why::EndNotTold);
    let eye = parked.why.filter(no_verdict);
    let after = budget.after_a_move(from.up, answers.part.of(c));
    let verdict = decide_seen(eye, &measured, limit);
    let mut outcome = conclude(parked.check, measured, budget, limit, verdict, &after);
    let slope_deg = vehicle.terms.working_slope_deg();
    let working = (slope_deg > 0.0).then(|| Working {
        slope_deg,
        takes_deg: takes_deg(parked.check, up, slope_deg),
        decides: limit.holds_in_operation,
    });
    if let Some(w) = working.filter(|w| w.decides && outcome.verdict != Verdict::None) {
        (outcome.verdict, outcome.why) = decide_in_operation(&measured, limit, w.takes_deg);
        outcome.margin_deg = None;
        outcome.probability = None;
    }
    Ok(VehicleOutcome { outcome, working })
}

/// What a slope of `slope_deg` in any direction takes of a check's margin, degrees: the slope
/// itself, or for a roll asin(sin s/|u×x|), which is all once s reaches 90° − |e|.
fn takes_deg(check: Check, up: Vec3, slope_deg: f32) -> Option<f32> {
    match check.quantity() {
        Quantity::Elevation | Quantity::OffPlumb => Some(slope_deg),
        Quantity::Roll => {
            let share = sin_cos_deg(slope_deg).0 / hypot(up[1], up[2]).max(1e-6);
            (share < 1.0).then(|| libm::atan2f(share, libm::sqrtf(1.0 - share * share)) * DEG)
        }
    }
}

/// How up in the vehicle changes with one of the given unit vectors.
struct Answer {
    tangents: [Vec3; 2],
    changes: [Vec3; 2],
}

impl Answer {
    fn new(at: Vec3, up: &dyn Fn(Vec3) -> Vec3) -> Self {
        let first = any_perpendicular(at);
        let tangents = [first, cross(at, first)];
        Self {
            tangents,
            changes: tangents.map(|t| {
                let moved = |by: f32| {
                    let there = core::array::from_fn(|i| at[i] + by * t[i]);
                    up(unit(there).unwrap_or(at))
                };
                difference(moved(DIFFERENCE), moved(-DIFFERENCE))
            }),
        }
    }

    /// How an angle that answers to up in the vehicle by `c` answers to the given vector.
    fn of(&self, c: Vec3) -> Vec3 {
        let [p, q] = self.tangents;
        let [by_p, by_q] = self.changes.map(|change| dot(c, change));
        core::array::from_fn(|i| by_p * p[i] + by_q * q[i])
    }
}

/// How up in the vehicle changes with everything it follows from.
struct Answers {
    part: Answer,
    level: Answer,
    lean: Answer,
    heading: Vec3,
    /// Second derivative by the heading.
    bend: Vec3,
}

impl Answers {
    fn new(given: &Given) -> Self {
        let turned = |by: f32| {
            let (cos, sin) = given.turn;
            let turn = (cos - by * sin, sin + by * cos);
            Given { turn, ..*given }.up()
        };
        let (ahead, behind) = (turned(DIFFERENCE), turned(-DIFFERENCE));
        let up = given.up();
        let bend = core::array::from_fn(|i| ahead[i] + behind[i] - 2.0 * up[i]);
        Self {
            part: Answer::new(given.part, &|part| Given { part, ..*given }.up()),
            level: Answer::new(given.level, &|level| Given { level, ..*given }.up()),
            lean: Answer::new(given.level_up, &|level_up| {
                Given { level_up, ..*given }.up()
            }),
            heading: difference(ahead, behind),
            bend: scaled(bend, 1.0 / (DIFFERENCE * DIFFERENCE)),
        }
    }

    /// Contributions to an angle that answers to up in the vehicle by `c`, body frame.
    #[inline(never)]
    fn budget(&self, c: Vec3, from: &Basis<'_>, vehicle: &Vehicle<'_>) -> Budget {
        let level = vehicle.level;
        let part_c = to_device(from.rotation, self.part.of(c));
        let level_c = to_device(&level.rotation, self.level.of(c));
        let (a, b) = (Share::new(from.up, part_c), Share::new(&level.up, level_c));
        // The phone is the same one: its zero may cancel, or count twice.
        let joint =
            |of: fn(&Share, &Share) -> f32| (of(&a, &a) + of(&b, &b) + 2.0 * of(&a, &b)).max(0.0);
        let of_level = Budget::new(&level.up, &level.contact, level_c);
        let mut budget = Budget::new(from.up, from.contact, part_c);
        let told_deg = vehicle.terms.heading_deg;
        let heading_deg = dot(c, self.heading) * told_deg;
        // A heading told badly bends the angle as well (GUM 5.1.2, note): √3/2 · f" · u².
        let bend_deg = 0.866 * dot(c, self.bend) * told_deg * told_deg / DEG;
        let rake_deg = norm(self.lean.of(c)) * vehicle.terms.rake_deg;
        let datum_deg = of_level.repeat_deg();
        for (source, variance) in [
            (Source::Zero, joint(Share::zero_covariance)),
            (Source::Scale, joint(Share::scale_covariance)),
            (Source::Datum, datum_deg * datum_deg),
            (
                Source::Heading,
                heading_deg * heading_deg + bend_deg * bend_deg,
            ),
            (Source::Rake, rake_deg * rake_deg),
        ] {
            budget.variances[source as usize] = variance;
        }
        budget.rectangle_deg = budget.rectangle_deg.max(of_level.rectangle_deg);
        budget
    }
}

/// Central difference of two vectors, a radian.
fn difference(ahead: Vec3, behind: Vec3) -> Vec3 {
    scaled(minus(ahead, behind), 0.5 / DIFFERENCE)
}
