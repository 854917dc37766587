//! A limit of one check, and on whose word it stands.

pub use crate::limit_error::{Field, LimitError, Problem, Row};
pub use crate::limit_set::{FORMAT, LimitSet, SurfaceTerms, VERSION, is_looser};
use crate::limit_set::{fits, text};
use crate::parts::{Check, Quantity};
use heapless::String;

/// On whose word a limit stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum Basis {
    /// The heater's own documents.
    Manual,
    /// A regulation, with its clause and the vehicles that it is for.
    Law,
    /// Common practice, no source.
    TradeUsage,
    /// Our own number, or the user's.
    Assumed,
}

impl Basis {
    /// All of them, the strongest first.
    pub const ALL: [Self; 4] = [Self::Manual, Self::Law, Self::TradeUsage, Self::Assumed];
}

/// One check's limit. Angles in degrees, of the check's own quantity.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(deny_unknown_fields))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Limit {
    /// The check.
    pub check: Check,
    /// Lowest value permitted; with `high_deg` also `None`: limit not entered.
    pub low_deg: Option<f32>,
    /// Highest value permitted.
    pub high_deg: Option<f32>,
    /// Lower end of the preferred band, inside the permitted one; advice only.
    pub preferred_low_deg: Option<f32>,
    /// Upper end of the preferred band.
    pub preferred_high_deg: Option<f32>,
    /// Whether parts are commonly mounted exactly at the limit (a filter lying flat, a level
    /// outlet): then only an allowance can decide there.
    pub at_limit_allowed: bool,
    /// By how much the limit may be passed, from the manual; `None`: allowance not entered.
    pub allowance_deg: Option<f32>,
    /// On whose word.
    pub basis: Basis,
    /// Document and page, or clause and vehicles.
    pub source: String<120>,
    /// Whether the limit holds on the slopes that the vehicle works on, and not only on level
    /// ground (a manual may already allow for travel).
    #[cfg_attr(feature = "serde", serde(default))]
    pub holds_in_operation: bool,
    /// Length of the part between its two ends, mm, for height differences.
    pub length_mm: Option<f32>,
}

impl Limit {
    /// A limit that has not been entered.
    #[must_use]
    pub const fn not_entered(check: Check) -> Self {
        Self {
            check,
            low_deg: None,
            high_deg: None,
            preferred_low_deg: None,
            preferred_high_deg: None,
            at_limit_allowed: false,
            allowance_deg: None,
            basis: Basis::Manual,
            source: String::new(),
            holds_in_operation: false,
            length_mm: None,
        }
    }

    /// Puts in the document and page, or the clause and vehicles.
    ///
    /// # Errors
    /// [`Problem::TooLong`] beyond 120 bytes.
    pub fn set_source(&mut self, source: &str) -> Result<(), LimitError> {
        self.source_fits(source.len())?;
        self.source = text(source);
        Ok(())
    }

    /// Whether a source of so many bytes fits.
    ///
    /// # Errors
    /// [`Problem::TooLong`] beyond 120.
    pub fn source_fits(&self, bytes: usize) -> Result<(), LimitError> {
        fits(bytes, 120, Row::Check(self.check), Field::Source)
    }

    /// Whether the limit has been entered.
    #[must_use]
    pub fn is_entered(&self) -> bool {
        self.low_deg.is_some() || self.high_deg.is_some()
    }

    /// The limits with the allowance added, degrees; infinite where there is none, and where the
    /// quantity ends and can't pass it: straight down is as far as a port can point.
    #[must_use]
    pub fn permitted_deg(&self) -> (f32, f32) {
        let allowance = self.allowance_deg.unwrap_or(0.0);
        let low = self.low_deg.map_or(f32::NEG_INFINITY, |l| l - allowance);
        let high = self.high_deg.map_or(f32::INFINITY, |h| h + allowance);
        if self.check.quantity() == Quantity::Roll {
            return (low, high);
        }
        let range = self.check.quantity().range_deg();
        (
            if low > range.0 {
                low
            } else {
                f32::NEG_INFINITY
            },
            if high < range.1 { high } else { f32::INFINITY },
        )
    }

    /// The preferred band, degrees, where there is one.
    #[must_use]
    pub fn preferred_deg(&self) -> Option<(f32, f32)> {
        (self.preferred_low_deg.is_some() || self.preferred_high_deg.is_some()).then(|| {
            (
                self.preferred_low_deg.unwrap_or(f32::NEG_INFINITY),
                self.preferred_high_deg.unwrap_or(f32::INFINITY),
            )
        })
    }

    /// Checks the limit's own sense.
    ///
    /// # Errors
    /// The field and what is wrong with it.
    pub fn validate(&self) -> Result<(), LimitError> {
        let wrong = |field, problem| {
            Err(LimitError {
                row: Row::Check(self.check),
                field,
                problem,
            })
        };
        let quantity = self.check.quantity();
        let range = quantity.range_deg();
        for (field, value) in [
            (Field::LowDeg, self.low_deg),
            (Field::HighDeg, self.high_deg),
            (Field::PreferredLowDeg, self.preferred_low_deg),
            (Field::PreferredHighDeg, self.preferred_high_deg),
        ] {
            if value.is_some_and(|v| !(range.0..=range.1).contains(&v)) {
                return wrong(field, Problem::OutOfRange(range.0 as i16, range.1 as i16));
            }
        }
        let (low, high) = (
            self.low_deg.unwrap_or(range.0),
            self.high_deg.unwrap_or(range.1),
        );
        if low >= high {
            return wrong(Field::HighDeg, Problem::NotAboveLow);
        }
        if quantity == Quantity::Roll && self.low_deg.is_some() != self.high_deg.is_some() {
            return wrong(Field::HighDeg, Problem::RollNeedsBoth);
        }
        let preferred = (
            self.preferred_low_deg.unwrap_or(low),
            self.preferred_high_deg.unwrap_or(high),
        );
        if preferred.0 >= preferred.1 {
            return wrong(Field::PreferredHighDeg, Problem::NotAboveLow);
        }
        if preferred.0 < low || preferred.1 > high {
            return wrong(Field::PreferredLowDeg, Problem::OutsidePermitted);
        }
        if let Some(allowance) = self.allowance_deg {
            if !(0.0..=10.0).contains(&allowance) {
                return wrong(Field::AllowanceDeg, Problem::OutOfRange(0, 10));
            }
            if !self.at_limit_allowed || !matches!(self.basis, Basis::Manual | Basis::Law) {
                return wrong(Field::AllowanceDeg, Problem::AllowanceNeedsManual);
            }
        }
        if self
            .length_mm
            .is_some_and(|l| !(10.0..=5000.0).contains(&l))
        {
            return wrong(Field::LengthMm, Problem::OutOfRange(10, 5000));
        }
        let needs_source = matches!(self.basis, Basis::Manual | Basis::Law) && self.is_entered();
        if needs_source && self.source.bytes().all(|b| b == b' ') {
            return wrong(Field::Source, Problem::SourceMissing);
        }
        Ok(())
    }
}
