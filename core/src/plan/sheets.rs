//! The sheets by name, in the order of the work.

use super::demand::{heat_loss, heater_size, night, warm_up};
use super::ducts::{air_flow, duct, grille};
use super::flue::{boat_outlet, ends, pipe};
use super::form::{Declared, Form, Names};
use super::fuel::{bubble, burn, fuel_pressure, fuel_run, prime, tank};
use super::place::{clearance, cut, fit, support, twist};
use super::start::{co, started, steps, timer};
use super::supply::{bank, battery, cable, fuse};

macro_rules! sheets {
    ($($(#[$doc:meta])* $sheet:ident $declared:path,)*) => {
        /// A calculation.
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        #[repr(u8)]
        pub enum Sheet {
            $($(#[$doc])* $sheet,)*
        }

        /// What each is made of, in the order of their codes.
        static FORMS: [Form; Sheet::ALL.len()] = [$({
            const DECLARED: Declared = $declared;
            DECLARED.form
        }),*];

        impl Sheet {
            /// All of them, in the order of their codes.
            pub const ALL: &'static [Self] = &[$(Self::$sheet),*];

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
                    $(Self::$sheet => $declared.names,)*
                }
            }
        }
    };
}

sheets! {
    /// Heat that a space loses.
    HeatLoss heat_loss::SHEET,
    /// Whether the heater gives it.
    HeaterSize heater_size::SHEET,
    /// How long it takes to get warm.
    WarmUp warm_up::SHEET,
    /// What a night costs.
    Night night::SHEET,
    /// Free space round the heater.
    Clearances clearance::SHEET,
    /// What is cut into a panel, and what lies near it.
    CutPlan cut::SHEET,
    /// Room for the heater in a compartment.
    Fit fit::SHEET,
    /// Unevenness by straightedge and feeler gauge.
    Support support::SHEET,
    /// Unevenness by two tilts.
    Twist twist::SHEET,
    /// Loss, length and bends of one or two layouts of ducts.
    Ducts duct::SHEET,
    /// Air flow from a measured rise.
    AirFlow air_flow::SHEET,
    /// Openings for the air that comes back.
    ReturnAir grille::SHEET,
    /// Fuel line and pump as told.
    FuelRun fuel_run::SHEET,
    /// Pressure at the pump.
    FuelPressure fuel_pressure::SHEET,
    /// Why the bore is narrow.
    Bubble bubble::SHEET,
    /// Filling an empty line.
    Prime prime::SHEET,
    /// Standpipes.
    Tank tank::SHEET,
    /// Consumption.
    Burn burn::SHEET,
    /// Exhaust, leg by leg.
    Exhaust pipe::EXHAUST,
    /// Combustion-air pipe, leg by leg.
    AirPipe pipe::AIR_PIPE,
    /// What the ends of both are near.
    PipeEnds ends::SHEET,
    /// A boat's outlet above the water as she heels.
    BoatOutlet boat_outlet::SHEET,
    /// What the cable costs.
    Cable cable::SHEET,
    /// Fuse and conductor.
    Fuse fuse::SHEET,
    /// Where the supply is taken.
    Bank bank::SHEET,
    /// Hours on the battery.
    Battery battery::SHEET,
    /// Steps of the first start.
    FirstStart steps::SHEET,
    /// A timer of the first start.
    Timer timer::SHEET,
    /// Carbon monoxide while it runs.
    CoCheck co::SHEET,
    /// Measured at the first start.
    Started started::SHEET,
}
