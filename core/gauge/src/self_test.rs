//! Whether the accelerometer works: before the first reading, and with every sample after it.

use crate::fault::Fault;

/// Samples left out after the start: the sensor settles (7 of them, value from memory).
const SETTLING: u16 = 10;
/// Samples that the test takes.
const TEST: u16 = 60;
/// Looks without a new sample, 10 ms each, that are a sensor without answer.
const SILENT: u16 = 10;
/// Samples in which no axis changes at all. Noise is 3 mg, three counts (data sheet, value from
/// memory); even at a third of a count so many alike are no chance.
const ALL_ALIKE: u16 = 50;
/// The same for one axis, which may rest in the middle of a count for long.
const ONE_ALIKE: u16 = 500;
/// Samples in a row at the end of the range.
const AT_END: u16 = 20;

/// What has been seen of the samples.
#[derive(Debug, Clone, Copy, Default)]
pub struct SelfTest {
    seen: u16,
    silent: u16,
    at_end: u16,
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
    /// [`Fault::NoAnswer`], [`Fault::Stuck`], [`Fault::Saturated`].
    #[inline(never)]
    pub fn judge(
        &mut self,
        sample: Option<[i16; 3]>,
        largest: i16,
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
        if self.alike.iter().all(|n| *n >= ALL_ALIKE) || self.alike.iter().any(|n| *n >= ONE_ALIKE)
        {
            return Err(Fault::Stuck);
        }
        if sample
            .iter()
            .all(|c| c.unsigned_abs() < largest.unsigned_abs())
        {
            self.at_end = 0;
            return Ok(Some(sample));
        }
        self.at_end += 1;
        if self.at_end < AT_END {
            Ok(Some(sample))
        } else {
            Err(Fault::Saturated)
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
