//! The gauge while it is calibrated by faces.

use crate::accelerometer::sensor;
use crate::buttons::Press;
use crate::faces::Step;
use crate::fault::Fault;
use crate::gauge::{Gauge, Mode, Outlet};
use crate::lights::Show;
use plumbmark::calibration::Calibration;

impl Gauge {
    /// Each second of rest is a pose; a press gives up.
    #[inline(never)]
    pub(crate) fn calibrate(&mut self, fresh: bool, press: Option<Press>, out: &mut dyn Outlet) {
        if press.is_some() {
            return self.leave_faces(Show::Refused);
        }
        if !fresh {
            return;
        }
        let pose = match self.direct.pose() {
            Ok(pose) => pose,
            Err(reason) => return self.weigh(reason),
        };
        self.not_gravity = 0;
        let Mode::Faces(faces) = &mut self.mode else {
            return;
        };
        match faces.take(pose, self.stated.largest_zero) {
            Err(fault) => self.fail(fault),
            Ok(Step::More) => {}
            Ok(Step::Failed) => self.leave_faces(Show::Refused),
            Ok(Step::Found(found)) => self.found(found, out),
        }
    }

    fn found(&mut self, found: Calibration, out: &mut dyn Outlet) {
        match out.keep(found) {
            Some(kept) => {
                self.direct.set_sensor(sensor(self.stated, Some(&kept)));
                self.leave_faces(Show::Stored);
            }
            None => self.fail(Fault::KeptDamaged),
        }
    }

    fn leave_faces(&mut self, note: Show) {
        self.choose(self.chosen);
        self.note(note);
    }
}
