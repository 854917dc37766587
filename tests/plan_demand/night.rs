//! What a night costs.

use super::{Named, near, result, value, work};
use plumbmark::plan::Sheet;

const SHEET: Sheet = Sheet::Night;
const NIGHT: [Named; 8] = [
    ("hours_h", 10.0),
    ("loss_w", 2000.0),
    ("fuel", 0.0),
    ("efficiency", 0.8),
    ("energy_kwh_per_l", 9.94),
    ("electrical_w", 18.0),
    ("battery_v", 12.0),
    ("idle_l_per_h", 2.5),
];

#[test]
fn fuel_charge_and_idling() {
    let worked = work(SHEET, &NIGHT, &[]);
    // 840 kg/m³ of 42.6 MJ/kg is 9.940 kWh/L; efficiency 0.8: 2 kW take 0.2515 L/h.
    near(value(SHEET, &worked, "burn_l_per_h"), 0.2515, 2e-4);
    near(value(SHEET, &worked, "night_l"), 2.515, 2e-4);
    near(value(SHEET, &worked, "charge_ah"), 15.0, 1e-12);
    near(value(SHEET, &worked, "idle_l"), 25.0, 1e-12);
    near(value(SHEET, &worked, "saved_l"), 22.485, 1e-4);
}

#[test]
fn energy_not_told_is_that_of_the_fuel() {
    // UK conversion factors 2025: 9.905 kWh/L; Directive 2009/28/EC: petrol 32 MJ/L, 8.89 kWh/L.
    for (fuel, energy) in [(0.0, 9.905), (1.0, 32.0 / 3.6)] {
        let mut named = NIGHT;
        named[2].1 = fuel;
        named[4].1 = f64::NAN;
        let burnt = result(SHEET, &work(SHEET, &named, &[]), "night_l");
        let want = 20.0 / 0.8 / energy;
        near(burnt.value, want, 6e-3);
        assert!((burnt.value - want).abs() < burnt.u);
    }
}

#[test]
fn what_is_not_told_has_no_result() {
    let worked = work(SHEET, &NIGHT[..5], &[]);
    for name in ["charge_ah", "idle_l", "saved_l"] {
        assert!(value(SHEET, &worked, name).is_nan(), "{name}");
    }
    assert!(value(SHEET, &worked, "night_l") > 0.0);
}
