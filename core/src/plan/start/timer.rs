//! A timer that outlives a locked screen and a reload: it counts by the clock on the wall, and says
//! where that clock cannot be believed.
//!
//! Within one life of the page a steady clock, which nobody can set, runs beside it. It may stand
//! still while the phone sleeps, so with the page out of sight it can only show that the wall clock
//! went back, not that it was put on: such time rests on the wall clock alone, and that is said.

use crate::plan::form::Declared;
use crate::plan::kind::{Kind, Refusal, Unit};
use crate::plan::row::{Row, row};

/// How a timer stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum Clocked {
    /// It was not started.
    None,
    /// It runs.
    Running,
    /// It ran to its end.
    Ended,
    /// Its clock was set meanwhile: what it says is not proven.
    ClockSet,
}

impl Clocked {
    /// All of them, in the order of their codes.
    pub const ALL: [Self; 4] = [Self::None, Self::Running, Self::Ended, Self::ClockSet];
}

/// What is known of the wall clock: 0 nothing against it, 1 set back, 2 put on.
const CLOCK: Kind = Kind::choice(3);
/// Seconds from one moment to another, by a clock that may have been set.
const BY_CLOCK: Kind = Kind::new(Unit::S, -1e10, 1e10);

/// Two clocks of a phone may differ by this much: it corrects its wall clock in small steps
/// (assumed) ...
const STEP_S: f64 = 2.0;
/// ... and by this share, at which a clock is steered (500 ppm, RFC 5905, value from memory; twice).
const STEERED: f64 = 0.001;

row! {
    /// A timer that was started, looked at now.
    Timer {
        /// How long it is to run; empty: until something is seen.
        due_s: Kind::new(Unit::S, 0.0, 1e6).or_none(),
        /// Since it was started, by the wall clock.
        wall_s: BY_CLOCK,
        /// Since this page began to look, by the wall clock.
        page_wall_s: BY_CLOCK,
        /// The same by the steady clock.
        page_steady_s: Kind::new(Unit::S, 0.0, 1e10),
        /// From the last look that was kept to the moment this page began to look, by the wall
        /// clock.
        unseen_s: BY_CLOCK,
        /// Whether the page was out of sight in between: 0 never, 1 at times.
        hidden: Kind::choice(2),
        /// What an earlier look found of the clock.
        clock: CLOCK,
        /// Whether what it waits for was seen: 0 no, 1 yes.
        seen: Kind::choice(2),
    }
}

row! {
    /// How it stands.
    TimerGiven {
        /// Left; below zero: over.
        left_s: Kind::result(Unit::S),
        /// Since it was started.
        ran_s: Kind::result(Unit::S),
        /// What is known of the wall clock.
        clock: CLOCK,
        /// How it stands, by the code of [`Clocked`].
        state: Kind::choice(Clocked::ALL.len()),
        /// Time that rests on the wall clock alone.
        alone_s: Kind::result(Unit::S),
    }
}

/// The sheet.
pub const SHEET: Declared = Declared::new::<Timer, TimerGiven>("timer", timer);

/// How a timer stands.
///
/// # Errors
/// None of its own.
pub fn timer(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let now = Timer::read(x);
    let ahead_s = now.page_wall_s - now.page_steady_s;
    let tolerated_s = STEP_S + STEERED * now.page_steady_s;
    let back = ahead_s < -tolerated_s || now.unseen_s < -STEP_S || now.wall_s < -STEP_S;
    let on = ahead_s > tolerated_s && now.hidden == 0.0;
    let clock = if now.clock > 0.0 {
        now.clock
    } else {
        f64::from(u8::from(back) + 2 * u8::from(on && !back))
    };
    let left_s = now.due_s - now.wall_s;
    // Without a time of its own, what it waits for ends it.
    let over = if left_s.is_nan() {
        now.seen > 0.0
    } else {
        left_s <= 0.0
    };
    let state = if clock > 0.0 {
        Clocked::ClockSet
    } else if over {
        Clocked::Ended
    } else {
        Clocked::Running
    };
    let slept_s = if ahead_s > tolerated_s { ahead_s } else { 0.0 };
    TimerGiven {
        left_s,
        ran_s: now.wall_s,
        clock,
        state: f64::from(state as u8),
        alone_s: now.unseen_s.max(0.0) + slept_s,
    }
    .write(to);
    Ok(())
}
