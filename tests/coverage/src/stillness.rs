//! Which phones core takes for still: still ones refused, moving ones missed.

use crate::case::{Case, Channel, Placing};
use crate::measure::{feed, live, up_and_normal};
use crate::share::percent;
use plumbmark::check::Outcome;
use plumbmark::holds::Hold;
use plumbmark::parts::Check;
use plumbmark::reason::NoReading;
use plumbmark_simulator::vector::elevation_deg;
use plumbmark_simulator::{Draws, Phone, Population, Scene};

/// Phones in a row of the table.
pub const PHONES: u64 = 4_000;
/// Events before the reading: the window alone, as in the study behind the design.
const EVENTS: usize = 72;

/// Columns of the table.
pub const COLUMNS: &str = "movement,orientation,sigma_steps,phones,read_pct,tremor_pct,moving_pct,\
drifting_pct,disagree_pct,other_pct,coverage_of_read_pct,p95_error_of_read_deg";

/// One kind of movement, and whether the fused orientation is there to object.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Movement {
    name: &'static str,
    oriented: bool,
    sigma_steps: f64,
    tremor_m_s2: f64,
    wander_deg: f64,
    knock_deg: f64,
    rounded: bool,
}

/// Every row of the table.
#[must_use]
pub fn all() -> Vec<Movement> {
    let kinds = [
        ("none", 0.0, 0.0, 0.0),
        ("tremor 0.05 m/s2", 0.05, 0.0, 0.0),
        ("tremor 0.1 m/s2", 0.1, 0.0, 0.0),
        ("tremor 0.3 m/s2", 0.3, 0.0, 0.0),
        ("wander 0.1", 0.0, 0.1, 0.0),
        ("wander 0.3", 0.0, 0.3, 0.0),
        ("wander 1", 0.0, 1.0, 0.0),
        ("knock 0.3", 0.0, 0.0, 0.3),
        ("knock 1", 0.0, 0.0, 1.0),
    ];
    let mut all = Vec::new();
    for (name, tremor_m_s2, wander_deg, knock_deg) in kinds {
        for oriented in [false, true] {
            for sigma_steps in [0.02, 0.1, 0.2, 0.3, 0.5] {
                all.push(Movement {
                    name,
                    oriented,
                    sigma_steps,
                    tremor_m_s2,
                    wander_deg,
                    knock_deg,
                    rounded: true,
                });
            }
        }
    }
    for sigma_steps in [0.02, 0.1, 0.2, 0.3, 0.5] {
        all.push(Movement {
            name: "none and not rounded",
            oriented: false,
            sigma_steps,
            tremor_m_s2: 0.0,
            wander_deg: 0.0,
            knock_deg: 0.0,
            rounded: false,
        });
    }
    all
}

/// One row: what core said to phones that move so.
#[must_use]
pub fn line(movement: &Movement) -> String {
    let case = Case::nominal(
        Placing::First,
        Channel::Acceleration,
        movement.sigma_steps,
        0.1,
    );
    let mut refused = [0; 5];
    let mut errors = Vec::new();
    let mut inside = 0;
    for i in 0..PHONES {
        match one(&case, movement, i) {
            Ok((error, u)) => {
                inside += usize::from(error <= u);
                errors.push(error);
            }
            Err(NoReading::Tremor) => refused[0] += 1,
            Err(NoReading::Moving) => refused[1] += 1,
            Err(NoReading::Drifting) => refused[2] += 1,
            Err(NoReading::ChannelsDisagree) => refused[3] += 1,
            Err(_) => refused[4] += 1,
        }
    }
    errors.sort_by(f64::total_cmp);
    let p95 = errors.get(errors.len() * 95 / 100);
    let shares = refused.map(|r| format!("{:.2}", percent(r, PHONES as usize)));
    format!(
        "{},{},{},{PHONES},{:.2},{},{:.2},{:.3}",
        movement.name,
        if movement.oriented { "yes" } else { "no" },
        movement.sigma_steps,
        percent(errors.len(), PHONES as usize),
        shares.join(","),
        percent(inside, errors.len()),
        p95.map_or(f64::NAN, |e| *e)
    )
}

fn one(case: &Case, movement: &Movement, index: u64) -> Result<(f64, f64), NoReading> {
    let mut draws = Draws::new(case.seed() ^ 1, index);
    let phone = Phone::draw(&Population::NOMINAL, movement.sigma_steps, &mut draws);
    let elevation = case.elevation.draw(&mut draws);
    let (up, normal) = up_and_normal(Hold::Back, elevation, draws.between(-5.0, 5.0));
    let scene = Scene {
        tilt_deg: case.hold_deg,
        tremor_m_s2: movement.tremor_m_s2,
        wander_deg: movement.wander_deg,
        knock_deg: movement.knock_deg,
        events: EVENTS,
        jitter_ms: 1.0,
        rounded: movement.rounded,
        oriented: movement.oriented,
        ..Scene::at_rest(up, normal)
    };
    let mut live = live(case, Hold::Back);
    let events = phone.rest(&scene, &mut draws);
    let channel = if movement.oriented {
        Channel::Both
    } else {
        Channel::Acceleration
    };
    feed(&mut live, channel, &events);
    let reading = live.tick(events[EVENTS - 1].t_ms)?;
    let outlet = |o: &&Outcome| o.check == Check::HeaterOutlet;
    let measured = reading
        .outcomes
        .iter()
        .find(outlet)
        .and_then(|o| o.measured);
    let measured = measured.expect("the outlet's elevation can always be read");
    let truth = elevation_deg([0.0, 1.0, 0.0], scene.up);
    Ok((
        (f64::from(measured.value_deg) - truth).abs(),
        f64::from(measured.u_deg),
    ))
}
