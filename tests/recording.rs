//! A real sensor beside an optical reference, through core: BROAD trial 04 (D. Laidig, M. Caruso,
//! A. Cereatti, T. Seel, Data 6(7):72, 2021, CC BY 4.0), raw and after a browser's rounding.
//! `cargo test -p plumbmark-tests --test recording -- --nocapture` prints error and U by pose.

use plumbmark::check::End;
use plumbmark::holds::{Hold, Surface};
use plumbmark::live::Live;
use plumbmark::parts::{Check, Part};
use plumbmark_tests::vector::{cross, elevation_deg, turned, unit};
use plumbmark_tests::{Draws, Table, full_study};

const ROWS: usize = 6858;
/// Rest segments of the recording: by its own flag there are three.
const POSES: usize = 3;
/// Axes of the sensor that the checks of the heater's flat hold read.
const AXES: [(Check, [f64; 3]); 2] = [
    (Check::HeaterPort, [0.0, 0.0, -1.0]),
    (Check::HeaterOutlet, [0.0, 1.0, 0.0]),
];

struct Sample {
    t_ms: f64,
    force: [f64; 3],
    up: Option<[f64; 3]>,
    moving: bool,
}

fn recording() -> Vec<Sample> {
    let table = Table::open("broad-04-stream.csv", ROWS);
    let sample = |row: plumbmark_tests::Row<'_>| {
        let up = row.vector(["ux", "uy", "uz"]);
        Sample {
            t_ms: row.get("t_ms"),
            force: row.vector(["ax", "ay", "az"]).map(|v| v / 1000.0),
            up: up.iter().all(|v| v.is_finite()).then(|| unit(up)),
            moving: row.get("moving") == 1.0,
        }
    };
    table.rows().map(sample).collect()
}

/// One reading against the reference.
struct Reading {
    pose: usize,
    /// For how long the data set's flag has said that it moves, ms; 0 at rest.
    moving_ms: f64,
    error_deg: f64,
    u_deg: f64,
}

/// Runs the stream through core, the sensor's frame turned by `w` before the browser rounds.
fn run(stream: &[Sample], w: [f64; 3], rounding: bool, mount: [f64; 3]) -> Vec<Reading> {
    let mut live = Live::new();
    live.set_sign(1);
    live.select(Part::Heater, Hold::Back, Surface::MetalFace)
        .unwrap();
    for (check, _) in AXES {
        live.tell_end(check, Some(End::Photo));
    }
    let mut readings = Vec::new();
    let mut pose = 0;
    let mut rest_ms = 0.0;
    let mut was_moving = false;
    for (i, s) in stream.iter().enumerate() {
        pose += usize::from(was_moving && !s.moving);
        was_moving = s.moving;
        if !s.moving {
            rest_ms = s.t_ms;
        }
        let a = turned(s.force, w).map(|v| {
            if rounding {
                (v * 10.0).round() / 10.0
            } else {
                v
            }
        });
        live.motion(s.t_ms, a.map(Some));
        if i % 3 != 0 {
            continue;
        }
        let Ok(reading) = live.tick(s.t_ms) else {
            continue;
        };
        let Some(up) = s.up else {
            assert!(
                !s.moving,
                "captured while moved, markers lost, at {} ms",
                s.t_ms
            );
            continue;
        };
        for outcome in &reading.outcomes {
            let measured = outcome.measured.expect("an elevation");
            let (_, axis) = AXES.iter().find(|(c, _)| *c == outcome.check).unwrap();
            let truth = elevation_deg(*axis, turned(turned(up, mount), w));
            readings.push(Reading {
                pose,
                moving_ms: s.t_ms - rest_ms,
                error_deg: f64::from(measured.value_deg) - truth,
                u_deg: f64::from(measured.u_deg),
            });
        }
    }
    readings
}

/// The one rotation of the sensor in its marker cluster that best explains the rest samples, for
/// small angles: the mean of u × f. The three poses lie within 3° of level, so that the part about
/// the vertical can't be told and is left out.
fn mount_rotation(stream: &[Sample]) -> [f64; 3] {
    let at_rest = stream.iter().filter(|s| !s.moving);
    let turns: Vec<_> = at_rest
        .filter_map(|s| s.up.map(|u| cross(u, unit(s.force))))
        .collect();
    [0, 1, 2].map(|i| turns.iter().map(|w| w[i]).sum::<f64>() / turns.len() as f64)
}

struct Summary {
    n: usize,
    inside: usize,
    rms_deg: f64,
    largest_deg: f64,
    mean_u_deg: f64,
}

fn summary(readings: &[&Reading]) -> Summary {
    let n = readings.len();
    let mean = |f: &dyn Fn(&Reading) -> f64| readings.iter().map(|r| f(r)).sum::<f64>() / n as f64;
    Summary {
        n,
        inside: readings
            .iter()
            .filter(|r| r.error_deg.abs() <= r.u_deg)
            .count(),
        rms_deg: mean(&|r| r.error_deg * r.error_deg).sqrt(),
        largest_deg: readings
            .iter()
            .map(|r| r.error_deg.abs())
            .fold(0.0, f64::max),
        mean_u_deg: mean(&|r| r.u_deg),
    }
}

/// Time after the flag's start in which movement can't be told from noise yet, ms: the flag starts
/// when the sensor is touched, and by then it has turned by less than 0.3° (optical reference).
const ONSET_MS: f64 = 500.0;

/// What was captured while the flag said "moving": nothing after the onset, and in it nothing
/// that the reference contradicts.
fn judge_moving(name: &str, readings: &[Reading]) {
    let moving: Vec<_> = readings.iter().filter(|r| r.moving_ms > 0.0).collect();
    let late = moving.iter().filter(|r| r.moving_ms > ONSET_MS).count();
    assert_eq!(late, 0, "{name}: captured while moved");
    let wrong = moving
        .iter()
        .filter(|r| r.error_deg.abs() > r.u_deg)
        .count();
    assert_eq!(wrong, 0, "{name}: wrong at the onset of movement");
    println!(
        "{name:<28} {} readings in the first 0.5 s of movement, none later",
        moving.len()
    );
}

/// Prints by pose and checks what the product promises; returns the readings it saw.
fn judge(name: &str, readings: &[Reading]) -> usize {
    judge_moving(name, readings);
    for pose in 0..POSES {
        let of_pose: Vec<_> = readings
            .iter()
            .filter(|r| r.pose == pose && r.moving_ms == 0.0)
            .collect();
        assert!(
            of_pose.len() > 20,
            "{name}: pose {pose} gave {} readings",
            of_pose.len()
        );
        let s = summary(&of_pose);
        println!(
            "{name:<28} pose {pose}: {:>5} readings, error rms {:.3}°, largest {:.3}°, mean U {:.3}°, inside {:.1} %",
            s.n,
            s.rms_deg,
            s.largest_deg,
            s.mean_u_deg,
            100.0 * s.inside as f64 / s.n as f64
        );
        assert_eq!(
            s.inside, s.n,
            "{name}, pose {pose}: reference outside the interval"
        );
    }
    readings.len()
}

#[test]
fn the_reference_lies_inside_at_rest_and_nothing_is_captured_while_moved() {
    let stream = recording();
    let mount = mount_rotation(&stream);
    println!(
        "mount rotation {:?}°",
        mount.map(|w| (w.to_degrees() * 1000.0).round() / 1000.0)
    );
    let still = [0.0; 3];
    for (name, rounding) in [("raw", false), ("rounded", true)] {
        judge(
            &format!("{name}, as recorded"),
            &run(&stream, still, rounding, still),
        );
        judge(
            &format!("{name}, mount removed"),
            &run(&stream, still, rounding, mount),
        );
    }
}

#[test]
fn the_reference_lies_inside_at_other_phases_of_the_rounding_and_other_attitudes() {
    let stream = recording();
    let mount = mount_rotation(&stream);
    let mut draws = Draws::new(4);
    let turns = if full_study() { 200 } else { 20 };
    let mut all = Vec::new();
    for _ in 0..turns {
        let w = draws.direction().map(|v| v * 1.5);
        let turn = draws.uniform();
        all.extend(run(&stream, w.map(|v| v * turn), true, mount));
    }
    judge_moving("rounded, other attitudes", &all);
    let s = summary(&all.iter().collect::<Vec<_>>());
    println!(
        "rounded, {turns} attitudes: {} readings, error rms {:.3}°, largest {:.3}°, mean U {:.3}°, inside {:.2} %",
        s.n,
        s.rms_deg,
        s.largest_deg,
        s.mean_u_deg,
        100.0 * s.inside as f64 / s.n as f64
    );
    assert!(s.n > turns * 300);
    assert!(s.inside as f64 >= 0.95 * s.n as f64);
}
