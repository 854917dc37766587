//! Random samples through the way of a gauge: what they were, the line that they gave, and every
//! answer to its last bit, as JSON line by line, to be compared with the page's.
//!
//! `gauge_lines CASES SEED`: the first line is the limit sets; every sixth case is of a gauge's own
//! finer steps and data sheet, the others of a phone's.

use plumbmark::check::Outcome;
use plumbmark::limits::LimitSet;
use plumbmark::line::{Speaker, write};
use plumbmark::sensor::Sensor;
use plumbmark_tests::Draws;
use plumbmark_tests::laid::{Laid, SAMPLE_US, limits};
use serde_json::{Value, json};
use std::io::Write;

/// A browser's step, m/s², which a phone has too.
const BROWSER_STEP: f64 = 0.1;
/// One thousandth of gravity, m/s².
const MG: f64 = 0.009_806_65;
/// Limit sets that cases choose from.
const SETS: usize = 40;

fn answers(outcomes: &[Outcome]) -> Value {
    let bits = |v: Option<f32>| v.map_or(Value::Null, |v| v.to_bits().into());
    let row = |o: &Outcome| {
        json!({
            "value": bits(o.measured.map(|m| m.value_deg)),
            "u": bits(o.measured.map(|m| m.u_deg)),
            "margin": bits(o.margin_deg),
            "verdict": o.verdict,
            "why": o.why,
        })
    };
    outcomes.iter().map(row).collect()
}

/// One case: what goes in, and what comes out. A set is chosen by its place.
fn case(draws: &mut Draws, at: usize, sets: &[LimitSet]) -> Value {
    let own = at % 6 == 5;
    let (step, sensor) = if own {
        (MG, Sensor::unchecked(0.0231, 0.02))
    } else {
        (BROWSER_STEP, Sensor::assumed())
    };
    let mut laid = Laid::draw(draws, step, sensor);
    let mut choose = || (draws.uniform() * SETS as f64) as usize;
    let (limits, job) = (choose(), choose());
    laid.limits = sets[limits].clone();
    let placements = laid.placements(draws);
    let p = laid.placement;
    let calibration = laid.calibration.map(|c| {
        let rows = [c.zero, c.scale, c.u_zero, c.u_scale];
        rows.concat().into_iter().map(f64::from).collect::<Vec<_>>()
    });
    let mut told = json!({
        "own": own,
        "part": p.part,
        "hold": p.hold,
        "surface": p.surface,
        "checks": p.checks,
        "ends": laid.ends,
        "calibration": calibration,
        "limits": limits,
        "job": job,
        "dt_us": SAMPLE_US,
        "samples": placements.iter().map(|s| s.concat()).collect::<Vec<_>>(),
    });
    match laid.take(&placements) {
        Err(reason) => told["refused"] = reason.name().into(),
        Ok(taken) => {
            let speaker = Speaker {
                gauge: 0x00C0_FFEE,
                count: at as u32 + 1,
                software: "0.1.0".try_into().expect("it is short"),
            };
            let mut line = String::new();
            let lines = &laid.limits.lines;
            let mut pen = |byte| line.push(char::from(byte));
            write(&speaker, &taken, lines, laid.surface_deg(), &mut pen);
            told["line"] = line.into();
            told["gauge"] = answers(&taken.outcomes(lines, laid.surface_deg()));
            let other = &sets[job];
            let surface_deg = other.surface_deg(p.surface);
            told["answers"] = answers(&taken.outcomes(&other.lines, surface_deg));
        }
    }
    told
}

fn main() -> std::io::Result<()> {
    let mut numbers = std::env::args()
        .skip(1)
        .map(|a| a.parse().expect("a number"));
    let (cases, seed) = (numbers.next().unwrap_or(100), numbers.next().unwrap_or(1));
    let mut draws = Draws::new(seed);
    // What every job begins with, and others.
    let mut sets = vec![LimitSet::trade_usage()];
    sets.extend((1..SETS).map(|_| limits(&mut draws)));
    let mut to = std::io::BufWriter::new(std::io::stdout().lock());
    writeln!(to, "{}", json!(sets))?;
    for at in 0..cases {
        writeln!(to, "{}", case(&mut draws, at as usize, &sets))?;
    }
    to.flush()
}
