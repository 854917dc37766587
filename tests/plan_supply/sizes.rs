//! Which conductor of each list still holds: core's verdict for each, the first of them that is
//! within.

use super::cable::invented;
use super::{NONE, code, exact, near, told, value};
use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet::Cable;
use plumbmark::plan::supply::conductor::{COUNT, Series, gauge_diameter_mm, named};
use plumbmark::plan::work::Worked;

/// The sheet with a row for each conductor.
fn with_all(fixed: &[(&str, f64)], half: &[f64]) -> Worked {
    let sizes = (0..COUNT).map(|code| code as f64);
    let x: Vec<f64> = told(Cable, fixed).into_iter().chain(sizes).collect();
    Cable.work(&x, half).unwrap()
}

/// Verdicts of a size: drop at start, drop while running, voltage at the heater.
fn verdicts(worked: &Worked, size: usize, drop_v: f64, start_v: f64) -> [Verdict; 3] {
    let first = Cable.form().checks.len() + 3 * size;
    let ends = [(NONE, drop_v), (NONE, drop_v), (start_v, NONE)];
    std::array::from_fn(|i| {
        let check = worked.check(first + i).unwrap();
        assert!(check.alternative);
        worked.judged(&check, ends[i].0, ends[i].1).unwrap().verdict
    })
}

/// The first of a list whose verdicts are all within.
fn smallest(worked: &Worked, series: Series, drop_v: f64, start_v: f64) -> Option<f64> {
    let of_list = (0..COUNT).filter(|&c| named(c).unwrap().0 == series);
    let holds = |&c: &usize| verdicts(worked, c, drop_v, start_v) == [Verdict::Within; 3];
    of_list.into_iter().find(holds).map(|c| named(c).unwrap().1)
}

#[test]
fn by_the_boat_council() {
    // ABYC E-11: CM = 10.75·I·L/E, L out and back in ft: 15 A, 40 ft at 12 V want 17 916.7 circular
    // mils at 3 %, 5375 at 10 %. A circular mil is (d/mil)² by definition.
    let circular_mils = |gauge: f64| (gauge_diameter_mm(gauge) / 0.0254).powi(2);
    // K = 10.75 Ω·cmil/ft is copper (10.371 at 20 °C by 0.0172414 Ω·mm²/m) at 29.3 °C.
    let k_celsius = 20.0 + (10.75 / 10.371 - 1.0) / 0.00393;
    for (share, cm) in [(0.03, 17_916.7), (0.1, 5375.0)] {
        let drop_v = share * 12.0;
        near(10.75 * 15.0 * 40.0 / drop_v, cm, 3e-6);
        let fixed = [
            ("out_m", 20.0 * 0.3048),
            ("back_by", 0.0),
            ("back_m", 20.0 * 0.3048),
            ("conductor", 0.0),
            ("conductor_celsius", k_celsius),
            ("joints_mohm", 0.0),
            ("start_supply_v", 12.0),
            ("start_a", 15.0),
            ("running_supply_v", 12.0),
            ("running_a", 15.0),
        ];
        let worked = with_all(&fixed, &[0.0; 13]);
        let gauges = [18.0, 16.0, 14.0, 12.0, 10.0, 8.0, 6.0];
        let by_mils = gauges.into_iter().find(|&g| circular_mils(g) >= cm);
        assert_eq!(
            smallest(&worked, Series::Gauge, drop_v, 0.0),
            by_mils,
            "{share}"
        );
        // The same in mm²: the mils' own area, or the next one that IEC's most resistance permits.
        let mm2 = smallest(&worked, Series::Area, drop_v, 0.0).unwrap();
        assert!(mm2 >= cm * 5.067e-4, "{mm2}");
    }
}

#[test]
fn each_size_answers_as_if_it_were_there() {
    let worked = with_all(&invented(), &[]);
    let own = Cable.names().outputs.len();
    for size in 0..COUNT {
        let mut in_place = invented();
        in_place.push(("conductor", size as f64));
        let alone = exact(Cable, &in_place);
        for (i, name) in ["start_drop_v", "running_drop_v", "heater_start_v"]
            .into_iter()
            .enumerate()
        {
            let row = worked.result(own + 3 * size + i).unwrap();
            assert_eq!(row.value, value(Cable, &alone, name));
        }
    }
}

#[test]
fn the_first_within_has_all_thicker_ones_within() {
    let worked = with_all(&invented(), &[]);
    for drop_v in [0.2, 0.35, 0.5, 1.0] {
        for series in [Series::Area, Series::Gauge] {
            let found = smallest(&worked, series, drop_v, 11.5);
            let of_list = (0..COUNT).filter(|&c| named(c).unwrap().0 == series);
            let all: Vec<bool> = of_list
                .map(|c| verdicts(&worked, c, drop_v, 11.5) == [Verdict::Within; 3])
                .collect();
            assert!(all.is_sorted(), "{drop_v}");
            assert_eq!(found.is_some(), all.contains(&true));
        }
    }
    // A limit that is not entered leaves every size open.
    assert_eq!(smallest(&worked, Series::Area, NONE, 11.5), None);
    let open = verdicts(&worked, COUNT - 1, NONE, 11.5);
    assert_eq!(
        open,
        [Verdict::NotProven, Verdict::NotProven, Verdict::Within]
    );
    // The conductor that is there is not the alternatives' business.
    let four = code(Series::Area, 4.0);
    assert_eq!(told(Cable, &invented())[4], four);
}
