//! `calibration`.

use arbitrary::{Result, Unstructured};
use plumbmark::calibration::{Calibration, CalibrationRefusal, POSES, Pose, Poses};
use plumbmark::prior::LARGEST_ZERO;
use plumbmark_fuzz::any;

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    if u.arbitrary()? {
        return anything(u);
    }
    // What a sensor with a zero and a scale feels is undone.
    let zero = any::between_each(u, -0.07, 0.07)?;
    let scale = any::between_each(u, 0.96, 1.04)?;
    let mut poses = Poses::new();
    while !u.is_empty() && poses.len() < POSES {
        let up = any::direction(u)?;
        let pose = Pose {
            force: core::array::from_fn(|i| zero[i] + scale[i] * up[i]),
            u: 1e-4,
            channels_agree: u.arbitrary()?,
        };
        let before = poses.len();
        assert_eq!(poses.add(pose).is_ok(), poses.len() == before + 1);
    }
    if let Some(c) = fitted(&poses) {
        for i in 0..3 {
            let (off, scale_off) = (c.zero[i] - zero[i], c.scale[i] - scale[i]);
            assert!(off.abs() < 2e-3, "{zero:?} {scale:?} {c:?}");
            assert!(scale_off.abs() < 2e-3, "{zero:?} {scale:?} {c:?}");
        }
    }
    Ok(())
}

fn fitted(poses: &Poses) -> Option<Calibration> {
    let fit = poses.fit();
    if poses.len() < 9 {
        assert_eq!(fit, Err(CalibrationRefusal::TooFewPoses));
    }
    let c = fit.ok()?;
    assert!(c.zero.iter().all(|z| z.abs() <= LARGEST_ZERO), "{c:?}");
    assert!(c.scale.iter().all(|s| (0.95..=1.06).contains(s)), "{c:?}");
    let uncertain = c.u_zero.iter().chain(&c.u_scale);
    assert!(
        uncertain.into_iter().all(|s| s.is_finite() && *s > 0.0),
        "{c:?}"
    );
    Some(c)
}

fn anything(u: &mut Unstructured<'_>) -> Result<()> {
    let mut poses = Poses::new();
    let wild = u.arbitrary()?;
    while !u.is_empty() {
        let pose = Pose {
            force: if wild {
                any::vector(u)?
            } else {
                any::between_each(u, -1.1, 1.1)?
            },
            u: if wild {
                any::number(u)?
            } else {
                any::between(u, 1e-4, 0.1)?
            },
            channels_agree: u.arbitrary()?,
        };
        let full = poses.len() == POSES;
        match poses.add(pose) {
            Ok(()) => assert!(!full),
            Err(refusal) => assert!(full || refusal == CalibrationRefusal::PoseTaken),
        }
    }
    if wild {
        let _ = poses.fit();
    } else {
        fitted(&poses);
    }
    Ok(())
}
