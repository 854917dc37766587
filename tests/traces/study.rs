//! Many traces: read, freed of their mount where asked, run, judged. A trace with a fault does not
//! keep the others from being judged.

use super::fault::{Fault, Kind};
use super::judged::{Judged, Row};
use super::mount::{Mount, mount};
use super::poses::{Spot, spots};
use super::read::Trace;
use super::run::{How, Run, force, run};
use crate::Draws;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

/// Where the draws of turned frames start, for each file anew.
const SEED: u64 = 4;
/// Largest turn of a frame, radians.
const TURN: f64 = 1.5;

/// What the study does with each trace.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Options {
    /// Removes one mount rotation a session.
    pub remove_mount: bool,
    /// Rounds as browsers do.
    pub round: bool,
    /// Runs so many times in turned frames instead of once as recorded; 0: as recorded.
    pub turns: usize,
}

/// What the study found.
#[derive(Debug, Clone, Default)]
pub struct Report {
    /// Poses, files, sessions, all.
    pub rows: Vec<Row>,
    /// The mount rotation removed from each session.
    pub mounts: BTreeMap<String, Mount>,
    /// What was wrong, by file.
    pub faults: Vec<Fault>,
}

/// Runs one trace, or every `.csv` of a folder in the order of their names.
#[must_use]
pub fn study(path: &Path, options: &Options) -> Report {
    let mut report = Report::default();
    let mut traces = Vec::new();
    for opened in opened(path) {
        match opened.and_then(|trace| fit(trace, options)) {
            Ok(trace) => traces.push((spots(&trace), trace)),
            Err(fault) => report.faults.push(fault),
        }
    }
    if options.remove_mount {
        report.find_mounts(&mut traces);
    }
    let mut judged = Vec::new();
    for (spots, trace) in &traces {
        let removed = report
            .mounts
            .get(&trace.session)
            .map_or([0.0; 3], |m| m.turn);
        match judge(trace, spots, options, removed) {
            Ok(file) => judged.push(file),
            Err(fault) => report.faults.push(fault),
        }
    }
    report.add_rows(&judged);
    report
}

fn opened(path: &Path) -> Vec<Result<Trace, Fault>> {
    if !path.is_dir() {
        return vec![Trace::open(path)];
    }
    let shown = path.display().to_string();
    let entries = match std::fs::read_dir(path) {
        Ok(entries) => entries,
        Err(e) => return vec![Err(Fault::of_file(&shown, Kind::Unreadable, e.to_string()))],
    };
    let mut files: Vec<_> = entries
        .filter_map(|e| e.ok().map(|e| e.path()))
        .filter(|p| p.extension().is_some_and(|e| e == "csv"))
        .collect();
    files.sort();
    if files.is_empty() {
        return vec![Err(Fault::of_file(
            &shown,
            Kind::Empty,
            "no .csv file in this folder",
        ))];
    }
    files.iter().map(|p| Trace::open(p)).collect()
}

fn fit(trace: Trace, options: &Options) -> Result<Trace, Fault> {
    if trace.rounded && options.turns > 0 {
        let text = "a browser rounded these values in their own frame; run it without --turns";
        return Err(Fault::of_file(&trace.file, Kind::RoundedTwice, text));
    }
    Ok(trace)
}

fn judge(
    trace: &Trace,
    spots: &[Spot],
    options: &Options,
    mount: [f64; 3],
) -> Result<Judged, Fault> {
    let as_recorded = How {
        turn: [0.0; 3],
        round: options.round,
        mount,
    };
    let mut draws = Draws::new(SEED);
    let turned = (0..options.turns).map(|_| {
        let direction = draws.direction();
        let angle = TURN * draws.uniform();
        How {
            turn: direction.map(|v| v * angle),
            ..as_recorded
        }
    });
    let hows: Vec<_> = if options.turns == 0 {
        vec![as_recorded]
    } else {
        turned.collect()
    };
    let runs: Vec<_> = hows.iter().map(|how| run(trace, spots, how)).collect();
    let resting = spots.iter().filter(|s| s.moving_ms == 0.0);
    let mut by_pose: BTreeMap<_, Vec<_>> = resting
        .filter(|s| s.pose.is_some())
        .map(|s| (s.pose, Vec::new()))
        .collect();
    let mut moving = Vec::new();
    for reading in runs.iter().flat_map(|r| &r.readings) {
        if reading.moving_ms == 0.0 {
            by_pose.entry(reading.pose).or_default().push(*reading);
        } else {
            moving.push(*reading);
        }
    }
    let seen = by_pose.values().flatten().any(|r| r.error_deg.is_some());
    if !seen {
        return Err(no_reading(trace, &runs));
    }
    Ok(Judged {
        session: trace.session.clone(),
        file: trace.file.clone(),
        by_pose,
        moving: trace.samples[0].moving.is_some().then_some(moving),
    })
}

/// A trace that proves nothing is a fault, with the reason that core gave most often.
fn no_reading(trace: &Trace, runs: &[Run]) -> Fault {
    let mut reasons = BTreeMap::new();
    for (reason, n) in runs.iter().flat_map(|r| &r.refused) {
        *reasons.entry(*reason).or_insert(0) += n;
    }
    let most = reasons.iter().max_by_key(|(_, n)| **n);
    let (reason, n) = most.map_or(("none", 0), |(r, n)| (*r, *n));
    let total: usize = reasons.values().sum();
    let text = format!(
        "no reading at rest with a reference; core refused most often for {reason} ({n} of {total}); check unit, sign and times"
    );
    Fault::of_file(&trace.file, Kind::NoReading, text)
}

impl Report {
    /// Finds one rotation a session; traces of a session without one are dropped with a fault.
    fn find_mounts(&mut self, traces: &mut Vec<(Vec<Spot>, Trace)>) {
        let sessions: BTreeSet<_> = traces.iter().map(|(_, t)| t.session.clone()).collect();
        for session in sessions {
            let files = traces.iter().filter(|(_, t)| t.session == session);
            let pairs: Vec<_> = files
                .flat_map(|(spots, t)| {
                    let resting = spots.iter().zip(&t.samples).filter(|(spot, _)| spot.rest);
                    resting.filter_map(|(_, s)| Some((s.up?, force(s, t.sign))))
                })
                .collect();
            match mount(&session, &pairs) {
                Ok(found) => drop(self.mounts.insert(session, found)),
                Err(fault) => {
                    traces.retain(|(_, t)| t.session != session);
                    self.faults.push(fault);
                }
            }
        }
    }

    fn add_rows(&mut self, files: &[Judged]) {
        for file in files {
            self.rows.extend(file.pose_rows());
            self.rows.push(file.file_row());
        }
        let sessions: BTreeSet<_> = files.iter().map(|f| &f.session).collect();
        for session in sessions {
            let of_session: Vec<_> = files.iter().filter(|f| f.session == *session).collect();
            self.rows.push(Row {
                session: session.clone(),
                ..Judged::pooled("session", &of_session)
            });
        }
        if !files.is_empty() {
            self.rows
                .push(Judged::pooled("all", &files.iter().collect::<Vec<_>>()));
        }
    }
}
