//! The sheets by name: which calculation is made of which rows.

use super::bound::BoundId;
use super::clearance::{self, Clearances, ClearancesGiven};
use super::cut;
use super::cut_told::{Cut, CutGiven, Obstacle, ObstacleGiven};
use super::fit::{self, Fit, FitGiven, InTheWay};
use super::kind::Kind;
use super::propagate::Function;
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
    /// Whether it is one of several ways to do it: what is chosen of them has a check of its own.
    pub alternative: bool,
}

impl Checked {
    /// A result that can be within and beyond.
    #[must_use]
    pub const fn new(output: usize, bound: BoundId) -> Self {
        Self {
            output,
            bound,
            only_beyond: false,
            alternative: false,
        }
    }

    /// One of several ways to do it.
    #[must_use]
    pub const fn alternative(output: usize, bound: BoundId) -> Self {
        Self {
            alternative: true,
            ..Self::new(output, bound)
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
    /// What is cut into a panel, and what lies near it: [`cut`].
    CutPlan,
    /// Room for the heater in a compartment: [`fit`].
    Fit,
}

impl Sheet {
    /// All of them, in the order of their codes.
    pub const ALL: &'static [Self] = &[Self::Clearances, Self::CutPlan, Self::Fit];

    /// What it is made of.
    #[must_use]
    pub fn form(self) -> Form {
        match self {
            Self::Clearances => Form {
                checks: clearance::CHECKS,
                ..plain::<Clearances, ClearancesGiven>(clearance::clearances)
            },
            Self::CutPlan => Form {
                checks: cut::CHECKS,
                row_checks: cut::ROW_CHECKS,
                ..listed::<Cut, Obstacle, CutGiven, ObstacleGiven>(cut::cut_plan)
            },
            Self::Fit => Form {
                row: InTheWay::KINDS,
                checks: fit::CHECKS,
                ..plain::<Fit, FitGiven>(fit::fit)
            },
        }
    }

    /// What its numbers are called.
    #[must_use]
    pub fn names(self) -> Names {
        match self {
            Self::Clearances => plain_names::<Clearances, ClearancesGiven>("clearances"),
            Self::CutPlan => listed_names::<Cut, Obstacle, CutGiven, ObstacleGiven>("cut_plan"),
            Self::Fit => Names {
                row: InTheWay::NAMES,
                ..plain_names::<Fit, FitGiven>("fit")
            },
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

/// A sheet whose rows have results of their own.
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
