//! Reading a check: which end looks lower, the live answer, the capture, the turn end for end.

use crate::answer::shown;
use crate::buttons::Press;
use crate::gauge::{Gauge, LOOK_MS, Outlet, Want};
use crate::lights::Show;
use crate::limits::surface_deg;
use plumbmark::check::End;
use plumbmark::direct::Taken;
use plumbmark::reason::NoReading;

/// How long a capture waits for rest, ms: the press itself shakes the gauge.
const WAIT_MS: u32 = 10_000;
/// Batches, five a second, from one live answer to the next; at the others only rest is judged.
const ANSWER_EVERY: u8 = 3;

impl Gauge {
    /// What the check chosen shows now.
    pub(crate) fn live(&self) -> Show {
        if self.direct.has_first() && !self.turned {
            Show::Turn
        } else if self.asks() {
            Show::WhichEnd
        } else if self.want.is_some() {
            Show::NoReading
        } else {
            self.answer
        }
    }

    #[inline(never)]
    pub(crate) fn read(&mut self, fresh: bool, press: Option<Press>, out: &mut dyn Outlet) {
        if let Some(press) = press {
            self.pressed(press);
        }
        if let Some((_, left_ms)) = &mut self.want {
            *left_ms = left_ms.saturating_sub(LOOK_MS);
            if *left_ms == 0 {
                self.want = None;
                self.note(Show::Refused);
            }
        }
        if fresh {
            self.ask(out);
        }
    }

    /// Whether the eye still has to say which end looks lower.
    fn asks(&self) -> bool {
        self.end.is_none() && self.check().asks_lower_end()
    }

    #[inline(never)]
    fn pressed(&mut self, press: Press) {
        let turning = self.direct.has_first() && !self.turned;
        match press {
            Press::LongA => self.choose(self.chosen + 1),
            // Turned end for end, the buttons lie at the other ends: what was said stays said.
            Press::A if self.direct.has_first() => self.choose(self.chosen),
            Press::B if turning && self.was_lifted => self.turned = true,
            Press::B if turning => self.note(Show::Refused),
            Press::A if self.asks() => self.end = Some(End::Tail),
            Press::B if self.asks() => self.end = Some(End::Head),
            Press::Both if self.asks() => self.end = Some(End::CantTell),
            Press::A => self.end = None,
            Press::B => self.want = Some((Want::Capture, WAIT_MS)),
            Press::LongB if !self.asks() && !self.direct.has_first() => {
                self.want = Some((Want::First, WAIT_MS));
            }
            Press::LongB | Press::Both | Press::LongBoth => self.note(Show::Refused),
        }
        self.answer = Show::NoReading;
        self.lying.is_said();
    }

    /// Asks the last second.
    #[inline(never)]
    fn ask(&mut self, out: &mut dyn Outlet) {
        if self.direct.has_first() && !self.turned {
            return;
        }
        if let Some((Want::First, _)) = self.want {
            return self.keep_first();
        }
        self.batches += 1;
        let stands = self.want.is_none() && self.answer != Show::NoReading;
        if stands && self.batches < ANSWER_EVERY {
            return self.stand();
        }
        self.batches = 0;
        match &self.take() {
            Ok(taken) => self.answered(taken, out),
            Err(reason) => self.unanswered(*reason),
        }
    }

    #[inline(never)]
    fn keep_first(&mut self) {
        if self.direct.keep_first().is_ok() {
            self.want = None;
            self.was_lifted = false;
        }
    }

    /// The last answer stands while the gauge rests.
    #[inline(never)]
    fn stand(&mut self) {
        if let Err(reason) = self.direct.rest() {
            self.unanswered(reason);
        }
    }

    fn unanswered(&mut self, reason: NoReading) {
        self.answer = Show::NoReading;
        match reason {
            NoReading::NotTurned => self.turned = false,
            NoReading::TurnTooOld | NoReading::TurnDisagrees => {
                self.choose(self.chosen);
                self.note(Show::Refused);
            }
            _ => self.weigh(reason),
        }
    }

    #[inline(never)]
    fn take(&mut self) -> Result<Taken, NoReading> {
        let check = self.check();
        let placement = self.direct.placement();
        let surface = surface_deg(placement.surface);
        let mut ends = [None; 2];
        for (end, of) in ends.iter_mut().zip(placement.checks) {
            *end = self.end.filter(|_| *of == check);
        }
        self.direct.take(surface, ends)
    }

    fn answered(&mut self, taken: &Taken, out: &mut dyn Outlet) {
        self.not_gravity = 0;
        if self.want.take().is_none() {
            self.answer = shown(taken, self.check(), self.turned);
        } else {
            self.captures = self.captures.saturating_add(1);
            out.send(taken, self.captures);
            // The next reading is another one: it is asked for anew.
            self.direct.restart();
            self.direct.forget_first();
            self.lifted();
            self.note(Show::Sent);
        }
    }
}
