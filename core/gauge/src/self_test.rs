//! Whether the accelerometer works: before the first reading, and with every sample after it.

use crate::accelerometer::Stated;
use crate::fault::Fault;

/// Samples left out after the start: the sensor settles (7 of them, value from memory).
const SETTLING: u16 = 10;
/// Samples that the test takes.
const TEST: u16 = 60;
/// Looks without a new sample, 10 ms each, that are a sensor without answer.
const SILENT: u16 = 10;
/// Samples in which an axis does not change: fewer than a reading is made of, so that none rests on
/// an axis that is stuck. Noise is 3 mg, three counts (data sheet, value from memory); of half a
/// count, so many alike would be one chance in 10¹⁴.
const ALIKE: u16 = 90;
/// Samples in a row at the end of the range.
const AT_END: u16 = 20;
/// Samples in a row that are far from gravity: nobody shakes a gauge so for two seconds.
const ALL_APART: u16 = 200;

/// What has been seen of the samples.
#[derive(Debug, Clone, Copy, Default)]
pub struct SelfTest {
    seen: u16,
    silent: u16,
    at_end: u16,
    apart: u16,
    last: [i16; 3],
    changed: [bool; 3],
    alike: [u16; 3],
}

impl SelfTest {
    /// Whether enough samples came, each axis alive.
    #[must_use]
    pub fn has_passed(&self) -> bool {
        self.seen >= SETTLING + TEST && self.changed == [true; 3]
    }

    /// Judges one look at the sensor; the sample that may be used, if there is one.
    ///
    /// # Errors
    /// [`Fault::NoAnswer`], [`Fault::Stuck`], [`Fault::Saturated`], [`Fault::NotGravity`].
    #[inline(never)]
    pub fn judge(
        &mut self,
        sample: Option<[i16; 3]>,
        stated: &Stated,
    ) -> Result<Option<[i16; 3]>, Fault> {
        let Some(sample) = sample else {
            self.silent += 1;
            return if self.silent < SILENT {
                Ok(None)
            } else {
                Err(Fault::NoAnswer)
            };
        };
        self.silent = 0;
        self.seen = self.seen.saturating_add(1);
        if self.seen <= SETTLING {
            self.last = sample;
            return Ok(None);
        }
        self.compare(sample);
        if self.alike.iter().any(|n| *n >= ALIKE) {
            return Err(Fault::Stuck);
        }
        let at_end = |c: &i16| c.unsigned_abs() >= stated.largest_count.unsigned_abs();
        count(&mut self.at_end, sample.iter().any(at_end));
        count(&mut self.apart, is_apart(sample, stated.one_g));
        if self.at_end >= AT_END {
            Err(Fault::Saturated)
        } else if self.apart >= ALL_APART {
            Err(Fault::NotGravity)
        } else {
            Ok(Some(sample))
        }
    }

    fn compare(&mut self, sample: [i16; 3]) {
        let axes = self.last.iter().zip(sample);
        for (((last, now), changed), alike) in axes.zip(&mut self.changed).zip(&mut self.alike) {
            if *last == now {
                *alike = alike.saturating_add(1);
            } else {
                (*changed, *alike) = (true, 0);
            }
        }
        self.last = sample;
    }
}

/// One more in a row, or none.
fn count(so_far: &mut u16, one_more: bool) {
    *so_far = if one_more {
        so_far.saturating_add(1)
    } else {
        0
    };
}

/// Whether a sample's length is not within 0.85 to 1.15 of gravity; core takes none that is further.
fn is_apart(sample: [i16; 3], one_g: u16) -> bool {
    let squares = sample.map(|c| u32::from(c.unsigned_abs()).pow(2));
    let squared = squares.into_iter().fold(0, u32::saturating_add);
    let one = u32::from(one_g).pow(2);
    // Whole numbers: 0.85² and 1.15².
    !(one / 32 * 23..one / 16 * 21).contains(&squared)
}
