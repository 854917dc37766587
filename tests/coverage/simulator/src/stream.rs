//! The events of a phone in a scene: noise with colour, fusion with lag, rounding.

use crate::vector::{across, angles_of_up, dot, plus, turned, unit};
use crate::{ANGLE_STEPS_PER_DEG, Draws, FORCE_STEP_M_S2, G, Phone, Scene};

/// Correlation time of a hand's slow wander, s.
const WANDER_S: f64 = 0.7;

/// What a browser tells at one time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Event {
    /// Time, ms.
    pub t_ms: f64,
    /// Acceleration including gravity, m/s².
    pub force_m_s2: [f64; 3],
    /// β and γ, degrees, where they are listened to.
    pub angles_deg: Option<[f64; 2]>,
}

impl Phone {
    /// Lays the phone down as `scene` says and lets it rest.
    pub fn rest(&self, scene: &Scene, draws: &mut Draws) -> Vec<Event> {
        let placed = self.placed_up(scene, draws);
        let tremor = Tremor::new(scene.tremor_m_s2, draws);
        let knock = unit(across(draws.normals(), placed)).map(|v| v * scene.knock_deg);
        let mut noise = draws.normals();
        let mut wander = draws.normals();
        let mut lag = self.start_of_lag(scene, placed, noise, draws);
        let mut t_ms = scene.start_ms;
        (0..scene.events)
            .map(|i| {
                let mut dt_s = 0.0;
                if i > 0 {
                    let dt_ms = scene.every_ms + scene.jitter_ms * draws.between(-1.0, 1.0);
                    t_ms += dt_ms;
                    dt_s = dt_ms * 1e-3;
                    noise = coloured(noise, dt_s, self.colour_s, draws);
                }
                let mut up = placed;
                if scene.wander_deg > 0.0 {
                    wander = coloured(wander, dt_s, WANDER_S, draws);
                    up = turned(up, wander.map(|w| w * scene.wander_deg));
                }
                if i >= scene.events / 2 {
                    up = turned(up, knock);
                }
                let shaken = plus(up, tremor.at(t_ms * 1e-3) / G, tremor.direction);
                let felt = self.felt(shaken, noise);
                let angles_deg = scene.oriented.then(|| {
                    self.follow(&mut lag, up, felt, dt_s);
                    angles_of_up(unit(plus(up, 1.0, lag)))
                        .map(|a| (a * ANGLE_STEPS_PER_DEG).round() / ANGLE_STEPS_PER_DEG)
                });
                Event {
                    t_ms,
                    force_m_s2: felt.map(|f| {
                        let f = f * self.sign;
                        if scene.rounded {
                            // Divided, not multiplied, by a whole number: the nearest double.
                            (f / FORCE_STEP_M_S2).round() / 10.0
                        } else {
                            f
                        }
                    }),
                    angles_deg,
                }
            })
            .collect()
    }

    /// Up in the device frame of a phone that lies as badly as `scene` and its case make it.
    fn placed_up(&self, scene: &Scene, draws: &mut Draws) -> [f64; 3] {
        let tilt = across(draws.normals(), scene.normal).map(|t| t * scene.tilt_deg);
        let heading = scene.normal.map(|n| n * scene.heading_deg * draws.normal());
        let turn = plus(plus(tilt, 1.0, heading), 1.0, scene.surface_deg);
        // The phone turns one way, so up turns the other way in its frame.
        turned(scene.up, plus(turn, 1.0, self.case_deg).map(|w| -w))
    }

    /// Specific force that the accelerometer shows, m/s², for a force of `up` in units of g.
    fn felt(&self, up: [f64; 3], noise: [f64; 3]) -> [f64; 3] {
        let mut shown = [0.0; 3];
        for (i, value) in shown.iter_mut().enumerate() {
            *value = G * dot(self.response[i], up) + self.zero_m_s2[i] + self.noise_m_s2 * noise[i];
        }
        shown
    }

    /// Error of the fused filter before the first event: what a filter that has run for ever would
    /// have (both its noise's variance and its covariance with the input are those of a first-order
    /// lag driven by coloured noise), and the scene's own.
    fn start_of_lag(
        &self,
        scene: &Scene,
        up: [f64; 3],
        noise: [f64; 3],
        draws: &mut Draws,
    ) -> [f64; 3] {
        let share = self.colour_s / (self.lag_s + self.colour_s);
        let fresh = libm::sqrt(share - share * share);
        let slow = plus(noise.map(|n| n * share), fresh, draws.normals());
        let mut lag = plus(unit(self.felt(up, slow)), -1.0, up);
        lag = plus(lag, self.lag_s, self.bias_rate(up));
        let start = across(draws.normals(), up);
        plus(lag, scene.start_deg.to_radians(), start)
    }

    /// One step of the fused filter: the gyroscope carries it with the phone's own turning, so only
    /// its error `lag` moves, towards what the accelerometer says.
    fn follow(&self, lag: &mut [f64; 3], up: [f64; 3], felt: [f64; 3], dt_s: f64) {
        let target = plus(plus(unit(felt), -1.0, up), self.lag_s, self.bias_rate(up));
        let kept = libm::exp(-dt_s / self.lag_s);
        *lag = plus(lag.map(|v| v * kept), 1.0 - kept, target);
    }

    /// How fast the gyroscope's bias alone would carry up away, 1/s.
    fn bias_rate(&self, up: [f64; 3]) -> [f64; 3] {
        crate::vector::cross(up, self.gyro_bias_deg_s.map(f64::to_radians))
    }
}

/// Noise of unit variance `dt_s` later: first-order, exact for any step.
fn coloured(last: [f64; 3], dt_s: f64, colour_s: f64, draws: &mut Draws) -> [f64; 3] {
    let kept = if colour_s > 0.0 {
        libm::exp(-dt_s / colour_s)
    } else {
        0.0
    };
    plus(
        last.map(|n| n * kept),
        libm::sqrt(1.0 - kept * kept),
        draws.normals(),
    )
}

/// A hand's tremor: one frequency, all axes together.
struct Tremor {
    amplitude_m_s2: f64,
    direction: [f64; 3],
    radians_per_s: f64,
    phase: f64,
}

impl Tremor {
    fn new(rms_m_s2: f64, draws: &mut Draws) -> Self {
        Self {
            // √2 for a sine, √3 for three axes.
            amplitude_m_s2: rms_m_s2 * libm::sqrt(6.0),
            direction: unit(draws.normals()),
            radians_per_s: std::f64::consts::TAU * draws.between(8.0, 12.0),
            phase: draws.between(0.0, std::f64::consts::TAU),
        }
    }

    fn at(&self, t_s: f64) -> f64 {
        if self.amplitude_m_s2 == 0.0 {
            return 0.0;
        }
        self.amplitude_m_s2 * libm::sin(self.radians_per_s * t_s + self.phase)
    }
}
