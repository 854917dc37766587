//! A phone in the hand of a test: laid down, lifted, turned; its events go to core one by one.

use crate::Draws;
use crate::vector::unit;
use plumbmark::live::Live;
use plumbmark::reason::NoReading;

const G: f64 = 9.80665;
const DT_MS: f64 = 1000.0 / 60.0;
/// Noise of a sample, m/s²: a quiet sensor's, which no browser rounds here.
const NOISE_M_S2: f64 = 0.02;

/// A phone with a zero, and the page behind it.
pub struct Hand {
    /// Core.
    pub live: Live,
    /// Time of the last event, ms.
    pub t_ms: f64,
    /// Zero of the sensor, share of gravity, device frame.
    pub zero: [f64; 3],
    /// The same of the fused orientation, which inherits it.
    pub fused_zero: [f64; 3],
    /// Whether the browser gives the fused orientation, and its turn about the vertical, degrees.
    pub alpha_deg: Option<f64>,
    draws: Draws,
}

impl Hand {
    /// A phone whose sign is known and whose browser gives no orientation.
    #[must_use]
    pub fn new(zero: [f64; 3]) -> Self {
        let mut live = Live::new();
        live.set_sign(1);
        Self {
            live,
            t_ms: 1000.0,
            zero,
            fused_zero: zero,
            alpha_deg: None,
            draws: Draws::new(5),
        }
    }

    /// Lies for `events` samples where up is `up`, device frame. Returns why there is no reading.
    pub fn lie(&mut self, up: [f64; 3], events: usize) -> Option<NoReading> {
        let felt = [0, 1, 2].map(|i| up[i] + self.zero[i]);
        if self.alpha_deg.is_some() {
            // W3C's angles of the direction that the fused orientation has.
            let [x, y, z] = unit([0, 1, 2].map(|i| up[i] + self.fused_zero[i]));
            let angles = [y.asin(), (-x).atan2(z)].map(f64::to_degrees);
            self.live.orientation(Some(angles[0]), Some(angles[1]));
        } else {
            self.live.orientation(None, None);
        }
        self.live.heading(self.alpha_deg);
        for _ in 0..events {
            self.t_ms += DT_MS;
            let noisy = felt.map(|f| Some(G * f + NOISE_M_S2 * self.draws.normal()));
            self.live.motion(self.t_ms, noisy);
        }
        self.live.tick(self.t_ms).err()
    }

    /// Is lifted: a movement that core sees.
    pub fn lift(&mut self) {
        self.t_ms += DT_MS;
        self.live
            .motion(self.t_ms, [Some(2.0), Some(2.0), Some(9.4)]);
        self.t_ms += DT_MS;
        self.live
            .motion(self.t_ms, [Some(-2.0), Some(-2.0), Some(9.4)]);
        assert!(self.live.tick(self.t_ms).is_err());
    }
}
