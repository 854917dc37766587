//! Free space round the mounted heater on its six sides, and what is near its ends.

use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Refusal, Unit};
use crate::plan::row::{Row, row};

const SPACE: Kind = Kind::tape(0.0, 5000.0).or_none();
const FAR: Kind = Kind::tape(0.0, 20_000.0).or_none();
const RESULT: Kind = Kind::result(Unit::Mm);

row! {
    /// Distances as told by the tape, face to nearest thing. What was not measured stays empty.
    Clearances {
        /// Beyond the warm-air end.
        outlet_end_mm: SPACE,
        /// Before the intake end.
        intake_end_mm: SPACE,
        /// Above.
        top_mm: SPACE,
        /// Below.
        bottom_mm: SPACE,
        /// Left, seen from the intake end.
        left_mm: SPACE,
        /// Right.
        right_mm: SPACE,
        /// From the warm-air outlet to the nearest place where a person sits, lies or reaches.
        outlet_to_person_mm: FAR,
        /// From the heated-air intake to the end of the nearest exhaust, this heater's or another.
        intake_to_exhaust_mm: FAR,
    }
}

row! {
    /// The same distances.
    ClearancesGiven {
        /// Beyond the warm-air end.
        outlet_end_mm: RESULT,
        /// Before the intake end.
        intake_end_mm: RESULT,
        /// Above.
        top_mm: RESULT,
        /// Below.
        bottom_mm: RESULT,
        /// Left.
        left_mm: RESULT,
        /// Right.
        right_mm: RESULT,
        /// Outlet to person.
        outlet_to_person_mm: RESULT,
        /// Intake to exhaust.
        intake_to_exhaust_mm: RESULT,
    }
}

/// Each distance has its limit.
pub const CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::ClearOutletEnd),
    Checked::new(1, BoundId::ClearIntakeEnd),
    Checked::new(2, BoundId::ClearTop),
    Checked::new(3, BoundId::ClearBottom),
    Checked::new(4, BoundId::ClearLeft),
    Checked::new(5, BoundId::ClearRight),
    Checked::new(6, BoundId::OutletToPerson),
    Checked::new(7, BoundId::IntakeToExhaust),
];

/// The sheet.
pub const SHEET: Declared =
    Declared::new::<Clearances, ClearancesGiven>("clearances", clearances).checks(CHECKS);

/// Distances as they are: what is told is what is held against the limit.
///
/// # Errors
/// None of its own.
pub fn clearances(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    Clearances::read(x).write(to);
    Ok(())
}
