//! A sensor read directly, as a gauge does: whole counts with time steps in, what was taken out.
//! No browser stands between, so that no sign has to be learnt and no second channel objects. The
//! way from a second of rest to answers is the one of [`crate::live::Live`].

use crate::answers::{up_of_one, up_of_turn};
use crate::budget::UpEstimate;
use crate::calibration::Pose;
use crate::check::End;
use crate::holds::Placement;
use crate::intake::{GAP_MS, SAMPLE_M_S2};
use crate::prior::LARGEST_ZERO;
use crate::reading::{Channel, Rest, ZeroBy, noise_of};
use crate::reason::NoReading;
use crate::sensor::Sensor;
pub use crate::taken::Taken;
use crate::turn::TURN_FOR_MS;
use crate::vector::hypot;
use crate::window::{Still, Window};

/// Longest time between two samples, microseconds.
const GAP_US: u32 = GAP_MS as u32 * 1000;
/// Longest time between two placements of a turn, microseconds.
const TURN_FOR_US: u32 = TURN_FOR_MS as u32 * 1000;

/// The first placement of a turn end for end.
#[derive(Debug, Clone, Copy)]
struct First {
    still: Still,
    /// Time since, microseconds.
    age_us: u32,
    /// Whether the gauge was moved since.
    moved: bool,
}

// Each makes a rest of it anew, and no small board has to keep one beside the second's.
impl First {
    /// Bounds of the noise that both placements show.
    #[inline(never)]
    fn noise_with(&self, second: &Rest) -> (f32, f32) {
        let one = self.rest_like(second);
        noise_of([&one, second].into_iter())
    }

    #[inline(never)]
    fn up(&self, second: &Rest, bounds: (f32, f32)) -> Result<UpEstimate, NoReading> {
        self.rest_like(second).by_acceleration(bounds)
    }

    /// Its second of rest, by the sensor of the other one's.
    fn rest_like(&self, second: &Rest) -> Rest {
        Rest::direct(self.still, second.count_m_s2, second.largest_zero)
    }
}

/// A sensor laid on a part. One count must be the sensor's own step, and positive upwards at rest:
/// specific force along the axes of [`crate::holds`], a gauge's display taken for the screen.
#[derive(Debug, Clone)]
pub struct Direct {
    window: Window,
    sensor: Sensor,
    largest_zero: f32,
    placement: Placement,
    first: Option<First>,
    /// Least and largest squared length of one sample, counts²; outside there was a knock.
    knock: (u32, u32),
}

impl Direct {
    /// Nothing received. `count_m_s2` is the size of a count, `sensor` what is known of it.
    #[must_use]
    pub const fn new(count_m_s2: f32, sensor: Sensor, placement: Placement) -> Self {
        let low = SAMPLE_M_S2.0 as f32 / count_m_s2;
        let high = SAMPLE_M_S2.1 as f32 / count_m_s2;
        Self {
            window: Window::new(count_m_s2),
            sensor,
            largest_zero: LARGEST_ZERO,
            placement,
            first: None,
            knock: ((low * low) as u32, (high * high) as u32),
        }
    }

    /// The same for a sensor whose maker states a larger zero than a phone's: the share of gravity
    /// beyond which a turn takes it for a mistake; at rest it may then feel as much more or less.
    #[must_use]
    pub const fn with_largest_zero(mut self, share: f32) -> Self {
        self.largest_zero = share;
        self
    }

    /// Chooses a part and how the sensor lies on it. What was collected is forgotten.
    pub fn place(&mut self, placement: Placement) {
        self.placement = placement;
        self.forget_first();
        self.window.restart();
    }

    /// What was chosen.
    #[must_use]
    pub fn placement(&self) -> &Placement {
        &self.placement
    }

    /// Says what is known of the sensor: its data sheet, or what a calibration found, widened by
    /// what may have crept since ([`Sensor::crept`]).
    pub fn set_sensor(&mut self, sensor: Sensor) {
        self.sensor = sensor;
    }

    /// What is known of the sensor.
    #[must_use]
    pub fn sensor(&self) -> &Sensor {
        &self.sensor
    }

    /// Forgets every sample: the sensor failed.
    pub fn restart(&mut self) {
        self.window.restart();
        self.moved();
    }

    /// Share of the window that is filled, 0 to 1.
    #[must_use]
    pub fn progress(&self) -> f32 {
        self.window.progress()
    }

    /// One sample in counts, `dt_us` after the last one. Returns whether that closed a batch: then
    /// there is something new to ask.
    ///
    /// # Errors
    /// [`NoReading::TimeRepeated`], [`NoReading::Gap`], [`NoReading::NotGravity`] for a knock,
    /// [`NoReading::Moving`]; the window has then begun anew.
    pub fn push(&mut self, dt_us: u32, counts: [i16; 3]) -> Result<bool, NoReading> {
        if let Some(first) = &mut self.first {
            first.age_us = first.age_us.saturating_add(dt_us);
        }
        let pushed = match self.fault(dt_us, counts) {
            Some(fault) => Err(fault),
            None => self.window.push(dt_us, counts, None),
        };
        if pushed.is_err() {
            self.restart();
        }
        pushed
    }

    fn fault(&self, dt_us: u32, counts: [i16; 3]) -> Option<NoReading> {
        let (low, high) = self.knock;
        let squared = counts.map(|c| u32::from(c.unsigned_abs()).pow(2));
        let squared = squared.into_iter().fold(0, u32::saturating_add);
        if dt_us == 0 {
            Some(NoReading::TimeRepeated)
        } else if dt_us > GAP_US {
            Some(NoReading::Gap)
        } else if !(low..=high).contains(&squared) {
            Some(NoReading::NotGravity)
        } else {
            None
        }
    }

    /// The last second, if the sensor rests.
    ///
    /// # Errors
    /// As [`Window::still`].
    pub fn rest(&mut self) -> Result<Rest, NoReading> {
        match self.window.still() {
            Ok(still) => Ok(Rest::direct(
                still,
                self.window.count_m_s2(),
                self.largest_zero,
            )),
            Err(reason) => {
                if reason != NoReading::Filling {
                    self.moved();
                }
                Err(reason)
            }
        }
    }

    fn moved(&mut self) {
        if let Some(first) = &mut self.first {
            first.moved = true;
        }
    }

    /// Keeps this second as the first placement of a turn end for end about the surface's normal,
    /// which takes the zero out. The next [`Self::take`] wants the sensor turned.
    ///
    /// # Errors
    /// As [`Self::rest`]; [`NoReading::NotGravity`].
    pub fn keep_first(&mut self) -> Result<(), NoReading> {
        let rest = self.rest()?;
        up_of_one(Channel::Acceleration, &rest, &self.sensor)?;
        self.first = rest.still.map(|still| First {
            still,
            age_us: 0,
            moved: false,
        });
        Ok(())
    }

    /// Whether a first placement is kept.
    #[must_use]
    pub fn has_first(&self) -> bool {
        self.first.is_some()
    }

    /// Forgets the first placement.
    pub fn forget_first(&mut self) {
        self.first = None;
    }

    /// What this second gives, with the first placement of a turn where one is kept. `surface_deg`
    /// as in [`Taken::decided`]; `ends` in the order of the placement's checks, where a photo counts
    /// as "can't tell". Whoever asks after
    /// [`Self::keep_first`] says by it that the sensor has been turned: no compass tells.
    ///
    /// # Errors
    /// As [`Self::rest`]; [`NoReading::NotGravity`]; [`NoReading::NotTurned`] where the sensor was
    /// not lifted since the first placement, [`NoReading::TurnTooOld`],
    /// [`NoReading::TurnDisagrees`]; [`NoReading::Starting`] where no part was chosen.
    pub fn take(
        &mut self,
        surface_deg: (f32, f32),
        ends: [Option<End>; 2],
    ) -> Result<Taken, NoReading> {
        if self.placement.part.is_none() {
            return Err(NoReading::Starting);
        }
        // By reference: a small board has no room for anything twice.
        let rest = self.rest();
        let rest = rest.as_ref().map_err(|reason| *reason)?;
        let up = self.up(rest, surface_deg);
        let up = up.as_ref().map_err(|reason| *reason)?;
        Ok(self.taken(rest, up, ends))
    }

    #[inline(never)]
    fn taken(&self, rest: &Rest, up: &UpEstimate, ends: [Option<End>; 2]) -> Taken {
        let (u_zero, u_side) = (up.sensor.u_zero, up.sensor.u_side);
        let sensor = Sensor {
            u_zero: core::array::from_fn(|i| hypot(u_zero[i], u_side[i])),
            u_scale: up.sensor.u_scale,
            found_at: up.sensor.found_at,
            ..Sensor::assumed()
        };
        let (samples, rate_hz) = rest.samples();
        let mut told = [None; 2];
        for ((told, end), _) in told.iter_mut().zip(ends).zip(self.placement.checks) {
            // There is no camera here that a photo could be from.
            *told = end.map(|e| if e == End::Photo { End::CantTell } else { e });
        }
        Taken {
            placement: self.placement,
            up: UpEstimate { sensor, ..*up },
            zero_by: self.zero_by(),
            samples,
            rate_hz,
            step_m_s2: rest.step_m_s2(),
            ends: told,
        }
    }

    fn zero_by(&self) -> ZeroBy {
        if self.first.is_some() {
            ZeroBy::Turn
        } else if self.sensor.zero_from != [0; 3] {
            ZeroBy::Found
        } else {
            ZeroBy::Assumed
        }
    }

    fn up(&self, rest: &Rest, surface_deg: (f32, f32)) -> Result<UpEstimate, NoReading> {
        match &self.first {
            Some(first) => self.up_by_turn(first, rest, surface_deg),
            None => up_of_one(Channel::Acceleration, rest, &self.sensor),
        }
    }

    #[inline(never)]
    fn up_by_turn(
        &self,
        first: &First,
        rest: &Rest,
        surface_deg: (f32, f32),
    ) -> Result<UpEstimate, NoReading> {
        if first.age_us > TURN_FOR_US {
            return Err(NoReading::TurnTooOld);
        }
        if !first.moved {
            return Err(NoReading::NotTurned);
        }
        let bounds = first.noise_with(rest);
        let one = first.up(rest, bounds);
        let two = rest.by_acceleration(bounds);
        let contact = self.placement.contact(surface_deg);
        up_of_turn(&one, &two, &contact, &self.sensor, self.largest_zero)
    }

    /// The pose that the sensor rests in, for [`crate::calibration::Poses`].
    ///
    /// # Errors
    /// As [`Self::rest`]; [`NoReading::NotGravity`].
    pub fn pose(&mut self) -> Result<Pose, NoReading> {
        self.rest()?.pose()
    }
}
