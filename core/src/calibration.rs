//! Any-pose calibration of the acceleration channel: at rest, whatever way the phone leans, what it
//! feels is as long as gravity. Zero and scale of each axis are those that make it so.
//!
//! Gauss and Newton's method on |k·(a − o)|² = 1: three zeros o, three scales k. Single precision
//! leaves a millionth of gravity, a thousandth of what a pose is uncertain by, and a board has no
//! other. The uncertainties are those of least squares, widened for the correlation between the six.

use crate::matrix::{Matrix6, inverse};
use crate::prior::LARGEST_ZERO;
use crate::vector::{Vec3, dot, unit};
use heapless::Vec;

/// Poses kept.
pub const POSES: usize = 18;
/// Fewest poses: as many equations as unknowns would leave nothing to judge the fit by.
const FEWEST: usize = 9;
/// Cosine of the smallest angle between two poses, 20°.
const APART_COSINE: f32 = 0.94;
/// How far each axis must have looked both up and down, share of gravity.
const BOTH_WAYS: f32 = 0.5;
/// Most steps of the fit, and the longest one in any unknown.
const STEPS: usize = 12;
const LONGEST_STEP: f32 = 0.05;
/// Largest scale error of a sensor. BMI160 data sheet: sensitivity ±4 % in the worst case.
const LARGEST_SCALE_ERROR: f32 = 0.05;
/// Residuals beyond so many of the poses' own uncertainties are no sensor's.
const DOES_NOT_FIT: f32 = 3.0;
/// Poses in which the channels must agree before one's calibration counts for the other.
const AGREEING: usize = 6;

/// Why poses make no calibration.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
#[non_exhaustive]
pub enum CalibrationRefusal {
    /// Fewer than nine poses.
    TooFewPoses,
    /// This pose is within 20° of an earlier one.
    PoseTaken,
    /// There is no room for one more.
    Full,
    /// An axis never looked both up and down by half of gravity: its zero and its scale can't be
    /// told apart.
    OneSided,
    /// The poses leave a combination of zeros and scales open.
    Singular,
    /// The fit does not come to rest.
    NoConvergence,
    /// A zero or a scale is larger than any sensor's.
    TooLarge,
    /// The poses contradict each other: one of them was not at rest.
    DoesNotFit,
}

impl CalibrationRefusal {
    /// All refusals, in the order of their codes, from 1; 0 is left for "found".
    pub const ALL: [Self; 8] = [
        Self::TooFewPoses,
        Self::PoseTaken,
        Self::Full,
        Self::OneSided,
        Self::Singular,
        Self::NoConvergence,
        Self::TooLarge,
        Self::DoesNotFit,
    ];

    /// The refusal's name in reports and messages.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::TooFewPoses => "too_few_poses",
            Self::PoseTaken => "pose_taken",
            Self::Full => "full",
            Self::OneSided => "one_sided",
            Self::Singular => "singular",
            Self::NoConvergence => "no_convergence",
            Self::TooLarge => "too_large",
            Self::DoesNotFit => "does_not_fit",
        }
    }
}

impl core::fmt::Display for CalibrationRefusal {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.name())
    }
}

impl core::error::Error for CalibrationRefusal {}

/// One pose at rest.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Pose {
    /// Specific force, share of standard gravity, device axes.
    pub force: Vec3,
    /// Standard uncertainty of each of its components, noise and step.
    pub u: f32,
    /// Whether the fused orientation had settled and agreed within both channels' uncertainty.
    pub channels_agree: bool,
}

/// Zero and scale found, share of gravity, device axes: true = (felt − zero)/scale.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Calibration {
    /// Zero.
    pub zero: Vec3,
    /// Its standard uncertainty.
    pub u_zero: Vec3,
    /// Scale; what all three axes share is local gravity's as well and moves no angle.
    pub scale: Vec3,
    /// Its standard uncertainty.
    pub u_scale: Vec3,
    /// Whether it also counts for the orientation channel: both agreed in six poses or more.
    pub for_orientation: bool,
}

/// Poses collected so far.
#[derive(Debug, Clone, Default)]
pub struct Poses(Vec<Pose, POSES>);

impl Poses {
    /// None yet.
    #[must_use]
    pub const fn new() -> Self {
        Self(Vec::new())
    }

    /// How many there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.0.len()
    }

    /// Whether there are none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// Adds one.
    ///
    /// # Errors
    /// [`CalibrationRefusal::PoseTaken`], [`CalibrationRefusal::Full`].
    pub fn add(&mut self, pose: Pose) -> Result<(), CalibrationRefusal> {
        let near = |p: &Pose| {
            unit(p.force)
                .zip(unit(pose.force))
                .is_none_or(|(a, b)| dot(a, b) > APART_COSINE)
        };
        if self.0.iter().any(near) {
            return Err(CalibrationRefusal::PoseTaken);
        }
        self.0.push(pose).map_err(|_| CalibrationRefusal::Full)
    }

    /// Fits zero and scale of a phone's sensor: the o and k that make Σ (|k·(a − o)|² − 1)² least,
    /// by Gauss and Newton's method (see the module), standard uncertainties by least squares.
    ///
    /// # Errors
    /// [`CalibrationRefusal`], by name.
    pub fn fit(&self) -> Result<Calibration, CalibrationRefusal> {
        self.fit_within(LARGEST_ZERO)
    }

    /// The same for a sensor whose maker states another zero: `largest_zero` is the share of gravity
    /// beyond which it is taken for a mistake.
    ///
    /// # Errors
    /// [`CalibrationRefusal`], by name.
    pub fn fit_within(&self, largest_zero: f32) -> Result<Calibration, CalibrationRefusal> {
        if self.0.len() < FEWEST {
            return Err(CalibrationRefusal::TooFewPoses);
        }
        let both_ways = |i: usize| {
            self.0.iter().any(|p| p.force[i] > BOTH_WAYS)
                && self.0.iter().any(|p| p.force[i] < -BOTH_WAYS)
        };
        if !(0..3).all(both_ways) {
            return Err(CalibrationRefusal::OneSided);
        }
        let mut fit = Fit {
            zero: [0.0; 3],
            gain: [1.0; 3],
        };
        let mut at_rest = false;
        for _ in 0..STEPS {
            let (normal, slope, _) = fit.equations(&self.0);
            let back = inverse(&normal).ok_or(CalibrationRefusal::Singular)?;
            let step = back.map(|row| row.iter().zip(slope).map(|(m, s)| m * s).sum::<f32>());
            let longest = step.iter().fold(LONGEST_STEP, |m, s| m.max(s.abs()));
            let step = step.map(|s| s * LONGEST_STEP / longest);
            fit.take(step);
            at_rest = step.iter().all(|s| s.abs() < 1e-6);
            if at_rest {
                break;
            }
        }
        if !at_rest {
            return Err(CalibrationRefusal::NoConvergence);
        }
        self.judged(&fit, largest_zero)
    }

    /// Uncertainties, and whether it is a sensor at all.
    fn judged(&self, fit: &Fit, largest_zero: f32) -> Result<Calibration, CalibrationRefusal> {
        let too_large = fit.zero.iter().any(|z| z.abs() > largest_zero)
            || fit
                .gain
                .iter()
                .any(|g| (g - 1.0).abs() > LARGEST_SCALE_ERROR);
        if too_large {
            return Err(CalibrationRefusal::TooLarge);
        }
        let (normal, _, squares) = fit.equations(&self.0);
        let n = self.0.len() as f32;
        // The residual |x|² − 1 answers to a component by twice its share of gravity.
        let stated = self.0.iter().map(|p| 4.0 * p.u * p.u).sum::<f32>() / n;
        let seen = squares / (n - 6.0);
        if seen > DOES_NOT_FIT * DOES_NOT_FIT * stated.max(1e-10) {
            return Err(CalibrationRefusal::DoesNotFit);
        }
        let back = inverse(&normal).ok_or(CalibrationRefusal::Singular)?;
        let variance = seen.max(stated);
        let own: [f32; 6] = core::array::from_fn(|i| libm::sqrtf(back[i][i]));
        // Gershgorin: no combination of the six is more uncertain than without correlation and
        // with each widened so.
        let widened = (0..6)
            .map(|i| {
                (0..6)
                    .map(|j| (back[i][j] / (own[i] * own[j])).abs())
                    .sum::<f32>()
            })
            .fold(1.0, f32::max);
        let u = own.map(|o| libm::sqrtf(variance * widened) * o);
        let agree = self.0.iter().filter(|p| p.channels_agree).count();
        Ok(Calibration {
            zero: fit.zero,
            u_zero: [u[0], u[1], u[2]],
            scale: fit.gain.map(|g| 1.0 / g),
            u_scale: [u[3], u[4], u[5]],
            for_orientation: agree >= AGREEING,
        })
    }
}

/// The unknowns: zero, and one over the scale.
struct Fit {
    zero: [f32; 3],
    gain: [f32; 3],
}

impl Fit {
    /// Normal matrix, right-hand side and sum of squared residuals.
    fn equations(&self, poses: &[Pose]) -> (Matrix6, [f32; 6], f32) {
        let (mut normal, mut slope, mut squares) = ([[0.0; 6]; 6], [0.0; 6], 0.0);
        for pose in poses {
            let free: [f32; 3] = core::array::from_fn(|i| pose.force[i] - self.zero[i]);
            let x: [f32; 3] = core::array::from_fn(|i| free[i] * self.gain[i]);
            let residual = x.iter().map(|v| v * v).sum::<f32>() - 1.0;
            let by: [f32; 6] = core::array::from_fn(|i| match i {
                0..3 => -2.0 * x[i] * self.gain[i],
                _ => 2.0 * x[i - 3] * free[i - 3],
            });
            for (row, a) in normal.iter_mut().zip(by) {
                for (cell, b) in row.iter_mut().zip(by) {
                    *cell += a * b;
                }
            }
            for (s, a) in slope.iter_mut().zip(by) {
                *s -= a * residual;
            }
            squares += residual * residual;
        }
        (normal, slope, squares)
    }

    fn take(&mut self, step: [f32; 6]) {
        for (v, s) in self.zero.iter_mut().chain(&mut self.gain).zip(step) {
            *v += s;
        }
    }
}
