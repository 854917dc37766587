//! A blind reading: armed, then taken by itself once the phone has been placed and rests.

use crate::live::Live;
use crate::reason::NoReading;

/// Time to take the thumb off the screen before movement counts as placing, ms.
const ARMING_MS: f64 = 1500.0;

/// How far a blind reading has come.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Blind {
    /// Not armed.
    Off,
    /// Armed at this time, ms; waiting for the phone to be moved to its place.
    Armed(f64),
    /// Moved; waiting for rest.
    Moved,
    /// At rest: capture now.
    Ready,
}

impl Live {
    /// Arms a blind reading at `now_ms`.
    pub fn arm(&mut self, now_ms: f64) {
        self.blind = Blind::Armed(now_ms);
    }

    /// Ends a blind reading.
    pub fn disarm(&mut self) {
        self.blind = Blind::Off;
    }

    /// How far a blind reading has come.
    #[must_use]
    pub fn blind(&self) -> Blind {
        self.blind
    }

    pub(crate) fn advance_blind(&mut self, now_ms: f64) {
        use NoReading::{Drifting, Moving, NotGravity, Tremor};
        let moves = matches!(self.reading, Err(Moving | Tremor | NotGravity | Drifting));
        self.blind = match self.blind {
            Blind::Armed(since_ms) if moves && now_ms - since_ms > ARMING_MS => Blind::Moved,
            Blind::Moved if self.reading.is_ok() => Blind::Ready,
            Blind::Ready if self.reading.is_err() => Blind::Moved,
            other => other,
        };
    }
}
