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

/// Vectors in double precision, for truths and simulators: nothing of core's.
pub mod vector {
    /// Scalar product.
    #[must_use]
    pub fn dot(a: [f64; 3], b: [f64; 3]) -> f64 {
        a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
    }

    /// Vector product.
    #[must_use]
    pub fn cross(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
        [
            a[1] * b[2] - a[2] * b[1],
            a[2] * b[0] - a[0] * b[2],
            a[0] * b[1] - a[1] * b[0],
        ]
    }

    /// The unit vector along `a`.
    #[must_use]
    pub fn unit(a: [f64; 3]) -> [f64; 3] {
        let n = dot(a, a).sqrt();
        a.map(|v| v / n)
    }

    /// Elevation of `axis` against `up`, degrees.
    #[must_use]
    pub fn elevation_deg(axis: [f64; 3], up: [f64; 3]) -> f64 {
        let c = cross(axis, up);
        dot(axis, up).atan2(dot(c, c).sqrt()).to_degrees()
    }

    /// `v` turned by `w` radians about `w`'s direction (Rodrigues).
    #[must_use]
    pub fn turned(v: [f64; 3], w: [f64; 3]) -> [f64; 3] {
        let angle = dot(w, w).sqrt();
        if angle < 1e-12 {
            return v;
        }
        let k = w.map(|c| c / angle);
        let (s, c) = angle.sin_cos();
        let kv = cross(k, v);
        let along = dot(k, v) * (1.0 - c);
        [0, 1, 2].map(|i| v[i] * c + kv[i] * s + k[i] * along)
    }
}

/// A small random generator with a seed (SplitMix64; Steele, Lea and Flood 2014, from memory):
/// the same draws on every machine.
pub struct Draws(u64);

impl Draws {
    /// Starts at `seed`.
    #[must_use]
    pub fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// Uniform in [0, 1).
    pub fn uniform(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// Uniform between two values.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.uniform()
    }

    /// Standard normal (Box and Muller).
    pub fn normal(&mut self) -> f64 {
        let radius = (-2.0 * (1.0 - self.uniform()).ln()).sqrt();
        radius * (std::f64::consts::TAU * self.uniform()).cos()
    }

    /// A random unit vector.
    pub fn direction(&mut self) -> [f64; 3] {
        vector::unit([self.normal(), self.normal(), self.normal()])
    }
}

/// Whether long studies run in full (`PLUMBMARK_STUDY=full`) or at a tenth.
#[must_use]
pub fn full_study() -> bool {
    std::env::var("PLUMBMARK_STUDY").is_ok_and(|v| v == "full")
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
