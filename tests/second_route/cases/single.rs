//! One reading, one check.

use crate::reading::{Drawn, limit, on_side, one_of, sensor, up_for, write_check};
use crate::row::Row;
use plumbmark::budget::UpEstimate;
use plumbmark::check::{Basis, End, Outcome, answer};
use plumbmark::holds::Hold;
use plumbmark::limits::Limit;
use plumbmark::parts::Check;
use plumbmark_tests::Draws;

/// Core's answer about `up`; the eye's part in it is told by a photo, and is not the GUM's.
pub fn answered(check: Check, up: &UpEstimate, drawn: &Drawn, limit: &Limit) -> Outcome {
    let from = Basis {
        up,
        other_up: None,
        rotation: &drawn.hold.rotation(),
        contact: &drawn.contact,
    };
    answer(check, &from, limit, Some(End::Photo))
}

/// The same against a limit about its own interval, written with it.
pub fn judged(draws: &mut Draws, row: &mut Row, check: Check, up: &UpEstimate, drawn: &Drawn) {
    let open = answered(check, up, drawn, &Limit::not_entered(check));
    let (value, u) = open.measured.map_or((0.0, 1.0), |m| (m.value_deg, m.u_deg));
    let limit = limit(draws, check, value, u);
    write_check(row, check, &limit);
    row.outcome(&answered(check, up, drawn, &limit));
}

/// A case.
pub fn case(draws: &mut Draws) -> Row {
    let check = one_of(draws, &Check::ALL);
    let hold = one_of(draws, &Hold::ALL);
    let up = up_for(draws, check);
    let number = one_of(draws, &[0, 1]);
    let sensor = sensor(draws, number);
    let sensor = on_side(draws, sensor, hold);
    let drawn = Drawn::new(draws, up, hold, sensor);
    let mut row = Row::new("single");
    drawn.write(&mut row, "");
    judged(draws, &mut row, check, &drawn.corrected(), &drawn);
    row
}
