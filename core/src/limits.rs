//! The limit set: the limits in force, as data with their sources. Every built-in limit stands in
//! [`LimitSet::trade_usage`]; all of it can be edited, and a manual's number replaces it.

use crate::holds::Surface;
use crate::parts::{Check, Quantity};
use heapless::{String, Vec};

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
    /// Length of the part between its two ends, mm, for height differences.
    pub length_mm: Option<f32>,
}

impl Limit {
    /// A limit that has not been entered.
    #[must_use]
    pub fn not_entered(check: Check) -> Self {
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
            length_mm: None,
        }
    }

    /// Puts in the document and page, or the clause and vehicles.
    ///
    /// # Errors
    /// [`Problem::TooLong`] beyond 120 bytes.
    pub fn set_source(&mut self, source: &str) -> Result<(), LimitError> {
        self.source = String::try_from(source).map_err(|_| LimitError {
            check: Some(self.check),
            field: "source",
            problem: Problem::TooLong(120),
        })?;
        Ok(())
    }

    /// Whether the limit has been entered.
    #[must_use]
    pub fn is_entered(&self) -> bool {
        self.low_deg.is_some() || self.high_deg.is_some()
    }

    /// The limits with the allowance added, degrees; infinite where there is none.
    #[must_use]
    pub fn permitted_deg(&self) -> (f32, f32) {
        let allowance = self.allowance_deg.unwrap_or(0.0);
        (
            self.low_deg.map_or(f32::NEG_INFINITY, |l| l - allowance),
            self.high_deg.map_or(f32::INFINITY, |h| h + allowance),
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
                check: Some(self.check),
                field,
                problem,
            })
        };
        let quantity = self.check.quantity();
        let range = quantity.range_deg();
        for (field, value) in [
            ("low_deg", self.low_deg),
            ("high_deg", self.high_deg),
            ("preferred_low_deg", self.preferred_low_deg),
            ("preferred_high_deg", self.preferred_high_deg),
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
            return wrong("high_deg", Problem::NotAboveLow);
        }
        if quantity == Quantity::Roll && self.low_deg.is_some() != self.high_deg.is_some() {
            return wrong("high_deg", Problem::RollNeedsBoth);
        }
        let preferred = (
            self.preferred_low_deg.unwrap_or(low),
            self.preferred_high_deg.unwrap_or(high),
        );
        if preferred.0 >= preferred.1 {
            return wrong("preferred_high_deg", Problem::NotAboveLow);
        }
        if preferred.0 < low || preferred.1 > high {
            return wrong("preferred_low_deg", Problem::OutsidePermitted);
        }
        if let Some(allowance) = self.allowance_deg {
            if !(0.0..=10.0).contains(&allowance) {
                return wrong("allowance_deg", Problem::OutOfRange(0, 10));
            }
            if !self.at_limit_allowed || !matches!(self.basis, Basis::Manual | Basis::Law) {
                return wrong("allowance_deg", Problem::AllowanceNeedsManual);
            }
        }
        if self
            .length_mm
            .is_some_and(|l| !(10.0..=5000.0).contains(&l))
        {
            return wrong("length_mm", Problem::OutOfRange(10, 5000));
        }
        let needs_source = matches!(self.basis, Basis::Manual | Basis::Law) && self.is_entered();
        if needs_source && self.source.bytes().all(|b| b == b' ') {
            return wrong("source", Problem::SourceMissing);
        }
        Ok(())
    }
}

/// Uncertainty of the phone's contact with a surface, standard uncertainties in degrees.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(deny_unknown_fields))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct SurfaceTerms {
    /// The surface.
    pub surface: Surface,
    /// Tilt on it.
    pub hold_deg: f32,
    /// Turn about its normal.
    pub align_deg: f32,
}

/// The format's name in JSON.
pub const FORMAT: &str = "plumbmark-limits";
/// The format's version in JSON.
pub const VERSION: u32 = 1;

/// The limits in force.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(deny_unknown_fields))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct LimitSet {
    /// [`FORMAT`].
    pub format: String<24>,
    /// [`VERSION`].
    pub version: u32,
    /// What the set is for.
    pub name: String<64>,
    /// At most one limit a check.
    pub lines: Vec<Limit, 6>,
    /// At most one line a surface; the others are as assumed.
    pub surfaces: Vec<SurfaceTerms, 5>,
}

impl LimitSet {
    /// A set without any line, and surfaces as assumed.
    #[must_use]
    pub fn empty() -> Self {
        Self {
            format: text(FORMAT),
            version: VERSION,
            name: String::new(),
            lines: Vec::new(),
            surfaces: Surface::ALL
                .into_iter()
                .map(|surface| {
                    let (hold_deg, align_deg) = surface.assumed_deg();
                    SurfaceTerms {
                        surface,
                        hold_deg,
                        align_deg,
                    }
                })
                .collect(),
        }
    }

    /// A set in which no limit has been entered, to be filled from the heater's manual.
    #[must_use]
    pub fn not_entered() -> Self {
        Self {
            lines: Check::ALL.into_iter().map(Limit::not_entered).collect(),
            ..Self::empty()
        }
    }

    /// Editable examples of what the trade does: common practice, no source. Bands of preference
    /// are our own width about the position that the trade calls best.
    #[must_use]
    pub fn trade_usage() -> Self {
        let mut set = Self::empty();
        set.name = text("Examples: trade usage");
        let lines = [
            // Fuel port straight down is best; the port may not look up.
            (
                Check::HeaterPort,
                None,
                Some(0.0),
                (None, Some(-80.0)),
                true,
            ),
            // The warm-air outlet may not look up.
            (Check::HeaterOutlet, None, Some(0.0), (None, None), true),
            // Outlet end raised 15° or more above level.
            (Check::PumpOutlet, Some(15.0), None, (None, None), false),
            // Body turned at most 90° about its own length.
            (
                Check::PumpRoll,
                Some(-90.0),
                Some(90.0),
                (None, None),
                false,
            ),
            // Upright is best, 90° off plumb is the end of the range.
            (
                Check::FilterUpright,
                None,
                Some(90.0),
                (None, Some(10.0)),
                true,
            ),
            // Falling all the way from the heater.
            (Check::PipeFall, None, Some(0.0), (None, None), false),
        ];
        set.lines = lines
            .into_iter()
            .map(
                |(check, low_deg, high_deg, preferred, at_limit_allowed)| Limit {
                    low_deg,
                    high_deg,
                    preferred_low_deg: preferred.0,
                    preferred_high_deg: preferred.1,
                    at_limit_allowed,
                    basis: Basis::TradeUsage,
                    source: text("common practice, no source"),
                    ..Limit::not_entered(check)
                },
            )
            .collect();
        set
    }

    /// Names the set.
    ///
    /// # Errors
    /// [`Problem::TooLong`] beyond 64 bytes.
    pub fn set_name(&mut self, name: &str) -> Result<(), LimitError> {
        self.name = String::try_from(name).map_err(|_| LimitError {
            check: None,
            field: "name",
            problem: Problem::TooLong(64),
        })?;
        Ok(())
    }

    /// Adds a line, or a second one that [`Self::validate`] will refuse.
    ///
    /// # Errors
    /// [`Problem::Repeated`] where there is no room for one more.
    pub fn add_line(&mut self, line: Limit) -> Result<(), LimitError> {
        let check = Some(line.check);
        self.lines.push(line).map_err(|_| LimitError {
            check,
            field: "check",
            problem: Problem::Repeated,
        })
    }

    /// Sets a surface's contact uncertainties.
    pub fn set_surface(&mut self, terms: SurfaceTerms) {
        for known in self
            .surfaces
            .iter_mut()
            .filter(|s| s.surface == terms.surface)
        {
            *known = terms;
        }
    }

    /// The limit of a check; not entered where the set has no line for it.
    #[must_use]
    pub fn limit(&self, check: Check) -> Limit {
        let found = self.lines.iter().find(|l| l.check == check);
        found.cloned().unwrap_or_else(|| Limit::not_entered(check))
    }

    /// Contact uncertainties of a surface, degrees.
    #[must_use]
    pub fn surface_deg(&self, surface: Surface) -> (f32, f32) {
        let found = self.surfaces.iter().find(|s| s.surface == surface);
        found.map_or(surface.assumed_deg(), |s| (s.hold_deg, s.align_deg))
    }

    /// Checks the whole set.
    ///
    /// # Errors
    /// The first line and field that is wrong, and why.
    pub fn validate(&self) -> Result<(), LimitError> {
        let wrong = |check, field, problem| {
            Err(LimitError {
                check,
                field,
                problem,
            })
        };
        if self.format != FORMAT {
            return wrong(None, "format", Problem::NotALimitSet);
        }
        if self.version != VERSION {
            return wrong(None, "version", Problem::OtherVersion);
        }
        for (i, line) in self.lines.iter().enumerate() {
            line.validate()?;
            if self.lines[..i].iter().any(|l| l.check == line.check) {
                return wrong(Some(line.check), "check", Problem::Repeated);
            }
        }
        for (i, s) in self.surfaces.iter().enumerate() {
            if self.surfaces[..i].iter().any(|o| o.surface == s.surface) {
                return wrong(None, "surfaces.surface", Problem::Repeated);
            }
            // Below 0.02° no phone's case lies on anything.
            if !(0.02..=5.0).contains(&s.hold_deg) {
                return wrong(None, "surfaces.hold_deg", Problem::HoldOutOfRange);
            }
            if !(0.0..=10.0).contains(&s.align_deg) {
                return wrong(None, "surfaces.align_deg", Problem::OutOfRange(0, 10));
            }
        }
        Ok(())
    }
}

/// A built-in text; all of them fit.
fn text<const N: usize>(s: &str) -> String<N> {
    String::try_from(s).unwrap_or_default()
}

/// Why a limit set is refused.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct LimitError {
    /// The line, where it belongs to one.
    pub check: Option<Check>,
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

impl core::fmt::Display for LimitError {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        if let Some(check) = self.check {
            write!(f, "{}.", check.name())?;
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
