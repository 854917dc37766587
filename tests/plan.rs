//! What every sheet shares: refusals by place, half-widths to uncertainties, verdicts.

use plumbmark::decision::{Verdict, Why};
use plumbmark::plan::Sheet;
use plumbmark::plan::form::Checked;
use plumbmark::plan::kind::{Problem, Refusal, Slip};

const NONE: f64 = f64::NAN;

fn check(place: usize) -> Checked {
    Sheet::Clearances.form().checks[place]
}

fn clearances(first: f64) -> [f64; 8] {
    [first, NONE, NONE, NONE, NONE, NONE, NONE, NONE]
}

#[test]
fn half_width_is_a_rectangle() {
    // JCGM 100:2008 §4.3.7: half-width a, standard uncertainty a/√3; U = 2 u.
    let worked = Sheet::Clearances
        .work(&clearances(120.0), &[3.0; 8])
        .unwrap();
    let given = worked.result(0).unwrap();
    assert_eq!(given.value, 120.0);
    assert!((given.u - 2.0 * 3.0 / 3f64.sqrt()).abs() < 1e-12);
    assert_eq!(given.dominant, Some(0));
}

#[test]
fn verdicts_need_the_whole_interval() {
    let worked = Sheet::Clearances
        .work(&clearances(120.0), &[3.0; 8])
        .unwrap();
    let answer = |low: f64| worked.judged(&check(0), low, NONE).unwrap();
    assert_eq!(answer(116.0).verdict, Verdict::Within);
    assert_eq!(answer(118.0).verdict, Verdict::NotProven);
    assert_eq!(answer(124.0).verdict, Verdict::Beyond);
    assert_eq!(answer(NONE).why, Some(Why::LimitNotEntered));
    // What was not measured has no verdict.
    assert_eq!(
        worked.judged(&check(1), 100.0, NONE).unwrap().verdict,
        Verdict::None
    );
}

#[test]
fn doing_what_is_told_settles_it() {
    for first in [20.0, 90.0, 117.0, 119.0] {
        let told = |x: f64| {
            let worked = Sheet::Clearances.work(&clearances(x), &[NONE; 8]).unwrap();
            worked.judged(&check(0), 117.5, NONE).unwrap()
        };
        let before = told(first);
        assert_ne!(before.verdict, Verdict::Within, "{first}");
        assert_eq!(
            told(first + before.change).verdict,
            Verdict::Within,
            "{first}"
        );
    }
}

#[test]
fn refusals_name_the_place_and_the_slip() {
    let refusal = |x: f64| Sheet::Clearances.work(&clearances(x), &[]).unwrap_err();
    assert_eq!(
        refusal(-3.0),
        Refusal {
            place: 0,
            problem: Problem::OutOfRange
        }
    );
    assert_eq!(refusal(40e6).problem, Problem::OutOfRange);
    assert_eq!(refusal(f64::INFINITY).problem, Problem::OutOfRange);
    // 0.2 where 200 mm is likely; 0 is a thing that touches.
    assert_eq!(refusal(0.2).problem, Problem::OtherUnit(Slip::Metres));
    assert!(Sheet::Clearances.work(&clearances(0.0), &[]).is_ok());
    let half = Sheet::Clearances
        .work(&clearances(100.0), &[-1.0])
        .unwrap_err();
    assert_eq!(
        half,
        Refusal {
            place: 0,
            problem: Problem::HalfWidth
        }
    );
}

#[test]
fn what_may_only_say_beyond_is_never_within() {
    let worked = Sheet::Clearances
        .work(&clearances(120.0), &[3.0; 8])
        .unwrap();
    let only_beyond = Checked {
        only_beyond: true,
        ..check(0)
    };
    let answer = |low: f64| worked.judged(&only_beyond, low, NONE).unwrap().verdict;
    assert_eq!(answer(50.0), Verdict::NotProven);
    assert_eq!(answer(130.0), Verdict::Beyond);
}

#[test]
fn a_change_is_shown_only_beyond_both_uncertainties() {
    let told = |before, now| {
        let change = plumbmark::plan::moved::change(before, now);
        (change.by, change.u, change.shown)
    };
    assert_eq!(told((80.0, 2.5), (86.0, 2.5)), (6.0, 5.0, true));
    assert_eq!(told((86.0, 2.5), (82.0, 2.5)), (-4.0, 5.0, false));
    // A zero of 0.6° read one way and then the other: 1.2° apart, and nothing has moved (JCGM 100
    // §5.2.2: errors that are one and the same add as they are).
    assert!(!told((3.0 + 0.6, 0.7), (3.0 - 0.6, 0.7)).2);
    // Without an interval nothing is shown.
    assert!(!told((1.0, f64::INFINITY), (9.0, 0.1)).2);
    assert!(!told((1.0, f64::NAN), (9.0, 0.1)).2);
}
