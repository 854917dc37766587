//! `budget`.

use arbitrary::{Result, Unstructured};
use plumbmark::budget::{Budget, Source, coverage_factor, least_factor};
use plumbmark_fuzz::any;

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    let (from, contact) = (any::wild_estimate(u)?, any::wild_contact(u)?);
    look(&Budget::new(&from, &contact, any::vector(u)?));
    let other = Budget::new(&from, &contact, any::vector(u)?);
    look(&other.after_a_move(&from, any::vector(u)?));
    look(&other.bent_by(
        &Budget::new(&from, &contact, any::vector(u)?),
        any::number(u)?,
    ));
    let k = coverage_factor(any::number(u)?, any::number(u)?);
    assert!(k.is_nan() || (1.646..=1.965).contains(&k), "{k}");
    let least = least_factor(any::number(u)?, any::number(u)?);
    assert!((0.0..=2.448).contains(&least));
    larger(u)
}

fn look(budget: &Budget) {
    let _ = (budget.combined_deg(), budget.dominant());
    let _ = (budget.coverage_factor(), budget.repeat_deg());
}

/// Of two budgets in their domain the larger is no smaller than either.
fn larger(u: &mut Unstructured<'_>) -> Result<()> {
    let mut any_budget = || -> Result<Budget> {
        let mut variances = [0.0; 10];
        for term in &mut variances {
            *term = any::between(u, 0.0, 400.0)?;
        }
        Ok(Budget {
            variances,
            rectangle_deg: any::between(u, 0.0, 20.0)?,
        })
    };
    let (one, two) = (any_budget()?, any_budget()?);
    let both = one.or_larger(&two);
    assert!(both.combined_deg() >= one.combined_deg().max(two.combined_deg()));
    for source in Source::ALL {
        assert!(both.of(both.dominant()) >= both.of(source));
        assert!(both.combined_deg() >= both.of(source) * 0.999_999);
    }
    let bent = one.bent_by(&two, any::between(u, 1.7, 57.0)?);
    assert!(bent.combined_deg() >= one.combined_deg() * 0.999_999);
    assert!(both.repeat_deg() <= both.combined_deg() * 1.000_001);
    Ok(())
}
