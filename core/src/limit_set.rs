//! The limit set: the limits in force, as data with their sources. Every built-in limit stands in
//! [`LimitSet::trade_usage`]; all of it can be edited, and a manual's number replaces it.

use crate::holds::Surface;
use crate::limit_error::{Field, LimitError, Problem, Row};
use crate::limits::{Basis, Limit};
use crate::parts::Check;
use heapless::{String, Vec};

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

impl SurfaceTerms {
    /// Checks the line's own sense.
    ///
    /// # Errors
    /// The field and what is wrong with it.
    pub fn validate(&self) -> Result<(), LimitError> {
        let wrong = |field, problem| {
            Err(LimitError {
                row: Row::Surface(self.surface),
                field,
                problem,
            })
        };
        // Below 0.02° no phone's case lies on anything.
        if !(0.02..=5.0).contains(&self.hold_deg) {
            return wrong(Field::HoldDeg, Problem::HoldOutOfRange);
        }
        if !(0.0..=10.0).contains(&self.align_deg) {
            return wrong(Field::AlignDeg, Problem::OutOfRange(0, 10));
        }
        Ok(())
    }
}

/// The format's name in JSON.
pub const FORMAT: &str = "plumbmark-limits";
/// The format's version in JSON.
pub const VERSION: u32 = 1;

/// An example: lowest and highest value, preferred band, whether parts sit exactly at it.
type Usage = (
    Check,
    Option<f32>,
    Option<f32>,
    (Option<f32>, Option<f32>),
    bool,
);

/// What the trade does: common practice, no source. Preferred bands are our own width.
const USAGE: [Usage; 6] = [
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

/// Whether a limit permits what common practice does not; ends that are not a number are not
/// entered.
#[must_use]
pub fn is_looser(check: Check, low_deg: f32, high_deg: f32) -> bool {
    USAGE.iter().any(|&(of, low, high, ..)| {
        of == check
            && (low.is_some_and(|l| low_deg.is_nan() || low_deg < l)
                || high.is_some_and(|h| high_deg.is_nan() || high_deg > h))
    })
}

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
            surfaces: Vec::from_array(Surface::ALL.map(|surface| {
                let (hold_deg, align_deg) = surface.assumed_deg();
                SurfaceTerms {
                    surface,
                    hold_deg,
                    align_deg,
                }
            })),
        }
    }

    /// A set in which no limit has been entered, to be filled from the heater's manual.
    #[must_use]
    pub fn not_entered() -> Self {
        Self {
            lines: Vec::from_array(Check::ALL.map(Limit::not_entered)),
            ..Self::empty()
        }
    }

    /// Editable examples of what the trade does: common practice, no source. Bands of preference
    /// are our own width about the position that the trade calls best.
    #[must_use]
    pub fn trade_usage() -> Self {
        let mut set = Self::empty();
        set.name = text("Examples: trade usage");
        set.lines = Vec::from_array(USAGE.map(
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
        ));
        set
    }

    /// Names the set.
    ///
    /// # Errors
    /// [`Problem::TooLong`] beyond 64 bytes.
    pub fn set_name(&mut self, name: &str) -> Result<(), LimitError> {
        Self::name_fits(name.len())?;
        self.name = text(name);
        Ok(())
    }

    /// Whether a name of so many bytes fits.
    ///
    /// # Errors
    /// [`Problem::TooLong`] beyond 64.
    pub fn name_fits(bytes: usize) -> Result<(), LimitError> {
        fits(bytes, 64, Row::Set, Field::Name)
    }

    /// Adds a line, or a second one that [`Self::validate`] will refuse.
    ///
    /// # Errors
    /// [`Problem::Repeated`] where there is no room for one more.
    pub fn add_line(&mut self, line: Limit) -> Result<(), LimitError> {
        let row = Row::Check(line.check);
        self.lines.push(line).map_err(|_| LimitError {
            row,
            field: Field::Check,
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
        Limit {
            check,
            ..self.line(check).clone()
        }
    }

    /// [`Self::limit`] where it stands; one that was not entered is some other check's.
    pub(crate) fn line(&self, check: Check) -> &Limit {
        line_of(&self.lines, check)
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
        let wrong = |row, field, problem| {
            Err(LimitError {
                row,
                field,
                problem,
            })
        };
        if self.format != FORMAT {
            return wrong(Row::Set, Field::Format, Problem::NotALimitSet);
        }
        if self.version != VERSION {
            return wrong(Row::Set, Field::Version, Problem::OtherVersion);
        }
        for (i, line) in self.lines.iter().enumerate() {
            line.validate()?;
            if self.lines.iter().take(i).any(|l| l.check == line.check) {
                return wrong(Row::Check(line.check), Field::Check, Problem::Repeated);
            }
        }
        for (i, s) in self.surfaces.iter().enumerate() {
            let row = Row::Surface(s.surface);
            if self.surfaces.iter().take(i).any(|o| o.surface == s.surface) {
                return wrong(row, Field::Surface, Problem::Repeated);
            }
            s.validate()?;
        }
        Ok(())
    }
}

/// The limit of a check among `lines`; one that was not entered is some other check's.
pub(crate) fn line_of(lines: &[Limit], check: Check) -> &Limit {
    const NOT_ENTERED: &Limit = &Limit::not_entered(Check::PipeFall);
    let found = lines.iter().find(|l| l.check == check);
    found.unwrap_or(NOT_ENTERED)
}

pub(crate) fn fits(bytes: usize, most: u16, row: Row, field: Field) -> Result<(), LimitError> {
    if bytes <= usize::from(most) {
        return Ok(());
    }
    Err(LimitError {
        row,
        field,
        problem: Problem::TooLong(most),
    })
}

/// A text that fits.
pub(crate) fn text<const N: usize>(s: &str) -> String<N> {
    String::try_from(s).unwrap_or_default()
}
