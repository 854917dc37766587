//! From a sensor's events to a reading.

use crate::any;
use plumbmark::fused::Fused;
use plumbmark::intake::Intake;
use plumbmark::reading::{Channel, Rest, noise_of};
use plumbmark::rounded::{AxisSums, bias, estimate, inflation, noise_bounds};
use plumbmark::window::Window;

pub(crate) fn call() {
    intake();
    window();
    rounded();
    fused();
    rest();
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
    any(noise_bounds(any(0.0), any(0)));
}

fn fused() {
    let mut fused = any(Fused::default());
    fused.hold(any(None));
    fused.push_mean(any(None));
    any((fused.up(), fused.mean(), fused.drift_deg()));
    any(fused.held_deg());
    any(fused.settled());
    fused.restart();
    any(&fused);
}

fn rest() {
    let window = any(Window::new(any(0.0)));
    let fused = any(Fused::default());
    let rest = any(Rest::new(window.still().ok(), any(0.0), any(false), &fused));
    any(rest.by_acceleration(any((0.0, 0.0)))).ok();
    any(rest.by_orientation()).ok();
    let channel = any(Channel::Acceleration);
    any(rest.by(channel, any((0.0, 0.0)))).ok();
    any(rest.mean_up(channel));
    any((rest.length_g(), rest.samples(), rest.step_m_s2()));
    let placements = [rest; 4];
    any(noise_of(any(&placements[..]).iter()));
}
