//! The fuel line against values from outside: handbook formulas, published criterion, libraries.

use plumbmark::decision::{Verdict, Why};
use plumbmark::plan::Sheet;
use plumbmark::plan::bubble::{bretherton_number, critical_bore_mm};
use plumbmark::plan::burn::burn_l_per_h;
use plumbmark::plan::fuel::{Fuel, density_kg_per_m3, steepness, viscosity_mm2_per_s};
use plumbmark::plan::fuel_pressure::{column_pa, laminar_loss_pa, reynolds, stroke_flow_l_per_h};
use plumbmark::plan::kind::{Problem, Refusal};
use plumbmark::plan::prime::{fill_s, line_volume_ml};
use plumbmark::plan::sheets::Checked;
use plumbmark::plan::tank::{box_l, lying_l, upright_l};
use plumbmark::plan::work::Worked;
use proptest::prelude::*;

const NONE: f64 = f64::NAN;

/// Numbers of a sheet by their names; spreads in the middle, the rest empty.
fn told(sheet: Sheet, named: &[(&str, f64)]) -> Vec<f64> {
    let names = sheet.names().inputs;
    for (name, _) in named {
        assert!(names.contains(name), "{name}");
    }
    let value = |name: &&str| {
        let given = named.iter().rev().find(|(n, _)| n == name);
        given.map_or(if name.ends_with("_spread") { 0.0 } else { NONE }, |g| g.1)
    };
    names.iter().map(value).collect()
}

fn work(sheet: Sheet, named: &[(&str, f64)]) -> Worked {
    sheet.work(&told(sheet, named), &[]).unwrap()
}

fn refusal(sheet: Sheet, named: &[(&str, f64)]) -> (&'static str, Problem) {
    let Refusal { place, problem } = sheet.work(&told(sheet, named), &[]).unwrap_err();
    (sheet.names().inputs[place], problem)
}

fn value(sheet: Sheet, worked: &Worked, name: &str) -> f64 {
    let place = sheet.names().outputs.iter().position(|n| *n == name);
    worked.result(place.unwrap()).unwrap().value
}

/// The checks of a sheet in order.
fn checks(worked: &Worked) -> impl Iterator<Item = Checked> + '_ {
    (0..).map_while(|place| worked.check(place))
}

/// The verdict of the check of a result.
fn verdict(sheet: Sheet, worked: &Worked, name: &str, low: f64, high: f64) -> Verdict {
    let names = sheet.names().outputs;
    let check = checks(worked).find(|c| names[c.output] == name).unwrap();
    worked.judged(&check, low, high).unwrap().verdict
}

fn near(got: f64, want: f64, share: f64) {
    assert!(
        (got - want).abs() <= share * want.abs(),
        "{got}, not {want}"
    );
}

/// An invented line, warm diesel.
const LINE: &[(&str, f64)] = &[
    ("fuel", 0.0),
    ("fuel_celsius", 10.0),
    ("cloud_point_celsius", -3.0),
    ("stroke_ml", 0.03),
    ("stroke_ms", 40.0),
    ("suction_bore_mm", 2.0),
    ("suction_length_m", 1.4),
    ("suction_lift_mm", 350.0),
    ("pressure_bore_mm", 2.0),
    ("pressure_length_m", 3.1),
    ("pressure_lift_mm", 420.0),
];

fn line(with: &[(&'static str, f64)]) -> Vec<(&'static str, f64)> {
    LINE.iter().chain(with).copied().collect()
}

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
        (2.0, 3.1416),
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

#[test]
fn absurd_numbers_are_refused() {
    use plumbmark::plan::kind::Slip;
    let run = |named: &[(&str, f64)]| refusal(Sheet::FuelRun, named);
    assert_eq!(
        run(&[("suction_length_m", 40_000.0)]).1,
        Problem::OutOfRange
    );
    assert_eq!(
        run(&[("suction_length_m", 1400.0)]).1,
        Problem::OtherUnit(Slip::Millimetres)
    );
    assert_eq!(
        run(&[("suction_bore_mm", 0.03)]).1,
        Problem::OtherUnit(Slip::Inches)
    );
    assert_eq!(run(&[("suction_lift_mm", 9000.0)]).1, Problem::OutOfRange);
    assert_eq!(
        refusal(Sheet::FuelPressure, &line(&[("stroke_ml", 22.0)])).1,
        Problem::OutOfRange
    );
    assert_eq!(
        refusal(Sheet::FuelPressure, &line(&[("fuel", 2.0)])),
        ("fuel", Problem::OutOfRange)
    );
}

#[test]
fn a_bore_is_what_the_manual_lists() {
    let sheet = Sheet::FuelRun;
    let answer = |bore| {
        let worked = work(sheet, &[("suction_bore_mm", bore)]);
        verdict(sheet, &worked, "suction_bore_mm", 2.0, 2.0)
    };
    assert_eq!(answer(2.0), Verdict::Within);
    // A narrower bore holds bubbles even better, and is not listed.
    assert_eq!(answer(1.5), Verdict::Beyond);
    assert_eq!(answer(3.0), Verdict::Beyond);
    // A gauged bore has a half-width, and is then not proven to be the listed one.
    let gauged = sheet
        .work(&told(sheet, &[("suction_bore_mm", 2.0)]), &[0.1])
        .unwrap();
    assert_eq!(
        verdict(sheet, &gauged, "suction_bore_mm", 2.0, 2.0),
        Verdict::NotProven
    );
    // Nothing entered, nothing judged.
    let empty = work(sheet, &[("suction_bore_mm", 2.0)]);
    let check = empty.check(0).unwrap();
    let judged = empty.judged(&check, NONE, NONE).unwrap();
    assert_eq!(judged.why, Some(Why::LimitNotEntered));
    assert_eq!(
        verdict(sheet, &empty, "suction_length_m", NONE, 2.0),
        Verdict::None
    );
}

#[test]
fn priming_is_never_proven_short_enough() {
    let sheet = Sheet::Prime;
    let long = &[
        ("suction_bore_mm", 2.0),
        ("suction_length_m", 1.4),
        ("pressure_bore_mm", 2.0),
        ("pressure_length_m", 3.1),
        ("stroke_ml", 0.03),
        ("stroke_hz", 2.0),
        ("start_s", 90.0),
        ("starts_made", 2.0),
    ];
    let worked = work(sheet, long);
    // π/4·2²·4.5 m = 14.137 mL at 0.06 mL/s.
    near(value(sheet, &worked, "prime_s"), 235.62, 1e-4);
    near(value(sheet, &worked, "starts_worth"), 2.618, 1e-3);
    let of = |name, high| verdict(sheet, &worked, name, NONE, high);
    assert_eq!(of("starts_worth", 20.0), Verdict::NotProven);
    assert_eq!(of("starts_worth", 2.0), Verdict::Beyond);
    // Starts made are counted: the manual's number is the last that may be made.
    assert_eq!(of("starts_made", 2.0), Verdict::Within);
    assert_eq!(of("starts_made", 1.0), Verdict::Beyond);
}

#[test]
fn pipes_in_a_tank() {
    let sheet = Sheet::Tank;
    let tank = &[
        ("shape", 0.0),
        ("depth_mm", 400.0),
        ("length_mm", 800.0),
        ("width_mm", 500.0),
        ("standpipe_mm", 360.0),
        ("second_mm", 380.0),
        ("level_mm", 200.0),
    ];
    let with = |more: &[(&'static str, f64)]| [tank, more].concat();
    let worked = work(sheet, tank);
    let of = |name| value(sheet, &worked, name);
    assert_eq!((of("gap_mm"), of("second_gap_mm")), (40.0, 20.0));
    near(of("left_l"), 16.0, 1e-12);
    near(of("heater_l"), 64.0, 1e-12);
    // The engine's pick-up still reaches 20 mm of 0.4 m².
    near(of("second_l"), 8.0, 1e-12);
    // 30 mm is asked for: one pipe proven, the other not kept.
    assert_eq!(
        verdict(sheet, &worked, "gap_mm", 30.0, NONE),
        Verdict::Within
    );
    assert_eq!(
        verdict(sheet, &worked, "second_gap_mm", 30.0, NONE),
        Verdict::Beyond
    );
    assert_eq!(
        verdict(sheet, &worked, "second_l", 5.0, NONE),
        Verdict::Within
    );
    // A slanted cut draws air somewhere on its height.
    let cut = work(sheet, &with(&[("cut_mm", 10.0)]));
    near(value(sheet, &cut, "left_l"), 18.0, 1e-12);
    assert!(cut.result(3).unwrap().u > worked.result(3).unwrap().u);
    // The heater's pipe lower than the engine's: below zero.
    let lower = work(sheet, &with(&[("second_mm", 300.0)]));
    assert_eq!(
        verdict(sheet, &lower, "second_l", 0.0, NONE),
        Verdict::Beyond
    );
    for (with_what, place, problem) in [
        (
            ("standpipe_mm", 401.0),
            "standpipe_mm",
            Problem::Contradiction,
        ),
        (("second_mm", 401.0), "second_mm", Problem::Contradiction),
        (("level_mm", 401.0), "level_mm", Problem::Contradiction),
        (("length_mm", NONE), "length_mm", Problem::Missing),
        (("width_mm", NONE), "width_mm", Problem::Missing),
    ] {
        assert_eq!(refusal(sheet, &with(&[with_what])), (place, problem));
    }
    // An upright cylinder has no length, a lying one no width.
    work(sheet, &with(&[("shape", 2.0), ("length_mm", NONE)]));
    work(sheet, &with(&[("shape", 1.0), ("width_mm", NONE)]));
}

#[test]
fn doing_what_is_told_settles_it() {
    let cases = [
        (Sheet::FuelRun, "suction_length_m", 2.4, NONE, 1.0),
        (Sheet::FuelRun, "suction_lift_mm", 900.0, NONE, 500.0),
        (Sheet::FuelRun, "pressure_length_m", 6.05, NONE, 6.0),
        (Sheet::FuelRun, "fuel_to_hot_mm", 20.0, 60.0, NONE),
        (Sheet::FuelRun, "pump_air_celsius", 60.0, NONE, 45.0),
    ];
    for (sheet, name, first, low, high) in cases {
        let judged = |x: f64| {
            let worked = work(sheet, &[(name, x)]);
            let names = sheet.names().outputs;
            let check = checks(&worked).find(|c| names[c.output] == name).unwrap();
            worked.judged(&check, low, high).unwrap()
        };
        let before = judged(first);
        assert_ne!(before.verdict, Verdict::Within, "{name}");
        let after = judged(first + before.change).verdict;
        assert_eq!(after, Verdict::Within, "{name}");
    }
}

proptest! {
    #[test]
    fn colder_longer_narrower_costs_more(
        celsius in 0.0..40.0f64, m in 0.2..6.0f64, bore in 1.5..5.0f64, lift in -1000.0..1000.0f64,
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

    #[test]
    fn a_fuller_tank_holds_more(level in 0.0..500.0f64, more in 0.0..50.0f64) {
        let (d, l) = (550.0, 700.0);
        prop_assert!(lying_l(d, l, level + more) >= lying_l(d, l, level));
        prop_assert!(lying_l(d, l, level + more) <= upright_l(d, l) * (1.0 + 1e-12));
    }

    #[test]
    fn no_number_panics(
        x in prop::collection::vec(prop_oneof![
            any::<f64>(), -10.0..500.0f64, Just(f64::NAN), Just(0.0)
        ], 20),
    ) {
        for sheet in Sheet::ALL {
            let n = sheet.form().inputs.len();
            if let Ok(worked) = sheet.work(x.get(..n).unwrap_or(&x), &x) {
                for check in checks(&worked) {
                    prop_assert!(worked.judged(&check, NONE, 10.0).is_some());
                }
            }
        }
    }
}
