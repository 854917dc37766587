//! Sheets, any numbers; limits beside them.

use crate::any;
use plumbmark::limits::Basis;
use plumbmark::parts::Check;
use plumbmark::plan::Sheet;
use plumbmark::plan::bound::BoundId;
use plumbmark::plan::bound_error::{Cited, validate, validate_angle};

pub fn call() {
    let numbers = any([0.0_f64; 256]);
    let given = any(0_usize);
    for sheet in Sheet::ALL {
        let x = numbers.get(..given).unwrap_or_default();
        let mut found = |input, output, u| {
            any((input, output, u));
        };
        if let Ok(worked) = sheet.contributions(x, &numbers, &mut found) {
            let place = any(0_usize);
            any(worked.result(place));
            if let Some(check) = worked.check(place) {
                any(worked.judged(&check, any(0.0), any(0.0)));
            }
        }
    }
    let cited = any(Cited {
        basis: Basis::Manual,
        source: 0,
        vehicles: 0,
        reason: 0,
    });
    let (low, high) = any((0.0_f64, 0.0_f64));
    any(validate(any(BoundId::ClearTop), low, high, &cited)).ok();
    any(validate_angle(
        any(Check::PipeFall),
        low as f32,
        high as f32,
        &cited,
    ))
    .ok();
}
