//! Calibration by faces: the gauge is laid on its six faces and leant between them; each second of
//! rest in a new pose counts by itself, until core can tell zero and scale.

use crate::fault::Fault;
use plumbmark::calibration::{Calibration, CalibrationRefusal, Pose, Poses};

/// Share of gravity along the gauge's length that is standing on an end: within 37°.
const STANDING: f32 = 0.8;

/// What a pose led to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Step {
    /// More poses are wanted.
    More,
    /// Zero and scale.
    Found(Calibration),
    /// The poses contradict each other, or are no sensor's.
    Failed,
}

/// Poses so far.
#[derive(Debug, Clone, Default)]
pub struct Faces(Poses);

impl Faces {
    /// How many there are.
    #[must_use]
    pub fn taken(&self) -> u8 {
        self.0.len() as u8
    }

    /// Takes a pose. The first one must be the gauge standing on its tail end: so the eye says once
    /// which way the axes point, and a sensor that sits otherwise is found out. `largest_zero` as in
    /// [`Poses::fit_within`].
    ///
    /// # Errors
    /// [`Fault::Axes`] where the gauge says that it stands on its head end.
    #[inline(never)]
    pub fn take(&mut self, pose: Pose, largest_zero: f32) -> Result<Step, Fault> {
        let [_, along, _] = pose.force;
        if self.0.is_empty() && along < STANDING {
            return if along < -STANDING {
                Err(Fault::Axes)
            } else {
                Ok(Step::More)
            };
        }
        match self.0.add(pose) {
            Ok(()) => Ok(self.fitted(largest_zero)),
            Err(CalibrationRefusal::Full) => Ok(Step::Failed),
            // The gauge still lies as before.
            Err(_) => Ok(Step::More),
        }
    }

    fn fitted(&self, largest_zero: f32) -> Step {
        use CalibrationRefusal::{DoesNotFit, TooLarge};
        match self.0.fit_within(largest_zero) {
            Ok(found) => Step::Found(found),
            Err(DoesNotFit | TooLarge) => Step::Failed,
            Err(_) => Step::More,
        }
    }
}
