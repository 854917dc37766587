//! Any limit set, built or read; and any value held against one that core accepts.
#![no_main]

use arbitrary::{Arbitrary, Result, Unstructured};
use libfuzzer_sys::fuzz_target;
use plumbmark::limits::{Limit, LimitSet};
use plumbmark_fuzz::{any, sound};

fn ordered(limit: &Limit) {
    let range = limit.check.quantity().range_deg();
    let permitted = limit.permitted_deg();
    assert!(permitted.0 < permitted.1, "{limit:?}");
    let entered = |v: Option<f32>| v.is_none_or(|v| (range.0..=range.1).contains(&v));
    assert!(entered(limit.low_deg) && entered(limit.high_deg));
    if let Some((low, high)) = limit.preferred_deg() {
        assert!(low < high, "{limit:?}");
        assert!(low == f32::NEG_INFINITY || low >= permitted.0);
        assert!(high == f32::INFINITY || high <= permitted.1);
    }
}

fn accepted(set: &LimitSet, u: &mut Unstructured<'_>) -> Result<()> {
    for line in &set.lines {
        assert_eq!(&set.limit(line.check), line, "one line a check");
        ordered(line);
        let measured = any::measured(u, line.check.quantity())?;
        sound::decision(&measured, line);
    }
    for terms in &set.surfaces {
        let of = (terms.hold_deg, terms.align_deg);
        assert!(of.0 > 0.0 && of.1 >= 0.0 && of.0.is_finite() && of.1.is_finite());
        assert_eq!(set.surface_deg(terms.surface), of, "one line a surface");
    }
    let json = serde_json::to_string(set).expect("an accepted set is JSON");
    let again: LimitSet = serde_json::from_str(&json).expect("and can be read again");
    assert_eq!(&again, set);
    Ok(())
}

fn run(u: &mut Unstructured<'_>) -> Result<()> {
    let set = if bool::arbitrary(u)? {
        any::limit_set(u)?
    } else {
        let Ok(set) = serde_json::from_slice(u.peek_bytes(u.len()).unwrap_or_default()) else {
            return Ok(());
        };
        set
    };
    match set.validate() {
        Ok(()) => accepted(&set, u)?,
        Err(error) => assert!(error.to_string().contains(error.field.name()), "{error:?}"),
    }
    Ok(())
}

fuzz_target!(|data: &[u8]| {
    // Bytes that end too early end the run.
    let _ = run(&mut Unstructured::new(data));
});
