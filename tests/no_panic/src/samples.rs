//! From a sensor's events to a reading.

use crate::any;
use plumbmark::check::End;
use plumbmark::fused::Fused;
use plumbmark::holds::{Hold, Surface};
use plumbmark::intake::Intake;
use plumbmark::limits::LimitSet;
use plumbmark::live::Live;
use plumbmark::parts::{Check, Part};
use plumbmark::reason::NoReading;
use plumbmark::rounded::{AxisSums, bias, estimate, inflation};
use plumbmark::window::Window;

pub(crate) fn call() {
    intake();
    window();
    rounded();
    fused();
    live();
}

fn intake() {
    let mut intake = any(Intake::new());
    any(intake.motion(any(0.0), any([None; 3]), any(None))).ok();
    any(intake.learn_sign_face_up());
    intake.set_sign(any(0));
    any((intake.sign(), intake.count_m_s2(), intake.is_fine()));
    any((intake.last_ms(), intake.last_dt_us()));
}

fn window() {
    let mut window = any(Window::new(any(0.0)));
    any(window.push(any(0), any([0; 3]), any(None))).ok();
    any(window.still()).ok();
    any(window.newest_fused());
    any((window.progress(), window.is_fresh(), window.count_m_s2()));
    window.restart();
    any(&window);
}

fn rounded() {
    let axis = any(AxisSums {
        n: 0,
        sum: 0,
        squares: 0,
        range: (0, 0),
    });
    any((axis.mean(), axis.variance()));
    any(estimate(&axis, any(0.0), any((0.0, 0.0))));
    any((inflation(&any([axis; 3]), any(0.0)), bias(any(0.0))));
}

fn fused() {
    let mut fused = any(Fused::default());
    fused.hold(any(None));
    fused.push_mean(any(None));
    any((fused.up(), fused.mean(), fused.drift_deg()));
    any(fused.settled());
    fused.restart();
    any(&fused);
}

fn live() {
    let mut live = any(Live::new());
    any(live.select(any(Part::Pump), any(Hold::Back), any(Surface::Bar))).ok();
    any(live.set_limits(any(LimitSet::trade_usage()))).ok();
    live.set_sign(any(0));
    live.tell_end(any(Check::PumpRoll), any(Some(End::Head)));
    live.motion(any(0.0), any([None; 3]));
    live.orientation(any(None), any(None));
    live.arm(any(0.0));
    any(live.tick(any(0.0))).ok();
    any(live.reading()).ok();
    any(live.capture()).ok();
    any((live.sign(), live.learn_sign_face_up(), live.progress()));
    any((live.blind(), live.up_body(), live.placement()));
    any((live.limits(), live.end_told(any(Check::PumpRoll))));
    live.disarm();
    any(&live);
    let reason = any(NoReading::Gap);
    any((reason.name(), reason.code()));
}
