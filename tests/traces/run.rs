//! A trace through core: its events in, readings against the reference out.

use super::poses::Spot;
use super::read::{Sample, Trace};
use crate::vector::{elevation_deg, turned, unit};
use plumbmark::check::End;
use plumbmark::holds::{Hold, Surface};
use plumbmark::live::{self, Live};
use plumbmark::parts::{Check, Part};
use plumbmark::reason::NoReading;
use std::collections::HashMap;

/// Axes of the device that the checks of the heater's flat hold read.
const AXES: [(Check, [f64; 3]); 2] = [
    (Check::HeaterPort, [0.0, 0.0, -1.0]),
    (Check::HeaterOutlet, [0.0, 1.0, 0.0]),
];
/// Time between two answers of core, ms: somewhat rarer than a screen's.
const TICK_MS: f64 = 50.0;
/// A browser's steps in 1 m/s² and in 1° (W3C *Device Orientation and Motion*).
const STEPS: f64 = 10.0;

/// How a trace is run.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct How {
    /// Turns the device's frame by this rotation vector, radians, before anything is rounded.
    pub turn: [f64; 3],
    /// Rounds as browsers do.
    pub round: bool,
    /// Rotation vector of the sensor against its reference, radians, that is removed.
    pub mount: [f64; 3],
}

impl How {
    fn motion(&self, values: [f64; 3]) -> [f64; 3] {
        turned(values, self.turn).map(|v| self.rounded(v))
    }

    /// β and γ after the turn, degrees; any pair that gives the same up will do.
    fn angles(&self, angles_deg: [f64; 2]) -> [f64; 2] {
        let angles_deg = if self.turn == [0.0; 3] {
            angles_deg
        } else {
            let [(sb, cb), (sg, cg)] = angles_deg.map(|v| v.to_radians().sin_cos());
            let up = turned([-cb * sg, sb, cb * cg], self.turn);
            let beta = up[1].clamp(-1.0, 1.0).asin();
            [beta, (-up[0]).atan2(up[2])].map(f64::to_degrees)
        };
        angles_deg.map(|v| self.rounded(v))
    }

    fn rounded(&self, v: f64) -> f64 {
        if self.round {
            (v * STEPS).round() / STEPS
        } else {
            v
        }
    }

    fn up(&self, up: [f64; 3]) -> [f64; 3] {
        turned(turned(up, self.mount), self.turn)
    }
}

/// One reading of one axis against the reference.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// The pose; `None` outside the labelled ones.
    pub pose: Option<i64>,
    /// For how long the flag has said that it moves, ms; 0 at rest.
    pub moving_ms: f64,
    /// Reading minus reference, degrees; `None` where there was no reference at that time.
    pub error_deg: Option<f64>,
    /// Expanded uncertainty, degrees.
    pub u_deg: f64,
}

/// What core said of a trace.
#[derive(Debug, Clone, Default)]
pub struct Run {
    /// Its readings.
    pub readings: Vec<Reading>,
    /// How often it refused, by reason.
    pub refused: HashMap<&'static str, usize>,
}

/// Runs `trace` through core; `spots` says of each sample where it lies.
#[must_use]
pub fn run(trace: &Trace, spots: &[Spot], how: &How) -> Run {
    let mut out = Run::default();
    drive(trace, how, |i, answer| {
        let reading = match answer {
            Ok(reading) => reading,
            Err(reason) => return *out.refused.entry(reason.name()).or_default() += 1,
        };
        let up = trace.samples[i].up.map(|up| how.up(up));
        for outcome in &reading.outcomes {
            let measured = outcome.measured.expect("an elevation");
            let axis = AXES.iter().find(|(c, _)| *c == outcome.check);
            let (_, axis) = axis.expect("a check of this hold");
            out.readings.push(Reading {
                pose: spots[i].pose,
                moving_ms: spots[i].moving_ms,
                error_deg: up.map(|up| f64::from(measured.value_deg) - elevation_deg(*axis, up)),
                u_deg: f64::from(measured.u_deg),
            });
        }
    });
    out
}

/// Feeds core with a trace's events and shows each answer with the index of its sample.
pub(super) fn drive(
    trace: &Trace,
    how: &How,
    mut see: impl FnMut(usize, Result<&live::Reading, NoReading>),
) {
    let mut live = Live::new();
    live.set_sign(trace.sign);
    live.select(Part::Heater, Hold::Back, Surface::MetalFace)
        .expect("a hold that the heater has");
    for (check, _) in AXES {
        live.tell_end(check, Some(End::Photo));
    }
    let mut next_ms = f64::NEG_INFINITY;
    for (i, s) in trace.samples.iter().enumerate() {
        if let Some([beta, gamma]) = s.angles_deg.map(|a| how.angles(a)) {
            live.orientation(Some(beta), Some(gamma));
        }
        live.motion(s.t_ms, how.motion(s.motion_m_s2).map(Some));
        if s.t_ms >= next_ms {
            next_ms = s.t_ms + TICK_MS;
            see(i, live.tick(s.t_ms));
        }
    }
}

/// Specific force of a sample, upwards at rest, unit length.
pub(super) fn force(sample: &Sample, sign: i8) -> [f64; 3] {
    unit(sample.motion_m_s2.map(|v| v * f64::from(sign)))
}
