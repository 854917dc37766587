//! Ways of work that take many events in order: a turn, a calibration, a vehicle's level.

use crate::phone::{Phone, Signal};
use arbitrary::{Result, Unstructured};
use plumbmark::calibration::Calibration;
use plumbmark::check::End;
use plumbmark::holds::Surface;
use plumbmark::level::LevelError;
use plumbmark::parts::Check;
use plumbmark::prior::LARGEST_ZERO;
use plumbmark::reversal::half_turn;
use plumbmark::vector::{Vec3, cross, dot, unit};
use plumbmark_fuzz::{any, sound};

/// `v` a quarter turn about the unit vector `n`.
fn quarter_turn(v: Vec3, n: Vec3) -> Vec3 {
    let (along, round) = (dot(v, n), cross(n, v));
    core::array::from_fn(|i| n[i] * along + round[i])
}

impl Phone {
    /// Placements turned against each other: on a table they give a zero, on a part the reading
    /// is of both.
    pub fn turn(&mut self, u: &mut Unstructured<'_>) -> Result<()> {
        let Some(placement) = self.live.placement().copied() else {
            return Ok(());
        };
        let (signal, normal) = (Signal::any(u)?, placement.hold.normal());
        let lean = any::between_each(u, -0.5, 0.5)?;
        let mut up = sound::leaning(normal, lean);
        let on_part = placement.part.is_some();
        let count = if on_part { 2 } else { *u.choose(&[2, 4])? };
        let says_heading = u.arbitrary()?;
        self.live.forget_placements();
        for i in 0..count {
            if says_heading {
                self.live.heading(Some(f64::from(i * 360 / count)));
            } else if i > 0 {
                self.live.tell_turned();
            }
            self.rest(up, &signal, u.int_in_range(60..=200)?);
            let read = self.live.tick(self.now_ms).is_ok();
            if on_part && i > 0 {
                return Ok(());
            }
            let before = self.live.placements();
            let kept = self.live.keep_placement();
            assert!(read || kept.is_err(), "kept without a reading");
            assert_eq!(self.live.placements(), before + usize::from(kept.is_ok()));
            self.lift();
            up = if count == 2 {
                half_turn(up, normal)
            } else {
                quarter_turn(up, normal)
            };
        }
        self.find_zero();
        Ok(())
    }

    pub fn find_zero(&mut self) {
        let kept = self.live.placements();
        let before = self.live.findings().zeros().len();
        match self.live.find_zero() {
            Ok(found) => {
                assert!(kept == 2 || kept == 4, "{kept} placements");
                assert!(found.zero.iter().all(|z| z.abs() <= LARGEST_ZERO));
                assert!(found.u_zero.iter().all(|s| s.is_finite() && *s >= 0.0));
                assert!(!self.live.findings().zeros().is_empty());
            }
            Err(_) => assert!(self.live.findings().zeros().len() >= before),
        }
        assert_eq!(self.live.placements(), 0, "they are used up");
    }

    /// Rests with every side and every corner up.
    pub fn calibrate(&mut self, u: &mut Unstructured<'_>) -> Result<()> {
        let signal = Signal::any(u)?;
        let poses = u.int_in_range(8..=14)?;
        let sides = [1.0, -1.0]
            .into_iter()
            .flat_map(|s: f32| [[s, 0.0, 0.0], [0.0, s, 0.0], [0.0, 0.0, s]]);
        let corners = (0..8_u8).map(|k| [1, 2, 4].map(|bit| if k & bit == 0 { 1.0 } else { -1.0 }));
        for pose in sides.chain(corners).take(poses) {
            self.lift();
            self.rest(unit(pose).unwrap_or(pose), &signal, 64);
            let read = self.live.tick(self.now_ms).is_ok();
            let before = self.live.pose_count();
            let added = self.live.add_pose();
            assert!(read || added.is_err(), "added without a reading");
            assert_eq!(self.live.pose_count(), before + usize::from(added.is_ok()));
        }
        self.fit();
        Ok(())
    }

    pub fn fit(&mut self) {
        let fit = self.live.calibrate();
        assert!(fit.is_err() || self.live.pose_count() >= 9);
        if let Ok(Calibration {
            u_zero, u_scale, ..
        }) = fit
        {
            let mut uncertain = u_zero.iter().chain(&u_scale);
            assert!(uncertain.all(|s| s.is_finite() && *s > 0.0), "{fit:?}");
        }
    }

    /// Reads the rail.
    pub fn level(&mut self, u: &mut Unstructured<'_>) -> Result<()> {
        let hold = any::hold(u)?;
        if self.live.select_face(hold, Surface::MetalFace).is_err() {
            return Ok(());
        }
        let lean = any::between_each(u, -0.3, 0.3)?;
        self.lift();
        self.rest(sound::leaning(hold.normal(), lean), &Signal::any(u)?, 70);
        let read = self.live.tick(self.now_ms).is_ok();
        let before = self.live.level().copied();
        match self.live.keep_level() {
            Ok(moved) => {
                assert!(read && (moved.is_none() || before.is_some()));
                let taken_ms = self.live.level().map(|l| l.taken_ms.to_bits());
                assert_eq!(taken_ms, Some(self.clock_ms.to_bits()));
            }
            Err(error) => {
                assert!(!read || matches!(error, LevelError::Refused(_)));
                // Compared by their text: a clock may be NaN.
                let now = self.live.level().copied();
                assert_eq!(format!("{now:?}"), format!("{before:?}"));
            }
        }
        Ok(())
    }

    /// Reads a part, on a vehicle or not.
    pub fn part(&mut self, u: &mut Unstructured<'_>) -> Result<()> {
        self.select(u)?;
        for check in Check::ALL {
            self.live.tell_end(check, Some(End::Photo));
        }
        self.lift();
        let up = any::direction(u)?;
        self.rest(up, &Signal::any(u)?, 70);
        Ok(())
    }
}
