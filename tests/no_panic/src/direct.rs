//! A sensor read directly, what was taken of it, and its line.

use crate::{any, write_to_nowhere};
use plumbmark::calibration::Calibration;
use plumbmark::direct::{Direct, Taken};
use plumbmark::holds::{Hold, Placement, Surface};
use plumbmark::limits::{Limit, LimitSet};
use plumbmark::line::{LineError, Speaker, read, write};
use plumbmark::parts::{Check, Part};
use plumbmark::sensor::Sensor;

pub(crate) fn call() {
    let Ok(placement) = Placement::new(any(Part::Pump), any(Hold::Back), any(Surface::Bar)) else {
        return;
    };
    let mut direct = any(Direct::new(any(0.0), sensor(), placement));
    direct.place(any(placement));
    direct.set_sensor(sensor());
    any((direct.placement(), direct.sensor(), direct.progress()));
    any(direct.push(any(0), any([0; 3]))).ok();
    any(direct.rest()).ok();
    any(direct.pose()).ok();
    any(direct.keep_first()).ok();
    any(direct.has_first());
    if let Ok(taken) = any(direct.take(any((0.0, 0.0)), any([None; 2]))) {
        answered(&taken);
        written(&taken);
    }
    direct.forget_first();
    direct.restart();
    any(&direct);
}

fn sensor() -> Sensor {
    let found = Calibration {
        zero: any([0.0; 3]),
        u_zero: any([0.0; 3]),
        scale: any([0.0; 3]),
        u_scale: any([0.0; 3]),
        for_orientation: any(false),
    };
    let unchecked = any(Sensor::unchecked(any(0.0), any(0.0)));
    any(unchecked.calibrated(&found, any(0)).crept(any(0.0)))
}

fn answered(taken: &Taken) {
    let set = any(LimitSet::trade_usage());
    any(taken.decided(&set.lines, any((0.0, 0.0))));
    any(taken.outcomes(&set.lines, any((0.0, 0.0))));
    any(taken.end_told(any(Check::PumpRoll)));
    any(taken.report(&set)).ok();
}

fn written(taken: &Taken) {
    let mut speaker = Speaker {
        gauge: any(0),
        count: any(0),
        software: Default::default(),
    };
    any(speaker.software.push_str(any(""))).ok();
    let limits = [any(Limit::not_entered(any(Check::PumpRoll)))];
    let surface_deg = any((0.0, 0.0));
    write(
        &speaker,
        taken,
        any(&limits[..]),
        surface_deg,
        &mut |byte| {
            any(byte);
        },
    );
    if let Err(error) = any(read(any(&[][..]))) {
        any(error.name());
        write_to_nowhere(&any::<LineError>(error));
    }
}
