//! A phone held to a part: events in, verdicts out. This is the way in for a page.

pub use crate::blind::Blind;
use crate::calibration::Poses;
use crate::check::End;
use crate::findings::{Device, Findings};
use crate::frames::to_body;
use crate::fused::Fused;
use crate::holds::{Hold, Placement, Refusal, Surface};
use crate::intake::Intake;
use crate::level::Level;
use crate::limits::{LimitError, LimitSet};
use crate::parts::{Check, Part};
use crate::reading::Rest;
pub use crate::reading::{Channel, Reading};
use crate::reason::NoReading;
use crate::turn::Turn;
use crate::vector::Vec3;
use crate::vehicle::{Pointing, VehicleTerms};
use crate::window::Window;

/// Time without any event after which there is no sensor, ms.
const NO_SENSOR_MS: f64 = 1500.0;
/// Age of the newest event beyond which nothing may be shown, ms.
const STALE_MS: f64 = 300.0;
/// Everything between a phone's events and the answers.
#[derive(Debug, Clone)]
pub struct Live {
    pub(crate) intake: Intake,
    window: Window,
    pub(crate) fused: Fused,
    /// Turn about the vertical that the browser gives, degrees.
    pub(crate) alpha_deg: Option<f32>,
    /// The last motion event came without values.
    empty: bool,
    /// Motion events come without values: the fused orientation is alone.
    alone: bool,
    fault: Option<NoReading>,
    started_ms: Option<f64>,
    /// Wall clock, ms.
    pub(crate) clock_ms: f64,
    pub(crate) placement: Option<Placement>,
    pub(crate) limits: LimitSet,
    pub(crate) ends: [Option<End>; Check::ALL.len()],
    pub(crate) blind: Blind,
    pub(crate) device: Device,
    pub(crate) findings: Findings,
    pub(crate) turn: Turn,
    pub(crate) poses: Poses,
    pub(crate) level: Option<Level>,
    pub(crate) vehicle: VehicleTerms,
    pub(crate) pointing: Pointing,
    pub(crate) rest: Option<Rest>,
    pub(crate) reading: Result<Reading, NoReading>,
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
        Self::with_limits(LimitSet::trade_usage())
    }

    /// Nothing received, no placement chosen; `limits` as they come, from [`LimitSet`]'s own sets.
    #[must_use]
    pub fn with_limits(limits: LimitSet) -> Self {
        let intake = Intake::new();
        Self {
            window: Window::new(intake.count_m_s2()),
            intake,
            fused: Fused::default(),
            alpha_deg: None,
            empty: false,
            alone: false,
            fault: None,
            started_ms: None,
            clock_ms: 0.0,
            placement: None,
            limits,
            ends: [None; Check::ALL.len()],
            blind: Blind::Off,
            device: Device::default(),
            findings: Findings::new(),
            turn: Turn::new(),
            poses: Poses::new(),
            level: None,
            vehicle: VehicleTerms::ASSUMED,
            pointing: Pointing::Same,
            rest: None,
            reading: Err(NoReading::Starting),
        }
    }

    /// Chooses how the phone is held to which part. What was collected is forgotten.
    ///
    /// # Errors
    /// [`Refusal`] where the pair can't give anything; the choice before it stays.
    pub fn select(&mut self, part: Part, hold: Hold, surface: Surface) -> Result<(), Refusal> {
        self.place(Placement::new(part, hold, surface)?);
        Ok(())
    }

    /// Chooses a table, or the vehicle's floor or rail, to be read for itself.
    ///
    /// # Errors
    /// [`Refusal`] where that can't be read so; the choice before it stays.
    pub fn select_face(&mut self, hold: Hold, surface: Surface) -> Result<(), Refusal> {
        self.place(Placement::on_face(hold, surface)?);
        Ok(())
    }

    fn place(&mut self, placement: Placement) {
        self.placement = Some(placement);
        self.ends = [None; Check::ALL.len()];
        self.blind = Blind::Off;
        self.turn = Turn::new();
        self.reading = Err(NoReading::Starting);
        self.restart(None);
    }

    /// Answers the last second anew, so that a capture never pairs answers with other limits or
    /// words than theirs.
    pub(crate) fn answer_again(&mut self) {
        if let (Ok(_), Some(rest)) = (&self.reading, self.rest) {
            self.reading = self.evaluate(&rest);
        }
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
        self.answer_again();
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
        self.answer_again();
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

    /// Sets the wall clock, ms: what was found, and the vehicle's level, count for an hour by it.
    pub fn set_clock(&mut self, unix_ms: f64) {
        self.clock_ms = unix_ms;
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

    /// The turn about the vertical of the same event, degrees: tells whether the phone was turned
    /// end for end. No compass is needed.
    pub fn heading(&mut self, alpha_deg: Option<f64>) {
        let sound = alpha_deg.filter(|a| a.abs() <= 360.0);
        self.alpha_deg = sound.map(|a| a as f32);
    }

    fn restart(&mut self, fault: Option<NoReading>) {
        self.fault = fault;
        self.turn.moved |= fault.is_some();
        self.window = Window::new(self.intake.count_m_s2());
        self.fused.restart();
    }

    /// Answers anew at `now_ms`, in the time of the events.
    ///
    /// # Errors
    /// Why there is no reading.
    pub fn tick(&mut self, now_ms: f64) -> Result<&Reading, NoReading> {
        self.reading = self.rest(now_ms).and_then(|rest| {
            self.rest = Some(rest);
            self.evaluate(&rest)
        });
        if self.reading.is_err() {
            self.turn.note(self.reading.as_ref().err().copied());
        }
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

    /// The last second, if the phone rests.
    fn rest(&mut self, now_ms: f64) -> Result<Rest, NoReading> {
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
        let still = if self.alone {
            None
        } else {
            Some(self.window.still()?)
        };
        let (count, fine) = (self.window.count_m_s2(), self.intake.is_fine());
        Ok(Rest::new(still, count, fine, &self.fused))
    }

    /// Up in the body frame of the chosen placement, where there is a reading.
    #[must_use]
    pub fn up_body(&self) -> Option<Vec3> {
        let reading = self.reading.as_ref().ok()?;
        Some(to_body(&self.placement?.hold.rotation(), reading.up.up))
    }
}
