//! What a second of rest says: an up vector by either channel, and how uncertain it is.

use crate::budget::UpEstimate;
use crate::check::Outcome;
use crate::frames::DEG;
use crate::fused::{Fused, Settled};
use crate::in_vehicle::InVehicle;
use crate::prior::{
    AGREE_DEG, AT_REST_M_S2, LARGEST_ZERO, NOISE_STEPS, STANDARD_GRAVITY_M_S2, UNSEEN_STEP_M_S2,
};
use crate::reason::NoReading;
use crate::rounded::{AxisSums, estimate, noise_bounds};
use crate::sensor::Sensor;
use crate::vector::{Vec3, hypot, norm, scaled};
use crate::window::Still;
use heapless::Vec;

/// Allowance on slow movement of the fused orientation, degrees: its own rounding.
const DRIFT_DEG: f32 = 0.1;

/// The channel in charge of a reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum Channel {
    /// Acceleration including gravity.
    Acceleration,
    /// The browser's fused orientation.
    Orientation,
}

impl Channel {
    /// Both channels.
    pub const ALL: [Self; 2] = [Self::Acceleration, Self::Orientation];
}

/// What is known of the zero behind a reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum ZeroBy {
    /// Nothing: phone not yet checked.
    Assumed,
    /// A turn on a table, or a calibration, that still counts.
    Found,
    /// This reading itself: the phone was turned end for end on the part.
    Turn,
}

impl ZeroBy {
    /// All of them, in the order of their codes, from 0.
    pub const ALL: [Self; 3] = [Self::Assumed, Self::Found, Self::Turn];
}

/// What the last second says.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// The channel in charge.
    pub channel: Channel,
    /// The up vector and its uncertainty, device frame.
    pub up: UpEstimate,
    /// Samples behind it.
    pub samples: u32,
    /// Samples a second.
    pub rate_hz: f32,
    /// Step of the values, m/s².
    pub step_m_s2: f32,
    /// What is known of the zero.
    pub zero_by: ZeroBy,
    /// The checks that the placement gives, answered as parked.
    pub outcomes: Vec<Outcome, 2>,
    /// The same in the vehicle, where its level is known.
    pub in_vehicle: Option<InVehicle>,
}

/// One placement at rest: what is kept of it, whatever is known of the phone's zero.
#[derive(Debug, Clone, Copy)]
pub struct Rest {
    /// The last second's sums; `None` where the orientation channel is alone.
    pub still: Option<Still>,
    /// Size of a count, m/s².
    pub count_m_s2: f32,
    /// Whether the values come unrounded.
    pub fine: bool,
    /// Three seconds of fused orientation, where they are there.
    pub settled: Option<Settled>,
    /// Mean of the last second of fused orientation.
    pub fused: Option<Vec3>,
    /// Slow movement that it shows, degrees.
    pub drift_deg: f32,
    /// Zero of one axis that can still be the sensor's, share of gravity.
    pub largest_zero: f32,
}

impl Rest {
    /// Puts the last second together.
    #[must_use]
    pub fn new(still: Option<Still>, count_m_s2: f32, fine: bool, fused: &Fused) -> Self {
        Self {
            still,
            count_m_s2,
            fine,
            settled: fused.settled(),
            fused: fused.mean(),
            drift_deg: fused.drift_deg().unwrap_or(0.0),
            largest_zero: LARGEST_ZERO,
        }
    }

    /// The last second of a sensor that no browser stands before.
    #[must_use]
    pub fn direct(still: Still, count_m_s2: f32, largest_zero: f32) -> Self {
        Self {
            still: Some(still),
            count_m_s2,
            fine: false,
            settled: None,
            fused: None,
            drift_deg: 0.0,
            largest_zero,
        }
    }

    /// Up by acceleration, a/|a| of each axis's [`estimate`], uncertainties over |a| likewise, with
    /// `noise_steps` as bounds of a sample's noise; the fused orientation may object. The sensor is
    /// an unchecked one.
    ///
    /// # Errors
    /// [`NoReading::NoSensor`], [`NoReading::NotGravity`], [`NoReading::Drifting`],
    /// [`NoReading::ChannelsDisagree`].
    pub fn by_acceleration(&self, noise_steps: (f32, f32)) -> Result<UpEstimate, NoReading> {
        let still = self.still.as_ref().ok_or(NoReading::NoSensor)?;
        let inflation = still.inflation();
        let axes = still
            .axes
            .each_ref()
            .map(|a| estimate(a, inflation, noise_steps));
        let force: Vec3 = core::array::from_fn(|i| f32::from(still.origin[i]) + axes[i].value);
        let length = norm(force);
        if !self.can_rest_at(length * self.count_m_s2) {
            return Err(NoReading::NotGravity);
        }
        // A sensor whose own step is coarser than a count leaves half of that step.
        let step = self.step_counts(still);
        let own_half = if step > 1.0 { 0.5 * step } else { 0.0 };
        let per_length = 1.0 / length;
        let half = axes.map(|a| a.half_width.max(own_half) * per_length);
        let up = UpEstimate {
            up: scaled(force, per_length),
            noise: axes.map(|a| a.noise * per_length),
            half_steps: along_axes(half),
            worst_half_step: 0.5 * step * per_length,
            settle_deg: 0.0,
            sensor: Sensor::assumed(),
        };
        self.compare_channels(&up, half)?;
        Ok(up)
    }

    /// Up by the fused orientation: [`crate::frames::up_from_angles`], averaged as unit vectors.
    /// The step is half of 0.1° in β and in γ by [`crate::frames::up_by_angles`]. The sensor is an
    /// unchecked one.
    ///
    /// # Errors
    /// [`NoReading::Settling`], [`NoReading::Drifting`].
    #[inline(never)]
    pub fn by_orientation(&self) -> Result<UpEstimate, NoReading> {
        let settled = self.settled.as_ref().ok_or(NoReading::Settling)?;
        if self.drift_deg > 2.0 * DRIFT_DEG {
            return Err(NoReading::Drifting);
        }
        // Slow noise of the filter is invisible in a second: 0.6 of the accelerometer's noise of
        // the mean stands for it (simulated). Where nobody sees that, the noisiest one.
        let unseen =
            self.still
                .as_ref()
                .map_or(NOISE_STEPS.1 * 0.1 / 9.8 / libm::sqrtf(60.0), |still| {
                    let inflation = still.inflation();
                    let noise = |a: &AxisSums| estimate(a, inflation, NOISE_STEPS).noise;
                    let largest = still.axes.iter().map(noise).fold(0.0, f32::max);
                    largest * self.count_m_s2 / 9.8
                });
        let noise = hypot(settled.noise_deg / DEG, 0.6 * unseen);
        let [by_beta, by_gamma] = settled.half_steps;
        let mut half_steps = [[0.0; 3]; 6];
        half_steps[0] = by_beta;
        half_steps[1] = by_gamma;
        Ok(UpEstimate {
            up: settled.up,
            noise: [noise; 3],
            half_steps,
            worst_half_step: norm(by_beta),
            settle_deg: settled.settle_deg,
            sensor: Sensor::assumed(),
        })
    }

    /// Up by a channel.
    ///
    /// # Errors
    /// As the channel's own.
    pub fn by(&self, channel: Channel, noise_steps: (f32, f32)) -> Result<UpEstimate, NoReading> {
        match channel {
            Channel::Acceleration => self.by_acceleration(noise_steps),
            Channel::Orientation => self.by_orientation(),
        }
    }

    /// Mean up of a channel over the last second, whatever its uncertainty.
    #[must_use]
    pub fn mean_up(&self, channel: Channel) -> Option<Vec3> {
        match channel {
            Channel::Acceleration => self.by_acceleration(NOISE_STEPS).ok().map(|up| up.up),
            Channel::Orientation => self.fused,
        }
    }

    /// Length of the specific force, |a|/g with standard gravity ([`STANDARD_GRAVITY_M_S2`]); 0
    /// where there is none.
    #[must_use]
    pub fn length_g(&self) -> f32 {
        self.still.as_ref().map_or(0.0, |still| {
            let force: Vec3 =
                core::array::from_fn(|i| f32::from(still.origin[i]) + still.axes[i].mean());
            norm(force) * self.count_m_s2 / STANDARD_GRAVITY_M_S2
        })
    }

    /// Whether a sensor at rest can feel this much, m/s²: the band of a phone's, wider in proportion
    /// where its maker states a larger zero.
    fn can_rest_at(&self, force_m_s2: f32) -> bool {
        let (low, high) = AT_REST_M_S2;
        let more = self.largest_zero / LARGEST_ZERO - 1.0;
        let wider = 0.5 * (high - low) * more;
        (low - wider..high + wider).contains(&force_m_s2)
    }

    /// Samples and samples a second behind it.
    #[must_use]
    pub fn samples(&self) -> (u32, f32) {
        self.still
            .as_ref()
            .map_or((60, 60.0), |still| (still.axes[0].n, still.rate_hz))
    }

    /// Step of the acceleration values, m/s²; 0 where there are none.
    #[must_use]
    pub fn step_m_s2(&self) -> f32 {
        self.still
            .as_ref()
            .map_or(0.0, |still| self.step_counts(still) * self.count_m_s2)
    }

    /// Step of the sensor behind the counts, in counts.
    fn step_counts(&self, still: &Still) -> f32 {
        match still.least_change {
            Some(change) => f32::from(change),
            None if self.fine => UNSEEN_STEP_M_S2 / self.count_m_s2,
            None => 1.0,
        }
    }

    /// Lets the fused orientation object: by slow movement, or by saying something else.
    fn compare_channels(&self, up: &UpEstimate, half: Vec3) -> Result<(), NoReading> {
        let noise_deg = up.noise.into_iter().fold(0.0, f32::max) * DEG;
        if self.drift_deg > DRIFT_DEG + 1.2 * noise_deg {
            return Err(NoReading::Drifting);
        }
        let Some(other) = self.fused else {
            return Ok(());
        };
        let allowed = |i: usize| half[i] + 2.2 * up.noise[i] + AGREE_DEG / DEG;
        if (0..3).any(|i| (up.up[i] - other[i]).abs() > allowed(i)) {
            return Err(NoReading::ChannelsDisagree);
        }
        Ok(())
    }
}

/// Bounds of the noise of one sample, in rounding steps, that the axes of one or more placements
/// show together: an axis that shows one level says nothing alone. As assumed where values are not
/// rounded.
#[must_use]
pub fn noise_of<'a>(placements: impl Iterator<Item = &'a Rest>) -> (f32, f32) {
    let (mut total, mut windows) = (0.0, 0);
    for rest in placements {
        let Some(still) = rest.still.as_ref().filter(|_| !rest.fine) else {
            return NOISE_STEPS;
        };
        total += still.axes.iter().map(AxisSums::variance).sum::<f32>();
        windows += 3;
    }
    if windows == 0 {
        return NOISE_STEPS;
    }
    noise_bounds(total / windows as f32, windows)
}

/// One rectangle along each axis.
fn along_axes(half: Vec3) -> [Vec3; 6] {
    core::array::from_fn(|i| core::array::from_fn(|j| if i == j { half[i] } else { 0.0 }))
}
