//! Openings through which the room's air comes back: their free area, and what they cost.

use super::piece::SPREAD;
use crate::plan::air;
use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Problem, Refusal, Unit};
use crate::plan::row::{Row, row};

/// Flow through an opening in a wall, of what its free area and the pressure would give without
/// friction: sharp edges 0.6 (orifices, from memory 0.60 to 0.65; deep louvres less).
pub const DISCHARGE: f64 = 0.6;
/// Half-width of that.
pub const DISCHARGE_HALF: f64 = 0.1;

const MM: Kind = Kind::tape(1.0, 2000.0);

row! {
    /// The air that comes back.
    ReturnAir {
        /// Volume that the heater draws in.
        flow_m3_per_h: Kind::new(Unit::M3PerH, 5.0, 2000.0).give_or_take(0.0, 0.1),
        /// The room's air.
        air_celsius: Kind::new(Unit::Celsius, -40.0, 60.0).give_or_take(2.0, 0.0),
        /// Height above the sea; the half-width is the weather's.
        altitude_m: Kind::new(Unit::M, -430.0, 6000.0).give_or_take(250.0, 0.0),
        /// What the openings may cost; empty when not asked.
        allowed_pa: Kind::new(Unit::Pa, 0.1, 1000.0).or_none(),
        /// Place of the true value within the spread of openings: 0, by definition.
        discharge_spread: SPREAD,
    }
}

row! {
    /// Openings of one size, side by side.
    Opening {
        /// Width; or the diameter of round ones.
        width_mm: MM,
        /// Height; empty for round ones.
        height_mm: MM.or_none(),
        /// Share of it that is open.
        free_share: Kind::new(Unit::Ratio, 0.05, 1.0).give_or_take(0.05, 0.0),
        /// How many.
        count: Kind::new(Unit::Count, 1.0, 200.0),
    }
}

row! {
    /// What comes of it.
    ReturnAirGiven {
        /// Free area together.
        free_area_cm2: Kind::result(Unit::Cm2),
        /// Speed in it.
        speed_m_per_s: Kind::result(Unit::MPerS),
        /// Loss.
        loss_pa: Kind::result(Unit::Pa),
        /// Free area at which the loss is what it may be.
        needed_cm2: Kind::result(Unit::Cm2),
    }
}

row! {
    /// What comes of openings of one size.
    OpeningGiven {
        /// Free area.
        free_area_cm2: Kind::result(Unit::Cm2),
    }
}

/// Area against what the heater needs.
pub const CHECKS: &[Checked] = &[Checked::new(0, BoundId::ReturnArea)];

impl Opening {
    /// Free area in cm²: width by height, or π/4·d² of a round one, times its free share and how
    /// many there are; by geometry.
    #[must_use]
    pub fn free_area_cm2(&self) -> f64 {
        let one_mm2 = if self.height_mm.is_nan() {
            core::f64::consts::FRAC_PI_4 * self.width_mm * self.width_mm
        } else {
            self.width_mm * self.height_mm
        };
        0.01 * one_mm2 * self.free_share * self.count
    }
}

/// The sheet.
pub const SHEET: Declared = Declared::new::<ReturnAir, ReturnAirGiven>("return_air", return_air)
    .rows::<Opening>()
    .row_results::<OpeningGiven>()
    .checks(CHECKS);

/// Return openings, see [`ReturnAir`]. All stand in one wall, side by side: Δp = ρ/2·(Q/(c·A))².
///
/// # Errors
/// No opening at all.
pub fn return_air(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let told = ReturnAir::read(x);
    let rows = x.get(ReturnAir::KINDS.len()..).unwrap_or_default();
    let areas = || {
        let (rows, _) = rows.as_chunks::<{ Opening::KINDS.len() }>();
        rows.iter().map(|row| Opening::read(row).free_area_cm2())
    };
    let area_cm2: f64 = areas().sum();
    if area_cm2 <= 0.0 {
        return Err(Refusal::at(x.len(), Problem::Missing));
    }
    let density = air::density_kg_per_m3(told.air_celsius, air::pressure_pa(told.altitude_m));
    let discharge = DISCHARGE + DISCHARGE_HALF * told.discharge_spread;
    let speed = told.flow_m3_per_h / 3600.0 / (1e-4 * area_cm2);
    let through = speed / discharge;
    let loss_pa = 0.5 * density * through * through;
    ReturnAirGiven {
        free_area_cm2: area_cm2,
        speed_m_per_s: speed,
        loss_pa,
        needed_cm2: area_cm2 * libm::sqrt(loss_pa / told.allowed_pa),
    }
    .write(to);
    let given = to
        .get_mut(ReturnAirGiven::KINDS.len()..)
        .unwrap_or_default();
    for (to, area) in given.iter_mut().zip(areas()) {
        *to = area;
    }
    Ok(())
}
