//! The one rotation of a sensor in what carries its reference.

use super::fault::{Fault, Kind};
use crate::vector::{cross, dot, turned};
use nalgebra::{Matrix3, Rotation3, SymmetricEigen, Vector3};

/// Largest rotation that is a mount's, degrees; a larger one says that the frames differ.
pub const LARGEST_DEG: f64 = 10.0;
/// Poses that lie nearer than this to one direction (root mean square), degrees, say nothing of
/// the part about it: an error of the sensor would stand in it sixfold, as 1/sin 10°.
const NEAR_DEG: f64 = 10.0;

/// A mount rotation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mount {
    /// Rotation vector from the reference's frame to the sensor's, radians.
    pub turn: [f64; 3],
    /// The direction about which nothing can be told, unit length, where there is one.
    pub left_out: Option<[f64; 3]>,
}

/// The rotation that brings the references nearest to the forces, by least squares over all pairs
/// of unit vectors (reference, force) at rest: Wahba's problem, by Gauss and Newton's steps on the
/// rotation vector, so that a part that the poses can't tell stays zero.
///
/// # Errors
/// [`Kind::NoRest`] and [`Kind::LargeMount`], for the session of that name.
pub fn mount(session: &str, pairs: &[([f64; 3], [f64; 3])]) -> Result<Mount, Fault> {
    if pairs.is_empty() {
        let text = "no sample at rest has a reference, so that no mount rotation can be found";
        return Err(Fault::of_file(session, Kind::NoRest, text));
    }
    let least = NEAR_DEG.to_radians().sin().powi(2);
    let mut rotation = Rotation3::identity();
    let mut left_out = None;
    // Steps shrink by far more than tenfold each; the last ones are below what a double holds.
    for _ in 0..12 {
        let turn: [f64; 3] = rotation.scaled_axis().into();
        let mut normal = Matrix3::zeros();
        let mut right = Vector3::zeros();
        for &(up, force) in pairs {
            let v = turned(up, turn);
            let column = Vector3::from(v);
            normal += Matrix3::identity() * dot(v, v) - column * column.transpose();
            right += Vector3::from(cross(v, force));
        }
        let eigen = SymmetricEigen::new(normal / pairs.len() as f64);
        let mut step = Vector3::zeros();
        left_out = None;
        for (axis, &value) in eigen.eigenvectors.column_iter().zip(&eigen.eigenvalues) {
            if value < least {
                left_out = Some(axis.into_owned().into());
            } else {
                step += axis * (axis.dot(&right) / pairs.len() as f64 / value);
            }
        }
        rotation = Rotation3::new(step) * rotation;
    }
    let turn = rotation.scaled_axis().into();
    // Opposite frames leave no first step, so what stays is looked at as well.
    let apart = |&(up, force): &([f64; 3], [f64; 3])| 2.0 * (1.0 - dot(turned(up, turn), force));
    let rest2 = pairs.iter().map(apart).sum::<f64>() / pairs.len() as f64;
    let (angle_deg, rest_deg) = (rotation.angle().to_degrees(), rest2.sqrt().to_degrees());
    if angle_deg > LARGEST_DEG || rest_deg > LARGEST_DEG {
        let text = format!(
            "a rotation of {angle_deg:.1}° leaves {rest_deg:.1}° between force and reference, and a mount's is at most {LARGEST_DEG}°; check frames, sign and columns"
        );
        return Err(Fault::of_file(session, Kind::LargeMount, text));
    }
    Ok(Mount { turn, left_out })
}
