//! Conductors of copper by their names: what a metre of them resists, what one law lets them carry.

/// A list that a conductor's name is from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Series {
    /// Square millimetres, flexible: IEC 60228 class 5.
    Area,
    /// American wire gauge: ASTM B258.
    Gauge,
}

/// Sizes in mm², thin to thick, and the most that a metre may resist at 20 °C, in mΩ/m (Ω/km):
/// IEC 60228 class 5, plain copper.
const AREAS: [(f64, f64); 8] = [
    (0.75, 26.0),
    (1.0, 19.5),
    (1.5, 13.3),
    (2.5, 7.98),
    (4.0, 4.95),
    (6.0, 3.30),
    (10.0, 1.91),
    (16.0, 1.21),
];

/// Gauges, thin to thick, and what 33 CFR 183.425 (table 5) lets one carry, in A, with insulation
/// for 105 °C, before it is lowered for engine spaces and bundles; none where the value was not seen.
const GAUGES: [(f64, f64); 7] = [
    (18.0, 20.0),
    (16.0, 25.0),
    (14.0, 35.0),
    (12.0, 45.0),
    (10.0, 60.0),
    (8.0, 80.0),
    (6.0, f64::NAN),
];

/// Number of conductors in both lists.
pub const COUNT: usize = AREAS.len() + GAUGES.len();

/// Half-width of a metre's resistance, as a share. Full copper of a size's own area has up to 14 %
/// less than the standard's most (IEC 60228), tinned strands up to 3 % more; strands of a gauge have
/// a few per cent more than its solid wire, and vehicle cable of that name up to 12 % less copper
/// (SAE J1128; shares from memory).
pub const SPREAD: f64 = 0.12;

/// Resistivity of annealed copper at 20 °C, Ω·mm²/m: IEC 60028.
const COPPER_OHM_MM2_PER_M: f64 = 0.017_241_4;
/// Its rise with temperature, 1/K from 20 °C: IEC 60028.
const COPPER_PER_K: f64 = 0.003_93;

/// The name of the conductor at a place in the two lists: mm², or gauge.
#[must_use]
pub fn named(code: usize) -> Option<(Series, f64)> {
    let area = AREAS.get(code).map(|&(mm2, _)| (Series::Area, mm2));
    area.or_else(|| gauge(code).map(|(gauge, _)| (Series::Gauge, gauge)))
}

fn gauge(code: usize) -> Option<(f64, f64)> {
    GAUGES.get(code.checked_sub(AREAS.len())?).copied()
}

/// Diameter in mm of a solid wire: 0.127·92^((36 − n)/39) for gauge n (ASTM B258).
#[must_use]
pub fn gauge_diameter_mm(gauge: f64) -> f64 {
    const LN_92: f64 = 4.521_788_577_049_041;
    0.127 * libm::exp(LN_92 * (36.0 - gauge) / 39.0)
}

/// What a metre resists at 20 °C in mΩ: the most that IEC 60228 class 5 permits for a size in mm²,
/// that of the solid wire (ASTM B258) of annealed copper (IEC 60028) for a gauge. Not a number past
/// the end of the lists.
#[must_use]
pub fn mohm_per_m(code: f64) -> f64 {
    let code = code as usize;
    if let Some(&(_, most)) = AREAS.get(code) {
        return most;
    }
    gauge(code).map_or(f64::NAN, |(gauge, _)| {
        let d_mm = gauge_diameter_mm(gauge);
        1000.0 * COPPER_OHM_MM2_PER_M / (core::f64::consts::FRAC_PI_4 * d_mm * d_mm)
    })
}

/// What a conductor of one at 20 °C resists at `celsius`: 1 + 0.00393·(t − 20), annealed copper (IEC
/// 60028). From −50 to 200 °C.
#[must_use]
pub fn warm(celsius: f64) -> f64 {
    1.0 + COPPER_PER_K * (celsius - 20.0)
}

/// What 33 CFR 183.425 lets a gauge carry in US petrol boats, in A, insulation for 105 °C, before
/// engine spaces and bundles; an orientation elsewhere. Not a number where it names none.
#[must_use]
pub fn boat_law_a(code: f64) -> f64 {
    // A code that is not entered is not the first one.
    if code.is_nan() {
        return f64::NAN;
    }
    gauge(code as usize).map_or(f64::NAN, |(_, amperes)| amperes)
}
