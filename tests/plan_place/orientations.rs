//! The 24 ways round.

use super::*;

fn matrix(orientation: Orientation) -> Matrix3<f64> {
    let [x, y, z] = orientation.axes().map(|v| v.map(f64::from));
    Matrix3::from_columns(&[x.into(), y.into(), z.into()])
}

#[test]
fn are_all_proper_rotations_of_a_cube_once() {
    // Every matrix with one ±1 in each row and column and determinant 1, by trying all 3⁹.
    let mut proper = Vec::new();
    for code in 0..3usize.pow(9) {
        let m = Matrix3::from_fn(|r, c| {
            f64::from((code / 3usize.pow((3 * r + c) as u32) % 3) as u8) - 1.0
        });
        if m * m.transpose() == Matrix3::identity() && m.determinant() > 0.5 {
            proper.push(m);
        }
    }
    assert_eq!(proper.len(), 24);
    for m in proper {
        let same = Orientation::ALL.iter().filter(|o| matrix(**o) == m);
        assert_eq!(same.count(), 1, "{m}");
    }
}

#[test]
fn sixteen_keep_port_and_outlet_from_pointing_up() {
    // Heater: x to the outlet, port along −z (core/src/parts.rs). Neither may look up: common
    // practice, no source (check-values §5).
    let up = |m: &Matrix3<f64>, body: [f64; 3]| (m * nalgebra::Vector3::from(body))[2] > 0.5;
    let mut allowed = 0;
    for o in Orientation::ALL {
        let m = matrix(o);
        let looks_up = up(&m, [1.0, 0.0, 0.0]) || up(&m, [0.0, 0.0, -1.0]);
        assert_eq!(o.is_allowed(), !looks_up, "{o:?}");
        allowed += usize::from(o.is_allowed());
    }
    assert_eq!(allowed, 16);
    assert_eq!(Orientation::ALL[0].port, Way::Down);
}

#[test]
fn four_share_each_lay() {
    for lay in 0..6 {
        let same = Orientation::ALL.iter().filter(|o| o.lay() == lay);
        assert_eq!(same.count(), 4);
    }
}
