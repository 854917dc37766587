//! Calibrations from poses: a known zero and scale, noise, and now and then a set that is no good.

use crate::reading::one_of;
use crate::row::Row;
use plumbmark::calibration::{Pose, Poses};
use plumbmark_tests::Draws;
use plumbmark_tests::vector::{dot, unit};

/// Faces, edges and corners of a cube, turned a little: every set is looked at from all sides.
fn poses(draws: &mut Draws) -> Vec<[f64; 3]> {
    let mut all = Vec::new();
    for x in [-1.0, 0.0, 1.0] {
        for y in [-1.0, 0.0, 1.0] {
            for z in [-1.0, 0.0, 1.0] {
                if dot([x, y, z], [x, y, z]) > 0.5 {
                    let (pose, jitter) = (unit([x, y, z]), draws.direction());
                    all.push(unit([0, 1, 2].map(|i| pose[i] + 0.06 * jitter[i])));
                }
            }
        }
    }
    // Six faces first, the rest in any order.
    for i in (1..all.len()).rev() {
        all.swap(i, (draws.uniform() * (i + 1) as f64) as usize);
    }
    all.sort_by_key(|v| v.iter().all(|c| c.abs() < 0.9));
    all
}

/// A case.
pub fn case(draws: &mut Draws) -> Row {
    let zero = [0; 3].map(|_| draws.between(-0.03, 0.03));
    let mut scale = [0; 3].map(|_| draws.between(0.98, 1.02));
    let u = draws.between(0.0005, 0.003);
    let mut all = poses(draws);
    let count = draws.between(10.0, 18.9) as usize;
    let wrong = draws.uniform();
    let mut noise = u;
    match wrong {
        p if p < 0.06 => all.truncate(8),
        // One axis never looks down.
        p if p < 0.12 => all.retain(|v| v[1] > -0.4),
        p if p < 0.18 => scale[2] = one_of(draws, &[0.93, 1.07]),
        p if p < 0.24 => noise = 6.0 * u,
        _ => {}
    }
    all.truncate(count);
    let mut poses = Poses::new();
    let mut row = Row::new("fit");
    let mut forces = Vec::new();
    for up in all {
        let feels = |i: usize| (scale[i] * up[i] + zero[i] + noise * draws.normal()) as f32;
        let force = [0, 1, 2].map(feels);
        let pose = Pose {
            force,
            u: u as f32,
            channels_agree: false,
        };
        // What is within 20° of an earlier one is left out, by core and here.
        if poses.add(pose).is_ok() {
            forces.extend(force);
        }
    }
    row.singles("forces", &forces);
    row.singles("u", &[u as f32]);
    match poses.fit() {
        Ok(found) => {
            row.singles("core_zero", &found.zero);
            row.singles("core_u_zero", &found.u_zero);
            row.singles("core_scale", &found.scale);
            row.singles("core_u_scale", &found.u_scale);
        }
        Err(refusal) => row.word("core_refusal", refusal.name()),
    }
    row
}
