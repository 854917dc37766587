//! `check`: from an up vector to an answer.

use arbitrary::{Arbitrary, Result, Unstructured};
use plumbmark::check::{Basis, End, answer, value_deg};
use plumbmark_fuzz::{any, sound};

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    let check = any::check(u)?;
    let told = u.ratio(1, 2)?.then_some(*u.choose(&End::ALL)?);
    let rotation = any::hold(u)?.rotation();
    let (up, normal) = (any::estimate(u)?, any::direction(u)?);
    let contact = any::contact(u, normal)?;
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
    let up = any::wild_estimate(u)?;
    let rotation = <[[i8; 3]; 3]>::arbitrary(u)?;
    let from = Basis {
        up: &up,
        other_up: Some(any::vector(u)?),
        rotation: &rotation,
        contact: &contact,
    };
    let _ = answer(any::check(u)?, &from, &limit, told);
    let _ = value_deg(check, up.up);
    Ok(())
}
