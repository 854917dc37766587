//! `decision`, `advice`.

use arbitrary::{Result, Unstructured};
use plumbmark::advice::{AdviceKind, advise};
use plumbmark::budget::Budget;
use plumbmark::decision::{Measured, Verdict, Why, decide, decide_in_operation, margin_deg};
use plumbmark::limits::Limit;
use plumbmark_fuzz::{any, sound};

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    let check = any::check(u)?;
    let limit = any::limit(u, check)?;
    let quantity = limit.check.quantity();
    let mut after = Budget {
        variances: [0.0; 10],
        rectangle_deg: 0.0,
    };
    for term in &mut after.variances {
        *term = any::between(u, 0.0, 25.0)?;
    }
    let measured = any::measured(u, quantity)?;
    if limit.validate().is_ok() {
        sound::decision(&measured, &limit);
        let permitted = limit.permitted_deg();
        let p = measured.probability(permitted);
        assert!((0.0..=1.0).contains(&p), "{measured:?} {limit:?} {p}");
        let (verdict, why) = decide(&measured, &limit);
        in_operation(u, &measured, &limit)?;
        let advice = advise(verdict, why, &measured, &limit, &after);
        assert!(advice.turn_deg.is_none_or(f32::is_finite), "{advice:?}");
        assert!(advice.rise_mm.is_none_or(f32::is_finite), "{advice:?}");
        if verdict == Verdict::NotProven && advice.kind == AdviceKind::Move {
            assert!(advice.turn_deg.is_some(), "{advice:?}");
        }
    }
    // Anything at all.
    let measured = Measured {
        quantity,
        value_deg: any::number(u)?,
        u_deg: any::number(u)?,
        combined_deg: any::number(u)?,
        rectangle_deg: any::number(u)?,
    };
    let (verdict, why) = (*u.choose(&Verdict::ALL)?, *u.choose(&Why::ALL)?);
    let about = (any::number(u)?, any::number(u)?);
    let _ = (measured.interval_deg(about), measured.near(about));
    let _ = (measured.probability(about), decide(&measured, &limit));
    let _ = margin_deg(verdict, &measured, &limit);
    let _ = decide_in_operation(&measured, &limit, any::maybe(u)?);
    let why = u.ratio(1, 2)?.then_some(why);
    after.rectangle_deg = any::number(u)?;
    let _ = advise(verdict, why, &measured, &limit, &after);
    Ok(())
}

/// A slope only takes: what is within on it is within without it, and on any lesser one.
fn in_operation(u: &mut Unstructured<'_>, measured: &Measured, limit: &Limit) -> Result<()> {
    let takes_deg = any::between(u, 0.0, 60.0)?;
    let on = |takes_deg| decide_in_operation(measured, limit, takes_deg).0;
    if on(Some(takes_deg)) == Verdict::Within {
        assert_eq!(decide(measured, limit).0, Verdict::Within);
        assert_eq!(on(Some(takes_deg / 2.0)), Verdict::Within);
        sound::within_by(measured, limit, takes_deg);
    }
    assert_ne!(on(None), Verdict::Within, "no slope leaves this within");
    Ok(())
}
