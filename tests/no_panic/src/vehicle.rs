//! The vehicle's level, and a check in the vehicle.

use crate::{any, any_contact, any_estimate, write_to_nowhere};
use plumbmark::check::{Basis, End, answer};
use plumbmark::in_vehicle::{Vehicle, in_vehicle};
use plumbmark::level::{Level, LevelRefusal};
use plumbmark::limits::Limit;
use plumbmark::parts::Check;
use plumbmark::vehicle::{Pointing, VehicleTerms};

pub(crate) fn call() {
    let terms = any(VehicleTerms::ASSUMED);
    any(terms.wrong_field());
    any((terms.working_slope_deg(), terms.level_up()));
    any(any(Pointing::Left).turn());
    let refusal = any(LevelRefusal::Stale);
    any(refusal.name());
    write_to_nowhere(&refusal);
    if let (Ok(level), Ok(later)) = (any_level(), any_level()) {
        any((level.up_body(), level.counts_at(any(0.0))));
        any((level.has_moved(&later), level.slope_deg()));
        check(&level, &terms);
    }
}

fn any_level() -> Result<Level, LevelRefusal> {
    let rotation = any([[0; 3]; 3]);
    any(Level::new(
        any_estimate(),
        any_contact(),
        rotation,
        any(0.0),
    ))
}

fn check(level: &Level, terms: &VehicleTerms) {
    let (up, contact, rotation) = (any_estimate(), any_contact(), any([[0; 3]; 3]));
    let from = Basis {
        up: &up,
        other_up: any(None),
        rotation: &rotation,
        contact: &contact,
    };
    let vehicle = Vehicle {
        level,
        terms,
        pointing: any(Pointing::Left),
    };
    let limit = any(Limit::not_entered(any(Check::PumpRoll)));
    let parked = answer(any(Check::PumpRoll), &from, &limit, any(Some(End::Head)));
    any(in_vehicle(&any(parked), &from, &vehicle, &limit)).ok();
}
