//! An accelerometer behind one trait, and what its maker states of it.

use crate::fault::Fault;
use crate::kept::Kept;
use plumbmark::sensor::Sensor;
use plumbmark::vector::hypot;

/// What a data sheet says, as standard uncertainties.
#[derive(Debug, Clone, Copy)]
pub struct Stated {
    /// Size of one count, m/s².
    pub count_m_s2: f32,
    /// Gravity, counts.
    pub one_g: u16,
    /// Time between two samples, µs.
    pub sample_us: u32,
    /// Largest count; what reaches it is no reading.
    pub largest_count: i16,
    /// Zero of each axis over the whole temperature range, share of gravity.
    pub u_zero: f32,
    /// Largest zero that is taken for this sensor's and not for a mistake, share of gravity.
    pub largest_zero: f32,
    /// Scale of each axis, share.
    pub u_scale: f32,
    /// What temperature may do to the zero between a calibration and its use, share of gravity.
    pub u_zero_drift: f32,
    /// What it may do to the scale, share.
    pub u_scale_drift: f32,
}

/// Three axes in whole counts, turned to the gauge's own axes: x to the right, y to the end that
/// lies on the part's head, z out of the lights.
pub trait Accelerometer {
    /// What is known of it.
    const STATED: Stated;

    /// Finds it by its identity and starts it.
    ///
    /// # Errors
    /// [`Fault::NoAnswer`], [`Fault::WrongSensor`].
    fn start(&mut self) -> Result<(), Fault>;

    /// The next sample, where there is a new one.
    ///
    /// # Errors
    /// [`Fault::NoAnswer`].
    fn sample(&mut self) -> Result<Option<[i16; 3]>, Fault>;
}

/// What a board mounted on its base adds to a zero on the side that it lies on, share of gravity:
/// 0.5 mm under the 45 mm between two screws is 0.64°. Assumed. A reversal takes it out.
const U_MOUNTED: f32 = 0.011;

/// The base's side, so that readings on it share that error.
const SIDE: u8 = 1;

/// The sensor as its maker states it, or as a calibration found it, with what temperature may have
/// done since.
#[must_use]
pub fn sensor(stated: &Stated, kept: Option<&Kept>) -> Sensor {
    let mut sensor = Sensor::unchecked(stated.u_zero, stated.u_scale);
    if let Some(kept) = kept {
        sensor = sensor.calibrated(&kept.calibration, kept.number);
        sensor = sensor.crept(stated.u_zero_drift);
        sensor.u_scale = sensor.u_scale.map(|u| hypot(u, stated.u_scale_drift));
    }
    sensor.u_side = [U_MOUNTED, U_MOUNTED, 0.0];
    sensor.side = SIDE;
    sensor
}
