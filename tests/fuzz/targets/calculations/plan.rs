//! Sheets with numbers near what makes sense, and with any: no panic; U is never below nothing, a
//! verdict within never without room for U.

use arbitrary::{Result, Unstructured};
use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::kind::Kind;
use plumbmark::plan::propagate::MOST_IN;

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    let sheet = *u.choose(Sheet::ALL)?;
    let form = sheet.form();
    let rows = if form.row.is_empty() {
        0
    } else {
        u.int_in_range(0..=6)?
    };
    let mut x = Vec::new();
    for kind in form.inputs {
        x.push(number(u, kind)?);
    }
    for _ in 0..rows {
        for kind in form.row {
            x.push(number(u, kind)?);
        }
    }
    let mut half = Vec::new();
    for _ in 0..u.int_in_range(0..=x.len())? {
        half.push(if u.ratio(9, 10)? {
            f64::NAN
        } else {
            u.arbitrary()?
        });
    }
    if u.ratio(1, 50)? {
        x.resize(u.int_in_range(0..=2 * MOST_IN)?, 1.0);
    }
    let Ok(worked) = sheet.contributions(&x, &half, &mut |_, _, u| assert!(u >= 0.0)) else {
        return Ok(());
    };
    let (low, high): (f64, f64) = (u.arbitrary()?, u.arbitrary()?);
    let mut place = 0;
    while let Some(given) = worked.result(place) {
        assert!(given.u >= 0.0, "{sheet:?} {place} {given:?}");
        place += 1;
    }
    place = 0;
    while let Some(check) = worked.check(place) {
        let judged = worked
            .judged(&check, low, high)
            .expect("a check has a result");
        let given = worked.result(check.output).expect("a result");
        if judged.verdict == Verdict::Within {
            assert!(!check.only_beyond);
            let (low, high) = check.bound.of_itself().unwrap_or((low, high));
            assert!(
                low.is_nan() || given.value - given.u >= low,
                "{judged:?} {given:?}"
            );
            assert!(
                high.is_nan() || given.value + given.u <= high,
                "{judged:?} {given:?}"
            );
        }
        place += 1;
    }
    Ok(())
}

/// Mostly what the kind takes.
fn number(u: &mut Unstructured<'_>, kind: &Kind) -> Result<f64> {
    let share = f64::from(u.arbitrary::<u16>()?) / f64::from(u16::MAX);
    match u.int_in_range(0..=19)? {
        0 => u.arbitrary(),
        1 => Ok(f64::NAN),
        2 => Ok(kind.low),
        3 => Ok(kind.high),
        _ => {
            let value = kind.low + share * (kind.high - kind.low);
            let whole = kind.high - kind.low < 20.0 && kind.low == kind.low.floor();
            Ok(if whole && u.arbitrary()? {
                value.round()
            } else {
                value
            })
        }
    }
}
