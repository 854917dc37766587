//! Conductivities of solid materials, offered and never taken silently. Insulation is not among
//! them: its own label says how well it insulates. A still air gap is none either: it has no
//! conductivity of its own.

/// A material and how well it conducts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Material {
    /// Its name, for a page that has its own words.
    pub name: &'static str,
    /// Conductivity, W/(m·K).
    pub conductivity_w_per_m_k: f64,
}

const fn of(name: &'static str, conductivity_w_per_m_k: f64) -> Material {
    Material {
        name,
        conductivity_w_per_m_k,
    }
}

/// Where the numbers come from.
pub const SOURCE: &str = "EN 12524:2000, since then ISO 10456";

/// Design values of EN 12524:2000, as the library ht 1.2.0 tabulates them; ISO 10456, which took its
/// place, has the same ones (from memory).
pub const MATERIALS: &[Material] = &[
    of("steel", 50.0),
    of("stainless", 17.0),
    of("aluminium", 160.0),
    of("glass", 1.0),
    of("acrylic", 0.2),
    of("plywood_500", 0.13),
    of("plywood_700", 0.17),
    of("timber_500", 0.13),
    of("particleboard_600", 0.14),
    of("polyester", 0.19),
    of("pvc", 0.17),
    of("rubber_floor", 0.17),
    of("carpet", 0.06),
];
