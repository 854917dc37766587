//! A boat's outlet, and the top of the rising loop before it, above the water as she heels.

use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Problem, Refusal, Unit};
use crate::plan::row::{Row, row};
use crate::trig::sin_cos_deg;

/// Heights told from the water's edge on a hull that lies still: 10 mm and 1 % (assumed).
const HEIGHT: Kind = Kind::tape(-2000.0, 5000.0).give_or_take(10.0, 0.01);
/// Across a hull, by tape and eye: 20 mm and 1 % (assumed).
const ACROSS: Kind = Kind::tape(0.0, 6000.0).give_or_take(20.0, 0.01);
const RESULT: Kind = Kind::result(Unit::Mm);

row! {
    /// Outlet and loop as she lies still, and how she heels.
    BoatOutlet {
        /// Lower edge of the outlet above the water at rest.
        outlet_height_mm: HEIGHT,
        /// From the centreline to the outlet, on the side that it is on.
        outlet_across_mm: ACROSS,
        /// Top of the loop, its inside's lower edge, above the water at rest.
        loop_height_mm: HEIGHT.or_none(),
        /// From the centreline to the loop.
        loop_across_mm: ACROSS.or_none(),
        /// How far she heels, to the side that outlet and loop are on; 2° (assumed).
        heel_deg: Kind::new(Unit::Deg, 0.0, 90.0).give_or_take(2.0, 0.0),
        /// By how much load, trim and the stern wave sink her there beyond the water at rest; half
        /// of it and 20 mm (assumed).
        sinkage_mm: Kind::new(Unit::Mm, 0.0, 1000.0).give_or_take(20.0, 0.5),
    }
}

row! {
    /// Above the water as she heels.
    BoatOutletGiven {
        /// The outlet.
        outlet_mm: RESULT,
        /// The top of the loop.
        loop_mm: RESULT,
    }
}

/// Both have their limits.
pub const CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::OutletAboveWater),
    Checked::new(1, BoundId::LoopAboveWater),
];

/// The sheet.
pub const SHEET: Declared =
    Declared::new::<BoatOutlet, BoatOutletGiven>("boat_outlet", boat_outlet).checks(CHECKS);

/// Height above the water, mm, of a point `height_mm` above it at rest and `across_mm` off the
/// centreline, as the boat heels by `heel_deg` towards its side: h·cos θ − y·sin θ, a rotation about
/// the line in which the centreline's plane meets the water at rest.
///
/// It takes the water as flat and the boat as turning about that line. Waves and spray, and a hull
/// that rises or sinks as it heels, are not in it.
#[must_use]
pub fn height_heeled_mm(height_mm: f64, across_mm: f64, heel_deg: f64) -> f64 {
    let (sin, cos) = sin_cos_deg(heel_deg as f32);
    height_mm * f64::from(cos) - across_mm * f64::from(sin)
}

/// Heels her.
///
/// # Errors
/// A loop of which only height or place is told ([`Problem::Missing`]).
pub fn boat_outlet(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let told = BoatOutlet::read(x);
    match (told.loop_height_mm.is_nan(), told.loop_across_mm.is_nan()) {
        (true, false) => return Err(Refusal::at(2, Problem::Missing)),
        (false, true) => return Err(Refusal::at(3, Problem::Missing)),
        _ => {}
    }
    let above = |height, across| height_heeled_mm(height, across, told.heel_deg) - told.sinkage_mm;
    BoatOutletGiven {
        outlet_mm: above(told.outlet_height_mm, told.outlet_across_mm),
        loop_mm: above(told.loop_height_mm, told.loop_across_mm),
    }
    .write(to);
    Ok(())
}
