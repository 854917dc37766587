//! `findings`, `sensor`: what was found counts for its own phone and channel, and for an hour.

use arbitrary::{Result, Unstructured};
use plumbmark::calibration::Calibration;
use plumbmark::findings::{Findings, Key, counts_at};
use plumbmark::prior::FOUND_FOR_MS;
use plumbmark::reading::Channel;
use plumbmark::reversal::FoundZero;
use plumbmark::sensor::{Sensor, felt};
use plumbmark::vector::norm;
use plumbmark_fuzz::any;

pub fn call(u: &mut Unstructured<'_>) -> Result<()> {
    let mut findings = Findings::new();
    let mut now_ms = 0.0;
    while !u.is_empty() {
        let key = any_key(u)?;
        match u.int_in_range(0..=3)? {
            0 | 1 => {
                let zero = FoundZero {
                    zero: any::between_each(u, -0.08, 0.08)?,
                    u_zero: any::between_each(u, 0.0, 0.01)?,
                    found_at: any::direction(u)?,
                };
                findings.keep_zero(key, zero, now_ms);
                let of_key = findings.zeros().iter().filter(|f| f.key == key);
                assert_eq!(of_key.count(), 1, "one zero a key");
                assert!(findings.zero(key, now_ms).is_some_and(|f| f.found == zero));
            }
            2 => {
                let calibration = Calibration {
                    zero: any::between_each(u, -0.08, 0.08)?,
                    u_zero: any::between_each(u, 0.0, 0.01)?,
                    scale: any::between_each(u, 0.95, 1.05)?,
                    u_scale: any::between_each(u, 0.0, 0.01)?,
                    for_orientation: u.arbitrary()?,
                };
                findings.keep_calibration(key.device, calibration, now_ms);
            }
            _ => now_ms += f64::from(any::between(u, 0.0, 1e7)?),
        }
        let asked_ms = now_ms + *u.choose(&[0.0, 0.0, -1.0, 3_599_999.0, 3_600_001.0])?;
        look(&findings, any_key(u)?, asked_ms, u)?;
    }
    anything(&findings, u)
}

fn any_key(u: &mut Unstructured<'_>) -> Result<Key> {
    Ok(Key {
        device: any::device(u)?,
        channel: *u.choose(&Channel::ALL)?,
        hold: any::hold(u)?,
    })
}

fn look(findings: &Findings, key: Key, now_ms: f64, u: &mut Unstructured<'_>) -> Result<()> {
    let counts = |found_ms: f64| now_ms >= found_ms && now_ms - found_ms < FOUND_FOR_MS;
    let of_phone = |f: &Key| f.device == key.device && f.channel == key.channel;
    let sensor = findings.sensor(key, now_ms);
    let zeros = findings.zeros().iter();
    let its: Vec<u16> = zeros
        .filter(|f| of_phone(&f.key) && counts(f.found_ms))
        .map(|f| f.number)
        .collect();
    let calibrated = findings
        .any_calibration()
        .is_some_and(|(device, c, found_ms)| {
            let of_channel = key.channel == Channel::Acceleration || c.for_orientation;
            device.number == key.device.number && of_channel && counts(found_ms)
        });
    assert_eq!(findings.calibration(key, now_ms).is_some(), calibrated);
    if let Some(zero) = findings.zero(key, now_ms) {
        assert!(zero.key == key && its.contains(&zero.number));
    }
    if its.is_empty() && !calibrated {
        assert_eq!(sensor, Sensor::assumed(), "nothing that counts was found");
    }
    if !calibrated {
        assert!(sensor.zero_from.iter().all(|n| *n == 0 || its.contains(n)));
        assert_eq!(sensor.scale, [1.0; 3]);
    }
    assert!(sensor.u_zero.iter().all(|s| s.is_finite() && *s >= 0.0));
    let up = any::direction(u)?;
    let zero = any::between_each(u, -0.08, 0.08)?;
    let found = felt(up, zero);
    let freed = norm(core::array::from_fn(|i| found[i] - zero[i]));
    assert!((freed - 1.0).abs() < 1e-5, "{up:?} {zero:?}");
    let corrected = sensor.corrected(up);
    assert!((norm(corrected) - 1.0).abs() < 1e-4, "{corrected:?}");
    Ok(())
}

fn anything(findings: &Findings, u: &mut Unstructured<'_>) -> Result<()> {
    let _ = findings.sensor(any_key(u)?, any::wide_number(u)?);
    let _ = counts_at(any::wide_number(u)?, any::wide_number(u)?);
    let estimate = any::wild_estimate(u)?;
    let sensor = estimate.sensor;
    let _ = sensor.after_a_turn(any::vector(u)?, any::vector(u)?);
    let _ = felt(any::vector(u)?, any::vector(u)?);
    let _ = (sensor.corrected(any::vector(u)?), sensor.apply(&estimate));
    Ok(())
}
