//! A pipe from the heater, leg by leg: length, bends, how high each leg ends, where water stays and
//! what is to be done there. The exhaust and the combustion-air pipe have limits of their own.

use super::leg::{Leg, Pipe};
use super::water::{Slope, depth_mm, is_low_point, standing_mm};
use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Problem, Refusal, Unit};
use crate::plan::row::{Row, row};
use crate::trig::sin_cos_deg;

/// Most legs that a pipe takes.
pub const MOST_LEGS: usize = 16;

/// What is to be done about a low point.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum Remedy {
    /// It is none.
    None,
    /// Lay the pipe another way: no drain may be set there.
    Reroute,
    /// A drain may be set there.
    Drain,
}

row! {
    /// What comes of the whole pipe.
    PipeGiven {
        /// Length.
        length_m: Kind::result(Unit::M),
        /// Bends together.
        bends_deg: Kind::result(Unit::Deg),
        /// How high its end lies above the heater's port; below it: negative.
        end_height_mm: Kind::result(Unit::Mm),
    }
}

row! {
    /// What comes of one leg.
    LegGiven {
        /// How high it ends above the heater's port.
        height_mm: Kind::result(Unit::Mm),
        /// How far from the heater's port it ends, along the level.
        along_mm: Kind::result(Unit::Mm),
        /// How high it holds water back by itself: [`standing_mm`]. Negative where it drains.
        standing_mm: Kind::result(Unit::Mm),
        /// How deep water can stand where it starts: [`depth_mm`].
        depth_mm: Kind::result(Unit::Mm),
        /// What is to be done there, by [`Remedy`].
        remedy: Kind::choice(3),
        /// Bore of the drain where it starts.
        drain_bore_mm: Kind::result(Unit::Mm),
    }
}

/// Length and bends of the exhaust.
pub const EXHAUST_CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::ExhaustLength),
    Checked::new(1, BoundId::ExhaustBends),
];

/// Length and bends of the combustion-air pipe.
pub const AIR_PIPE_CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::AirPipeLength),
    Checked::new(1, BoundId::AirPipeBends),
];

/// Each leg drains. Several legs together can be found to hold water, and never to hold none: that
/// takes every one of them.
pub const ROW_CHECKS: &[Checked] = &[
    Checked::new(2, BoundId::StandingWater),
    Checked::only_beyond(3, BoundId::StandingWater),
    Checked::new(5, BoundId::DrainBore),
];

/// The exhaust's sheet.
pub const EXHAUST: Declared = Declared::new::<Pipe, PipeGiven>("exhaust", pipe)
    .rows::<Leg>()
    .row_results::<LegGiven>()
    .checks(EXHAUST_CHECKS)
    .row_checks(ROW_CHECKS);

/// The combustion-air pipe's sheet.
pub const AIR_PIPE: Declared = Declared::new::<Pipe, PipeGiven>("air_pipe", pipe)
    .rows::<Leg>()
    .row_results::<LegGiven>()
    .checks(AIR_PIPE_CHECKS)
    .row_checks(ROW_CHECKS);

/// Follows the pipe from the heater.
///
/// A leg is straight: one that sags between its clamps is two. Heights are L·sin e, added up.
///
/// # Errors
/// More legs than [`MOST_LEGS`] ([`Problem::TooMany`], at the first that is one too many); what
/// [`Pipe::sway_deg`] and [`Leg::is_drained`] refuse.
pub fn pipe(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let (fixed, rows) = x.split_at_checked(Pipe::KINDS.len()).unwrap_or_default();
    let told = Pipe::read(fixed);
    let sway_deg = told.sway_deg()?;
    let legs = rows.as_chunks::<{ Leg::KINDS.len() }>().0;
    let mut slopes = [Slope::NONE; MOST_LEGS];
    let Some(slopes) = slopes.get_mut(..legs.len()) else {
        let place = Pipe::KINDS.len() + MOST_LEGS * Leg::KINDS.len();
        return Err(Refusal::at(place, Problem::TooMany));
    };
    let (given, row_given) = to
        .split_at_mut_checked(PipeGiven::KINDS.len())
        .unwrap_or_default();
    let row_given = row_given.as_chunks_mut::<{ LegGiven::KINDS.len() }>().0;
    let (mut sum, mut along_mm) = (PipeGiven::read(&[0.0; 3]), 0.0);
    for (i, ((leg, slope), to)) in legs
        .iter()
        .zip(&mut *slopes)
        .zip(&mut *row_given)
        .enumerate()
    {
        let leg = Leg::read(leg);
        let (sin, cos) = sin_cos_deg(leg.elevation(&told, sway_deg) as f32);
        let length_mm = 1000.0 * leg.length_m;
        *slope = Slope {
            rise_mm: length_mm * f64::from(sin),
            drained: leg.is_drained(&told, Pipe::KINDS.len() + i * Leg::KINDS.len())?,
        };
        sum.length_m += leg.length_m;
        sum.bends_deg += leg.bend_deg;
        sum.end_height_mm += slope.rise_mm;
        along_mm += length_mm * f64::from(cos);
        LegGiven {
            height_mm: sum.end_height_mm,
            along_mm,
            standing_mm: f64::NAN,
            depth_mm: f64::NAN,
            remedy: f64::from(u8::from(leg.may_drain(&told))),
            drain_bore_mm: leg.drain_bore_mm,
        }
        .write(to);
    }
    fill(slopes, row_given);
    if !legs.is_empty() {
        sum.write(given);
    }
    Ok(())
}

/// Where water stays. A remedy says so far whether a drain may be set.
fn fill(slopes: &[Slope], given: &mut [[f64; LegGiven::KINDS.len()]]) {
    let mut back = false;
    for (i, (slope, to)) in slopes.iter().zip(given).enumerate() {
        let (before, after) = slopes.split_at_checked(i).unwrap_or_default();
        let leg = LegGiven::read(to);
        let remedy = if !is_low_point(before, after) {
            Remedy::None
        } else if leg.remedy > 0.5 {
            Remedy::Drain
        } else {
            Remedy::Reroute
        };
        LegGiven {
            standing_mm: standing_mm(slope, &mut back),
            depth_mm: depth_mm(before, after),
            remedy: f64::from(remedy as u8),
            ..leg
        }
        .write(to);
    }
}
