//! How often the truth lies inside the interval, on the nominal population, by a simulator that
//! shares nothing with core; and whether doing what the advice says settles the check.
//! A tenth of the draws unless `PLUMBMARK_STUDY=full`; the seed is fixed.
//! `cargo test -p plumbmark-tests --profile study --test coverage -- --nocapture` prints the table.

mod simulator;

use plumbmark::advice::AdviceKind;
use plumbmark::check::{End, Outcome};
use plumbmark::decision::Verdict;
use plumbmark::holds::{Hold, Surface};
use plumbmark::limits::{Basis, Limit, LimitSet};
use plumbmark::live::Live;
use plumbmark::parts::{Check, Part};
use plumbmark_tests::{Draws, full_study};
use simulator::{Phone, up_on_back};

const SEED: u64 = 20_261_125;
/// Standard uncertainty that core assumes for a metal face; the simulator misplaces by as much.
const HOLD_DEG: f64 = 0.1;
const EVENTS: usize = 72;

fn draws_per_cell() -> usize {
    if full_study() { 20_000 } else { 2_000 }
}

fn live(limits: LimitSet) -> Live {
    let mut live = Live::new();
    live.set_limits(limits).unwrap();
    live.set_sign(1);
    live.select(Part::Heater, Hold::Back, Surface::MetalFace)
        .unwrap();
    live.tell_end(Check::HeaterOutlet, Some(End::Photo));
    live.tell_end(Check::HeaterPort, Some(End::Photo));
    live
}

/// The heater's outlet, read once; `None` where core gave no reading.
fn outlet(live: &mut Live, t_ms: f64) -> Option<Outcome> {
    let reading = live.tick(t_ms).ok()?;
    reading
        .outcomes
        .iter()
        .find(|o| o.check == Check::HeaterOutlet)
        .copied()
}

fn limited(low_deg: Option<f32>, high_deg: Option<f32>) -> LimitSet {
    let mut set = LimitSet::empty();
    let mut line = Limit {
        low_deg,
        high_deg,
        ..Limit::not_entered(Check::HeaterOutlet)
    };
    line.basis = Basis::Assumed;
    set.add_line(line).unwrap();
    set
}

/// Upper 99 % bound of a share of `hits` in `n`: Wilson's score interval, one-sided z = 2.326.
fn upper_99(hits: usize, n: usize) -> f64 {
    let (p, n, z) = (hits as f64 / n as f64, n as f64, 2.326);
    let middle = p + z * z / (2.0 * n);
    let half = z * (p * (1.0 - p) / n + z * z / (4.0 * n * n)).sqrt();
    (middle + half) / (1.0 + z * z / n)
}

#[test]
fn the_truth_lies_inside_95_times_in_100_and_a_limit_is_not_passed_falsely() {
    let n = draws_per_cell();
    println!("e °  σ/q   read %  cov %  mean U °  P95 °  U/P95  within at the limit %");
    for elevation in [0.0, 15.0, 45.0, 75.0] {
        for sigma in [0.05, 0.1, 0.2, 0.3, 0.5] {
            let mut draws = Draws::new(SEED + (1000.0 * sigma) as u64 + elevation as u64);
            let (mut inside, mut read, mut passed, mut total_u) = (0, 0, 0, 0.0);
            let mut errors = Vec::with_capacity(n);
            for _ in 0..n {
                let truth = elevation + draws.between(-0.6, 0.6);
                // The part sits exactly at its limit: "within" is false assurance here.
                let mut live = live(limited(Some(truth as f32), None));
                let phone = Phone::nominal(&mut draws, sigma);
                let up = up_on_back(truth, draws.between(-5.0, 5.0));
                let t = phone.rest(&mut live, &mut draws, up, HOLD_DEG, 0.0, EVENTS);
                let Some(outcome) = outlet(&mut live, t) else {
                    continue;
                };
                let m = outcome.measured.unwrap();
                let error = (f64::from(m.value_deg) - truth).abs();
                read += 1;
                inside += usize::from(error <= f64::from(m.u_deg));
                passed += usize::from(outcome.verdict == Verdict::Within);
                total_u += f64::from(m.u_deg);
                errors.push(error);
            }
            errors.sort_by(f64::total_cmp);
            let p95 = errors[errors.len() * 95 / 100];
            let mean_u = total_u / read as f64;
            let percent = |k: usize| 100.0 * k as f64 / read as f64;
            println!(
                "{elevation:>3}  {sigma:.2}  {:>6.1}  {:>5.1}  {mean_u:>8.2}  {p95:>5.2}  {:>5.2}  {:>5.2}",
                100.0 * read as f64 / n as f64,
                percent(inside),
                mean_u / p95,
                percent(passed)
            );
            assert!(
                read * 10 > n * 9,
                "refused a still phone too often: {read} of {n}"
            );
            assert!(
                upper_99(inside, read) >= 0.95,
                "coverage {} of {read}",
                inside
            );
            let no_worse_than = 0.025 + 2.326 * (0.025 * 0.975 / read as f64).sqrt();
            assert!(
                (passed as f64) <= no_worse_than * read as f64,
                "false within {passed} of {read}"
            );
            assert!(
                (0.95..1.6).contains(&(mean_u / p95)),
                "U {mean_u} for {p95}"
            );
        }
    }
}

#[test]
fn far_beyond_the_limit_nothing_is_passed() {
    let n = if full_study() { 200_000 } else { 20_000 };
    let mut draws = Draws::new(SEED);
    let mut passed = 0;
    for _ in 0..n {
        let sigma = draws.between(0.02, 0.5);
        let truth = draws.between(-30.0, 30.0);
        let phone = Phone::nominal(&mut draws, sigma);
        // 2 U ≈ 2° below the lowest value permitted.
        let mut live = live(limited(Some(truth as f32 + 2.0), None));
        let up = up_on_back(truth, draws.between(-5.0, 5.0));
        let t = phone.rest(&mut live, &mut draws, up, HOLD_DEG, 0.0, EVENTS);
        passed += usize::from(outlet(&mut live, t).is_some_and(|o| o.verdict == Verdict::Within));
    }
    println!("within at 2° beyond: {passed} of {n}");
    // 1e-4 is the aim; with this many draws so many may be seen (Poisson, 99 %).
    assert!(passed <= if full_study() { 32 } else { 6 });
}

/// Moves the part as the advice says, holds the same phone to it anew, and reads again.
#[test]
fn doing_what_the_advice_says_settles_the_check() {
    let n = draws_per_cell();
    let mut draws = Draws::new(SEED + 1);
    for (low, high) in [
        (Some(15.0), None),
        (None, Some(-3.0)),
        (Some(-6.0), Some(6.0)),
    ] {
        let limits = limited(low, high);
        let middle = low.or(high).map_or(0.0, f64::from);
        let (mut advised, mut settled) = (0, 0);
        for _ in 0..n {
            let sigma = draws.between(0.02, 0.5);
            let phone = Phone::nominal(&mut draws, sigma);
            let truth = middle + draws.between(-8.0, 8.0);
            let roll = draws.between(-5.0, 5.0);
            let read = |truth: f64, draws: &mut Draws| {
                let mut live = live(limits.clone());
                let up = up_on_back(truth, roll);
                let t = phone.rest(&mut live, draws, up, HOLD_DEG, 0.0, EVENTS);
                outlet(&mut live, t)
            };
            let Some(first) = read(truth, &mut draws) else {
                continue;
            };
            if first.advice.kind != AdviceKind::Move {
                continue;
            }
            let turn = f64::from(first.advice.turn_deg.expect("a turn"));
            let Some(second) = read(truth + turn, &mut draws) else {
                continue;
            };
            advised += 1;
            settled += usize::from(second.verdict == Verdict::Within);
        }
        println!("limits {low:?} {high:?}: {settled} of {advised} settled by one move");
        assert!(advised > n / 4);
        assert!(
            settled as f64 >= 0.95 * advised as f64,
            "{settled} of {advised}"
        );
    }
}
