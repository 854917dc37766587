//! The result as aligned columns, or as CSV.

use super::judged::Row;

const NAMES: [&str; 18] = [
    "level",
    "session",
    "file",
    "pose",
    "readings",
    "no_reference",
    "coverage_percent",
    "rms_deg",
    "largest_deg",
    "mean_u_deg",
    "u_over_p95",
    "poses",
    "poses_inside",
    "poses_silent",
    "moving",
    "moving_wrong",
    "moving_no_reference",
    "moving_late",
];

fn cells(row: &Row) -> [String; NAMES.len()] {
    let s = &row.summary;
    let number = |v: f64, decimals| {
        if v.is_finite() {
            format!("{v:.decimals$}")
        } else {
            String::new()
        }
    };
    let whole = row.level != "pose";
    let count = |n: usize| if whole { n.to_string() } else { String::new() };
    let moved = |n: fn(&super::Moving) -> usize| {
        row.moving
            .as_ref()
            .map_or_else(String::new, |m| n(m).to_string())
    };
    [
        row.level.to_owned(),
        row.session.clone(),
        row.file.clone(),
        row.pose.clone(),
        s.readings.to_string(),
        s.no_reference.to_string(),
        number(s.coverage_percent(), 2),
        number(s.rms_deg, 3),
        number(s.largest_deg, 3),
        number(s.mean_u_deg, 3),
        number(s.u_over_p95(), 2),
        count(row.poses),
        count(row.poses_inside),
        count(row.poses_silent),
        moved(|m| m.readings),
        moved(|m| m.wrong),
        moved(|m| m.no_reference),
        moved(|m| m.late),
    ]
}

/// The rows as CSV (RFC 4180), the names first.
#[must_use]
pub fn csv(rows: &[Row]) -> String {
    let quoted = |cell: String| {
        if cell.contains([',', '"', '\n']) {
            format!("\"{}\"", cell.replace('"', "\"\""))
        } else {
            cell
        }
    };
    let mut out = NAMES.join(",") + "\n";
    for row in rows {
        out += &(cells(row).map(quoted).join(",") + "\n");
    }
    out
}

/// Heads of the columns for the eye: the name, then `pose` and what follows it.
const HEADS: [&str; NAMES.len() - 2] = [
    "file",
    "pose",
    "readings",
    "no ref",
    "inside %",
    "rms °",
    "largest °",
    "mean U °",
    "U/P95",
    "poses",
    "inside",
    "silent",
    "moving",
    "wrong",
    "no ref",
    "late",
];

/// The rows as columns for the eye: files with their poses, then sessions, then all.
#[must_use]
pub fn aligned(rows: &[Row]) -> String {
    let mut lines = vec![HEADS.map(str::to_owned).to_vec()];
    for row in rows {
        let [level, session, file, cells @ ..] = cells(row);
        let name = match row.level {
            "session" => format!("session {session}"),
            "all" => level,
            _ => file,
        };
        lines.push([name].into_iter().chain(cells).collect());
    }
    let width = |i: usize| {
        lines
            .iter()
            .map(|l| l[i].chars().count())
            .max()
            .unwrap_or(0)
    };
    let widths: Vec<_> = (0..HEADS.len()).map(width).collect();
    let mut out = String::new();
    for line in &lines {
        let mut text = format!("{:<1$}", line[0], widths[0]);
        for (cell, width) in line.iter().zip(&widths).skip(1) {
            text += &format!("  {cell:>width$}");
        }
        out += text.trim_end();
        out.push('\n');
    }
    out
}
