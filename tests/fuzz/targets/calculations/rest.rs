//! `reading`: what a second of rest says.

use arbitrary::{Result, Unstructured};
use plumbmark::budget::UpEstimate;
use plumbmark::fused::{Fused, HISTORY};
use plumbmark::reading::{Channel, Rest, noise_of};
use plumbmark::vector::norm;
use plumbmark::window::Window;
use plumbmark_fuzz::any;

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    let mut placements = Vec::new();
    let count_m_s2 = *u.choose(&[0.1, 0.001])?;
    for _ in 0..u.int_in_range(1..=4)? {
        placements.push(any_rest(u, count_m_s2)?);
    }
    let bounds = noise_of(placements.iter());
    assert!(0.0 < bounds.0 && bounds.0 <= bounds.1 && bounds.1 <= 0.5);
    for rest in &placements {
        assert!(rest.length_g() >= 0.0 && rest.step_m_s2() >= 0.0);
        assert!(rest.samples().0 > 0 && rest.samples().1 > 0.0);
        for channel in Channel::ALL {
            if let Ok(up) = rest.by(channel, bounds) {
                sound(&up);
                assert!(rest.mean_up(channel).is_some());
            }
            let _ = rest.by(channel, (any::number(u)?, any::number(u)?));
        }
    }
    Ok(())
}

fn any_rest(u: &mut Unstructured<'_>, count_m_s2: f32) -> Result<Rest> {
    let mut window = Window::new(count_m_s2);
    let mut fused = Fused::default();
    let up = any::direction(u)?;
    let beside = any::direction(u)?;
    let other = *u.choose(&[Some(up), Some(beside), None])?;
    fused.hold(Some((any::hundredths(u)?, any::hundredths(u)?)));
    for _ in 0..u.int_in_range(0..=HISTORY)? {
        fused.push_mean(other);
    }
    let spread = u.int_in_range(0..=3_i16)?;
    let counts = up.map(|c| (c * 9.81 / count_m_s2) as i16);
    for i in 0..70_i16 {
        let wave = (i * 7 % 3 - 1) * spread;
        // A sample that is refused begins the window anew.
        let _ = window.push(16_700, counts.map(|c| c + wave), other);
    }
    Ok(Rest::new(
        window.still().ok(),
        count_m_s2,
        u.arbitrary()?,
        &fused,
    ))
}

fn sound(up: &UpEstimate) {
    assert!((norm(up.up) - 1.0).abs() < 1e-4, "{up:?}");
    assert!(
        up.noise.iter().all(|n| n.is_finite() && *n >= 0.0),
        "{up:?}"
    );
    let steps = up.half_steps.as_flattened();
    assert!(steps.iter().all(|h| h.is_finite()), "{up:?}");
    assert!(
        steps.iter().any(|h| *h != 0.0) || up.noise != [0.0; 3],
        "{up:?}"
    );
    assert!(up.settle_deg >= 0.0);
}
