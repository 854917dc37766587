//! Any run of events, as a browser or a fault might send them.
#![no_main]

use arbitrary::{Result, Unstructured};
use libfuzzer_sys::fuzz_target;
use plumbmark::check::End;
use plumbmark::holds::Surface;
use plumbmark::live::Live;
use plumbmark::parts::Part;
use plumbmark_fuzz::{any, sound};

/// A phone, its clock, and when its last event came.
#[derive(Debug)]
struct Phone {
    live: Live,
    now_ms: f64,
    last_ms: f64,
}

impl Phone {
    fn motion(&mut self, after_ms: f64, values: [Option<f64>; 3]) {
        self.last_ms = self.now_ms + after_ms;
        if after_ms.is_finite() && after_ms.abs() < 1e6 {
            self.now_ms += after_ms;
        }
        self.live.motion(self.last_ms, values);
    }

    /// Rest with up along `up`, rounded as browsers do or not, with up to half a step of noise.
    fn rest(&mut self, u: &mut Unstructured<'_>) -> Result<()> {
        let up = any::direction(u)?;
        let per_m_s2 = *u.choose(&[10.0, 10.0, 200.0])?;
        let spacing_ms = *u.choose(&[16.7, 16.7, 10.0, 33.0, 1.0, 0.001])?;
        let sign = *u.choose(&[1.0, 1.0, -1.0])?;
        let noise_m_s2 = *u.choose(&[0.0, 0.01, 0.05])?;
        for i in 0..u.int_in_range(1..=160)? {
            let a = [0, 1, 2].map(|axis| {
                // The golden angle: no two samples alike, and no period that looks like tremor.
                let wave = (f64::from(i * (axis + 3)) * 2.399).sin();
                let a = sign * (9.806_65 * f64::from(up[axis as usize]) + noise_m_s2 * wave);
                Some((a * per_m_s2).round() / per_m_s2)
            });
            self.motion(spacing_ms, a);
        }
        Ok(())
    }

    fn event(&mut self, u: &mut Unstructured<'_>) -> Result<()> {
        let wide = |u: &mut Unstructured<'_>| any::maybe(u).map(|v| v.map(f64::from));
        match u.int_in_range(0..=11)? {
            0..=2 => self.rest(u)?,
            3 => {
                let after_ms = any::wide_number(u)?;
                self.motion(after_ms, [wide(u)?, wide(u)?, wide(u)?]);
            }
            4 => {
                for _ in 0..u.int_in_range(1..=240)? {
                    self.motion(16.7, [None; 3]);
                }
            }
            5 => self.live.orientation(wide(u)?, wide(u)?),
            6 => {
                let (part, surface) = (*u.choose(&Part::ALL)?, *u.choose(&Surface::ALL)?);
                // A refusal leaves the choice before it.
                let _ = self.live.select(part, any::hold(u)?, surface);
            }
            7 => self.live.set_sign(u.arbitrary()?),
            8 => {
                self.live.learn_sign_face_up();
            }
            9 => {
                let end = *u.choose(&[Some(0), Some(1), Some(2), Some(3), None])?;
                self.live
                    .tell_end(any::check(u)?, end.map(|i: usize| End::ALL[i]));
            }
            10 => {
                let set = any::limit_set(u)?;
                let valid = set.validate().is_ok();
                assert_eq!(self.live.set_limits(set).is_ok(), valid);
            }
            _ => {
                if u.arbitrary()? {
                    self.live.arm(self.now_ms);
                } else {
                    self.live.disarm();
                }
            }
        }
        Ok(())
    }

    fn look(&mut self, at_ms: f64) {
        if self.live.tick(at_ms).is_ok() {
            assert!((at_ms - self.last_ms).abs() <= 300.0, "a stale reading");
        }
        sound::live(&self.live);
    }
}

fn run(u: &mut Unstructured<'_>) -> Result<()> {
    let mut phone = Phone {
        live: Live::new(),
        now_ms: 1000.0,
        last_ms: f64::NAN,
    };
    let sign = *u.choose(&[1, 0])?;
    phone.live.set_sign(sign);
    while !u.is_empty() {
        phone.event(u)?;
        phone.look(phone.now_ms);
        if u.ratio(1, 4)? {
            phone.look(phone.now_ms + any::wide_number(u)?);
            phone.look(phone.now_ms);
        }
    }
    Ok(())
}

fuzz_target!(|data: &[u8]| {
    // Bytes that end too early end the run.
    let _ = run(&mut Unstructured::new(data));
});
