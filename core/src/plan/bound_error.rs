//! Whether a limit of the tape-measure half is one that a set can keep.

use super::bound::BoundId;
use super::usage::{LAW, USAGE};
use crate::limits::Basis;
use crate::parts::Check;

/// What is told of a limit besides its numbers, by how long the texts are: the page keeps the texts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Cited {
    /// On whose word.
    pub basis: Basis,
    /// Document and page, or clause; letters.
    pub source: usize,
    /// The vehicles that a law is for; letters.
    pub vehicles: usize,
    /// Why it is looser than law or usage; letters.
    pub reason: usize,
}

/// Longest text, letters.
pub const LONGEST: usize = 120;

/// Why a limit is refused.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
#[repr(u8)]
pub enum BoundError {
    /// The lower end makes no sense: see [`BoundId::range`].
    LowOutOfRange = 1,
    /// The upper end makes no sense.
    HighOutOfRange,
    /// The upper end lies below the lower one.
    HighBelowLow,
    /// A limit from a manual or a law needs its page or clause.
    SourceMissing,
    /// A law needs its vehicles.
    VehiclesMissing,
    /// Looser than common practice, or than a law: say why.
    ReasonMissing,
    /// Source longer than [`LONGEST`].
    SourceTooLong,
    /// Vehicles longer than [`LONGEST`].
    VehiclesTooLong,
    /// Reason longer than [`LONGEST`].
    ReasonTooLong,
    /// A bore is one size: a range would pass what the manual does not list.
    NotOneValue,
}

impl BoundError {
    /// Field and problem by code, from 1, for a page that has its own words.
    pub const NAMES: [(&'static str, &'static str); 10] = [
        ("low", "out_of_range"),
        ("high", "out_of_range"),
        ("high", "not_above_low"),
        ("source", "source_missing"),
        ("vehicles", "vehicles_missing"),
        ("reason", "reason_missing"),
        ("source", "too_long"),
        ("vehicles", "too_long"),
        ("reason", "too_long"),
        ("high", "not_one_value"),
    ];
}

/// Checks a limit; ends that are not a number are not entered.
///
/// # Errors
/// The first thing wrong with it.
pub fn validate(id: BoundId, low: f64, high: f64, cited: &Cited) -> Result<(), BoundError> {
    let range = id.range();
    let odd = |v: f64| !v.is_nan() && !(range.0..=range.1).contains(&v);
    let entered = !low.is_nan() || !high.is_nan();
    let one_size = matches!(id, BoundId::FuelBore | BoundId::FuelBorePressure);
    let checks = [
        (odd(low), BoundError::LowOutOfRange),
        (odd(high), BoundError::HighOutOfRange),
        (low > high, BoundError::HighBelowLow),
        (one_size && entered && low != high, BoundError::NotOneValue),
    ];
    if let Some(&(_, error)) = checks.iter().find(|(wrong, _)| *wrong) {
        return Err(error);
    }
    cite(cited, entered, entered && is_looser(id, low, high))
}

/// Checks what stands beside the limit of an angle; its numbers are checked with its set.
///
/// # Errors
/// The first thing wrong with it.
pub fn validate_angle(
    check: Check,
    low_deg: f32,
    high_deg: f32,
    cited: &Cited,
) -> Result<(), BoundError> {
    let entered = !low_deg.is_nan() || !high_deg.is_nan();
    cite(
        cited,
        entered,
        entered && crate::limits::is_looser(check, low_deg, high_deg),
    )
}

fn cite(cited: &Cited, entered: bool, looser: bool) -> Result<(), BoundError> {
    let named = matches!(cited.basis, Basis::Manual | Basis::Law);
    let checks = [
        (
            entered && named && cited.source == 0,
            BoundError::SourceMissing,
        ),
        (
            entered && cited.basis == Basis::Law && cited.vehicles == 0,
            BoundError::VehiclesMissing,
        ),
        (looser && cited.reason == 0, BoundError::ReasonMissing),
        (cited.source > LONGEST, BoundError::SourceTooLong),
        (cited.vehicles > LONGEST, BoundError::VehiclesTooLong),
        (cited.reason > LONGEST, BoundError::ReasonTooLong),
    ];
    match checks.iter().find(|(wrong, _)| *wrong) {
        Some(&(_, error)) => Err(error),
        None => Ok(()),
    }
}

/// Whether a limit permits what common practice or a law does not.
#[must_use]
pub fn is_looser(id: BoundId, low: f64, high: f64) -> bool {
    USAGE.iter().chain(LAW).any(|known| {
        known.id == id
            && (known.low.is_some_and(|l| low.is_nan() || low < l)
                || known.high.is_some_and(|h| high.is_nan() || high > h))
    })
}
