//! Standpipes in a tank: how far off the floor, how much fuel they leave, and whether the engine's
//! own pick-up reaches lower than the heater's.

use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Problem, Refusal, Unit};
use crate::plan::row::{Row, row};

/// The tank's shape.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum Shape {
    /// Straight walls all round.
    Box,
    /// A cylinder that lies: its diameter is the depth.
    Lying,
    /// A cylinder that stands: its diameter is the width.
    Upright,
}

impl Shape {
    /// All of them, in the order of their codes.
    pub const ALL: [Self; 3] = [Self::Box, Self::Lying, Self::Upright];
}

const INSIDE: Kind = Kind::new(Unit::Mm, 50.0, 4000.0).give_or_take(5.0, 0.01);
/// A pipe laid beside a tape, or a dipped stick.
const DIPPED: Kind = Kind::tape(10.0, 2000.0);

row! {
    /// A tank from inside, level. Heights from the flange that the pipes hang from, which is the
    /// top of the tank.
    Tank {
        /// Box, lying or upright cylinder, by its code.
        shape: Kind::choice(Shape::ALL.len()),
        /// Depth from the flange to the floor, dipped with a stick.
        depth_mm: Kind::tape(50.0, 2000.0),
        /// Length inside: of a box and a lying cylinder.
        length_mm: INSIDE.or_none(),
        /// Width inside: of a box; diameter of an upright cylinder.
        width_mm: INSIDE.or_none(),
        /// The heater's standpipe below the flange.
        standpipe_mm: DIPPED,
        /// How much higher the upper end of its slanted cut is than its tip; empty: cut square.
        cut_mm: Kind::tape(0.0, 100.0).or_none(),
        /// Where on the slanted cut it begins to draw air: −1 at the tip, 1 at the upper end.
        cut_spread: Kind::new(Unit::Ratio, -1.0, 1.0).give_or_take(1.0, 0.0),
        /// A second pipe below the flange, as the engine's own pick-up.
        second_mm: DIPPED.or_none(),
        /// Fuel in the tank, above its floor; empty: full.
        level_mm: Kind::tape(0.0, 2000.0).or_none(),
    }
}

row! {
    /// What the pipes reach.
    TankGiven {
        /// End of the standpipe to the floor.
        gap_mm: Kind::result(Unit::Mm),
        /// End of the second pipe to the floor.
        second_gap_mm: Kind::result(Unit::Mm),
        /// Fuel in the tank.
        in_tank_l: Kind::result(Unit::L),
        /// Left in the tank when the heater draws air.
        left_l: Kind::result(Unit::L),
        /// What the heater can draw until then.
        heater_l: Kind::result(Unit::L),
        /// What the second pipe still reaches then; below zero: the second one draws air first.
        second_l: Kind::result(Unit::L),
    }
}

/// The heater's pipe has its gap; the engine keeps its share. How near the floor the engine's own
/// pipe ends is the engine maker's matter.
pub const CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::StandpipeGap),
    Checked::new(5, BoundId::EngineReserve),
];

/// Litres below `level_mm` in a box of `length_mm` by `width_mm`, L·W·h.
#[must_use]
pub fn box_l(length_mm: f64, width_mm: f64, level_mm: f64) -> f64 {
    length_mm * width_mm * level_mm * 1e-6
}

/// Litres below `level_mm` in a standing cylinder, π/4·d²·h.
#[must_use]
pub fn upright_l(diameter_mm: f64, level_mm: f64) -> f64 {
    core::f64::consts::FRAC_PI_4 * diameter_mm * diameter_mm * level_mm * 1e-6
}

/// Litres below `level_mm` in a lying cylinder with flat ends: length times the circle's segment
/// d²/8·(θ − sin θ), θ = 2·acos(1 − 2·h/d), by geometry. Levels from 0 to the diameter; relative
/// error below 2e-9.
#[must_use]
pub fn lying_l(diameter_mm: f64, length_mm: f64, level_mm: f64) -> f64 {
    let whole_mm2 = core::f64::consts::FRAC_PI_4 * diameter_mm * diameter_mm;
    let area_mm2 = if level_mm > 0.5 * diameter_mm {
        whole_mm2 - segment_mm2(diameter_mm, diameter_mm - level_mm)
    } else {
        segment_mm2(diameter_mm, level_mm)
    };
    area_mm2 * length_mm * 1e-6
}

/// Area of a circle's lower segment, up to half of it: ∫ 2·√(h·(d − h)) dh from 0 to the level.
/// With h = level·t² the integrand is smooth, and Simpson's rule sums it; no arc cosine, which
/// loses small segments.
fn segment_mm2(diameter_mm: f64, level_mm: f64) -> f64 {
    const STEPS: u8 = 128;
    let at = |step: u8| {
        let t2 = f64::from(step) * f64::from(step) / f64::from(STEPS) / f64::from(STEPS);
        t2 * libm::sqrt((diameter_mm - level_mm * t2).max(0.0))
    };
    let inner = |step| if step % 2 == 1 { 4.0 } else { 2.0 } * at(step);
    let sum: f64 = at(STEPS) + (1..STEPS).map(inner).sum::<f64>();
    4.0 * level_mm * libm::sqrt(level_mm.max(0.0)) * sum / (3.0 * f64::from(STEPS))
}

/// The sheet.
pub const SHEET: Declared = Declared::new::<Tank, TankGiven>("tank", tank).checks(CHECKS);

/// What the standpipes reach and leave: lengths by difference, litres by the tank's shape
/// ([`box_l`], [`upright_l`], [`lying_l`]).
///
/// # Errors
/// A length or width that the shape needs is missing; a pipe longer than the tank is deep; a level
/// above its top.
pub fn tank(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let tank = Tank::read(x);
    check(&tank)?;
    let gap_mm = tank.depth_mm - tank.standpipe_mm;
    let second_gap_mm = tank.depth_mm - tank.second_mm;
    let cut_mm = 0.5 * (1.0 + tank.cut_spread) * tank.cut_mm.max(0.0);
    let air_mm = (gap_mm + cut_mm).min(tank.depth_mm);
    let level_mm = if tank.level_mm.is_nan() {
        tank.depth_mm
    } else {
        tank.level_mm
    };
    let (in_tank_l, left_l) = (below_l(&tank, level_mm), below_l(&tank, air_mm));
    TankGiven {
        gap_mm,
        second_gap_mm,
        in_tank_l,
        left_l,
        heater_l: (in_tank_l - left_l).max(0.0),
        second_l: left_l - below_l(&tank, second_gap_mm),
    }
    .write(to);
    Ok(())
}

fn below_l(tank: &Tank, level_mm: f64) -> f64 {
    if tank.shape == f64::from(Shape::Lying as u8) {
        lying_l(tank.depth_mm, tank.length_mm, level_mm)
    } else if tank.shape == f64::from(Shape::Upright as u8) {
        upright_l(tank.width_mm, level_mm)
    } else {
        box_l(tank.length_mm, tank.width_mm, level_mm)
    }
}

fn check(tank: &Tank) -> Result<(), Refusal> {
    let is = |shape: Shape| tank.shape == f64::from(shape as u8);
    let checks = [
        (
            !is(Shape::Upright) && tank.length_mm.is_nan(),
            2,
            Problem::Missing,
        ),
        (
            !is(Shape::Lying) && tank.width_mm.is_nan(),
            3,
            Problem::Missing,
        ),
        (tank.standpipe_mm > tank.depth_mm, 4, Problem::Contradiction),
        (tank.cut_mm > tank.standpipe_mm, 5, Problem::Contradiction),
        (tank.second_mm > tank.depth_mm, 7, Problem::Contradiction),
        (tank.level_mm > tank.depth_mm, 8, Problem::Contradiction),
    ];
    match checks.iter().find(|(wrong, ..)| *wrong) {
        Some(&(_, place, problem)) => Err(Refusal::at(place, problem)),
        None => Ok(()),
    }
}
