//! `rounded`.

use arbitrary::{Result, Unstructured};
use plumbmark::prior::NOISE_STEPS;
use plumbmark::rounded::{AxisSums, estimate, inflation, noise_bounds};
use plumbmark_fuzz::any;

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    anything(u)?;
    let around = u.int_in_range(-400..=400_i16)?;
    let widest = *u.choose(&[0, 1, 2, 400])?;
    let mut sums = AxisSums {
        n: 0,
        sum: 0,
        squares: 0,
        range: (i16::MAX, i16::MIN),
    };
    for _ in 0..u.int_in_range(12..=100)? {
        let c = around + u.int_in_range(0..=widest)?;
        sums.n += 1;
        sums.sum += i32::from(c);
        sums.squares += u32::from(c.unsigned_abs()).pow(2);
        sums.range = (sums.range.0.min(c), sums.range.1.max(c));
    }
    let factor = any::between(u, 1.0, 20.0)?;
    let e = estimate(&sums, factor, NOISE_STEPS);
    assert!((0.0..=0.5).contains(&e.half_width), "{sums:?} {e:?}");
    assert!(e.noise.is_finite() && e.noise >= 0.0, "{sums:?} {e:?}");
    // Never further from the mean than one count.
    assert!((e.value - sums.mean()).abs() <= 1.0, "{sums:?} {e:?}");
    Ok(())
}

fn anything(u: &mut Unstructured<'_>) -> Result<()> {
    let sums = AxisSums {
        n: u.arbitrary()?,
        sum: u.arbitrary()?,
        squares: u.arbitrary()?,
        range: u.arbitrary()?,
    };
    assert!(sums.variance().is_nan() || sums.variance() >= 0.0);
    let _ = estimate(&sums, any::number(u)?, (any::number(u)?, any::number(u)?));
    let factor = inflation(&[sums; 3], any::number(u)?);
    assert!(factor >= 1.0, "{factor}");
    let (low, high) = noise_bounds(any::number(u)?, u.arbitrary()?);
    assert!(low.is_nan() || (0.02..=high).contains(&low) && high <= 0.5);
    Ok(())
}
