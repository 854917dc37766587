//! Air and friction: tables, handbook values, a general library.

use super::*;

#[test]
fn air_is_as_tabulated() {
    // CoolProp 8.0.0, dry air, 101 325 Pa (check-values §3): °C, kg/m³, Pa·s.
    for (celsius, density, viscosity) in [
        (-20.0, 1.39565, 1.62012e-5),
        (0.0, 1.29307, 1.72184e-5),
        (20.0, 1.20458, 1.82057e-5),
        (60.0, 1.05963, 2.00991e-5),
        (80.0, 0.99952, 2.10089e-5),
    ] {
        assert_relative_eq!(
            air::density_kg_per_m3(celsius, air::SEA_LEVEL_PA),
            density,
            max_relative = 1.5e-3
        );
        assert_relative_eq!(air::viscosity_pa_s(celsius), viscosity, max_relative = 3e-3);
    }
    assert_relative_eq!(air::heat_j_per_kg_k(20.0), 1006.14, max_relative = 3e-4);
    // Standard atmosphere (ISO 2533, values from memory): 1 000 m 89 875 Pa, 2 000 m 79 495 Pa.
    assert_relative_eq!(air::pressure_pa(1000.0), 89_874.6, max_relative = 1e-4);
    assert_relative_eq!(air::pressure_pa(2000.0), 79_495.2, max_relative = 1e-4);
}

#[test]
fn two_kilowatts_heat_so_much_air() {
    // P/(ρ·cp·Q) with what air has at 20 °C (check-values §3): 59.41 K and 79.21 K. Heat capacity
    // grows on the way up, so the rise is a little less.
    for (flow, rise) in [(100.0, 59.41), (75.0, 79.21)] {
        let given = work(
            &air_of([flow, 2000.0, 20.0, 0.0, NONE]),
            &[straight(75.0, 1.0)],
        )
        .unwrap();
        assert!(
            (0.997..1.0).contains(&(given[RISE].value / rise)),
            "{}",
            given[RISE].value
        );
        assert_relative_eq!(
            given[OUTLET].value,
            20.0 + given[RISE].value,
            max_relative = 1e-12
        );
    }
}

#[test]
fn friction_is_colebrooks() {
    // fluids 1.3.1 `friction_factor` (check-values §3): Re 31 201.4, ε/D 0.0012.
    assert_relative_eq!(
        friction::colebrook(31_201.4, 0.0012),
        0.026_255_13,
        max_relative = 1e-6
    );
    assert_eq!(friction::darcy(1000.0, 0.0012).factor, 0.064);
    // Haaland and Churchill at the same place differ from it by 1.2 %: within a piece's own spread.
    for other in [0.025_937_41, 0.026_454_99] {
        assert_relative_eq!(
            friction::colebrook(31_201.4, 0.0012),
            other,
            max_relative = 0.013
        );
    }
}

#[test]
fn friction_solves_its_equation_over_the_range() {
    for reynolds in [4e3, 1e4, 3e4, 1e5, 1e6, 1e7] {
        for relative in [0.0, 1e-4, 1e-3, 0.01, 0.05] {
            let f = friction::colebrook(reynolds, relative);
            let inside: f64 = relative / 3.7 + 2.51 / (reynolds * f.sqrt());
            assert_relative_eq!(1.0 / f.sqrt(), -2.0 * inside.log10(), max_relative = 1e-8);
        }
    }
}

#[test]
fn transition_takes_in_both_laws() {
    let mut last = friction::darcy(1999.0, 0.001).factor;
    for reynolds in (2000..4100).step_by(10).map(f64::from) {
        let told = friction::darcy(reynolds, 0.001);
        assert!((told.factor - last).abs() < 0.002, "no jump at {reynolds}");
        last = told.factor;
        if (2001.0..4000.0).contains(&reynolds) {
            let (low, high) = (told.factor - told.half, told.factor + told.half);
            assert!(low <= 64.0 / reynolds + 1e-12);
            assert!(high >= friction::colebrook(reynolds, 0.001) - 1e-12);
        }
    }
}

#[test]
fn straight_pipe_costs_what_the_library_says() {
    // fluids 1.3.1, 20 °C, Pa per metre; roughness 0, 0.09, 0.9, 3.0 mm (check-values §3).
    let roughness = [0.0, 0.09, 0.9, 3.0];
    for (bore, flow, losses) in [
        (60.0, 100.0, [21.409, 25.288, 43.462, 69.893]),
        (75.0, 100.0, [7.387, 8.335, 13.338, 20.794]),
        (75.0, 150.0, [15.146, 17.692, 29.627, 46.591]),
        (90.0, 150.0, [6.343, 7.148, 11.310, 17.366]),
    ] {
        for (rough, expected) in roughness.into_iter().zip(losses) {
            let piece = Piece {
                roughness_mm: rough,
                ..straight(bore, 1.0)
            };
            let mut others = AIR;
            others[0] = flow;
            assert_relative_eq!(loss(&others, &[piece]), expected, max_relative = 3e-3);
        }
    }
}
