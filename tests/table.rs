//! Reads the tables of `tests/reference`: comments with '#', one line of names, then rows. A test
//! says how many rows it expects, so that none is dropped in silence.

use std::path::Path;

/// A table of numbers by name; an empty cell is NaN.
pub struct Table {
    names: Vec<String>,
    rows: Vec<Vec<String>>,
}

/// One row of a [`Table`].
#[derive(Clone, Copy)]
pub struct Row<'a> {
    names: &'a [String],
    cells: &'a [String],
}

impl Table {
    /// Opens `tests/reference/<file>` and checks the number of its rows.
    ///
    /// # Panics
    /// Where the file can't be read or has another number of rows.
    #[must_use]
    pub fn open(file: &str, rows: usize) -> Self {
        let path = Path::new(env!("CARGO_MANIFEST_DIR"))
            .join("reference")
            .join(file);
        let text = std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{file}: {e}"));
        let mut lines = text
            .lines()
            .filter(|l| !l.starts_with('#') && !l.is_empty());
        let split = |l: &str| l.split(',').map(str::to_owned).collect::<Vec<_>>();
        let names = split(lines.next().unwrap_or_else(|| panic!("{file} is empty")));
        let table = Self {
            names,
            rows: lines.map(split).collect(),
        };
        assert_eq!(table.rows.len(), rows, "rows of {file}");
        table
    }

    /// The rows.
    pub fn rows(&self) -> impl Iterator<Item = Row<'_>> {
        self.rows.iter().map(|cells| Row {
            names: &self.names,
            cells,
        })
    }
}

impl Row<'_> {
    /// A cell's text.
    ///
    /// # Panics
    /// Where the table has no such column.
    #[must_use]
    pub fn text(&self, name: &str) -> &str {
        let at = self.names.iter().position(|n| n == name);
        &self.cells[at.unwrap_or_else(|| panic!("no column {name}"))]
    }

    /// A cell's number; NaN where it is empty.
    ///
    /// # Panics
    /// Where it is neither.
    #[must_use]
    pub fn get(&self, name: &str) -> f64 {
        let text = self.text(name);
        if text.is_empty() {
            return f64::NAN;
        }
        text.parse().unwrap_or_else(|_| panic!("{name}: {text}"))
    }

    /// Three cells as a vector.
    #[must_use]
    pub fn vector(&self, names: [&str; 3]) -> [f64; 3] {
        names.map(|n| self.get(n))
    }
}

/// Keeps the largest deviation from a table and prints it (`--nocapture`), so that a tolerance can
/// stand just above what is achieved.
pub struct Worst {
    name: &'static str,
    largest: f64,
}

impl Worst {
    /// Nothing seen yet.
    #[must_use]
    pub fn new(name: &'static str) -> Self {
        Self { name, largest: 0.0 }
    }

    /// Sees one deviation, and fails the test beyond `tolerance`.
    ///
    /// # Panics
    /// Beyond the tolerance, or where the deviation is no number.
    pub fn see(&mut self, deviation: f64, tolerance: f64) {
        let size = deviation.abs();
        assert!(
            size <= tolerance,
            "{}: {deviation:e} is beyond {tolerance:e}",
            self.name
        );
        self.largest = self.largest.max(size);
    }
}

impl Drop for Worst {
    fn drop(&mut self) {
        println!("{}: largest deviation {:.2e}", self.name, self.largest);
    }
}
