//! Any run of events and choices, as a browser, a hand or a fault might send them.
#![no_main]

mod phone;
mod ways;

use crate::phone::{Phone, Signal};
use arbitrary::{Result, Unstructured};
use libfuzzer_sys::fuzz_target;
use plumbmark::check::End;
use plumbmark::findings::Key;
use plumbmark::holds::Surface;
use plumbmark::level::{LEVEL_FOR_MS, LevelRefusal};
use plumbmark::live::{Blind, Reading};
use plumbmark::parts::Part;
use plumbmark::reading::ZeroBy;
use plumbmark::vehicle::Pointing;
use plumbmark_fuzz::{any, sound};

impl Phone {
    fn event(&mut self, u: &mut Unstructured<'_>) -> Result<()> {
        let wide = |u: &mut Unstructured<'_>| any::maybe(u).map(|v| v.map(f64::from));
        match u.int_in_range(0..=20)? {
            0..=2 => {
                let (up, signal) = (any::direction(u)?, Signal::any(u)?);
                self.rest(up, &signal, u.int_in_range(1..=240)?);
            }
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
            6 => self.live.heading(wide(u)?),
            7 => self.select(u)?,
            8 => self.live.set_sign(u.arbitrary()?),
            9 => {
                self.live.learn_sign_face_up();
            }
            10 => {
                let end = *u.choose(&[Some(0), Some(1), Some(2), Some(3), None])?;
                self.live
                    .tell_end(any::check(u)?, end.map(|i: usize| End::ALL[i]));
            }
            11 => {
                let set = any::limit_set(u)?;
                let valid = set.validate().is_ok();
                assert_eq!(self.live.set_limits(set).is_ok(), valid);
            }
            12 => {
                if u.arbitrary()? {
                    self.live.arm(self.now_ms);
                } else {
                    self.live.disarm();
                }
            }
            13 => self.time(u)?,
            14 => self.known(u)?,
            15 | 16 => self.turn(u)?,
            17 => self.calibrate(u)?,
            18 => self.level(u)?,
            19 => self.vehicle(u)?,
            _ => self.part(u)?,
        }
        Ok(())
    }

    /// A part, or a face; a refusal leaves the choice before it.
    fn select(&mut self, u: &mut Unstructured<'_>) -> Result<()> {
        let (part, surface) = (*u.choose(&Part::ALL)?, *u.choose(&Surface::ALL)?);
        let hold = any::hold(u)?;
        let before = self.live.placement().copied();
        let chosen = if u.ratio(1, 3)? {
            self.live.select_face(hold, surface)
        } else {
            self.live.select(part, hold, surface)
        };
        match chosen {
            Ok(()) => assert!(self.live.reading().is_err(), "a reading of another part"),
            Err(_) => assert_eq!(self.live.placement().copied(), before),
        }
        Ok(())
    }

    fn time(&mut self, u: &mut Unstructured<'_>) -> Result<()> {
        let later_ms = *u.choose(&[1000.0, 1e6, 3.5e6, 3.7e6, -1000.0, f64::NAN])?;
        if u.ratio(1, 8)? {
            self.set_clock(any::wide_number(u)?);
        } else if self.clock_ms.is_finite() {
            self.set_clock(self.clock_ms + later_ms);
        } else {
            self.set_clock(0.0);
        }
        Ok(())
    }

    /// Single steps of what is found of a phone, in any order.
    fn known(&mut self, u: &mut Unstructured<'_>) -> Result<()> {
        match u.int_in_range(0..=7)? {
            0 => {
                self.device = any::device(u)?;
                self.live.set_device(self.device);
            }
            1 => {
                let _ = self.live.keep_placement();
            }
            2 => self.live.tell_turned(),
            3 => self.live.forget_placements(),
            4 => self.find_zero(),
            5 => {
                let _ = self.live.add_pose();
            }
            6 => self.fit(),
            _ => self.live.forget_poses(),
        }
        Ok(())
    }

    fn vehicle(&mut self, u: &mut Unstructured<'_>) -> Result<()> {
        match u.int_in_range(0..=3)? {
            0 | 1 => {
                let terms = any::vehicle(u)?;
                let before = format!("{:?}", (self.live.vehicle(), self.live.reading()));
                let wrong = terms.wrong_field();
                assert_eq!(self.live.set_vehicle(terms).err(), wrong);
                let now = format!("{:?}", (self.live.vehicle(), self.live.reading()));
                if wrong.is_some() {
                    assert_eq!(now, before, "refused, and nothing changes");
                } else {
                    assert_eq!(*self.live.vehicle(), terms);
                }
            }
            2 => self.live.point(*u.choose(&Pointing::ALL)?),
            _ => self.live.forget_level(),
        }
        Ok(())
    }

    fn look(&mut self, at_ms: f64) {
        if self.live.tick(at_ms).is_ok() {
            assert!((at_ms - self.last_ms).abs() <= 300.0, "a stale reading");
        }
        sound::live(&self.live);
        match self.live.reading() {
            Ok(reading) => {
                self.counts(reading);
                self.found(reading);
            }
            Err(_) => assert!(self.live.blind() != Blind::Ready, "no reading, no capture"),
        }
    }

    /// A level that is too old by the clock is a refusal.
    fn counts(&self, reading: &Reading) {
        if let (Some(level), Some(answers)) = (self.live.level(), &reading.in_vehicle) {
            let age_ms = self.clock_ms - level.taken_ms;
            let fresh = age_ms >= 0.0 && age_ms < LEVEL_FOR_MS;
            assert_eq!(*answers == Err(LevelRefusal::Stale), !fresh, "{age_ms} ms");
        }
    }

    /// What was found counts for its own phone and channel alone.
    fn found(&self, reading: &Reading) {
        let sensor = &reading.up.sensor;
        let Some(placement) = self.live.placement() else {
            assert_eq!((sensor.zero_from, sensor.scale_from), ([0; 3], 0));
            return;
        };
        let key = Key {
            device: self.device,
            channel: reading.channel,
            hold: placement.hold,
        };
        let findings = self.live.findings();
        let calibrated = findings.calibration(key, self.clock_ms).is_some();
        let zero = findings.zero(key, self.clock_ms).is_some();
        if reading.zero_by != ZeroBy::Turn {
            assert_eq!(reading.zero_by == ZeroBy::Found, zero || calibrated);
        }
        for number in sensor.zero_from.into_iter().filter(|n| *n != 0) {
            let of_number = findings.zeros().iter().find(|f| f.number == number);
            let its = of_number.is_some_and(|f| {
                f.key.device == key.device
                    && f.key.channel == key.channel
                    && self.clock_ms >= f.found_ms
            });
            assert!(its || calibrated, "a finding of another phone");
        }
        assert!(sensor.scale_from == 0 || calibrated);
    }
}

fn run(u: &mut Unstructured<'_>) -> Result<()> {
    let mut phone = Phone::any(u)?;
    while !u.is_empty() {
        phone.event(u)?;
        // Between two ticks no answer outlives what it was made of.
        sound::live(&phone.live);
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
