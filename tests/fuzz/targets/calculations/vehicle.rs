//! `vehicle`, `level`, `in_vehicle`.

use arbitrary::{Arbitrary, Result, Unstructured};
use plumbmark::check::{Basis, End, answer};
use plumbmark::in_vehicle::{Vehicle, in_vehicle};
use plumbmark::level::Level;
use plumbmark::vector::norm;
use plumbmark::vehicle::{Pointing, VehicleTerms};
use plumbmark_fuzz::{any, sound};

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    let terms = any::vehicle(u)?;
    let possible = terms.wrong_field().is_none();
    if possible {
        told(&terms);
    }
    let (on_rail, on_part) = (any::hold(u)?, any::hold(u)?);
    let lean = any::between_each(u, -0.4, 0.4)?;
    let face = any::estimate_at(u, sound::leaning(on_rail.normal(), lean))?;
    let contact = any::contact(u, on_rail.normal())?;
    let Ok(level) = Level::new(face, contact, on_rail.rotation(), 0.0) else {
        return anything(u, &terms);
    };
    assert!(level.up_body()[2] > 0.86, "no floor or rail is steeper");
    for (slope_deg, u_deg) in level.slope_deg() {
        assert!(slope_deg.abs() <= 30.1 && u_deg.is_finite() && u_deg > 0.0);
    }
    assert_eq!(level.has_moved(&level), Some(false));
    let up = any::estimate(u)?;
    let contact = any::contact(u, on_part.normal())?;
    let from = Basis {
        up: &up,
        other_up: u.ratio(1, 2)?.then_some(any::direction(u)?),
        rotation: &on_part.rotation(),
        contact: &contact,
    };
    let check = any::check(u)?;
    let limit = any::limit(u, check)?;
    let end = u.ratio(1, 2)?.then_some(*u.choose(&End::ALL)?);
    let parked = answer(check, &from, &limit, end);
    let vehicle = Vehicle {
        level: &level,
        terms: &terms,
        pointing: *u.choose(&Pointing::ALL)?,
    };
    if let Ok(there) = in_vehicle(&parked, &from, &vehicle, &limit)
        && possible
        && limit.validate().is_ok()
    {
        sound::in_vehicle(&there, &limit, end);
        // On level ground the part is as it is parked.
        let flat = norm(core::array::from_fn(|i| {
            level.up_body()[i] - terms.level_up()[i]
        }));
        if let (Some(a), Some(b), true) = (parked.measured, there.outcome.measured, flat == 0.0) {
            assert!((a.value_deg - b.value_deg).abs() < 0.01, "{a:?} {b:?}");
        }
    }
    anything(u, &terms)
}

fn told(terms: &VehicleTerms) {
    assert!((norm(terms.level_up()) - 1.0).abs() < 1e-5, "{terms:?}");
    let steepest = terms.working_slope_deg();
    let [along, across] = [terms.working_lengthwise_deg, terms.working_crosswise_deg];
    assert!(steepest >= along.max(across) - 1e-3, "{terms:?} {steepest}");
    assert!(steepest <= along + across + 1e-3, "{terms:?} {steepest}");
}

fn anything(u: &mut Unstructured<'_>, terms: &VehicleTerms) -> Result<()> {
    let _ = (terms.working_slope_deg(), terms.level_up());
    let rotation = <[[i8; 3]; 3]>::arbitrary(u)?;
    let (face, contact) = (any::wild_estimate(u)?, any::wild_contact(u)?);
    let Ok(level) = Level::new(face, contact, rotation, any::wide_number(u)?) else {
        return Ok(());
    };
    let _ = (level.slope_deg(), level.counts_at(any::wide_number(u)?));
    let _ = level.has_moved(&level);
    let up = any::wild_estimate(u)?;
    let from = Basis {
        up: &up,
        other_up: Some(any::vector(u)?),
        rotation: &rotation,
        contact: &contact,
    };
    let vehicle = Vehicle {
        level: &level,
        terms,
        pointing: Pointing::Left,
    };
    let check = any::check(u)?;
    let limit = any::limit(u, check)?;
    let parked = answer(check, &from, &limit, None);
    let _ = in_vehicle(&parked, &from, &vehicle, &limit);
    Ok(())
}
