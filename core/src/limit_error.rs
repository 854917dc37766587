//! Why a limit set is refused: the field, and what to do.

/// Why a limit set is refused.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct LimitError {
    /// Name of the check or surface whose line it is; empty for the set itself.
    pub line: &'static str,
    /// The field, by its name in JSON.
    pub field: &'static str,
    /// What is wrong with it.
    pub problem: Problem,
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
    /// The problem's name, for a page that has its own words.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::OutOfRange(..) => "out_of_range",
            Self::HoldOutOfRange => "hold_out_of_range",
            Self::NotAboveLow => "not_above_low",
            Self::RollNeedsBoth => "roll_needs_both",
            Self::OutsidePermitted => "outside_permitted",
            Self::AllowanceNeedsManual => "allowance_needs_manual",
            Self::SourceMissing => "source_missing",
            Self::Repeated => "repeated",
            Self::TooLong(_) => "too_long",
            Self::NotALimitSet => "not_a_limit_set",
            Self::OtherVersion => "other_version",
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
        if !self.line.is_empty() {
            write!(f, "{}.", self.line)?;
        }
        write!(f, "{}: ", self.field)?;
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
