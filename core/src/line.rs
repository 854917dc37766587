//! The line that a gauge writes for each capture: readable for people, and with every number that
//! the capture was answered from, so that a page answers it anew by the limits of a job.
//!
//! One line of ASCII, at most [`LONGEST`] bytes, ended by CR LF (LF alone is read too). Words are
//! parted by one space; `-` stands for none. In this order:
//!
//! | word | meaning |
//! | --- | --- |
//! | `plumbmark-gauge` | [`FORMAT`] |
//! | `1` | [`VERSION`] |
//! | gauge | the gauge's own number, 8 digits |
//! | count | captures since the gauge's first one, or since it was switched on; it has no clock |
//! | software | the gauge's version: 1 to 16 letters, digits, `.`, `+`, `-` |
//! | part, hold, surface | names as in the report (`pump`, `long_edge`, `round_body`) |
//! | *checks* | one group for each check that the placement gives, in its order |
//! | zero | `assumed`, `found` (calibrated) or `turn` (this reading was turned end for end) |
//! | samples | how many are behind the reading |
//! | *numbers* | one word of 21 numbers, 24 after a turn, 8 digits each |
//! | CRC | 8 digits: CRC-32/ISO-HDLC of everything before it, the space too |
//!
//! A check is a group of eleven words: name; value and U (two-sided 95 %), degrees with two
//! decimals, U rounded up; verdict; what stands behind it, or `-`; which end looked lower (`tail`,
//! `head`, `cant_tell`), or `-`;
//! the limit it was held against: basis, lowest, highest and allowance (degrees, 8 digits each, or
//! `-`), `1` where parts may sit exactly at the limit, else `0`.
//!
//! Numbers are the bits of an IEEE 754 single, the highest first. In this order: samples a second;
//! the sensor's step, m/s²; hold and alignment of the surface, degrees; up along x, y, z of the
//! gauge; its noise along them, radians; the half-widths that rounding leaves along them, radians,
//! after a turn those of both placements; the largest half-width that can be; standard uncertainty
//! of the zero along them, share of gravity; that of the scale along them; the part of up, along
//! the surface's normal, at which cross-axis error went out with the zero.
//! Digits are `0`–`9` and `A`–`F`.
//!
//! [`read`] answers the capture again by the limits in the line. Where the gauge's words do not
//! follow from its numbers, it was built with other rules: such a line is refused.

mod crc;
mod letters;
mod read;
mod words;
mod write;

pub use crc::crc32;
pub use read::read;
pub use write::write;

use crate::decision::{Verdict, Why};
use crate::direct::Taken;
use crate::limits::Limit;
use heapless::{String, Vec};

/// The first word of a line.
pub const FORMAT: &str = "plumbmark-gauge";
/// The format's version; a higher one where older pages could not read it.
pub const VERSION: u32 = 1;
/// Bytes of the longest line, its end too.
pub const LONGEST: usize = 544;
/// Letters of the longest version of a gauge's software.
pub const SOFTWARE: usize = 16;

/// Which gauge says it.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Speaker {
    /// The gauge's own number.
    pub gauge: u32,
    /// Its captures so far, this one too.
    pub count: u32,
    /// Its software's version. Other letters than the format's are written as `-`.
    pub software: String<SOFTWARE>,
}

/// What a gauge showed of a check.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Shown {
    /// Value and U, hundredths of a degree; `None` for a roll that can't be read.
    pub measured_cdeg: Option<(i32, i32)>,
    /// The answer.
    pub verdict: Verdict,
    /// What stands behind it, where it is not plain.
    pub why: Option<Why>,
}

/// A line that was read.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// Which gauge said it.
    pub speaker: Speaker,
    /// What was taken.
    pub taken: Taken,
    /// The limits that the gauge had, one for each check; their documents are not in the line.
    pub limits: Vec<Limit, 2>,
    /// Hold and alignment of the surface as the gauge had them, degrees.
    pub surface_deg: (f32, f32),
    /// What it showed, in the order of the placement's checks.
    pub shown: Vec<Shown, 2>,
    /// The line's CRC: with gauge and count it tells one capture from another.
    pub crc: u32,
}

/// Why a line is refused.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
#[non_exhaustive]
pub enum LineError {
    /// It does not begin as a gauge's line.
    NotALine,
    /// It was written by another version of the format.
    OtherVersion,
    /// Letters were lost or changed on the way: the CRC does not fit.
    Damaged,
    /// A word is missing, or one too many.
    WordCount,
    /// A word is none that this place can have.
    UnknownWord,
    /// The part cannot be read so.
    NoSuchPlacement,
    /// A number that can't be.
    ImpossibleNumber,
    /// The gauge's answer does not follow from its numbers.
    OtherRules,
}

impl LineError {
    /// All of them, in the order of their codes, from 1; 0 is left for "read".
    pub const ALL: [Self; 8] = [
        Self::NotALine,
        Self::OtherVersion,
        Self::Damaged,
        Self::WordCount,
        Self::UnknownWord,
        Self::NoSuchPlacement,
        Self::ImpossibleNumber,
        Self::OtherRules,
    ];

    /// The error's name in messages.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::NotALine => "not_a_line",
            Self::OtherVersion => "other_version",
            Self::Damaged => "damaged",
            Self::WordCount => "word_count",
            Self::UnknownWord => "unknown_word",
            Self::NoSuchPlacement => "no_such_placement",
            Self::ImpossibleNumber => "impossible_number",
            Self::OtherRules => "other_rules",
        }
    }
}

impl core::fmt::Display for LineError {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.name())
    }
}

impl core::error::Error for LineError {}

impl Shown {
    /// What is shown of a check that was decided.
    pub(crate) fn of(decided: &crate::check::Decided) -> Self {
        let cdeg = |deg: f32| deg * 100.0;
        Self {
            measured_cdeg: decided.measured.map(|m| {
                (
                    libm::roundf(cdeg(m.value_deg)) as i32,
                    libm::ceilf(cdeg(m.u_deg)) as i32,
                )
            }),
            verdict: decided.verdict,
            why: decided.why,
        }
    }
}
