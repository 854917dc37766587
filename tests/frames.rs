//! Frames and angles against scipy, ahrs, Kahan's formula and two component makers' notes; holds
//! against their description in words. Sources stand in `reference/SOURCES.md`.

use plumbmark::frames::{angle_deg, elevation_deg, roll_deg, to_body, up_from_angles};
use plumbmark::holds::{Hold, Placement, Surface};
use plumbmark::parts::Part;
use plumbmark_tests::{Table, Worst};

/// In `f32`, with β up to 180°; achieved 1.5e-7.
const UP_TOLERANCE: f64 = 3e-7;
/// Degrees, wherever the angle is; achieved 1.8e-5 (180° has an ulp of 1.5e-5 in `f32`).
const ANGLE_TOLERANCE_DEG: f64 = 3e-5;
/// Degrees, below 1°; achieved 1.6e-6. `acos` would be off by up to 1.4e-2 here.
const SMALL_TOLERANCE_DEG: f64 = 3e-6;

fn single(v: [f64; 3]) -> [f32; 3] {
    v.map(|c| c as f32)
}

#[test]
fn up_from_w3c_angles() {
    let mut worst = Worst::new("up from angles");
    for row in Table::open("up_vectors.csv", 240).rows() {
        let got = up_from_angles(row.get("beta_deg") as f32, row.get("gamma_deg") as f32);
        for (g, want) in got.into_iter().zip(row.vector(["ux", "uy", "uz"])) {
            worst.see(f64::from(g) - want, UP_TOLERANCE);
        }
    }
}

/// W3C *Device Orientation and Motion*, examples: flat and face up, up is z; standing on its
/// bottom edge (β = 90), up is y; on its left edge (γ = 90), the right side looks down.
#[test]
fn the_standards_own_examples() {
    for (beta, gamma, want) in [
        (0.0, 0.0, [0.0, 0.0, 1.0]),
        (90.0, 0.0, [0.0, 1.0, 0.0]),
        (0.0, 90.0, [-1.0, 0.0, 0.0]),
    ] {
        let got = up_from_angles(beta, gamma);
        for i in 0..3 {
            approx::assert_abs_diff_eq!(got[i], want[i], epsilon = 1e-6);
        }
    }
}

#[test]
fn roll_pitch_inclination_of_the_notes_and_of_ahrs() {
    let mut worst = Worst::new("roll, pitch, inclination, degrees");
    for row in Table::open("tilt.csv", 219).rows() {
        let a = row.vector(["ax", "ay", "az"]);
        let length = a.iter().map(|v| v * v).sum::<f64>().sqrt();
        let up = single(a.map(|v| v / length));
        let mut close = |got: f32, want: f64| {
            let d = f64::from(got) - want;
            let d = d - 360.0 * (d / 360.0).round();
            worst.see(d, ANGLE_TOLERANCE_DEG);
        };
        close(roll_deg(up), row.get("roll"));
        close(roll_deg(up), row.get("ahrs_roll"));
        // The notes count pitch against ours: their x axis down is positive.
        close(-elevation_deg([1.0, 0.0, 0.0], up), row.get("pitch"));
        close(-elevation_deg([1.0, 0.0, 0.0], up), row.get("ahrs_pitch"));
        close(angle_deg([0.0, 0.0, 1.0], up), row.get("inclination"));
    }
}

#[test]
fn angles_keep_their_digits_where_limits_lie() {
    let mut worst = Worst::new("angles, degrees");
    let mut small = Worst::new("angles below 1°, degrees");
    for row in Table::open("angles.csv", 600).rows() {
        let p = single(row.vector(["px", "py", "pz"]));
        let q = single(row.vector(["qx", "qy", "qz"]));
        let want = row.get("angle");
        let deviation = f64::from(angle_deg(p, q)) - want;
        if want < 1.0 {
            small.see(deviation, SMALL_TOLERANCE_DEG);
        }
        worst.see(deviation, ANGLE_TOLERANCE_DEG);
        let elevation = f64::from(elevation_deg(p, q));
        worst.see(elevation - row.get("elevation"), ANGLE_TOLERANCE_DEG);
    }
}

/// A side of the phone, in words, as W3C's device axis.
fn side(words: &str) -> [f32; 3] {
    match words {
        "right edge" => [1.0, 0.0, 0.0],
        "left edge" => [-1.0, 0.0, 0.0],
        "top edge" => [0.0, 1.0, 0.0],
        "screen" => [0.0, 0.0, 1.0],
        other => panic!("no side {other}"),
    }
}

/// An entry of one of core's lists, by its name in JSON.
fn named<T: serde::de::DeserializeOwned>(name: &str) -> T {
    serde_json::from_value(name.into()).unwrap()
}

#[test]
fn every_placement_gives_what_its_words_say() {
    for row in Table::open("placements.csv", 60).rows() {
        let part: Part = named(row.text("part"));
        let hold: Hold = named(row.text("hold"));
        let surface: Surface = named(row.text("surface"));
        let gives = row.text("gives");
        match Placement::new(part, hold, surface) {
            Err(refusal) => assert_eq!(gives, format!("refused: {}", refusal.name())),
            Ok(placement) => {
                let names: Vec<_> = placement.checks.iter().map(|c| c.name()).collect();
                assert_eq!(names.join(" "), gives);
                let r = hold.rotation();
                // Body z looks away from the surface, body x to the head end.
                assert_eq!(
                    to_body(&r, side(row.text("away"))),
                    [0.0, 0.0, 1.0],
                    "{hold:?}"
                );
                assert_eq!(
                    to_body(&r, side(row.text("head"))),
                    [1.0, 0.0, 0.0],
                    "{hold:?}"
                );
                assert_eq!(placement.hold.normal(), side(row.text("away")));
            }
        }
    }
}

/// Right-handed: no hold mirrors the part.
#[test]
fn every_rotation_is_proper() {
    for hold in Hold::ALL {
        let r = hold.rotation().map(|row| row.map(i32::from));
        let det = r[0][0] * (r[1][1] * r[2][2] - r[1][2] * r[2][1])
            - r[0][1] * (r[1][0] * r[2][2] - r[1][2] * r[2][0])
            + r[0][2] * (r[1][0] * r[2][1] - r[1][1] * r[2][0]);
        assert_eq!(det, 1, "{hold:?}");
    }
}
