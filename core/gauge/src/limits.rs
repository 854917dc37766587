//! The limits that the gauge was built with: core's examples of trade usage, or a file that the
//! page exported. Documents stay in the file; basis and numbers come with each capture.

use plumbmark::holds::{Hold, Placement, Surface};
use plumbmark::limits::{Basis, Limit};
use plumbmark::parts::{Check, Part};

include!(concat!(env!("OUT_DIR"), "/limits.rs"));

/// A limit as the build writes it, without its document: that would be most of it.
struct Entered {
    check: Check,
    low_deg: Option<f32>,
    high_deg: Option<f32>,
    at_limit_allowed: bool,
    allowance_deg: Option<f32>,
    basis: Basis,
}

/// The limit of a check; not entered where the build had none.
#[must_use]
pub fn limit(check: Check) -> Limit {
    let mut limit = Limit::not_entered(check);
    if let Some(entered) = ENTERED.iter().find(|entered| entered.check == check) {
        limit.low_deg = entered.low_deg;
        limit.high_deg = entered.high_deg;
        limit.at_limit_allowed = entered.at_limit_allowed;
        limit.allowance_deg = entered.allowance_deg;
        limit.basis = entered.basis;
    }
    limit
}

/// The limits of a placement's checks, of which there are two at most.
#[must_use]
pub fn limits(placement: &Placement) -> [Limit; 2] {
    let mut checks = placement.checks.iter().copied().cycle();
    core::array::from_fn(|_| limit(checks.next().unwrap_or(Check::HeaterPort)))
}

/// Hold and alignment of a surface, degrees.
#[must_use]
pub fn surface_deg(surface: Surface) -> (f32, f32) {
    let mut all = SURFACES_DEG.iter();
    let found = all.find(|(of, _)| *of == surface);
    found.map_or(surface.assumed_deg(), |(_, deg)| *deg)
}

/// How the gauge lies for a check: flat, its head end towards the part's. Where a part can be read
/// from several surfaces, the one that leaves most uncertain.
#[must_use]
pub fn placement(check: Check) -> Placement {
    let (part, surface) = match check {
        Check::HeaterPort | Check::HeaterOutlet => (Part::Heater, Surface::Sheet),
        Check::PumpOutlet => (Part::Pump, Surface::RoundBody),
        Check::PumpRoll => (Part::Pump, Surface::Bracket),
        Check::FilterUpright => (Part::Filter, Surface::RoundBody),
        Check::PipeFall => (Part::Pipe, Surface::RoundBody),
    };
    // Core knows all of these; without a part nothing can be read.
    Placement::new(part, Hold::Back, surface).unwrap_or(Placement {
        part: None,
        hold: Hold::Back,
        surface,
        checks: &[],
    })
}
