//! One trace file, read. `FORMAT.md` says what each key and column means.

use super::cells::{Cells, FORCE, columns};
use super::fault::{Fault, Kind};
use std::path::Path;

/// Standard acceleration, m/s² (CGPM 1901).
const G_M_S2: f64 = 9.80665;
/// Step of a browser's rounding, m/s² (W3C *Device Orientation and Motion*).
const STEP_M_S2: f64 = 0.1;
/// Distance from a step that a file's own decimals may leave, m/s².
const WITHIN_M_S2: f64 = 1e-3;

/// One row: a motion event, and what was known at that time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sample {
    /// Time, ms.
    pub t_ms: f64,
    /// Acceleration including gravity as the browser gives it, with its sign, m/s².
    pub motion_m_s2: [f64; 3],
    /// β and γ, degrees, where an orientation event came with this row.
    pub angles_deg: Option<[f64; 2]>,
    /// The reference: earth-up in the device frame, unit length.
    pub up: Option<[f64; 3]>,
    /// Whether it is being moved; `None` without such a column.
    pub moving: Option<bool>,
    /// The pose's label; `None` where it has none.
    pub pose: Option<i64>,
}

/// A trace.
#[derive(Debug, Clone, PartialEq)]
pub struct Trace {
    /// The file's name without its folder.
    pub file: String,
    /// What shares one mount rotation: the key, or else the file's name.
    pub session: String,
    /// The device, in the recorder's words.
    pub device: String,
    /// Sign of the browser's gravity.
    pub sign: i8,
    /// Whether the values have gone through a browser's rounding.
    pub rounded: bool,
    /// Whether the file has labels for poses.
    pub has_poses: bool,
    /// The rows.
    pub samples: Vec<Sample>,
}

impl Trace {
    /// Reads a file.
    ///
    /// # Errors
    /// The first [`Fault`] that it has.
    pub fn open(path: &Path) -> Result<Self, Fault> {
        let name = path.file_name().unwrap_or(path.as_os_str());
        let file = name.to_string_lossy();
        let text = std::fs::read_to_string(path).map_err(|e| {
            Fault::of_file(
                &file,
                Kind::Unreadable,
                format!("{e}; UTF-8 text is asked for"),
            )
        })?;
        Self::parse(&file, &text)
    }

    /// Reads a file's text.
    ///
    /// # Errors
    /// The first [`Fault`] that it has.
    pub fn parse(file: &str, text: &str) -> Result<Self, Fault> {
        let mut trace = Self {
            file: file.to_owned(),
            session: file.to_owned(),
            device: String::new(),
            sign: 1,
            rounded: false,
            has_poses: false,
            samples: Vec::new(),
        };
        let mut per_m_s2 = 1000.0;
        let mut names: Option<Vec<&str>> = None;
        let text = text.trim_start_matches('\u{feff}');
        for (i, line) in text.lines().enumerate() {
            let placed = |fault: Fault| fault.at_line(i + 1);
            let line = line.trim();
            if let Some(comment) = line.strip_prefix('#') {
                trace
                    .take_key(comment, names.is_some(), &mut per_m_s2)
                    .map_err(placed)?;
            } else if line.is_empty() {
            } else if let Some(names) = &names {
                let row = Cells::new(file, names, line).map_err(placed)?;
                let sample = row.sample(per_m_s2).map_err(placed)?;
                trace.push(sample).map_err(placed)?;
            } else {
                names = Some(columns(file, line).map_err(placed)?);
            }
        }
        trace.has_poses = names.is_some_and(|n| n.contains(&"pose"));
        trace.checked()
    }

    /// A comment that is one word, a colon and a value is a key.
    fn take_key(&mut self, comment: &str, late: bool, per_m_s2: &mut f64) -> Result<(), Fault> {
        let Some((key, value)) = comment.split_once(':').map(|(k, v)| (k.trim(), v.trim())) else {
            return Ok(());
        };
        if key.is_empty() || !key.bytes().all(|b| b.is_ascii_lowercase()) {
            return Ok(());
        }
        let fault = |kind, text: &str| Err(Fault::of_file(&self.file, kind, text).in_column(key));
        if late {
            return fault(Kind::BadKey, "keys stand above the line of names");
        }
        match (key, value) {
            ("unit", "mm/s2") => *per_m_s2 = 1000.0,
            ("unit", "m/s2") => *per_m_s2 = 1.0,
            ("unit", "g") => *per_m_s2 = 1.0 / G_M_S2,
            ("unit", _) => return fault(Kind::BadKey, "write mm/s2, m/s2 or g"),
            ("sign", "1" | "+1") => self.sign = 1,
            ("sign", "-1") => self.sign = -1,
            ("sign", _) => return fault(Kind::BadKey, "write 1 or -1"),
            ("rounding", "none") => self.rounded = false,
            ("rounding", "browser") => self.rounded = true,
            ("rounding", _) => return fault(Kind::BadKey, "write none or browser"),
            ("session", "") => return fault(Kind::BadKey, "write a name"),
            ("session", name) => name.clone_into(&mut self.session),
            ("device", words) => words.clone_into(&mut self.device),
            ("note", _) => {}
            _ => {
                let text = "known are unit, sign, rounding, device, session, note";
                return fault(Kind::UnknownKey, text);
            }
        }
        Ok(())
    }

    fn push(&mut self, sample: Sample) -> Result<(), Fault> {
        let before = self.samples.last().map(|s| s.t_ms);
        if before.is_some_and(|t| sample.t_ms < t) {
            let text = format!(
                "{} ms after {} ms; sort the rows",
                sample.t_ms,
                before.unwrap_or(0.0)
            );
            return Err(Fault::of_file(&self.file, Kind::TimeBackward, text).in_column("t_ms"));
        }
        if self.rounded {
            for (v, name) in sample.motion_m_s2.iter().zip(FORCE) {
                if (v / STEP_M_S2 - (v / STEP_M_S2).round()).abs() * STEP_M_S2 > WITHIN_M_S2 {
                    let text = format!(
                        "{v} m/s2 is no multiple of 0.1 m/s2; write rounding: none, or check the unit"
                    );
                    return Err(Fault::of_file(&self.file, Kind::NotRounded, text).in_column(name));
                }
            }
        }
        self.samples.push(sample);
        Ok(())
    }

    fn checked(self) -> Result<Self, Fault> {
        if self.samples.is_empty() {
            let text = "no row of numbers; a line of names and rows below it are asked for";
            return Err(Fault::of_file(&self.file, Kind::Empty, text));
        }
        if self.samples.iter().all(|s| s.up.is_none()) {
            let text =
                "ux, uy, uz are nowhere filled in; without a reference nothing can be judged";
            return Err(Fault::of_file(&self.file, Kind::NoReference, text));
        }
        Ok(self)
    }
}
