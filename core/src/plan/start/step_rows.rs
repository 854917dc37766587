//! What is told of the steps of the first start, in their order, and what comes of it.

use super::timer::Clocked;
use crate::decision::Verdict;
use crate::plan::kind::{Kind, Unit};
use crate::plan::row::row;

/// What was done about a step.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum Told {
    /// Nothing yet.
    Open,
    /// Done.
    Done,
    /// Left out, with a reason.
    Skipped,
    /// Done before something went wrong and the work was stopped.
    BeforeStop,
}

impl Told {
    /// All of them, in the order of their codes.
    pub const ALL: [Self; 4] = [Self::Open, Self::Done, Self::Skipped, Self::BeforeStop];
}

/// What a step is worth.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum Worth {
    /// Nothing was done yet.
    Open,
    /// Done, and so is what it rests on.
    Done,
    /// Left out, with a reason.
    Skipped,
    /// Done, but what it rests on was not, or not since the work was stopped, or its time, its
    /// readings or its dates do not bear it out.
    NotProven,
}

impl Worth {
    /// All of them, in the order of their codes.
    pub const ALL: [Self; 4] = [Self::Open, Self::Done, Self::Skipped, Self::NotProven];
}

const TOLD: Kind = Kind::choice(Told::ALL.len());
const TIMER: Kind = Kind::choice(Clocked::ALL.len());
const VERDICT: Kind = Kind::choice(Verdict::ALL.len()).or_none();
const WORTH: Kind = Kind::choice(Worth::ALL.len());
const COUNT: Kind = Kind::result(Unit::Count);

row! {
    /// The steps in their order, then what bears them out.
    FirstStart {
        /// Extinguisher at hand, engine off and cold, vehicle chocked.
        extinguisher: TOLD,
        /// Vehicle outdoors, exhaust free.
        outdoors: TOLD,
        /// Carbon monoxide meter zeroed in clean outdoor air, on, readable from outside.
        meter: TOLD,
        /// Doors closed, nobody inside.
        closed: TOLD,
        /// Fuel, exhaust and air pipes tight, cold.
        leaks_cold: TOLD,
        /// Fuel line filled.
        prime: TOLD,
        /// Flame.
        ignition: TOLD,
        /// Voltages read.
        voltage: TOLD,
        /// Outlet temperature read.
        outlet: TOLD,
        /// Low power.
        low: TOLD,
        /// Readings of carbon monoxide, full then low.
        co_test: TOLD,
        /// Tight, hot.
        leaks_hot: TOLD,
        /// After-run before the power goes off.
        after_run: TOLD,
        /// Clamps and torques after the first heat cycle.
        torques: TOLD,
        /// Driver told.
        driver: TOLD,
        /// Notice at the filler.
        filler: TOLD,
        /// An alarm in each sleeping space.
        alarms: TOLD,
        /// The timer of filling the line.
        prime_timer: TIMER,
        /// That of the test for carbon monoxide.
        co_timer: TIMER,
        /// That of the after-run.
        after_run_timer: TIMER,
        /// Verdict on the voltage at the heater during glow; empty: there is none.
        start_voltage: VERDICT,
        /// Verdict on the air at the outlet; empty: there is none.
        outlet_air: VERDICT,
        /// Verdict on how long it ran after it was switched off; empty: there is none.
        after_run_time: VERDICT,
        /// Verdict on the rise of a whole test by a meter that shows none; empty: there is none.
        co_rise: VERDICT,
        /// Verdict on the time of the test; empty: there is none.
        co_time: VERDICT,
    }
}

row! {
    /// An alarm in a sleeping space.
    Alarm {
        /// Days until it expires; empty: no date told.
        days_left: Kind::new(Unit::Count, -1e9, 1e9).or_none(),
    }
}

row! {
    /// What the steps are worth, in the same order.
    FirstStartGiven {
        /// Extinguisher.
        extinguisher: WORTH,
        /// Outdoors.
        outdoors: WORTH,
        /// Meter.
        meter: WORTH,
        /// Closed.
        closed: WORTH,
        /// Leaks, cold.
        leaks_cold: WORTH,
        /// Line filled.
        prime: WORTH,
        /// Flame.
        ignition: WORTH,
        /// Voltages.
        voltage: WORTH,
        /// Outlet temperature.
        outlet: WORTH,
        /// Low power.
        low: WORTH,
        /// Carbon monoxide.
        co_test: WORTH,
        /// Leaks, hot.
        leaks_hot: WORTH,
        /// After-run.
        after_run: WORTH,
        /// Clamps and torques.
        torques: WORTH,
        /// Driver.
        driver: WORTH,
        /// Filler.
        filler: WORTH,
        /// Alarms.
        alarms: WORTH,
        /// Steps open, or to be done anew.
        to_do: COUNT,
        /// Steps skipped.
        skipped: COUNT,
        /// Steps not proven.
        not_proven: COUNT,
        /// The first step to do, by its place; none when there is none left.
        next: COUNT,
    }
}

row! {
    /// What an alarm is worth.
    AlarmGiven {
        /// 0 no date told, or none that can be; 1 expired; 2 in date tomorrow.
        in_date: Kind::choice(3),
    }
}
