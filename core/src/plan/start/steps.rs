//! The steps of the first start: what each is worth. A step that was done counts only where what it
//! rests on was done too, and where its time, its readings or its dates bear it out.

use super::step_rows::{Alarm, AlarmGiven, FirstStart, FirstStartGiven, Told, Worth};
use super::timer::Clocked;
use crate::decision::Verdict;
use crate::plan::form::Declared;
use crate::plan::kind::Refusal;
use crate::plan::row::Row;

/// Places of the steps that others rest on, or that a stop undoes.
mod place {
    pub const OUTDOORS: u32 = 1;
    pub const METER: u32 = 2;
    pub const CLOSED: u32 = 3;
    pub const LEAKS_COLD: u32 = 4;
    pub const PRIME: u32 = 5;
    pub const IGNITION: u32 = 6;
    pub const VOLTAGE: u32 = 7;
    pub const OUTLET: u32 = 8;
    pub const LOW: u32 = 9;
    pub const CO_TEST: u32 = 10;
    pub const LEAKS_HOT: u32 = 11;
    pub const AFTER_RUN: u32 = 12;
    pub const TORQUES: u32 = 13;
    pub const ALARMS: u32 = 16;
}

const STEPS: usize = 17;

/// The sheet.
pub const SHEET: Declared = Declared::new::<FirstStart, FirstStartGiven>("first_start", steps)
    .rows::<Alarm>()
    .row_results::<AlarmGiven>();

const fn bits(places: &[u32]) -> u32 {
    let mut set = 0;
    let mut rest = places;
    while let [first, others @ ..] = rest {
        set |= 1 << *first;
        rest = others;
    }
    set
}

/// What each step rests on. What the extinguisher is for is seen by nobody but the one who starts.
const RESTS_ON: [u32; STEPS] = {
    use place::*;
    let flame = bits(&[IGNITION]);
    [
        0,
        0,
        bits(&[OUTDOORS]),
        0,
        0,
        0,
        bits(&[LEAKS_COLD, PRIME]),
        flame,
        flame,
        flame,
        bits(&[OUTDOORS, METER, CLOSED, IGNITION, LOW]),
        bits(&[LEAKS_COLD, IGNITION]),
        flame,
        bits(&[AFTER_RUN]),
        0,
        0,
        0,
    ]
};

/// What has to be done anew after a stop: everything that opening the system or the doors undoes.
const ANEW: u32 = bits(&[
    place::OUTDOORS,
    place::METER,
    place::CLOSED,
    place::LEAKS_COLD,
    place::PRIME,
    place::IGNITION,
    place::VOLTAGE,
    place::OUTLET,
    place::LOW,
    place::CO_TEST,
    place::LEAKS_HOT,
    place::AFTER_RUN,
    place::TORQUES,
]);

/// A date farther off is a slip: no alarm lasts longer than 10 years (value from memory); 12 years
/// (assumed).
const FARTHEST_DAYS: f64 = 12.0 * 366.0;

/// Whether a date that is so many days off lets an alarm count.
fn in_date(days_left: f64) -> u8 {
    if days_left <= FARTHEST_DAYS {
        1 + u8::from(days_left >= 1.0)
    } else {
        0
    }
}

/// Steps whose time, readings or dates do not bear them out.
fn unborne(told: &FirstStart, alarms: &[f64]) -> u32 {
    // Never started, or run to its end on a clock that nobody set.
    let timed = |timer: f64| {
        timer == f64::from(Clocked::None as u8) || timer == f64::from(Clocked::Ended as u8)
    };
    let within = |verdict: f64| verdict == f64::from(Verdict::Within as u8);
    let stood_still = within(told.after_run_time) && timed(told.after_run_timer);
    // The best that a test can find is no rise, with this meter, this time.
    let tested = told.co_rise == f64::from(Verdict::NotProven as u8)
        && within(told.co_time)
        && timed(told.co_timer);
    let all_in_date = !alarms.is_empty() && alarms.iter().all(|days| in_date(*days) == 2);
    let checks = [
        (timed(told.prime_timer), place::PRIME),
        (within(told.start_voltage), place::VOLTAGE),
        (within(told.outlet_air), place::OUTLET),
        (tested, place::CO_TEST),
        (stood_still, place::AFTER_RUN),
        (all_in_date, place::ALARMS),
    ];
    let failed = checks.iter().filter(|(fine, _)| !fine);
    failed.fold(0, |set, (_, place)| set | 1 << place)
}

/// The steps by what they are worth, a bit for each.
#[derive(Default)]
struct Tally {
    done: u32,
    skipped: u32,
    not_proven: u32,
    to_do: u32,
}

impl Tally {
    /// What a step is worth of which `told` was told, and that rests on others. Each rests on
    /// earlier ones alone, so one pass in their order is enough.
    fn count(&mut self, bit: u32, told: f64, rests_on: u32, unborne: u32) -> Worth {
        let is = |what: Told| told == f64::from(what as u8);
        let anew = is(Told::BeforeStop) && ANEW & bit != 0;
        let rests = rests_on & self.done == rests_on && unborne & bit == 0;
        if anew || is(Told::Open) {
            self.to_do |= bit;
        }
        if is(Told::Open) {
            Worth::Open
        } else if is(Told::Skipped) {
            self.skipped |= bit;
            Worth::Skipped
        } else if anew || !rests {
            self.not_proven |= bit;
            Worth::NotProven
        } else {
            self.done |= bit;
            Worth::Done
        }
    }

    fn write(&self, to: &mut [f64]) {
        let count = |set: u32| f64::from(set.count_ones());
        if let [to_do, skipped, not_proven, next, ..] = to {
            *to_do = count(self.to_do);
            *skipped = count(self.skipped);
            *not_proven = count(self.not_proven);
            if self.to_do != 0 {
                *next = f64::from(self.to_do.trailing_zeros());
            }
        }
    }
}

/// What each step is worth.
///
/// # Errors
/// None of its own.
pub fn steps(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let (fixed, alarms) = x
        .split_at_checked(FirstStart::KINDS.len())
        .unwrap_or_default();
    let (given, each) = to
        .split_at_mut_checked(FirstStartGiven::KINDS.len())
        .unwrap_or_default();
    let unborne = unborne(&FirstStart::read(fixed), alarms);
    let (worths, counts) = given.split_at_mut_checked(STEPS).unwrap_or_default();
    let mut tally = Tally::default();
    for (i, ((worth, told), rests_on)) in worths.iter_mut().zip(fixed).zip(RESTS_ON).enumerate() {
        *worth = f64::from(tally.count(1 << i, *told, rests_on, unborne) as u8);
    }
    tally.write(counts);
    for (to, days) in each.iter_mut().zip(alarms) {
        *to = f64::from(in_date(*days));
    }
    Ok(())
}
