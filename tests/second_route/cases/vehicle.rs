//! A part in a vehicle on a sloping yard: two readings by one phone, and what is told.

use crate::reading::{Drawn, limit, near, on_side, one_of, sensor, write_check};
use crate::row::Row;
use crate::single::answered;
use plumbmark::check::Basis;
use plumbmark::holds::Hold;
use plumbmark::in_vehicle::{Vehicle, in_vehicle};
use plumbmark::level::Level;
use plumbmark::limits::Limit;
use plumbmark::parts::Check;
use plumbmark::vehicle::{Pointing, VehicleTerms};
use plumbmark_tests::Draws;

/// A case.
pub fn case(draws: &mut Draws) -> Row {
    let check = one_of(draws, &Check::ALL);
    let (part_hold, level_hold) = (one_of(draws, &Hold::ALL), one_of(draws, &Hold::ALL));
    let up = draws.direction();
    // The same finding, two findings of one phone, or nothing found.
    let (of_part, of_level) = one_of(draws, &[(0, 0), (1, 1), (1, 2), (0, 1)]);
    let part_sensor = sensor(draws, of_part);
    let mut level_sensor = if of_part == of_level {
        part_sensor
    } else {
        sensor(draws, of_level)
    };
    if draws.uniform() < 0.3 {
        // One axis's zero of the other finding.
        level_sensor.zero_from[0] = part_sensor.zero_from[0];
        level_sensor.zero[0] = part_sensor.zero[0];
        level_sensor.u_zero[0] = part_sensor.u_zero[0];
    }
    let part_sensor = on_side(draws, part_sensor, part_hold);
    let level_sensor = on_side(draws, level_sensor, level_hold);
    let part = Drawn::new(draws, up, part_hold, part_sensor);
    let yard = near(draws, [0.0, 0.0, 1.0], 10.0);
    let on_rail = Drawn::new(draws, yard, level_hold, level_sensor);
    let terms = VehicleTerms {
        heading_deg: draws.between(1.0, 15.0) as f32,
        lean_lengthwise_deg: draws.between(-4.0, 4.0) as f32,
        lean_crosswise_deg: draws.between(-4.0, 4.0) as f32,
        rake_deg: draws.between(0.1, 1.5) as f32,
        ..VehicleTerms::ASSUMED
    };
    let (pointing, turn_deg) = one_of(
        draws,
        &[
            (Pointing::Same, 0.0),
            (Pointing::Left, 90.0),
            (Pointing::Opposite, 180.0),
            (Pointing::Right, -90.0),
        ],
    );
    let mut row = Row::new("vehicle");
    part.write(&mut row, "");
    on_rail.write(&mut row, "rail_");
    row.numbers("turn_deg", &[turn_deg]);
    row.singles("heading_deg", &[terms.heading_deg]);
    row.singles(
        "lean_deg",
        &[terms.lean_lengthwise_deg, terms.lean_crosswise_deg],
    );
    row.singles("rake_deg", &[terms.rake_deg]);

    let corrected = part.corrected();
    let rotation = level_hold.rotation();
    let level = Level::new(on_rail.corrected(), on_rail.contact, rotation, 0.0)
        .expect("a yard is not steep");
    let vehicle = Vehicle {
        level: &level,
        terms: &terms,
        pointing,
    };
    let from = Basis {
        up: &corrected,
        other_up: None,
        rotation: &part.hold.rotation(),
        contact: &part.contact,
    };
    let answer = |limit: &Limit| {
        let parked = answered(check, &corrected, &part, limit);
        in_vehicle(&parked, &from, &vehicle, limit)
    };
    let open = answer(&Limit::not_entered(check));
    let measured = open.as_ref().ok().and_then(|o| o.outcome.measured);
    let (value, u) = measured.map_or((0.0, 1.0), |m| (m.value_deg, m.u_deg));
    let limit = limit(draws, check, value, u);
    write_check(&mut row, check, &limit);
    match answer(&limit) {
        Ok(answered) => row.outcome(&answered.outcome),
        Err(refusal) => row.word("core_refusal", refusal.name()),
    }
    row
}
