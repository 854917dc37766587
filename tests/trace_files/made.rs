//! Traces of a made sensor that is exact but for its noise and its mount.

use plumbmark_tests::Draws;
use plumbmark_tests::traces::{Options, Report, study};
use plumbmark_tests::vector::{turned, unit};
use std::path::{Path, PathBuf};

/// Standard acceleration, m/s².
pub const G: f64 = 9.80665;
const DT_MS: f64 = 1000.0 / 60.0;
/// The line of names that the rows begin with.
pub const NAMES: &str = "t_ms,ax,ay,az,ux,uy,uz";
/// Up in six poses, of any length.
pub const UPS: [[f64; 3]; 6] = [
    [0.0, 0.0, 1.0],
    [0.3, 0.1, 0.9],
    [0.9, 0.2, 0.3],
    [0.1, 0.9, 0.2],
    [-0.7, 0.4, 0.5],
    [0.1, -0.8, 0.6],
];

/// Four seconds at rest where up is `up`, of a sensor turned by `mount` (radians) against its
/// reference; `tail` is appended to each row.
fn rest(draws: &mut Draws, from_ms: f64, up: [f64; 3], mount: [f64; 3], tail: &str) -> String {
    let up = unit(up);
    let row = |i: u32| {
        let force = turned(up, mount).map(|v| G * v + 0.03 * draws.normal());
        let [ax, ay, az] = force.map(|v| format!("{:.3}", 1000.0 * v));
        let t_ms = from_ms + f64::from(i) * DT_MS;
        let [ux, uy, uz] = up;
        format!("{t_ms:.2},{ax},{ay},{az},{ux},{uy},{uz}{tail}\n")
    };
    (0..240).map(row).collect()
}

/// The rows of six poses one after the other, two seconds without events between them.
pub fn six_poses(seed: u64, mount: [f64; 3], tail: impl Fn(usize) -> String) -> String {
    let mut draws = Draws::new(seed);
    let poses = UPS.iter().enumerate();
    poses
        .map(|(i, up)| rest(&mut draws, 6000.0 * i as f64, *up, mount, &tail(i)))
        .collect()
}

/// A folder of its own for one test.
pub fn folder(name: &str, files: &[(&str, &str)]) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).unwrap();
    for (file, text) in files {
        std::fs::write(folder.join(file), text).unwrap();
    }
    folder
}

/// The study of such a folder.
pub fn studied(name: &str, files: &[(&str, &str)], options: Options) -> Report {
    study(&folder(name, files), &options)
}

/// Rounded as a browser does.
pub fn browser() -> Options {
    Options {
        round: true,
        ..Options::default()
    }
}
