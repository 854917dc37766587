//! The gauge while it tests itself, and what it weighs at any time.

use crate::buttons::Press;
use crate::fault::Fault;
use crate::gauge::{Gauge, Mode};
use plumbmark::reason::NoReading;

/// Answers in a row, five a second, that find rest without gravity.
const NOT_GRAVITY: u8 = 10;

impl Gauge {
    /// Passed when each axis is alive and a second of rest shows gravity. A fault that only wants
    /// to be seen waits for a press.
    #[inline(never)]
    pub(crate) fn run_test(&mut self, fresh: bool, press: Option<Press>) {
        if press.is_some() && self.fault.is_some_and(Fault::ends_by_press) {
            self.fault = None;
        }
        if !fresh {
            return;
        }
        match self.direct.pose() {
            Err(reason) => self.weigh(reason),
            Ok(_) if self.test.has_passed() => {
                self.not_gravity = 0;
                self.fault = self.fault.filter(|fault| fault.ends_by_press());
                if self.fault.is_none() {
                    self.mode = Mode::Ready(None);
                }
            }
            Ok(_) => {}
        }
    }

    /// Rest without gravity, again and again, is a fault.
    pub(crate) fn weigh(&mut self, reason: NoReading) {
        if reason == NoReading::NotGravity {
            self.not_gravity += 1;
            if self.not_gravity >= NOT_GRAVITY {
                self.fail(Fault::NotGravity);
            }
        }
    }
}
