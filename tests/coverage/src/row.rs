//! One row of the coverage table, computed and written.

use crate::case::{Case, Gate};
use crate::measure::{Sample, draw};
use crate::share::{percent, upper_99};

/// Draws of a row.
pub const DRAWS: u64 = 10_000;
/// Draws that a quick test repeats.
pub const SLICE_DRAWS: u64 = 200;

/// Columns of the table, in the order of [`Row::line`].
pub const COLUMNS: &str = "what,placing,channel,sigma_steps,hold_deg,elevation_deg,gate,draws,\
read_pct,coverage_pct,coverage_upper_99_pct,mean_u_deg,p95_error_deg,ratio,\
within_at_limit_pct,within_2u_beyond,not_proven_pct,slice";

/// What the draws of one case came to.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// The case's name in six cells.
    pub key: String,
    /// What is asked of it.
    pub gate: Gate,
    /// Draws.
    pub draws: u64,
    /// Readings among them.
    pub read: usize,
    /// Readings whose interval holds the truth.
    pub inside: usize,
    /// Mean expanded uncertainty, degrees.
    pub mean_u_deg: f64,
    /// 95 % of the errors are smaller, degrees.
    pub p95_error_deg: f64,
    /// "Within" with the truth at the limit.
    pub passed_at_limit: usize,
    /// "Within" with the truth 2 U beyond.
    pub passed_beyond: usize,
    /// Not proven against a limit within ±3°.
    pub not_proven: usize,
    /// [`slice()`] of the same case.
    pub slice: String,
}

/// The first draws of a case in a few figures, to be repeated exactly.
#[must_use]
pub fn slice(case: &Case) -> String {
    let samples: Vec<_> = (0..SLICE_DRAWS).filter_map(|i| draw(case, i)).collect();
    let inside = samples.iter().filter(|s| is_inside(s)).count();
    let errors: f64 = samples.iter().map(|s| s.error_deg.abs()).sum();
    let u: f64 = samples.iter().map(|s| s.u_deg).sum();
    format!("{}/{inside}/{errors:.4}/{u:.4}", samples.len())
}

fn is_inside(sample: &Sample) -> bool {
    sample.error_deg.abs() <= sample.u_deg
}

impl Row {
    /// All draws of `case`.
    #[must_use]
    pub fn of(case: &Case) -> Self {
        let samples: Vec<_> = (0..DRAWS).filter_map(|i| draw(case, i)).collect();
        let count = |f: fn(&Sample) -> bool| samples.iter().filter(|s| f(s)).count();
        let mut errors: Vec<_> = samples.iter().map(|s| s.error_deg.abs()).collect();
        errors.sort_by(f64::total_cmp);
        Self {
            key: case.key(),
            gate: case.gate,
            draws: DRAWS,
            read: samples.len(),
            inside: count(is_inside),
            mean_u_deg: samples.iter().map(|s| s.u_deg).sum::<f64>() / samples.len() as f64,
            p95_error_deg: errors
                .get(samples.len() * 95 / 100)
                .map_or(f64::NAN, |e| *e),
            passed_at_limit: count(|s| s.passed_at_limit),
            passed_beyond: count(|s| s.passed_beyond),
            not_proven: count(|s| s.not_proven),
            slice: slice(case),
        }
    }

    /// Mean U over the 95th percentile of the errors.
    #[must_use]
    pub fn ratio(&self) -> f64 {
        self.mean_u_deg / self.p95_error_deg
    }

    /// The row as the table has it.
    #[must_use]
    pub fn line(&self) -> String {
        format!(
            "{},{},{},{:.2},{:.2},{:.2},{:.4},{:.4},{:.3},{:.2},{},{:.2},{}",
            self.key,
            self.gate.name(),
            self.draws,
            percent(self.read, self.draws as usize),
            percent(self.inside, self.read),
            100.0 * upper_99(self.inside, self.read),
            self.mean_u_deg,
            self.p95_error_deg,
            self.ratio(),
            percent(self.passed_at_limit, self.read),
            self.passed_beyond,
            percent(self.not_proven, self.read),
            self.slice
        )
    }
}
