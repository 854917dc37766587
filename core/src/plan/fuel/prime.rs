//! How long the pump takes to fill an empty line, at the least, and how many starts that is.

use super::fuel_run::LENGTH;
use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Refusal, Unit};
use crate::plan::row::{Row, row};

const BORE: Kind = Kind::new(Unit::Mm, 0.5, 12.0).give_or_take(0.1, 0.0);

row! {
    /// An empty line and the pump's pace.
    Prime {
        /// Bore from tank to pump.
        suction_bore_mm: BORE,
        /// Length from tank to pump.
        suction_length_m: LENGTH,
        /// Bore from pump to heater.
        pressure_bore_mm: BORE,
        /// Length from pump to heater.
        pressure_length_m: LENGTH,
        /// What a filter holds; empty: no filter.
        filter_ml: Kind::new(Unit::Ml, 0.0, 1000.0).give_or_take(0.0, 0.2).or_none(),
        /// What the pump moves in one stroke, full of fuel.
        stroke_ml: Kind::new(Unit::Ml, 0.001, 0.5).give_or_take(0.0, 0.05),
        /// Strokes a second while it starts.
        stroke_hz: Kind::new(Unit::Hz, 0.2, 30.0).give_or_take(0.0, 0.02),
        /// How long the pump runs in one start that does not catch.
        start_s: Kind::new(Unit::S, 5.0, 900.0).give_or_take(2.0, 0.0).or_none(),
        /// Starts made in a row so far.
        starts_made: Kind::new(Unit::Count, 0.0, 50.0).or_none(),
    }
}

row! {
    /// What it takes.
    PrimeGiven {
        /// Line from tank to pump.
        suction_ml: Kind::result(Unit::Ml),
        /// Line from pump to heater.
        pressure_ml: Kind::result(Unit::Ml),
        /// Both, and the filter.
        volume_ml: Kind::result(Unit::Ml),
        /// At least this long: a pump that draws air moves less than its stroke.
        prime_s: Kind::result(Unit::S),
        /// At least so many starts' worth of pumping; one begun is one made.
        starts_worth: Kind::result(Unit::Ratio),
        /// Starts made in a row.
        starts_made: Kind::result(Unit::Count),
    }
}

/// A lower bound of starts can be too many and never few enough; starts made are counted.
pub const CHECKS: &[Checked] = &[
    Checked::partial(4, BoundId::StartsInARow),
    Checked::new(5, BoundId::StartsInARow),
];

/// Volume of a round line in mL, π/4·d²·L.
#[must_use]
pub fn line_volume_ml(bore_mm: f64, length_m: f64) -> f64 {
    core::f64::consts::FRAC_PI_4 * bore_mm * bore_mm * length_m
}

/// Seconds in which a pump of `stroke_ml` and `stroke_hz` moves `volume_ml`, if every stroke is
/// full of fuel: volume over stroke times rate.
#[must_use]
pub fn fill_s(volume_ml: f64, stroke_ml: f64, stroke_hz: f64) -> f64 {
    volume_ml / (stroke_ml * stroke_hz)
}

/// The sheet.
pub const SHEET: Declared = Declared::new::<Prime, PrimeGiven>("prime", prime).checks(CHECKS);

/// What it takes to fill the line: both volumes ([`line_volume_ml`]) and the filter's over what a
/// second's strokes move ([`fill_s`]); starts by the time that one lasts.
///
/// # Errors
/// None of its own.
pub fn prime(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let line = Prime::read(x);
    let suction_ml = line_volume_ml(line.suction_bore_mm, line.suction_length_m);
    let pressure_ml = line_volume_ml(line.pressure_bore_mm, line.pressure_length_m);
    let volume_ml = suction_ml + pressure_ml + line.filter_ml.max(0.0);
    let prime_s = fill_s(volume_ml, line.stroke_ml, line.stroke_hz);
    PrimeGiven {
        suction_ml,
        pressure_ml,
        volume_ml,
        prime_s,
        starts_worth: prime_s / line.start_s,
        starts_made: line.starts_made,
    }
    .write(to);
    Ok(())
}
