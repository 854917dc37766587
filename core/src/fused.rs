//! Channel 1: the browser's fused orientation. It inherits the accelerometer's zero and creeps
//! after a turn, so it checks channel 2, and stands in for it only where channel 2 is missing.

use crate::frames::{DEG, angle_deg, up_by_angles, up_from_angles};
use crate::vector::{Vec3, unit};
use crate::window::BATCHES;
use heapless::Deque;

/// Batches kept: three seconds of 0.2 s. One second does not show a slow filter's creep
/// (simulated: 0.43° left after one, 0.16° after three).
pub const HISTORY: usize = 15;
/// Slowest filter allowed for, seconds. Recordings look like 1 to 2 s.
const SLOWEST_FILTER_S: f32 = 5.0;

/// The orientation held now and the means of the last three seconds.
#[derive(Debug, Clone, Default)]
pub struct Fused {
    held: Option<(f32, f32)>,
    up: Option<Vec3>,
    means: Deque<Vec3, HISTORY>,
}

/// What three seconds of fused orientation say.
#[derive(Debug, Clone, Copy)]
pub struct Settled {
    /// Mean up vector of the last second, device frame, unit length.
    pub up: Vec3,
    /// Standard uncertainty of the noise of the mean, degrees.
    pub noise_deg: f32,
    /// Standard uncertainty left from creeping, degrees.
    pub settle_deg: f32,
    /// Change of up for half a step of β and of γ, radians.
    pub half_steps: [Vec3; 2],
}

impl Fused {
    /// Holds new angles, degrees; `None` where the browser gives none.
    pub fn hold(&mut self, angles_deg: Option<(f32, f32)>) {
        if angles_deg.is_none() {
            self.means.clear();
        }
        self.held = angles_deg;
        self.up = angles_deg.map(|(beta, gamma)| up_from_angles(beta, gamma));
    }

    /// β and γ held now, degrees.
    #[must_use]
    pub fn held_deg(&self) -> Option<(f32, f32)> {
        self.held
    }

    /// The up vector held now, device frame.
    #[must_use]
    pub fn up(&self) -> Option<Vec3> {
        self.up
    }

    /// Forgets the history, keeps what is held (a still phone sends no new event).
    pub fn restart(&mut self) {
        self.means.clear();
    }

    /// Takes the mean of one more batch of 0.2 s; `None` breaks the history.
    pub fn push_mean(&mut self, mean: Option<Vec3>) {
        match mean {
            Some(mean) => {
                if self.means.is_full() {
                    self.means.pop_front();
                }
                // Room was made above, so nothing is lost here.
                let _ = self.means.push_back(mean);
            }
            None => self.means.clear(),
        }
    }

    /// Mean of the last second, unit length; `None` until there is one.
    #[must_use]
    pub fn mean(&self) -> Option<Vec3> {
        let from = self.means.len().checked_sub(BATCHES)?;
        mean_of(self.means.iter().skip(from))
    }

    /// Angle between the first and the last 0.4 s of the last second, degrees: the sharpest test
    /// of slow movement there is.
    #[must_use]
    pub fn drift_deg(&self) -> Option<f32> {
        let from = self.means.len().checked_sub(BATCHES)?;
        let first = mean_of(self.means.iter().skip(from).take(2))?;
        let last = mean_of(self.means.iter().skip(from + BATCHES - 2))?;
        Some(angle_deg(first, last))
    }

    /// The last second, if three seconds were seen. What still creeps is taken as one exponential's
    /// rest, with the slowest filter's time constant τ: (moved + 0.03°)/(e^(span/τ) − 1), a third
    /// of it as a standard uncertainty (our own model; simulated).
    #[must_use]
    pub fn settled(&self) -> Option<Settled> {
        let (beta, gamma) = self.held?;
        if !self.means.is_full() {
            return None;
        }
        let up = self.mean()?;
        let first = mean_of(self.means.iter().take(2))?;
        let last = mean_of(self.means.iter().skip(HISTORY - 2))?;
        let span_s = 0.2 * (HISTORY - 2) as f32;
        let creep = libm::expf(span_s / SLOWEST_FILTER_S) - 1.0;
        let scatter: f32 = self
            .means
            .iter()
            .skip(HISTORY - BATCHES)
            .map(|m| (0..3).map(|i| (m[i] - up[i]) * (m[i] - up[i])).sum::<f32>())
            .sum::<f32>()
            / (BATCHES * (BATCHES - 1)) as f32;
        let half_step = 0.5 * crate::prior::ANGLE_STEP_DEG / DEG;
        Some(Settled {
            up,
            noise_deg: 1.4 * libm::sqrtf(scatter) * DEG,
            settle_deg: (angle_deg(first, last) + 0.03) / creep / 3.0,
            half_steps: up_by_angles(beta, gamma).map(|d| d.map(|v| v * half_step)),
        })
    }
}

fn mean_of<'a>(vectors: impl Iterator<Item = &'a Vec3>) -> Option<Vec3> {
    unit(vectors.fold([0.0; 3], |s, v| [s[0] + v[0], s[1] + v[1], s[2] + v[2]]))
}
