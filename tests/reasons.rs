//! Every way in which a phone fails to give a reading has a name, and no number with it.
//! The traps are those of the W3C events as browsers send them; the values here are made up.

use plumbmark::budget::Source;
use plumbmark::check::End;
use plumbmark::decision::{Verdict, Why};
use plumbmark::holds::{Hold, Surface};
use plumbmark::live::{Blind, Channel, Live};
use plumbmark::parts::{Check, Part};
use plumbmark::reason::NoReading;

const DT_MS: f64 = 1000.0 / 60.0;
const G: f64 = 9.80665;

/// A phone whose events the test sends one by one.
struct Phone {
    live: Live,
    t_ms: f64,
}

impl Phone {
    fn new() -> Self {
        let mut live = Live::new();
        live.select(Part::Pump, Hold::LongEdge, Surface::RoundBody)
            .unwrap();
        live.tell_end(Check::PumpOutlet, Some(End::Tail));
        Self { live, t_ms: 1000.0 }
    }

    fn with_sign(sign: i8) -> Self {
        let mut phone = Self::new();
        phone.live.set_sign(sign);
        phone
    }

    fn event(&mut self, a: [f64; 3]) {
        self.t_ms += DT_MS;
        self.live.motion(self.t_ms, a.map(Some));
    }

    /// Specific force of a phone on its right long edge, top edge raised by `deg`, unrounded.
    fn force(deg: f64) -> [f64; 3] {
        let (s, c) = deg.to_radians().sin_cos();
        [-G * c, G * s, 0.0]
    }

    fn rounded(a: [f64; 3]) -> [f64; 3] {
        a.map(|v| (v * 10.0).round() / 10.0)
    }

    fn rest(&mut self, deg: f64, events: usize) {
        for _ in 0..events {
            self.event(Self::rounded(Self::force(deg)));
        }
    }

    fn state(&mut self) -> Option<NoReading> {
        self.live.tick(self.t_ms).err()
    }

    fn value(&mut self) -> f64 {
        let reading = self.live.tick(self.t_ms).expect("a reading");
        f64::from(reading.outcomes[0].measured.unwrap().value_deg)
    }
}

#[test]
fn a_still_quantised_phone_is_read_and_not_certain() {
    let mut phone = Phone::with_sign(1);
    phone.rest(30.0, 80);
    let reading = phone.live.tick(phone.t_ms).expect("a reading");
    let outcome = reading.outcomes[0];
    let measured = outcome.measured.unwrap();
    assert!((measured.value_deg - 30.0).abs() < 0.5, "{measured:?}");
    assert!(
        outcome.budget.of(Source::Noise) == 0.0,
        "no scatter, no noise"
    );
    assert!(
        outcome.budget.of(Source::Step) > 0.1,
        "the step is still there: {:?}",
        outcome.budget
    );
    assert!(measured.u_deg > 0.9, "{measured:?}");
    assert_eq!(outcome.verdict, Verdict::Within);
}

#[test]
fn both_signs_are_learnt_from_the_two_channels() {
    for sign in [1.0, -1.0] {
        let mut phone = Phone::new();
        // Top edge 20° up on the right edge: β = 20°, γ = −90° (and its branch +90° is one pose).
        phone.live.orientation(Some(20.0), Some(-90.0));
        for _ in 0..90 {
            let a = Phone::rounded(Phone::force(20.0));
            // cos β·sin γ carries the roll here: x = −cos β · sin γ = +cos 20°.
            phone.event([-a[0] * sign, a[1] * sign, a[2] * sign]);
        }
        assert_eq!(phone.state(), None);
        assert_eq!(f64::from(phone.live.sign()), sign);
        assert!((phone.value() - 20.0).abs() < 0.6);
    }
}

#[test]
fn without_orientation_the_sign_is_asked_for_and_learnt_face_up() {
    for sign in [1.0, -1.0] {
        let mut phone = Phone::new();
        for _ in 0..60 {
            phone.event([0.0, 0.0, 9.8 * sign]);
        }
        assert_eq!(phone.state(), Some(NoReading::SignUnknown));
        assert_eq!(f64::from(phone.live.learn_sign_face_up()), sign);
        let force = Phone::rounded(Phone::force(20.0)).map(|v| v * sign);
        for _ in 0..90 {
            phone.event(force);
        }
        assert!((phone.value() - 20.0).abs() < 0.6);
    }
    // On edge it can't be learnt.
    let mut phone = Phone::new();
    phone.rest(20.0, 60);
    assert_eq!(phone.live.learn_sign_face_up(), 0);
}

#[test]
fn a_sign_that_flips_is_an_error_until_learnt_again() {
    let mut phone = Phone::with_sign(1);
    phone.live.orientation(Some(0.0), Some(0.0));
    for _ in 0..90 {
        phone.event([0.0, 0.0, 9.8]);
    }
    assert_eq!(phone.state(), None);
    for _ in 0..90 {
        phone.event([0.0, 0.0, -9.8]);
    }
    assert_eq!(phone.state(), Some(NoReading::SignFlipped));
    phone.live.set_sign(0);
    for _ in 0..90 {
        phone.event([0.0, 0.0, -9.8]);
    }
    assert_eq!(phone.state(), None);
}

/// What one bad event does to a good window.
fn after_one(bad: impl FnOnce(&mut Phone)) -> NoReading {
    let mut phone = Phone::with_sign(1);
    phone.rest(20.0, 80);
    assert_eq!(phone.state(), None, "the window is good before");
    bad(&mut phone);
    let reason = phone.state().expect("no reading after it");
    // One good event does not heal it: the window starts over.
    phone.rest(20.0, 1);
    assert!(phone.state().is_some());
    phone.rest(20.0, 80);
    assert_eq!(phone.state(), None, "it heals after {reason:?}");
    reason
}

#[test]
fn every_bad_event_has_its_reason() {
    let good = Phone::force(20.0).map(Some);
    let with = |a: [Option<f64>; 3]| {
        move |p: &mut Phone| {
            p.t_ms += DT_MS;
            p.live.motion(p.t_ms, a);
        }
    };
    assert_eq!(after_one(with([None; 3])), NoReading::NoSensor);
    assert_eq!(
        after_one(with([good[0], None, good[2]])),
        NoReading::ValuesMissing
    );
    for v in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        assert_eq!(
            after_one(with([good[0], Some(v), good[2]])),
            NoReading::NotFinite
        );
    }
    for v in [0.0, 3.0, 25.0, 1e300] {
        assert_eq!(
            after_one(with([Some(v), Some(0.0), Some(0.0)])),
            NoReading::NotGravity
        );
    }
    assert_eq!(
        after_one(|p| p.live.motion(p.t_ms, Phone::force(20.0).map(Some))),
        NoReading::TimeRepeated
    );
    assert_eq!(
        after_one(|p| p.live.motion(p.t_ms - 5.0, Phone::force(20.0).map(Some))),
        NoReading::TimeBackward
    );
    assert_eq!(
        after_one(|p| {
            p.t_ms += 250.0;
            p.live
                .motion(p.t_ms, Phone::rounded(Phone::force(20.0)).map(Some));
        }),
        NoReading::Gap
    );
    assert_eq!(
        after_one(|p| p.live.motion(f64::NAN, Phone::force(20.0).map(Some))),
        NoReading::NotFinite
    );
    assert_eq!(after_one(|p| p.rest(29.0, 1)), NoReading::Moving);
    assert_eq!(
        after_one(|p| p.live.orientation(Some(f64::NAN), Some(0.0))),
        NoReading::NotFinite
    );
}

#[test]
fn silence_is_stale_and_no_events_are_no_sensor() {
    let mut phone = Phone::with_sign(1);
    phone.rest(20.0, 80);
    assert_eq!(phone.live.tick(phone.t_ms + 290.0).err(), None);
    assert_eq!(
        phone.live.tick(phone.t_ms + 310.0).err(),
        Some(NoReading::Stale)
    );
    assert_eq!(phone.live.tick(f64::NAN).err(), Some(NoReading::Stale));

    let mut live = Live::new();
    assert_eq!(live.tick(0.0).err(), Some(NoReading::Starting));
    assert_eq!(live.tick(1400.0).err(), Some(NoReading::Starting));
    assert_eq!(live.tick(1600.0).err(), Some(NoReading::NoSensor));
    // One empty event, as a browser without sensors sends it; choosing a hold does not hide it.
    live.motion(1700.0, [None; 3]);
    live.select(Part::Pump, Hold::LongEdge, Surface::RoundBody)
        .unwrap();
    assert_eq!(live.tick(9000.0).err(), Some(NoReading::NoSensor));
}

#[test]
fn a_window_that_is_not_full_gives_nothing() {
    let mut phone = Phone::with_sign(1);
    for i in 0..58 {
        phone.rest(20.0, 1);
        assert_eq!(phone.state(), Some(NoReading::Filling), "after {i} events");
        assert!(phone.live.capture().is_err());
    }
    phone.rest(20.0, 10);
    assert_eq!(phone.state(), None);
}

#[test]
fn slow_movement_and_tremor_are_seen() {
    let mut phone = Phone::with_sign(1);
    for i in 0..90 {
        phone.event(Phone::rounded(Phone::force(20.0 + 0.06 * f64::from(i))));
    }
    assert_eq!(phone.state(), Some(NoReading::Moving));

    let mut phone = Phone::with_sign(1);
    for i in 0..90 {
        let wave = (f64::from(i) * DT_MS / 1000.0 * 10.0 * std::f64::consts::TAU).sin();
        let a = Phone::force(20.0);
        phone.event(Phone::rounded([
            a[0] + 0.15 * wave,
            a[1] + 0.1 * wave,
            a[2],
        ]));
    }
    assert_eq!(phone.state(), Some(NoReading::Tremor));
}

#[test]
fn fused_orientation_objects_by_drift_and_by_difference() {
    // Creeping by 0.5° a second, below the accelerometer's step.
    let mut phone = Phone::with_sign(1);
    for i in 0..90 {
        let creep = 0.5 * f64::from(i) * DT_MS / 1000.0;
        phone
            .live
            .orientation(Some((creep * 10.0).round() / 10.0), Some(0.0));
        phone.event([0.0, 0.0, 9.8]);
    }
    assert_eq!(phone.state(), Some(NoReading::Drifting));

    let mut phone = Phone::with_sign(1);
    phone.live.orientation(Some(3.0), Some(0.0));
    for _ in 0..90 {
        phone.event([0.0, 0.0, 9.8]);
    }
    assert_eq!(phone.state(), Some(NoReading::ChannelsDisagree));
}

#[test]
fn fused_orientation_alone_takes_three_seconds() {
    let mut phone = Phone::new();
    phone
        .live
        .select(Part::Heater, Hold::Back, Surface::MetalFace)
        .unwrap();
    phone.live.tell_end(Check::HeaterOutlet, Some(End::Head));
    phone.live.orientation(Some(-12.0), Some(0.0));
    let null_events = |n: usize, phone: &mut Phone| {
        for _ in 0..n {
            phone.t_ms += DT_MS;
            phone.live.motion(phone.t_ms, [None; 3]);
        }
    };
    null_events(90, &mut phone);
    assert_eq!(phone.state(), Some(NoReading::Settling));
    null_events(110, &mut phone);
    let reading = phone.live.tick(phone.t_ms).expect("a reading").clone();
    assert_eq!(reading.channel, Channel::Orientation);
    let outlet = reading.outcomes[1];
    assert!((outlet.measured.unwrap().value_deg + 12.0).abs() < 0.01);
    assert!(
        outlet.measured.unwrap().u_deg > 0.9,
        "the zero is inherited"
    );
    assert!(outlet.budget.of(Source::Settle) > 0.0, "settling counts");
}

#[test]
fn the_lower_end_must_be_told_and_must_agree() {
    let mut phone = Phone::with_sign(1);
    phone.rest(20.0, 80);
    let mut verdict = |end| {
        phone.live.tell_end(Check::PumpOutlet, end);
        let outcome = phone.live.tick(phone.t_ms).unwrap().outcomes[0];
        (outcome.verdict, outcome.why)
    };
    assert_eq!(verdict(Some(End::Tail)), (Verdict::Within, None));
    assert_eq!(verdict(Some(End::Photo)), (Verdict::Within, None));
    assert_eq!(
        verdict(Some(End::Head)),
        (Verdict::None, Some(Why::EndsDisagree))
    );
    assert_eq!(
        verdict(Some(End::CantTell)),
        (Verdict::None, Some(Why::EndNotTold))
    );
    assert_eq!(verdict(None), (Verdict::None, Some(Why::EndNotTold)));
}

#[test]
fn roll_near_plumb_is_not_readable() {
    let mut phone = Phone::with_sign(1);
    phone
        .live
        .select(Part::Pump, Hold::Back, Surface::Bracket)
        .unwrap();
    for _ in 0..80 {
        phone.event([0.1, 9.8, 0.1]);
    }
    let reading = phone.live.tick(phone.t_ms).expect("a reading");
    let roll = reading.outcomes[1];
    assert_eq!(roll.check, Check::PumpRoll);
    assert_eq!(
        (roll.verdict, roll.why),
        (Verdict::None, Some(Why::RollUndefined))
    );
    assert!(roll.measured.is_none());
}

#[test]
fn a_blind_reading_waits_for_placing_and_rest() {
    let mut phone = Phone::with_sign(1);
    phone.rest(5.0, 80);
    phone.state();
    phone.live.arm(phone.t_ms);
    // At rest before it was placed: nothing is ready, however long it lies.
    for _ in 0..60 {
        phone.rest(5.0, 6);
        phone.state();
        assert!(matches!(phone.live.blind(), Blind::Armed(_)));
    }
    phone.rest(20.0, 1);
    phone.state();
    assert_eq!(phone.live.blind(), Blind::Moved);
    phone.rest(20.0, 80);
    phone.state();
    assert_eq!(phone.live.blind(), Blind::Ready);
    assert!(phone.live.capture().is_ok());
}

#[test]
fn unrounded_values_are_noticed() {
    let mut phone = Phone::with_sign(-1);
    for i in 0..90 {
        let a = Phone::force(20.0).map(|v| -v + 0.004 * ((i * 7919 % 13) as f64 - 6.0));
        phone.event(a);
    }
    let reading = phone.live.tick(phone.t_ms).expect("a reading");
    assert!(reading.step_m_s2 < 0.02, "{}", reading.step_m_s2);
    let fine = reading.outcomes[0].budget.of(Source::Step);
    assert!(fine < 0.05, "the step is small: {fine}");
    // Unrounded and yet constant: the sensor's own step is unknown and taken as coarse.
    let mut phone = Phone::with_sign(1);
    for _ in 0..90 {
        phone.event(Phone::force(20.0));
    }
    let reading = phone.live.tick(phone.t_ms).expect("a reading");
    assert!(
        reading.outcomes[0].budget.of(Source::Step) > 0.2,
        "{:?}",
        reading.outcomes[0].budget
    );
}
