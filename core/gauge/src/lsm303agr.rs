//! The accelerometer of the LSM303AGR, behind the trait, through its driver crate.
//!
//! Numbers are its data sheet's (DocID027765), table 3 "Sensor characteristics", at ±2 g.

use crate::accelerometer::{Accelerometer, Stated};
use crate::fault::Fault;
use embedded_hal::delay::DelayNs;
use embedded_hal::i2c::I2c;
use lsm303agr::interface::I2cInterface;
use lsm303agr::mode::MagOneShot;
use lsm303agr::{AccelMode, AccelOutputDataRate, AccelScale, Lsm303agr as Driver};
use plumbmark::prior::STANDARD_GRAVITY_M_S2;

/// High resolution, 12 bits: 0.98 mg a count.
const COUNT_G: f32 = 0.000_98;

/// Temperature between a calibration and its use, K: a warm workshop, a cold yard. Assumed.
const APART_K: f32 = 20.0;

/// The sensor on an I²C bus.
pub struct Lsm303agr<I> {
    driver: Driver<I2cInterface<I>, MagOneShot>,
    /// From the sensor's axes to the gauge's.
    turned: fn([i16; 3]) -> [i16; 3],
}

impl<I: I2c> Lsm303agr<I> {
    /// The sensor on `bus`, whose axes `turned` brings to the gauge's.
    pub fn new(bus: I, turned: fn([i16; 3]) -> [i16; 3]) -> Self {
        Self {
            driver: Driver::new_with_i2c(bus),
            turned,
        }
    }
}

impl<I: I2c> Accelerometer for Lsm303agr<I> {
    const STATED: Stated = Stated {
        count_m_s2: COUNT_G * STANDARD_GRAVITY_M_S2,
        one_g: 1020,
        sample_us: 10_000,
        largest_count: 2047,
        // Zero: ±80 mg at 25 °C taken in full, as it may be a standard deviation and no bound (the
        // sheet could not be looked up); 0.5 mg/K (value from memory) over 40 K beside it.
        u_zero: 0.082,
        // The tolerance with the drift: what lies beyond is refused.
        largest_zero: 0.088,
        // No tolerance is stated: ±4 %, a comparable part's worst (BMI160 data sheet), a rectangle.
        u_scale: 0.023,
        // The typical value in full, not as a rectangle: it is not guaranteed.
        u_zero_drift: 0.000_5 * APART_K,
        // 0.01 %/K, value from memory.
        u_scale_drift: 0.000_1 * APART_K,
    };

    fn start(&mut self) -> Result<(), Fault> {
        let id = self.driver.accelerometer_id();
        if !id.map_err(|_| Fault::NoAnswer)?.is_correct() {
            return Err(Fault::WrongSensor);
        }
        let (mode, rate) = (AccelMode::HighResolution, AccelOutputDataRate::Hz100);
        self.driver
            .init()
            .and_then(|()| self.driver.set_accel_scale(AccelScale::G2))
            .and_then(|()| self.driver.set_accel_mode_and_odr(&mut Later, mode, rate))
            .map_err(|_| Fault::NoAnswer)
    }

    fn sample(&mut self) -> Result<Option<[i16; 3]>, Fault> {
        let status = self.driver.accel_status().map_err(|_| Fault::NoAnswer)?;
        if !status.xyz_new_data() {
            return Ok(None);
        }
        let felt = self.driver.acceleration().map_err(|_| Fault::NoAnswer)?;
        let (x, y, z) = felt.xyz_unscaled();
        Ok(Some((self.turned)([x, y, z])))
    }
}

/// The driver need not wait for the sensor's first samples: the self test leaves them out.
struct Later;

impl DelayNs for Later {
    fn delay_ns(&mut self, _ns: u32) {}
}
