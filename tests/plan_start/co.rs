//! The test for carbon monoxide: a rise, or none found; never within.

use crate::{NONE, named, near, u, value, verdict};
use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::start::co::least_told_ppm;
use plumbmark::plan::work::Worked;
use proptest::prelude::*;

const CO: Sheet = Sheet::CoCheck;
const FULL: f64 = 0.0;
const LOW: f64 = 1.0;
const METER: f64 = 0.0;
const ALARM: f64 = 1.0;

/// A meter of ± 3 ppm and 5 %, steps of 1 ppm, in 9 m³ with 2 to 4 air changes an hour.
const OWN: [(&str, f64); 9] = [
    ("device", METER),
    ("meter_ppm", 3.0),
    ("meter_share", 0.05),
    ("step_ppm", 1.0),
    ("outdoor_ppm", 0.0),
    ("volume_m3", 9.0),
    ("air_least_per_h", 2.0),
    ("air_most_per_h", 4.0),
    ("powers", 0.0),
];

/// Readings as (minutes, power, ppm); `but` replaces numbers of the test.
fn work(but: &[(&str, f64)], readings: &[(f64, f64, f64)]) -> Worked {
    let names = CO.names();
    let own: Vec<_> = OWN.iter().chain(but).copied().collect();
    let mut x = named(names.inputs, &own);
    for &(minutes, power, ppm) in readings {
        let row = [("minutes", minutes), ("power", power), ("ppm", ppm)];
        x.extend(named(names.row, &row));
    }
    CO.work(&x, &[]).unwrap()
}

fn rise(worked: &Worked, name: &str) -> Verdict {
    verdict(CO, worked, name, NONE, NONE)
}

/// A whole test without a rise: 3/n of 2 air changes are 90 minutes.
const QUIET: [(f64, f64, f64); 4] = [
    (5.0, FULL, 0.0),
    (60.0, FULL, 1.0),
    (70.0, LOW, 0.0),
    (130.0, LOW, 1.0),
];

#[test]
fn the_best_is_no_rise_found() {
    let worked = work(&[], &QUIET);
    assert_eq!(value(CO, &worked, "rise_ppm"), 1.0);
    // Rectangles of 3 ppm, 5 % of 1 ppm and half a step at both readings that count, of two that
    // are the same (JCGM 100 §4.3.7): 2·√((9 + 0.0025 + 3·0.25)/3).
    let want = 2.0 * ((9.0 + 0.0025 + 3.0 * 0.25) / 3.0f64).sqrt();
    near(u(CO, &worked, "rise_ppm"), want, 1e-9);
    assert_eq!(rise(&worked, "rise_ppm"), Verdict::NotProven);
    assert_eq!(rise(&worked, "part_rise_ppm"), Verdict::None);
    assert_eq!(value(CO, &worked, "needed_min"), 90.0);
    // 130 min against 90: within, for the air change is known to a fifth.
    assert_eq!(value(CO, &worked, "spare_test_min"), 40.0);
    assert_eq!(rise(&worked, "spare_test_min"), Verdict::Within);
    // Half a minute short of the least: told how much longer, though the value lies about zero.
    let until = |minutes: f64| work(&[], &[(5.0, FULL, 0.0), (minutes, LOW, 0.0)]);
    let short = until(89.5);
    let limit = (0..).map_while(|place| short.check(place)).last().unwrap();
    let judged = short.judged(&limit, 0.0, NONE).unwrap();
    assert_eq!(judged.verdict, Verdict::NotProven);
    let longer = until(89.5 + judged.change);
    assert_eq!(rise(&longer, "spare_test_min"), Verdict::Within);
    assert!(judged.change < 0.6 + u(CO, &short, "spare_test_min"));
    // Even a reading below that outdoors clears nothing.
    let worked = work(&[("outdoor_ppm", 40.0)], &QUIET);
    assert_eq!(rise(&worked, "rise_ppm"), Verdict::NotProven);
}

#[test]
fn a_rise_beyond_the_meter_is_beyond_whatever_else_is_missing() {
    let lone = [(2.0, NONE, 6.0)];
    let worked = work(&[], &lone);
    assert_eq!(rise(&worked, "shown_rise_ppm"), Verdict::Beyond);
    let bare: Vec<_> = ["volume_m3", "air_least_per_h", "air_most_per_h", "powers"]
        .map(|name| (name, NONE))
        .to_vec();
    assert_eq!(rise(&work(&bare, &lone), "shown_rise_ppm"), Verdict::Beyond);
    // Less than the meter's error: not proven, and not cleared.
    let worked = work(&[], &[(2.0, FULL, 3.0)]);
    assert_eq!(rise(&worked, "shown_rise_ppm"), Verdict::NotProven);
    // Of a whole test too.
    let mut shown = QUIET;
    shown[1].2 = 3.0;
    let worked = work(&[], &shown);
    assert_eq!(rise(&worked, "rise_ppm"), Verdict::None);
    assert_eq!(rise(&worked, "shown_rise_ppm"), Verdict::NotProven);
    // Only the whole test may say that it looked and found none.
    let partial = CO.form().checks.iter().filter(|c| c.partial);
    assert_eq!(partial.count(), 3);
    assert!(!CO.form().checks[0].partial);
    // A row that waits for its reading takes nothing away.
    let worked = work(&[], &[(2.0, FULL, 6.0), (NONE, NONE, NONE)]);
    assert_eq!(rise(&worked, "shown_rise_ppm"), Verdict::Beyond);
    // The largest counts, wherever it stands.
    let mut readings = QUIET.to_vec();
    readings.insert(1, (20.0, FULL, 9.0));
    assert_eq!(value(CO, &work(&[], &readings), "shown_rise_ppm"), 9.0);
    assert_eq!(
        rise(&work(&[], &readings), "shown_rise_ppm"),
        Verdict::Beyond
    );
    // A fine meter tells a rise that is smaller than a digit of another.
    let fine = [("meter_ppm", 0.2), ("step_ppm", 0.1)];
    let worked = work(&fine, &[(20.0, FULL, 0.9), (130.0, LOW, 0.9)]);
    assert_eq!(rise(&worked, "rise_ppm"), Verdict::Beyond);
}

#[test]
fn a_part_of_a_test_is_no_test() {
    let part = |worked: &Worked| {
        assert!(value(CO, worked, "rise_ppm").is_nan());
        assert_eq!(rise(worked, "part_rise_ppm"), Verdict::NotProven);
    };
    part(&work(&[("powers", 1.0)], &QUIET));
    part(&work(&[("powers", NONE)], &QUIET));
    part(&work(&[], &QUIET[..2]));
    part(&work(&[], &QUIET[2..]));
    // Low first.
    part(&work(&[], &[(5.0, LOW, 0.0), (130.0, FULL, 0.0)]));
    // Too short.
    let short = work(&[("air_least_per_h", 1.0)], &QUIET);
    part(&short);
    assert_eq!(value(CO, &short, "spare_test_min"), 130.0 - 180.0);
    assert_eq!(rise(&short, "spare_test_min"), Verdict::Beyond);
    // Only readings count time, and only those whose power is told.
    let worked = work(
        &[],
        &[(5.0, FULL, 0.0), (200.0, NONE, 0.0), (300.0, LOW, NONE)],
    );
    part(&worked);
    assert_eq!(value(CO, &worked, "spare_test_min"), 5.0 - 90.0);
}

#[test]
fn what_is_not_known_proves_nothing() {
    for name in ["meter_ppm", "meter_share", "step_ppm", "outdoor_ppm"] {
        let worked = work(&[(name, NONE)], &[(2.0, FULL, 150.0)]);
        for rise_of in [
            "rise_ppm",
            "shown_rise_ppm",
            "part_rise_ppm",
            "alarm_rise_ppm",
        ] {
            assert_eq!(rise(&worked, rise_of), Verdict::None, "{name}");
        }
        // It is urgent all the same.
        assert_eq!(value(CO, &worked, "urgency"), 8.0, "{name}");
    }
    let worked = work(&[("air_least_per_h", NONE)], &QUIET);
    assert_eq!(rise(&worked, "spare_test_min"), Verdict::None);
    assert!(value(CO, &worked, "rise_ppm").is_nan());
    // Told the wrong way round: the least still counts for the time, the most for the leak.
    let turned = work(&[("air_least_per_h", 4.0), ("air_most_per_h", 2.0)], &QUIET);
    assert_eq!(value(CO, &turned, "spare_test_min"), 40.0);
    let leak = |w: &Worked| value(CO, w, "unseen_full_l_per_h");
    assert_eq!(leak(&turned), leak(&work(&[], &QUIET)));
}

#[test]
fn an_alarm_may_only_find_a_rise() {
    for device in [ALARM, NONE] {
        let worked = work(&[("device", device)], &QUIET);
        assert_eq!(rise(&worked, "alarm_rise_ppm"), Verdict::NotProven);
        for name in [
            "rise_ppm",
            "shown_rise_ppm",
            "part_rise_ppm",
            "spare_test_min",
        ] {
            assert_eq!(rise(&worked, name), Verdict::None, "{name}");
        }
        assert!(value(CO, &worked, "unseen_low_l_per_h").is_nan());
        let worked = work(&[("device", device)], &[(40.0, FULL, 60.0)]);
        assert_eq!(rise(&worked, "alarm_rise_ppm"), Verdict::Beyond);
    }
}

#[test]
fn how_blind_the_test_was() {
    // c = U(c): 3 ppm, 5 %, two half steps: √((9 + 0.5)/(0.75 − 0.0025)).
    let least = least_told_ppm(3.0, 0.05, 1.0);
    near(least, (9.5f64 / 0.7475).sqrt(), 1e-12);
    let worked = work(&[], &QUIET);
    // 4/h in 9 m³: an hour at full, 70 minutes at low.
    let want = |c: f64, hours: f64| c * 4.0 * 9.0 / 1000.0 / (1.0 - (-4.0 * hours).exp());
    near(
        value(CO, &worked, "unseen_full_l_per_h"),
        want(least, 1.0),
        1e-9,
    );
    near(
        value(CO, &worked, "unseen_low_l_per_h"),
        want(least, 70.0 / 60.0),
        1e-9,
    );
    // A minute at full sees next to nothing, and a meter that hides small readings sees less.
    let short = work(&[], &[(1.0, FULL, 0.0), (130.0, LOW, 0.0)]);
    near(
        value(CO, &short, "unseen_full_l_per_h"),
        want(least, 1.0 / 60.0),
        1e-9,
    );
    let hides = work(&[("blank_ppm", 10.0)], &QUIET);
    near(
        value(CO, &hides, "unseen_full_l_per_h"),
        want(least + 10.0, 1.0),
        1e-9,
    );
}

#[test]
fn urgency_has_the_error_on_top() {
    let told = |ppm: f64| value(CO, &work(&[], &[(5.0, FULL, ppm)]), "urgency");
    // 0 + 3 ppm stay below 3.49; 1 + 3.05 reach it; 31 + 4.55 reach 35 ppm; 189 + 12.45 reach 200.
    assert_eq!([0.0, 1.0, 31.0, 189.0].map(told), [0.0, 1.0, 5.0, 9.0]);
    assert!(value(CO, &work(&[], &[]), "urgency").is_nan());
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_rise_is_never_within(
        ppm in prop::collection::vec(-50.0..300.0f64, 1..12), outdoor in -50.0..300.0f64,
        meter in 0.0..50.0f64, share in 0.0..0.5f64, device in 0..2u8,
    ) {
        let readings: Vec<_> = ppm.iter().enumerate()
            .map(|(i, ppm)| (40.0 * i as f64, if i < 4 { FULL } else { LOW }, *ppm)).collect();
        let but = [
            ("outdoor_ppm", outdoor), ("meter_ppm", meter), ("meter_share", share),
            ("device", f64::from(device)),
        ];
        let worked = work(&but, &readings);
        let given: Vec<_> = ["rise_ppm", "shown_rise_ppm", "part_rise_ppm", "alarm_rise_ppm"]
            .into_iter().filter(|name| !value(CO, &worked, name).is_nan()).collect();
        prop_assert_eq!(given.len(), 1);
        let largest = ppm.iter().fold(f64::MIN, |m, p| m.max(*p)) - outdoor;
        let (got, u) = (value(CO, &worked, given[0]), u(CO, &worked, given[0]));
        prop_assert!((got - largest).abs() < 1e-9);
        let want = if largest > u { Verdict::Beyond } else { Verdict::NotProven };
        prop_assert_eq!(rise(&worked, given[0]), want);
        // The meter's own error in full, and no less.
        prop_assert!(u >= 2.0 / 3f64.sqrt() * meter);
    }
}
