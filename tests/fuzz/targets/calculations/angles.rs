//! `frames`, `holds`, `parts`.

use arbitrary::{Arbitrary, Result, Unstructured};
use plumbmark::frames::{
    angle_deg, elevation_deg, elevation_sensitivity, on_earth, roll_deg, roll_sensitivity, to_body,
    to_device, up_by_angles, up_from_angles,
};
use plumbmark::holds::{Placement, Surface};
use plumbmark::parts::Part;
use plumbmark::vector::{Vec3, norm};
use plumbmark_fuzz::any;

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    anything(u)?;
    let (axis, up) = (any::direction(u)?, any::direction(u)?);
    for vector in [elevation_sensitivity(axis, up), up] {
        assert!((norm(vector) - 1.0).abs() < 1e-4, "{axis:?} {up:?}");
    }
    assert!(elevation_deg(axis, up).is_finite());
    assert!(angle_deg(axis, up).is_finite());
    assert!(roll_sensitivity(up).is_none_or(|c| c.iter().all(|v| v.is_finite())));
    let (beta_deg, gamma_deg) = (any::hundredths(u)?, any::hundredths(u)?);
    assert!((norm(up_from_angles(beta_deg, gamma_deg)) - 1.0).abs() < 1e-5);
    let up_there = on_earth(
        [any::hundredths(u)?, beta_deg, gamma_deg],
        up_from_angles(beta_deg, gamma_deg),
    );
    assert!(angle_deg(up_there, [0.0, 0.0, 1.0]) < 1e-3, "{up_there:?}");
    for change in up_by_angles(beta_deg, gamma_deg) {
        assert!(norm(change) < 1.0 + 1e-5);
    }
    turned(u, up)
}

fn anything(u: &mut Unstructured<'_>) -> Result<()> {
    let (a, b) = (any::vector(u)?, any::vector(u)?);
    let within = |v: f32, low: f32, high: f32| v.is_nan() || (low..=high).contains(&v);
    assert!(within(elevation_deg(a, b), -90.0, 90.0), "{a:?} {b:?}");
    assert!(within(angle_deg(a, b), 0.0, 180.0), "{a:?} {b:?}");
    assert!(within(roll_deg(a), -180.0, 180.0), "{a:?}");
    let _ = (elevation_sensitivity(a, b), roll_sensitivity(a));
    let _ = up_from_angles(any::number(u)?, any::number(u)?);
    let _ = up_by_angles(any::number(u)?, any::number(u)?);
    let _ = on_earth(any::vector(u)?, a);
    let rotation = <[[i8; 3]; 3]>::arbitrary(u)?;
    let _ = (to_body(&rotation, a), to_device(&rotation, a));
    Ok(())
}

/// A hold's rotation turned back gives the vector again.
fn turned(u: &mut Unstructured<'_>, up: Vec3) -> Result<()> {
    let (part, surface) = (*u.choose(&Part::ALL)?, *u.choose(&Surface::ALL)?);
    let hold = any::hold(u)?;
    assert_eq!(
        to_device(&hold.rotation(), to_body(&hold.rotation(), up)),
        up
    );
    assert_eq!(to_body(&hold.rotation(), hold.normal()), [0.0, 0.0, 1.0]);
    if let Ok(face) = Placement::on_face(hold, surface) {
        assert!(face.part.is_none() && face.checks.is_empty());
    }
    if let Ok(placement) = Placement::new(part, hold, surface) {
        assert!((1..=2).contains(&placement.checks.len()));
        assert!(placement.checks.iter().all(|c| c.part() == part));
        let (hold_deg, align_deg) = placement.contact_deg(surface.assumed_deg());
        assert!(hold_deg > 0.0 && align_deg > 0.0);
    }
    Ok(())
}
