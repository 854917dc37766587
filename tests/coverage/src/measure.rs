//! One draw: a phone laid on a part, its events through core, the answer against the truth.

use crate::case::{Case, Channel, Fixed, Placing};
use plumbmark::check::{End, Outcome};
use plumbmark::decision::{Measured, Verdict, decide};
use plumbmark::holds::{Hold, Surface};
use plumbmark::limits::{Basis, Limit, LimitSet, SurfaceTerms};
use plumbmark::live::Live;
use plumbmark::parts::{Check, Part};
use plumbmark_simulator::vector::elevation_deg;
use plumbmark_simulator::{Draws, Event, Phone, Scene};

/// Largest roll of the part, degrees; uniform.
const ROLL_DEG: f64 = 5.0;
/// Largest jitter of the events, ms.
const JITTER_MS: f64 = 1.0;
/// Time between two placements, ms.
const IN_HAND_MS: f64 = 3_000.0;
/// Half-width of the band in which a limit is drawn about the truth, degrees.
const LIMIT_BAND_DEG: f64 = 3.0;

/// What one reading was worth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sample {
    /// Value less truth, degrees.
    pub error_deg: f64,
    /// Expanded uncertainty, degrees.
    pub u_deg: f64,
    /// "Within" although the truth is exactly at the limit.
    pub passed_at_limit: bool,
    /// "Within" although the truth is 2 U beyond the limit.
    pub passed_beyond: bool,
    /// Neither within nor beyond a limit drawn uniformly within ±3° of the truth.
    pub not_proven: bool,
}

/// Draw number `index` of `case`; `None` where core refuses a reading.
#[must_use]
pub fn draw(case: &Case, index: u64) -> Option<Sample> {
    let mut draws = Draws::new(case.seed(), index);
    let draws = &mut draws;
    let mut population = case.population;
    if case.fixed == Fixed::Case {
        population.case_deg = case.hold_deg;
    }
    let phone = Phone::draw(&population, case.sigma_steps, draws);
    let hold = if draws.uniform() < 0.5 {
        Hold::Back
    } else {
        Hold::LongEdge
    };
    let scene = scene(case, hold, draws);
    // Along both of these holds, the phone's top edge points to the head end.
    let truth_deg = elevation_deg([0.0, 1.0, 0.0], scene.up);
    let outcome = match case.placing {
        Placing::First => first_touch(case, &phone, &scene, hold, draws),
        Placing::Reversal => reversal(case, &phone, &scene, hold, draws),
    }?;
    let measured = outcome.measured?;
    Some(judge(&measured, truth_deg, draws))
}

fn scene(case: &Case, hold: Hold, draws: &mut Draws) -> Scene {
    let elevation = case.elevation.draw(draws);
    let roll = draws.between(-ROLL_DEG, ROLL_DEG);
    let (up, normal) = up_and_normal(hold, elevation, roll);
    let mut scene = Scene {
        heading_deg: case.heading_deg,
        start_deg: case.start_deg,
        tremor_m_s2: case.tremor_m_s2,
        wander_deg: case.wander_deg,
        jitter_ms: JITTER_MS,
        rounded: case.rounded,
        ..Scene::at_rest(up, normal)
    };
    match case.fixed {
        Fixed::Nothing => scene.tilt_deg = case.hold_deg,
        Fixed::Case => {}
        Fixed::Surface => {
            let tilt = draws.normals().map(|t| t * case.hold_deg);
            scene.surface_deg = plumbmark_simulator::vector::across(tilt, normal);
        }
    }
    if case.channel != Channel::Acceleration {
        // Three seconds and a little more.
        scene.events = 202;
        scene.oriented = true;
    }
    scene
}

/// Up and the surface's normal in the device frame, for a phone whose top edge points to the head
/// end, raised by `elevation_deg`, on a part that is rolled by `roll_deg`.
#[must_use]
pub fn up_and_normal(hold: Hold, elevation_deg: f64, roll_deg: f64) -> ([f64; 3], [f64; 3]) {
    let (se, ce) = elevation_deg.to_radians().sin_cos();
    let (sr, cr) = roll_deg.to_radians().sin_cos();
    // Along the part, out of its surface, and across.
    let (along, out, across) = (se, ce * cr, ce * sr);
    match hold {
        // On its back: the screen looks out of the surface, the right edge to the side.
        Hold::Back => ([-across, along, out], [0.0, 0.0, 1.0]),
        // On its right edge: the left edge looks out of the surface, the screen to the side.
        Hold::LongEdge => ([-out, along, -across], [-1.0, 0.0, 0.0]),
        // On its bottom edge: the top edge looks out of the surface.
        Hold::ShortEdge => ([along, out, -across], [0.0, 1.0, 0.0]),
    }
}

/// Core with a placement chosen and the case's hold in its limit set.
#[must_use]
pub fn live(case: &Case, hold: Hold) -> Live {
    let mut limits = LimitSet::empty();
    limits.set_surface(SurfaceTerms {
        surface: Surface::MetalFace,
        hold_deg: case.hold_deg as f32,
        align_deg: case.heading_deg as f32,
    });
    let mut live = Live::new();
    live.set_limits(limits).expect("a sound limit set");
    live.set_sign(1);
    live.select(Part::Heater, hold, Surface::MetalFace)
        .expect("a placement that exists");
    live.tell_end(Check::HeaterOutlet, Some(End::Photo));
    live
}

/// Hands events to core: of the two channels those that are listened to.
pub fn feed(live: &mut Live, channel: Channel, events: &[Event]) {
    let mut last = None;
    for event in events {
        let turned = event.angles_deg.filter(|a| last != Some(*a));
        if let Some([beta, gamma]) = turned.filter(|_| channel != Channel::Acceleration) {
            // Browsers tell of orientation when it changes.
            live.orientation(Some(beta), Some(gamma));
            last = event.angles_deg;
        }
        let force = match channel {
            Channel::Orientation => [None; 3],
            Channel::Acceleration | Channel::Both => event.force_m_s2.map(Some),
        };
        live.motion(event.t_ms, force);
    }
}

/// The heater's outlet at the time of the last event; `None` where core gave no reading.
#[must_use]
pub fn outlet(live: &mut Live, events: &[Event]) -> Option<Outcome> {
    let reading = live.tick(events.last()?.t_ms).ok()?;
    let outlet = |o: &&Outcome| o.check == Check::HeaterOutlet;
    reading.outcomes.iter().find(outlet).copied()
}

fn first_touch(
    case: &Case,
    phone: &Phone,
    scene: &Scene,
    hold: Hold,
    draws: &mut Draws,
) -> Option<Outcome> {
    let mut live = live(case, hold);
    let events = phone.rest(scene, draws);
    feed(&mut live, case.channel, &events);
    outlet(&mut live, &events)
}

fn reversal(
    case: &Case,
    phone: &Phone,
    scene: &Scene,
    hold: Hold,
    draws: &mut Draws,
) -> Option<Outcome> {
    let mut live = live(case, hold);
    let first = phone.rest(scene, draws);
    feed(&mut live, case.channel, &first);
    outlet(&mut live, &first)?;
    live.keep_placement().ok()?;
    let turned = Scene {
        // No event while it is in the hand: core sees that it was moved.
        start_ms: first.last()?.t_ms + IN_HAND_MS,
        ..scene.end_for_end()
    };
    live.tell_turned();
    let second = phone.drifted(case.drift_mg, draws).rest(&turned, draws);
    feed(&mut live, case.channel, &second);
    outlet(&mut live, &second)
}

fn judge(measured: &Measured, truth_deg: f64, draws: &mut Draws) -> Sample {
    let u_deg = f64::from(measured.u_deg);
    let verdict = |low: Option<f64>, high: Option<f64>| {
        let limit = Limit {
            low_deg: low.map(|l| l as f32),
            high_deg: high.map(|h| h as f32),
            basis: Basis::Assumed,
            ..Limit::not_entered(Check::HeaterOutlet)
        };
        decide(measured, &limit).0
    };
    let below = draws.uniform() < 0.5;
    // A limit `by` degrees inside of the truth, on one side or the other.
    let beyond = |by: f64| {
        if below {
            verdict(Some(truth_deg + by), None)
        } else {
            verdict(None, Some(truth_deg - by))
        }
    };
    let somewhere = draws.between(-LIMIT_BAND_DEG, LIMIT_BAND_DEG);
    Sample {
        error_deg: f64::from(measured.value_deg) - truth_deg,
        u_deg,
        passed_at_limit: beyond(0.0) == Verdict::Within,
        passed_beyond: beyond(2.0 * u_deg) == Verdict::Within,
        not_proven: beyond(somewhere) == Verdict::NotProven,
    }
}
