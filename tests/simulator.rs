//! A phone that is no part of core: zero, scale, noise with colour, placement, rounding. Shared by
//! the coverage study and the advice test. Everything in double precision and by definition.

use plumbmark::live::Live;
use plumbmark_tests::Draws;
use plumbmark_tests::vector::{cross, turned, unit};

const G: f64 = 9.80665;
const STEP: f64 = 0.1;
const DT_MS: f64 = 1000.0 / 60.0;

/// What one phone is like.
pub struct Phone {
    zero_m_s2: [f64; 3],
    scale: [f64; 3],
    noise_m_s2: f64,
    /// Correlation of one sample's noise with the next.
    colour: f64,
}

impl Phone {
    /// A phone of the nominal population: zero 6.3 mg rms an axis with a log-normal factor of 0.25
    /// from phone to phone, scale 0.4 % an axis, noise coloured with 20 to 100 ms.
    pub fn nominal(draws: &mut Draws, sigma_in_steps: f64) -> Self {
        let spread = (0.25 * draws.normal()).exp();
        let tau_ms = draws.between(20.0, 100.0);
        Self {
            zero_m_s2: [0; 3].map(|_| 6.3e-3 / 1.032 * spread * G * draws.normal()),
            scale: [0; 3].map(|_| 1.0 + 0.004 * draws.normal()),
            noise_m_s2: sigma_in_steps * STEP,
            colour: (-DT_MS / tau_ms).exp(),
        }
    }

    /// Lays the phone down where up is `up` (device frame), with a misplacement of `hold_deg`
    /// about each axis across up, and lets core watch for `events` samples from `t_ms` on.
    /// Returns the time after the last one.
    pub fn rest(
        &self,
        live: &mut Live,
        draws: &mut Draws,
        up: [f64; 3],
        hold_deg: f64,
        t_ms: f64,
        events: usize,
    ) -> f64 {
        let across = unit(cross(up, draws.direction()));
        let along = cross(up, across);
        let (p, q) = (draws.normal(), draws.normal());
        let tilt = [0, 1, 2].map(|i| hold_deg.to_radians() * (p * across[i] + q * along[i]));
        let felt = turned(up, tilt);
        let mut noise = [0; 3].map(|_| draws.normal());
        let fresh = (1.0 - self.colour * self.colour).sqrt();
        for i in 0..events {
            noise = noise.map(|n| self.colour * n + fresh * draws.normal());
            let a = [0, 1, 2].map(|k| {
                let v =
                    G * felt[k] * self.scale[k] + self.zero_m_s2[k] + self.noise_m_s2 * noise[k];
                Some((v / STEP).round() * STEP)
            });
            live.motion(t_ms + i as f64 * DT_MS, a);
        }
        t_ms + (events - 1) as f64 * DT_MS
    }
}

/// Up in the device frame for a phone on its back (top edge towards the head end) on a part whose
/// head end is raised by `elevation_deg` and which is rolled by `roll_deg`.
pub fn up_on_back(elevation_deg: f64, roll_deg: f64) -> [f64; 3] {
    let (se, ce) = elevation_deg.to_radians().sin_cos();
    let (sr, cr) = roll_deg.to_radians().sin_cos();
    [-ce * sr, se, ce * cr]
}
