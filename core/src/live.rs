//! A phone held to a part: events in, verdicts out. This is the way in for a page.

use crate::budget::{Contact, UpEstimate};
use crate::check::{Basis, End, Outcome, answer};
use crate::frames::{DEG, to_body};
use crate::fused::Fused;
use crate::holds::{Hold, Placement, Refusal, Surface};
use crate::intake::Intake;
use crate::limits::{LimitError, LimitSet};
use crate::parts::{Check, Part};
use crate::prior::{AGREE_DEG, AT_REST_M_S2, NOISE_STEPS, UNSEEN_STEP_M_S2};
use crate::reason::NoReading;
use crate::rounded::{AxisEstimate, AxisSums, estimate, inflation};
use crate::vector::{Vec3, norm, scaled};
use crate::window::{Still, Window};
use heapless::Vec;

/// Time without any event after which there is no sensor, ms.
const NO_SENSOR_MS: f64 = 1500.0;
/// Age of the newest event beyond which nothing may be shown, ms.
const STALE_MS: f64 = 300.0;
/// Time to take the thumb off the screen before movement counts as placing, ms.
const ARMING_MS: f64 = 1500.0;
/// Allowance on slow movement of the fused orientation, degrees: its own rounding.
const DRIFT_DEG: f32 = 0.1;

/// The channel in charge of a reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum Channel {
    /// Acceleration including gravity.
    Acceleration,
    /// The browser's fused orientation.
    Orientation,
}

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

/// What the last second says.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// The channel in charge.
    pub channel: Channel,
    /// The up vector and its uncertainty, device frame.
    pub up: UpEstimate,
    /// Samples behind it.
    pub samples: u32,
    /// Samples a second.
    pub rate_hz: f32,
    /// Step of the values, m/s².
    pub step_m_s2: f32,
    /// The checks that the placement gives, answered.
    pub outcomes: Vec<Outcome, 2>,
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
            self.read_orientation()?
        } else {
            self.read_acceleration()?
        };
        let other_up = self.fused.mean().filter(|_| !self.alone);
        reading.outcomes = self.answers(&reading.up, other_up);
        Ok(reading)
    }

    fn read_acceleration(&self) -> Result<Reading, NoReading> {
        let still = self.window.still()?;
        let count = self.window.count_m_s2();
        let step_counts = self.step_counts(&still);
        let axes = estimates(&still);
        let force: Vec3 = core::array::from_fn(|i| f32::from(still.origin[i]) + axes[i].value);
        let length = norm(force);
        if !(AT_REST_M_S2.0..AT_REST_M_S2.1).contains(&(length * count)) {
            return Err(NoReading::NotGravity);
        }
        // A sensor whose own step is coarser than a count leaves half of that step.
        let own_half = if step_counts > 1.0 {
            0.5 * step_counts
        } else {
            0.0
        };
        let half = axes.map(|a| a.half_width.max(own_half) / length);
        let up = UpEstimate {
            up: scaled(force, 1.0 / length),
            noise: axes.map(|a| a.noise / length),
            half_steps: core::array::from_fn(|i| {
                core::array::from_fn(|j| if i == j { half[i] } else { 0.0 })
            }),
            worst_half_step: 0.5 * step_counts / length,
            settle_deg: 0.0,
        };
        self.compare_channels(&up, half)?;
        Ok(Reading {
            channel: Channel::Acceleration,
            up,
            samples: still.axes[0].n,
            rate_hz: still.rate_hz,
            step_m_s2: step_counts * count,
            outcomes: Vec::new(),
        })
    }

    /// Step of the sensor behind the counts, in counts.
    fn step_counts(&self, still: &Still) -> f32 {
        match still.least_change {
            Some(change) => f32::from(change),
            None if self.intake.is_fine() => UNSEEN_STEP_M_S2 / self.window.count_m_s2(),
            None => 1.0,
        }
    }

    /// Lets the fused orientation object: by slow movement, or by saying something else.
    fn compare_channels(&self, up: &UpEstimate, half: Vec3) -> Result<(), NoReading> {
        let noise_deg = up.noise.into_iter().fold(0.0, f32::max) * DEG;
        if self
            .fused
            .drift_deg()
            .is_some_and(|d| d > DRIFT_DEG + 1.2 * noise_deg)
        {
            return Err(NoReading::Drifting);
        }
        let Some(other) = self.fused.mean() else {
            return Ok(());
        };
        let allowed = |i: usize| half[i] + 2.2 * up.noise[i] + AGREE_DEG / DEG;
        if (0..3).any(|i| (up.up[i] - other[i]).abs() > allowed(i)) {
            return Err(NoReading::ChannelsDisagree);
        }
        Ok(())
    }

    fn read_orientation(&self) -> Result<Reading, NoReading> {
        let settled = self.fused.settled().ok_or(NoReading::Settling)?;
        if self.fused.drift_deg().is_some_and(|d| d > 2.0 * DRIFT_DEG) {
            return Err(NoReading::Drifting);
        }
        // Slow noise of the filter is invisible in a second: 0.6 of the accelerometer's, which
        // nobody sees here, so the noisiest one.
        let unseen = 0.6 * NOISE_STEPS.1 * 0.1 / 9.8 / libm::sqrtf(60.0);
        let noise = libm::hypotf(settled.noise_deg / DEG, unseen);
        let [by_beta, by_gamma] = settled.half_steps;
        Ok(Reading {
            channel: Channel::Orientation,
            up: UpEstimate {
                up: settled.up,
                noise: [noise; 3],
                half_steps: [by_beta, by_gamma, [0.0; 3]],
                worst_half_step: norm(by_beta),
                settle_deg: settled.settle_deg,
            },
            samples: 60,
            rate_hz: 60.0,
            step_m_s2: 0.0,
            outcomes: Vec::new(),
        })
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

fn estimates(still: &Still) -> [AxisEstimate; 3] {
    let n = still.axes[0].n;
    let variances = core::array::from_fn(|i| AxisSums::variance(&still.axes[i]));
    let factor = inflation(n, &still.batch_means, variances);
    core::array::from_fn(|i| estimate(&still.axes[i], factor, NOISE_STEPS))
}
