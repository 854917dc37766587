//! Near plumb, where the error across a slope bends an angle and directions get lost: how often
//! the interval holds the truth, by draws of what the priors say of a phone on a round body.

use plumbmark::budget::{Contact, UpEstimate};
use plumbmark::check::{Basis, End, answer};
use plumbmark::holds::{Hold, Surface};
use plumbmark::limits::Limit;
use plumbmark::parts::Check;
use plumbmark::sensor::Sensor;
use plumbmark_tests::vector::{turned, unit};
use plumbmark_tests::{Draws, certain};

const ZERO: f64 = 0.008;
const CROSS_AXIS: f64 = 0.002;
const SCALE: f64 = 0.005;
const DRAWS: usize = 20_000;
const OFF_PLUMB_DEG: [f64; 8] = [1.0, 1.5, 2.0, 3.0, 4.0, 6.0, 10.0, 20.0];
/// Which way the part leans: to its side, where the alignment acts, to its top, and between.
const LEANS_DEG: [f64; 4] = [0.0, 30.0, 60.0, 90.0];

/// What a phone from the assumed population, laid on by hand, feels where up is `up`, device frame.
fn felt(draws: &mut Draws, up: [f64; 3], contact: &Contact) -> [f64; 3] {
    let normal = contact.normal.map(f64::from);
    let (hold, align) = (f64::from(contact.hold_deg), f64::from(contact.align_deg));
    let turn = align * draws.normal();
    let by = [0, 1, 2].map(|i| (hold * draws.normal() + turn * normal[i]).to_radians());
    let up = turned(up, by);
    [0, 1, 2].map(|i| {
        let cross: f64 = (0..3).map(|j| CROSS_AXIS * draws.normal() * up[j]).sum();
        up[i] * (1.0 + SCALE * draws.normal()) + cross + ZERO * draws.normal()
    })
}

/// Share of draws inside the interval, mean U, 95th percentile of the error's size, degrees.
fn study(draws: &mut Draws, off_plumb_deg: f64, lean_deg: f64) -> (f64, f64, f64) {
    let hold = Hold::Back;
    let (hold_deg, align_deg) = Surface::RoundBody.assumed_deg();
    let contact = Contact {
        hold_deg,
        align_deg,
        normal: hold.normal(),
    };
    let (s, c) = off_plumb_deg.to_radians().sin_cos();
    let (top, side) = lean_deg.to_radians().sin_cos();
    // Body x up along the filter: device y; body y is device −x.
    let device = [-s * side, c, s * top];
    let limit = Limit::not_entered(Check::FilterUpright);
    let (mut inside, mut total_u) = (0, 0.0);
    let mut errors = Vec::with_capacity(DRAWS);
    for _ in 0..DRAWS {
        let up = UpEstimate {
            sensor: Sensor::assumed(),
            ..certain(unit(felt(draws, device, &contact)))
        };
        let from = Basis {
            up: &up,
            other_up: None,
            rotation: &hold.rotation(),
            contact: &contact,
        };
        let outcome = answer(Check::FilterUpright, &from, &limit, Some(End::Photo));
        let measured = outcome.measured.expect("off plumb is always read");
        let error = (f64::from(measured.value_deg) - off_plumb_deg).abs();
        inside += usize::from(error <= f64::from(measured.u_deg));
        total_u += f64::from(measured.u_deg);
        errors.push(error);
    }
    errors.sort_by(f64::total_cmp);
    let n = DRAWS as f64;
    (inside as f64 / n, total_u / n, errors[DRAWS * 95 / 100])
}

#[test]
fn near_plumb_the_interval_holds_the_truth() {
    let mut draws = Draws::new(31);
    // Three standard deviations of a share of 95 % in so many draws.
    let least = 0.95 - 3.0 * (0.95 * 0.05 / DRAWS as f64).sqrt();
    let mut failed = Vec::new();
    println!("off plumb, leaning: inside, mean U, 95th percentile of |error|, ratio");
    for off_deg in OFF_PLUMB_DEG {
        for lean_deg in LEANS_DEG {
            let (inside, u_deg, p95_deg) = study(&mut draws, off_deg, lean_deg);
            let ratio = u_deg / p95_deg;
            println!(
                "{off_deg:4.1}° {lean_deg:3.0}°: {:5.2} %  {u_deg:.2}°  {p95_deg:.2}°  {ratio:.2}",
                100.0 * inside
            );
            if inside < least || ratio > 2.2 {
                failed.push((off_deg, lean_deg));
            }
        }
    }
    assert!(failed.is_empty(), "{failed:?}");
}
