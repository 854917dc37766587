//! `reversal`.

use arbitrary::{Arbitrary, Result, Unstructured};
use plumbmark::budget::Budget;
use plumbmark::frames::angle_deg;
use plumbmark::prior::LARGEST_ZERO;
use plumbmark::reversal::{TurnRefusal, find_zero, half_turn, turned};
use plumbmark::sensor::Sensor;
use plumbmark::vector::{Vec3, dot, norm, unit};
use plumbmark_fuzz::any;

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    anything(u)?;
    let normal = any::hold(u)?.normal();
    let contact = any::contact(u, normal)?;
    let true_up = any::direction(u)?;
    let all = any::between_each(u, -0.05, 0.05)?;
    let zero: Vec3 = core::array::from_fn(|i| if normal[i] == 0.0 { all[i] } else { 0.0 });
    let felt = |up: Vec3| unit(core::array::from_fn(|i| up[i] + zero[i])).unwrap_or(up);
    let first = any::estimate_at(u, felt(true_up))?;
    let second = any::estimate_at(u, felt(half_turn(true_up, normal)))?;
    if let Ok(found) = find_zero(&[first, second], &contact) {
        // What is missed, on a steep face most of it, is in the uncertainty.
        let off = |i: usize| (found.zero[i] - zero[i]).abs();
        assert!(
            (0..3).all(|i| off(i) < 1e-3 + 2.0 * found.u_zero[i]),
            "{zero:?} {found:?}"
        );
        assert!(found.zero.iter().all(|z| z.abs() <= LARGEST_ZERO));
        assert!(found.u_zero.iter().all(|s| s.is_finite() && *s >= 0.0));
        let along = dot(found.u_zero, normal).abs() + dot(found.zero, normal).abs();
        assert!(along < 1e-6, "nothing is found along the normal: {found:?}");
    }
    if let Ok(up) = turned(&first, &second, &contact, &Sensor::assumed(), LARGEST_ZERO) {
        assert!((norm(up.up) - 1.0).abs() < 1e-4, "{up:?}");
        assert!(angle_deg(up.up, true_up) < 0.5, "{true_up:?} {up:?}");
        let budget = Budget::new(&up, &contact, any::direction(u)?);
        assert!(
            budget.combined_deg() >= contact.hold_deg * 0.999,
            "the hold counts in full"
        );
    }
    Ok(())
}

fn anything(u: &mut Unstructured<'_>) -> Result<()> {
    let one = any::wild_estimate(u)?;
    let mut placements = [one; 5];
    placements[1] = any::wild_estimate(u)?;
    placements[2] = any::wild_estimate(u)?;
    let contact = any::wild_contact(u)?;
    let count = u.int_in_range(0..=placements.len())?;
    let found = find_zero(&placements[..count], &contact);
    if count != 2 && count != 4 {
        assert_eq!(found, Err(TurnRefusal::WrongCount));
    }
    if let Ok(found) = found {
        let _ = found.in_body_deg(&<[[i8; 3]; 3]>::arbitrary(u)?);
    }
    let _ = turned(&one, &placements[1], &contact, &placements[2].sensor, 0.1);
    let _ = half_turn(any::vector(u)?, any::vector(u)?);
    Ok(())
}
