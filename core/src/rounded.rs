//! Mean of readings that were rounded to whole counts, with what rounding leaves unknown.
//!
//! A still phone behind a browser gives the same rounded value over and over: its scatter is zero
//! and its error up to half a step. How many levels a window shows says how much noise there is to
//! see between the steps; from that follow an estimate better than the mean and a rectangle that
//! bounds what is left. Sheppard's correction is from the handbooks; the two-level case inverts the
//! normal distribution at the share of the upper level.

use crate::bounded::bounded;
use crate::trig::sin_deg;

/// Sums of one axis over a window, in counts from an origin that is itself a whole count.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct AxisSums {
    /// Samples.
    pub n: u32,
    /// Sum.
    pub sum: i32,
    /// Sum of squares.
    pub squares: u32,
    /// Lowest and highest count seen.
    pub range: (i16, i16),
}

impl AxisSums {
    /// Mean Σx/n, counts from the origin.
    #[must_use]
    pub fn mean(&self) -> f32 {
        self.sum as f32 / self.n as f32
    }

    /// n² times the variance about the mean, counts². In integers: the difference of two large
    /// squares would lose it.
    #[must_use]
    pub fn scatter(&self) -> u64 {
        let sum = u64::from(self.sum.unsigned_abs());
        (u64::from(self.squares) * u64::from(self.n)).saturating_sub(sum * sum)
    }

    /// Variance about the mean, Σ(x − mean)²/n, counts².
    #[must_use]
    pub fn variance(&self) -> f32 {
        let n = self.n as f32;
        self.scatter() as f32 / (n * n)
    }
}

/// Estimate of one axis, in counts from the origin.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct AxisEstimate {
    /// Best value.
    pub value: f32,
    /// Half-width of the rectangle that rounding leaves.
    pub half_width: f32,
    /// Standard uncertainty from noise.
    pub noise: f32,
}

/// Factor on the noise of the mean: Student's t at 12 degrees of freedom over the normal's 1.96
/// (1.11), and 1.26 for colour that batches of 0.2 s do not see (simulated).
const NOISE_FACTOR: f32 = 1.4;

/// Estimates one axis. `inflation` is the factor F ≥ 1 by which colour widens the variance of the
/// mean; `noise_steps` bounds the noise σ of one sample, in counts.
///
/// One level: its middle, with a rectangle. Two, the upper one's share being Φ(z): the step between
/// them + σ·z. More: the mean + [`bias`]·sin 2π·mean, σ² = variance − 1/12 (Sheppard). The noise of
/// the mean is √(F·variance/n), widened for few samples and colour. Widths by simulation; sources
/// in the module.
#[must_use]
pub fn estimate(axis: &AxisSums, inflation: f32, noise_steps: (f32, f32)) -> AxisEstimate {
    let (s_lo, s_hi) = noise_steps;
    let n = axis.n as f32;
    let mean = axis.mean();
    let levels = i32::from(axis.range.1) - i32::from(axis.range.0);
    if levels == 0 {
        return AxisEstimate {
            value: mean,
            // 0.484 at the least noise that a phone has; more of it is sooner seen. Simulated.
            half_width: (0.484 - 2.0 * (s_lo - 0.02)).max(0.1),
            noise: 0.0,
        };
    }
    let variance = axis.variance();
    let noise = NOISE_FACTOR * libm::sqrtf(inflation * variance / n);
    if levels == 1 {
        let upper_share = mean - f32::from(axis.range.0);
        let p = bounded((upper_share * n + 0.5) / (n + 1.0), 0.0, 1.0);
        let (z, inverse_density) = normal_quantile(p);
        // No third level was seen: that bounds the noise from above.
        let high = s_hi.min(1.0 / (third_level_z(n / inflation) + z.abs()));
        let low = s_lo.min(0.8 * high);
        let middle = 0.5 * (high + low);
        return AxisEstimate {
            value: f32::from(axis.range.0) + 0.5 + middle * z,
            half_width: 0.5 * z.abs() * (high - low),
            noise: noise * middle * inverse_density,
        };
    }
    let (low, high) = (s_lo.max(0.22), s_hi.max(0.25));
    let of_noise = bounded(variance - 1.0 / 12.0, low * low, high * high);
    let bias = bias(of_noise);
    // Noise of half a step hides the steps: what is left then is bounded, not worth a sine.
    let found = if of_noise < MUCH_NOISE {
        bias * sin_deg(360.0 * mean)
    } else {
        0.0
    };
    AxisEstimate {
        value: mean + found,
        half_width: bias,
        noise,
    }
}

/// Variance of noise of half a step, counts².
const MUCH_NOISE: f32 = 0.25;

/// How far rounding can pull a mean, for noise of this variance in counts²: exp(−2π²σ²)/π, the
/// first term of the sawtooth's Fourier series. From σ of 0.22 to 0.5, beyond which it is held,
/// within 5e-4 (Chebyshev): an exponential costs a small board more than the rest of an estimate.
#[must_use]
pub fn bias(variance: f32) -> f32 {
    let v = bounded(variance, 0.0484, MUCH_NOISE);
    0.289 + v * (-4.796 + v * (32.591 + v * (-104.125 + v * 128.683)))
}

/// Factor by which colour widens the variance of the mean, from that of all axes together as
/// batches show it, counts² (one axis alone has four degrees of freedom): n·var(mean)/variance, at
/// least 1; batch means as in Flyvbjerg and Petersen (1989).
#[must_use]
pub fn inflation(axes: &[AxisSums; 3], of_mean: f32) -> f32 {
    let scatter: u64 = axes
        .iter()
        .map(AxisSums::scatter)
        .fold(0, u64::saturating_add);
    if scatter == 0 {
        return 1.0;
    }
    let n = axes[0].n as f32;
    (n * n * n * of_mean / scatter as f32).max(1.0)
}

/// Bounds of the noise of one sample, in counts, from the mean variance of several windows at
/// different places between the steps: an axis that shows one level says nothing alone, many do.
///
/// The mean of a rounded variance over all places is σ/√π for little noise and σ² + 1/12 beyond
/// (exact integral; Sheppard). The width is the simulated scatter of that mean.
#[must_use]
pub fn noise_bounds(mean_variance: f32, windows: u32) -> (f32, f32) {
    let much = mean_variance >= 0.159;
    let s = if much {
        libm::sqrtf(mean_variance - 1.0 / 12.0)
    } else {
        mean_variance / 0.564
    };
    let root = libm::sqrtf(windows.max(1) as f32);
    let scatter = if much { 0.435 } else { 0.87 };
    let ratio = 0.15 + scatter / (libm::sqrtf(s.max(0.02)) * root);
    let low = bounded(s / (1.0 + ratio), 0.02, 0.4);
    let high = bounded((s * (1.0 + ratio)).max(0.6 / root), 0.05, 0.5);
    (low, high.max(low))
}

/// How many standard deviations away a third level must lie to stay unseen, by effective count.
fn third_level_z(effective: f32) -> f32 {
    match effective {
        e if e >= 100.0 => 2.4,
        e if e >= 40.0 => 2.0,
        e if e >= 15.0 => 1.6,
        e if e >= 6.0 => 1.2,
        _ => 0.9,
    }
}

/// (p, z, 1/φ(z)) of the normal distribution, p ≤ ½; scipy 1.17 `norm.ppf`, `norm.pdf`.
const QUANTILES: [(f32, f32, f32); 13] = [
    (0.008, -2.409, 45.6),
    (0.012, -2.257, 32.0),
    (0.017, -2.120, 23.7),
    (0.025, -1.960, 17.1),
    (0.04, -1.751, 11.6),
    (0.06, -1.555, 8.39),
    (0.09, -1.341, 6.16),
    (0.13, -1.126, 4.73),
    (0.18, -0.915, 3.81),
    (0.25, -0.674, 3.15),
    (0.33, -0.440, 2.76),
    (0.42, -0.202, 2.56),
    (0.5, 0.0, 2.51),
];

/// z and 1/φ(z) at the lower-tail share `p`, linear between the table's rows; within 0.010 in z
/// for p from 0.008 to 0.992, where it is clamped.
fn normal_quantile(p: f32) -> (f32, f32) {
    let mirrored = p > 0.5;
    let lower = if mirrored { 1.0 - p } else { p }.max(QUANTILES[0].0);
    let mut found = (0.0, 2.51);
    for pair in QUANTILES.windows(2) {
        if let [(p0, z0, d0), (p1, z1, d1)] = *pair
            && (p0..=p1).contains(&lower)
        {
            let t = (lower - p0) / (p1 - p0);
            found = (z0 + t * (z1 - z0), d0 + t * (d1 - d0));
            break;
        }
    }
    if mirrored { (-found.0, found.1) } else { found }
}
