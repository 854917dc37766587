//! The sheets by name: which calculation is made of which rows.

use super::air_flow::{self, AirMeasured, AirMeasuredGiven};
use super::bound::BoundId;
use super::bubble::{self, Bubble, BubbleGiven};
use super::burn::{self, Burn, BurnGiven};
use super::clearance::{self, Clearances, ClearancesGiven};
use super::cut;
use super::cut_told::{Cut, CutGiven, Obstacle, ObstacleGiven};
use super::duct;
use super::duct_rows::{self, DuctAir, DuctsGiven, PieceGiven};
use super::fit::{self, Fit, FitGiven, InTheWay};
use super::fuel_pressure::{self, FuelPressure, FuelPressureGiven};
use super::fuel_run::{self, FuelRun, FuelRunGiven};
use super::grille::{self, Opening, OpeningGiven, ReturnAir, ReturnAirGiven};
use super::kind::Kinds;
use super::piece::Piece;
use super::prime::{self, Prime, PrimeGiven};
use super::propagate::{Function, Moved};
use super::row::Row;
use super::support::{self, Support, SupportGiven, SupportLine, SupportLineGiven};
use super::tank::{self, Tank, TankGiven};
use super::twist::{self, Twist, TwistGiven};

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
    pub inputs: Kinds,
    /// The inputs of each row that follows.
    pub row: Kinds,
    /// Its results.
    pub outputs: Kinds,
    /// The results of each row, after those.
    pub row_outputs: Kinds,
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
    /// What is cut into a panel, and what lies near it: [`cut`].
    CutPlan,
    /// Room for the heater in a compartment: [`fit`].
    Fit,
    /// Loss, length and bends of one or two layouts of ducts: [`duct`].
    Ducts,
    /// Air flow from a measured rise: [`air_flow`].
    AirFlow,
    /// Openings for the air that comes back: [`grille`].
    ReturnAir,
    /// Unevenness by straightedge and feeler gauge: [`support`].
    Support,
    /// Unevenness by two tilts: [`twist`].
    Twist,
    /// Fuel line and pump as told: [`fuel_run`].
    FuelRun,
    /// Pressure at the pump: [`fuel_pressure`].
    FuelPressure,
    /// Why the bore is narrow: [`bubble`].
    Bubble,
    /// Filling an empty line: [`prime`].
    Prime,
    /// Standpipes: [`tank`].
    Tank,
    /// Consumption: [`burn`].
    Burn,
}

impl Sheet {
    /// All of them, in the order of their codes.
    pub const ALL: &'static [Self; 14] = &[
        Self::Clearances,
        Self::CutPlan,
        Self::Fit,
        Self::Ducts,
        Self::AirFlow,
        Self::ReturnAir,
        Self::Support,
        Self::Twist,
        Self::FuelRun,
        Self::FuelPressure,
        Self::Bubble,
        Self::Prime,
        Self::Tank,
        Self::Burn,
    ];

    /// What it is made of.
    #[must_use]
    pub fn form(self) -> &'static Form {
        let [first, ..] = &FORMS;
        FORMS.get(self as usize).unwrap_or(first)
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
            Self::Support => Names {
                row: SupportLine::NAMES,
                row_outputs: SupportLineGiven::NAMES,
                ..plain_names::<Support, SupportGiven>("support")
            },
            Self::Twist => plain_names::<Twist, TwistGiven>("twist"),
            Self::FuelRun => plain_names::<FuelRun, FuelRunGiven>("fuel_run"),
            Self::FuelPressure => plain_names::<FuelPressure, FuelPressureGiven>("fuel_pressure"),
            Self::Bubble => plain_names::<Bubble, BubbleGiven>("bubble"),
            Self::Prime => plain_names::<Prime, PrimeGiven>("prime"),
            Self::Tank => plain_names::<Tank, TankGiven>("tank"),
            Self::Burn => plain_names::<Burn, BurnGiven>("burn"),
            Self::CutPlan => listed_names::<Cut, Obstacle, CutGiven, ObstacleGiven>("cut_plan"),
            Self::Fit => Names {
                row: InTheWay::NAMES,
                ..plain_names::<Fit, FitGiven>("fit")
            },
        }
    }
}

/// The sheets' forms, in the order of their codes.
static FORMS: [Form; Sheet::ALL.len()] = [
    Form {
        checks: clearance::CHECKS,
        ..plain::<Clearances, ClearancesGiven>(clearance::clearances)
    },
    Form {
        checks: cut::CHECKS,
        row_checks: cut::ROW_CHECKS,
        ..listed::<Cut, Obstacle, CutGiven, ObstacleGiven>(cut::cut_plan)
    },
    Form {
        row: InTheWay::KINDS,
        checks: fit::CHECKS,
        ..plain::<Fit, FitGiven>(fit::fit)
    },
    Form {
        checks: duct_rows::CHECKS,
        moved: Some(duct::ducts_moved),
        ..listed::<DuctAir, Piece, DuctsGiven, PieceGiven>(duct::ducts)
    },
    Form {
        checks: air_flow::CHECKS,
        ..plain::<AirMeasured, AirMeasuredGiven>(air_flow::air_flow)
    },
    Form {
        checks: grille::CHECKS,
        ..listed::<ReturnAir, Opening, ReturnAirGiven, OpeningGiven>(grille::return_air)
    },
    Form {
        row: SupportLine::KINDS,
        row_outputs: SupportLineGiven::KINDS,
        checks: support::CHECKS,
        ..plain::<Support, SupportGiven>(support::support)
    },
    Form {
        checks: twist::CHECKS,
        ..plain::<Twist, TwistGiven>(twist::twist)
    },
    Form {
        checks: fuel_run::CHECKS,
        ..plain::<FuelRun, FuelRunGiven>(fuel_run::fuel_run)
    },
    Form {
        checks: fuel_pressure::CHECKS,
        ..plain::<FuelPressure, FuelPressureGiven>(fuel_pressure::fuel_pressure)
    },
    plain::<Bubble, BubbleGiven>(bubble::bubble),
    Form {
        checks: prime::CHECKS,
        ..plain::<Prime, PrimeGiven>(prime::prime)
    },
    Form {
        checks: tank::CHECKS,
        ..plain::<Tank, TankGiven>(tank::tank)
    },
    plain::<Burn, BurnGiven>(burn::burn),
];

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
