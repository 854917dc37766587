//! `check`: from an up vector to an answer.

use arbitrary::{Arbitrary, Result, Unstructured};
use plumbmark::budget::{Contact, UpEstimate};
use plumbmark::check::{Basis, End, answer, value_deg};
use plumbmark_fuzz::{any, sound};

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    let check = any::check(u)?;
    let told = u.ratio(1, 2)?.then_some(*u.choose(&End::ALL)?);
    let rotation = any::hold(u)?.rotation();
    let small = |u: &mut Unstructured<'_>| any::between(u, 0.0, 0.02);
    let up = UpEstimate {
        up: any::direction(u)?,
        noise: [small(u)?, small(u)?, small(u)?],
        half_steps: [[small(u)?, 0.0, 0.0], [0.0, small(u)?, 0.0], [0.0; 3]],
        worst_half_step: small(u)?,
        settle_deg: any::between(u, 0.0, 1.0)?,
    };
    let contact = Contact {
        hold_deg: any::between(u, 0.02, 5.0)?,
        align_deg: any::between(u, 0.0, 10.0)?,
        normal: any::direction(u)?,
    };
    let other_up = u.ratio(1, 2)?.then_some(any::direction(u)?);
    let from = Basis {
        up: &up,
        other_up,
        rotation: &rotation,
        contact: &contact,
    };
    let limit = any::limit(u, check)?;
    if limit.validate().is_ok() {
        sound::outcome(&answer(check, &from, &limit, told), &limit, told);
    }
    // Anything at all.
    let up = UpEstimate {
        up: any::vector(u)?,
        noise: any::vector(u)?,
        ..up
    };
    let rotation = <[[i8; 3]; 3]>::arbitrary(u)?;
    let from = Basis {
        up: &up,
        other_up: Some(any::vector(u)?),
        rotation: &rotation,
        contact: &contact,
    };
    let _ = answer(any::check(u)?, &from, &limit, told);
    let _ = value_deg(check, &rotation, up.up);
    Ok(())
}
