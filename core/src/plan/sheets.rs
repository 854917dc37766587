//! The sheets by name: which calculation is made of which rows.

use super::air_flow::{self, AirMeasured, AirMeasuredGiven};
use super::bound::BoundId;
use super::clearance::{self, Clearances, ClearancesGiven};
use super::duct;
use super::duct_rows::{self, DuctAir, DuctsGiven, PieceGiven};
use super::grille::{self, Opening, OpeningGiven, ReturnAir, ReturnAirGiven};
use super::kind::Kind;
use super::piece::Piece;
use super::propagate::{Function, Moved};
use super::row::Row;

/// A result that is held against a limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Checked {
    /// Place of the result.
    pub output: usize,
    /// Its limit.
    pub bound: BoundId,
    /// Whether it is told by something that can break the limit but never keep it: a lower bound
    /// of what the limit is for.
    pub only_beyond: bool,
}

impl Checked {
    /// A result that can be within and beyond.
    #[must_use]
    pub const fn new(output: usize, bound: BoundId) -> Self {
        Self {
            output,
            bound,
            only_beyond: false,
        }
    }
}

/// What a sheet is made of. A sheet without rows has empty lists for them.
#[derive(Debug, Clone, Copy)]
pub struct Form {
    /// Its inputs.
    pub inputs: &'static [Kind],
    /// The inputs of each row that follows.
    pub row: &'static [Kind],
    /// Its results.
    pub outputs: &'static [Kind],
    /// The results of each row, after those.
    pub row_outputs: &'static [Kind],
    /// Which results are held against which limit.
    pub checks: &'static [Checked],
    /// Which results of each row are, by their place in the row.
    pub row_checks: &'static [Checked],
    /// The calculation: inputs and rows in order to results in order.
    pub function: Function,
    /// A quicker one when a single number was moved, where there is one.
    pub moved: Option<Moved>,
}

/// What the numbers of a sheet are called, in the same order as its [`Form`].
#[derive(Debug, Clone, Copy)]
pub struct Names {
    /// The sheet.
    pub sheet: &'static str,
    /// Its inputs.
    pub inputs: &'static [&'static str],
    /// The inputs of a row.
    pub row: &'static [&'static str],
    /// Its results.
    pub outputs: &'static [&'static str],
    /// The results of a row.
    pub row_outputs: &'static [&'static str],
}

/// A calculation.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum Sheet {
    /// Free space round the heater: [`clearance`].
    Clearances,
    /// Loss, length and bends of one or two layouts of ducts: [`duct`].
    Ducts,
    /// Air flow from a measured rise: [`air_flow`].
    AirFlow,
    /// Openings for the air that comes back: [`grille`].
    ReturnAir,
}

impl Sheet {
    /// All of them, in the order of their codes.
    pub const ALL: &'static [Self] = &[
        Self::Clearances,
        Self::Ducts,
        Self::AirFlow,
        Self::ReturnAir,
    ];

    /// What it is made of.
    #[must_use]
    pub fn form(self) -> Form {
        match self {
            Self::Clearances => Form {
                checks: clearance::CHECKS,
                ..plain::<Clearances, ClearancesGiven>(clearance::clearances)
            },
            Self::Ducts => Form {
                checks: duct_rows::CHECKS,
                moved: Some(duct::ducts_moved),
                ..listed::<DuctAir, Piece, DuctsGiven, PieceGiven>(duct::ducts)
            },
            Self::AirFlow => Form {
                checks: air_flow::CHECKS,
                ..plain::<AirMeasured, AirMeasuredGiven>(air_flow::air_flow)
            },
            Self::ReturnAir => Form {
                checks: grille::CHECKS,
                ..listed::<ReturnAir, Opening, ReturnAirGiven, OpeningGiven>(grille::return_air)
            },
        }
    }

    /// What its numbers are called.
    #[must_use]
    pub fn names(self) -> Names {
        match self {
            Self::Clearances => plain_names::<Clearances, ClearancesGiven>("clearances"),
            Self::Ducts => listed_names::<DuctAir, Piece, DuctsGiven, PieceGiven>("ducts"),
            Self::AirFlow => plain_names::<AirMeasured, AirMeasuredGiven>("air_flow"),
            Self::ReturnAir => {
                listed_names::<ReturnAir, Opening, ReturnAirGiven, OpeningGiven>("return_air")
            }
        }
    }
}

const fn plain<In: Row, Out: Row>(function: Function) -> Form {
    Form {
        inputs: In::KINDS,
        row: &[],
        outputs: Out::KINDS,
        row_outputs: &[],
        checks: &[],
        row_checks: &[],
        function,
        moved: None,
    }
}

const fn plain_names<In: Row, Out: Row>(sheet: &'static str) -> Names {
    Names {
        sheet,
        inputs: In::NAMES,
        row: &[],
        outputs: Out::NAMES,
        row_outputs: &[],
    }
}

const fn listed<In: Row, Each: Row, Out: Row, EachOut: Row>(function: Function) -> Form {
    Form {
        row: Each::KINDS,
        row_outputs: EachOut::KINDS,
        ..plain::<In, Out>(function)
    }
}

const fn listed_names<In: Row, Each: Row, Out: Row, EachOut: Row>(sheet: &'static str) -> Names {
    Names {
        row: Each::NAMES,
        row_outputs: EachOut::NAMES,
        ..plain_names::<In, Out>(sheet)
    }
}
