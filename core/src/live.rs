//! A phone held to a part: events in, verdicts out. This is the way in for a page.

use crate::budget::{Contact, UpEstimate};
use crate::check::{Basis, End, Outcome, answer};
use crate::frames::to_body;
use crate::fused::Fused;
use crate::holds::{Hold, Placement, Refusal, Surface};
use crate::intake::Intake;
use crate::limits::{LimitError, LimitSet};
use crate::parts::{Check, Part};
pub use crate::reading::{Channel, Reading};
use crate::reading::{by_acceleration, by_orientation};
use crate::reason::NoReading;
use crate::vector::Vec3;
use crate::window::Window;
use heapless::Vec;

/// Time without any event after which there is no sensor, ms.
const NO_SENSOR_MS: f64 = 1500.0;
/// Age of the newest event beyond which nothing may be shown, ms.
const STALE_MS: f64 = 300.0;
/// Time to take the thumb off the screen before movement counts as placing, ms.
const ARMING_MS: f64 = 1500.0;

/// A blind reading: taken by itself once the phone has been placed and rests.
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

/// Everything between a phone's events and the answers.
#[derive(Debug, Clone)]
pub struct Live {
    intake: Intake,
    window: Window,
    fused: Fused,
    /// The last motion event came without values.
    empty: bool,
    /// Motion events come without values: the fused orientation is alone.
    alone: bool,
    fault: Option<NoReading>,
    started_ms: Option<f64>,
    placement: Option<Placement>,
    limits: LimitSet,
    ends: [Option<End>; Check::ALL.len()],
    blind: Blind,
    reading: Result<Reading, NoReading>,
}

impl Default for Live {
    fn default() -> Self {
        Self::new()
    }
}

impl Live {
    /// Nothing received, no placement chosen, trade-usage examples for limits.
    #[must_use]
    pub fn new() -> Self {
        let intake = Intake::new();
        Self {
            window: Window::new(intake.count_m_s2()),
            intake,
            fused: Fused::default(),
            empty: false,
            alone: false,
            fault: None,
            started_ms: None,
            placement: None,
            limits: LimitSet::trade_usage(),
            ends: [None; Check::ALL.len()],
            blind: Blind::Off,
            reading: Err(NoReading::Starting),
        }
    }

    /// Chooses how the phone is held to which part. What was collected is forgotten.
    ///
    /// # Errors
    /// [`Refusal`] where the pair can't give anything; the choice before it stays.
    pub fn select(&mut self, part: Part, hold: Hold, surface: Surface) -> Result<(), Refusal> {
        self.placement = Some(Placement::new(part, hold, surface)?);
        self.ends = [None; Check::ALL.len()];
        self.blind = Blind::Off;
        self.restart(None);
        Ok(())
    }

    /// What was chosen.
    #[must_use]
    pub fn placement(&self) -> Option<&Placement> {
        self.placement.as_ref()
    }

    /// Puts other limits in force.
    ///
    /// # Errors
    /// What is wrong with them; the limits before stay.
    pub fn set_limits(&mut self, limits: LimitSet) -> Result<(), LimitError> {
        limits.validate()?;
        self.limits = limits;
        Ok(())
    }

    /// The limits in force.
    #[must_use]
    pub fn limits(&self) -> &LimitSet {
        &self.limits
    }

    /// Says which end of the part looked lower, for one check.
    pub fn tell_end(&mut self, check: Check, end: Option<End>) {
        self.ends[check as usize] = end;
    }

    /// What was said.
    #[must_use]
    pub fn end_told(&self, check: Check) -> Option<End> {
        self.ends[check as usize]
    }

    /// Sign of this browser's gravity: see [`Intake::sign`].
    #[must_use]
    pub fn sign(&self) -> i8 {
        self.intake.sign()
    }

    /// Takes a sign known from before, or 0 to learn it again.
    pub fn set_sign(&mut self, sign: i8) {
        self.intake.set_sign(sign);
        self.restart(None);
    }

    /// Decides the sign for a phone that lies face up now; 0 when it does not.
    pub fn learn_sign_face_up(&mut self) -> i8 {
        self.intake.learn_sign_face_up()
    }

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

    /// Share of the window that is filled, 0 to 1.
    #[must_use]
    pub fn progress(&self) -> f32 {
        self.window.progress()
    }

    /// One motion event: acceleration including gravity, m/s², as the browser gives it.
    pub fn motion(&mut self, t_ms: f64, values: [Option<f64>; 3]) {
        self.empty = values == [None; 3];
        let up = self.fused.up();
        let accepted = match self.intake.motion(t_ms, values, up) {
            Ok(accepted) => Ok((accepted.dt_us, accepted.counts, false)),
            Err(NoReading::NoSensor) if up.is_some() => {
                Ok((self.intake.last_dt_us(), [0; 3], true))
            }
            Err(reason) => Err(reason),
        };
        let (dt_us, counts, alone) = match accepted {
            Ok(accepted) => accepted,
            Err(reason) => return self.restart(Some(reason)),
        };
        if self.alone != alone {
            self.alone = alone;
            self.restart(Some(NoReading::Starting));
        }
        match self.window.push(dt_us, counts, up) {
            Ok(true) => self.fused.push_mean(self.window.newest_fused()),
            Ok(false) => {}
            Err(reason) => self.restart(Some(reason)),
        }
    }

    /// One orientation event: β and γ, degrees, as the browser gives them.
    pub fn orientation(&mut self, beta_deg: Option<f64>, gamma_deg: Option<f64>) {
        let angles = beta_deg.zip(gamma_deg);
        let sound = angles.filter(|(b, g)| b.abs() <= 360.0 && g.abs() <= 360.0);
        if angles.is_some() && sound.is_none() {
            self.restart(Some(NoReading::NotFinite));
        }
        self.fused.hold(sound.map(|(b, g)| (b as f32, g as f32)));
    }

    fn restart(&mut self, fault: Option<NoReading>) {
        self.fault = fault;
        self.window = Window::new(self.intake.count_m_s2());
        self.fused.restart();
    }

    /// Answers anew at `now_ms`, in the time of the events.
    ///
    /// # Errors
    /// Why there is no reading.
    pub fn tick(&mut self, now_ms: f64) -> Result<&Reading, NoReading> {
        self.reading = self.read(now_ms);
        self.advance_blind(now_ms);
        self.reading()
    }

    /// What the last [`Self::tick`] found.
    ///
    /// # Errors
    /// Why there is no reading.
    pub fn reading(&self) -> Result<&Reading, NoReading> {
        self.reading.as_ref().map_err(|reason| *reason)
    }

    fn advance_blind(&mut self, now_ms: f64) {
        use NoReading::{Drifting, Moving, NotGravity, Tremor};
        let moves = matches!(self.reading, Err(Moving | Tremor | NotGravity | Drifting));
        self.blind = match self.blind {
            Blind::Armed(since_ms) if moves && now_ms - since_ms > ARMING_MS => Blind::Moved,
            Blind::Moved if self.reading.is_ok() => Blind::Ready,
            Blind::Ready if self.reading.is_err() => Blind::Moved,
            other => other,
        };
    }

    fn read(&mut self, now_ms: f64) -> Result<Reading, NoReading> {
        let started_ms = *self.started_ms.get_or_insert(now_ms);
        let Some(last_ms) = self.intake.last_ms() else {
            let patient = now_ms - started_ms < NO_SENSOR_MS;
            return Err(if patient {
                NoReading::Starting
            } else {
                NoReading::NoSensor
            });
        };
        if now_ms.is_nan() || (now_ms - last_ms).abs() > STALE_MS {
            // A browser without sensors sends one event without values, then nothing more.
            return Err(if self.empty && !self.alone {
                NoReading::NoSensor
            } else {
                NoReading::Stale
            });
        }
        if let Some(fault) = self.fault.filter(|_| self.window.is_fresh()) {
            return Err(fault);
        }
        let mut reading = if self.alone {
            by_orientation(&self.fused)?
        } else {
            by_acceleration(&self.window, &self.fused, self.intake.is_fine())?
        };
        let other_up = self.fused.mean().filter(|_| !self.alone);
        reading.outcomes = self.answers(&reading.up, other_up);
        Ok(reading)
    }

    fn answers(&self, up: &UpEstimate, other_up: Option<Vec3>) -> Vec<Outcome, 2> {
        let Some(placement) = &self.placement else {
            return Vec::new();
        };
        let (hold_deg, align_deg) =
            placement.contact_deg(self.limits.surface_deg(placement.surface));
        let contact = Contact {
            hold_deg,
            align_deg,
            normal: placement.normal_device(),
        };
        let from = Basis {
            up,
            other_up,
            rotation: &placement.hold.rotation(),
            contact: &contact,
        };
        let checks = placement.checks.iter().take(2);
        checks
            .map(|&c| answer(c, &from, &self.limits.limit(c), self.ends[c as usize]))
            .collect()
    }

    /// Up in the body frame of the chosen placement, where there is a reading.
    #[must_use]
    pub fn up_body(&self) -> Option<Vec3> {
        let reading = self.reading.as_ref().ok()?;
        Some(to_body(&self.placement?.hold.rotation(), reading.up.up))
    }
}
