//! Whether a full window shows rest: tremor, movement, and movement that has just begun.

use crate::reason::NoReading;
use crate::rounded::AxisSums;
use crate::window::{BATCHES, Batch, PARTS, Window};

impl Window {
    /// Tremor and movement. The thresholds are those of the estimator's study, in steps of
    /// 0.1 m/s² (refuses at most 0.05 % of still phones for tremor, 3 % for movement at the
    /// noisiest; a knock below 0.6° can hide in a rounding step). Whole numbers where they do, and
    /// roots last: a gauge judges each batch.
    pub(crate) fn judge(
        &self,
        axes: &[AxisSums; 3],
        total: &Batch,
        means: &[[i32; 3]; BATCHES],
    ) -> Result<(), NoReading> {
        let scatters = axes.each_ref().map(AxisSums::scatter);
        let scatter = scatters.iter().sum::<u64>() as f32;
        // n² times a variance of one squared step.
        let unit = total.n as f32 * self.step;
        let unit = unit * unit;
        let range = (0..3)
            .map(|i| total.high[i].abs_diff(total.low[i]))
            .fold(0, u16::max);
        let ((half, n_half), (whole, n_whole)) = (total.half, total.whole);
        let (n_half, n_whole) = (u64::from(n_half.max(1)), u64::from(n_whole.max(1)));
        let swings = 2 * u64::from(half) * n_whole > 3 * u64::from(whole) * n_half;
        if swings && scatter > 0.3 * unit {
            return Err(NoReading::Tremor);
        }
        if scatter > 2.0 * unit || f32::from(range) > 5.0 * self.step {
            return Err(NoReading::Moving);
        }
        let wander = (0..3)
            .map(|i| {
                let of_axis = means.iter().map(|m| m[i]);
                let (low, high) =
                    of_axis.fold((i32::MAX, i32::MIN), |(l, h), v| (l.min(v), h.max(v)));
                high.abs_diff(low)
            })
            .fold(0, u32::max);
        // A rounded phone may sit on a step's edge; a sensor that is not rounded has no such edge
        // beyond the smallest change it shows.
        let least = match total.least_change {
            u16::MAX => 1,
            change => change.min(127),
        };
        let edge = 1.2 * f32::from(least).min(self.step);
        // Rounding adds to the differences; without it slow noise alone would look like movement.
        let spread = if self.step > 1.0 { 2.4 } else { 1.8 };
        let beyond_noise = || {
            let wander = wander as f32 / PARTS;
            wander * wander > spread * spread * whole as f32 / (2 * n_whole) as f32
        };
        if (wander > (edge * PARTS) as u32 && beyond_noise()) || self.departs(axes, scatters, edge)
        {
            return Err(NoReading::Moving);
        }
        Ok(())
    }

    /// Whether a sample of the batch that is still open has left the rest that the closed ones
    /// show: movement that has just begun. 4.5 σ: once in some minutes for a still phone.
    fn departs(&self, axes: &[AxisSums; 3], scatters: [u64; 3], edge: f32) -> bool {
        let n = axes[0].n as i32;
        let edge = (edge * n as f32) as u32;
        self.open.n > 0
            && (0..3).any(|i| {
                // n times the way from the mean.
                let above = i32::from(self.open.high[i]) * n - axes[i].sum;
                let below = axes[i].sum - i32::from(self.open.low[i]) * n;
                let away = above.max(below).unsigned_abs();
                away > edge && 4 * u64::from(away) * u64::from(away) > 81 * scatters[i]
            })
    }
}
