//! The phone turned end for end: on a part, and on a table.

use crate::reading::{Drawn, near, on_side, one_of, sensor};
use crate::row::Row;
use crate::single::judged;
use plumbmark::budget::UpEstimate;
use plumbmark::holds::Hold;
use plumbmark::parts::Check;
use plumbmark::prior::LARGEST_ZERO;
use plumbmark::reversal::{find_zero, turned};
use plumbmark_tests::Draws;
use plumbmark_tests::vector::{turned as turned_by, unit};

/// The phone as it lay, and turned by `quarters` of a turn about its contact's normal.
fn again(draws: &mut Draws, first: &Drawn, device: [f64; 3], quarters: f64) -> Drawn {
    let by = quarters * std::f64::consts::FRAC_PI_2;
    let up = turned_by(device, first.contact.normal.map(|n| f64::from(n) * by));
    Drawn::on(draws, up, first.hold, first.sensor, first.contact)
}

/// A part read by a reversal. The contact is the part's: it counts in full, once.
pub fn part(draws: &mut Draws) -> Row {
    let check = one_of(draws, &Check::ALL);
    let hold = one_of(draws, &Hold::ALL);
    let number = one_of(draws, &[0, 1]);
    let sensor = sensor(draws, number);
    let sensor = on_side(draws, sensor, hold);
    let up = draws.direction();
    let first = Drawn::new(draws, up, hold, sensor);
    let second = again(draws, &first, first.device(), 2.0);
    let mut row = Row::new("turned");
    first.write(&mut row, "");
    second.write(&mut row, "second_");
    match turned(
        &first.raw,
        &second.raw,
        &first.contact,
        &sensor,
        LARGEST_ZERO,
    ) {
        Ok(up) => judged(draws, &mut row, check, &up, &first),
        Err(refusal) => row.word("core_refusal", refusal.name()),
    }
    row
}

/// A phone's zero from two or four placements on a table.
pub fn table(draws: &mut Draws) -> Row {
    let hold = one_of(draws, &Hold::ALL);
    let mut sensor = sensor(draws, 1);
    // How the scales differ takes no part: two opposite placements see the same.
    sensor.scale = [1.0; 3];
    // Never steeper than 60°.
    let up = loop {
        let up = near(draws, [0.0, 0.0, 1.0], 60.0);
        if up[2] > 0.5 {
            break up;
        }
    };
    let mut first = Drawn::new(draws, up, hold, sensor);
    first.contact.align_deg *= one_of(draws, &[0.0, 1.0]);
    let count = one_of(draws, &[2, 4]);
    let device = first.device();
    let mut row = Row::new("table");
    row.numbers("count", &[f64::from(count)]);
    row.numbers("device", &device);
    let mut ups: Vec<UpEstimate> = Vec::new();
    for k in 0..count {
        let quarters = f64::from(k * 4 / count);
        let mut placed = again(draws, &first, device, quarters);
        // Each placement has its own noise; a fifth of it never makes pairs disagree.
        let up = placed.device();
        let noisy = [0, 1, 2]
            .map(|i| up[i] + 0.2 * f64::from(placed.raw.noise[i]) * draws.between(-1.0, 1.0));
        placed.moved_to(unit(noisy));
        placed.write(&mut row, &format!("p{k}_"));
        ups.push(placed.raw);
    }
    match find_zero(&ups, &first.contact) {
        Ok(found) => {
            row.singles("core_zero", &found.zero);
            row.singles("core_u_zero", &found.u_zero);
            row.singles("core_found_at", &found.found_at);
        }
        Err(refusal) => row.word("core_refusal", refusal.name()),
    }
    row
}
