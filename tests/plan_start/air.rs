//! Units, the mixed box and the published thresholds.

use crate::near;
use plumbmark::plan::start::co_air::{
    THRESHOLDS, THRESHOLDS_PPM, box_ppm, leak_l_per_h, mg_per_m3, reached, test_min,
};

#[test]
fn a_ppm_in_milligrams() {
    // 1.14489 mg/m³ at 25 °C and 101 325 Pa: 28.010 g/mol and 8.314462618 J/(mol·K).
    near(mg_per_m3(1.0), 1.14489, 1e-5);
    near(mg_per_m3(35.0), 40.0711, 1e-5);
}

#[test]
fn a_mixed_box_fills_towards_its_steady_state() {
    // V 10 m³, n 1/h, G 10 L/h: 1000 ppm in the end, 393.47 after half an hour.
    near(box_ppm(10.0, 1.0, 10.0, 1e6), 1000.0, 1e-12);
    near(box_ppm(10.0, 1.0, 10.0, 0.5), 393.47, 1e-5);
    // Three time constants: 1 − e⁻³ = 0.950213.
    near(
        box_ppm(10.0, 0.4, 25.0, test_min(0.4) / 60.0),
        950.213,
        1e-6,
    );
    // In no time, and in a space that hardly changes its air, what flows in is all there is.
    near(
        box_ppm(10.0, 0.02, 20.0, 0.01),
        1000.0 * 10.0 * 0.01 / 20.0,
        1e-3,
    );
    near(leak_l_per_h(393.47, 1.0, 10.0, 0.5), 10.0, 1e-5);
    assert_eq!(leak_l_per_h(5.0, 1.0, 10.0, 0.0), f64::INFINITY);
    assert_eq!(leak_l_per_h(5.0, 1.0, 10.0, -1.0), f64::INFINITY);
}

#[test]
fn three_over_n_hours() {
    assert_eq!(test_min(1.0), 180.0);
    assert_eq!(test_min(6.0), 30.0);
}

#[test]
fn thresholds_are_as_published() {
    // NIOSH REL 35 ppm and ceiling 200 ppm; OSHA PEL 50 ppm; WHO Europe 2000: 100, 60, 30 and
    // 10 mg/m³ over 15 min, 30 min, 1 h and 8 h; values from memory: WHO 2010 35 mg/m³ over 1 h,
    // WHO 2021 4 mg/m³ over 24 h.
    let want = [
        (3.494, 1440, "WHO 2021"),
        (8.734, 480, "WHO Europe 2000"),
        (26.20, 60, "WHO Europe 2000"),
        (30.57, 60, "WHO 2010"),
        (35.0, 480, "NIOSH REL"),
        (50.0, 480, "OSHA PEL"),
        (52.41, 30, "WHO Europe 2000"),
        (87.34, 15, "WHO Europe 2000"),
        (200.0, 0, "NIOSH ceiling"),
    ];
    assert_eq!(THRESHOLDS_PPM.len(), want.len());
    for ((ppm, told), (want, over_min, source)) in THRESHOLDS_PPM.iter().zip(THRESHOLDS).zip(want) {
        near(*ppm, want, 2e-4);
        assert_eq!(told.over_min, over_min);
        assert!(told.source.starts_with(source), "{}", told.source);
    }
    assert!(THRESHOLDS_PPM.is_sorted());
    assert_eq!(
        [0.0, 34.9, 35.0, 49.0, 199.9, 1e4].map(reached),
        [0, 4, 5, 5, 8, 9]
    );
    assert_eq!(reached(f64::NAN), 0);
}
