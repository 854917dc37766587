//! The test for carbon monoxide while the heater runs: the largest rise above the reading outdoors,
//! whether the test was long enough, and which leak it could not have seen.
//!
//! The meter's errors are shared by all its readings. Its share of the reading acts on the
//! difference alone, since the same meter read both. Its absolute error would cancel too; but the
//! zero was taken in cold, dry air, and inside it is warm and damp, so it counts once in full: the
//! rise has the meter's own uncertainty, and no less. Reading off counts for each reading.
//!
//! Whatever the readings, this finds a rise or finds none with this meter, this time: never within.
//! What is read with an alarm, or with something nobody told of, can only be a rise.

use super::co_air::{leak_l_per_h, reached, test_min};
use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Refusal, Unit};
use crate::plan::row::{Row, row};

/// What the readings are taken with.
pub const DEVICES: [&str; 2] = ["meter", "alarm"];
/// Whether the heater ran at full and then at low power.
pub const POWERS: [&str; 2] = ["full_then_low", "not_both"];
/// Power during a reading.
pub const POWER: [&str; 2] = ["full", "low"];
/// Where a reading is taken.
pub const PLACES: [&str; 6] = ["bed", "seat", "outlet", "heater", "return_air", "elsewhere"];

const SPREAD: Kind = Kind::new(Unit::Ratio, -1.0, 1.0).give_or_take(1.0, 0.0);
/// A meter that has drifted shows less than nothing.
const READING: Kind = Kind::new(Unit::Ppm, -50.0, 10_000.0).or_none();
/// A last digit that wanders: a rise of no more than a step of the meter, or than this, is none that
/// it shows (assumed).
const WANDER_PPM: f64 = 1.0;
/// Nobody measures it: told as the least and the most that it may be, each to a fifth (assumed).
const AIR: Kind = Kind::new(Unit::PerH, 0.02, 60.0)
    .give_or_take(0.0, 0.2)
    .or_none();

row! {
    /// Meter, space and how it was run.
    CoCheck {
        /// What the readings are taken with, by its place in [`DEVICES`].
        device: Kind::choice(DEVICES.len()).or_none(),
        /// Absolute part of the meter's error, from its paper.
        meter_ppm: Kind::new(Unit::Ppm, 0.0, 100.0).or_none(),
        /// Part that grows with the reading, from its paper.
        meter_share: Kind::new(Unit::Ratio, 0.0, 0.5).or_none(),
        /// Smallest step that it shows.
        step_ppm: Kind::new(Unit::Ppm, 0.01, 50.0).or_none(),
        /// It shows 0 up to here; empty: it does not hide small readings.
        blank_ppm: Kind::new(Unit::Ppm, 0.0, 500.0).or_none(),
        /// Reading in clean air outdoors, after it was zeroed there.
        outdoor_ppm: READING,
        /// Space that the air of the heater goes through.
        volume_m3: Kind::new(Unit::M3, 0.2, 2000.0).give_or_take(0.0, 0.1).or_none(),
        /// Least air changes an hour that may be, doors closed.
        air_least_per_h: AIR,
        /// Most that may be.
        air_most_per_h: AIR,
        /// How it was run, by its place in [`POWERS`].
        powers: Kind::choice(POWERS.len()).or_none(),
        /// Where the meter's absolute error lies.
        meter_spread: SPREAD,
        /// Where its share lies.
        share_spread: SPREAD,
        /// Where the outdoor reading lies within its step.
        outdoor_step_spread: SPREAD,
    }
}

row! {
    /// One reading.
    CoReading {
        /// Where, by its place in [`PLACES`].
        place: Kind::choice(PLACES.len()).or_none(),
        /// Since ignition.
        minutes: Kind::new(Unit::Min, 0.0, 2880.0).give_or_take(1.0, 0.0).or_none(),
        /// Full or low, by its place in [`POWER`].
        power: Kind::choice(POWER.len()).or_none(),
        /// What it shows; empty: not read yet.
        ppm: READING,
        /// Where it lies within its step.
        step_spread: SPREAD,
    }
}

row! {
    /// What the readings tell.
    CoGiven {
        /// Largest rise above outdoors, where the test is whole and the meter shows none.
        rise_ppm: Kind::result(Unit::Ppm),
        /// Largest rise where a reading inside lies above that outdoors by more than its last digit,
        /// be it within the meter's error: then nothing is cleared.
        shown_rise_ppm: Kind::result(Unit::Ppm),
        /// Largest rise so far, where the test is not whole and the meter shows none.
        part_rise_ppm: Kind::result(Unit::Ppm),
        /// Largest rise by an alarm, or by what nobody told of.
        alarm_rise_ppm: Kind::result(Unit::Ppm),
        /// Time tested beyond what it takes at the least air change.
        spare_test_min: Kind::result(Unit::Min),
        /// What it takes at the least air change.
        needed_min: Kind::result(Unit::Min),
        /// Time tested at full power: to its last reading.
        full_min: Kind::result(Unit::Min),
        /// Time tested at low power: from there to its last reading.
        low_min: Kind::result(Unit::Min),
        /// A leak at full power below this cannot be told from the meter's error.
        unseen_full_l_per_h: Kind::result(Unit::LPerH),
        /// The same at low power.
        unseen_low_l_per_h: Kind::result(Unit::LPerH),
        /// How many of [`super::co_air::THRESHOLDS_PPM`] the highest reading may reach, the meter's
        /// error on top.
        urgency: Kind::choice(10),
    }
}

row! {
    /// What one reading tells.
    CoReadingGiven {
        /// Rise above outdoors.
        reading_rise_ppm: Kind::result(Unit::Ppm),
    }
}

/// A rise can be found, never proven not to be there.
pub const CHECKS: &[Checked] = &[
    Checked::only_beyond(0, BoundId::CoRise),
    Checked::partial(1, BoundId::CoRise),
    Checked::partial(2, BoundId::CoRise),
    Checked::partial(3, BoundId::CoRise),
    Checked::new(4, BoundId::SpareTest),
];

/// The sheet.
pub const SHEET: Declared = Declared::new::<CoCheck, CoGiven>("co_check", co_check)
    .rows::<CoReading>()
    .row_results::<CoReadingGiven>()
    .checks(CHECKS);

/// The least rise that a meter tells from its own error: the rise that equals its expanded
/// uncertainty, with rectangles of `meter_ppm` and `meter_share` and half of `step_ppm` at both
/// readings (JCGM 100 §4.3.7, F.2.2.1), k = 2. A meter that cuts its last digit off does so at both
/// readings, so the difference is no worse.
#[must_use]
pub fn least_told_ppm(meter_ppm: f64, meter_share: f64, step_ppm: f64) -> f64 {
    // c² = 4/3·(a² + 2·(d/2)² + s²·c²), solved for c.
    let still = meter_ppm * meter_ppm + 0.5 * step_ppm * step_ppm;
    libm::sqrt(still / (0.75 - meter_share * meter_share))
}

impl CoCheck {
    /// Rise of a reading, and what its step adds.
    fn rise_ppm(&self, reading: &CoReading) -> f64 {
        let shown = reading.ppm - self.outdoor_ppm;
        let read_off = 0.5 * self.step_ppm * (reading.step_spread - self.outdoor_step_spread);
        let meter = self.meter_spread * self.meter_ppm;
        shown * (1.0 + self.share_spread * self.meter_share) + meter + read_off
    }

    /// The least and the most air change, whichever was told as which.
    fn air_per_h(&self) -> (f64, f64) {
        let (least, most) = (self.air_least_per_h, self.air_most_per_h);
        if most < least {
            (most, least)
        } else {
            (least, most)
        }
    }

    /// The leak that the test cannot have seen in `minutes`, at the most air change that may be.
    fn unseen_l_per_h(&self, minutes: f64) -> f64 {
        let least = least_told_ppm(self.meter_ppm, self.meter_share, self.step_ppm);
        // `max` passes over what is not a number.
        let told = least + self.blank_ppm.max(0.0);
        leak_l_per_h(told, self.air_per_h().1, self.volume_m3, minutes / 60.0)
    }
}

/// What was found among the readings; not a number where none was.
struct Found {
    rise: f64,
    highest: f64,
    full_min: f64,
    low_min: f64,
}

impl Found {
    const NONE: Self = Self {
        rise: f64::NAN,
        highest: f64::NAN,
        full_min: f64::NAN,
        low_min: f64::NAN,
    };

    fn take(&mut self, reading: &CoReading, rise: f64) {
        self.rise = self.rise.max(rise);
        self.highest = self.highest.max(reading.ppm);
        if reading.power == 0.0 {
            self.full_min = self.full_min.max(reading.minutes);
        } else if reading.power == 1.0 {
            self.low_min = self.low_min.max(reading.minutes);
        }
    }
}

/// The largest rise, the time, and what could not be seen.
///
/// # Errors
/// None of its own.
pub fn co_check(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let (fixed, rows) = x.split_at_checked(CoCheck::KINDS.len()).unwrap_or_default();
    let own = CoCheck::read(fixed);
    let (given, each) = to
        .split_at_mut_checked(CoGiven::KINDS.len())
        .unwrap_or_default();
    let mut found = Found::NONE;
    let told = rows.as_chunks::<{ CoReading::KINDS.len() }>().0;
    for (row, to) in told.iter().zip(each) {
        let reading = CoReading::read(row);
        if !reading.ppm.is_nan() {
            *to = own.rise_ppm(&reading);
            found.take(&reading, *to);
        }
    }
    own.tell(&found).write(given);
    Ok(())
}

impl CoCheck {
    fn tell(&self, found: &Found) -> CoGiven {
        let by_meter = self.device == 0.0;
        let low_min = found.low_min - found.full_min;
        let needed_min = test_min(self.air_per_h().0);
        let spare_min = found.full_min.max(found.low_min) - needed_min;
        let whole = self.powers == 0.0 && low_min > 0.0 && spare_min >= 0.0;
        let only = |fits: bool, value: f64| if fits { value } else { f64::NAN };
        let seen = |minutes: f64| only(by_meter && minutes > 0.0, self.unseen_l_per_h(minutes));
        let more = found.highest - self.outdoor_ppm > self.step_ppm.max(WANDER_PPM);
        let on_top = self.meter_ppm.max(0.0) + self.meter_share.max(0.0) * found.highest;
        CoGiven {
            rise_ppm: only(by_meter && !more && whole, found.rise),
            shown_rise_ppm: only(by_meter && more, found.rise),
            part_rise_ppm: only(by_meter && !more && !whole, found.rise),
            alarm_rise_ppm: only(!by_meter, found.rise),
            spare_test_min: only(by_meter, spare_min),
            needed_min,
            full_min: found.full_min,
            low_min,
            unseen_full_l_per_h: seen(found.full_min),
            unseen_low_l_per_h: seen(low_min),
            urgency: only(
                !found.highest.is_nan(),
                reached(found.highest + on_top) as f64,
            ),
        }
    }
}
