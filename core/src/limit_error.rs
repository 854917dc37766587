//! Why a limit set is refused: the field, and what to do.

use crate::holds::Surface;
use crate::parts::Check;

/// Why a limit set is refused.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct LimitError {
    /// Whose line it is.
    pub row: Row,
    /// The field.
    pub field: Field,
    /// What is wrong with it.
    pub problem: Problem,
}

/// A place in a limit set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum Row {
    /// The set itself.
    Set,
    /// The line of a check.
    Check(Check),
    /// The line of a surface.
    Surface(Surface),
}

impl Row {
    /// Name of the check or surface; empty for the set itself.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Set => "",
            Self::Check(check) => check.name(),
            Self::Surface(surface) => surface.name(),
        }
    }
}

/// A field of a limit set, or of one of its lines.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
#[expect(missing_docs, reason = "each is documented where the field is")]
pub enum Field {
    Format,
    Version,
    Name,
    Check,
    LowDeg,
    HighDeg,
    PreferredLowDeg,
    PreferredHighDeg,
    AllowanceDeg,
    Source,
    LengthMm,
    Surface,
    HoldDeg,
    AlignDeg,
}

impl Field {
    /// All of them, in the order of their codes, from 0.
    pub const ALL: [Self; 14] = [
        Self::Format,
        Self::Version,
        Self::Name,
        Self::Check,
        Self::LowDeg,
        Self::HighDeg,
        Self::PreferredLowDeg,
        Self::PreferredHighDeg,
        Self::AllowanceDeg,
        Self::Source,
        Self::LengthMm,
        Self::Surface,
        Self::HoldDeg,
        Self::AlignDeg,
    ];

    /// The field's name in JSON.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Format => "format",
            Self::Version => "version",
            Self::Name => "name",
            Self::Check => "check",
            Self::LowDeg => "low_deg",
            Self::HighDeg => "high_deg",
            Self::PreferredLowDeg => "preferred_low_deg",
            Self::PreferredHighDeg => "preferred_high_deg",
            Self::AllowanceDeg => "allowance_deg",
            Self::Source => "source",
            Self::LengthMm => "length_mm",
            Self::Surface => "surface",
            Self::HoldDeg => "hold_deg",
            Self::AlignDeg => "align_deg",
        }
    }
}

/// What is wrong with a field of a limit set.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
#[non_exhaustive]
pub enum Problem {
    /// Not a number between these two.
    OutOfRange(i16, i16),
    /// Not a hold uncertainty from 0.02° to 5°.
    HoldOutOfRange,
    /// The upper end is not above the lower one.
    NotAboveLow,
    /// A limit on roll needs both ends.
    RollNeedsBoth,
    /// The preferred band leaves the permitted one.
    OutsidePermitted,
    /// An allowance comes from the manual or a law, and only where a part may sit at its limit.
    AllowanceNeedsManual,
    /// A limit from a manual or a law needs its page or clause.
    SourceMissing,
    /// There are two of it.
    Repeated,
    /// Longer than this many bytes.
    TooLong(u16),
    /// Some other kind of file.
    NotALimitSet,
    /// Written by another version.
    OtherVersion,
}

impl Problem {
    /// The problems' names, in the order of their codes, for a page that has its own words.
    pub const NAMES: [&str; 11] = [
        "out_of_range",
        "hold_out_of_range",
        "not_above_low",
        "roll_needs_both",
        "outside_permitted",
        "allowance_needs_manual",
        "source_missing",
        "repeated",
        "too_long",
        "not_a_limit_set",
        "other_version",
    ];

    /// The problem's place among [`Self::NAMES`].
    #[must_use]
    pub fn code(self) -> u8 {
        match self {
            Self::OutOfRange(..) => 0,
            Self::HoldOutOfRange => 1,
            Self::NotAboveLow => 2,
            Self::RollNeedsBoth => 3,
            Self::OutsidePermitted => 4,
            Self::AllowanceNeedsManual => 5,
            Self::SourceMissing => 6,
            Self::Repeated => 7,
            Self::TooLong(_) => 8,
            Self::NotALimitSet => 9,
            Self::OtherVersion => 10,
        }
    }

    /// The numbers that belong to it: lowest and highest value, or the most bytes.
    #[must_use]
    pub fn numbers(self) -> (i32, i32) {
        match self {
            Self::OutOfRange(low, high) => (i32::from(low), i32::from(high)),
            Self::TooLong(most) => (0, i32::from(most)),
            _ => (0, 0),
        }
    }
}

impl core::fmt::Display for LimitError {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        if self.row != Row::Set {
            write!(f, "{}.", self.row.name())?;
        }
        write!(f, "{}: ", self.field.name())?;
        match self.problem {
            Problem::OutOfRange(low, high) => write!(f, "enter a number from {low} to {high}"),
            Problem::HoldOutOfRange => f.write_str("enter a number from 0.02 to 5"),
            Problem::NotAboveLow => f.write_str("the upper end must lie above the lower end"),
            Problem::RollNeedsBoth => f.write_str("a limit on roll needs both ends"),
            Problem::OutsidePermitted => {
                f.write_str("the preferred band must lie inside the permitted one")
            }
            Problem::AllowanceNeedsManual => f.write_str(
                "an allowance comes from the manual or a law, for a part that may sit at its limit",
            ),
            Problem::SourceMissing => f.write_str("name the document and page, or the clause"),
            Problem::Repeated => f.write_str("there are two of it; keep one"),
            Problem::TooLong(most) => write!(f, "shorten it to {most} letters"),
            Problem::NotALimitSet => f.write_str("this is not a limit set"),
            Problem::OtherVersion => f.write_str("this limit set was written by another version"),
        }
    }
}

impl core::error::Error for LimitError {}
