//! What the pipe's ends are near: each distance to the limit of its sort.

use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::bound::BoundId;
use plumbmark::plan::flue::ends::Near;
use plumbmark::plan::usage::{LAW, USAGE};
use plumbmark::plan::work::Worked;

const NONE: f64 = f64::NAN;

fn work(fixed: [f64; 3], near: &[(Near, f64)]) -> Worked {
    let rows = near
        .iter()
        .flat_map(|(what, mm)| [f64::from(*what as u8), *mm]);
    let x: Vec<f64> = fixed.into_iter().chain(rows).collect();
    Sheet::PipeEnds.work(&x, &[]).unwrap()
}

fn verdict(worked: &Worked, bound: BoundId, low: f64) -> Verdict {
    let checks = (0..).map_while(|place| worked.check(place));
    let mut told = checks.filter(|check| check.bound == bound).map(|check| {
        let judged = worked.judged(&check, low, NONE).unwrap();
        judged.verdict
    });
    told.find(|v| *v != Verdict::None).unwrap_or(Verdict::None)
}

#[test]
fn every_thing_has_one_limit() {
    let openings = [
        Near::Window,
        Near::Door,
        Near::Vent,
        Near::HeatedAirIntake,
        Near::EngineIntake,
    ];
    for (code, what) in Near::ALL.into_iter().enumerate() {
        assert_eq!(code, what as usize);
        let worked = work([NONE; 3], &[(what, 800.0)]);
        let results = [0, 1, 2].map(|place| worked.result(2 + place).unwrap().value);
        let sort = if openings.contains(&what) {
            0
        } else if what == Near::Combustible {
            2
        } else {
            1
        };
        for (place, value) in results.into_iter().enumerate() {
            assert_eq!(!value.is_nan(), place == sort, "{what:?}");
        }
    }
}

#[test]
fn a_law_for_bare_pipes_is_for_bare_pipes() {
    // 46 CFR 144.415: insulated where closer than 450 mm to combustibles.
    let law = LAW
        .iter()
        .find(|l| l.id == BoundId::ExhaustToCombustible)
        .unwrap();
    assert_eq!(law.low, Some(450.0));
    let answer = |lagged: f64, mm: f64| {
        let worked = work([NONE, NONE, lagged], &[(Near::Combustible, mm)]);
        verdict(&worked, BoundId::ExhaustToCombustible, 450.0)
    };
    assert_eq!(answer(0.0, 480.0), Verdict::Within);
    assert_eq!(answer(0.0, 451.0), Verdict::NotProven);
    assert_eq!(answer(0.0, 380.0), Verdict::Beyond);
    assert_eq!(answer(NONE, 380.0), Verdict::Beyond);
    assert_eq!(answer(1.0, 380.0), Verdict::None);
}

#[test]
fn ends_as_they_are() {
    let worked = work(
        [320.0, -15.0, NONE],
        &[(Near::Window, 700.0), (Near::Vent, 290.0)],
    );
    assert_eq!(
        verdict(&worked, BoundId::AirToExhaust, 300.0),
        Verdict::Within
    );
    // Common practice, no source: it ends outside the body's outline.
    let usage = USAGE
        .iter()
        .find(|u| u.id == BoundId::ExhaustPastBody)
        .unwrap();
    assert_eq!(usage.low, Some(0.0));
    assert_eq!(
        verdict(&worked, BoundId::ExhaustPastBody, 0.0),
        Verdict::Beyond
    );
    // Class II tape and hand: 2 mm + 0.2 %, a rectangle (JCGM 100 §4.3.7).
    let vent = worked.result(2 + 3).unwrap();
    assert_eq!(vent.value, 290.0);
    assert!((vent.u - 2.0 * 2.58 / 3f64.sqrt()).abs() < 1e-9);
}
