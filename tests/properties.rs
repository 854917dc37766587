//! What holds for any input: no panic, no NaN, never better than the budget, the same in every
//! heading and attitude. Seeds are fixed; `PLUMBMARK_STUDY=full` takes ten times as many cases.

use plumbmark::budget::Source;
use plumbmark::check::End;
use plumbmark::decision::{Measured, Verdict, decide};
use plumbmark::holds::{Hold, Placement, Surface};
use plumbmark::limits::{Limit, LimitSet};
use plumbmark::live::Live;
use plumbmark::parts::{Check, Part, Quantity};
use plumbmark_tests::full_study;
use plumbmark_tests::vector::unit;
use proptest::prelude::*;
use proptest::test_runner::{Config, RngAlgorithm, RngSeed};

const G: f64 = 9.80665;
/// 8 mg and 0.2 % cross-axis, degrees: no verdict of an unchecked phone is better than this.
const ZERO_FLOOR_DEG: f32 = 0.472;

fn config() -> Config {
    Config {
        cases: if full_study() { 2560 } else { 256 },
        rng_algorithm: RngAlgorithm::ChaCha,
        rng_seed: RngSeed::Fixed(7),
        failure_persistence: None,
        ..Config::default()
    }
}

/// Any number a browser, or a bug, might send.
fn any_value() -> impl Strategy<Value = Option<f64>> {
    prop_oneof![
        4 => (-20.0..20.0_f64).prop_map(Some),
        1 => Just(None),
        1 => prop_oneof![
            Just(f64::NAN), Just(f64::INFINITY), Just(f64::NEG_INFINITY), Just(0.0), Just(-0.0),
            Just(f64::MAX), Just(f64::MIN_POSITIVE), Just(1e30)
        ].prop_map(Some),
    ]
}

#[derive(Debug, Clone)]
enum Event {
    Motion(f64, [Option<f64>; 3]),
    /// Many good events, so that readings do come up between the bad ones.
    Rest([f64; 3], usize),
    Orientation(Option<f64>, Option<f64>),
    Tick(f64),
    Sign(i8),
    FaceUp,
    Arm,
}

fn any_event() -> impl Strategy<Value = Event> {
    let time = prop_oneof![
        6 => 0.0..40.0_f64,
        1 => prop_oneof![Just(f64::NAN), Just(-5.0), Just(0.0), Just(1e12), Just(f64::INFINITY)],
    ];
    let direction = [-1.0..1.0_f64, -1.0..1.0_f64, -1.0..1.0_f64].prop_filter("a direction", |v| {
        v.iter().map(|c| c * c).sum::<f64>() > 0.01
    });
    prop_oneof![
        4 => (time.clone(), [any_value(), any_value(), any_value()]).prop_map(|(t, a)| Event::Motion(t, a)),
        3 => (direction, 1..90_usize).prop_map(|(d, n)| Event::Rest(unit(d), n)),
        2 => (any_value(), any_value()).prop_map(|(b, g)| Event::Orientation(b, g)),
        2 => time.prop_map(Event::Tick),
        1 => (-1..=1_i8).prop_map(Event::Sign),
        1 => Just(Event::FaceUp),
        1 => Just(Event::Arm),
    ]
}

/// All that a reading may never be.
fn sound(live: &Live) {
    let Ok(reading) = live.reading() else {
        assert!(live.up_body().is_none(), "no reading, no number");
        assert!(live.capture().is_err(), "no reading, no capture");
        return;
    };
    let length: f32 = reading.up.up.iter().map(|c| c * c).sum();
    assert!(
        (length - 1.0).abs() < 1e-4,
        "up is no unit vector: {length}"
    );
    for o in &reading.outcomes {
        assert!(
            o.budget
                .variances
                .iter()
                .all(|v| v.is_finite() && *v >= 0.0),
            "{:?}",
            o.budget
        );
        let Some(m) = o.measured else {
            assert_eq!(o.verdict, Verdict::None);
            continue;
        };
        let (low, high) = o.check.quantity().range_deg();
        assert!((low..=high).contains(&m.value_deg), "{m:?}");
        assert!(
            m.u_deg >= ZERO_FLOOR_DEG * 1.6,
            "better than the zero allows: {m:?}"
        );
        for u in Source::ALL.map(|s| o.budget.of(s)) {
            assert!(
                m.u_deg >= 1.64 * u,
                "smaller than a contribution: {m:?} {u}"
            );
        }
        assert!(o.probability.is_none_or(|p| (0.0..=1.0).contains(&p)));
        assert!(o.advice.turn_deg.is_none_or(f32::is_finite));
        assert!(o.advice.rise_mm.is_none_or(f32::is_finite));
        if o.verdict == Verdict::Within {
            let limit = live.limits().limit(o.check).permitted_deg();
            let (from, to) = m.interval_deg(limit);
            assert!(
                from >= limit.0 && to <= limit.1,
                "within, but {m:?} leaves {limit:?}"
            );
        }
    }
    let report = live.capture().expect("a reading is there");
    // In JSON what is no number would be null, as what is not there; here it has a name.
    let text = format!("{report:?}");
    let mut words = text.split(|c: char| !c.is_alphanumeric());
    assert!(!words.any(|w| w == "NaN" || w == "inf"), "{text}");
    serde_json::to_string(&report).expect("a report is JSON");
}

fn any_placement() -> impl Strategy<Value = Placement> {
    let all = || {
        Part::ALL.into_iter().flat_map(|p| {
            Hold::ALL.into_iter().flat_map(move |h| {
                Surface::ALL
                    .into_iter()
                    .filter_map(move |s| Placement::new(p, h, s).ok())
            })
        })
    };
    (0..all().count()).prop_map(move |i| all().nth(i).unwrap())
}

fn armed(placement: &Placement) -> Live {
    let mut live = Live::new();
    let part = placement.part.expect("a part");
    live.select(part, placement.hold, placement.surface)
        .unwrap();
    for check in Check::ALL {
        live.tell_end(check, Some(End::Photo));
    }
    live
}

/// A window of rest with up at `up` (device), rounded as browsers do, with a little dither.
fn rest(live: &mut Live, up: [f64; 3], t_ms: &mut f64, n: usize) {
    for i in 0..n {
        *t_ms += 1000.0 / 60.0;
        let a = [0, 1, 2].map(|k| {
            let dither = 0.03 * ((i * (k + 3)) as f64 * 2.399).sin();
            Some(((G * up[k] + dither) * 10.0).round() / 10.0)
        });
        live.motion(*t_ms, a);
    }
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn no_input_gives_a_panic_a_nan_or_a_verdict_better_than_the_budget(
        placement in any_placement(), events in prop::collection::vec(any_event(), 1..40)
    ) {
        let mut live = armed(&placement);
        let mut t_ms = 0.0;
        for event in events {
            match event {
                Event::Motion(dt, a) => {
                    live.motion(t_ms + dt, a);
                    if dt.is_finite() && dt < 1e6 { t_ms += dt; }
                }
                Event::Rest(up, n) => rest(&mut live, up, &mut t_ms, n),
                Event::Orientation(b, g) => live.orientation(b.map(|v| v * 20.0), g),
                Event::Tick(dt) => { let _ = live.tick(t_ms + dt); }
                Event::Sign(sign) => live.set_sign(sign),
                Event::FaceUp => { live.learn_sign_face_up(); }
                Event::Arm => live.arm(t_ms),
            }
            let _ = live.tick(t_ms);
            sound(&live);
        }
    }

    /// α is heading: turning the part about the vertical changes nothing, since α is not used and
    /// gravity does not know it. The two channels together, for any attitude.
    #[test]
    fn heading_changes_nothing(beta in -170.0..170.0_f64, gamma in -80.0..80.0_f64) {
        let (sb, cb) = beta.to_radians().sin_cos();
        let (sg, cg) = gamma.to_radians().sin_cos();
        let up = [-cb * sg, sb, cb * cg];
        let placement = Placement::new(Part::Heater, Hold::Back, Surface::MetalFace).unwrap();
        let read = |with_orientation: bool| {
            let mut live = armed(&placement);
            live.set_sign(1);
            if with_orientation { live.orientation(Some(beta), Some(gamma)); }
            let mut t_ms = 0.0;
            rest(&mut live, up, &mut t_ms, 70);
            live.tick(t_ms).map(|r| r.outcomes.iter().map(|o| o.measured.unwrap().value_deg).collect::<Vec<_>>())
        };
        if let (Ok(one), Ok(two)) = (read(false), read(true)) {
            prop_assert_eq!(one, two);
        }
    }

    /// The same part attitude read from every hold of a part gives the same angle within the
    /// intervals: device and placement turned together.
    #[test]
    fn every_hold_reads_the_same_part(elevation in -80.0..80.0_f64, roll in -60.0..60.0_f64) {
        let (se, ce) = elevation.to_radians().sin_cos();
        let (sr, cr) = roll.to_radians().sin_cos();
        let up_body = [se, ce * sr, ce * cr];
        for hold in Hold::ALL {
            let Ok(placement) = Placement::new(Part::Heater, hold, Surface::MetalFace) else { continue };
            let r = hold.rotation();
            let up = [0, 1, 2].map(|i| (0..3).map(|row| f64::from(r[row][i]) * up_body[row]).sum::<f64>());
            let mut live = armed(&placement);
            live.set_sign(1);
            let mut t_ms = 0.0;
            rest(&mut live, up, &mut t_ms, 70);
            let Ok(reading) = live.tick(t_ms) else { continue };
            let outlet = reading.outcomes.iter().find(|o| o.check == Check::HeaterOutlet).unwrap();
            let m = outlet.measured.unwrap();
            // No zero and no misplacement here: rounding alone, well inside.
            prop_assert!((f64::from(m.value_deg) - elevation).abs() < 0.6, "{:?} {:?}", hold, m);
        }
    }

    /// A smaller U turns "not proven" into an answer, never one answer into the other.
    #[test]
    fn within_and_beyond_never_swap_under_a_smaller_u(
        value in -90.0..90.0_f32, u in 0.0..20.0_f32, share in 0.0..1.0_f32,
        low in prop::option::of(-80.0..0.0_f32), high in prop::option::of(1.0..80.0_f32)
    ) {
        let limit = Limit { low_deg: low, high_deg: high, ..Limit::not_entered(Check::PipeFall) };
        let at = |u_deg| decide(&Measured {
            quantity: Quantity::Elevation, value_deg: value, u_deg, combined_deg: u_deg / 2.0, rectangle_deg: 0.0,
        }, &limit).0;
        let (wide, narrow) = (at(u), at(u * share));
        prop_assert!(wide == narrow || wide == Verdict::NotProven, "{:?} became {:?}", wide, narrow);
    }

    /// Rounded and perfectly still, anywhere: the step is in the budget.
    #[test]
    fn a_constant_rounded_signal_never_comes_out_certain(d in [-1.0..1.0_f64, -1.0..1.0, -1.0..1.0]) {
        prop_assume!(d.iter().map(|c| c * c).sum::<f64>() > 0.01);
        let up = unit(d);
        let a = up.map(|c| Some((G * c * 10.0).round() / 10.0));
        let placement = Placement::new(Part::Heater, Hold::Back, Surface::MetalFace).unwrap();
        let mut live = armed(&placement);
        live.set_sign(1);
        for i in 0..70 { live.motion(f64::from(i) * 16.7, a); }
        let reading = live.tick(69.0 * 16.7).expect("still is readable");
        for o in &reading.outcomes {
            prop_assert_eq!(o.budget.of(Source::Noise), 0.0);
            prop_assert!(o.budget.of(Source::Step) > 0.08, "{:?}", o.budget);
        }
    }

    /// Any limit set that core accepts can be decided against.
    #[test]
    fn any_accepted_limit_set_works(
        low in prop::option::of(-90.0..90.0_f32), high in prop::option::of(-90.0..90.0_f32),
        allowance in prop::option::of(-1.0..11.0_f32), at_limit in any::<bool>(),
        p_low in prop::option::of(-90.0..90.0_f32), length in prop::option::of(0.0..6000.0_f32)
    ) {
        let mut set = LimitSet::not_entered();
        let line = &mut set.lines[1];
        (line.low_deg, line.high_deg, line.preferred_low_deg) = (low, high, p_low);
        (line.allowance_deg, line.at_limit_allowed, line.length_mm) = (allowance, at_limit, length);
        line.set_source("p. 1").unwrap();
        let placement = Placement::new(Part::Heater, Hold::Back, Surface::MetalFace).unwrap();
        let mut live = armed(&placement);
        live.set_sign(1);
        if live.set_limits(set).is_ok() {
            let mut t_ms = 0.0;
            rest(&mut live, unit([0.1, 0.2, 0.9]), &mut t_ms, 70);
            let _ = live.tick(t_ms);
            sound(&live);
        }
    }
}
