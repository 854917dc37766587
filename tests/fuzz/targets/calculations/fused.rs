//! `fused`.

use arbitrary::{Result, Unstructured};
use plumbmark::fused::{Fused, HISTORY};
use plumbmark::vector::norm;
use plumbmark_fuzz::any;

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    let mut fused = Fused::default();
    while !u.is_empty() {
        match u.int_in_range(0..=7)? {
            0 => fused.hold(any::maybe(u)?.zip(any::maybe(u)?)),
            1 => fused.restart(),
            2 => fused.push_mean(Some(any::vector(u)?)),
            3 => fused.push_mean(None),
            _ => {
                let mean = any::direction(u)?;
                for _ in 0..HISTORY {
                    fused.push_mean(Some(mean));
                }
            }
        }
        look(&fused);
    }
    Ok(())
}

fn look(fused: &Fused) {
    assert_eq!(fused.up().is_some(), fused.held_deg().is_some());
    let drift = fused.drift_deg();
    assert!(
        drift.is_none_or(|d| (0.0..=180.0).contains(&d)),
        "{fused:?}"
    );
    let mean = fused.mean();
    assert!(
        mean.is_none_or(|m| (norm(m) - 1.0).abs() < 1e-5),
        "{fused:?}"
    );
    if let Some(settled) = fused.settled() {
        assert_eq!(Some(settled.up), mean);
        assert!(settled.settle_deg > 0.0, "{settled:?}");
        assert!(
            settled.noise_deg.is_nan() || settled.noise_deg >= 0.0,
            "{settled:?}"
        );
    }
}
