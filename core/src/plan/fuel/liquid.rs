//! Diesel and petrol: what of them matters in a line and a tank, by temperature.

/// A property known to within a span: anything from `middle − half` to `middle + half`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Span {
    /// Middle of the span.
    pub middle: f64,
    /// Half of its width.
    pub half: f64,
}

impl Span {
    const fn of(low: f64, high: f64) -> Self {
        Self {
            middle: 0.5 * (low + high),
            half: 0.5 * (high - low),
        }
    }

    /// The value at `spread`: −1 the lower end, 0 the middle, 1 the upper end.
    #[must_use]
    pub fn at(&self, spread: f64) -> f64 {
        self.middle + self.half * spread
    }
}

/// The fuel asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum Fuel {
    /// Diesel, EN 590, temperate grades. Winter grades are thinner and lighter: the loss comes out
    /// too high rather than too low.
    Diesel,
    /// Petrol, EN 228.
    Petrol,
}

/// What a fuel of one name can be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Properties {
    /// Density at 15 °C, kg/m³: EN 590, EN 228 (read in secondary sources).
    pub density_15_kg_per_m3: Span,
    /// What the density loses by a kelvin, as a share of the one at 15 °C: tables of ASTM D1250
    /// (values from memory).
    pub expansion_per_k: f64,
    /// Kinematic viscosity at 40 °C, mm²/s: EN 590; for petrol that of its hydrocarbons
    /// (`CoolProp`).
    pub viscosity_40_mm2_per_s: Span,
    /// How steeply it falls with temperature: B of [`viscosity_mm2_per_s`]. From hydrocarbons by
    /// `CoolProp`, heavier cuts from memory.
    pub steepness: Span,
    /// Surface tension against air at about 20 °C, N/m (values from memory).
    pub tension_n_per_m: Span,
    /// Net energy, kWh/L: UK conversion factors 2025; Directive 2009/28/EC annex III for petrol.
    pub energy_kwh_per_l: Span,
    /// Whether wax comes out of it in the cold.
    pub has_cloud_point: bool,
}

/// EN 590 at 15 °C and 40 °C (read in secondary sources). Expansion: ASTM D1250's tables about
/// 830 kg/m³ (value from memory). Steepness: n-dodecane 3.9 (`CoolProp`), heavier cuts 3.5 to 4.2
/// (values from memory). Tension: 27 mN/m (value from memory). Energy: UK conversion factors 2025,
/// 9.905 kWh/L; 840 kg/m³ of 42.6 MJ/kg 9.94.
const DIESEL: Properties = Properties {
    density_15_kg_per_m3: Span::of(820.0, 845.0),
    expansion_per_k: 8.4e-4,
    viscosity_40_mm2_per_s: Span::of(2.0, 4.5),
    steepness: Span::of(3.5, 4.3),
    tension_n_per_m: Span::of(0.025, 0.029),
    energy_kwh_per_l: Span::of(9.7, 10.1),
    has_cloud_point: true,
};

/// EN 228 at 15 °C; expansion as above, about 745 kg/m³; tension 20 to 23 mN/m; energy 32 MJ/L
/// (Directive 2009/28/EC annex III) give or take 4 % (values from memory). Viscosity and steepness
/// span n-heptane, n-octane and toluene (`CoolProp`: 0.50 to 0.63 mm²/s, 4.4 to 5.6).
const PETROL: Properties = Properties {
    density_15_kg_per_m3: Span::of(720.0, 775.0),
    expansion_per_k: 1.2e-3,
    viscosity_40_mm2_per_s: Span::of(0.45, 0.65),
    steepness: Span::of(4.3, 5.7),
    tension_n_per_m: Span::of(0.020, 0.023),
    energy_kwh_per_l: Span::of(8.5, 9.2),
    has_cloud_point: false,
};

impl Fuel {
    /// All of them, in the order of their codes.
    pub const ALL: [Self; 2] = [Self::Diesel, Self::Petrol];

    /// The fuel of a code.
    #[must_use]
    pub fn of(code: f64) -> Self {
        if code == f64::from(Self::Petrol as u8) {
            Self::Petrol
        } else {
            Self::Diesel
        }
    }

    /// What it can be.
    #[must_use]
    pub fn properties(self) -> &'static Properties {
        match self {
            Self::Diesel => &DIESEL,
            Self::Petrol => &PETROL,
        }
    }
}

/// Density in kg/m³ at a temperature, from the one at 15 °C: ρ₁₅·(1 − α·(t − 15)), with α of
/// [`Properties::expansion_per_k`]; good to 0.1 % from −40 to 60 °C.
#[must_use]
pub fn density_kg_per_m3(fuel: Fuel, density_15_kg_per_m3: f64, celsius: f64) -> f64 {
    density_15_kg_per_m3 * (1.0 - fuel.properties().expansion_per_k * (celsius - 15.0))
}

/// Temperature of the point that fuels are sold by, °C.
pub const VISCOSITY_CELSIUS: f64 = 40.0;
/// 0 °C in kelvin, exact.
const ZERO_K: f64 = 273.15;
/// Added to a viscosity in mm²/s before its logarithms are taken (Walther; ASTM D341).
const WALTHER: f64 = 0.7;

/// Kinematic viscosity in mm²/s at a temperature, from the one at 40 °C and a steepness:
/// log log (ν + 0.7) = A − B log T, T in kelvin (Walther; ASTM D341, from memory). Made for liquid
/// petroleum products above their cloud point; ν from 0.4 mm²/s.
#[must_use]
pub fn viscosity_mm2_per_s(viscosity_40_mm2_per_s: f64, steepness: f64, celsius: f64) -> f64 {
    let colder = libm::log((VISCOSITY_CELSIUS + ZERO_K) / (celsius + ZERO_K));
    let double = twice_log(viscosity_40_mm2_per_s) + steepness * colder;
    libm::exp(libm::exp(double)) - WALTHER
}

/// The steepness that leads from one viscosity, at 40 °C, through another one at `celsius`:
/// [`viscosity_mm2_per_s`] solved for it, n = (ln ln(ν + 0.7) − ln ln(ν₄₀ + 0.7))/ln(T₄₀/T),
/// kelvin.
#[must_use]
pub fn steepness(viscosity_40_mm2_per_s: f64, other_mm2_per_s: f64, celsius: f64) -> f64 {
    let colder = libm::log((VISCOSITY_CELSIUS + ZERO_K) / (celsius + ZERO_K));
    (twice_log(other_mm2_per_s) - twice_log(viscosity_40_mm2_per_s)) / colder
}

fn twice_log(viscosity_mm2_per_s: f64) -> f64 {
    libm::log(libm::log(viscosity_mm2_per_s + WALTHER))
}
