//! `intake`, event by event.

use arbitrary::{Result, Unstructured};
use plumbmark::intake::Intake;
use plumbmark_fuzz::any;

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    let mut intake = Intake::new();
    let mut last_ms = f64::NAN;
    while !u.is_empty() {
        if u.ratio(1, 4)? {
            intake.set_sign(u.arbitrary()?);
        }
        let t_ms = any::wide_number(u)?;
        let mut values = [None; 3];
        for value in &mut values {
            *value = any::maybe(u)?.map(f64::from);
        }
        let up = u.ratio(1, 2)?.then_some(any::vector(u)?);
        if let Ok(accepted) = intake.motion(t_ms, values, up) {
            assert!(intake.sign() != 0 && accepted.dt_us <= 200_000);
            assert!(last_ms.is_nan() || t_ms > last_ms, "{t_ms} after {last_ms}");
            let squares = accepted.counts.map(|c| f32::from(c) * f32::from(c));
            let length = squares.iter().sum::<f32>().sqrt() * intake.count_m_s2();
            assert!((8.1..11.5).contains(&length), "{values:?} {accepted:?}");
        }
        last_ms = intake.last_ms().unwrap_or(f64::NAN);
        assert!([-1, 0, 1].contains(&intake.learn_sign_face_up()));
    }
    Ok(())
}
