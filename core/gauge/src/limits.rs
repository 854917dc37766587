//! The limits that the gauge was built with: core's examples of trade usage, or a file that the
//! page exported. Documents stay in the file; basis and numbers come with each capture.

use plumbmark::holds::{Hold, Placement, Surface};
use plumbmark::limits::Limit;
use plumbmark::parts::{Check, Part};

include!(concat!(env!("OUT_DIR"), "/limits.rs"));

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

/// A limit without its document.
const fn limit(
    check: Check,
    (low_deg, high_deg): (Option<f32>, Option<f32>),
    (at_limit_allowed, allowance_deg): (bool, Option<f32>),
    basis: plumbmark::limits::Basis,
) -> Limit {
    let mut limit = Limit::not_entered(check);
    limit.low_deg = low_deg;
    limit.high_deg = high_deg;
    limit.at_limit_allowed = at_limit_allowed;
    limit.allowance_deg = allowance_deg;
    limit.basis = basis;
    limit
}
