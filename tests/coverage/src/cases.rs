//! All rows of the coverage table: the gated cells first, then what is reported beside them.

use crate::case::{Case, Channel, Elevation, Fixed, Gate, Placing};
use plumbmark_simulator::Population;

/// Noise of one sample, in steps of the browser's rounding.
pub const SIGMAS_STEPS: [f64; 7] = [0.02, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5];
/// Standard uncertainty of a placement's tilt, degrees: the least that core accepts, a metal face,
/// a round body.
pub const HOLDS_DEG: [f64; 3] = [0.02, 0.1, 0.3];
/// Noise of the rows beside.
const FEW_SIGMAS_STEPS: [f64; 3] = [0.05, 0.2, 0.5];
/// Hold of the rows beside, degrees: a metal face.
const METAL_FACE_DEG: f64 = 0.1;

/// Every row.
#[must_use]
pub fn all() -> Vec<Case> {
    let mut cases = gated();
    for placing in Placing::ALL {
        for channel in Channel::ALL {
            for sigma in FEW_SIGMAS_STEPS {
                cases.extend(beside(placing, channel, sigma));
            }
        }
    }
    cases
}

/// The cells that the gates apply to.
#[must_use]
pub fn gated() -> Vec<Case> {
    let mut cases = Vec::new();
    for placing in Placing::ALL {
        for channel in Channel::ALL {
            for hold in HOLDS_DEG {
                for sigma in SIGMAS_STEPS {
                    cases.push(Case::nominal(placing, channel, sigma, hold));
                }
            }
        }
    }
    cases
}

fn beside(placing: Placing, channel: Channel, sigma_steps: f64) -> Vec<Case> {
    let nominal = Case {
        gate: Gate::None,
        ..Case::nominal(placing, channel, sigma_steps, METAL_FACE_DEG)
    };
    let people = |what, population| Case {
        what,
        population,
        ..nominal.clone()
    };
    let usual = Population::NOMINAL;
    let zero = |zero_mg, zero_spread| Population {
        zero_mg,
        zero_spread,
        ..usual
    };
    let scale = |scale, cross_axis| Population {
        scale,
        cross_axis,
        ..usual
    };
    let colour = |s| Population {
        colour_s: (s, s),
        ..usual
    };
    let mut cases = vec![
        people("zero 4.5 mg", zero(4.5, 0.25)),
        people("zero 9 mg", zero(9.0, 0.25)),
        people("zero 6 mg with a factor of 0.6", zero(6.0, 0.6)),
        people("scale 0.2 % and cross-axis 0.1 %", scale(0.002, 0.001)),
        people("scale 1 % and cross-axis 0.5 %", scale(0.01, 0.005)),
        people("noise white", colour(0.0)),
        people("noise coloured 200 ms", colour(0.2)),
        Case {
            what: "tremor 0.05 m/s2",
            tremor_m_s2: 0.05,
            ..nominal.clone()
        },
        Case {
            what: "hand wanders 0.1",
            wander_deg: 0.1,
            ..nominal.clone()
        },
        Case {
            what: "hand wanders 0.3",
            wander_deg: 0.3,
            ..nominal.clone()
        },
        Case {
            what: "hold in the case",
            fixed: Fixed::Case,
            ..nominal.clone()
        },
        Case {
            what: "hold in the surface",
            fixed: Fixed::Surface,
            ..nominal.clone()
        },
    ];
    let elevations: &[f64] = match placing {
        Placing::First => &[0.0, 15.0, 45.0, 90.0],
        Placing::Reversal => &[0.0, 5.0, 15.0, 45.0],
    };
    for &e in elevations {
        cases.push(Case {
            what: "one elevation",
            elevation: Elevation::About(e),
            ..nominal.clone()
        });
        cases.push(Case {
            what: "heading 1",
            heading_deg: 1.0,
            elevation: Elevation::About(e),
            ..nominal.clone()
        });
    }
    cases.extend(match channel {
        Channel::Acceleration => vec![Case {
            what: "not rounded",
            rounded: false,
            ..nominal.clone()
        }],
        Channel::Orientation | Channel::Both => filters(&nominal),
    });
    if placing == Placing::Reversal {
        for (what, drift_mg) in [("zero drifts 1 mg", 1.0), ("zero drifts 5 mg", 5.0)] {
            cases.push(Case {
                what,
                drift_mg,
                ..nominal.clone()
            });
        }
    }
    cases
}

/// What only the fused filter cares for.
fn filters(nominal: &Case) -> Vec<Case> {
    let lag = |lag_s: f64| Population {
        lag_s: (lag_s, lag_s),
        ..Population::NOMINAL
    };
    let started = |what, start_deg, population| Case {
        what,
        start_deg,
        population,
        ..nominal.clone()
    };
    vec![
        started("3 s after a turn off by 1", 1.0, Population::NOMINAL),
        started("3 s after a turn off by 2", 2.0, Population::NOMINAL),
        started("filter 5 s off by 1", 1.0, lag(5.0)),
        started("filter 10 s off by 1", 1.0, lag(10.0)),
        started(
            "gyroscope's bias 0.02 deg/s",
            0.0,
            Population {
                gyro_bias_deg_s: 0.02,
                ..Population::NOMINAL
            },
        ),
    ]
}
