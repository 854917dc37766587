//! Pressure at the pump: the sheet, and where its formulas end.

use super::{LINE, NONE, line, near, refusal, value, verdict, work};
use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::fuel::fuel_pressure::{column_pa, laminar_loss_pa};
use plumbmark::plan::fuel::liquid::{Fuel, density_kg_per_m3, viscosity_mm2_per_s};
use plumbmark::plan::kind::Problem;
use proptest::prelude::*;

#[test]
fn the_sheet_is_its_formulas() {
    let sheet = Sheet::FuelPressure;
    let worked = work(
        sheet,
        &line(&[
            ("viscosity_40_mm2_per_s", 3.1),
            ("density_15_kg_per_m3", 835.0),
            ("filter_pa", 200.0),
        ]),
    );
    let of = |name| value(sheet, &worked, name);
    let density = density_kg_per_m3(Fuel::Diesel, 835.0, 10.0);
    let viscosity = viscosity_mm2_per_s(3.1, 3.9, 10.0);
    near(of("viscosity_mm2_per_s"), viscosity, 1e-12);
    near(of("peak_l_per_h"), 2.7, 1e-12);
    let loss = |m| laminar_loss_pa(viscosity, density, 2.7, 2.0, m);
    near(
        of("suction_pa"),
        column_pa(density, 350.0) + loss(1.4) + 200.0,
        1e-12,
    );
    near(
        of("pump_pressure_pa"),
        column_pa(density, 420.0) + loss(3.1),
        1e-12,
    );
    assert_eq!(of("above_cloud_kelvin"), 13.0);
    // A pulse of 1 ± 0.5 alone is ± 58 % of the loss.
    let place = sheet
        .names()
        .outputs
        .iter()
        .position(|n| *n == "suction_loss_pa");
    assert!(worked.result(place.unwrap()).unwrap().u > 0.577 * of("suction_loss_pa"));
}

#[test]
fn wax_has_no_viscosity() {
    let sheet = Sheet::FuelPressure;
    let cold = refusal(sheet, &line(&[("fuel_celsius", -3.1)]));
    assert_eq!(cold, ("fuel_celsius", Problem::BeyondFormula));
    let unknown = refusal(sheet, &line(&[("cloud_point_celsius", NONE)]));
    assert_eq!(unknown, ("cloud_point_celsius", Problem::Missing));
    // So near the cloud point that it may be below: no pressure is bounded, none within.
    let near_cloud = work(sheet, &line(&[("fuel_celsius", -1.0)]));
    assert_eq!(
        verdict(sheet, &near_cloud, "suction_pa", NONE, 99_000.0),
        Verdict::NotProven
    );
    assert_eq!(
        verdict(sheet, &near_cloud, "suction_pa", NONE, 1.0),
        Verdict::NotProven
    );
    let clear = work(sheet, LINE);
    assert_eq!(
        verdict(sheet, &clear, "suction_pa", NONE, 99_000.0),
        Verdict::Within
    );
    assert_eq!(
        verdict(sheet, &clear, "suction_pa", NONE, 1.0),
        Verdict::Beyond
    );
    // Petrol has no cloud point and asks for none.
    let petrol = line(&[
        ("fuel", 1.0),
        ("fuel_celsius", -20.0),
        ("cloud_point_celsius", NONE),
    ]);
    let worked = work(sheet, &petrol);
    assert!(value(sheet, &worked, "above_cloud_kelvin").is_nan());
    assert_eq!(
        verdict(sheet, &worked, "suction_pa", NONE, 99_000.0),
        Verdict::Within
    );
}

#[test]
fn flow_that_is_no_longer_laminar() {
    let sheet = Sheet::FuelPressure;
    let fast = [("fuel", 1.0), ("stroke_ml", 0.3), ("stroke_ms", 5.0)];
    assert_eq!(
        refusal(sheet, &line(&fast)),
        ("suction_bore_mm", Problem::BeyondFormula)
    );
    let wide = line(&[
        fast[0],
        fast[1],
        fast[2],
        ("suction_bore_mm", 12.0),
        ("stroke_ms", 40.0),
    ]);
    assert_eq!(
        refusal(sheet, &wide),
        ("pressure_bore_mm", Problem::BeyondFormula)
    );
    // Near 2000 it may be turbulent, and nothing is within.
    let edge = work(
        sheet,
        &line(&[("fuel", 1.0), ("stroke_ml", 0.1), ("stroke_ms", 50.0)]),
    );
    let re = value(sheet, &edge, "suction_reynolds");
    assert!(re > 1500.0 && re < 2000.0, "{re}");
    assert_eq!(
        verdict(sheet, &edge, "suction_pa", NONE, 99_000.0),
        Verdict::NotProven
    );
}

#[test]
fn a_second_viscosity_needs_its_fellow() {
    let sheet = Sheet::FuelPressure;
    let other = ("other_viscosity_mm2_per_s", 6.0);
    let at = ("other_celsius", 0.0);
    let first = ("viscosity_40_mm2_per_s", 2.6);
    let asked = |with: &[(&'static str, f64)]| refusal(sheet, &line(with));
    assert_eq!(asked(&[other, at]), (first.0, Problem::Missing));
    assert_eq!(asked(&[first, at]), (other.0, Problem::Missing));
    assert_eq!(asked(&[first, other]), (at.0, Problem::Missing));
    let rising = [first, (other.0, 2.0), at];
    assert_eq!(asked(&rising), (other.0, Problem::Contradiction));
    let same = [first, other, (at.0, 38.0)];
    assert_eq!(asked(&same), (at.0, Problem::Contradiction));
    let fine = work(sheet, &line(&[first, other, at, ("fuel_celsius", 0.0)]));
    near(value(sheet, &fine, "viscosity_mm2_per_s"), 6.0, 1e-12);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn colder_longer_narrower_costs_more(
        celsius in 0.0..40.0f64, m in 0.2..6.0f64, bore in 1.5..5.0f64, lift in 1.0..1000.0f64,
    ) {
        let sheet = Sheet::FuelPressure;
        let suction = |celsius, m, bore, lift| {
            let named = line(&[
                ("fuel_celsius", celsius), ("suction_length_m", m),
                ("suction_bore_mm", bore), ("suction_lift_mm", lift),
            ]);
            value(sheet, &work(sheet, &named), "suction_loss_pa")
        };
        let base = suction(celsius, m, bore, lift);
        prop_assert!(suction(celsius - 2.0, m, bore, lift) > base);
        prop_assert!(suction(celsius, m + 0.1, bore, lift) > base);
        prop_assert!(suction(celsius, m, bore - 0.1, lift) > base);
        prop_assert_eq!(suction(celsius, m, bore, lift + 50.0), base);
    }
}
