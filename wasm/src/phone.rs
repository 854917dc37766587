//! This phone's zero and calibration across the border.

use crate::{Live, known, no_reading, refused};
use alloc::vec::Vec;
use plumbmark::calibration::Calibration;
use plumbmark::findings::{Device, Finding, Key};
use plumbmark::holds::{Hold, Surface};
use plumbmark::live::Channel;
use plumbmark::phone::PoseRefusal;
use plumbmark::reversal::FoundZero;
use wasm_bindgen::prelude::{JsError, wasm_bindgen};

/// Numbers of a zero: device, case, channel, hold, time, zero, its uncertainty, up where found.
const ZERO: usize = 14;
/// Numbers of a calibration: device, time, zero, scale, their uncertainties, for orientation.
const CALIBRATION: usize = 15;

#[wasm_bindgen]
impl Live {
    /// Chooses a table, or the vehicle's floor or rail; an error names the refusal.
    pub fn select_face(&mut self, hold: u8, surface: u8) -> Result<(), JsError> {
        let (hold, surface) = (known(&Hold::ALL, hold)?, known(&Surface::ALL, surface)?);
        self.0.select_face(hold, surface).map_err(refused)
    }

    /// Says which phone this is.
    pub fn set_device(&mut self, number: u32, in_case: bool) {
        self.0.set_device(Device { number, in_case });
    }

    /// Sets the wall clock, ms.
    pub fn set_clock(&mut self, unix_ms: f64) {
        self.0.set_clock(unix_ms);
    }

    /// The turn about the vertical of an orientation event, degrees.
    pub fn heading(&mut self, alpha_deg: Option<f64>) {
        self.0.heading(alpha_deg);
    }

    /// Whether the browser says by itself when the phone has been turned.
    #[wasm_bindgen(getter)]
    pub fn knows_heading(&self) -> bool {
        self.0.knows_heading()
    }

    /// Says that the phone has been turned.
    pub fn tell_turned(&mut self) {
        self.0.tell_turned();
    }

    /// Keeps this second as a placement; returns how many there are. An error names the reason.
    pub fn keep_placement(&mut self) -> Result<usize, JsError> {
        self.0.keep_placement().map_err(no_reading)
    }

    /// Forgets the placements.
    pub fn forget_placements(&mut self) {
        self.0.forget_placements();
    }

    /// How many placements are kept.
    #[wasm_bindgen(getter)]
    pub fn placements(&self) -> usize {
        self.0.placements()
    }

    /// Finds this phone's zero from the placements kept: lengthwise, its U, crosswise, its U,
    /// degrees. An error names the refusal.
    pub fn find_zero(&mut self) -> Result<Vec<f32>, JsError> {
        let found = self.0.find_zero();
        let found = found.map_err(|refusal| JsError::new(refusal.name()))?;
        let hold = self.0.placement().map_or(Hold::Back, |p| p.hold);
        Ok(found.in_body_deg(&hold.rotation()).concat())
    }

    /// When the zero of a phone's side, or its calibration, was found, ms by the wall clock; NaN
    /// where neither is kept.
    pub fn found_ms(&self, number: u32, in_case: bool, hold: u8) -> f64 {
        let device = Device { number, in_case };
        let findings = self.0.findings();
        let of_side = |f: &&Finding| f.key.device == device && f.key.hold as u8 == hold;
        let zeros = findings.zeros().iter().filter(of_side).map(|f| f.found_ms);
        let calibrated = findings.any_calibration();
        let of_phone = calibrated.filter(|(d, ..)| d.number == number).map(|c| c.2);
        zeros.chain(of_phone).fold(f64::NAN, f64::max)
    }

    /// Whether that still counts at `unix_ms`, for acceleration or the fused orientation.
    pub fn found_counts(&self, number: u32, in_case: bool, hold: u8, unix_ms: f64) -> bool {
        let device = Device { number, in_case };
        let findings = self.0.findings();
        Hold::ALL.get(usize::from(hold)).is_some_and(|&hold| {
            Channel::ALL.into_iter().any(|channel| {
                let key = Key {
                    device,
                    channel,
                    hold,
                };
                findings.zero(key, unix_ms).is_some()
                    || findings.calibration(key, unix_ms).is_some()
            })
        })
    }

    /// Code of what is known of the zero behind the reading: assumed, found, turn.
    #[wasm_bindgen(getter)]
    pub fn zero_by(&self) -> u8 {
        self.reading().map_or(0, |r| r.zero_by as u8)
    }

    /// Adds the pose that the phone rests in; returns how many there are. An error names why not.
    pub fn add_pose(&mut self) -> Result<usize, JsError> {
        self.0.add_pose().map_err(|refusal| match refusal {
            PoseRefusal::NoReading(reason) => no_reading(reason),
            PoseRefusal::Calibration(reason) => JsError::new(reason.name()),
        })
    }

    /// Forgets the poses.
    pub fn forget_poses(&mut self) {
        self.0.forget_poses();
    }

    /// Fits the poses; returns whether the calibration counts for the orientation channel too. An
    /// error names the refusal.
    pub fn calibrate(&mut self) -> Result<bool, JsError> {
        let found = self.0.calibrate();
        found
            .map(|c| c.for_orientation)
            .map_err(|refusal| JsError::new(refusal.name()))
    }

    /// Everything found, one row of numbers each, to be kept and given back.
    pub fn findings(&self) -> Vec<f64> {
        let mut rows = Vec::new();
        for f in self.0.findings().zeros() {
            let key = f.key;
            let head = [
                f64::from(key.device.number),
                f64::from(u8::from(key.device.in_case)),
                f64::from(key.channel as u8),
                f64::from(key.hold as u8),
                f.found_ms,
            ];
            let found = [f.found.zero, f.found.u_zero, f.found.found_at].concat();
            rows.push(ZERO as f64);
            rows.extend(head);
            rows.extend(found.into_iter().map(f64::from));
        }
        if let Some((device, c, found_ms)) = self.0.findings().any_calibration() {
            rows.extend([CALIBRATION as f64, f64::from(device.number), found_ms]);
            let found = [c.zero, c.scale, c.u_zero, c.u_scale].concat();
            rows.extend(found.into_iter().map(f64::from));
            rows.push(f64::from(u8::from(c.for_orientation)));
        }
        rows
    }

    /// Takes back what [`Self::findings`] gave; rows that are no such thing are left out.
    pub fn restore_findings(&mut self, rows: Vec<f64>) {
        let mut rest = rows.as_slice();
        while let Some((&length, after)) = rest.split_first() {
            let length = length as usize;
            if length == 0 || length > after.len() {
                return;
            }
            let (row, next) = after.split_at(length);
            rest = next;
            if row.iter().all(|v| v.is_finite()) {
                self.restore(row);
            }
        }
    }
}

impl Live {
    fn restore(&mut self, row: &[f64]) {
        let three = |from: usize| [row[from], row[from + 1], row[from + 2]].map(|v| v as f32);
        let findings = self.0.findings_mut();
        if row.len() == ZERO {
            let channel = Channel::ALL.get(row[2] as usize);
            let Some((&channel, &hold)) = channel.zip(Hold::ALL.get(row[3] as usize)) else {
                return;
            };
            let device = Device {
                number: row[0] as u32,
                in_case: row[1] != 0.0,
            };
            let key = Key {
                device,
                channel,
                hold,
            };
            let found = FoundZero {
                zero: three(5),
                u_zero: three(8),
                found_at: three(11),
            };
            findings.keep_zero(key, found, row[4]);
        } else if row.len() == CALIBRATION {
            let device = Device {
                number: row[0] as u32,
                in_case: false,
            };
            let calibration = Calibration {
                zero: three(2),
                scale: three(5),
                u_zero: three(8),
                u_scale: three(11),
                for_orientation: row[14] != 0.0,
            };
            findings.keep_calibration(device, calibration, row[1]);
        }
    }
}
