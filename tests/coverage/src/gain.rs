//! What the estimate for rounded readings gains over their plain mean, axis by axis. Lengths in
//! steps of the rounding, q.

use crate::cases::SIGMAS_STEPS;
use crate::share::percent;
use plumbmark::budget::coverage_factor;
use plumbmark::rounded::{AxisSums, estimate, inflation, noise_bounds};
use plumbmark_simulator::{Draws, FORCE_STEP_M_S2, G, Phone, Scene};

/// Windows of three axes in a row of the table.
pub const WINDOWS: u64 = 10_000;
/// Samples in a window: one second.
const SAMPLES: usize = 60;
/// Samples in one of five batches.
const BATCH: usize = 12;

/// Columns of the table.
pub const COLUMNS: &str = "noise,sigma_steps,axes,rms_mean_q,rms_estimate_q,rms_gain,\
coverage_mean_scatter_pct,coverage_mean_half_step_pct,coverage_estimate_pct,\
u_mean_half_step_q,u_estimate_q,u_gain,p95_estimate_q,u_estimate_ratio";

/// Colour of the noise.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Noise {
    /// Every sample independent.
    White,
    /// Correlation times of 20 to 100 ms.
    Coloured,
}

impl Noise {
    /// Both.
    pub const ALL: [Self; 2] = [Self::White, Self::Coloured];

    fn name(self) -> &'static str {
        match self {
            Self::White => "white",
            Self::Coloured => "20 to 100 ms",
        }
    }
}

/// Every row of the table.
#[must_use]
pub fn all() -> Vec<(Noise, f64)> {
    let noises = Noise::ALL.into_iter();
    noises
        .flat_map(|noise| SIGMAS_STEPS.map(|sigma| (noise, sigma)))
        .collect()
}

/// One axis of one window.
struct Axis {
    mean_error: f64,
    /// 2 s/√n: what a handbook for unrounded samples says.
    mean_scatter_u: f64,
    /// Half a step's rectangle and the noise: what is honest without a better estimate.
    mean_honest_u: f64,
    error: f64,
    u: f64,
}

/// One row: errors and intervals at one noise.
#[must_use]
pub fn line(&(noise, sigma_steps): &(Noise, f64)) -> String {
    let axes: Vec<Axis> = (0..WINDOWS)
        .flat_map(|i| window(noise, sigma_steps, i))
        .collect();
    let n = axes.len() as f64;
    let rms = |f: fn(&Axis) -> f64| (axes.iter().map(|a| f(a).powi(2)).sum::<f64>() / n).sqrt();
    let mean = |f: fn(&Axis) -> f64| axes.iter().map(f).sum::<f64>() / n;
    let covered = |f: fn(&Axis) -> bool| percent(axes.iter().filter(|a| f(a)).count(), axes.len());
    let mut errors: Vec<f64> = axes.iter().map(|a| a.error.abs()).collect();
    errors.sort_by(f64::total_cmp);
    let p95 = errors[errors.len() * 95 / 100];
    let (rms_mean, rms_estimate) = (rms(|a| a.mean_error), rms(|a| a.error));
    let (u_mean, u_estimate) = (mean(|a| a.mean_honest_u), mean(|a| a.u));
    format!(
        "{},{sigma_steps},{n},{rms_mean:.4},{rms_estimate:.4},{:.2},{:.2},{:.2},{:.2},\
{u_mean:.4},{u_estimate:.4},{:.2},{p95:.4},{:.3}",
        noise.name(),
        rms_mean / rms_estimate,
        covered(|a| a.mean_error.abs() <= a.mean_scatter_u),
        covered(|a| a.mean_error.abs() <= a.mean_honest_u),
        covered(|a| a.error.abs() <= a.u),
        u_mean / u_estimate,
        u_estimate / p95,
    )
}

fn window(noise: Noise, sigma_steps: f64, index: u64) -> [Axis; 3] {
    let seed = (1000.0 * sigma_steps) as u64 + 10_000 * noise as u64;
    let mut draws = Draws::new(seed, index);
    let phone = Phone {
        // Any place between two steps is as likely as another.
        zero_m_s2: [0; 3].map(|_| draws.between(-0.5, 0.5) * FORCE_STEP_M_S2),
        noise_m_s2: sigma_steps * FORCE_STEP_M_S2,
        colour_s: match noise {
            Noise::White => 0.0,
            Noise::Coloured => draws.between(0.02, 0.1),
        },
        ..Phone::PERFECT
    };
    let up = [0.0, 0.0, 1.0];
    let scene = Scene {
        events: SAMPLES,
        ..Scene::at_rest(up, up)
    };
    let samples: Vec<[i32; 3]> = phone
        .rest(&scene, &mut draws)
        .iter()
        .map(|e| e.force_m_s2.map(|f| (f / FORCE_STEP_M_S2).round() as i32))
        .collect();
    let truth = [0, 1, 2].map(|i| (G * up[i] + phone.zero_m_s2[i]) / FORCE_STEP_M_S2);
    judge(&samples, truth)
}

fn judge(samples: &[[i32; 3]], truth: [f64; 3]) -> [Axis; 3] {
    let origin = samples[0];
    let sums = [0, 1, 2].map(|i| {
        let counts = || samples.iter().map(|s| s[i] - origin[i]);
        let low = counts().min().unwrap_or(0);
        let high = counts().max().unwrap_or(0);
        AxisSums {
            n: samples.len() as u32,
            sum: counts().sum(),
            squares: counts().map(|c| c.unsigned_abs().pow(2)).sum(),
            range: (low as i16, high as i16),
        }
    });
    let batch_means: Vec<[f32; 3]> = samples
        .chunks(BATCH)
        .map(|b| {
            [0, 1, 2]
                .map(|i| b.iter().map(|s| s[i] - origin[i]).sum::<i32>() as f32 / b.len() as f32)
        })
        .collect();
    // Batch means about their own mean, all axes together.
    let k = batch_means.len() as f32;
    let of_mean: f32 = (0..3)
        .map(|i| {
            let mean = batch_means.iter().map(|b| b[i]).sum::<f32>() / k;
            batch_means
                .iter()
                .map(|b| (b[i] - mean).powi(2))
                .sum::<f32>()
        })
        .sum::<f32>()
        / (k * (k - 1.0));
    let factor = inflation(&sums, of_mean);
    // As a reading does it: the three axes of a second bound the noise together.
    let bounds = noise_bounds(sums.map(|s| s.variance()).iter().sum::<f32>() / 3.0, 3);
    [0, 1, 2].map(|i| {
        let got = estimate(&sums[i], factor, bounds);
        let at = f64::from(origin[i]);
        let scatter = f64::from(sums[i].variance()).sqrt() / (samples.len() as f64).sqrt();
        let noise_of_mean = scatter * f64::from(factor).sqrt();
        Axis {
            mean_error: at + f64::from(sums[i].mean()) - truth[i],
            mean_scatter_u: 2.0 * scatter,
            mean_honest_u: expanded(0.5, noise_of_mean),
            error: at + f64::from(got.value) - truth[i],
            u: expanded(f64::from(got.half_width), f64::from(got.noise)),
        }
    })
}

/// 95 % of a rectangle and a normal, by core's own factor.
fn expanded(half_width: f64, noise: f64) -> f64 {
    let combined = (noise * noise + half_width * half_width / 3.0).sqrt();
    f64::from(coverage_factor(half_width as f32, combined as f32)) * combined
}
