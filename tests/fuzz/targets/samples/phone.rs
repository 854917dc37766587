//! A phone with its clocks and its own zero, and how it lies still.

use arbitrary::{Result, Unstructured};
use plumbmark::findings::Device;
use plumbmark::live::Live;
use plumbmark::vector::Vec3;
use plumbmark_fuzz::any;

/// How a browser reports rest.
pub struct Signal {
    per_m_s2: f64,
    spacing_ms: f64,
    sign: f64,
    noise_m_s2: f64,
    /// Whether the fused orientation says the same, nothing, or whatever it said before.
    orientation: Option<bool>,
}

impl Signal {
    /// As browsers do, mostly.
    pub fn any(u: &mut Unstructured<'_>) -> Result<Self> {
        Ok(Self {
            per_m_s2: *u.choose(&[10.0, 10.0, 200.0])?,
            spacing_ms: *u.choose(&[16.7, 16.7, 16.7, 10.0, 33.0, 1.0, 0.001])?,
            sign: *u.choose(&[1.0, 1.0, 1.0, -1.0])?,
            noise_m_s2: *u.choose(&[0.0, 0.01, 0.05])?,
            orientation: *u.choose(&[Some(true), Some(false), None])?,
        })
    }
}

/// A phone in somebody's hand.
#[derive(Debug)]
pub struct Phone {
    pub live: Live,
    pub device: Device,
    /// Its zero, share of gravity.
    pub zero: Vec3,
    pub now_ms: f64,
    pub last_ms: f64,
    /// Wall clock.
    pub clock_ms: f64,
}

impl Phone {
    pub fn any(u: &mut Unstructured<'_>) -> Result<Self> {
        let mut live = Live::new();
        live.set_sign(*u.choose(&[1, 1, 0])?);
        Ok(Self {
            live,
            device: Device::default(),
            zero: any::between_each(u, -0.02, 0.02)?,
            now_ms: 1000.0,
            last_ms: f64::NAN,
            clock_ms: 0.0,
        })
    }

    pub fn motion(&mut self, after_ms: f64, values: [Option<f64>; 3]) {
        self.last_ms = self.now_ms + after_ms;
        if after_ms.is_finite() && after_ms.abs() < 1e6 {
            self.now_ms += after_ms;
        }
        self.live.motion(self.last_ms, values);
    }

    /// Rest with up along `up`.
    pub fn rest(&mut self, up: Vec3, how: &Signal, samples: u32) {
        let felt = [0, 1, 2].map(|i| f64::from(up[i] + self.zero[i]));
        match how.orientation {
            Some(true) => {
                let beta = felt[1].clamp(-1.0, 1.0).asin().to_degrees();
                let gamma = (-felt[0]).atan2(felt[2]).to_degrees();
                let rounded = |v: f64| Some((v * 10.0).round() / 10.0);
                self.live.orientation(rounded(beta), rounded(gamma));
            }
            Some(false) => self.live.orientation(None, None),
            None => {}
        }
        for i in 0..samples {
            let a = [0, 1, 2].map(|axis| {
                // The golden angle: no two samples alike, and no period that looks like tremor.
                let wave = (f64::from(i * (axis + 3)) * 2.399).sin();
                let a = how.sign * (9.806_65 * felt[axis as usize] + how.noise_m_s2 * wave);
                Some((a * how.per_m_s2).round() / how.per_m_s2)
            });
            self.motion(how.spacing_ms, a);
        }
    }

    /// Lifts the phone: nothing comes for a while.
    pub fn lift(&mut self) {
        self.now_ms += 300.0;
    }

    pub fn set_clock(&mut self, unix_ms: f64) {
        self.clock_ms = unix_ms;
        self.live.set_clock(unix_ms);
    }
}
