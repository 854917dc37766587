//! Formulas by themselves.

use super::{checks, near, work};
use plumbmark::plan::Sheet;
use plumbmark::plan::fuel::bubble::{bretherton_number, critical_bore_mm};
use plumbmark::plan::fuel::burn::burn_l_per_h;
use plumbmark::plan::fuel::fuel_pressure::{
    column_pa, laminar_loss_pa, reynolds, stroke_flow_l_per_h,
};
use plumbmark::plan::fuel::liquid::{Fuel, density_kg_per_m3, steepness, viscosity_mm2_per_s};
use plumbmark::plan::fuel::prime::{fill_s, line_volume_ml};
use plumbmark::plan::fuel::tank::{box_l, lying_l, upright_l};
use proptest::prelude::*;

#[test]
fn bubbles_by_bretherton() {
    // Bretherton, J. Fluid Mech. 10 (1961) 166: a long bubble does not rise below 0.842. Numbers
    // for 840 kg/m³ and 27 mN/m (from memory), computed by hand.
    for (bore, number) in [(2.0, 0.305), (3.0, 0.686), (4.0, 1.220), (6.0, 2.746)] {
        near(bretherton_number(840.0, 0.027, bore), number, 2e-3);
    }
    near(critical_bore_mm(840.0, 0.027), 3.32, 2e-3);
    // The sheet: within its span, and nothing in it has a verdict.
    let worked = work(Sheet::Bubble, &[("fuel", 0.0), ("bore_mm", 2.0)]);
    let critical = worked.result(1).unwrap();
    assert!((critical.value - 3.32).abs() < critical.u);
    assert_eq!(checks(&worked).count(), 0);
}

#[test]
fn losses_by_hagen_and_poiseuille() {
    // fluids 1.3.1, friction_factor 64/Re, 840 kg/m³, 2 mm, 0.6 L/h, a metre; then 5 m at 0.5 L/h.
    for (viscosity, pa) in [(2.0, 713.01), (4.5, 1604.28), (10.0, 3565.07)] {
        near(laminar_loss_pa(viscosity, 840.0, 0.6, 2.0, 1.0), pa, 1e-5);
    }
    near(laminar_loss_pa(4.5, 840.0, 0.5, 2.0, 5.0), 6684.5, 1e-5);
    near(column_pa(840.0, 1000.0), 8237.6, 1e-5);
    // Re = v·d/ν by definition: 0.6 L/h through 2 mm is 0.053052 m/s.
    near(reynolds(4.5, 0.6, 2.0), 0.053_052 * 0.002 / 4.5e-6, 1e-4);
    assert_eq!(stroke_flow_l_per_h(0.03, 40.0), 2.7);
}

#[test]
fn volumes_and_fill_times() {
    // π/4·d²: mL/m, computed; 0.022 mL at 4 Hz is an example.
    for (bore, ml) in [
        (1.5, 1.7671),
        (2.0, std::f64::consts::PI),
        (3.0, 7.0686),
        (4.0, 12.5664),
        (5.0, 19.6350),
    ] {
        near(line_volume_ml(bore, 1.0), ml, 1e-4);
    }
    near(fill_s(line_volume_ml(2.0, 1.0), 0.022, 4.0), 35.70, 1e-4);
}

#[test]
fn consumption_by_energy() {
    // 840 kg/m³ of 42.6 MJ/kg: 9.940 kWh/L; efficiency 0.8.
    for (watt, l_per_h) in [(2e3, 0.2515), (4e3, 0.5030), (5e3, 0.6288), (8e3, 1.0060)] {
        near(burn_l_per_h(watt, 0.8, 9.94), l_per_h, 2e-4);
    }
    // UK conversion factors 2025: 9.905 kWh/L lies in the span.
    let energy = Fuel::Diesel.properties().energy_kwh_per_l;
    assert!((energy.middle - 9.905).abs() < energy.half);
    let worked = work(
        Sheet::Burn,
        &[
            ("fuel", 0.0),
            ("output_w", 3000.0),
            ("efficiency", 0.8),
            ("reach_l", 30.0),
        ],
    );
    let (burn, lasts) = (worked.result(0).unwrap(), worked.result(1).unwrap());
    near(burn.value * lasts.value, 30.0, 1e-12);
    assert!(burn.u > 0.1 * burn.value && burn.u < 0.2 * burn.value);
}

#[test]
fn viscosity_of_known_liquids() {
    // CoolProp 8.0.0, n-dodecane at 101 325 Pa: 1.444214 mm²/s at 40 °C, 1.986198 at 20 °C,
    // 2.969025 at 0 °C. Two of them lead to the third.
    let b = steepness(1.444_214, 1.986_198, 20.0);
    near(viscosity_mm2_per_s(1.444_214, b, 20.0), 1.986_198, 1e-12);
    near(viscosity_mm2_per_s(1.444_214, b, 0.0), 2.969_025, 5e-3);
    let diesel = Fuel::Diesel.properties().steepness;
    assert!((b - diesel.middle).abs() < diesel.half);
    // n-Heptane the same way: 0.500365, 0.602666, 0.746326; the span for petrol holds it.
    let petrol = Fuel::Petrol.properties();
    for (celsius, known) in [(20.0, 0.602_666), (0.0, 0.746_326)] {
        let at = |spread| viscosity_mm2_per_s(0.500_365, petrol.steepness.at(spread), celsius);
        assert!(at(-1.0) < known && known < at(1.0), "{celsius}");
    }
}

#[test]
fn density_falls_with_warmth() {
    // ASTM D1250 about 15 °C (constants from memory): exp(−a·t·(1 + 0.8·a·t)),
    // a = 594.5418/ρ² up to 839 kg/m³, 346.4228/ρ² + 0.4388/ρ for petrol.
    for celsius in [-30.0, 0.0, 15.0, 40.0] {
        let table = |a: f64| {
            let t: f64 = celsius - 15.0;
            (-a * t * (1.0 + 0.8 * a * t)).exp()
        };
        let diesel = density_kg_per_m3(Fuel::Diesel, 830.0, celsius);
        near(diesel, 830.0 * table(594.5418 / 830f64.powi(2)), 2e-3);
        let petrol = density_kg_per_m3(Fuel::Petrol, 745.0, celsius);
        near(
            petrol,
            745.0 * table(346.4228 / 745f64.powi(2) + 0.4388 / 745.0),
            2e-3,
        );
    }
}

#[test]
fn tanks_by_known_shapes() {
    // Half and whole of a cylinder, and the segment r²·(acos(1−h/r) − …) by the handbook.
    let (d, l) = (600.0, 900.0);
    near(lying_l(d, l, d), upright_l(d, l), 1e-12);
    near(lying_l(d, l, 300.0), 0.5 * upright_l(d, l), 2e-9);
    for level in [0.5, 25.0, 150.0, 299.0, 301.0, 580.0, 599.9] {
        let r: f64 = 300.0;
        let h: f64 = level;
        let segment = r * r * (1.0 - h / r).acos() - (r - h) * (2.0 * r * h - h * h).sqrt();
        near(lying_l(d, l, level), segment * l * 1e-6, 1e-8);
    }
    near(box_l(500.0, 400.0, 25.0), 5.0, 1e-12);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_fuller_tank_holds_more(level in 0.0..500.0f64, more in 0.0..50.0f64) {
        let (d, l) = (550.0, 700.0);
        prop_assert!(lying_l(d, l, level + more) >= lying_l(d, l, level));
        prop_assert!(lying_l(d, l, level + more) <= upright_l(d, l) * (1.0 + 1e-12));
    }
}
