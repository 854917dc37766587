//! Plumbmark as a microcontroller gauge uses it: whole counts in, no browser, no clock.

use crate::signal::{COUNT_M_S2, RATE_HZ};
use plumbmark::budget::{Contact, UpEstimate};
use plumbmark::check::{Basis, Decided, End, Outcome, answer, decided};
use plumbmark::fused::Fused;
use plumbmark::holds::{Hold, Placement, Surface};
use plumbmark::limits::{Limit, LimitSet};
use plumbmark::parts::{Check, Part};
use plumbmark::prior::NOISE_STEPS;
use plumbmark::reading::Rest;
use plumbmark::reason::NoReading;
use plumbmark::window::Window;

/// The checks at capture; the first two are those of one placement, shown live.
pub const CHECKS: [Check; 3] = [Check::HeaterPort, Check::HeaterOutlet, Check::PumpOutlet];

const SAMPLE_US: u32 = 1_000_000 / RATE_HZ;

/// What a gauge keeps.
pub struct Gauge {
    window: Window,
    /// A gauge has no browser's orientation: always empty.
    fused: Fused,
    placement: Placement,
    contact: Contact,
    limits: [Limit; 3],
}

impl Default for Gauge {
    fn default() -> Self {
        Self::new()
    }
}

impl Gauge {
    /// An empty window, a gauge lying with its back on a machined face, limits of trade usage.
    ///
    /// # Panics
    /// Never: the placement is one that core knows.
    #[must_use]
    pub fn new() -> Self {
        let placement = Placement::new(Part::Heater, Hold::Back, Surface::MetalFace)
            .expect("a heater is read from its face");
        let (hold_deg, align_deg) = placement.contact_deg(Surface::MetalFace.assumed_deg());
        let set = LimitSet::trade_usage();
        Self {
            window: Window::new(COUNT_M_S2),
            fused: Fused::default(),
            placement,
            contact: Contact {
                hold_deg,
                align_deg,
                normal: placement.hold.normal(),
            },
            limits: CHECKS.map(|c| set.limit(c)),
        }
    }

    /// One sample into the sums; whether that closed a batch.
    ///
    /// # Errors
    /// As [`Window::push`].
    pub fn push(&mut self, counts: [i16; 3]) -> Result<bool, NoReading> {
        self.window.push(SAMPLE_US, counts, None)
    }

    /// Whether the last second was one of rest.
    ///
    /// # Errors
    /// As [`Window::still`].
    pub fn rests(&self) -> Result<(), NoReading> {
        self.window.still().map(|_| ())
    }

    /// Stillness, the estimate from rounded values, the up vector with its uncertainty.
    ///
    /// # Errors
    /// As [`Window::still`] and [`Rest::by_acceleration`].
    pub fn up(&self) -> Result<UpEstimate, NoReading> {
        let still = self.window.still()?;
        Rest::new(Some(still), COUNT_M_S2, false, &self.fused).by_acceleration(NOISE_STEPS)
    }

    fn ask<R>(
        &self,
        at: usize,
        up: &UpEstimate,
        how: impl Fn(Check, &Basis<'_>, &Limit, Option<End>) -> R,
    ) -> R {
        let from = Basis {
            up,
            other_up: None,
            rotation: &self.placement.hold.rotation(),
            contact: &self.contact,
        };
        how(CHECKS[at], &from, &self.limits[at], Some(End::Photo))
    }

    /// The check at this place in [`CHECKS`] as lights show it: value, budget, U, decision.
    #[must_use]
    pub fn light(&self, at: usize, up: &UpEstimate) -> Decided {
        self.ask(at, up, decided)
    }

    /// The same as it is kept: with margin, probability and advice.
    #[must_use]
    pub fn verdict(&self, at: usize, up: &UpEstimate) -> Outcome {
        self.ask(at, up, answer)
    }

    /// The lights of one placement's two checks.
    ///
    /// # Errors
    /// As [`Self::up`].
    pub fn lights(&self) -> Result<[Decided; 2], NoReading> {
        let up = self.up()?;
        Ok([0, 1].map(|at| self.light(at, &up)))
    }

    /// The first `N` verdicts of what the window says.
    ///
    /// # Errors
    /// As [`Self::up`].
    pub fn verdicts<const N: usize>(&self) -> Result<[Outcome; N], NoReading> {
        let up = self.up()?;
        Ok(core::array::from_fn(|at| self.verdict(at, &up)))
    }
}
