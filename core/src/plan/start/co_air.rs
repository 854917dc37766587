//! Carbon monoxide in the air of a space: units, the well-mixed box, published thresholds.

/// Milligrams a cubic metre of 1 ppm of carbon monoxide at 25 °C and 101 325 Pa: M·p/(R·T), with
/// M = 28.0101 g/mol (IUPAC, value from memory) and R = 8.314 462 618 J/(mol·K) (SI, exact).
pub const MG_PER_M3_PER_PPM: f64 = 28.0101e-3 * 101_325.0 / (8.314_462_618 * 298.15);

/// Published thresholds in ppm, lowest first; [`THRESHOLDS`] says whose. They say how urgent a
/// reading is, never that one is acceptable.
pub const THRESHOLDS_PPM: [f64; 9] = [
    4.0 / MG_PER_M3_PER_PPM,
    10.0 / MG_PER_M3_PER_PPM,
    30.0 / MG_PER_M3_PER_PPM,
    35.0 / MG_PER_M3_PER_PPM,
    35.0,
    50.0,
    60.0 / MG_PER_M3_PER_PPM,
    100.0 / MG_PER_M3_PER_PPM,
    200.0,
];

/// Whose threshold it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Threshold {
    /// Who published it, and as what.
    pub source: &'static str,
    /// What it is a mean over; 0 for a ceiling.
    pub over_min: u16,
}

const fn threshold(source: &'static str, over_min: u16) -> Threshold {
    Threshold { source, over_min }
}

/// In the order of [`THRESHOLDS_PPM`]. Those of 2000 are superseded by those of 2010 and 2021, whose
/// values are from memory; the two of the United States are for work places.
pub const THRESHOLDS: [Threshold; 9] = [
    threshold("WHO 2021, 4 mg/m³", 24 * 60),
    threshold("WHO Europe 2000, 10 mg/m³", 8 * 60),
    threshold("WHO Europe 2000, 30 mg/m³", 60),
    threshold("WHO 2010, 35 mg/m³", 60),
    threshold("NIOSH REL, 35 ppm", 8 * 60),
    threshold("OSHA PEL, 50 ppm", 8 * 60),
    threshold("WHO Europe 2000, 60 mg/m³", 30),
    threshold("WHO Europe 2000, 100 mg/m³", 15),
    threshold("NIOSH ceiling, 200 ppm", 0),
];

/// How many of [`THRESHOLDS_PPM`] a reading reaches.
#[must_use]
pub fn reached(ppm: f64) -> usize {
    THRESHOLDS_PPM.iter().filter(|t| ppm >= **t).count()
}

/// Milligrams a cubic metre of `ppm` of carbon monoxide, at 25 °C and 101 325 Pa, as an ideal gas:
/// [`MG_PER_M3_PER_PPM`].
#[must_use]
pub fn mg_per_m3(ppm: f64) -> f64 {
    ppm * MG_PER_M3_PER_PPM
}

/// Carbon monoxide in ppm after `hours` in a well-mixed space of `volume_m3` that had none, into
/// which `leak_l_per_h` of the pure gas flow, while its air changes `air_per_h` times an hour:
/// c = G/(n·V)·(1 − e^(−n·t)). Mass balance of one mixed volume; air changes above 0.
#[must_use]
pub fn box_ppm(leak_l_per_h: f64, air_per_h: f64, volume_m3: f64, hours: f64) -> f64 {
    // Litres in a cubic metre are thousandths: a thousand of them is a ppm.
    1000.0 * leak_l_per_h / (air_per_h * volume_m3) * (1.0 - libm::exp(-air_per_h * hours))
}

/// The leak, in litres of pure gas an hour, that reaches `ppm` in such a space: [`box_ppm`] solved
/// for it. No finite leak reaches anything in no time.
#[must_use]
pub fn leak_l_per_h(ppm: f64, air_per_h: f64, volume_m3: f64, hours: f64) -> f64 {
    if hours <= 0.0 {
        return f64::INFINITY;
    }
    ppm / box_ppm(1.0, air_per_h, volume_m3, hours)
}

/// Minutes that a test takes at least at `air_per_h` air changes an hour: three of the time constant
/// 1/n, after which a mixed space has 95 % of its steady concentration.
#[must_use]
pub fn test_min(air_per_h: f64) -> f64 {
    180.0 / air_per_h
}
