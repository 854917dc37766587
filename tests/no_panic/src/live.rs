//! A phone held to a part, a table, a vehicle: every way in and out.

use crate::{any, write_to_nowhere};
use plumbmark::check::End;
use plumbmark::findings::Device;
use plumbmark::holds::{Hold, Surface};
use plumbmark::limits::LimitSet;
use plumbmark::live::Live;
use plumbmark::parts::{Check, Part};
use plumbmark::reason::NoReading;
use plumbmark::vehicle::{Pointing, VehicleTerms};

pub(crate) fn call() {
    let mut live = any(Live::new());
    choose(&mut live);
    receive(&mut live);
    turn(&mut live);
    calibrate(&mut live);
    on_a_vehicle(&mut live);
    read(&mut live);
    let reason = any(NoReading::Gap);
    any((reason.name(), reason.code()));
    write_to_nowhere(&reason);
}

fn choose(live: &mut Live) {
    let (hold, surface) = (any(Hold::Back), any(Surface::Bar));
    any(live.select(any(Part::Pump), hold, surface)).ok();
    any(live.select_face(hold, surface)).ok();
    any(live.set_limits(any(LimitSet::trade_usage()))).ok();
    live.tell_end(any(Check::PumpRoll), any(Some(End::Head)));
    if let Some(placement) = any(live.placement()) {
        any(live.contact(placement));
    }
    any((live.limits(), live.end_told(any(Check::PumpRoll))));
    any(&live);
}

fn receive(live: &mut Live) {
    live.set_sign(any(0));
    live.set_clock(any(0.0));
    live.motion(any(0.0), any([None; 3]));
    live.orientation(any(None), any(None));
    live.heading(any(None));
    any((live.sign(), live.learn_sign_face_up(), live.progress()));
    any(&live);
}

fn turn(live: &mut Live) {
    any(live.keep_placement()).ok();
    live.tell_turned();
    any((live.placements(), live.knows_heading()));
    any(live.find_zero()).ok();
    live.forget_placements();
    any(&live);
}

fn calibrate(live: &mut Live) {
    any(live.add_pose()).ok();
    any(live.pose_count());
    any(live.calibrate()).ok();
    live.forget_poses();
    live.set_device(any(Device::default()));
    any(live.findings());
    any(live.findings_mut());
}

fn on_a_vehicle(live: &mut Live) {
    any(live.keep_level()).ok();
    any(live.set_vehicle(any(VehicleTerms::ASSUMED))).ok();
    live.point(any(Pointing::Left));
    any((live.level(), live.vehicle(), live.pointing()));
    read(live);
    live.forget_level();
    any(&live);
}

fn read(live: &mut Live) {
    live.arm(any(0.0));
    any(live.tick(any(0.0))).ok();
    any(live.reading()).ok();
    any(live.capture()).ok();
    any((live.blind(), live.up_body()));
    live.disarm();
    any(&live);
}
