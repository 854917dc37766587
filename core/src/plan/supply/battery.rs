//! How long the battery lasts, starts and after-runs counted.

use super::{AMPERES, needed};
use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Refusal, Unit};
use crate::plan::row::{Row, row};

const MINUTES: Kind = Kind::new(Unit::Min, 0.0, 60.0).give_or_take(0.0, 0.1);

row! {
    /// A battery and what is asked of it.
    Battery {
        /// What it holds: its label, less its age. 10 % (assumed).
        capacity_ah: Kind::new(Unit::Ah, 1.0, 3000.0).give_or_take(0.0, 0.1),
        /// Hours that the label's capacity is for.
        rated_h: Kind::new(Unit::H, 0.2, 120.0),
        /// Share of it that may be used.
        usable: Kind::new(Unit::Ratio, 0.05, 1.0).give_or_take(0.05, 0.0),
        /// Share of it that is left in the cold.
        cold: Kind::new(Unit::Ratio, 0.1, 1.0).give_or_take(0.05, 0.0),
        /// While the heater runs, on average.
        average_a: Kind::new(Unit::A, 0.01, 100.0).give_or_take(0.1, 0.03),
        /// What flows besides, all the time.
        standby_a: AMPERES.give_or_take(0.02, 0.1),
        /// Starts from full to empty.
        starts: Kind::new(Unit::Count, 0.0, 100.0),
        /// While it starts; not needed without starts, nor are the next three.
        start_a: AMPERES.or_none(),
        /// How long a start takes.
        start_min: MINUTES.or_none(),
        /// While it runs after.
        after_a: AMPERES.or_none(),
        /// How long an after-run takes.
        after_min: MINUTES.or_none(),
        /// Peukert's exponent; empty: not told.
        peukert: Kind::new(Unit::Ratio, 1.0, 1.7).give_or_take(0.05, 0.0).or_none(),
        /// Hours that are wanted.
        wanted_h: Kind::new(Unit::H, 0.0, 1000.0).or_none(),
    }
}

row! {
    /// How long it lasts.
    BatteryGiven {
        /// What may be used in the cold.
        usable_ah: Kind::result(Unit::Ah),
        /// What the starts take.
        starts_ah: Kind::result(Unit::Ah),
        /// What the after-runs take.
        after_ah: Kind::result(Unit::Ah),
        /// Current that the capacity is for: above it, there is less.
        rated_a: Kind::result(Unit::A),
        /// Hours of running; below zero: starts and after-runs alone take more than there is. None
        /// where the current is above the capacity's own and Peukert's exponent is not told.
        lasts_h: Kind::result(Unit::H),
        /// At most so many, where that is all that is known.
        lasts_at_most_h: Kind::result(Unit::H),
        /// Beyond what is wanted.
        spare_h: Kind::result(Unit::H),
        /// At most so much beyond what is wanted, where that is all that is known.
        spare_at_most_h: Kind::result(Unit::H),
    }
}

/// Time to spare, or at most so much.
pub const CHECKS: &[Checked] = &[
    Checked::new(6, BoundId::SpareTime),
    Checked::partial(7, BoundId::SpareTime),
];

/// Hours from full to empty at `amperes` of a battery that gives `capacity_ah` in `rated_h`:
/// H·(C/(I·H))^k (Peukert's law of 1897, from memory), and C/I at currents below its own, C/H,
/// where the formula would find more than it holds.
#[must_use]
pub fn full_h(amperes: f64, capacity_ah: f64, rated_h: f64, exponent: f64) -> f64 {
    let at_rated = capacity_ah / amperes;
    let gentler = libm::log(at_rated / rated_h);
    if gentler < 0.0 {
        rated_h * libm::exp(exponent * gentler)
    } else {
        at_rated
    }
}

/// Place of the current during start.
const START: usize = 7;
/// Place of the current in the after-run.
const AFTER: usize = 9;

/// The sheet.
pub const SHEET: Declared =
    Declared::new::<Battery, BatteryGiven>("battery", battery).checks(CHECKS);

/// Hours that the battery lasts: what may be used, less what starts and after-runs take, each as a
/// share of a whole discharge at its own current, times the hours of a whole discharge at that of
/// running and standby together.
///
/// # Errors
/// Starts without their currents and times ([`crate::plan::kind::Problem::Missing`]).
pub fn battery(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let of = Battery::read(x);
    let (starts_ah, starts_share) = of.taken(of.start_a, of.start_min, START)?;
    let (after_ah, after_share) = of.taken(of.after_a, of.after_min, AFTER)?;
    let draw_a = of.average_a + of.standby_a;
    let rated_a = of.capacity_ah / of.rated_h;
    let hours = (of.usable * of.cold - starts_share - after_share) * of.whole_h(draw_a);
    let (lasts_h, lasts_at_most_h) = if of.peukert.is_nan() && draw_a > rated_a {
        (f64::NAN, hours)
    } else {
        (hours, f64::NAN)
    };
    BatteryGiven {
        usable_ah: of.capacity_ah * of.usable * of.cold,
        starts_ah,
        after_ah,
        rated_a,
        lasts_h,
        lasts_at_most_h,
        spare_h: lasts_h - of.wanted_h,
        spare_at_most_h: lasts_at_most_h - of.wanted_h,
    }
    .write(to);
    Ok(())
}

impl Battery {
    /// Hours of a whole discharge.
    fn whole_h(&self, amperes: f64) -> f64 {
        let told = !self.peukert.is_nan();
        let exponent = if told { self.peukert } else { 1.0 };
        full_h(amperes, self.capacity_ah, self.rated_h, exponent)
    }

    /// Charge, and share of a whole discharge, that all starts or all after-runs take; `place` is
    /// that of their current, and their time is next to it.
    fn taken(&self, amperes: f64, minutes: f64, place: usize) -> Result<(f64, f64), Refusal> {
        if self.starts < 0.5 {
            return Ok((0.0, 0.0));
        }
        needed(amperes, place)?;
        needed(minutes, place + 1)?;
        let hours = self.starts * minutes / 60.0;
        Ok((amperes * hours, hours / self.whole_h(amperes)))
    }
}
