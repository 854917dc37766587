//! The line of names and one row of a trace file, with a named fault for whatever is wrong in it.

use super::fault::{Fault, Kind};
use super::read::Sample;
use crate::vector::{dot, unit};

/// Columns of the acceleration.
pub(super) const FORCE: [&str; 3] = ["ax", "ay", "az"];
const KNOWN: [&str; 11] = [
    "t_ms",
    "ax",
    "ay",
    "az",
    "beta_deg",
    "gamma_deg",
    "ux",
    "uy",
    "uz",
    "moving",
    "pose",
];

/// The line of names.
pub(super) fn columns<'a>(file: &str, line: &'a str) -> Result<Vec<&'a str>, Fault> {
    let names: Vec<_> = line.split(',').map(str::trim).collect();
    for name in ["t_ms", "ax", "ay", "az"] {
        if !names.contains(&name) {
            let text = "the line of names has no such column; names are parted by commas";
            return Err(Fault::of_file(file, Kind::MissingColumn, text).in_column(name));
        }
    }
    for (i, name) in names.iter().enumerate() {
        if !KNOWN.contains(name) || names[..i].contains(name) {
            let text = format!("unknown or twice; known are {}", KNOWN.join(", "));
            return Err(Fault::of_file(file, Kind::BadColumn, text).in_column(name));
        }
    }
    Ok(names)
}

/// One row's cells by name.
pub(super) struct Cells<'a> {
    file: &'a str,
    names: &'a [&'a str],
    cells: Vec<&'a str>,
}

impl<'a> Cells<'a> {
    pub(super) fn new(file: &'a str, names: &'a [&'a str], line: &'a str) -> Result<Self, Fault> {
        let cells: Vec<_> = line.split(',').map(str::trim).collect();
        if cells.len() != names.len() {
            let text = format!(
                "{} cells under {} names; an empty cell keeps its comma",
                cells.len(),
                names.len()
            );
            return Err(Fault::of_file(file, Kind::Cells, text));
        }
        Ok(Self { file, names, cells })
    }

    fn text(&self, name: &str) -> &'a str {
        let at = self.names.iter().position(|n| *n == name);
        at.map_or("", |at| self.cells[at])
    }

    fn fault(&self, kind: Kind, name: &str, text: &str) -> Fault {
        let text = format!("\"{}\": {text}", self.text(name));
        Fault::of_file(self.file, kind, text).in_column(name)
    }

    fn number(&self, name: &str) -> Result<f64, Fault> {
        let value = self.text(name).parse().ok().filter(|v: &f64| v.is_finite());
        value.ok_or_else(|| {
            self.fault(
                Kind::BadNumber,
                name,
                "no number; write digits with a decimal point",
            )
        })
    }

    /// Numbers that come together or not at all.
    fn group<const N: usize>(&self, names: [&str; N]) -> Result<Option<[f64; N]>, Fault> {
        if names.iter().all(|n| self.text(n).is_empty()) {
            return Ok(None);
        }
        let mut values = [0.0; N];
        for (value, name) in values.iter_mut().zip(names) {
            if self.text(name).is_empty() {
                let text = format!("fill all of {} or none", names.join(", "));
                return Err(self.fault(Kind::Incomplete, name, &text));
            }
            *value = self.number(name)?;
        }
        Ok(Some(values))
    }

    /// The row as a sample, `per_m_s2` of the file's units being 1 m/s².
    pub(super) fn sample(&self, per_m_s2: f64) -> Result<Sample, Fault> {
        let mut motion_m_s2 = [0.0; 3];
        for (value, name) in motion_m_s2.iter_mut().zip(FORCE) {
            *value = self.number(name)? / per_m_s2;
        }
        let up = self.group(["ux", "uy", "uz"])?;
        if up.is_some_and(|u| dot(u, u) == 0.0) {
            return Err(self.fault(
                Kind::BadNumber,
                "ux",
                "a reference of length zero; leave it empty",
            ));
        }
        let moving = match (self.names.contains(&"moving"), self.text("moving")) {
            (false, _) => None,
            (true, "0") => Some(false),
            (true, "1") => Some(true),
            _ => return Err(self.fault(Kind::BadNumber, "moving", "write 0 or 1")),
        };
        let pose = match self.text("pose") {
            "" => None,
            label => Some(label.parse().map_err(|_| {
                self.fault(
                    Kind::BadNumber,
                    "pose",
                    "write a whole number, or leave it empty",
                )
            })?),
        };
        Ok(Sample {
            t_ms: self.number("t_ms")?,
            motion_m_s2,
            angles_deg: self.group(["beta_deg", "gamma_deg"])?,
            up: up.map(unit),
            moving,
            pose,
        })
    }
}
