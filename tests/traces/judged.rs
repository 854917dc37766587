//! Readings against the reference, by pose and pooled: coverage, error, U.

use super::run::Reading;
use std::collections::BTreeMap;

/// Time after the flag's start in which movement can't be told from noise yet, ms: the flag starts
/// when the sensor is touched, and in the committed recording it has turned by less than 0.3° by
/// then (optical reference).
pub const ONSET_MS: f64 = 500.0;
/// Share of a pose's readings that must hold the reference for the pose to count as inside.
const POSE_INSIDE: f64 = 0.95;

/// Readings at rest, pooled. Angles are NaN where there is no reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Summary {
    /// Readings with a reference; each axis is one.
    pub readings: usize,
    /// Readings without one, which nothing can be said of.
    pub no_reference: usize,
    /// Readings whose interval holds the reference.
    pub inside: usize,
    /// Root mean square error, degrees.
    pub rms_deg: f64,
    /// Largest error, degrees.
    pub largest_deg: f64,
    /// Mean expanded uncertainty, degrees.
    pub mean_u_deg: f64,
    /// 95th percentile of the error's size, degrees.
    pub p95_deg: f64,
}

impl Summary {
    /// Pools readings.
    #[must_use]
    pub fn of<'a>(readings: impl IntoIterator<Item = &'a Reading>) -> Self {
        let (mut sizes, mut no_reference, mut inside, mut total_u) = (Vec::new(), 0, 0, 0.0);
        for reading in readings {
            let Some(error_deg) = reading.error_deg else {
                no_reference += 1;
                continue;
            };
            sizes.push(error_deg.abs());
            inside += usize::from(error_deg.abs() <= reading.u_deg);
            total_u += reading.u_deg;
        }
        sizes.sort_by(f64::total_cmp);
        let n = sizes.len() as f64;
        Self {
            readings: sizes.len(),
            no_reference,
            inside,
            rms_deg: (sizes.iter().map(|e| e * e).sum::<f64>() / n).sqrt(),
            largest_deg: sizes.last().copied().unwrap_or(f64::NAN),
            mean_u_deg: total_u / n,
            p95_deg: sizes
                .get(sizes.len() * 95 / 100)
                .copied()
                .unwrap_or(f64::NAN),
        }
    }

    /// Share of the intervals that hold the reference, percent.
    #[must_use]
    pub fn coverage_percent(&self) -> f64 {
        100.0 * self.inside as f64 / self.readings as f64
    }

    /// Mean U over the 95th percentile of the error: 1 is as tight as can be.
    #[must_use]
    pub fn u_over_p95(&self) -> f64 {
        self.mean_u_deg / self.p95_deg
    }

    fn is_inside(&self) -> bool {
        self.inside as f64 >= POSE_INSIDE * self.readings as f64
    }
}

/// Readings taken while the file's flag said "moving".
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Moving {
    /// All of them.
    pub readings: usize,
    /// Those whose interval does not hold the reference.
    pub wrong: usize,
    /// Those without a reference.
    pub no_reference: usize,
    /// Those more than [`ONSET_MS`] after the flag's start.
    pub late: usize,
}

impl Moving {
    fn of<'a>(readings: impl IntoIterator<Item = &'a Reading>) -> Self {
        readings.into_iter().fold(Self::default(), |sum, r| Self {
            readings: sum.readings + 1,
            wrong: sum.wrong + usize::from(r.error_deg.is_some_and(|e| e.abs() > r.u_deg)),
            no_reference: sum.no_reference + usize::from(r.error_deg.is_none()),
            late: sum.late + usize::from(r.moving_ms > ONSET_MS),
        })
    }
}

/// What one line of the result says.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// "pose", "file", "session" or "all".
    pub level: &'static str,
    /// The session; empty for all.
    pub session: String,
    /// The file; empty for a session and for all.
    pub file: String,
    /// The pose; empty but for one pose, "-" for readings outside the labelled ones.
    pub pose: String,
    /// Readings at rest.
    pub summary: Summary,
    /// Poses with readings.
    pub poses: usize,
    /// Those of them in which at least 95 % of the intervals hold the reference. Readings of one
    /// pose by one device are not independent, so that this is the count of trials.
    pub poses_inside: usize,
    /// Poses without a reading.
    pub poses_silent: usize,
    /// Readings while moved; `None` where no flag tells, and for one pose.
    pub moving: Option<Moving>,
}

/// The readings of one file, sorted.
#[derive(Debug, Clone)]
pub(super) struct Judged {
    pub(super) session: String,
    pub(super) file: String,
    pub(super) by_pose: BTreeMap<Option<i64>, Vec<Reading>>,
    pub(super) moving: Option<Vec<Reading>>,
}

impl Judged {
    /// One row for each pose.
    pub(super) fn pose_rows(&self) -> impl Iterator<Item = Row> {
        self.by_pose.iter().map(|(pose, readings)| Row {
            session: self.session.clone(),
            file: self.file.clone(),
            pose: pose.map_or_else(|| "-".to_owned(), |p| p.to_string()),
            ..Row::new("pose", [(pose, readings)].into_iter())
        })
    }

    /// The row of the whole file.
    pub(super) fn file_row(&self) -> Row {
        Row {
            file: self.file.clone(),
            session: self.session.clone(),
            ..Self::pooled("file", &[self])
        }
    }

    /// The row of several files.
    pub(super) fn pooled(level: &'static str, files: &[&Self]) -> Row {
        let moving: Vec<_> = files.iter().filter_map(|f| f.moving.as_ref()).collect();
        Row {
            moving: (!moving.is_empty()).then(|| Moving::of(moving.into_iter().flatten())),
            ..Row::new(level, files.iter().flat_map(|f| &f.by_pose))
        }
    }
}

impl Row {
    fn new<'a>(
        level: &'static str,
        poses: impl Iterator<Item = (&'a Option<i64>, &'a Vec<Reading>)> + Clone,
    ) -> Self {
        let labelled = poses.clone().filter(|(pose, _)| pose.is_some());
        let each: Vec<_> = labelled
            .map(|(_, readings)| Summary::of(readings))
            .collect();
        let spoken = each.iter().filter(|s| s.readings > 0);
        Self {
            level,
            session: String::new(),
            file: String::new(),
            pose: String::new(),
            summary: Summary::of(poses.flat_map(|(_, readings)| readings)),
            poses: spoken.clone().count(),
            poses_inside: spoken.clone().filter(|s| s.is_inside()).count(),
            poses_silent: each.len() - spoken.count(),
            moving: None,
        }
    }
}
