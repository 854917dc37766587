//! `shared`.

use arbitrary::{Result, Unstructured};
use plumbmark::budget::Budget;
use plumbmark::shared::{Share, combined};
use plumbmark_fuzz::any;

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    let (a, b) = (any_share(u)?, any_share(u)?);
    let (most, own) = ((a.variance() * b.variance()).sqrt(), a.own_deg.powi(2));
    assert!(a.variance() >= own && a.variance().is_finite(), "{a:?}");
    assert_eq!(a.covariance(&b), b.covariance(&a));
    assert!(
        a.covariance(&b).abs() <= most * 1.0001 + 1e-9,
        "{a:?} {b:?}"
    );
    let (p, q) = (any::between(u, -2.0, 2.0)?, any::between(u, -2.0, 2.0)?);
    let sum = combined(&[(p, a), (q, b)]);
    let most = p.abs() * a.variance().sqrt() + q.abs() * b.variance().sqrt();
    assert!((0.0..=most * 1.001 + 1e-4).contains(&sum), "{a:?} {b:?}");
    // Of two readings nothing that is their own cancels.
    let least = (p * a.own_deg).hypot(q * b.own_deg);
    assert!(sum >= least * 0.999 - 1e-3, "{a:?} {b:?} {sum}");
    anything(u)
}

fn any_share(u: &mut Unstructured<'_>) -> Result<Share> {
    let (up, normal, c) = (any::estimate(u)?, any::direction(u)?, any::direction(u)?);
    let contact = any::contact(u, normal)?;
    Ok(Share::new(&up, c).with_own(&Budget::new(&up, &contact, c)))
}

fn anything(u: &mut Unstructured<'_>) -> Result<()> {
    let mut terms = Vec::new();
    for _ in 0..u.int_in_range(0..=4)? {
        let share = Share::new(&any::wild_estimate(u)?, any::vector(u)?);
        terms.push((any::number(u)?, share));
    }
    let sum = combined(&terms);
    assert!(sum.is_nan() || sum >= 0.0);
    Ok(())
}
