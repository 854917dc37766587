//! Where a drain may be set, and what one does.

use super::legs::{ASHORE, FIXED, Leg, NONE, ROAD, WIDTH, of, road, try_pipe, verdicts};
use plumbmark::decision::Verdict::{Beyond, None as NoVerdict, NotProven, Within};
use plumbmark::plan::flue::leg::Place;
use plumbmark::plan::flue::pipe::Remedy;
use plumbmark::plan::kind::{Problem, Refusal};
use plumbmark::plan::usage::USAGE;

const DOWN: Leg = Leg::typed(-20.0, 0.5);
const UP: Leg = Leg::typed(15.0, 0.4);

#[test]
fn a_drain_is_advised_in_one_case_of_all() {
    let answers = [NONE, 0.0, 1.0];
    let places = (0..Place::ALL.len()).map(|p| p as f64).chain([NONE]);
    let mut advised = Vec::new();
    for place in places {
        for clear in answers {
            for in_manual in answers {
                for boat in [ROAD, ASHORE] {
                    let mut pipe = boat;
                    pipe[5] = in_manual;
                    let low = Leg { place, clear, ..UP };
                    let worked = try_pipe(pipe, &[DOWN, low]).unwrap();
                    assert_eq!(verdicts(&worked, 1)[..2], [Beyond, Beyond]);
                    if of(&worked, 1, 4).value == f64::from(Remedy::Drain as u8) {
                        advised.push((place, clear, in_manual, pipe[0]));
                    } else {
                        assert_eq!(of(&worked, 1, 4).value, f64::from(Remedy::Reroute as u8));
                    }
                }
            }
        }
    }
    assert_eq!(advised, [(0.0, 1.0, 1.0, 0.0)]);
    assert_eq!(Place::ALL[0], Place::FreeAir);
}

#[test]
fn a_drain_takes_the_water_of_its_low_point() {
    let worked = road(&[DOWN, UP.drained(), UP, DOWN]);
    // The rise runs back to the drain: proven, and no depth is left.
    for leg in 1..3 {
        assert_eq!(verdicts(&worked, leg)[..2], [Within, NoVerdict]);
    }
    assert_eq!(verdicts(&worked, 3)[0], Within);
    // Common practice, no source: 4 mm.
    let usage = USAGE.iter().find(|u| u.id.name() == "drain_bore_mm");
    assert_eq!(usage.unwrap().high, Some(4.0));
    assert_eq!(verdicts(&worked, 1)[2], Within);
    let wide = Leg {
        drain: 6.0,
        ..UP.drained()
    };
    assert_eq!(verdicts(&road(&[DOWN, wide]), 1)[2], Beyond);
    assert_eq!(verdicts(&road(&[DOWN, UP]), 1)[2], NoVerdict);
    // A level leg from a drain runs off neither way.
    let level = Leg {
        deg: 0.1,
        ..UP.drained()
    };
    assert_eq!(verdicts(&road(&[DOWN, level]), 1)[0], NotProven);
}

#[test]
fn water_that_runs_over_finds_the_drain() {
    let legs = |second: Leg| {
        [
            Leg::exact(-30.0, 0.4),
            Leg::exact(30.0, 0.1),
            Leg::exact(-30.0, 0.1),
            second,
        ]
    };
    // Falls 200, rises 50, falls 50, rises 100: the second low point alone holds 100.
    let rise = Leg::exact(30.0, 0.2);
    let worked = road(&legs(rise));
    assert!((of(&worked, 1, 3).value - 100.0).abs() < 1e-3);
    assert!((of(&worked, 3, 3).value - 100.0).abs() < 1e-3);
    // With a drain in the first it runs over into that: 50.
    let mut first = legs(rise);
    first[1] = first[1].drained();
    let worked = road(&first);
    assert!(of(&worked, 1, 3).value.is_nan());
    assert!((of(&worked, 3, 3).value - 50.0).abs() < 1e-3);
    // With one in the second the first runs over into it.
    let worked = road(&legs(rise.drained()));
    assert!((of(&worked, 1, 3).value - 50.0).abs() < 1e-3);
}

#[test]
fn no_drain_where_none_may_be() {
    let at = |leg: usize, place: usize| FIXED + leg * WIDTH + place;
    let refused = |pipe: [f64; 6], low: Leg| try_pipe(pipe, &[DOWN, low]).unwrap_err();
    let wrong = Refusal::at(at(1, 5), Problem::Contradiction);
    let mut none_in_manual = ROAD;
    none_in_manual[5] = 0.0;
    assert_eq!(refused(none_in_manual, UP.drained()), wrong);
    assert_eq!(refused(ASHORE, UP.drained()), wrong);
    for place in 1..Place::ALL.len() {
        let low = Leg {
            place: place as f64,
            ..UP.drained()
        };
        assert_eq!(refused(ROAD, low), wrong);
    }
    assert_eq!(
        refused(
            ROAD,
            Leg {
                clear: 0.0,
                ..UP.drained()
            }
        ),
        wrong
    );
    // What is not told is asked.
    let missing = |place| Refusal::at(place, Problem::Missing);
    let mut not_told = ROAD;
    not_told[5] = NONE;
    assert_eq!(refused(not_told, UP.drained()), missing(5));
    assert_eq!(
        refused(
            ROAD,
            Leg {
                place: NONE,
                ..UP.drained()
            }
        ),
        missing(at(1, 3))
    );
    assert_eq!(
        refused(
            ROAD,
            Leg {
                clear: NONE,
                ..UP.drained()
            }
        ),
        missing(at(1, 4))
    );
}
