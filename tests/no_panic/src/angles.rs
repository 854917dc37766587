//! Vectors, frames, placements.

use crate::{any, any_vector};
use plumbmark::holds::{Hold, Placement, Refusal, Surface};
use plumbmark::parts::{Check, Part, Quantity};
use plumbmark::{frames, vector};

pub(crate) fn call() {
    vectors();
    frames();
    placements();
}

fn vectors() {
    any(vector::dot(any_vector(), any_vector()));
    any(vector::cross(any_vector(), any_vector()));
    any(vector::norm(any_vector()));
    any(vector::hypot(any(0.0), any(0.0)));
    any(vector::scaled(any_vector(), any(0.0)));
    any(vector::minus(any_vector(), any_vector()));
    any(vector::unit(any_vector()));
    any(vector::any_perpendicular(any_vector()));
}

fn frames() {
    any(frames::up_from_angles(any(0.0), any(0.0)));
    any(frames::up_by_angles(any(0.0), any(0.0)));
    any(frames::on_earth(any_vector(), any_vector()));
    any(frames::elevation_deg(any_vector(), any_vector()));
    any(frames::elevation(any_vector(), any_vector()));
    any(frames::angle_deg(any_vector(), any_vector()));
    any(frames::roll_deg(any_vector()));
    any(frames::elevation_sensitivity(any_vector(), any_vector()));
    any(frames::roll_sensitivity(any_vector()));
    let rotation = any([[0; 3]; 3]);
    any(frames::to_body(&rotation, any_vector()));
    any(frames::to_device(&rotation, any_vector()));
}

fn placements() {
    let (hold, surface) = (any(Hold::Back), any(Surface::Bar));
    any((hold.rotation(), hold.normal()));
    any((surface.name(), surface.assumed_deg()));
    any(any(Refusal::EdgeTooShort).name());
    if let Ok(placement) = Placement::new(any(Part::Pump), hold, surface) {
        any(placement.contact_deg(any((0.0, 0.0))));
        any(placement.checks);
    }
    any(Placement::on_face(hold, surface)).ok();
    let check = any(Check::PumpRoll);
    any((check.part(), check.quantity(), check.axis_body()));
    any((check.asks_lower_end(), check.name()));
    any(any(Quantity::Roll).range_deg());
}
