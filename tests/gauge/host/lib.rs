//! What several tests of the gauge share: a sensor in the hand, and looks at it.

use plumbmark::calibration::Calibration;
use plumbmark::direct::Taken;
use plumbmark_gauge::accelerometer::{Accelerometer, Stated};
use plumbmark_gauge::gauge::{Gauge, Look, Outlet};
use plumbmark_gauge::kept::{Found, Kept};
use plumbmark_gauge::lights::Show;
use plumbmark_gauge::lsm303agr::Lsm303agr;

/// A bus without anything on it: only the sensor's stated values are wanted.
pub struct NoBus;

impl embedded_hal::i2c::ErrorType for NoBus {
    type Error = embedded_hal::i2c::ErrorKind;
}

impl embedded_hal::i2c::I2c for NoBus {
    fn transaction(
        &mut self,
        _: u8,
        _: &mut [embedded_hal::i2c::Operation<'_>],
    ) -> Result<(), Self::Error> {
        Err(embedded_hal::i2c::ErrorKind::Other)
    }
}

/// What the sensor's data sheet says.
pub const STATED: Stated = <Lsm303agr<NoBus> as Accelerometer>::STATED;

/// Captures with their counts, and calibrations.
#[derive(Default)]
pub struct Out {
    /// Captures sent.
    pub sent: Vec<(Taken, u32)>,
    /// Calibrations kept.
    pub kept: Vec<Calibration>,
}

impl Outlet for Out {
    fn send(&mut self, taken: &Taken, count: u32) {
        self.sent.push((*taken, count));
    }

    fn keep(&mut self, calibration: Calibration) -> Option<Kept> {
        self.kept.push(calibration);
        let number = self.kept.len() as u16;
        Some(Kept {
            number,
            calibration,
        })
    }
}

/// A gauge with someone who holds it and presses its buttons.
pub struct Hand {
    /// The gauge.
    pub gauge: Gauge,
    /// Up along the gauge's axes.
    pub up: [f64; 3],
    /// The sensor's zero, share of gravity.
    pub zero: [f64; 3],
    /// Buttons held down.
    pub pressed: [bool; 2],
    /// What has left the gauge.
    pub out: Out,
    seed: u32,
}

impl Hand {
    /// A gauge just switched on that lies with its lights up, its sensor without zero.
    #[must_use]
    pub fn new(found: &Found) -> Self {
        Self {
            gauge: Gauge::new(&STATED, found, false),
            up: [0.0, 0.0, 1.0],
            zero: [0.0; 3],
            pressed: [false; 2],
            out: Out::default(),
            seed: 1,
        }
    }

    /// Noise of one count or so.
    fn noise(&mut self) -> f64 {
        self.seed = self
            .seed
            .wrapping_mul(1_664_525)
            .wrapping_add(1_013_904_223);
        f64::from(self.seed >> 16) / 16_384.0 - 2.0
    }

    /// A sample as the sensor gives it now.
    pub fn sample(&mut self) -> [i16; 3] {
        let counts = 9.81 / f64::from(STATED.count_m_s2);
        std::array::from_fn(|i| {
            ((self.up[i] + self.zero[i]) * counts + self.noise()).round() as i16
        })
    }

    /// Lets time go by, ms.
    pub fn wait(&mut self, ms: u32) {
        for _ in 0..ms / 10 {
            let look = Look {
                sample: Ok(Some(self.sample())),
                pressed: self.pressed,
                supply_low: false,
            };
            self.look(look);
        }
    }

    /// One look.
    pub fn look(&mut self, look: Look) {
        self.gauge.look(look, &mut self.out);
    }

    /// Presses, shortly or long, and waits until that has been understood.
    pub fn press(&mut self, buttons: [bool; 2], ms: u32) {
        self.pressed = buttons;
        self.wait(ms);
        self.pressed = [false; 2];
        self.wait(100);
    }

    /// Takes it up and lays it down again with `up`.
    pub fn lay(&mut self, up: [f64; 3]) {
        self.up = [0.5, 0.5, 0.707];
        self.wait(600);
        self.up = up;
        self.wait(300);
    }

    /// Switched on, tested, and the first check chosen.
    pub fn begin(&mut self) {
        self.wait(3_000);
        self.press([true, false], 100);
        self.wait(2_000);
    }

    /// What it shows.
    #[must_use]
    pub fn shows(&self) -> Show {
        self.gauge.shown().0
    }
}
