//! Doing what the advice says settles the check, and far beyond a limit nothing is passed: the
//! whole way from limit set to verdict, on the nominal population.
//! A tenth of the draws unless `PLUMBMARK_STUDY=full`.

use plumbmark::advice::AdviceKind;
use plumbmark::check::Outcome;
use plumbmark::decision::Verdict;
use plumbmark::holds::Hold;
use plumbmark::limits::{Basis, Limit, LimitSet};
use plumbmark::parts::Check;
use plumbmark_coverage::case::{Case, Channel, Placing};
use plumbmark_coverage::measure::{feed, live, outlet, up_and_normal};
use plumbmark_simulator::{Draws, Phone, Population, Scene};

/// Standard uncertainties that core assumes for a metal face, degrees; the simulator misplaces by
/// as much.
const TILT_DEG: f64 = 0.1;
const HEADING_DEG: f64 = 1.0;

fn phones(tenth: u64) -> u64 {
    if std::env::var("PLUMBMARK_STUDY").is_ok_and(|v| v == "full") {
        10 * tenth
    } else {
        tenth
    }
}

fn limited(low_deg: Option<f32>, high_deg: Option<f32>) -> LimitSet {
    let mut set = LimitSet::empty();
    let line = Limit {
        low_deg,
        high_deg,
        basis: Basis::Assumed,
        ..Limit::not_entered(Check::HeaterOutlet)
    };
    set.add_line(line).unwrap();
    set
}

/// Lays `phone` on a part at `elevation_deg` and reads its outlet against `limits`.
fn read(
    phone: &Phone,
    limits: &LimitSet,
    elevation_deg: f64,
    roll_deg: f64,
    draws: &mut Draws,
) -> Option<Outcome> {
    let (up, normal) = up_and_normal(Hold::Back, elevation_deg, roll_deg);
    let scene = Scene {
        tilt_deg: TILT_DEG,
        heading_deg: HEADING_DEG,
        jitter_ms: 1.0,
        ..Scene::at_rest(up, normal)
    };
    let case = Case::nominal(Placing::First, Channel::Acceleration, 0.2, TILT_DEG);
    let mut live = live(&case, Hold::Back);
    live.set_limits(limits.clone()).unwrap();
    let events = phone.rest(&scene, draws);
    feed(&mut live, Channel::Acceleration, &events);
    outlet(&mut live, &events)
}

fn some_phone(draws: &mut Draws) -> Phone {
    let sigma_steps = draws.between(0.02, 0.5);
    Phone::draw(&Population::NOMINAL, sigma_steps, draws)
}

#[test]
fn far_beyond_the_limit_nothing_is_passed() {
    let n = phones(20_000);
    let mut passed = 0;
    for i in 0..n {
        let mut draws = Draws::new(1, i);
        let phone = some_phone(&mut draws);
        let truth = draws.between(-30.0, 30.0);
        let roll = draws.between(-5.0, 5.0);
        // 2 U is about 2° here.
        let limits = limited(Some(truth as f32 + 2.0), None);
        let outcome = read(&phone, &limits, truth, roll, &mut draws);
        passed += u64::from(outcome.is_some_and(|o| o.verdict == Verdict::Within));
    }
    println!("within at 2° beyond: {passed} of {n}");
    assert!(passed * 10_000 <= n, "{passed} of {n}");
}

/// Moves the part as the advice says, lays the same phone on it anew, and reads again.
#[test]
fn doing_what_the_advice_says_settles_the_check() {
    let n = phones(2_000);
    for (low, high) in [
        (Some(15.0), None),
        (None, Some(-3.0)),
        (Some(-6.0), Some(6.0)),
    ] {
        let limits = limited(low, high);
        let middle = low.or(high).map_or(0.0, f64::from);
        let (mut advised, mut settled) = (0, 0);
        for i in 0..n {
            let mut draws = Draws::new(2, i);
            let phone = some_phone(&mut draws);
            let truth = middle + draws.between(-8.0, 8.0);
            let roll = draws.between(-5.0, 5.0);
            let Some(first) = read(&phone, &limits, truth, roll, &mut draws) else {
                continue;
            };
            if first.advice.kind != AdviceKind::Move {
                continue;
            }
            let turn = f64::from(first.advice.turn_deg.expect("a turn"));
            let Some(second) = read(&phone, &limits, truth + turn, roll, &mut draws) else {
                continue;
            };
            advised += 1;
            settled += u64::from(second.verdict == Verdict::Within);
        }
        println!("limits {low:?} to {high:?} °: {settled} of {advised} settled by one move");
        assert!(advised > n / 4);
        assert!(settled * 100 >= 95 * advised, "{settled} of {advised}");
    }
}
