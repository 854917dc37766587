//! What the last second of a phone says: its up vector and how uncertain that is.

use crate::budget::UpEstimate;
use crate::check::Outcome;
use crate::frames::DEG;
use crate::fused::Fused;
use crate::prior::{AGREE_DEG, AT_REST_M_S2, NOISE_STEPS, UNSEEN_STEP_M_S2};
use crate::reason::NoReading;
use crate::rounded::{AxisEstimate, AxisSums, estimate, inflation};
use crate::vector::{Vec3, norm, scaled};
use crate::window::{Still, Window};
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
    /// The checks that the placement gives, answered.
    pub outcomes: Vec<Outcome, 2>,
}

/// From acceleration, where the phone rests; the fused orientation may object. A gauge without one
/// gives an empty [`Fused`]. `fine`: whether a count may be finer than the sensor's own step.
///
/// # Errors
/// What [`Window::still`] finds; [`NoReading::NotGravity`], [`NoReading::Drifting`],
/// [`NoReading::ChannelsDisagree`].
pub fn by_acceleration(window: &Window, fused: &Fused, fine: bool) -> Result<Reading, NoReading> {
    let still = window.still()?;
    let count = window.count_m_s2();
    let step_counts = step_counts(&still, fine, count);
    let axes = estimates(&still);
    let force: Vec3 = core::array::from_fn(|i| f32::from(still.origin[i]) + axes[i].value);
    let length = norm(force);
    if !(AT_REST_M_S2.0..AT_REST_M_S2.1).contains(&(length * count)) {
        return Err(NoReading::NotGravity);
    }
    // A sensor whose own step is coarser than a count leaves half of that step.
    let own_half = if step_counts > 1.0 {
        0.5 * step_counts
    } else {
        0.0
    };
    let half = axes.map(|a| a.half_width.max(own_half) / length);
    let up = UpEstimate {
        up: scaled(force, 1.0 / length),
        noise: axes.map(|a| a.noise / length),
        half_steps: core::array::from_fn(|i| {
            core::array::from_fn(|j| if i == j { half[i] } else { 0.0 })
        }),
        worst_half_step: 0.5 * step_counts / length,
        settle_deg: 0.0,
    };
    compare_channels(fused, &up, half)?;
    Ok(Reading {
        channel: Channel::Acceleration,
        up,
        samples: still.axes[0].n,
        rate_hz: still.rate_hz,
        step_m_s2: step_counts * count,
        outcomes: Vec::new(),
    })
}

/// Step of the sensor behind the counts, in counts.
fn step_counts(still: &Still, fine: bool, count_m_s2: f32) -> f32 {
    match still.least_change {
        Some(change) => f32::from(change),
        None if fine => UNSEEN_STEP_M_S2 / count_m_s2,
        None => 1.0,
    }
}

/// Lets the fused orientation object: by slow movement, or by saying something else.
fn compare_channels(fused: &Fused, up: &UpEstimate, half: Vec3) -> Result<(), NoReading> {
    let noise_deg = up.noise.into_iter().fold(0.0, f32::max) * DEG;
    if fused
        .drift_deg()
        .is_some_and(|d| d > DRIFT_DEG + 1.2 * noise_deg)
    {
        return Err(NoReading::Drifting);
    }
    let Some(other) = fused.mean() else {
        return Ok(());
    };
    let allowed = |i: usize| half[i] + 2.2 * up.noise[i] + AGREE_DEG / DEG;
    if (0..3).any(|i| (up.up[i] - other[i]).abs() > allowed(i)) {
        return Err(NoReading::ChannelsDisagree);
    }
    Ok(())
}

/// From the fused orientation alone, where a browser gives no acceleration.
pub(crate) fn by_orientation(fused: &Fused) -> Result<Reading, NoReading> {
    let settled = fused.settled().ok_or(NoReading::Settling)?;
    if fused.drift_deg().is_some_and(|d| d > 2.0 * DRIFT_DEG) {
        return Err(NoReading::Drifting);
    }
    // Slow noise of the filter is invisible in a second: 0.6 of the accelerometer's, which
    // nobody sees here, so the noisiest one.
    let unseen = 0.6 * NOISE_STEPS.1 * 0.1 / 9.8 / libm::sqrtf(60.0);
    let noise = libm::hypotf(settled.noise_deg / DEG, unseen);
    let [by_beta, by_gamma] = settled.half_steps;
    Ok(Reading {
        channel: Channel::Orientation,
        up: UpEstimate {
            up: settled.up,
            noise: [noise; 3],
            half_steps: [by_beta, by_gamma, [0.0; 3]],
            worst_half_step: norm(by_beta),
            settle_deg: settled.settle_deg,
        },
        samples: 60,
        rate_hz: 60.0,
        step_m_s2: 0.0,
        outcomes: Vec::new(),
    })
}

fn estimates(still: &Still) -> [AxisEstimate; 3] {
    let n = still.axes[0].n;
    let variances = core::array::from_fn(|i| AxisSums::variance(&still.axes[i]));
    let factor = inflation(n, &still.batch_means, variances);
    core::array::from_fn(|i| estimate(&still.axes[i], factor, NOISE_STEPS))
}
