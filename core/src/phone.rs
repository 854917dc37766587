//! This phone: its zero from a turn on a table, its calibration from poses of any kind.

use crate::budget::UpEstimate;
use crate::calibration::{Calibration, CalibrationRefusal, Pose, Poses};
use crate::findings::{Device, Findings, Key};
use crate::frames::angle_deg;
use crate::gathered::gathered;
use crate::holds::Placement;
use crate::live::{Channel, Live};
use crate::prior::NOISE_STEPS;
use crate::reading::{Rest, noise_of};
use crate::reason::NoReading;
use crate::reversal::{FoundZero, TurnRefusal, find_zero};
use crate::turn::{HALF_TURN_DEG, Turn};
use crate::vector::scaled;
use heapless::Vec;

/// Why a pose was not added.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum PoseRefusal {
    /// There is no reading.
    NoReading(NoReading),
    /// It adds nothing.
    Calibration(CalibrationRefusal),
}

impl Rest {
    /// The pose that it is for a calibration.
    ///
    /// # Errors
    /// As [`Self::by_acceleration`].
    pub fn pose(&self) -> Result<Pose, NoReading> {
        let up = self.by_acceleration(NOISE_STEPS)?;
        let length = self.length_g();
        let squares: f32 = (0..3)
            .map(|i| up.noise[i] * up.noise[i] + up.half_steps[i][i] * up.half_steps[i][i] / 3.0)
            .sum();
        Ok(Pose {
            force: scaled(up.up, length),
            u: length * libm::sqrtf(squares / 3.0),
            channels_agree: self.settled.is_some(),
        })
    }
}

impl Live {
    /// Finds this phone's zero from the two or four placements kept, and keeps it for its channel,
    /// hold and case. Returns that of the channel in charge.
    ///
    /// # Errors
    /// [`TurnRefusal`]; the placements are then forgotten, what was found before stays.
    pub fn find_zero(&mut self) -> Result<FoundZero, TurnRefusal> {
        let placed = core::mem::replace(&mut self.turn, Turn::new()).placed;
        let (Some(placement), Some(last)) = (self.placement, placed.last()) else {
            return Err(TurnRefusal::WrongCount);
        };
        let opposite = |a: usize, b: usize| match (placed.get(a), placed.get(b)) {
            (Some(p), Some(q)) => p
                .ahead
                .zip(q.ahead)
                .is_none_or(|(p, q)| angle_deg(p, q) >= HALF_TURN_DEG),
            _ => false,
        };
        let half = placed.len() / 2;
        if !(0..half).all(|i| opposite(i, i + half)) {
            return Err(TurnRefusal::NotOpposite);
        }
        let contact = self.contact(&placement);
        let alone = last.rest.still.is_none();
        let mut leading = Err(TurnRefusal::WrongCount);
        for channel in Channel::ALL {
            let bounds = noise_of(placed.iter().map(|p| &p.rest));
            let ups: Vec<UpEstimate, 4> = gathered(
                placed
                    .iter()
                    .filter_map(|p| p.rest.by(channel, bounds).ok()),
            );
            if ups.len() < placed.len() {
                continue;
            }
            let found = find_zero(&ups, &contact);
            if channel == Channel::Acceleration || alone {
                leading = found;
            }
            // What the channel in charge refuses the other one does not heal.
            if let (Ok(zero), Ok(_)) = (found, leading) {
                let key = self.key(channel, &placement);
                self.findings.keep_zero(key, zero, self.clock_ms);
            }
        }
        leading
    }

    /// Adds the pose that the phone rests in to those for a calibration. Returns how many there
    /// are.
    ///
    /// # Errors
    /// Why there is no reading, or why the pose adds nothing.
    pub fn add_pose(&mut self) -> Result<usize, PoseRefusal> {
        self.reading().map_err(PoseRefusal::NoReading)?;
        let rest = self
            .rest
            .ok_or(PoseRefusal::NoReading(NoReading::Starting))?;
        let pose = rest.pose().map_err(PoseRefusal::NoReading)?;
        self.poses.add(pose).map_err(PoseRefusal::Calibration)?;
        Ok(self.poses.len())
    }

    /// How many poses are kept.
    #[must_use]
    pub fn pose_count(&self) -> usize {
        self.poses.len()
    }

    /// Forgets the poses.
    pub fn forget_poses(&mut self) {
        self.poses = Poses::new();
    }

    /// Fits the poses, and keeps the calibration for this phone.
    ///
    /// # Errors
    /// [`CalibrationRefusal`]; the poses stay.
    pub fn calibrate(&mut self) -> Result<Calibration, CalibrationRefusal> {
        let calibration = self.poses.fit()?;
        self.findings
            .keep_calibration(self.device, calibration, self.clock_ms);
        Ok(calibration)
    }

    /// Says which phone this is.
    pub fn set_device(&mut self, device: Device) {
        self.device = device;
        self.answer_again();
    }

    /// What has been found of the phones used.
    #[must_use]
    pub fn findings(&self) -> &Findings {
        &self.findings
    }

    /// Takes back what was found before a restart.
    pub fn findings_mut(&mut self) -> &mut Findings {
        &mut self.findings
    }

    pub(crate) fn key(&self, channel: Channel, placement: &Placement) -> Key {
        Key {
            device: self.device,
            channel,
            hold: placement.hold,
        }
    }
}
