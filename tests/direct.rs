//! A sensor read directly against the way of a phone's events, and against what its data sheet says.

use plumbmark::calibration::{CalibrationRefusal, Poses};
use plumbmark::check::End;
use plumbmark::decision::Verdict;
use plumbmark::direct::Direct;
use plumbmark::findings::Device;
use plumbmark::holds::{Hold, Placement, Surface};
use plumbmark::limits::LimitSet;
use plumbmark::live::Live;
use plumbmark::parts::Part;
use plumbmark::reading::ZeroBy;
use plumbmark::reason::NoReading;
use plumbmark::sensor::Sensor;
use plumbmark_tests::Draws;
use plumbmark_tests::laid::{LIFTED, Laid, SAMPLE_US};

/// A browser's step, and a count of 1 mg.
const BROWSER: f64 = 0.1;
const FINE: f32 = 0.009_806_65;

/// The same samples as a phone's events.
fn live(laid: &Laid, placements: &[Vec<[i16; 3]>]) -> Result<Live, NoReading> {
    let mut live = Live::with_limits(laid.limits.clone());
    let (device, mut t_ms) = (Device::default(), 0.0);
    let mut send = |live: &mut Live, counts: [i16; 3]| {
        t_ms += f64::from(SAMPLE_US) / 1000.0;
        live.motion(t_ms, counts.map(|c| Some(f64::from(c) / 10.0)));
        t_ms
    };
    live.set_sign(1);
    live.set_device(device);
    if let Some(calibration) = laid.calibration {
        live.findings_mut()
            .keep_calibration(device, calibration, 0.0);
    }
    // The first event has none before it to tell its time step by.
    send(&mut live, placements[0][0]);
    let p = laid.placement;
    live.select(p.part.unwrap(), p.hold, p.surface).unwrap();
    for (i, samples) in placements.iter().enumerate() {
        if i > 0 {
            live.keep_placement()?;
            let t_ms = send(&mut live, LIFTED);
            assert!(live.tick(t_ms).is_err());
            live.tell_turned();
        }
        let mut t_ms = 0.0;
        for counts in samples {
            t_ms = send(&mut live, *counts);
        }
        for (&check, end) in p.checks.iter().zip(laid.ends) {
            live.tell_end(check, end);
        }
        live.tick(t_ms)?;
    }
    Ok(live)
}

/// The same samples give the same outcomes, bit for bit, or the same reason why not.
#[test]
fn it_answers_as_a_phone_does() {
    let mut draws = Draws::new(11);
    let (mut compared, mut refused, mut turned, mut verdicts) = (0, 0, 0, [0; 4]);
    for _ in 0..3000 {
        let laid = Laid::draw(&mut draws, BROWSER, Sensor::assumed());
        let placements = laid.placements(&mut draws);
        let by_gauge = laid.take(&placements);
        match (live(&laid, &placements), by_gauge) {
            (Ok(live), Ok(taken)) => {
                let reading = live.reading().unwrap();
                let given = taken.outcomes(&laid.limits.lines, laid.surface_deg());
                assert_eq!(reading.outcomes, given, "{laid:?}");
                for (outcome, decided) in given
                    .iter()
                    .zip(&taken.decided(&laid.limits.lines, laid.surface_deg()))
                {
                    assert_eq!(outcome.measured, decided.measured);
                    assert_eq!(
                        (outcome.verdict, outcome.why),
                        (decided.verdict, decided.why)
                    );
                    verdicts[outcome.verdict as usize] += 1;
                }
                assert_eq!(
                    (reading.zero_by, reading.samples),
                    (taken.zero_by, taken.samples)
                );
                compared += 1;
                turned += u32::from(taken.zero_by == ZeroBy::Turn);
            }
            (live, by_gauge) => {
                assert_eq!(live.err(), by_gauge.err(), "{laid:?}");
                refused += 1;
            }
        }
    }
    println!("{compared} alike ({turned} turned), {refused} refused alike, {verdicts:?}");
    assert!(compared > 2000 && turned > 500 && verdicts.iter().all(|n| *n > 100));
}

fn pump() -> Placement {
    Placement::new(Part::Pump, Hold::LongEdge, Surface::RoundBody).unwrap()
}

fn gauge(sensor: Sensor) -> Direct {
    Direct::new(FINE, sensor, pump())
}

/// Lies still where it feels `g` along its axes, share of gravity, with 3 mg of noise.
fn lie(direct: &mut Direct, draws: &mut Draws, g: [f64; 3]) {
    for _ in 0..120 {
        let counts = g.map(|v| (1000.0 * v + 3.0 * draws.normal()).round() as i16);
        direct.push(10_000, counts).unwrap();
    }
}

const SURFACE_DEG: (f32, f32) = (0.1, 1.0);
const ENDS: [Option<End>; 2] = [Some(End::Tail), None];

/// GUM 5.1.2 at level, where an elevation answers to the zero across it alone: u = 180/π · u_zero
/// (cross-axis error of 0.002 beside it), by hand.
#[test]
fn the_data_sheet_is_in_the_budget() {
    let mut draws = Draws::new(1);
    // A tolerance of ±40 mg taken as a rectangle: 40/√3 = 23.1 mg.
    let mut direct = gauge(Sensor::unchecked(0.0231, 0.02));
    lie(&mut direct, &mut draws, [-1.0, 0.0, 0.0]);
    let taken = direct.take(SURFACE_DEG, ENDS).unwrap();
    let set = LimitSet::trade_usage();
    let outcome = taken.outcomes(&set.lines, SURFACE_DEG)[0];
    let zero_deg = outcome.budget.of(plumbmark::budget::Source::Zero);
    let by_hand = (0.0231_f32.hypot(0.002)).to_degrees();
    assert!((zero_deg - by_hand).abs() < 0.002, "{zero_deg} {by_hand}");
    assert_eq!(taken.zero_by, ZeroBy::Assumed);
    assert!(outcome.measured.unwrap().u_deg > 1.965 * by_hand * 0.99);
}

/// What a turn end for end takes out, and what it doesn't tell: not turned, too old, tipped.
#[test]
fn a_turn_takes_the_zero_out() {
    let mut draws = Draws::new(2);
    let (zero, slope) = (0.02, 20.0_f64.to_radians());
    let (x, y) = (-slope.cos(), slope.sin());
    let mut direct = gauge(Sensor::unchecked(0.0231, 0.02));
    lie(&mut direct, &mut draws, [x, y + zero, 0.0]);
    let once = direct.take(SURFACE_DEG, ENDS).unwrap();
    direct.keep_first().unwrap();
    lie(&mut direct, &mut draws, [x, y + zero, 0.0]);
    assert_eq!(direct.take(SURFACE_DEG, ENDS), Err(NoReading::NotTurned));
    assert_eq!(direct.push(10_000, LIFTED), Err(NoReading::NotGravity));
    // About the edge's normal, the device's x.
    lie(&mut direct, &mut draws, [x, -y + zero, 0.0]);
    let both = direct.take(SURFACE_DEG, ENDS).unwrap();
    let set = LimitSet::trade_usage();
    let measured = |taken: &plumbmark::direct::Taken| {
        let outcome = taken.outcomes(&set.lines, SURFACE_DEG)[0];
        outcome.measured.unwrap()
    };
    assert!((measured(&once).value_deg - 20.0).abs() > 0.9);
    assert!((measured(&both).value_deg - 20.0).abs() < 0.1);
    assert!(measured(&both).u_deg < 0.6 * measured(&once).u_deg);
    assert_eq!(both.zero_by, ZeroBy::Turn);
    for _ in 0..180 {
        lie(&mut direct, &mut draws, [x, -y + zero, 0.0]);
    }
    assert_eq!(direct.take(SURFACE_DEG, ENDS), Err(NoReading::TurnTooOld));
    direct.forget_first();
    assert!(direct.take(SURFACE_DEG, ENDS).is_ok());
    direct.keep_first().unwrap();
    direct.restart();
    lie(&mut direct, &mut draws, [x.cos(), x.sin(), 0.0]);
    assert_eq!(
        direct.take(SURFACE_DEG, ENDS),
        Err(NoReading::TurnDisagrees)
    );
}

/// A sensor whose maker states ±88 mg has a zero of 70 mg, which no phone's has: it is found and
/// taken out where that was said, and refused where it was not.
#[test]
fn a_larger_zero_is_a_sensors_where_its_maker_says_so() {
    let (zero, largest) = (0.07, 0.088_f32);
    let slope = 12.0_f64.to_radians();
    let (x, y) = (-slope.cos(), slope.sin());
    let turned_by = |direct: Direct, draws: &mut Draws| {
        let mut direct = direct;
        lie(&mut direct, draws, [x, y + zero, 0.0]);
        direct.keep_first().unwrap();
        assert!(direct.push(10_000, LIFTED).is_err());
        lie(&mut direct, draws, [x, -y + zero, 0.0]);
        direct.take(SURFACE_DEG, ENDS)
    };
    let mut draws = Draws::new(5);
    let stated = gauge(Sensor::unchecked(0.051, 0.02));
    let refused = turned_by(stated.clone(), &mut draws);
    assert_eq!(refused, Err(NoReading::TurnDisagrees));
    let taken = turned_by(stated.with_largest_zero(largest), &mut draws).unwrap();
    let measured = taken.outcomes(&LimitSet::trade_usage().lines, SURFACE_DEG)[0]
        .measured
        .unwrap();
    assert!((measured.value_deg - 12.0).abs() < 0.15, "{measured:?}");

    let mut poses = Poses::new();
    for up in POSES {
        let mut direct = gauge(Sensor::unchecked(0.051, 0.02)).with_largest_zero(largest);
        let up = plumbmark_tests::vector::unit(up);
        lie(&mut direct, &mut draws, [up[0], up[1] + zero, up[2]]);
        poses.add(direct.pose().unwrap()).unwrap();
    }
    assert_eq!(poses.fit().unwrap_err(), CalibrationRefusal::TooLarge);
    let found = poses.fit_within(largest).unwrap();
    assert!((f64::from(found.zero[1]) - zero).abs() < 0.002, "{found:?}");
}

/// The six faces, and three between them.
const POSES: [[f64; 3]; 9] = [
    [0.0, 0.0, 1.0],
    [0.0, 0.0, -1.0],
    [1.0, 0.0, 0.0],
    [-1.0, 0.0, 0.0],
    [0.0, 1.0, 0.0],
    [0.0, -1.0, 0.0],
    [1.0, 1.0, 0.0],
    [0.0, 1.0, 1.0],
    [1.0, 0.0, 1.0],
];

/// Nine poses find zero and scale; the answers stand on them.
#[test]
fn faces_calibrate_it() {
    let mut draws = Draws::new(3);
    let (zero, scale) = ([0.015, -0.01, 0.02], [1.01, 0.99, 1.005]);
    let felt = |up: [f64; 3]| {
        let up = plumbmark_tests::vector::unit(up);
        [0, 1, 2].map(|i| zero[i] + scale[i] * up[i])
    };
    let unchecked = Sensor::unchecked(0.0231, 0.02);
    let mut direct = gauge(unchecked);
    let mut poses = Poses::new();
    for up in POSES {
        direct.restart();
        lie(&mut direct, &mut draws, felt(up));
        poses.add(direct.pose().unwrap()).unwrap();
    }
    let found = poses.fit().unwrap();
    direct.set_sensor(unchecked.calibrated(&found, 1).crept(0.003));
    let slope = 17.5_f64.to_radians();
    direct.restart();
    lie(
        &mut direct,
        &mut draws,
        felt([-slope.cos(), slope.sin(), 0.0]),
    );
    let taken = direct.take(SURFACE_DEG, ENDS).unwrap();
    let outcome = taken.outcomes(&LimitSet::trade_usage().lines, SURFACE_DEG)[0];
    let measured = outcome.measured.unwrap();
    assert!((measured.value_deg - 17.5).abs() < measured.u_deg);
    assert!((measured.value_deg - 17.5).abs() < 0.15, "{measured:?}");
    assert_eq!(
        (taken.zero_by, outcome.verdict),
        (ZeroBy::Found, Verdict::Within)
    );
    // 3 mg crept since: never better than that.
    assert!(taken.up.sensor.u_zero.iter().all(|u| *u >= 0.003));
}

/// Every fault begins the window anew, so that no old number is taken.
#[test]
fn faults_leave_nothing_to_take() {
    let mut draws = Draws::new(4);
    let fault = |direct: &mut Direct, dt_us, counts| {
        let reason = direct.push(dt_us, counts).unwrap_err();
        assert_eq!(direct.take(SURFACE_DEG, ENDS), Err(NoReading::Filling));
        reason
    };
    let mut direct = gauge(Sensor::assumed());
    for (dt_us, counts, reason) in [
        (0, [-1000, 0, 0], NoReading::TimeRepeated),
        (200_001, [-1000, 0, 0], NoReading::Gap),
        (10_000, [-1300, 0, 0], NoReading::NotGravity),
        (10_000, [i16::MIN; 3], NoReading::NotGravity),
        (10_000, [-980, 150, 0], NoReading::Moving),
    ] {
        assert_eq!(direct.take(SURFACE_DEG, ENDS), Err(NoReading::Filling));
        lie(&mut direct, &mut draws, [-1.0, 0.0, 0.0]);
        assert!(direct.take(SURFACE_DEG, ENDS).is_ok());
        assert_eq!(fault(&mut direct, dt_us, counts), reason);
    }
    // A gauge has no camera.
    lie(&mut direct, &mut draws, [-1.0, 0.0, 0.0]);
    let taken = direct.take(SURFACE_DEG, [Some(End::Photo); 2]).unwrap();
    assert_eq!(taken.ends, [Some(End::CantTell), None]);
    direct.place(Placement::on_face(Hold::Back, Surface::MetalFace).unwrap());
    lie(&mut direct, &mut draws, [-1.0, 0.0, 0.0]);
    assert_eq!(direct.take(SURFACE_DEG, ENDS), Err(NoReading::Starting));
}
