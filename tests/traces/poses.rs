//! Where each sample of a trace lies: in which pose, at rest or moved. From the file's own columns,
//! or else from where core itself gives readings.

use super::read::Trace;
use super::run::{How, drive};

/// A shorter pause between two readings is no new pose, ms: after a movement core needs a second
/// to fill its window.
const PAUSE_MS: f64 = 1000.0;

/// Where a sample lies.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Spot {
    /// The pose; `None` outside the labelled ones.
    pub pose: Option<i64>,
    /// Whether it rests.
    pub rest: bool,
    /// For how long the file's flag has said that it moves, ms; 0 at rest and without a flag.
    pub moving_ms: f64,
}

/// Where each sample of `trace` lies.
#[must_use]
pub fn spots(trace: &Trace) -> Vec<Spot> {
    let mut spots = if trace.samples.iter().all(|s| s.moving.is_some()) {
        by_flag(trace)
    } else {
        by_core(trace)
    };
    if trace.has_poses {
        for (spot, sample) in spots.iter_mut().zip(&trace.samples) {
            spot.pose = sample.pose;
        }
    }
    spots
}

fn by_flag(trace: &Trace) -> Vec<Spot> {
    let (mut pose, mut rest_ms, mut was_moving) = (0, f64::NEG_INFINITY, false);
    let spot = |s: &super::Sample| {
        let moving = s.moving == Some(true);
        pose += i64::from(was_moving && !moving);
        was_moving = moving;
        if !moving {
            rest_ms = s.t_ms;
        }
        Spot {
            pose: Some(pose),
            rest: !moving,
            moving_ms: s.t_ms - rest_ms,
        }
    };
    trace.samples.iter().map(spot).collect()
}

fn by_core(trace: &Trace) -> Vec<Spot> {
    let mut spots = vec![Spot::default(); trace.samples.len()];
    let (mut pose, mut last_ms, mut from, mut rest) = (0, None, 0, false);
    let mut fill = |to: usize, pose, rest| {
        spots[from..to].fill(Spot {
            pose: Some(pose),
            rest,
            moving_ms: 0.0,
        });
        from = to;
    };
    drive(trace, &How::default(), |i, answer| {
        fill(i, pose, rest);
        rest = answer.is_ok();
        if rest {
            let t_ms = trace.samples[i].t_ms;
            pose += i64::from(last_ms.is_some_and(|last| t_ms - last > PAUSE_MS));
            last_ms = Some(t_ms);
        }
    });
    fill(trace.samples.len(), pose, rest);
    spots
}
