//! What is found of a phone: reversal, calibration, and what is kept of them.

use crate::{any, any_contact, any_estimate, any_vector, write_to_nowhere};
use plumbmark::budget::Budget;
use plumbmark::calibration::{Calibration, CalibrationRefusal, Pose, Poses};
use plumbmark::findings::{Device, Findings, Key, counts_at};
use plumbmark::holds::Hold;
use plumbmark::reading::Channel;
use plumbmark::reversal::{FoundZero, TurnRefusal, find_zero, half_turn, turned};
use plumbmark::sensor::{Sensor, felt};
use plumbmark::shared::{Share, combined};

pub(crate) fn call() {
    reversal();
    calibration();
    findings();
    sensor();
    shares();
}

fn reversal() {
    let (first, contact) = (any_estimate(), any_contact());
    let sensor = any(Sensor::assumed());
    any(turned(&first, &any_estimate(), &contact, &sensor, any(0.0))).ok();
    let placements = [first; 4];
    if let Ok(found) = any(find_zero(any(&placements[..]), &contact)) {
        any(found.in_body_deg(&any([[0; 3]; 3])));
    }
    any(half_turn(any_vector(), any_vector()));
    let refusal = any(TurnRefusal::Tipped);
    any(refusal.name());
    write_to_nowhere(&refusal);
}

fn calibration() {
    let mut poses = any(Poses::new());
    any(poses.add(any(Pose {
        force: [0.0; 3],
        u: 0.0,
        channels_agree: false,
    })))
    .ok();
    any((poses.len(), poses.is_empty()));
    any(any(poses).fit_within(any(0.0))).ok();
    let refusal = any(CalibrationRefusal::Full);
    any(refusal.name());
    write_to_nowhere(&refusal);
}

fn findings() {
    let device = Device {
        number: any(0),
        in_case: any(false),
    };
    let key = any(Key {
        device,
        channel: Channel::Acceleration,
        hold: Hold::Back,
    });
    let mut findings = any(Findings::new());
    let zero = FoundZero {
        zero: any_vector(),
        u_zero: any_vector(),
        found_at: any_vector(),
    };
    findings.keep_zero(key, zero, any(0.0));
    let calibration = Calibration {
        zero: any_vector(),
        u_zero: any_vector(),
        scale: any_vector(),
        u_scale: any_vector(),
        for_orientation: any(false),
    };
    findings.keep_calibration(any(device), calibration, any(0.0));
    let findings = any(findings);
    any(findings.zeros());
    any(findings.any_calibration());
    any((
        findings.zero(key, any(0.0)),
        findings.calibration(key, any(0.0)),
    ));
    any(findings.sensor(key, any(0.0)));
    any(counts_at(any(0.0), any(0.0)));
}

fn sensor() {
    let sensor = any(Sensor::assumed());
    any(sensor.after_a_turn(any_vector(), any_vector()));
    any(felt(any_vector(), any_vector()));
    any(sensor.corrected(any_vector()));
    any(sensor.apply(&any_estimate()));
}

fn shares() {
    let up = any_estimate();
    let share = any(Share::new(&up, any_vector()));
    let budget = Budget::new(&up, &any_contact(), any_vector());
    let other = any(share.with_own(&budget));
    any((
        share.zero_covariance(&other),
        share.scale_covariance(&other),
    ));
    any((share.covariance(&other), share.variance()));
    let terms = [(0.0, share), (0.0, other)];
    any(combined(any(&terms[..])));
}
