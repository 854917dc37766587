//! `window`, fed directly: any spacing, any counts, any size of a count.

use arbitrary::{Arbitrary, Result, Unstructured};
use plumbmark::window::Window;
use plumbmark_fuzz::any;

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    let count_m_s2 = *u.choose(&[0.1, 0.001, 0.001, f32::NAN, 1e-30, -1.0])?;
    let mut window = Window::new(count_m_s2);
    let mut around = [0; 3];
    while !u.is_empty() {
        if u.ratio(1, 4)? {
            around = <[i16; 3]>::arbitrary(u)?;
        }
        let dt_us = *u.choose(&[0, 1, 250, 16_700, 200_000, u32::MAX])?;
        let spread = *u.choose(&[0, 1, 8, 400, i16::MAX])?;
        let up = u.ratio(1, 2)?.then_some(any::vector(u)?);
        let most = *u.choose(&[60, 1200, 20_000])?;
        for i in 0..u.int_in_range(1..=most)? {
            let wave = if i % 2 == 0 { spread } else { -spread };
            let pushed = window.push(dt_us, around.map(|c| c.saturating_add(wave)), up);
            assert!(pushed.is_ok() || window.is_fresh());
        }
        look(&window);
    }
    Ok(())
}

fn look(window: &Window) {
    assert!((0.0..=1.0).contains(&window.progress()));
    let _ = window.newest_fused();
    let Ok(still) = window.still() else {
        return;
    };
    assert!(still.rate_hz > 0.0 && still.rate_hz.is_finite());
    for axis in still.axes {
        assert!(axis.n >= 60 && axis.variance() >= 0.0);
        let (low, high) = (f32::from(axis.range.0), f32::from(axis.range.1));
        assert!(
            (low - 1e-3..=high + 1e-3).contains(&axis.mean()),
            "{axis:?}"
        );
    }
}
