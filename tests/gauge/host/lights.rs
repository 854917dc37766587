//! Each state is a picture of its own, and moves.

use plumbmark_gauge::fault::Fault;
use plumbmark_gauge::lights::{Frame, Show, Towards, frame};
use std::collections::BTreeSet;

const SIDES: [Towards; 4] = [Towards::Tail, Towards::Head, Towards::Upper, Towards::Lower];
const DARK: Frame = [0; 5];

/// The pictures of a state, in order, each as often as it is shown in 6 s.
fn pictures(show: Show) -> Vec<Frame> {
    (0..6_000).step_by(10).map(|ms| frame(show, ms)).collect()
}

fn verdicts() -> Vec<Show> {
    let beyond = SIDES.into_iter().map(|side| Show::Beyond(Some(side)));
    [
        Show::Within,
        Show::WithinUsage,
        Show::NotProven,
        Show::Beyond(None),
    ]
    .into_iter()
    .chain(beyond)
    .collect()
}

fn others() -> Vec<Show> {
    let mut all = vec![
        Show::SelfTest,
        Show::Ready(None),
        Show::WhichEnd,
        Show::NoReading,
        Show::NoVerdict,
        Show::Turn,
        Show::Sent,
        Show::Stored,
        Show::Refused,
    ];
    all.extend(SIDES.map(|side| Show::Ready(Some(side))));
    all.extend((1..=6).map(Show::Chosen));
    all.extend((0..=18).map(Show::Poses));
    all.extend(Fault::ALL.map(Show::Fault));
    all
}

#[test]
fn every_state_moves() {
    for show in verdicts().into_iter().chain(others()) {
        let seen: BTreeSet<Frame> = pictures(show).into_iter().collect();
        assert!(seen.len() > 1, "{show:?}");
        assert!(seen.iter().flatten().all(|row| *row < 32), "{show:?}");
        // Within 2 s each of them has moved, and has not been dark for longer than 0.8 s.
        let first = frame(show, 0);
        assert!((0..2_000).any(|ms| frame(show, ms) != first), "{show:?}");
        let dark = pictures(show)
            .split(|p| *p != DARK)
            .map(<[Frame]>::len)
            .max();
        assert!(dark <= Some(80), "{show:?}");
    }
}

#[test]
fn no_two_states_look_alike() {
    let all: Vec<Show> = verdicts().into_iter().chain(others()).collect();
    for (at, one) in all.iter().enumerate() {
        for other in all.iter().skip(at + 1) {
            assert_ne!(pictures(*one), pictures(*other), "{one:?}, {other:?}");
        }
    }
}

/// Even a glance, one still picture, takes no verdict for anything else, nor for another one.
#[test]
fn a_verdicts_picture_is_nothing_elses() {
    let lit =
        |show| -> BTreeSet<Frame> { pictures(show).into_iter().filter(|p| *p != DARK).collect() };
    for verdict in verdicts() {
        let rest = verdicts().into_iter().filter(|v| *v != verdict);
        for other in rest.chain(others()) {
            let shared: Vec<_> = lit(verdict).intersection(&lit(other)).copied().collect();
            assert_eq!(shared, Vec::<Frame>::new(), "{verdict:?}, {other:?}");
        }
    }
}

/// The wedge runs to the side that it names: where its lights' middle goes.
#[test]
fn the_wedge_runs_to_its_side() {
    for side in SIDES {
        let middle = |ms| {
            let picture = frame(Show::Beyond(Some(side)), ms);
            let (mut across, mut down, mut count) = (0, 0, 0);
            for (row, lights) in (0..).zip(picture) {
                for column in (0..5).filter(|c| lights & (0b10000 >> c) != 0) {
                    (across, down, count) = (across + column, down + row, count + 1);
                }
            }
            (
                f64::from(across) / f64::from(count),
                f64::from(down) / f64::from(count),
            )
        };
        let (from, to) = (middle(0), middle(300));
        let went = (to.0 - from.0, to.1 - from.1);
        let expected = match side {
            Towards::Tail => (-2.0, 0.0),
            Towards::Head => (2.0, 0.0),
            Towards::Upper => (0.0, -2.0),
            Towards::Lower => (0.0, 2.0),
        };
        assert_eq!((went.0.round(), went.1.round()), expected, "{side:?}");
    }
}

/// A fault's number is counted out: as many lights as its number, after a cross.
#[test]
fn faults_are_counted_out() {
    for fault in Fault::ALL {
        let lights = |p: Frame| p.iter().map(|row| row.count_ones()).sum::<u32>();
        let number = u32::from(fault.number());
        let counted: Vec<u32> = (0..number)
            .map(|n| lights(frame(Show::Fault(fault), 700 + 400 * n)))
            .collect();
        assert_eq!(counted, (1..=number).collect::<Vec<_>>(), "{fault:?}");
        assert_eq!(lights(frame(Show::Fault(fault), 0)), 9);
    }
}
