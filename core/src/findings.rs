//! What has been found of this phone, and for how long it counts. A zero belongs to a device, a
//! channel, a hold and a case; a calibration to a device and a channel.

use crate::calibration::Calibration;
use crate::frames::DEG;
use crate::holds::Hold;
use crate::prior::{FOUND_FOR_MS, SIDE_TO_SIDE_DEG};
use crate::reading::Channel;
use crate::reversal::FoundZero;
use crate::sensor::Sensor;
use crate::vector::hypot;
use heapless::Vec;

/// The phone in the hand.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Device {
    /// A number that the page keeps for this phone.
    pub number: u32,
    /// Whether it is in its case.
    pub in_case: bool,
}

/// What a zero belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Key {
    /// The phone.
    pub device: Device,
    /// The channel.
    pub channel: Channel,
    /// The side that it lay on.
    pub hold: Hold,
}

/// A zero that was found.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Finding {
    /// What it belongs to.
    pub key: Key,
    /// The zero.
    pub found: FoundZero,
    /// When, by the wall clock, ms.
    pub found_ms: f64,
    /// Its number, from 1.
    pub number: u16,
}

/// A calibration with what it belongs to.
#[derive(Debug, Clone, Copy)]
struct Calibrated {
    device: Device,
    calibration: Calibration,
    found_ms: f64,
    number: u16,
}

/// Everything found of the phones used.
#[derive(Debug, Clone, Default)]
pub struct Findings {
    zeros: Vec<Finding, 6>,
    calibrated: Option<Calibrated>,
    last_number: u16,
}

/// Whether something found at `found_ms` still counts at `now_ms`, by the wall clock; not where
/// that has gone back.
#[must_use]
pub fn counts_at(found_ms: f64, now_ms: f64) -> bool {
    (0.0..FOUND_FOR_MS).contains(&(now_ms - found_ms))
}

impl Findings {
    /// Nothing found.
    #[must_use]
    pub const fn new() -> Self {
        Self {
            zeros: Vec::new(),
            calibrated: None,
            last_number: 0,
        }
    }

    /// Keeps a zero in place of an older one of the same key; the oldest of all goes where there
    /// is no room.
    pub fn keep_zero(&mut self, key: Key, found: FoundZero, found_ms: f64) {
        let number = self.next_number();
        self.zeros.retain(|f| f.key != key);
        if self.zeros.is_full() {
            self.zeros.remove(0);
        }
        // Room was made above, so nothing is lost here.
        let _ = self.zeros.push(Finding {
            key,
            found,
            found_ms,
            number,
        });
    }

    /// Keeps a calibration of the acceleration channel in place of the one before.
    pub fn keep_calibration(&mut self, device: Device, calibration: Calibration, found_ms: f64) {
        self.calibrated = Some(Calibrated {
            device,
            calibration,
            found_ms,
            number: self.next_number(),
        });
    }

    /// The zeros kept, whether they still count or not.
    #[must_use]
    pub fn zeros(&self) -> &[Finding] {
        &self.zeros
    }

    /// The calibration kept, whether it still counts or not, with its phone and time.
    #[must_use]
    pub fn any_calibration(&self) -> Option<(Device, &Calibration, f64)> {
        let kept = self.calibrated.as_ref();
        kept.map(|c| (c.device, &c.calibration, c.found_ms))
    }

    fn next_number(&mut self) -> u16 {
        self.last_number = self.last_number.checked_add(1).unwrap_or(1);
        self.last_number
    }

    /// The zero of a key that counts at `now_ms`.
    #[must_use]
    pub fn zero(&self, key: Key, now_ms: f64) -> Option<&Finding> {
        let mut of_key = self.zeros.iter().filter(|f| f.key == key);
        of_key.find(|f| counts_at(f.found_ms, now_ms))
    }

    /// The calibration that counts for a device and channel at `now_ms`.
    #[must_use]
    pub fn calibration(&self, key: Key, now_ms: f64) -> Option<&Calibration> {
        self.calibrated_for(key, now_ms).map(|c| &c.calibration)
    }

    fn calibrated_for(&self, key: Key, now_ms: f64) -> Option<&Calibrated> {
        self.calibrated.as_ref().filter(|c| {
            // A case moves no sensor.
            c.device.number == key.device.number
                && counts_at(c.found_ms, now_ms)
                && (key.channel == Channel::Acceleration || c.calibration.for_orientation)
        })
    }

    /// The sensor behind `key` at `now_ms`. What was not found, or no longer counts, is as assumed.
    #[must_use]
    pub fn sensor(&self, key: Key, now_ms: f64) -> Sensor {
        let mut sensor = Sensor::assumed();
        if let Some(c) = self.calibrated_for(key, now_ms) {
            sensor = sensor.calibrated(&c.calibration, c.number);
        }
        let normal = key.hold.normal();
        let of_phone = |f: &&Finding| {
            f.key.device == key.device
                && f.key.channel == key.channel
                && counts_at(f.found_ms, now_ms)
        };
        for finding in self.zeros.iter().filter(of_phone) {
            let (own, found) = (finding.key.hold == key.hold, &finding.found);
            let its_normal = finding.key.hold.normal();
            // Another side knows the zero along the normal, less well: case and bump differ from
            // side to side.
            let side = if own { 0.0 } else { SIDE_TO_SIDE_DEG / DEG };
            for i in 0..3 {
                let adds = normal[i] != 0.0 && hypot(found.u_zero[i], side) < sensor.u_zero[i];
                if its_normal[i] == 0.0 && (own || adds) {
                    sensor.zero[i] = found.zero[i];
                    sensor.u_zero[i] = found.u_zero[i];
                    sensor.u_side[i] = side;
                    sensor.zero_from[i] = finding.number;
                }
            }
            if own {
                sensor.found_at = found.found_at;
            } else {
                sensor.side = key.hold as u8 + 1;
            }
        }
        sensor
    }
}
