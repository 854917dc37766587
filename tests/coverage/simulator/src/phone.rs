//! What phones are like, and one of them.

use crate::{Draws, FORCE_STEP_M_S2, G};

/// What the phones of a population are like. Standard deviations unless it says otherwise.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Population {
    /// Zero of one axis, mg, for the phone in the middle of the population.
    pub zero_mg: f64,
    /// Logarithm of the factor by which one phone's zeros are larger than another's.
    pub zero_spread: f64,
    /// Scale error of one axis.
    pub scale: f64,
    /// Each of the six cross-axis errors.
    pub cross_axis: f64,
    /// Range of the noise's correlation time, s; uniform.
    pub colour_s: (f64, f64),
    /// Range of the fused filter's time constant, s; log-uniform.
    pub lag_s: (f64, f64),
    /// Bias left in the gyroscope, degrees a second an axis.
    pub gyro_bias_deg_s: f64,
    /// How far the phone's case is from parallel to its own axes, degrees an axis.
    pub case_deg: f64,
}

impl Population {
    /// The population that coverage is judged on. With its spread the zeros are 6.7 mg rms: 13.4 mg
    /// at 95 %, and 6.7 % of the phones have an axis above 16 mg.
    pub const NOMINAL: Self = Self {
        zero_mg: 6.3,
        zero_spread: 0.25,
        scale: 0.004,
        cross_axis: 0.002,
        colour_s: (0.02, 0.1),
        lag_s: (0.5, 5.0),
        gyro_bias_deg_s: 0.0,
        case_deg: 0.0,
    };
}

/// One phone.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Phone {
    /// What the accelerometer shows with no force on it, m/s².
    pub zero_m_s2: [f64; 3],
    /// What it shows of a force: scale on the diagonal, cross-axis errors beside it.
    pub response: [[f64; 3]; 3],
    /// Noise of one sample of one axis, m/s².
    pub noise_m_s2: f64,
    /// The noise's correlation time, s; 0 for white noise.
    pub colour_s: f64,
    /// Time constant of the fused filter, s.
    pub lag_s: f64,
    /// Bias left in the gyroscope, degrees a second.
    pub gyro_bias_deg_s: [f64; 3],
    /// Turn of the phone's axes against its own case, degrees; a reversal cancels it.
    pub case_deg: [f64; 3],
    /// +1 where the browser gives +g upwards at rest, as W3C says; −1 where the opposite.
    pub sign: f64,
}

impl Phone {
    /// A phone without any error.
    pub const PERFECT: Self = Self {
        zero_m_s2: [0.0; 3],
        response: [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]],
        noise_m_s2: 0.0,
        colour_s: 0.0,
        lag_s: 1.0,
        gyro_bias_deg_s: [0.0; 3],
        case_deg: [0.0; 3],
        sign: 1.0,
    };

    /// Some phone of `population`, with noise of `noise_steps` of a browser's step.
    pub fn draw(population: &Population, noise_steps: f64, draws: &mut Draws) -> Self {
        let spread = libm::exp(population.zero_spread * draws.normal());
        let zero = population.zero_mg * 1e-3 * G * spread;
        let mut response = Self::PERFECT.response;
        for (i, row) in response.iter_mut().enumerate() {
            for (j, r) in row.iter_mut().enumerate() {
                let size = if i == j {
                    population.scale
                } else {
                    population.cross_axis
                };
                *r += size * draws.normal();
            }
        }
        Self {
            zero_m_s2: draws.normals().map(|z| z * zero),
            response,
            noise_m_s2: noise_steps * FORCE_STEP_M_S2,
            colour_s: draws.between(population.colour_s.0, population.colour_s.1),
            lag_s: draws.log_between(population.lag_s),
            gyro_bias_deg_s: draws.normals().map(|b| b * population.gyro_bias_deg_s),
            case_deg: draws.normals().map(|c| c * population.case_deg),
            sign: 1.0,
        }
    }

    /// The same phone after its zero has moved by `drift_mg` rms an axis: it warmed up.
    #[must_use]
    pub fn drifted(mut self, drift_mg: f64, draws: &mut Draws) -> Self {
        for (zero, d) in self.zero_m_s2.iter_mut().zip(draws.normals()) {
            *zero += drift_mg * 1e-3 * G * d;
        }
        self
    }
}
