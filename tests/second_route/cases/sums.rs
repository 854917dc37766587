//! Sums of readings by one phone: what they share counts as often as it comes up.

use crate::reading::{Drawn, on_side, one_of, sensor};
use crate::row::Row;
use plumbmark::budget::Budget;
use plumbmark::frames::{elevation_sensitivity, to_body, to_device};
use plumbmark::holds::Hold;
use plumbmark::sensor::Sensor;
use plumbmark::shared::{Share, combined};
use plumbmark_tests::Draws;

/// Elevations of body x, two to eight of them, each with its weight.
pub fn case(draws: &mut Draws) -> Row {
    let found = [0, 1, 2].map(|number| sensor(draws, number));
    let count = one_of(draws, &[2, 3, 4, 5, 6, 7, 8]);
    let mut row = Row::new("sum");
    row.numbers("count", &[f64::from(count)]);
    let mut terms = Vec::new();
    for k in 0..count {
        let drawn = reading(draws, &found);
        let weight = draws.between(-1.0, 1.0) as f32;
        drawn.write(&mut row, &format!("r{k}_"));
        row.singles(&format!("r{k}_weight"), &[weight]);
        let up = drawn.corrected();
        let rotation = drawn.hold.rotation();
        let c = elevation_sensitivity([1.0, 0.0, 0.0], to_body(&rotation, up.up));
        let c = to_device(&rotation, c);
        let budget = Budget::new(&up, &drawn.contact, c);
        terms.push((weight, Share::new(&up, c).with_own(&budget)));
    }
    row.singles("core_combined", &[combined(&terms)]);
    row
}

/// A pipe leg within 60° of level on any side of the phone, its zeros and scale each by one of the
/// findings.
fn reading(draws: &mut Draws, found: &[Sensor; 3]) -> Drawn {
    let hold = one_of(draws, &Hold::ALL);
    let by_scale = one_of(draws, found);
    let mut sensor = by_scale;
    for i in 0..3 {
        let by = one_of(draws, found);
        sensor.zero[i] = by.zero[i];
        sensor.u_zero[i] = by.u_zero[i];
        sensor.zero_from[i] = by.zero_from[i];
    }
    let sensor = on_side(draws, sensor, hold);
    let up = loop {
        let up = draws.direction();
        if up[0].abs() < 0.87 {
            break up;
        }
    };
    Drawn::new(draws, up, hold, sensor)
}
