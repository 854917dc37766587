//! Turning the phone: placements kept, and whether it was turned since. On a part the reading is
//! then of both placements; on a table two or four of them give this phone's zero.

use crate::frames::{angle_deg, on_earth, to_device};
use crate::live::Live;
use crate::reading::Rest;
use crate::reason::NoReading;
use crate::vector::Vec3;
use heapless::Vec;

/// Longest time between two placements, ms: the zero creeps with temperature. Assumed.
pub(crate) const TURN_FOR_MS: f64 = 180_000.0;
/// Least turn about the surface's normal that is end for end, degrees. What is missing to 180°
/// counts with the alignment.
pub(crate) const HALF_TURN_DEG: f32 = 150.0;
/// Least turn between two of four placements, degrees.
const QUARTER_TURN_DEG: f32 = 60.0;

/// One placement that was kept.
#[derive(Debug, Clone, Copy)]
pub struct Placed {
    /// Its second of rest.
    pub rest: Rest,
    /// Where body x pointed on the earth; `None` where the browser doesn't say.
    pub ahead: Option<Vec3>,
    /// When, in the time of the events, ms.
    pub at_ms: f64,
}

/// Placements kept so far.
#[derive(Debug, Clone)]
pub struct Turn {
    pub(crate) placed: Vec<Placed, 4>,
    /// Whether the phone was moved since the last one was kept.
    pub(crate) moved: bool,
    /// Whether somebody said that the phone is turned.
    told: bool,
}

impl Turn {
    pub(crate) const fn new() -> Self {
        Self {
            placed: Vec::new(),
            moved: false,
            told: false,
        }
    }

    /// Notes why there was no reading: movement shows so.
    pub(crate) fn note(&mut self, reason: Option<NoReading>) {
        use NoReading::{Drifting, Gap, Moving, NotGravity, Tremor};
        self.moved |= matches!(reason, Some(Moving | Tremor | NotGravity | Drifting | Gap));
    }

    /// Whether the phone is turned by `least_deg` or more against a placement. Where the browser
    /// says no heading, somebody must.
    fn is_turned(&self, from: &Placed, ahead: Option<Vec3>, least_deg: f32) -> bool {
        match from.ahead.zip(ahead) {
            Some((then, now)) => self.moved && angle_deg(then, now) >= least_deg,
            None => self.moved && self.told,
        }
    }
}

impl Live {
    /// Where body x points on the earth.
    fn ahead(&self) -> Option<Vec3> {
        let rotation = self.placement?.hold.rotation();
        let (beta, gamma) = self.fused.held_deg()?;
        let x = to_device(&rotation, [1.0, 0.0, 0.0]);
        Some(on_earth([self.alpha_deg?, beta, gamma], x))
    }

    /// Whether the browser says by itself when the phone has been turned.
    #[must_use]
    pub fn knows_heading(&self) -> bool {
        self.ahead().is_some()
    }

    /// Keeps this second as a placement; on a part as the first one of a turn end for end.
    /// Returns how many are kept.
    ///
    /// # Errors
    /// Why there is no reading; [`NoReading::NotTurned`] where the phone lies as it did.
    pub fn keep_placement(&mut self) -> Result<usize, NoReading> {
        self.reading()?;
        let rest = self.rest.ok_or(NoReading::Starting)?;
        let placed = Placed {
            rest,
            ahead: self.ahead(),
            at_ms: self.intake.last_ms().unwrap_or(f64::NAN),
        };
        let on_part = self.placement.is_some_and(|p| p.part.is_some());
        if on_part && !self.turn.placed.is_empty() {
            // There it is the first one that the others are compared with.
            return Ok(self.turn.placed.len());
        }
        if let Some(last) = self.turn.placed.last() {
            let turned = self.turn.is_turned(last, placed.ahead, QUARTER_TURN_DEG);
            if !turned || self.turn.placed.is_full() {
                return Err(NoReading::NotTurned);
            }
            if !is_soon_after(last, placed.at_ms) {
                return Err(NoReading::TurnTooOld);
            }
        }
        // Room is left: a full set was refused above.
        let _ = self.turn.placed.push(placed);
        self.turn.moved = false;
        self.turn.told = false;
        Ok(self.turn.placed.len())
    }

    /// Forgets the placements kept.
    pub fn forget_placements(&mut self) {
        self.turn = Turn::new();
    }

    /// How many placements are kept.
    #[must_use]
    pub fn placements(&self) -> usize {
        self.turn.placed.len()
    }

    /// Says that the phone has been turned, where the browser can't.
    pub fn tell_turned(&mut self) {
        self.turn.told = true;
    }

    /// The first placement of a turn on a part, once the phone is turned end for end.
    pub(crate) fn first_placed(&self) -> Result<Option<&Placed>, NoReading> {
        let on_part = self.placement.is_some_and(|p| p.part.is_some());
        let Some(first) = self.turn.placed.first().filter(|_| on_part) else {
            return Ok(None);
        };
        let now_ms = self.intake.last_ms().unwrap_or(f64::NAN);
        if !is_soon_after(first, now_ms) {
            Err(NoReading::TurnTooOld)
        } else if self.turn.is_turned(first, self.ahead(), HALF_TURN_DEG) {
            Ok(Some(first))
        } else {
            Err(NoReading::NotTurned)
        }
    }
}

fn is_soon_after(placed: &Placed, now_ms: f64) -> bool {
    (0.0..=TURN_FOR_MS).contains(&(now_ms - placed.at_ms))
}
