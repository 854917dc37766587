//! Conductors by name against standards and handbook tables.

use super::{code, near};
use plumbmark::plan::supply::conductor::{
    COUNT, SPREAD, Series, boat_law_a, gauge_diameter_mm, mohm_per_m, named, warm,
};

/// Ohm per 1000 ft in mΩ/m: the foot is 0.3048 m exactly.
fn per_1000_ft(ohm: f64) -> f64 {
    ohm / 0.3048
}

#[test]
fn sizes_by_iec_60228() {
    // IEC 60228 class 5, Ω/km at 20 °C, plain copper.
    for (mm2, most) in [
        (0.75, 26.0),
        (1.0, 19.5),
        (1.5, 13.3),
        (2.5, 7.98),
        (4.0, 4.95),
        (6.0, 3.30),
        (10.0, 1.91),
        (16.0, 1.21),
    ] {
        let listed = mohm_per_m(code(Series::Area, mm2));
        assert_eq!(listed, most);
        // The spread holds full copper of that area, and the standard's tinned strands (3 % more;
        // value from memory): U of the rectangle is 2/√3 of it.
        let u = 2.0 / 3f64.sqrt() * SPREAD * listed;
        assert!(listed - u <= 17.2414 / mm2, "{mm2}");
        assert!(listed + u >= 1.03 * listed);
    }
}

#[test]
fn gauges_by_the_standard_and_the_handbook() {
    // ASTM B258 with 0.0172414 Ω·mm²/m, mΩ/m; handbook of solid copper, Ω per 1000 ft at 20 °C.
    for (gauge, mohm, handbook) in [
        (18.0, 20.948, Some(6.385)),
        (16.0, 13.174, Some(4.016)),
        (14.0, 8.2855, Some(2.525)),
        (12.0, 5.2108, Some(1.588)),
        (10.0, 3.2771, Some(0.9989)),
        (8.0, 2.0610, Some(0.6282)),
        (6.0, 1.2962, None),
    ] {
        let listed = mohm_per_m(code(Series::Gauge, gauge));
        near(listed, mohm, 5e-5);
        if let Some(ohm) = handbook {
            near(listed, per_1000_ft(ohm), 5e-4);
        }
        // Vehicle cable of the name has up to 12 % less copper (SAE J1128, value from memory).
        assert!(listed * (1.0 + 2.0 / 3f64.sqrt() * SPREAD) > listed / 0.88);
    }
    // Gauge 36 is 0.005 in by definition, 0000 (−3) is 0.46 in.
    near(gauge_diameter_mm(36.0), 0.127, 1e-12);
    near(gauge_diameter_mm(-3.0), 11.684, 1e-9);
}

#[test]
fn each_list_runs_from_thin_to_thick() {
    let all: Vec<_> = (0..COUNT).map(|c| named(c).unwrap()).collect();
    assert_eq!(COUNT, 15);
    assert_eq!(named(COUNT), None);
    for (i, pair) in all.windows(2).enumerate() {
        if pair[0].0 == pair[1].0 {
            assert!(mohm_per_m(i as f64) > mohm_per_m(i as f64 + 1.0), "{i}");
        }
    }
    assert!(mohm_per_m(COUNT as f64).is_nan());
}

#[test]
fn warm_copper_resists_more() {
    // IEC 60028: 0.00393/K; ×1.1572 at 60 °C.
    near(warm(60.0), 1.1572, 1e-12);
    assert_eq!(warm(20.0), 1.0);
}

#[test]
fn boat_law_as_published() {
    // 33 CFR 183.425, table 5, insulation for 105 °C.
    for (gauge, amperes) in [
        (18.0, 20.0),
        (16.0, 25.0),
        (14.0, 35.0),
        (12.0, 45.0),
        (10.0, 60.0),
        (8.0, 80.0),
    ] {
        assert_eq!(boat_law_a(code(Series::Gauge, gauge)), amperes);
    }
    // Not seen for 6, and the law knows no mm².
    assert!(boat_law_a(code(Series::Gauge, 6.0)).is_nan());
    assert!(boat_law_a(code(Series::Area, 2.5)).is_nan());
    assert!(boat_law_a(f64::NAN).is_nan());
}
