//! Budgets against GTC, the coverage factor against scipy, single values against handbooks.

use plumbmark::budget::{Budget, Contact, Source, UpEstimate, coverage_factor};
use plumbmark::frames::{elevation_sensitivity, roll_sensitivity};
use plumbmark::prior::{K_PLUMB, ZERO_MG};
use plumbmark::rounded::{AxisSums, bias, estimate};
use plumbmark::sensor::Sensor;
use plumbmark_tests::{Table, Worst};

/// Share of the value; achieved 4e-7.
const BUDGET_TOLERANCE: f64 = 1e-6;
/// The fit's promise: never below the exact factor, never more than this above it.
const K_ABOVE: f64 = 0.0085;

fn single(v: [f64; 3]) -> [f32; 3] {
    v.map(|c| c as f32)
}

#[test]
fn every_contribution_and_their_sum_as_by_gtc() {
    let mut worst = Worst::new("budget, share of the value");
    for row in Table::open("budget.csv", 1146).rows() {
        let half = single(row.vector(["hx", "hy", "hz"]));
        let from = UpEstimate {
            up: single(row.vector(["ux", "uy", "uz"])),
            noise: single(row.vector(["nx", "ny", "nz"])),
            half_steps: [
                [half[0], 0.0, 0.0],
                [0.0, half[1], 0.0],
                [0.0, 0.0, half[2]],
                [0.0; 3],
                [0.0; 3],
                [0.0; 3],
            ],
            worst_half_step: 0.0,
            settle_deg: 0.0,
            sensor: Sensor::assumed(),
        };
        let contact = Contact {
            hold_deg: row.get("hold_deg") as f32,
            align_deg: row.get("align_deg") as f32,
            normal: single(row.vector(["mx", "my", "mz"])),
        };
        let c = if row.get("roll") == 1.0 {
            roll_sensitivity(from.up).unwrap()
        } else {
            elevation_sensitivity(single(row.vector(["ax", "ay", "az"])), from.up)
        };
        let got = Budget::new(&from, &contact, c);
        let mut close = |got: f32, name: &str| {
            let want = row.get(name);
            worst.see((f64::from(got) - want) / want.max(0.1), BUDGET_TOLERANCE);
        };
        close(got.of(Source::Noise), "noise");
        close(got.of(Source::Step), "step");
        close(got.of(Source::Zero), "zero");
        close(got.of(Source::Scale), "scale");
        close(got.of(Source::Hold), "hold");
        close(got.of(Source::Align), "align");
        close(got.combined_deg(), "all");
    }
}

#[test]
fn the_coverage_factor_is_never_below_the_exact_one() {
    for row in Table::open("coverage_factor.csv", 101).rows() {
        let got = f64::from(coverage_factor(
            row.get("rectangle") as f32,
            row.get("combined") as f32,
        ));
        let above = got - row.get("k");
        assert!((-1e-6..K_ABOVE).contains(&above), "{got}: {above} above");
    }
}

fn factor(name: &str) -> f64 {
    let table = Table::open("factors.csv", 8);
    let found = table
        .rows()
        .find(|r| r.text("name") == name)
        .map(|r| r.get("value"));
    found.unwrap_or_else(|| panic!("no {name}"))
}

#[test]
fn single_values_of_the_handbooks() {
    approx::assert_relative_eq!(
        f64::from(K_PLUMB),
        factor("rayleigh_95"),
        max_relative = 2e-4
    );
    // GUM G.4.1: three components combined, 1.03 as printed.
    let mut budget = Budget {
        variances: [0.0; 10],
        rectangle_deg: 0.0,
    };
    for (variance, u) in budget.variances.iter_mut().zip([0.25, 0.57, 0.82]) {
        *variance = u * u;
    }
    let combined = f64::from(budget.combined_deg());
    approx::assert_relative_eq!(combined, factor("gum_g41_combined"), max_relative = 1e-6);
    approx::assert_abs_diff_eq!(combined, 1.03, epsilon = 0.005);
    // 8 mg of offset at level: atan(offset/g); core's linear form is 0.002 % above.
    let offset_deg = f64::from(ZERO_MG / 1000.0).to_degrees();
    approx::assert_relative_eq!(offset_deg, factor("offset_8mg_deg"), max_relative = 1e-4);
}

/// Noise of a mean: Student's t at 12 degrees of freedom over 1.96, and 1.26 for colour.
#[test]
fn the_noise_of_a_mean_carries_students_factor() {
    let axis = AxisSums {
        n: 60,
        sum: 0,
        squares: 60 * 9,
        range: (-6, 6),
    };
    let got = f64::from(estimate(&axis, 1.0, (0.02, 0.5)).noise);
    let plain = 3.0 / 60_f64.sqrt();
    let want = factor("student_t12_975") / factor("normal_975") * 1.26;
    approx::assert_relative_eq!(got / plain, want, max_relative = 2e-3);
}

/// Half a rounding step at level: check by the definition, atan(0.1/g)/2.
#[test]
fn a_single_level_leaves_nearly_half_a_step() {
    let axis = AxisSums {
        n: 60,
        sum: 0,
        squares: 0,
        range: (0, 0),
    };
    let e = estimate(&axis, 1.0, (0.02, 0.5));
    assert_eq!((e.value, e.noise), (0.0, 0.0));
    let half_deg = f64::from(e.half_width) * factor("step_level_deg");
    assert!((0.27..0.2922).contains(&half_deg), "{half_deg}");
}

/// The first term of the Fourier series of rounding: exp(−2π²σ²)/π (Widrow and Kollár,
/// *Quantization Noise*, from memory; the formula itself in `f64` here).
#[test]
fn the_bias_of_rounding_is_close_to_its_exponential() {
    let mut worst = Worst::new("bias of rounding, counts");
    for i in 0..=1000 {
        let sigma = 0.22 + 0.28 * f64::from(i) / 1000.0;
        let variance = sigma * sigma;
        let want = (-2.0 * std::f64::consts::PI.powi(2) * variance).exp() / std::f64::consts::PI;
        worst.see(f64::from(bias(variance as f32)) - want, 5e-4);
    }
    assert_eq!(bias(1.0), bias(0.25), "held beyond σ = 0.5");
}
