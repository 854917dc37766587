//! This phone's zero and calibration across the border.

use crate::live::reading;
use crate::page::page;
use crate::refusals::{UNKNOWN, coded, known};
use plumbmark::calibration::Calibration;
use plumbmark::findings::{Device, Finding, Findings, Key};
use plumbmark::holds::{Hold, Surface};
use plumbmark::live::Channel;
use plumbmark::reversal::FoundZero;
use wasm_bindgen::prelude::wasm_bindgen;

/// Numbers of a zero: device, case, channel, hold, time, zero, its uncertainty, up where found.
const ZERO: usize = 14;
/// Numbers of a calibration: device, time, zero, scale, their uncertainties, for orientation.
const CALIBRATION: usize = 15;

/// Chooses a table, or the vehicle's floor or rail; 0, or a refusal.
#[wasm_bindgen]
pub fn select_face(hold: u8, surface: u8) -> i32 {
    let face = known(&Hold::ALL, hold).zip(known(&Surface::ALL, surface));
    face.map_or(UNKNOWN, |(hold, surface)| {
        coded(page().live.select_face(hold, surface).map(|()| 0))
    })
}

/// Says which phone this is.
#[wasm_bindgen]
pub fn set_device(number: u32, in_case: bool) {
    page().live.set_device(Device { number, in_case });
}

/// Sets the wall clock, ms.
#[wasm_bindgen]
pub fn set_clock(unix_ms: f64) {
    page().live.set_clock(unix_ms);
}

/// The turn about the vertical of an orientation event, degrees.
#[wasm_bindgen]
pub fn heading(alpha_deg: Option<f64>) {
    page().live.heading(alpha_deg);
}

/// Whether the browser says by itself when the phone has been turned.
#[wasm_bindgen]
pub fn knows_heading() -> bool {
    page().live.knows_heading()
}

/// Says that the phone has been turned.
#[wasm_bindgen]
pub fn tell_turned() {
    page().live.tell_turned();
}

/// Keeps this second as a placement: how many there are, or a refusal.
#[wasm_bindgen]
pub fn keep_placement() -> i32 {
    coded(page().live.keep_placement().map(|kept| kept as i32))
}

/// Forgets the placements.
#[wasm_bindgen]
pub fn forget_placements() {
    page().live.forget_placements();
}

/// How many placements are kept.
#[wasm_bindgen]
pub fn placements() -> usize {
    page().live.placements()
}

/// Finds this phone's zero from the placements kept: four numbers (lengthwise, its U, crosswise,
/// its U, degrees), or a refusal.
#[wasm_bindgen]
pub fn find_zero() -> i32 {
    let page = page();
    coded(page.live.find_zero().map(|found| {
        let hold = page.live.placement().map_or(Hold::Back, |p| p.hold);
        page.numbers.clear();
        for pair in found.in_body_deg(&hold.rotation()) {
            page.numbers.put_all(&pair);
        }
        page.numbers.count()
    }))
}

/// When the zero of a phone's side, or its calibration, was found, ms by the wall clock; NaN
/// where neither is kept.
#[wasm_bindgen]
pub fn found_ms(number: u32, in_case: bool, hold: u8) -> f64 {
    let device = Device { number, in_case };
    let findings = page().live.findings();
    let of_side = |f: &&Finding| f.key.device == device && f.key.hold as u8 == hold;
    let zeros = findings.zeros().iter().filter(of_side).map(|f| f.found_ms);
    let calibrated = findings.any_calibration();
    let of_phone = calibrated.filter(|(d, ..)| d.number == number).map(|c| c.2);
    zeros.chain(of_phone).fold(f64::NAN, f64::max)
}

/// Whether that still counts at `unix_ms`, for acceleration or the fused orientation.
#[wasm_bindgen]
pub fn found_counts(number: u32, in_case: bool, hold: u8, unix_ms: f64) -> bool {
    let device = Device { number, in_case };
    let findings = page().live.findings();
    known(&Hold::ALL, hold).is_some_and(|hold| {
        Channel::ALL.into_iter().any(|channel| {
            let key = Key {
                device,
                channel,
                hold,
            };
            findings.zero(key, unix_ms).is_some() || findings.calibration(key, unix_ms).is_some()
        })
    })
}

/// Code of what is known of the zero behind the reading: assumed, found, turn.
#[wasm_bindgen]
pub fn zero_by() -> u8 {
    reading().map_or(0, |r| r.zero_by as u8)
}

/// Adds the pose that the phone rests in: how many there are, or a refusal.
#[wasm_bindgen]
pub fn add_pose() -> i32 {
    coded(page().live.add_pose().map(|poses| poses as i32))
}

/// Forgets the poses.
#[wasm_bindgen]
pub fn forget_poses() {
    page().live.forget_poses();
}

/// Fits the poses: 1 where the calibration counts for the orientation channel too, else 0; or a
/// refusal.
#[wasm_bindgen]
pub fn calibrate() -> i32 {
    let found = page().live.calibrate();
    coded(found.map(|c| i32::from(c.for_orientation)))
}

/// Everything found, one row of numbers each behind its length, to be kept and given back: so many
/// numbers.
#[wasm_bindgen]
pub fn findings() -> i32 {
    let page = page();
    let to = &mut page.numbers;
    to.clear();
    for f in page.live.findings().zeros() {
        to.put(ZERO as f64);
        to.put(f64::from(f.key.device.number));
        to.put_code(u8::from(f.key.device.in_case));
        to.put_code(f.key.channel as u8);
        to.put_code(f.key.hold as u8);
        to.put(f.found_ms);
        for vector in [f.found.zero, f.found.u_zero, f.found.found_at] {
            to.put_all(&vector);
        }
    }
    if let Some((device, c, found_ms)) = page.live.findings().any_calibration() {
        to.put(CALIBRATION as f64);
        to.put(f64::from(device.number));
        to.put(found_ms);
        for vector in [c.zero, c.scale, c.u_zero, c.u_scale] {
            to.put_all(&vector);
        }
        to.put_code(u8::from(c.for_orientation));
    }
    to.count()
}

/// Takes back what [`findings`] gave, so many numbers; rows that are no such thing are left out.
#[wasm_bindgen]
pub fn restore_findings(count: usize) {
    let page = page();
    let mut rest = page.given.row(0, count);
    while let Some((&length, after)) = rest.split_first() {
        let length = length as usize;
        let Some((row, next)) = after.split_at_checked(length).filter(|_| length > 0) else {
            return;
        };
        rest = next;
        if row.iter().all(|v| v.is_finite()) {
            restore(page.live.findings_mut(), row);
        }
    }
}

fn restore(findings: &mut Findings, row: &[f64]) {
    let at = |place: usize| row.get(place).copied().unwrap_or(0.0);
    let three = |from: usize| [at(from), at(from + 1), at(from + 2)].map(|v| v as f32);
    let number = at(0) as u32;
    if row.len() == ZERO {
        let channel = known(&Channel::ALL, at(2) as u8);
        let Some((channel, hold)) = channel.zip(known(&Hold::ALL, at(3) as u8)) else {
            return;
        };
        let in_case = at(1) != 0.0;
        let key = Key {
            device: Device { number, in_case },
            channel,
            hold,
        };
        let found = FoundZero {
            zero: three(5),
            u_zero: three(8),
            found_at: three(11),
        };
        findings.keep_zero(key, found, at(4));
    } else if row.len() == CALIBRATION {
        let device = Device {
            number,
            in_case: false,
        };
        let calibration = Calibration {
            zero: three(2),
            scale: three(5),
            u_zero: three(8),
            u_scale: three(11),
            for_orientation: at(14) != 0.0,
        };
        findings.keep_calibration(device, calibration, at(1));
    }
}
