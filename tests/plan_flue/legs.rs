//! A pipe as tests tell it.

use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::bound::BoundId;
use plumbmark::plan::kind::Refusal;
use plumbmark::plan::work::{Given, Worked};

pub const NONE: f64 = f64::NAN;
/// Numbers of the sheet before its legs, and of a leg.
pub const FIXED: usize = 9;
pub const WIDTH: usize = 15;
/// Results of the sheet before those of its legs, and of a leg.
pub const OWN: usize = 3;
pub const EACH: usize = 6;

/// What is told of a leg.
#[derive(Clone, Copy)]
pub struct Leg {
    pub deg: f64,
    pub m: f64,
    pub bend: f64,
    pub place: f64,
    pub clear: f64,
    pub drain: f64,
    pub zero_of: f64,
    /// Standard uncertainties: combined, zero, scale, datum, heading, rake.
    pub u: [f64; 6],
    pub half_deg: f64,
    pub half_m: f64,
}

impl Leg {
    /// By level and tape, exact.
    pub const fn exact(deg: f64, m: f64) -> Self {
        Self {
            deg,
            m,
            bend: 0.0,
            place: NONE,
            clear: NONE,
            drain: NONE,
            zero_of: 0.0,
            u: [NONE; 6],
            half_deg: 0.0,
            half_m: 0.0,
        }
    }

    /// By level and tape, as well as assumed.
    pub const fn typed(deg: f64, m: f64) -> Self {
        Self {
            half_deg: NONE,
            half_m: NONE,
            ..Self::exact(deg, m)
        }
    }

    /// By a phone of one zero.
    pub const fn read(deg: f64, m: f64, combined_u_deg: f64, zero_u_deg: f64) -> Self {
        Self {
            zero_of: 1.0,
            u: [combined_u_deg, zero_u_deg, 0.0, NONE, NONE, NONE],
            ..Self::exact(deg, m)
        }
    }

    /// With a drain of 4 mm where it starts, in free air, out of reach.
    pub const fn drained(self) -> Self {
        Self {
            place: 0.0,
            clear: 1.0,
            drain: 4.0,
            ..self
        }
    }
}

/// Road vehicle whose manual allows a drain.
pub const ROAD: [f64; 6] = [0.0, NONE, NONE, NONE, NONE, 1.0];
/// Boat ashore.
pub const ASHORE: [f64; 6] = [1.0, 0.0, NONE, NONE, NONE, NONE];

/// Numbers and half-widths.
pub fn numbers(pipe: [f64; 6], legs: &[Leg]) -> (Vec<f64>, Vec<f64>) {
    let mut x = [&pipe[..], &[0.0; 3]].concat();
    let mut half = vec![NONE; FIXED];
    for l in legs {
        x.extend([l.deg, l.m, l.bend, l.place, l.clear, l.drain, l.zero_of]);
        x.extend(l.u);
        x.extend([0.0, 0.0]);
        half.extend([l.half_deg, l.half_m, 0.0]);
        half.extend([NONE; WIDTH - 3]);
    }
    (x, half)
}

pub fn try_pipe(pipe: [f64; 6], legs: &[Leg]) -> Result<Worked, Refusal> {
    let (x, half) = numbers(pipe, legs);
    Sheet::Exhaust.work(&x, &half)
}

pub fn road(legs: &[Leg]) -> Worked {
    try_pipe(ROAD, legs).unwrap()
}

/// A result of a leg: height, along, standing, depth, remedy, drain.
pub fn of(worked: &Worked, leg: usize, result: usize) -> Given {
    worked.result(OWN + leg * EACH + result).unwrap()
}

/// Verdicts of a leg: standing water by itself, depth at its start, drain's bore held against 4 mm.
pub fn verdicts(worked: &Worked, leg: usize) -> [Verdict; 3] {
    [0, 1, 2].map(|place| {
        let check = worked.check(2 + leg * 3 + place).unwrap();
        let limit = if check.bound == BoundId::DrainBore {
            4.0
        } else {
            NONE
        };
        worked.judged(&check, limit, limit).unwrap().verdict
    })
}
