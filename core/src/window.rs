//! The last second of acceleration, in integer sums: what a reading is made of.
//!
//! Samples go into batches of at least 0.2 s and 12 samples; five closed batches are one window.
//! No sample is stored beyond a ring of sixteen, which tells tremor from noise.

use crate::prior::BROWSER_STEP_M_S2;
use crate::reason::NoReading;
use crate::rounded::{AxisSums, inflation};
use crate::vector::Vec3;
use heapless::Deque;

/// Batches in a window.
pub const BATCHES: usize = 5;
/// Shortest batch, microseconds.
const BATCH_US: u32 = 200_000;
/// Fewest samples in a batch: at 60 Hz what 0.2 s give; slower sensors take longer.
const BATCH_SAMPLES: u32 = 12;
/// Samples kept for the tremor test: a whole period of 8 Hz at 120 Hz.
const RING: usize = 16;
/// Half a period of tremor in the middle of its band, microseconds.
const HALF_TREMOR_US: u32 = 50_000;
/// Excursion from the window's first sample that is movement at once, m/s².
const EXCURSION_M_S2: f32 = 0.8;
/// The same in the finest counts there are: with [`MOST_SAMPLES`] it keeps squares within `u32`.
const MOST_COUNTS: f32 = 800.0;
/// Most samples in a batch. No phone is sampled at 5 kHz: such time stamps are one and the same.
const MOST_SAMPLES: u32 = 1000;
/// Parts of a count that means of batches are told in.
pub(crate) const PARTS: f32 = 65_536.0;

/// One batch of integer sums, in counts from the window's origin.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Batch {
    pub(crate) n: u32,
    span_us: u32,
    sum: [i32; 3],
    squares: [u32; 3],
    pub(crate) low: [i16; 3],
    pub(crate) high: [i16; 3],
    /// Sum and count of squared differences over half and over a whole period of tremor.
    pub(crate) half: (u32, u32),
    pub(crate) whole: (u32, u32),
    /// Smallest change of any axis that is not zero.
    pub(crate) least_change: u16,
    /// Sum of the fused up vectors held at each sample, and their count.
    fused: (Vec3, u32),
}

impl Batch {
    const EMPTY: Self = Self {
        n: 0,
        span_us: 0,
        sum: [0; 3],
        squares: [0; 3],
        low: [i16::MAX; 3],
        high: [i16::MIN; 3],
        half: (0, 0),
        whole: (0, 0),
        least_change: u16::MAX,
        fused: ([0.0; 3], 0),
    };

    /// Mean of each axis, in [`PARTS`] of a count.
    fn mean(&self) -> [i32; 3] {
        let share = i64::from((1_u32 << 31) / self.n.max(1));
        self.sum.map(|s| ((i64::from(s) * share) >> 15) as i32)
    }

    fn fused_mean(&self) -> Option<Vec3> {
        let (sum, n) = self.fused;
        (n == self.n && n > 0).then(|| sum.map(|v| v / n as f32))
    }
}

/// What the window says of the last second.
#[derive(Debug, Clone, Copy)]
pub struct Still {
    /// Sums of each axis, in counts from `origin`.
    pub axes: [AxisSums; 3],
    /// The count that the sums start from.
    pub origin: [i16; 3],
    /// Variance of the mean as the batches show it, counts², all axes together.
    pub of_mean: f32,
    /// Smallest change seen of any axis, counts; `None` when nothing changed.
    pub least_change: Option<u16>,
    /// Samples a second.
    pub rate_hz: f32,
}

impl Still {
    /// Factor by which colour widens the variance of the mean.
    #[must_use]
    pub fn inflation(&self) -> f32 {
        inflation(&self.axes, self.of_mean)
    }
}

/// Five batches of integer sums over the last second.
#[derive(Debug, Clone)]
pub struct Window {
    count_m_s2: f32,
    /// A browser's step, counts: what rest is judged in.
    pub(crate) step: f32,
    /// Excursion that is movement at once, counts.
    excursion: i32,
    origin: Option<[i16; 3]>,
    pub(crate) open: Batch,
    closed: Deque<Batch, BATCHES>,
    ring: [[i16; 3]; RING],
    filled: usize,
    next: usize,
    lag: usize,
}

impl Window {
    /// An empty window for samples in counts of `count_m_s2`.
    #[must_use]
    pub const fn new(count_m_s2: f32) -> Self {
        let excursion = (EXCURSION_M_S2 / count_m_s2).min(MOST_COUNTS);
        Self {
            count_m_s2,
            step: BROWSER_STEP_M_S2 / count_m_s2,
            excursion: excursion as i32,
            origin: None,
            open: Batch::EMPTY,
            closed: Deque::new(),
            ring: [[0; 3]; RING],
            filled: 0,
            next: 0,
            lag: 3,
        }
    }

    /// Size of one count, m/s².
    #[must_use]
    pub fn count_m_s2(&self) -> f32 {
        self.count_m_s2
    }

    /// Forgets every sample.
    pub fn restart(&mut self) {
        *self = Self::new(self.count_m_s2);
    }

    /// Share of the window that is filled, 0 to 1.
    #[must_use]
    pub fn progress(&self) -> f32 {
        let open = (self.open.n as f32 / BATCH_SAMPLES as f32).min(1.0);
        ((self.closed.len() as f32 + open) / BATCHES as f32).min(1.0)
    }

    /// Whether no batch has been closed since the last restart.
    #[must_use]
    pub fn is_fresh(&self) -> bool {
        self.closed.is_empty()
    }

    /// Takes one sample in counts, `dt_us` after the last one, with the fused up vector held then.
    /// Returns whether a batch was closed.
    ///
    /// # Errors
    /// [`NoReading::Moving`] when the sample lies far from the window's first one,
    /// [`NoReading::TimeRepeated`] when time does not get on; the window has then been restarted.
    pub fn push(
        &mut self,
        dt_us: u32,
        counts: [i16; 3],
        fused: Option<Vec3>,
    ) -> Result<bool, NoReading> {
        let origin = *self.origin.get_or_insert(counts);
        let offset: [i32; 3] =
            core::array::from_fn(|i| i32::from(counts[i]) - i32::from(origin[i]));
        if offset.iter().any(|d| d.abs() > self.excursion) {
            self.restart();
            return Err(NoReading::Moving);
        }
        if self.open.n >= MOST_SAMPLES {
            self.restart();
            return Err(NoReading::TimeRepeated);
        }
        self.compare(offset.map(|d| d as i16));
        let open = &mut self.open;
        open.n += 1;
        open.span_us = open.span_us.saturating_add(dt_us);
        for (i, d) in offset.into_iter().enumerate() {
            open.sum[i] += d;
            open.squares[i] += d.unsigned_abs() * d.unsigned_abs();
            open.low[i] = open.low[i].min(d as i16);
            open.high[i] = open.high[i].max(d as i16);
        }
        if let Some(up) = fused {
            open.fused.1 += 1;
            for (total, v) in open.fused.0.iter_mut().zip(up) {
                *total += v;
            }
        }
        let full = open.n >= BATCH_SAMPLES && open.span_us >= BATCH_US;
        if full {
            self.close();
        }
        Ok(full)
    }

    /// Squared differences over half and a whole period of tremor, and the smallest change.
    fn compare(&mut self, offset: [i16; 3]) {
        let squared = |back: usize, ring: &[[i16; 3]; RING]| -> u32 {
            let old = ring[(self.next + RING - back) % RING];
            (0..3)
                .map(|i| {
                    let d = i32::from(offset[i]) - i32::from(old[i]);
                    d.unsigned_abs() * d.unsigned_abs()
                })
                .sum()
        };
        if self.filled >= self.lag {
            self.open.half = both(self.open.half, (squared(self.lag, &self.ring), 1));
        }
        if self.filled >= 2 * self.lag {
            self.open.whole = both(self.open.whole, (squared(2 * self.lag, &self.ring), 1));
        }
        if self.filled > 0 {
            let last = self.ring[(self.next + RING - 1) % RING];
            for i in 0..3 {
                let change = offset[i].abs_diff(last[i]);
                if change > 0 {
                    self.open.least_change = self.open.least_change.min(change);
                }
            }
        }
        self.ring[self.next % RING] = offset;
        self.next = (self.next + 1) % RING;
        self.filled = (self.filled + 1).min(RING);
    }

    fn close(&mut self) {
        let spacing_us = self.open.span_us / self.open.n;
        self.lag =
            (((HALF_TREMOR_US + spacing_us / 2) / spacing_us.max(1)) as usize).clamp(1, RING / 2);
        if self.closed.is_full() {
            self.closed.pop_front();
        }
        // Room was made above, so nothing is lost here.
        let _ = self.closed.push_back(self.open);
        self.open = Batch::EMPTY;
    }

    /// Mean fused up vector of the newest closed batch, where fused orientation was there
    /// throughout it.
    #[must_use]
    pub fn newest_fused(&self) -> Option<Vec3> {
        self.closed.back().and_then(Batch::fused_mean)
    }

    /// The sums, if the window is full and shows rest.
    ///
    /// # Errors
    /// [`NoReading::Filling`], [`NoReading::Tremor`], [`NoReading::Moving`].
    pub fn still(&self) -> Result<Still, NoReading> {
        let origin = self.origin.filter(|_| self.closed.is_full());
        let origin = origin.ok_or(NoReading::Filling)?;
        let mut means = [[0; 3]; BATCHES];
        let mut total = Batch::EMPTY;
        for (mean, b) in means.iter_mut().zip(&self.closed) {
            *mean = b.mean();
            total.n += b.n;
            total.span_us = total.span_us.saturating_add(b.span_us);
            total.half = both(total.half, b.half);
            total.whole = both(total.whole, b.whole);
            total.least_change = total.least_change.min(b.least_change);
            for i in 0..3 {
                total.sum[i] += b.sum[i];
                total.squares[i] += b.squares[i];
                total.low[i] = total.low[i].min(b.low[i]);
                total.high[i] = total.high[i].max(b.high[i]);
            }
        }
        let axes = core::array::from_fn(|i| AxisSums {
            n: total.n,
            sum: total.sum[i],
            squares: total.squares[i],
            range: (total.low[i], total.high[i]),
        });
        self.judge(&axes, &total, &means)?;
        Ok(Still {
            axes,
            origin,
            of_mean: variance_of_mean(&means),
            least_change: (total.least_change < u16::MAX).then_some(total.least_change),
            rate_hz: total.n as f32 * 1e6 / total.span_us.max(1) as f32,
        })
    }
}

/// Variance of the mean of the batches, counts², all axes together: batch means as in Flyvbjerg
/// and Petersen (1989).
fn variance_of_mean(means: &[[i32; 3]; BATCHES]) -> f32 {
    const COUNT: i64 = BATCHES as i64;
    let (mut sums, mut squares) = ([0; 3], 0);
    for mean in means {
        for (sum, v) in sums.iter_mut().zip(mean.map(i64::from)) {
            *sum += v;
            squares += v * v;
        }
    }
    let total = COUNT * squares - sums.map(|s| s * s).iter().sum::<i64>();
    let share = (COUNT * COUNT * (COUNT - 1)) as f32 * PARTS * PARTS;
    total as f32 / share
}

/// Two sums of squared differences with their counts. At the top the sum stays: samples so far
/// apart are movement by their variance.
fn both(a: (u32, u32), b: (u32, u32)) -> (u32, u32) {
    (a.0.saturating_add(b.0), a.1.saturating_add(b.1))
}
