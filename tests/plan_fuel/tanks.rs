//! Standpipes in a tank.

use super::{NONE, near, refusal, value, verdict, work};
use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::kind::Problem;

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
    // 30 mm is asked for, of the heater's pipe alone.
    assert_eq!(
        verdict(sheet, &worked, "gap_mm", 30.0, NONE),
        Verdict::Within
    );
    let checked = (0..).map_while(|place| worked.check(place));
    assert_eq!(checked.map(|c| c.output).collect::<Vec<_>>(), [0, 5]);
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
