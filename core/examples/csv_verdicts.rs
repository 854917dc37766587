//! Reads a recording of an accelerometer that lies along a metering pump, and says each second
//! what the check of its outlet gives.
//!
//! ```text
//! cargo run -p plumbmark --example csv_verdicts -- core/examples/pump.csv
//! ```
//!
//! Without a path the recording comes from standard input. It has a line of names,
//! `t_ms,ax,ay,az`, then rows: milliseconds, and m/s² along the sensor's axes, upwards at rest, as
//! a phone has them (x right, y to the top edge, z out of the screen). A cell is left empty where
//! the sensor gave nothing; a line that starts with `#` is passed over.

use plumbmark::advice::AdviceKind;
use plumbmark::check::{End, Outcome};
use plumbmark::decision::Verdict;
use plumbmark::holds::{Hold, Surface};
use plumbmark::limits::{Basis, Limit, LimitSet};
use plumbmark::live::Live;
use plumbmark::parts::{Check, Part};
use std::error::Error;
use std::fs::File;
use std::io::{self, BufRead, BufReader, Write};
use std::process::ExitCode;

/// The names of the columns, in order.
const COLUMNS: &str = "t_ms,ax,ay,az";
/// Time between two answers, ms.
const EVERY_MS: f64 = 1000.0;

/// The limit that the heater's manual gives. Invented, like the manual.
fn limits() -> Result<LimitSet, Box<dyn Error>> {
    let mut outlet = Limit {
        low_deg: Some(18.5),
        basis: Basis::Manual,
        ..Limit::not_entered(Check::PumpOutlet)
    };
    outlet.set_source("invented manual, page 12")?;
    let mut limits = LimitSet::empty();
    limits.add_line(outlet)?;
    Ok(limits)
}

/// A sensor along a pump's round body, ready for its first sample.
fn pump() -> Result<Live, Box<dyn Error>> {
    let mut live = Live::new();
    live.set_limits(limits()?)?;
    live.set_sign(1);
    live.select(Part::Pump, Hold::LongEdge, Surface::RoundBody)?;
    // A sensor laid on the wrong way round reads the same slope with the wrong end up. Here
    // somebody has looked: the outlet stood higher throughout.
    live.tell_end(Check::PumpOutlet, Some(End::Tail));
    Ok(live)
}

/// Reads a recording, and writes a line for each second of it.
///
/// # Errors
/// The first line that can't be read, with its number and what to do; what reading and writing
/// fail with.
pub fn verdicts(recording: impl BufRead, out: &mut impl Write) -> Result<(), Box<dyn Error>> {
    let mut live = pump()?;
    for limit in &live.limits().lines {
        writeln!(out, "{}", by_whose_word(limit))?;
    }
    let mut named = false;
    let mut next_ms = None;
    for (number, line) in (1..).zip(recording.lines()) {
        let line = line?;
        let line = line.trim();
        if line.is_empty() || line.starts_with('#') {
            continue;
        }
        if !named {
            named = line == COLUMNS;
            if named {
                continue;
            }
            return Err(
                format!("line {number}: the names are missing; begin with {COLUMNS}").into(),
            );
        }
        let (t_ms, values) = sample(line).map_err(|what| format!("line {number}: {what}"))?;
        live.motion(t_ms, values);
        let due_ms = *next_ms.get_or_insert(t_ms + EVERY_MS);
        if t_ms >= due_ms {
            next_ms = Some(due_ms + EVERY_MS);
            answer(&mut live, t_ms, out)?;
        }
    }
    if next_ms.is_none() {
        return Err("there are no samples; after the names, write one line for each".into());
    }
    Ok(())
}

/// A limit and where it comes from, above the answers by it.
fn by_whose_word(limit: &Limit) -> String {
    let low = limit.low_deg.map(|low_deg| format!("{low_deg}° or more"));
    let high = limit
        .high_deg
        .map(|high_deg| format!("{high_deg}° or less"));
    let permitted: Vec<String> = [low, high].into_iter().flatten().collect();
    let (check, source) = (limit.check.name(), &limit.source);
    format!("{check}: {} ({source})", permitted.join(", "))
}

/// One row: time, ms, and the values, m/s².
fn sample(line: &str) -> Result<(f64, [Option<f64>; 3]), String> {
    let cells: Vec<&str> = line.split(',').map(str::trim).collect();
    let &[t, x, y, z] = cells.as_slice() else {
        return Err(format!("{} cells; write {COLUMNS}", cells.len()));
    };
    let t_ms = number(t)?.ok_or("no time; write it in milliseconds")?;
    Ok((t_ms, [number(x)?, number(y)?, number(z)?]))
}

/// A cell; `None` where it is empty.
fn number(cell: &str) -> Result<Option<f64>, String> {
    if cell.is_empty() {
        return Ok(None);
    }
    let read = cell.parse().map(Some);
    read.map_err(|_| {
        format!("`{cell}` is no number; write it with a decimal point, without a unit")
    })
}

/// What the last second says.
fn answer(live: &mut Live, now_ms: f64, out: &mut impl Write) -> io::Result<()> {
    let second = now_ms / 1000.0;
    match live.tick(now_ms) {
        Ok(reading) => reading
            .outcomes
            .iter()
            .try_for_each(|outcome| writeln!(out, "{second:7.2} s  {}", told(outcome))),
        Err(reason) => writeln!(out, "{second:7.2} s  no reading: {reason}"),
    }
}

/// A check in words.
fn told(outcome: &Outcome) -> String {
    let verdict = match outcome.verdict {
        Verdict::Within => "within",
        Verdict::Beyond => "beyond",
        Verdict::NotProven => "not proven",
        Verdict::None => "no verdict",
    };
    let name = outcome.check.name();
    let Some(measured) = outcome.measured else {
        return format!("{name}: {verdict}");
    };
    let (value_deg, u_deg) = (measured.value_deg, measured.u_deg);
    let mut told = format!("{name}: {verdict}, {value_deg:.1}° ± {u_deg:.1}°");
    let advice = outcome.advice;
    if let (AdviceKind::Move, Some(turn_deg)) = (advice.kind, advice.turn_deg) {
        told += &format!("; turned by {turn_deg:+.1}°, a reading again would prove it");
    }
    told
}

fn run() -> Result<(), Box<dyn Error>> {
    let mut out = io::stdout().lock();
    match std::env::args_os().nth(1) {
        None => verdicts(io::stdin().lock(), &mut out),
        Some(path) => {
            let shown = path.to_string_lossy();
            let file = File::open(&path).map_err(|e| format!("{shown}: {e}"))?;
            verdicts(BufReader::new(file), &mut out).map_err(|e| format!("{shown}: {e}").into())
        }
    }
}

fn main() -> ExitCode {
    match run() {
        Ok(()) => ExitCode::SUCCESS,
        Err(fault) => {
            eprintln!("{fault}");
            ExitCode::FAILURE
        }
    }
}
