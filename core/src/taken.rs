//! What a capture of a sensor read directly rests on, and its answers by any limits.

use crate::answers::answers;
use crate::budget::UpEstimate;
use crate::check::{Basis, Decided, End, Outcome, decided};
use crate::gathered::gathered;
use crate::holds::Placement;
use crate::limit_set::line_of;
use crate::limits::Limit;
use crate::parts::Check;
use crate::reading::ZeroBy;
use heapless::Vec;

/// What a capture rests on: everything that its checks are answered from, but for the limits.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
#[non_exhaustive]
pub struct Taken {
    /// How the sensor lay on which part.
    pub placement: Placement,
    /// Up, device frame, with what is known of it. Its sensor's zero and scale are 0 and 1: they
    /// are already taken into `up`.
    pub up: UpEstimate,
    /// What is known of the zero.
    pub zero_by: ZeroBy,
    /// Samples behind it.
    pub samples: u32,
    /// Samples a second.
    pub rate_hz: f32,
    /// Step of the sensor's values, m/s².
    pub step_m_s2: f32,
    /// Which end looked lower, in the order of the placement's checks.
    pub ends: [Option<End>; 2],
}

impl Taken {
    /// What was said of a check's ends.
    #[must_use]
    pub fn end_told(&self, check: Check) -> Option<End> {
        let mut told = self.placement.checks.iter().zip(self.ends);
        told.find(|(c, _)| **c == check).and_then(|(_, end)| end)
    }

    /// The placement's checks decided, as lights show them. A check without a line in `lines` has
    /// no limit entered; `surface_deg` are the surface's hold and alignment, degrees, as
    /// [`crate::limits::LimitSet::surface_deg`] gives them.
    #[must_use]
    pub fn decided(&self, lines: &[Limit], surface_deg: (f32, f32)) -> Vec<Decided, 2> {
        self.from(surface_deg, |from| {
            let checks = self.placement.checks.iter();
            gathered(checks.map(|&c| decided(c, from, line_of(lines, c), self.end_told(c))))
        })
    }

    /// One of the placement's checks decided, the one that `limit` is for.
    #[must_use]
    pub fn decided_by(&self, limit: &Limit, surface_deg: (f32, f32)) -> Decided {
        self.from(surface_deg, |from| {
            decided(limit.check, from, limit, self.end_told(limit.check))
        })
    }

    /// All of them as they are kept: with margin, probability and advice.
    #[must_use]
    pub fn outcomes(&self, lines: &[Limit], surface_deg: (f32, f32)) -> Vec<Outcome, 2> {
        self.from(surface_deg, |from| {
            answers(self.placement.checks, from, lines, &|c| self.end_told(c))
        })
    }

    fn from<R>(&self, surface_deg: (f32, f32), ask: impl Fn(&Basis<'_>) -> R) -> R {
        ask(&Basis {
            up: &self.up,
            other_up: None,
            rotation: &self.placement.hold.rotation(),
            contact: &self.placement.contact(surface_deg),
        })
    }
}
