//! Refusals as numbers below zero: −1 − (32 · list + place) for the place in one of the
//! catalogue's lists of `refusals`.

use plumbmark::calibration::CalibrationRefusal;
use plumbmark::holds::Refusal;
use plumbmark::level::{LevelError, LevelRefusal};
use plumbmark::line::LineError;
use plumbmark::phone::PoseRefusal;
use plumbmark::reason::NoReading;
use plumbmark::reversal::TurnRefusal;

/// A code that is in no list.
pub const UNKNOWN: i32 = i32::MIN;

/// What has a place in the catalogue's `refusals`.
pub trait Coded {
    /// List and place.
    fn place(self) -> (u8, u8);
}

impl Coded for NoReading {
    fn place(self) -> (u8, u8) {
        (0, self as u8)
    }
}

impl Coded for TurnRefusal {
    fn place(self) -> (u8, u8) {
        (1, self as u8)
    }
}

impl Coded for CalibrationRefusal {
    fn place(self) -> (u8, u8) {
        (2, self as u8)
    }
}

impl Coded for LevelRefusal {
    fn place(self) -> (u8, u8) {
        (3, self as u8)
    }
}

impl Coded for Refusal {
    fn place(self) -> (u8, u8) {
        (4, self as u8)
    }
}

impl Coded for LineError {
    fn place(self) -> (u8, u8) {
        (5, self as u8)
    }
}

impl Coded for PoseRefusal {
    fn place(self) -> (u8, u8) {
        match self {
            Self::NoReading(reason) => reason.place(),
            Self::Calibration(refusal) => refusal.place(),
        }
    }
}

impl Coded for LevelError {
    fn place(self) -> (u8, u8) {
        match self {
            Self::NoReading(reason) => reason.place(),
            Self::Refused(refusal) => refusal.place(),
        }
    }
}

/// What was asked for, a number from 0, or the refusal.
pub fn coded(result: Result<i32, impl Coded>) -> i32 {
    result.unwrap_or_else(|refusal| {
        let (list, place) = refusal.place();
        -1 - (32 * i32::from(list) + i32::from(place))
    })
}

/// The entry of a catalogue's list.
pub fn known<T: Copy>(all: &[T], code: u8) -> Option<T> {
    all.get(usize::from(code)).copied()
}
