//! The mount rotation, against what was put in and against a closed solution.

use crate::made::{NAMES, UPS, browser, six_poses, studied};
use nalgebra::{Matrix3, Vector3};
use plumbmark_tests::Draws;
use plumbmark_tests::traces::{Kind, Options, mount};
use plumbmark_tests::vector::{dot, turned, unit};

#[test]
fn the_mount_rotation_is_that_of_wahba_s_problem() {
    let known = [2.0_f64, -1.0, 1.5].map(f64::to_radians);
    let mut draws = Draws::new(5);
    let mut pairs = Vec::new();
    for up in UPS.map(unit) {
        for _ in 0..50 {
            let shaken = turned(up, known).map(|v| v + 0.01 * draws.normal());
            pairs.push((up, unit(shaken)));
        }
    }
    let found = mount("six", &pairs).unwrap();
    assert_eq!(found.left_out, None);
    // The closed solution by singular values (F. L. Markley, 1988), of nalgebra.
    let outer = |&(u, f): &([f64; 3], [f64; 3])| Vector3::from(f) * Vector3::from(u).transpose();
    let svd = pairs
        .iter()
        .map(outer)
        .sum::<Matrix3<f64>>()
        .svd(true, true);
    let (left, right) = (svd.u.unwrap(), svd.v_t.unwrap());
    let proper = Vector3::new(1.0, 1.0, (left * right).determinant());
    let rotation = left * Matrix3::from_diagonal(&proper) * right;
    for axis in [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]] {
        let by_svd: [f64; 3] = (rotation * Vector3::from(axis)).into();
        assert!(dot(by_svd, turned(axis, found.turn)) > 1.0 - 1e-15);
    }
    for (found, known) in found.turn.iter().zip(known) {
        assert!((found - known).to_degrees().abs() < 0.1);
    }
}

#[test]
fn one_mount_rotation_serves_a_session_and_a_large_one_is_refused() {
    let known = [2.0_f64, -3.0, 1.0].map(f64::to_radians);
    let text = |seed, session: &str, mount| {
        let rows = six_poses(seed, mount, |_| String::new());
        format!("# session: {session}\n{NAMES}\n{rows}")
    };
    let (a, b) = (text(6, "one", known), text(7, "one", known));
    let other = text(8, "two", known.map(|v| 4.0 * v));
    let opposite = format!("# sign: -1\n{}", text(9, "three", [0.0; 3]));
    let files = [
        ("a.csv", &*a),
        ("b.csv", &b),
        ("c.csv", &other),
        ("d.csv", &opposite),
    ];
    let removed = Options {
        remove_mount: true,
        ..browser()
    };
    let report = studied("session", &files, removed);
    let mounts: Vec<_> = report.mounts.iter().collect();
    assert_eq!(mounts.len(), 1);
    assert_eq!((mounts[0].0.as_str(), mounts[0].1.left_out), ("one", None));
    for (found, known) in mounts[0].1.turn.iter().zip(known) {
        assert!((found - known).to_degrees().abs() < 0.02);
    }
    let all = report.rows.last().unwrap();
    assert_eq!((all.poses, all.poses_inside), (12, 12));
    let refused = report.faults.iter().map(|f| (f.file.as_str(), f.kind));
    let expected = [("three", Kind::LargeMount), ("two", Kind::LargeMount)];
    assert_eq!(refused.collect::<Vec<_>>(), expected);
    let as_recorded = studied("session", &files[..1], browser());
    assert_eq!(as_recorded.rows.last().unwrap().poses_inside, 0);
}
