//! A real sensor beside an optical reference, through core: BROAD trial 04 (D. Laidig, M. Caruso,
//! A. Cereatti, T. Seel, Data 6(7):72, 2021, CC BY 4.0), raw and after a browser's rounding.
//! `cargo test -p plumbmark-tests --test recording -- --nocapture` prints error and U by pose.

use plumbmark_tests::full_study;
use plumbmark_tests::traces::{Mount, Options, Row, Trace, aligned, csv, mount, spots, study};
use plumbmark_tests::vector::{cross, unit};
use std::path::{Path, PathBuf};
use std::process::Command;

const ROWS: usize = 6858;
/// Rest segments of the recording: by its own flag there are three.
const POSES: usize = 3;

fn path() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("reference/broad-04-stream.csv")
}

fn judged(name: &str, options: &Options) -> Vec<Row> {
    let report = study(&path(), options);
    assert_eq!(report.faults, [], "{name}");
    for row in report.rows.iter().filter(|r| !r.file.is_empty()) {
        let (s, pose) = (
            row.summary,
            if row.pose.is_empty() {
                "all"
            } else {
                &row.pose
            },
        );
        println!(
            "{name:<22} pose {pose:<3} {:>5} readings, error rms {:.3}°, largest {:.3}°, mean U {:.3}°, inside {:.1} %",
            s.readings,
            s.rms_deg,
            s.largest_deg,
            s.mean_u_deg,
            s.coverage_percent()
        );
    }
    report.rows
}

/// The row of the whole file, after looking at what was captured while the flag said "moving":
/// nothing after the onset, and in it nothing that the reference contradicts or does not know.
fn file_row(rows: &[Row]) -> &Row {
    let file = rows.iter().find(|r| r.level == "file").expect("a file");
    let moving = file.moving.expect("the recording has a flag");
    assert_eq!(moving.late, 0, "captured while moved");
    assert_eq!(moving.wrong, 0, "wrong at the onset of movement");
    assert_eq!(moving.no_reference, 0, "captured while moved, markers lost");
    file
}

#[test]
fn the_reference_lies_inside_at_rest_and_nothing_is_captured_while_moved() {
    for (name, round, remove_mount) in [
        ("raw, as recorded", false, false),
        ("raw, mount removed", false, true),
        ("rounded, as recorded", true, false),
        ("rounded, mount removed", true, true),
    ] {
        let options = Options {
            round,
            remove_mount,
            turns: 0,
        };
        let rows = judged(name, &options);
        let file = file_row(&rows);
        assert_eq!((file.poses, file.poses_silent), (POSES, 0), "{name}");
        for row in rows.iter().filter(|r| r.level == "pose") {
            let s = row.summary;
            assert!(s.readings > 20, "{name}: {row:?}");
            assert_eq!(
                s.inside, s.readings,
                "{name}, pose {}: reference outside the interval",
                row.pose
            );
        }
    }
}

#[test]
fn the_reference_lies_inside_at_other_phases_of_the_rounding_and_other_attitudes() {
    let turns = if full_study() { 200 } else { 20 };
    let options = Options {
        round: true,
        remove_mount: true,
        turns,
    };
    let rows = judged(&format!("rounded, {turns} attitudes"), &options);
    let s = file_row(&rows).summary;
    assert!(s.readings > turns * 300);
    assert!(s.inside as f64 >= 0.95 * s.readings as f64);
}

/// All samples at rest, as (reference, force).
fn at_rest() -> Vec<([f64; 3], [f64; 3])> {
    let trace = Trace::open(&path()).unwrap();
    assert_eq!(trace.samples.len(), ROWS);
    let spots = spots(&trace);
    let resting = spots.iter().zip(&trace.samples).filter(|(s, _)| s.rest);
    resting
        .filter_map(|(_, s)| Some((s.up?, unit(s.motion_m_s2))))
        .collect()
}

#[test]
fn the_mount_rotation_is_the_mean_of_small_angles() {
    let pairs = at_rest();
    let Mount { turn, left_out } = mount("stream", &pairs).unwrap();
    for i in 0..3 {
        let total: f64 = pairs.iter().map(|&(u, f)| cross(u, f)[i]).sum();
        let mean = total / pairs.len() as f64;
        assert!((turn[i] - mean).to_degrees().abs() < 0.001, "{turn:?}");
    }
    // The three poses lie within 3° of level.
    assert!(left_out.expect("nothing is told about the vertical")[2].abs() > 0.998);
}

#[test]
fn the_command_prints_what_the_study_finds() {
    let run = |words: &[&str]| {
        let mut command = Command::new(env!("CARGO_BIN_EXE_traces"));
        let out = command.arg(path()).args(words).output().unwrap();
        assert!(out.status.success(), "{out:?}");
        [out.stdout, out.stderr].map(|text| String::from_utf8(text).unwrap())
    };
    let options = Options {
        round: true,
        remove_mount: true,
        turns: 0,
    };
    let rows = study(&path(), &options).rows;
    let [out, said] = run(&["--round", "--remove-mount", "--csv"]);
    assert_eq!(out, csv(&rows));
    assert!(
        said.contains("mount rotation (-0.239, 0.059, -0.004)° removed"),
        "{said}"
    );
    assert!(said.contains("is left out"), "{said}");
    let lines: Vec<_> = out.lines().collect();
    assert_eq!(lines.len(), 1 + POSES + 3);
    assert!(lines[POSES + 1].starts_with("file,broad-04-stream.csv,broad-04-stream.csv,,"));
    assert!(lines[POSES + 3].starts_with("all,,,,"));
    let [out, said] = run(&["--round", "--remove-mount"]);
    assert!(out.ends_with(&aligned(&rows)));
    assert!(out.starts_with("session broad-04-stream.csv: mount rotation"));
    assert_eq!(said, "");
}
