//! Time to get warm.

use super::{NONE, Named, near, refusal, result, value, work};
use plumbmark::plan::Sheet;
use plumbmark::plan::demand::warm_up::warm_s;
use plumbmark::plan::kind::Problem;
use proptest::prelude::*;

const SHEET: Sheet = Sheet::WarmUp;
const COLD: [Named; 6] = [
    ("power_w", 4000.0),
    ("loss_w", 1500.0),
    ("inside_celsius", 20.0),
    ("outside_celsius", -10.0),
    ("start_celsius", -10.0),
    ("heat_kj_per_k", 200.0),
];

#[test]
fn an_exponential_by_hand() {
    // H = 50 W/K, end = 70 °C: 200 kJ/K / 50 W/K · ln(80/50) = 1880 s.
    near(
        warm_s(200e3, 50.0, 70.0, -10.0, 20.0),
        4000.0 * 1.6f64.ln(),
        1e-12,
    );
    let worked = work(SHEET, &COLD, &[]);
    near(value(SHEET, &worked, "beyond_wanted_k"), 50.0, 1e-12);
    near(value(SHEET, &worked, "warm_min"), 31.333, 1e-4);
    assert!(result(SHEET, &worked, "warm_min").u.is_finite());
}

#[test]
fn without_a_loss_it_is_mass_times_heat() {
    // Nearly nothing lost: C·ΔT/P = 200e3 · 30 / 4000 = 1500 s.
    let mut tight = COLD;
    tight[1].1 = 10.0;
    near(
        value(SHEET, &work(SHEET, &tight, &[]), "warm_min"),
        25.0,
        2e-3,
    );
}

#[test]
fn never_is_no_time_and_nearly_never_has_no_bound() {
    let mut weak = COLD;
    weak[0].1 = 1500.0;
    let worked = work(SHEET, &weak, &[]);
    assert!(value(SHEET, &worked, "warm_min").is_nan());
    assert!(value(SHEET, &worked, "beyond_wanted_k") <= 0.0);
    weak[0].1 = 1700.0;
    let worked = work(SHEET, &weak, &[]);
    assert!(value(SHEET, &worked, "warm_min") > 0.0);
    assert_eq!(result(SHEET, &worked, "warm_min").u, f64::INFINITY);
}

#[test]
fn refusals_name_the_field() {
    let with = |place: usize, value: f64| {
        let mut named = COLD;
        named[place].1 = value;
        refusal(SHEET, &named, &[])
    };
    assert_eq!(
        with(3, 20.0),
        (0, "outside_celsius", Problem::Contradiction)
    );
    assert_eq!(with(4, 25.0), (0, "start_celsius", Problem::Contradiction));
    assert_eq!(with(5, NONE), (0, "heat_kj_per_k", Problem::Missing));
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// Energy in is energy kept and energy lost: warming by the clock alone takes no less.
    #[test]
    fn it_takes_at_least_what_is_stored(
        power in 500.0..20_000.0f64, loss in 20.0..5000.0f64, heat in 5.0..2000.0f64,
        outside in -40.0..10.0f64,
    ) {
        let mut named = COLD;
        named[0].1 = power;
        named[1].1 = loss;
        named[3].1 = outside;
        named[4].1 = outside;
        named[5].1 = heat;
        let minutes = value(SHEET, &work(SHEET, &named, &[]), "warm_min");
        let stored = 1000.0 * heat * (20.0 - outside) / power / 60.0;
        prop_assert!(minutes.is_nan() == (power <= loss) || (power - loss).abs() < 1e-6);
        prop_assert!(minutes.is_nan() || minutes >= stored * (1.0 - 1e-9));
    }
}
