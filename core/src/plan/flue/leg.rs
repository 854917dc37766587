//! One leg of a pipe: what is told of it, which way it leans and how well that is known, and whether
//! a drain may be set where it starts.

use crate::plan::fuel::fuel_run;
use crate::plan::kind::{Kind, Problem, Refusal, Unit};
use crate::plan::row::row;

/// A place within a standard uncertainty: its middle, half of it √3 (JCGM 100 §4.3.7).
const SPREAD: Kind = Kind::new(Unit::Ratio, -2.0, 2.0).give_or_take(1.732_050_807_568_877_2, 0.0);
/// A standard uncertainty of a reading, from its report.
const STANDARD: Kind = Kind::new(Unit::Deg, 0.0, 90.0).or_none();
const NO_YES: Kind = Kind::choice(2).or_none();

row! {
    /// What belongs to the whole pipe.
    Pipe {
        /// Whether it is in a boat: no, yes.
        boat: Kind::choice(2),
        /// Whether a boat was afloat while the legs were read: ashore, afloat.
        afloat: NO_YES,
        /// Afloat: time from one side to the other and back.
        roll_period_s: Kind::new(Unit::S, 0.5, 30.0).or_none(),
        /// Afloat: how long each leg was read, the shortest of them.
        averaged_s: Kind::new(Unit::S, 0.0, 3600.0).or_none(),
        /// Afloat: how far she leaned to either side of the middle, at most.
        roll_deg: Kind::new(Unit::Deg, 0.0, 45.0).or_none(),
        /// Whether the manual allows a drain where the pipe is lowest: no, yes.
        drain_in_manual: NO_YES,
        /// What readings of the first phone share.
        zero_1_spread: SPREAD,
        /// Of the second, or of the same after it was checked anew.
        zero_2_spread: SPREAD,
        /// Of the third.
        zero_3_spread: SPREAD,
    }
}

row! {
    /// A leg, in order from the heater.
    Leg {
        /// Elevation on the way from the heater: negative where it falls. A level or a protractor on
        /// a pipe: 1° (assumed); a phone's reading is exact here and has its uncertainties below.
        elevation_deg: Kind::new(Unit::Deg, -90.0, 90.0).give_or_take(1.0, 0.0),
        /// Length along it.
        length_m: Kind { low: 0.01, ..fuel_run::LENGTH },
        /// By how much the pipe turns where it starts; of a bend made by hand 3° (assumed).
        bend_deg: Kind::new(Unit::Deg, 0.0, 360.0).give_or_take(3.0, 0.0),
        /// Where it starts, by [`Place`].
        place: Kind::choice(6).or_none(),
        /// Whether that is away from openings and where no hand reaches: no, yes.
        clear: NO_YES,
        /// Bore of the drain where it starts; empty: there is none.
        drain_bore_mm: fuel_run::BORE.or_none(),
        /// Which readings share their zero with this one: 0 or empty not read by a phone, 1 to 3.
        zero_of: Kind::choice(4).or_none(),
        /// Standard uncertainty of the reading, all in all.
        combined_u_deg: STANDARD,
        /// Of that, by the phone's zero.
        zero_u_deg: STANDARD,
        /// By its scale.
        scale_u_deg: STANDARD,
        /// By the reading of the vehicle's own level, where it is answered in the vehicle.
        datum_u_deg: STANDARD,
        /// By the leg's heading in the vehicle.
        heading_u_deg: STANDARD,
        /// By load and springs, the vehicle's level against its rail.
        rake_u_deg: STANDARD,
        /// What is this reading's own.
        own_spread: SPREAD,
        /// What rolling leaves in its mean.
        sway_spread: Kind::new(Unit::Ratio, -1.0, 1.0).give_or_take(1.0, 0.0),
    }
}

/// Places in [`Pipe`] and [`Leg`] of what is refused.
mod at {
    pub const BOAT: usize = 0;
    pub const AFLOAT: usize = 1;
    pub const ROLL_PERIOD: usize = 2;
    pub const AVERAGED: usize = 3;
    pub const ROLL: usize = 4;
    pub const DRAIN_IN_MANUAL: usize = 5;
    pub const PLACE: usize = 3;
    pub const CLEAR: usize = 4;
    pub const DRAIN: usize = 5;
}

/// Where a leg starts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum Place {
    /// Outside the vehicle, in free air.
    FreeAir,
    /// Cab or living space.
    Cab,
    /// Locker.
    Locker,
    /// Bilge.
    Bilge,
    /// Closed skirt or box.
    Skirt,
    /// Engine bay.
    EngineBay,
}

impl Place {
    /// All of them, in the order of their codes.
    pub const ALL: [Self; 6] = [
        Self::FreeAir,
        Self::Cab,
        Self::Locker,
        Self::Bilge,
        Self::Skirt,
        Self::EngineBay,
    ];
}

const NO: f64 = 0.0;
const YES: f64 = 1.0;

/// Fewest roll periods that a mean of a boat's motion is taken over (assumed).
const LEAST_PERIODS: f64 = 10.0;

/// Largest error, degrees, of a mean over `averaged_s` of an angle that swings by `roll_deg` to
/// either side with `period_s`.
///
/// The mean over T of A·sin(ω·t + φ) is A·(cos φ − cos(ω·T + φ))/(ω·T). Two cosines differ by 2 at
/// most and ω = 2π/P, so it is A·P/(π·T) at most. Its unit is that of `roll_deg`; for T > 0.
#[must_use]
pub fn sway_deg(roll_deg: f64, period_s: f64, averaged_s: f64) -> f64 {
    roll_deg * period_s / (core::f64::consts::PI * averaged_s)
}

impl Pipe {
    /// What rolling leaves in a leg's mean, degrees: 0 where nothing rolls.
    ///
    /// # Errors
    /// A boat of which it is not told whether she was afloat, or how she rolled; readings averaged
    /// over fewer than ten roll periods ([`Problem::BeyondFormula`]).
    pub fn sway_deg(&self) -> Result<f64, Refusal> {
        if self.boat == NO {
            return Ok(0.0);
        }
        let told = [
            (self.afloat, at::AFLOAT),
            (self.roll_period_s, at::ROLL_PERIOD),
            (self.averaged_s, at::AVERAGED),
            (self.roll_deg, at::ROLL),
        ];
        let asked = if self.afloat == NO { 0 } else { told.len() };
        if let Some((_, place)) = told.iter().take(asked).find(|(x, _)| x.is_nan()) {
            return Err(Refusal::at(*place, Problem::Missing));
        }
        if asked == 0 {
            return Ok(0.0);
        }
        if self.averaged_s < LEAST_PERIODS * self.roll_period_s {
            return Err(Refusal::at(at::AVERAGED, Problem::BeyondFormula));
        }
        Ok(sway_deg(self.roll_deg, self.roll_period_s, self.averaged_s))
    }

    /// Where the readings that share a zero lie within it.
    fn zero(&self, of: f64) -> f64 {
        let shared = [self.zero_1_spread, self.zero_2_spread, self.zero_3_spread];
        // A cast saturates: no group at all gives none.
        let group = (of as usize).wrapping_sub(1);
        shared.get(group).copied().unwrap_or(0.0)
    }
}

impl Leg {
    /// Its elevation, degrees, where its errors lie as their spreads say.
    ///
    /// Errors of zero, scale and what the vehicle's level leaves move together in all readings of a group, as if
    /// fully correlated. That bounds the uncertainty of every sum with positive weights, such as a
    /// height, from above (JCGM 100 §5.2.2): no covariance exceeds the product of both. The rest of
    /// the reading's variance is its own.
    #[must_use]
    pub fn elevation(&self, pipe: &Pipe, sway_deg: f64) -> f64 {
        let known = |u: f64| if u.is_nan() { 0.0 } else { u * u };
        let shared = [
            self.zero_u_deg,
            self.scale_u_deg,
            self.datum_u_deg,
            self.heading_u_deg,
            self.rake_u_deg,
        ];
        let shared = if self.zero_of > 0.0 {
            shared.into_iter().map(known).sum()
        } else {
            0.0
        };
        let own = (known(self.combined_u_deg) - shared).max(0.0);
        self.elevation_deg
            + libm::sqrt(shared) * pipe.zero(self.zero_of)
            + libm::sqrt(own) * self.own_spread
            + sway_deg * self.sway_spread
    }

    /// What speaks for a drain where it starts: the number told, the one wanted, and its place where
    /// that of the leg's first number is `first`.
    fn drain_terms(&self, pipe: &Pipe, first: usize) -> [(f64, f64, usize); 4] {
        let free_air = f64::from(Place::FreeAir as u8);
        [
            (pipe.boat, NO, at::BOAT),
            (pipe.drain_in_manual, YES, at::DRAIN_IN_MANUAL),
            (self.place, free_air, first + at::PLACE),
            (self.clear, YES, first + at::CLEAR),
        ]
    }

    /// Whether a drain may be set where it starts: not in a boat, the manual allows it, outside in
    /// free air, away from openings and hands. What was not told does not speak for it.
    #[must_use]
    pub fn may_drain(&self, pipe: &Pipe) -> bool {
        let terms = self.drain_terms(pipe, 0);
        terms.iter().all(|(told, wanted, _)| told == wanted)
    }

    /// Whether water leaves where it starts, by a drain. `first` is the place of its first number.
    ///
    /// # Errors
    /// A drain where none may be ([`Problem::Contradiction`]), or where it is not told whether one
    /// may be ([`Problem::Missing`]).
    pub fn is_drained(&self, pipe: &Pipe, first: usize) -> Result<bool, Refusal> {
        if self.drain_bore_mm.is_nan() {
            return Ok(false);
        }
        let terms = self.drain_terms(pipe, first);
        if terms
            .iter()
            .any(|(told, wanted, _)| !told.is_nan() && told != wanted)
        {
            return Err(Refusal::at(first + at::DRAIN, Problem::Contradiction));
        }
        match terms.iter().find(|(told, ..)| told.is_nan()) {
            Some((_, _, place)) => Err(Refusal::at(*place, Problem::Missing)),
            None => Ok(true),
        }
    }
}
