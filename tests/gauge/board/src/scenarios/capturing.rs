//! Captures, and the line that carries them.

use super::{answered, reads};
use crate::fake::NUMBER;
use crate::motions::Motion;
use crate::rig::{A, B, SHORT_MS, comes, lay, lift, line, no_verdict_since, press, run, shows, up};
use crate::world::world;
use plumbmark::check::End;
use plumbmark::decision::Verdict;
use plumbmark::limits::Basis;
use plumbmark::parts::{Check, Part};
use plumbmark::reading::ZeroBy;

/// A capture says what the lights say, with the numbers behind it and the limit's basis.
pub fn sent() {
    reads(Check::PumpOutlet, up(45.0, 0.0));
    answered(A, Motion::Within);
    press(B, SHORT_MS);
    comes(Motion::Sent, 1_500);
    let line = line().expect("a line is sent");
    assert_eq!((line.speaker.gauge, line.speaker.count), (NUMBER, 1));
    assert_eq!(line.taken.placement.part, Some(Part::Pump));
    assert_eq!(line.taken.zero_by, ZeroBy::Assumed);
    let (shown, limit) = (&line.shown[0], &line.limits[0]);
    assert_eq!(shown.verdict, Verdict::Within);
    assert_eq!(
        (limit.check, limit.basis, limit.low_deg),
        (Check::PumpOutlet, Basis::Manual, Some(25.0))
    );
    assert_eq!(line.taken.end_told(Check::PumpOutlet), Some(End::Tail));
    let (value_cdeg, u_cdeg) = shown.measured_cdeg.expect("it was read");
    assert!(
        (value_cdeg - 4_500).abs() <= 50,
        "45 degrees are read as {value_cdeg}"
    );
    assert!(
        (300..1_000).contains(&u_cdeg),
        "an unchecked sensor's U is {u_cdeg}"
    );
    // The next reading is asked for anew.
    run(1_600);
    shows(Motion::WhichEnd);
}

/// Each capture has a number of its own; without power they begin again.
pub fn counted() {
    for _ in 0..2 {
        reads(Check::PumpRoll, up(0.0, 20.0));
        for count in 1..=3 {
            run(2_000);
            press(B, SHORT_MS);
            comes(Motion::Sent, 1_500);
            assert_eq!(line().map(|line| line.speaker.count), Some(count));
        }
    }
}

/// A check without a limit, and one whose limit is trade usage: the line says so.
pub fn on_whose_word() {
    reads(Check::PipeFall, up(-20.0, 0.0));
    answered(B, Motion::NotProven);
    press(B, SHORT_MS);
    run(1_500);
    let pipe = line().expect("a line is sent");
    assert_eq!(pipe.shown[0].verdict, Verdict::NotProven);
    assert!(!pipe.limits[0].is_entered());
    reads(Check::HeaterOutlet, up(-20.0, 0.0));
    answered(B, Motion::WithinUsage);
    press(B, SHORT_MS);
    run(1_500);
    let heater = line().expect("a line is sent");
    let outlet = heater
        .limits
        .iter()
        .zip(&heater.shown)
        .find(|(limit, _)| limit.check == Check::HeaterOutlet);
    let (limit, shown) = outlet.expect("both of the heater's checks are sent");
    assert_eq!(
        (limit.basis, shown.verdict),
        (Basis::TradeUsage, Verdict::Within)
    );
    // The eye was asked about the outlet only.
    assert_eq!(heater.taken.end_told(Check::HeaterPort), None);
}

/// A capture that is asked for before there is a second of rest waits for it.
pub fn waits() {
    reads(Check::PumpRoll, up(0.0, 20.0));
    comes(Motion::Within, 2_000);
    lift(up(0.0, 20.0));
    run(400);
    world(|world| world.seen.forget());
    press(B, SHORT_MS);
    run(500);
    no_verdict_since("a capture is awaited");
    comes(Motion::Sent, 2_500);
    assert!(line().is_some());
}

/// It does not wait for ever.
pub fn waits_no_longer() {
    reads(Check::PumpRoll, up(0.0, 20.0));
    world(|world| world.sensor.felt.noise_mg = 150.0);
    run(1_000);
    press(B, SHORT_MS);
    comes(Motion::Refused, 12_000);
    world(|world| world.sensor.felt.noise_mg = 3.0);
    run(5_000);
    assert!(line().is_none(), "what was refused is not sent later");
}

/// Between the press and the capture the gauge is moved: it is captured as it lies then, or not at
/// all.
pub fn moved_before() {
    reads(Check::PumpRoll, up(0.0, 20.0));
    comes(Motion::Within, 2_000);
    press(B, SHORT_MS);
    lay(up(0.0, 100.0));
    run(4_000);
    if let Some(line) = line() {
        assert_ne!(
            line.shown.last().map(|shown| shown.verdict),
            Some(Verdict::Within)
        );
    }
}
