//! From a browser's events to whole counts: missing values, time stamps, rounding, sign.

use crate::prior::{BROWSER_STEP_M_S2, FINE_COUNT_M_S2};
use crate::reason::NoReading;
use crate::vector::{Vec3, dot, unit};

/// Longest time between two events, ms.
pub(crate) const GAP_MS: f64 = 200.0;
/// Band of |a| for a single sample, m/s²; outside it there was a knock or a fall.
pub(crate) const SAMPLE_M_S2: (f64, f64) = (8.3, 11.3);
/// Distance from a multiple of 0.1 m/s² that still counts as rounded: 32-bit values at 10 m/s².
const ROUNDED_WITHIN_M_S2: f64 = 2e-6;
/// Votes in a row that decide a sign.
const VOTES: i8 = 10;
/// Events without a decided sign before the user is asked: half a second.
const PATIENCE: u8 = 30;
/// Cosine of the largest angle between the channels that may decide a sign, 15°.
const CLEAR_COSINE: f32 = 0.966;

/// One accepted sample.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Accepted {
    /// Since the sample before, microseconds.
    pub dt_us: u32,
    /// Specific force, upwards at rest, in counts.
    pub counts: [i16; 3],
}

/// State between events.
#[derive(Debug, Clone)]
pub struct Intake {
    last_ms: Option<f64>,
    last_dt_us: u32,
    sign: i8,
    votes: i8,
    face_votes: i8,
    unsigned_samples: u8,
    fine: bool,
}

impl Default for Intake {
    fn default() -> Self {
        Self::new()
    }
}

impl Intake {
    /// Nothing known: sign to be learnt, rounding assumed until a value contradicts it.
    #[must_use]
    pub const fn new() -> Self {
        Self {
            last_ms: None,
            last_dt_us: 0,
            sign: 0,
            votes: 0,
            face_votes: 0,
            unsigned_samples: 0,
            fine: false,
        }
    }

    /// +1: the browser reports +g upwards at rest as W3C says; −1: the opposite; 0: not known.
    #[must_use]
    pub fn sign(&self) -> i8 {
        self.sign
    }

    /// Takes a sign known from before, or 0 to learn it again.
    pub fn set_sign(&mut self, sign: i8) {
        self.sign = sign.signum();
        self.votes = 0;
        self.unsigned_samples = 0;
    }

    /// Size of one count, m/s²: the browser's step, or a fine one where nothing is rounded.
    #[must_use]
    pub fn count_m_s2(&self) -> f32 {
        if self.fine {
            FINE_COUNT_M_S2
        } else {
            BROWSER_STEP_M_S2
        }
    }

    /// Whether values come unrounded.
    #[must_use]
    pub fn is_fine(&self) -> bool {
        self.fine
    }

    /// Time of the last event, ms.
    #[must_use]
    pub fn last_ms(&self) -> Option<f64> {
        self.last_ms
    }

    /// Time between the last two events, microseconds; 0 after a fault.
    #[must_use]
    pub fn last_dt_us(&self) -> u32 {
        self.last_dt_us
    }

    /// Decides the sign for a phone that lies face up: z points up. 0 when the last ten samples
    /// do not show it lying flat.
    pub fn learn_sign_face_up(&mut self) -> i8 {
        if self.face_votes.abs() >= VOTES {
            self.set_sign(self.face_votes);
            self.sign
        } else {
            0
        }
    }

    /// Takes one motion event, with the fused up vector held at that time. Values in m/s², `None`
    /// where the browser gives null.
    ///
    /// # Errors
    /// Every way in which an event is unfit; the window must then be restarted.
    pub fn motion(
        &mut self,
        t_ms: f64,
        values: [Option<f64>; 3],
        fused: Option<Vec3>,
    ) -> Result<Accepted, NoReading> {
        self.last_dt_us = 0;
        let dt_us = self.step_time(t_ms)?;
        self.last_dt_us = dt_us;
        let a = match values {
            [Some(x), Some(y), Some(z)] => [x, y, z],
            [None, None, None] => return Err(NoReading::NoSensor),
            _ => return Err(NoReading::ValuesMissing),
        };
        if a.iter().any(|v| !v.is_finite()) {
            return Err(NoReading::NotFinite);
        }
        let length2: f64 = a.iter().map(|v| v * v).sum();
        if !(SAMPLE_M_S2.0 * SAMPLE_M_S2.0..SAMPLE_M_S2.1 * SAMPLE_M_S2.1).contains(&length2) {
            return Err(NoReading::NotGravity);
        }
        self.vote(a.map(|v| v as f32), fused)?;
        if !self.fine && a.iter().any(|&v| !is_rounded(v)) {
            self.fine = true;
            // Counts change their size here: what was collected is worth nothing.
            return Err(NoReading::Starting);
        }
        let per_count = f64::from(self.sign) * if self.fine { 1000.0 } else { 10.0 };
        Ok(Accepted {
            dt_us,
            counts: a.map(|v| libm::round(v * per_count) as i16),
        })
    }

    fn step_time(&mut self, t_ms: f64) -> Result<u32, NoReading> {
        if !t_ms.is_finite() {
            return Err(NoReading::NotFinite);
        }
        let Some(last) = self.last_ms.replace(t_ms) else {
            return Ok(0);
        };
        let dt_ms = t_ms - last;
        if dt_ms < 0.0 {
            Err(NoReading::TimeBackward)
        } else if dt_ms == 0.0 {
            Err(NoReading::TimeRepeated)
        } else if dt_ms > GAP_MS {
            Err(NoReading::Gap)
        } else {
            Ok((dt_ms * 1000.0) as u32)
        }
    }

    /// Learns the sign from the two channels, and notices when it changes.
    fn vote(&mut self, a: Vec3, fused: Option<Vec3>) -> Result<(), NoReading> {
        let Some(direction) = unit(a) else {
            return Err(NoReading::NotGravity);
        };
        self.face_votes = count_vote(self.face_votes, direction[2]);
        self.votes = match fused {
            Some(up) => count_vote(self.votes, dot(direction, up)),
            None => 0,
        };
        let decided = self.votes.abs() >= VOTES;
        if decided && self.sign == 0 {
            self.sign = self.votes.signum();
        }
        if self.sign == 0 {
            self.unsigned_samples = self.unsigned_samples.saturating_add(1);
            return Err(if self.unsigned_samples > PATIENCE {
                NoReading::SignUnknown
            } else {
                NoReading::Starting
            });
        }
        if decided && self.votes.signum() != self.sign {
            return Err(NoReading::SignFlipped);
        }
        Ok(())
    }
}

/// One more vote for the sign of `cosine`; an unclear one starts over.
fn count_vote(votes: i8, cosine: f32) -> i8 {
    if cosine.abs() < CLEAR_COSINE {
        return 0;
    }
    let vote = if cosine > 0.0 { 1 } else { -1 };
    if votes.signum() == vote {
        (votes + vote).clamp(-VOTES, VOTES)
    } else {
        vote
    }
}

fn is_rounded(v: f64) -> bool {
    (v - libm::round(v * 10.0) / 10.0).abs() < ROUNDED_WITHIN_M_S2
}
