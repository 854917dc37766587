//! A sensor of a gauge laid on a part at random: attitude, noise, zero, part, hold, what was told,
//! whether it was calibrated or turned end for end.

use crate::Draws;
use crate::vector::unit;
use plumbmark::calibration::Calibration;
use plumbmark::check::End;
use plumbmark::direct::{Direct, Taken};
use plumbmark::frames::to_body;
use plumbmark::holds::{Hold, Placement, Surface};
use plumbmark::limits::{Basis, Limit, LimitSet};
use plumbmark::parts::{Check, Part};
use plumbmark::reason::NoReading;
use plumbmark::reversal::half_turn;
use plumbmark::sensor::Sensor;
use plumbmark::vector::dot;

const G: f64 = 9.806_65;
/// Samples of one placement: more than a window takes at this rate.
pub const SAMPLES: usize = 75;
/// Time between two samples, microseconds.
pub const SAMPLE_US: u32 = 17_000;
/// Every pair that gives something.
const WAYS: [(Part, Hold, Surface); 14] = [
    (Part::Heater, Hold::Back, Surface::MetalFace),
    (Part::Heater, Hold::Back, Surface::Sheet),
    (Part::Heater, Hold::LongEdge, Surface::MetalFace),
    (Part::Heater, Hold::LongEdge, Surface::Bar),
    (Part::Heater, Hold::ShortEdge, Surface::MetalFace),
    (Part::Pump, Hold::Back, Surface::Bracket),
    (Part::Pump, Hold::LongEdge, Surface::RoundBody),
    (Part::Pump, Hold::ShortEdge, Surface::RoundBody),
    (Part::Pump, Hold::Back, Surface::Bar),
    (Part::Filter, Hold::Back, Surface::Bracket),
    (Part::Filter, Hold::LongEdge, Surface::RoundBody),
    (Part::Pipe, Hold::Back, Surface::RoundBody),
    (Part::Pipe, Hold::LongEdge, Surface::Bar),
    (Part::Pipe, Hold::ShortEdge, Surface::RoundBody),
];

/// One drawn case.
#[derive(Debug, Clone)]
pub struct Laid {
    /// How it lies on which part.
    pub placement: Placement,
    /// Size of a count, m/s².
    pub count_m_s2: f64,
    /// What is known of the sensor.
    pub sensor: Sensor,
    /// The calibration in it, where there is one.
    pub calibration: Option<Calibration>,
    /// Whether it is turned end for end.
    pub turned: bool,
    /// What was told of the ends.
    pub ends: [Option<End>; 2],
    /// The limits.
    pub limits: LimitSet,
    up: [f64; 3],
    zero: [f64; 3],
    /// How far it lies tipped after the turn, share of gravity.
    tipped: [f64; 3],
    noise_m_s2: f64,
}

fn one_of<T: Copy>(draws: &mut Draws, all: &[T]) -> T {
    all[(draws.uniform() * all.len() as f64) as usize]
}

fn small(draws: &mut Draws, size: f64) -> [f64; 3] {
    [(); 3].map(|()| size * draws.normal())
}

/// Up, often near the directions that matter: level, upright, a limit.
fn direction(draws: &mut Draws) -> [f64; 3] {
    if draws.uniform() < 0.5 {
        return draws.direction();
    }
    let axis = (draws.uniform() * 3.0) as usize;
    let size = one_of(draws, &[0.003, 0.03, 0.3]);
    let mut up = small(draws, size);
    up[axis] += if draws.uniform() < 0.5 { 1.0 } else { -1.0 };
    unit(up)
}

fn calibration(draws: &mut Draws, zero: [f64; 3]) -> Calibration {
    Calibration {
        zero: zero.map(|z| z as f32),
        u_zero: small(draws, 0.001).map(|u| u.abs() as f32 + 1e-4),
        scale: small(draws, 0.004).map(|s| 1.0 + s as f32),
        u_scale: small(draws, 0.001).map(|u| u.abs() as f32 + 1e-4),
        for_orientation: false,
    }
}

/// A limit at random, about where values lie.
fn limit(draws: &mut Draws, check: Check) -> Limit {
    let range = check.quantity().range_deg();
    let mut limit = Limit::not_entered(check);
    limit.basis = one_of(draws, &Basis::ALL);
    limit.at_limit_allowed = draws.uniform() < 0.5;
    let middle = draws.between(f64::from(range.0), f64::from(range.1)) as f32;
    let half = draws.between(0.1, 60.0) as f32;
    let (low, high) = (middle - half, middle + half);
    limit.low_deg = (low > range.0).then_some(low);
    limit.high_deg = (high < range.1).then_some(high);
    if check == Check::PumpRoll && limit.low_deg.is_some() != limit.high_deg.is_some() {
        (limit.low_deg, limit.high_deg) =
            (Some(-0.5 * middle.abs()), Some(1.0 + 0.5 * middle.abs()));
    }
    if limit.at_limit_allowed && matches!(limit.basis, Basis::Manual | Basis::Law) {
        limit.allowance_deg = Some(draws.between(0.0, 3.0) as f32);
    }
    limit.set_source("p. 12").expect("it is short");
    limit
}

/// Limits at random: trade usage, not entered, or somebody's own, and how well surfaces lie.
///
/// # Panics
/// Never: the set is one that can be.
#[must_use]
pub fn limits(draws: &mut Draws) -> LimitSet {
    let mut set = LimitSet::trade_usage();
    for line in &mut set.lines {
        match (draws.uniform() * 3.0) as u8 {
            0 => {}
            1 => *line = Limit::not_entered(line.check),
            _ => *line = limit(draws, line.check),
        }
    }
    for surface in &mut set.surfaces {
        surface.hold_deg = draws.between(0.05, 0.5) as f32;
        surface.align_deg = draws.between(0.0, 2.0) as f32;
    }
    set.validate().expect("limits that can be");
    set
}

impl Laid {
    /// Draws one. `count_m_s2` is the size of a count.
    ///
    /// # Panics
    /// Never: every way gives something.
    #[must_use]
    pub fn draw(draws: &mut Draws, count_m_s2: f64, unchecked: Sensor) -> Self {
        let (part, hold, surface) = one_of(draws, &WAYS);
        let zero = small(draws, 0.006);
        let calibration = (draws.uniform() < 0.4).then(|| calibration(draws, zero));
        let placement = Placement::new(part, hold, surface).expect("a way that gives something");
        let up = direction(draws);
        let ends = [0, 1].map(|i| {
            let check = placement.checks.get(i)?;
            let body = to_body(&hold.rotation(), up.map(|v| v as f32));
            let rises = dot(check.axis_body(), body) >= 0.0;
            let seen = if rises { End::Tail } else { End::Head };
            let all = [None, Some(End::Tail), Some(End::Head), Some(End::CantTell)];
            let other = one_of(draws, &all);
            if draws.uniform() < 0.8 {
                Some(seen)
            } else {
                other
            }
        });
        Self {
            placement,
            count_m_s2,
            sensor: calibration.map_or(unchecked, |c| unchecked.calibrated(&c, 1)),
            calibration,
            turned: draws.uniform() < 0.4,
            ends,
            limits: limits(draws),
            up,
            zero,
            tipped: {
                let size = one_of(draws, &[0.0, 0.0, 0.0, 0.05]);
                small(draws, size)
            },
            noise_m_s2: one_of(draws, &[0.0, 0.01, 0.03, 0.06]),
        }
    }

    /// Samples of one placement, the second one of a turn where `turned`.
    pub fn samples(&self, draws: &mut Draws, turned: bool) -> Vec<[i16; 3]> {
        let up = if turned {
            let n = self.placement.hold.normal();
            let back = half_turn(self.up.map(|v| v as f32), n);
            [0, 1, 2].map(|i| f64::from(back[i]) + self.tipped[i])
        } else {
            self.up
        };
        (0..SAMPLES)
            .map(|_| {
                [0, 1, 2].map(|i| {
                    let felt = G * (up[i] + self.zero[i]) + self.noise_m_s2 * draws.normal();
                    (felt / self.count_m_s2).round() as i16
                })
            })
            .collect()
    }

    /// Every placement's samples; between two of them the sensor is lifted.
    pub fn placements(&self, draws: &mut Draws) -> Vec<Vec<[i16; 3]>> {
        let mut all = vec![self.samples(draws, false)];
        if self.turned {
            all.push(self.samples(draws, true));
        }
        all
    }

    /// Hold and alignment of the surface, degrees.
    #[must_use]
    pub fn surface_deg(&self) -> (f32, f32) {
        self.limits.surface_deg(self.placement.surface)
    }

    /// What a gauge takes of these samples.
    ///
    /// # Errors
    /// Why there is no reading.
    pub fn take(&self, placements: &[Vec<[i16; 3]>]) -> Result<Taken, NoReading> {
        let mut direct = Direct::new(self.count_m_s2 as f32, self.sensor, self.placement);
        for (i, samples) in placements.iter().enumerate() {
            if i > 0 {
                direct.keep_first()?;
                assert!(direct.push(SAMPLE_US, LIFTED).is_err());
            }
            for counts in samples {
                direct.push(SAMPLE_US, *counts)?;
            }
        }
        direct.take(self.surface_deg(), self.ends)
    }
}

/// A sample in the air.
pub const LIFTED: [i16; 3] = [0, 0, 0];
