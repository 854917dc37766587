//! Random numbers with a seed: the same on every machine.

use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use rand_distr::StandardNormal;

/// One stream of random numbers.
pub struct Draws(ChaCha8Rng);

impl Draws {
    /// Stream `stream` of `seed`: as many independent ones as there are draws to share out.
    #[must_use]
    pub fn new(seed: u64, stream: u64) -> Self {
        let mut generator = ChaCha8Rng::seed_from_u64(seed);
        generator.set_stream(stream);
        Self(generator)
    }

    /// Uniform in [0, 1).
    pub fn uniform(&mut self) -> f64 {
        self.0.random()
    }

    /// Uniform between two values.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.uniform()
    }

    /// Log-uniform between two positive values.
    pub fn log_between(&mut self, (low, high): (f64, f64)) -> f64 {
        low * libm::pow(high / low, self.uniform())
    }

    /// Standard normal.
    pub fn normal(&mut self) -> f64 {
        self.0.sample(StandardNormal)
    }

    /// Three standard normals.
    pub fn normals(&mut self) -> [f64; 3] {
        [0; 3].map(|_| self.normal())
    }
}
