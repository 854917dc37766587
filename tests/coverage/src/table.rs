//! The committed tables: one line with the hash of what they were made from, names, rows.

use crate::inputs::folder;
use std::fs;
use std::io;

/// A table as it lies in `tests/coverage`.
pub struct Table {
    /// Hash of what it was made from.
    pub inputs: String,
    names: Vec<String>,
    /// Its rows, as written.
    pub lines: Vec<String>,
}

const HEAD: &str = "# inputs sha256 ";

/// Writes a table with the hash of what it was made from.
///
/// # Errors
/// Where the file can't be written.
pub fn write(file: &str, inputs: &str, columns: &str, lines: &[String]) -> io::Result<()> {
    let text = format!("{HEAD}{inputs}\n{columns}\n{}\n", lines.join("\n"));
    fs::write(folder().join(file), text)
}

impl Table {
    /// Opens a table.
    ///
    /// # Panics
    /// Where it is missing or has no head.
    #[must_use]
    pub fn open(file: &str) -> Self {
        let text =
            fs::read_to_string(folder().join(file)).unwrap_or_else(|e| panic!("{file}: {e}"));
        let mut lines = text.lines();
        let inputs = lines.next().and_then(|l| l.strip_prefix(HEAD));
        let names = lines
            .next()
            .map(|l| l.split(',').map(str::to_owned).collect());
        Self {
            inputs: inputs
                .unwrap_or_else(|| panic!("{file} has no hash"))
                .to_owned(),
            names: names.unwrap_or_else(|| panic!("{file} has no names")),
            lines: lines.map(str::to_owned).collect(),
        }
    }

    /// A cell of a row, as written.
    ///
    /// # Panics
    /// Where the table has no such column.
    #[must_use]
    pub fn text<'a>(&self, line: &'a str, name: &str) -> &'a str {
        let at = self.names.iter().position(|n| n == name);
        let at = at.unwrap_or_else(|| panic!("no column {name}"));
        line.split(',')
            .nth(at)
            .unwrap_or_else(|| panic!("no {name} in {line}"))
    }

    /// A cell's number.
    ///
    /// # Panics
    /// Where it is none.
    #[must_use]
    pub fn number(&self, line: &str, name: &str) -> f64 {
        let text = self.text(line, name);
        text.parse().unwrap_or_else(|_| panic!("{name}: {text}"))
    }
}
