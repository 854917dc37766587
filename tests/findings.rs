//! For how long, and for which phone, channel, hold and case, what was found counts; the same of a
//! vehicle's level.

use approx::{assert_abs_diff_eq, assert_relative_eq};
use plumbmark::budget::{Budget, Contact, Source, UpEstimate};
use plumbmark::calibration::Calibration;
use plumbmark::findings::{Device, Findings, Key};
use plumbmark::frames::DEG;
use plumbmark::holds::Hold;
use plumbmark::level::Level;
use plumbmark::live::Channel;
use plumbmark::reversal::FoundZero;
use plumbmark::sensor::Sensor;
use plumbmark_tests::certain;

const CERTAIN: Contact = Contact {
    hold_deg: 0.0,
    align_deg: 0.0,
    normal: [0.0, 0.0, 1.0],
};
const FOUND_MS: f64 = 1.7e12;
const HOUR_MS: f64 = 3_600_000.0;
const UP: [f32; 3] = [0.0, 0.0, 1.0];

const KEY: Key = Key {
    device: Device {
        number: 7,
        in_case: false,
    },
    channel: Channel::Acceleration,
    hold: Hold::Back,
};

fn found() -> Findings {
    let mut findings = Findings::new();
    let zero = FoundZero {
        zero: [0.01, -0.02, 0.0],
        u_zero: [0.001, 0.001, 0.0],
        found_at: UP,
    };
    findings.keep_zero(KEY, zero, FOUND_MS);
    findings
}

fn calibration(for_orientation: bool) -> Calibration {
    Calibration {
        zero: [0.003; 3],
        u_zero: [0.0004; 3],
        scale: [1.01; 3],
        u_scale: [0.0003; 3],
        for_orientation,
    }
}

#[test]
fn a_zero_counts_for_an_hour_by_the_wall_clock() {
    let findings = found();
    let at = |after_ms: f64| {
        let sensor = findings.sensor(KEY, FOUND_MS + after_ms);
        assert_eq!(
            findings.zero(KEY, FOUND_MS + after_ms).is_some(),
            sensor != Sensor::assumed()
        );
        sensor
    };
    for after_ms in [0.0, 60_000.0, HOUR_MS - 1.0] {
        assert_eq!(at(after_ms).zero, [0.01, -0.02, 0.0]);
        assert_eq!(at(after_ms).zero_from, [1, 1, 0]);
        assert!(
            at(after_ms).u_zero[2] == Sensor::assumed().u_zero[2],
            "along the normal"
        );
    }
    // Not after it, not where the clock has gone back, not by a clock that says nothing.
    for after_ms in [HOUR_MS, 1e15, -1.0, -1e15, f64::NAN] {
        assert_eq!(at(after_ms), Sensor::assumed(), "{after_ms} ms");
    }
}

#[test]
fn a_zero_belongs_to_device_case_channel_and_hold() {
    let findings = found();
    let other = |key: Key| findings.sensor(key, FOUND_MS);
    let device = |number, in_case| Key {
        device: Device { number, in_case },
        ..KEY
    };
    assert_eq!(other(device(8, false)), Sensor::assumed());
    assert_eq!(other(device(7, true)), Sensor::assumed());
    let channel = Channel::Orientation;
    assert_eq!(other(Key { channel, ..KEY }), Sensor::assumed());
    for hold in [Hold::LongEdge, Hold::ShortEdge] {
        assert!(findings.zero(Key { hold, ..KEY }, FOUND_MS).is_none());
        // The axis along its own normal is all that the other side lends, and less well.
        let sensor = other(Key { hold, ..KEY });
        for i in 0..3 {
            let lends = hold.normal()[i] != 0.0;
            assert_eq!(sensor.zero_from[i] == 1, lends, "{hold:?}");
            // What the other side adds: 0.2°.
            let adds = if lends { 0.2 / DEG } else { 0.0 };
            assert_relative_eq!(sensor.u_side[i], adds, max_relative = 1e-6);
        }
        assert_eq!(sensor.side, hold as u8 + 1);
        assert_eq!(sensor.found_at, [0.0; 3], "all of up counts there");
    }
}

#[test]
fn a_calibration_is_the_phones_in_or_out_of_its_case() {
    let mut findings = Findings::new();
    findings.keep_calibration(KEY.device, calibration(false), FOUND_MS);
    let key = |number, in_case, channel| Key {
        device: Device { number, in_case },
        channel,
        hold: Hold::ShortEdge,
    };
    let counts = |findings: &Findings, key, now_ms| findings.calibration(key, now_ms).is_some();
    let cased = key(7, true, Channel::Acceleration);
    assert!(counts(&findings, cased, FOUND_MS + HOUR_MS - 1.0));
    assert!(!counts(&findings, cased, FOUND_MS + HOUR_MS));
    assert!(!counts(&findings, cased, FOUND_MS - 1.0));
    assert!(!counts(
        &findings,
        key(8, false, Channel::Acceleration),
        FOUND_MS
    ));
    let fused = key(7, false, Channel::Orientation);
    assert!(!counts(&findings, fused, FOUND_MS));
    findings.keep_calibration(KEY.device, calibration(true), FOUND_MS);
    assert!(counts(&findings, fused, FOUND_MS));
    assert_eq!(findings.sensor(fused, FOUND_MS).scale, [1.01; 3]);
}

#[test]
fn a_newer_zero_takes_the_place_and_a_new_number() {
    let mut findings = found();
    let newer = FoundZero {
        zero: [0.002, 0.0, 0.0],
        u_zero: [0.002, 0.002, 0.0],
        found_at: UP,
    };
    findings.keep_zero(KEY, newer, FOUND_MS + 1.0);
    assert_eq!(findings.zeros().len(), 1);
    let sensor = findings.sensor(KEY, FOUND_MS + 2.0);
    assert_eq!((sensor.zero[0], sensor.zero_from[0]), (0.002, 2));
}

/// A zero found on level ground says less of a steep pose: cross-axis 0.2 % of the change of up.
#[test]
fn a_zero_used_elsewhere_is_less_certain() {
    let mut sensor = found().sensor(KEY, FOUND_MS);
    assert_eq!((sensor.found_at, sensor.side), (UP, 0));
    assert_eq!(sensor.u_side, [0.0; 3]);
    sensor.u_scale = [0.0; 3];
    let zero_deg = |up: [f64; 3]| {
        let up = UpEstimate {
            sensor,
            ..certain(up)
        };
        Budget::new(&up, &CERTAIN, [0.0, 1.0, 0.0]).of(Source::Zero)
    };
    assert_relative_eq!(zero_deg([0.0, 0.0, 1.0]), 0.001 * DEG, max_relative = 1e-5);
    let want = 0.001_f32.hypot(0.002 * 2_f32.sqrt());
    assert_relative_eq!(zero_deg([1.0, 0.0, 0.0]), want * DEG, max_relative = 1e-5);
}

#[test]
fn a_level_counts_for_an_hour_and_shows_movement() {
    // Lengthwise slope under a phone on its back, noise 0.1°; a zero of 1° that both readings
    // share hides no movement and feigns none.
    let reads = |deg: f64| {
        let (s, c) = deg.to_radians().sin_cos();
        let mut up = certain([0.0, s, c]);
        up.noise = [0.1 / DEG; 3];
        up.sensor.u_zero = [1.0 / DEG; 3];
        Level::new(up, CERTAIN, Hold::Back.rotation(), 0.0).unwrap()
    };
    let level = reads(2.0);
    assert!(level.counts_at(0.0) && level.counts_at(3_599_999.0));
    assert!(!level.counts_at(3_600_000.0) && !level.counts_at(-1.0) && !level.counts_at(f64::NAN));
    // Two readings of 0.1° each: 2.45 · 0.141° = 0.35°.
    let later = |deg| level.has_moved(&reads(deg));
    assert_eq!(later(2.3), Some(false));
    assert_eq!(later(2.4), Some(true));
    let edge = Hold::LongEdge;
    let other = Level::new(certain([-1.0, 0.0, 0.0]), CERTAIN, edge.rotation(), 0.0).unwrap();
    assert_eq!(level.has_moved(&other), None);
    // Slope as read, with the zero in its U.
    let [(lengthwise, u), (crosswise, _)] = level.slope_deg();
    assert_abs_diff_eq!(lengthwise, 2.0, epsilon = 1e-4);
    assert_abs_diff_eq!(crosswise, 0.0, epsilon = 1e-4);
    assert_relative_eq!(u, 1.965 * 1.01_f32.sqrt(), max_relative = 1e-3);
}
