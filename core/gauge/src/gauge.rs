//! The gauge without its board: samples and presses in, what to show and what to do out.

use crate::accelerometer::{Stated, sensor};
use crate::answer::upper;
use crate::buttons::{Buttons, Press};
use crate::faces::Faces;
use crate::fault::Fault;
use crate::kept::{Found, Kept};
use crate::lights::{Show, Towards};
use crate::limits::placement;
use crate::lying::Lying;
use crate::self_test::SelfTest;
use plumbmark::calibration::Calibration;
use plumbmark::check::End;
use plumbmark::direct::{Direct, Taken};
use plumbmark::parts::Check;

/// Time of one look, ms.
pub const LOOK_MS: u32 = 10;
/// How long a note stays, ms.
const NOTE_MS: u32 = 1_500;
/// Time after which a sensor that failed is tried again, ms.
const RETRY_MS: u32 = 1_000;

/// Part of gravity, one in so many, that an axis may change by before the gauge lies otherwise: 5°
/// near level. Assumed.
const OTHERWISE: u16 = 12;

/// What is looked at every 10 ms.
#[derive(Debug, Clone, Copy)]
pub struct Look {
    /// The accelerometer's next sample, where there is one, or what is wrong with it.
    pub sample: Result<Option<[i16; 3]>, Fault>,
    /// Whether each button is down.
    pub pressed: [bool; 2],
    /// Whether the supply is too low.
    pub supply_low: bool,
}

/// Where captures and calibrations go.
pub trait Outlet {
    /// Sends a capture, the one of this number.
    fn send(&mut self, taken: &Taken, count: u32);
    /// Keeps a calibration; what was kept, or `None` where that failed.
    fn keep(&mut self, calibration: Calibration) -> Option<Kept>;
}

/// What is done with the next second of rest.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Want {
    /// It is captured.
    Capture,
    /// It is the first placement of a turn end for end.
    First,
}

// There is one gauge, and no heap to put the poses on.
#[allow(clippy::large_enum_variant)]
#[derive(Debug, Clone)]
pub(crate) enum Mode {
    /// The self test runs, behind a fault where there is one.
    Test,
    /// It has passed; the side that is up.
    Ready(Option<Towards>),
    /// A check is read.
    Read,
    /// The gauge is calibrated.
    Faces(Faces),
}

/// The gauge's whole state.
#[derive(Debug, Clone)]
pub struct Gauge {
    pub(crate) stated: &'static Stated,
    pub(crate) direct: Direct,
    pub(crate) test: SelfTest,
    buttons: Buttons,
    pub(crate) mode: Mode,
    pub(crate) fault: Option<Fault>,
    fault_ms: u32,
    /// The check chosen, by its place among all.
    pub(crate) chosen: usize,
    pub(crate) end: Option<End>,
    /// Whether somebody said that the gauge has been turned end for end.
    pub(crate) turned: bool,
    pub(crate) lying: Lying,
    /// Whether it was lifted since the first placement of a turn.
    pub(crate) was_lifted: bool,
    pub(crate) want: Option<(Want, u32)>,
    /// What the last second says, shown as long as it is the last one.
    pub(crate) answer: Show,
    /// Batches since it was answered.
    pub(crate) batches: u8,
    /// Answers in a row that found rest without gravity.
    pub(crate) not_gravity: u8,
    note: Option<(Show, u32)>,
    /// Captures sent.
    pub(crate) captures: u32,
    show: Show,
    shown_ms: u32,
    /// Time since the last sample, µs.
    since_us: u32,
}

impl Gauge {
    /// Switched on. `found` is what flash holds, `restarted` whether it stopped before.
    #[must_use]
    #[inline(never)]
    pub fn new(stated: &'static Stated, found: &Found, restarted: bool) -> Self {
        let kept = match found {
            Found::Good(kept) => Some(kept),
            Found::Nothing | Found::Damaged => None,
        };
        let fault = if restarted {
            Some(Fault::Restarted)
        } else {
            (*found == Found::Damaged).then_some(Fault::KeptDamaged)
        };
        let sensor = sensor(stated, kept);
        Self {
            direct: Direct::new(stated.count_m_s2, sensor, placement(Check::HeaterPort))
                .with_largest_zero(stated.largest_zero),
            stated,
            test: SelfTest::default(),
            buttons: Buttons::default(),
            mode: Mode::Test,
            fault,
            fault_ms: 0,
            chosen: 0,
            end: None,
            turned: false,
            lying: Lying::default(),
            was_lifted: false,
            want: None,
            answer: Show::NoReading,
            batches: 0,
            not_gravity: 0,
            note: None,
            captures: 0,
            show: Show::SelfTest,
            shown_ms: 0,
            since_us: 0,
        }
    }

    /// One look, every [`LOOK_MS`]. Whether the accelerometer has to be started before the next one.
    #[inline(never)]
    pub fn look(&mut self, look: Look, out: &mut dyn Outlet) -> bool {
        let press = self.buttons.look(look.pressed);
        match self.sound(&look) {
            Err(fault) => self.fail(fault),
            Ok(sample) => self.work(sample, press, out),
        }
        self.age();
        // A sensor that was away has lost its settings.
        self.fault.is_some() && self.fault_ms.is_multiple_of(RETRY_MS)
    }

    /// What is shown, and for how long it has been, ms.
    #[must_use]
    pub fn shown(&self) -> (Show, u32) {
        (self.show, self.shown_ms)
    }

    /// The check chosen.
    #[must_use]
    pub fn check(&self) -> Check {
        let chosen = Check::ALL.get(self.chosen).copied();
        chosen.unwrap_or(Check::HeaterPort)
    }

    fn sound(&mut self, look: &Look) -> Result<Option<[i16; 3]>, Fault> {
        if look.supply_low {
            return Err(Fault::SupplyLow);
        }
        self.test.judge(look.sample?, self.stated)
    }

    /// Forgets everything read: nothing from before a fault is shown after it.
    #[inline(never)]
    pub(crate) fn fail(&mut self, fault: Fault) {
        if self.fault != Some(fault) {
            (self.fault, self.fault_ms) = (Some(fault), 0);
        }
        self.test = SelfTest::default();
        self.mode = Mode::Test;
        self.forget();
    }

    fn work(&mut self, sample: Option<[i16; 3]>, press: Option<Press>, out: &mut dyn Outlet) {
        let fresh = self.take_in(sample);
        match self.mode {
            Mode::Test => self.run_test(fresh, press),
            Mode::Ready(_) => {
                if let Some(sample) = sample {
                    self.mode = Mode::Ready(upper(sample));
                }
                if press.is_some() {
                    self.choose(self.chosen);
                }
            }
            Mode::Read if press == Some(Press::LongBoth) => {
                self.forget();
                self.mode = Mode::Faces(Faces::default());
            }
            Mode::Read => self.read(fresh, press, out),
            Mode::Faces(_) => self.calibrate(fresh, press, out),
        }
    }

    /// Whether there is something new to ask.
    #[inline(never)]
    fn take_in(&mut self, sample: Option<[i16; 3]>) -> bool {
        self.since_us = self.since_us.saturating_add(LOOK_MS * 1_000);
        let Some(sample) = sample else {
            return false;
        };
        // The sensor's own clock counts, unless samples were missed.
        let since_us = core::mem::take(&mut self.since_us);
        let own_us = self.stated.sample_us;
        let dt_us = if since_us > 2 * own_us {
            since_us
        } else {
            own_us
        };
        self.lying.passes();
        let pushed = self.direct.push(dt_us, sample);
        let lifted = match pushed {
            Err(_) => {
                self.answer = Show::NoReading;
                self.lying.is_lifted()
            }
            Ok(fresh) => {
                fresh
                    && self
                        .lying
                        .is_otherwise(sample, self.stated.one_g / OTHERWISE)
            }
        };
        if lifted {
            self.lifted();
        }
        pushed == Ok(true)
    }

    /// Chooses a check, and begins with it.
    #[inline(never)]
    pub(crate) fn choose(&mut self, chosen: usize) {
        self.chosen = chosen % Check::ALL.len();
        self.mode = Mode::Read;
        self.forget();
        self.direct.place(placement(self.check()));
        self.note(Show::Chosen(self.chosen as u8 + 1));
    }

    #[inline(never)]
    fn forget(&mut self) {
        self.want = None;
        self.not_gravity = 0;
        self.direct.restart();
        self.direct.forget_first();
        self.lifted();
    }

    /// What the eye and the hand said holds for one placement; a turn's first one goes on.
    #[inline(never)]
    pub(crate) fn lifted(&mut self) {
        self.answer = Show::NoReading;
        self.turned = false;
        self.was_lifted = true;
        if !self.direct.has_first() {
            self.end = None;
        }
        if self.want.take().is_some() {
            self.note(Show::Refused);
        }
    }

    /// Shows something for a moment.
    pub(crate) fn note(&mut self, show: Show) {
        self.note = Some((show, NOTE_MS));
    }

    #[inline(never)]
    fn age(&mut self) {
        self.note = self.note.and_then(|(show, left_ms)| {
            let left_ms = left_ms.checked_sub(LOOK_MS)?;
            Some((show, left_ms))
        });
        self.fault_ms = self.fault_ms.wrapping_add(LOOK_MS);
        let show = match (self.fault, self.note, &self.mode) {
            (Some(fault), ..) => Show::Fault(fault),
            (_, _, Mode::Test) => Show::SelfTest,
            (_, Some((show, _)), _) => show,
            (_, _, Mode::Ready(side)) => Show::Ready(*side),
            (_, _, Mode::Faces(faces)) => Show::Poses(faces.taken()),
            (_, _, Mode::Read) => self.live(),
        };
        if show == self.show {
            self.shown_ms = self.shown_ms.wrapping_add(LOOK_MS);
        } else {
            (self.show, self.shown_ms) = (show, 0);
        }
    }
}
