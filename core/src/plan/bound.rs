//! Limits of what a tape, a table or a manual tells: one number or two for each, in its unit; and
//! the answer when a result is held against them.

use super::kind::Unit;
use super::work::Given;
use crate::decision::{Verdict, Why};

/// The part of an installation that a limit belongs to, in the order of the work.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Section {
    /// How much heat is wanted, and where.
    Demand,
    /// Where the heater goes.
    Place,
    /// What it stands on.
    Support,
    /// Warm and return air.
    Ducts,
    /// Tank, line, pump.
    Fuel,
    /// Exhaust and combustion air.
    Flue,
    /// Battery, cable, fuse.
    Supply,
    /// First start.
    Start,
}

macro_rules! bounds {
    (
        entered { $($(#[$doc:meta])* $id:ident $name:literal $section:ident $unit:ident $low:literal..$high:literal,)* }
        of_itself { $($(#[$own_doc:meta])* $own:ident $own_name:literal $own_section:ident $own_unit:ident $own_low:expr => $own_high:expr,)* }
    ) => {
        /// What has a limit. The names carry the units.
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        #[repr(u8)]
        pub enum BoundId {
            $($(#[$doc])* $id,)*
            $($(#[$own_doc])* $own,)*
        }

        impl BoundId {
            /// All that are entered, in the order of the work.
            pub const ALL: &'static [Self] = &[$(Self::$id),*];

            /// Its name in limit sets.
            #[must_use]
            pub fn name(self) -> &'static str {
                match self { $(Self::$id => $name,)* $(Self::$own => $own_name,)* }
            }

            /// The part that it belongs to.
            #[must_use]
            pub fn section(self) -> Section {
                match self { $(Self::$id => Section::$section,)* $(Self::$own => Section::$own_section,)* }
            }

            /// Its unit.
            #[must_use]
            pub fn unit(self) -> Unit {
                match self { $(Self::$id => Unit::$unit,)* $(Self::$own => Unit::$own_unit,)* }
            }

            /// What a limit can be, in the unit.
            #[must_use]
            pub fn range(self) -> (f64, f64) {
                match self {
                    $(Self::$id => ($low as f64, $high as f64),)*
                    $(Self::$own => ($own_low, $own_high),)*
                }
            }

            /// The lowest and highest value permitted where no document is needed to know it. Nobody
            /// enters such a limit.
            #[must_use]
            pub fn of_itself(self) -> Option<(f64, f64)> {
                match self {
                    $(Self::$own => Some(($own_low, $own_high)),)*
                    _ => None,
                }
            }
        }
    };
}

/// No end.
const NONE: f64 = f64::NAN;

bounds! {
    entered {
    /// Height above the sea that the heater works at as it is.
    Altitude "altitude_m" Demand M 0..6000,
    /// Free space beyond the warm-air end.
    ClearOutletEnd "clear_outlet_end_mm" Place Mm 0..3000,
    /// Free space before the intake end.
    ClearIntakeEnd "clear_intake_end_mm" Place Mm 0..3000,
    /// Free space above.
    ClearTop "clear_top_mm" Place Mm 0..3000,
    /// Free space below.
    ClearBottom "clear_bottom_mm" Place Mm 0..3000,
    /// Free space on the left, seen from the intake end.
    ClearLeft "clear_left_mm" Place Mm 0..3000,
    /// Free space on the right.
    ClearRight "clear_right_mm" Place Mm 0..3000,
    /// From the warm-air outlet to any person.
    OutletToPerson "outlet_to_person_mm" Place Mm 0..5000,
    /// From the heated-air intake to the end of any exhaust.
    IntakeToExhaust "intake_to_exhaust_mm" Place Mm 0..10000,
    /// From the edge of the cut to anything behind the panel.
    CutToObstacle "cut_to_obstacle_mm" Place Mm 0..1000,
    /// Unevenness under the seal.
    Unevenness "unevenness_mm" Support Mm 0..20,
    /// Bends of the warm-air and return ducts together.
    DuctBends "duct_bends_deg" Ducts Deg 0..1440,
    /// Length of the ducts together.
    DuctLength "duct_length_m" Ducts M 0..50,
    /// Pressure that the ducts may cost.
    DuctLoss "duct_loss_pa" Ducts Pa 0..5000,
    /// Air that the heater needs.
    AirFlow "air_flow_m3_per_h" Ducts M3PerH 0..2000,
    /// Warm air at the outlet.
    OutletAir "outlet_air_celsius" Ducts Celsius 20..200,
    /// Free area through which air comes back.
    ReturnArea "return_area_cm2" Ducts Cm2 0..5000,
    /// Bore of the fuel line from the tank to the pump.
    FuelBore "fuel_bore_mm" Fuel Mm 0..20,
    /// Bore of the fuel line from the pump to the heater.
    FuelBorePressure "fuel_bore_pressure_mm" Fuel Mm 0..20,
    /// Length of line from the tank to the pump.
    SuctionLine "suction_line_m" Fuel M 0..30,
    /// Length of line from the pump to the heater.
    PressureLine "pressure_line_m" Fuel M 0..30,
    /// Height of the pump above the lowest fuel level.
    SuctionLift "suction_lift_mm" Fuel Mm -5000..5000,
    /// Height of the heater above the pump.
    PressureLift "pressure_lift_mm" Fuel Mm -5000..5000,
    /// Pressure below the air's at the pump's inlet.
    Suction "suction_pa" Fuel Pa 0..100_000,
    /// Pressure above the air's at the pump's outlet.
    PumpPressure "pump_pressure_pa" Fuel Pa 0..1_000_000,
    /// Where the pump sits: warmest air there.
    PumpAir "pump_air_celsius" Fuel Celsius -20..150,
    /// From pump and line to anything hot.
    FuelToHot "fuel_to_hot_mm" Fuel Mm 0..3000,
    /// From the standpipe's end to the tank's floor.
    StandpipeGap "standpipe_gap_mm" Fuel Mm 0..500,
    /// Fuel that the engine's own pick-up still reaches when the heater draws air.
    EngineReserve "engine_reserve_l" Fuel L 0..200,
    /// Starts in a row before a pause.
    StartsInARow "starts_in_a_row" Fuel Count 0..20,
    /// Length of the exhaust pipe.
    ExhaustLength "exhaust_length_m" Flue M 0..20,
    /// Bends of the exhaust pipe.
    ExhaustBends "exhaust_bends_deg" Flue Deg 0..1440,
    /// From the exhaust to anything that burns, uninsulated.
    ExhaustToCombustible "exhaust_to_combustible_mm" Flue Mm 0..3000,
    /// From the exhaust's end to any opening of the body.
    ExhaustToOpening "exhaust_to_opening_mm" Flue Mm 0..10000,
    /// From the exhaust to tyres, brake and fuel lines.
    ExhaustToLine "exhaust_to_line_mm" Flue Mm 0..3000,
    /// From the body's outline out to the exhaust's end.
    ExhaustPastBody "exhaust_past_body_mm" Flue Mm -500..1000,
    /// Outlet of a boat above the water as it heels.
    OutletAboveWater "outlet_above_water_mm" Flue Mm 0..2000,
    /// Top of a boat's rising loop above the water as it heels.
    LoopAboveWater "loop_above_water_mm" Flue Mm 0..3000,
    /// Drain where the pipe is lowest.
    DrainBore "drain_bore_mm" Flue Mm 0..20,
    /// Length of the combustion-air pipe.
    AirPipeLength "air_pipe_length_m" Flue M 0..20,
    /// Bends of the combustion-air pipe.
    AirPipeBends "air_pipe_bends_deg" Flue Deg 0..1440,
    /// From where combustion air is drawn to the exhaust's end.
    AirToExhaust "air_to_exhaust_mm" Flue Mm 0..10000,
    /// Voltage that the heater is for.
    SupplyVoltage "supply_voltage_v" Supply V 5..60,
    /// Voltage at the heater during start.
    StartVoltage "start_voltage_v" Supply V 5..60,
    /// Voltage that the cable may cost.
    CableDrop "cable_drop_v" Supply V 0..10,
    /// Fuse.
    Fuse "fuse_a" Supply A 1..100,
    /// From the battery to its fuse.
    FuseToBattery "fuse_to_battery_mm" Supply Mm 0..5000,
    /// After-run, from switching off to standing still.
    AfterRun "after_run_min" Start Min 0..60,
    }
    of_itself {
        /// What is left where one thing must find room in another: what finds none does not fit.
        SpareRoom "spare_room_mm" Place Mm 0.0 => NONE,
        /// Heat that is left beyond what is lost.
        SparePower "spare_power_w" Demand W 0.0 => NONE,
        /// Depth of the water that a pipe can hold: one that holds any is not falling all the way.
        StandingWater "standing_water_mm" Flue Mm NONE => 0.0,
        /// Current that a conductor can carry beyond its fuse.
        SpareCurrent "spare_current_a" Supply A 0.0 => NONE,
        /// Voltage that a take-off misses of its bank while no current flows.
        MissedVoltage "missed_voltage_v" Supply V 0.0 => 0.0,
        /// Time that a battery lasts beyond what is wanted.
        SpareTime "spare_time_h" Supply H 0.0 => NONE,
        /// Time that a test took beyond what it takes at least.
        SpareTest "spare_test_min" Start Min 0.0 => NONE,
        /// Carbon monoxide above the reading outdoors.
        CoRise "co_rise_ppm" Start Ppm NONE => 0.0,
    }
}

/// What comes of holding a result against its limit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Judged {
    /// The answer.
    pub verdict: Verdict,
    /// What stands behind it, where it is not plain.
    pub why: Option<Why>,
    /// Left to the limit (positive) or the excess (negative), after the uncertainty; not a number
    /// where not proven.
    pub margin: f64,
    /// Change of the value that would prove it within when told again; not a number where none is
    /// needed or known.
    pub change: f64,
    /// Probability of conformance, normal (JCGM 106 §7), for the record.
    pub probability: f64,
}

/// Holds `given` against the lowest and the highest value permitted; not a number where there is
/// none. Guard band w = U, as [`crate::decision`]. What may only say beyond is never within.
#[must_use]
pub fn judge(given: &Given, low: f64, high: f64, only_beyond: bool) -> Judged {
    let none = |why| Judged {
        verdict: if why == Some(Why::LimitNotEntered) {
            Verdict::NotProven
        } else {
            Verdict::None
        },
        why,
        margin: f64::NAN,
        change: f64::NAN,
        probability: f64::NAN,
    };
    if given.value.is_nan() {
        return none(None);
    }
    if low.is_nan() && high.is_nan() {
        return none(Some(Why::LimitNotEntered));
    }
    let low = if low.is_nan() { f64::NEG_INFINITY } else { low };
    let high = if high.is_nan() { f64::INFINITY } else { high };
    let (value, u) = (given.value, given.u);
    let inside = (value - u - low).min(high - value - u);
    let outside = (value - u - high).max(low - value - u);
    let (verdict, margin) = if inside >= 0.0 && !only_beyond {
        (Verdict::Within, inside)
    } else if outside > 0.0 {
        (Verdict::Beyond, -outside)
    } else {
        (Verdict::NotProven, f64::NAN)
    };
    Judged {
        verdict,
        why: None,
        margin,
        change: if inside >= 0.0 || only_beyond {
            f64::NAN
        } else {
            settling(given, low, high)
        },
        probability: if u > 0.0 {
            below(high, value, u) - below(low, value, u)
        } else {
            f64::from(u8::from(inside >= 0.0))
        },
    }
}

/// The smallest change that would prove it. What a tape tells hardly grows in uncertainty; what a
/// formula gives grows with its value, in proportion at worst.
fn settling(given: &Given, low: f64, high: f64) -> f64 {
    let (value, u) = (given.value, given.u);
    let share = (u / value).abs();
    let (up, down) = match given.unit {
        Unit::Mm => (0.005, 0.0),
        Unit::M | Unit::Celsius | Unit::V => (share, 0.0),
        // What is to spare lies about zero: its U goes with what it is the difference of.
        Unit::A => (0.06, 0.0),
        Unit::H => (0.3, 0.0),
        // By a watch: it tells a longer time no worse.
        Unit::Min => (0.0, 0.0),
        // 2/√3 of a tenth, to which a heater's heat is told.
        Unit::W => (0.12, 0.0),
        _ => (share, share),
    };
    let u_at = |after: f64| u + (after - value) * if after > value { up } else { down };
    let after = if value - u < low {
        (low + u - up * value) / (1.0 - up)
    } else {
        (high - u + down * value) / (1.0 + down)
    };
    // A thousandth more, so that rounding does not undo it.
    let change = (after - value) * 1.001;
    let fits = value + change - u_at(after) >= low && value + change + u_at(after) <= high;
    if fits { change } else { f64::NAN }
}

/// Probability that a normal about `value` with U = 2 σ lies below `limit`.
fn below(limit: f64, value: f64, u: f64) -> f64 {
    if limit.is_infinite() {
        return if value <= limit { 1.0 } else { 0.0 };
    }
    let z = (2.0 * (value - limit) / u) as f32;
    0.5 * f64::from(libm::erfcf(z * core::f32::consts::FRAC_1_SQRT_2))
}
