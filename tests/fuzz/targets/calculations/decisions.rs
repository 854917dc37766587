//! `decision`, `advice`.

use arbitrary::{Result, Unstructured};
use plumbmark::advice::{AdviceKind, advise};
use plumbmark::budget::Budget;
use plumbmark::decision::{Measured, Verdict, Why, decide, margin_deg};
use plumbmark_fuzz::{any, sound};

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    let check = any::check(u)?;
    let limit = any::limit(u, check)?;
    let quantity = limit.check.quantity();
    let mut after = Budget {
        u_deg: [0.0; 7],
        rectangle_deg: 0.0,
    };
    for term in &mut after.u_deg {
        *term = any::between(u, 0.0, 5.0)?;
    }
    let measured = any::measured(u, quantity)?;
    if limit.validate().is_ok() {
        sound::decision(&measured, &limit);
        let permitted = limit.permitted_deg();
        let p = measured.probability(permitted);
        assert!((0.0..=1.0).contains(&p), "{measured:?} {limit:?} {p}");
        let (verdict, why) = decide(&measured, &limit);
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
    let why = u.ratio(1, 2)?.then_some(why);
    after.rectangle_deg = any::number(u)?;
    let _ = advise(verdict, why, &measured, &limit, &after);
    Ok(())
}
