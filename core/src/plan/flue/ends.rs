//! What the exhaust and its end are near: openings of the body, lines and tyres, what can burn; and
//! where combustion air is drawn.

use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Refusal, Unit};
use crate::plan::row::{Row, row};

/// What lies near the exhaust.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum Near {
    /// Window that opens.
    Window,
    /// Door or hatch.
    Door,
    /// Vent.
    Vent,
    /// Where the heater or the vehicle draws air for people.
    HeatedAirIntake,
    /// Where the engine draws air.
    EngineIntake,
    /// Tyre.
    Tyre,
    /// Brake line, or an air line.
    BrakeLine,
    /// Fuel line or tank.
    FuelLine,
    /// Cable.
    Cable,
    /// Wood, cloth, plastic, foam, underseal: anything that can burn.
    Combustible,
}

/// Which limit a thing has.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Sort {
    Opening,
    Line,
    Combustible,
}

impl Near {
    /// All of them, in the order of their codes.
    pub const ALL: [Self; 10] = [
        Self::Window,
        Self::Door,
        Self::Vent,
        Self::HeatedAirIntake,
        Self::EngineIntake,
        Self::Tyre,
        Self::BrakeLine,
        Self::FuelLine,
        Self::Cable,
        Self::Combustible,
    ];

    fn sort(self) -> Sort {
        match self {
            Self::Window | Self::Door | Self::Vent | Self::HeatedAirIntake | Self::EngineIntake => {
                Sort::Opening
            }
            Self::Tyre | Self::BrakeLine | Self::FuelLine | Self::Cable => Sort::Line,
            Self::Combustible => Sort::Combustible,
        }
    }
}

const FAR: Kind = Kind::tape(0.0, 20_000.0);
const RESULT: Kind = Kind::result(Unit::Mm);

row! {
    /// The ends. What was not measured stays empty.
    Ends {
        /// From where combustion air is drawn to the exhaust's end.
        air_to_exhaust_mm: FAR.or_none(),
        /// From the body's outline out to the exhaust's end; inside it: negative.
        past_body_mm: Kind::tape(-3000.0, 3000.0).or_none(),
        /// Whether the exhaust is lagged where it passes what can burn: bare, lagged. The limit is
        /// for a bare one.
        lagged: Kind::choice(2).or_none(),
    }
}

row! {
    /// Something near the exhaust.
    NearBy {
        /// What, by [`Near`].
        what: Kind::choice(Near::ALL.len()),
        /// From it to the exhaust: an opening to the exhaust's end, all else to the nearest of the
        /// pipe.
        distance_mm: FAR,
    }
}

row! {
    /// The same.
    EndsGiven {
        /// Combustion air to the exhaust's end.
        air_to_exhaust_mm: RESULT,
        /// Body's outline to the exhaust's end.
        past_body_mm: RESULT,
    }
}

row! {
    /// A distance, by the limit that it has.
    NearByGiven {
        /// To an opening.
        opening_mm: RESULT,
        /// To a tyre, a line or a cable.
        line_mm: RESULT,
        /// To what can burn, from a bare pipe.
        combustible_mm: RESULT,
    }
}

/// Each distance has its limit.
pub const CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::AirToExhaust),
    Checked::new(1, BoundId::ExhaustPastBody),
];

/// Whatever it is.
pub const ROW_CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::ExhaustToOpening),
    Checked::new(1, BoundId::ExhaustToLine),
    Checked::new(2, BoundId::ExhaustToCombustible),
];

/// The sheet.
pub const SHEET: Declared = Declared::new::<Ends, EndsGiven>("pipe_ends", ends)
    .rows::<NearBy>()
    .row_results::<NearByGiven>()
    .checks(CHECKS)
    .row_checks(ROW_CHECKS);

/// Distances as they are, each to its limit. A pipe of which it is not told that it is lagged is
/// bare.
///
/// # Errors
/// None of its own.
pub fn ends(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let (fixed, rows) = x.split_at_checked(Ends::KINDS.len()).unwrap_or_default();
    let told = Ends::read(fixed);
    let (given, row_given) = to
        .split_at_mut_checked(EndsGiven::KINDS.len())
        .unwrap_or_default();
    EndsGiven {
        air_to_exhaust_mm: told.air_to_exhaust_mm,
        past_body_mm: told.past_body_mm,
    }
    .write(given);
    let rows = rows.as_chunks::<{ NearBy::KINDS.len() }>().0;
    let each = row_given.as_chunks_mut::<{ NearByGiven::KINDS.len() }>().0;
    for (row, to) in rows.iter().zip(each) {
        let near = NearBy::read(row);
        // A cast saturates: what is no place in the list is not there.
        let what = Near::ALL.get(near.what as usize).map(|what| what.sort());
        let if_it = |is: bool| if is { near.distance_mm } else { f64::NAN };
        NearByGiven {
            opening_mm: if_it(what == Some(Sort::Opening)),
            line_mm: if_it(what == Some(Sort::Line)),
            combustible_mm: if_it(what == Some(Sort::Combustible) && told.lagged != 1.0),
        }
        .write(to);
    }
    Ok(())
}
