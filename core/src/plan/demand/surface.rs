//! One surface of a heated space: how much heat goes through a square metre of it for each kelvin.
//!
//! ISO 6946: films of air on both sides and layers between them, one after the other. Where ribs
//! bridge the insulation, the standard takes the middle between two ends: heat that keeps to its
//! path (the least that can get through) and faces of one temperature all over (the most). Beyond
//! a ratio of 1.5 between the two, as with bare metal, the standard gives no value, and only the
//! least is known.

use crate::plan::kind::{Kind, Problem, Refusal, Unit};
use crate::plan::row::row;

/// Which way the heat goes through a surface.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum HeatFlow {
    /// Sideways: a wall, a door, a window.
    Sideways,
    /// Upwards: a roof.
    Up,
    /// Downwards: a floor.
    Down,
}

impl HeatFlow {
    /// All of them, in the order of their codes.
    pub const ALL: [Self; 3] = [Self::Sideways, Self::Up, Self::Down];

    /// The direction of a code.
    #[must_use]
    pub fn of(code: f64) -> Self {
        let is = |flow: &Self| code == f64::from(*flow as u8);
        Self::ALL.into_iter().find(is).unwrap_or(Self::Sideways)
    }

    /// Resistance of the film of still air inside, m²·K/W: ISO 6946, table of surface resistances.
    #[must_use]
    pub fn inside_film_m2_k_per_w(self) -> f64 {
        match self {
            Self::Sideways => 0.13,
            Self::Up => 0.10,
            Self::Down => 0.17,
        }
    }
}

/// Resistance of the film of air outside, m²·K/W: ISO 6946, for wind of 4 m/s.
pub const OUTSIDE_FILM: f64 = 0.04;
/// What it can be: 10 to 2 m/s of wind, by 1/(4 + 4·v + 4.6), ISO 6946's annex (from memory).
const OUTSIDE_HALF: f64 = 0.02;
/// Share by which the film inside can differ: air that moves, furniture before a wall. Assumed; for
/// paint, wood and cloth, not for bright foil.
const INSIDE_SHARE: f64 = 0.2;
/// Largest ratio of the most to the least that ISO 6946's method is for (from memory).
pub const LARGEST_RATIO: f64 = 1.5;

const THICKNESS: Kind = Kind::new(Unit::Mm, 0.1, 1000.0)
    .give_or_take(0.0, 0.1)
    .or_none();
const CONDUCTIVITY: Kind = Kind::new(Unit::WPerMK, 0.005, 500.0)
    .give_or_take(0.0, 0.1)
    .or_none();
const U: Kind = Kind::new(Unit::WPerM2K, 0.05, 20.0)
    .give_or_take(0.0, 0.15)
    .or_none();

row! {
    /// A surface: layers from inside outwards, or a U value for all of it.
    Surface {
        /// Its area, inside.
        area_m2: Kind::new(Unit::M2, 0.01, 500.0).give_or_take(0.0, 0.05),
        /// Which way the heat goes, by its code.
        flow: Kind::choice(HeatFlow::ALL.len()),
        /// First layer.
        thickness_1_mm: THICKNESS,
        /// First layer.
        conductivity_1_w_per_m_k: CONDUCTIVITY,
        /// Second layer.
        thickness_2_mm: THICKNESS,
        /// Second layer.
        conductivity_2_w_per_m_k: CONDUCTIVITY,
        /// Third layer.
        thickness_3_mm: THICKNESS,
        /// Third layer.
        conductivity_3_w_per_m_k: CONDUCTIVITY,
        /// Known U value of all of it, frame and ribs included, in place of layers.
        u_w_per_m2_k: U,
        /// Share of the area that ribs bridge; 0: none does; empty: not told.
        bridged_share: Kind::new(Unit::Ratio, 0.0, 0.9).give_or_take(0.0, 0.2).or_none(),
        /// U value of that part by itself, films included.
        bridged_u_w_per_m2_k: U,
        /// Temperature behind it, where that is not the outside.
        other_celsius: Kind::new(Unit::Celsius, -50.0, 60.0).give_or_take(2.0, 0.0).or_none(),
    }
}

/// Places in [`Surface`] of what is refused.
mod place {
    pub const LAYERS: usize = 2;
    pub const U: usize = 8;
    pub const BRIDGED_U: usize = 10;
}

/// Where the truth lies within what can be, each from −1 to 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Within {
    /// Film inside: 1 the most that it can resist.
    pub inside_film: f64,
    /// Film on the other side.
    pub outside_film: f64,
    /// Ribs: 1 the most that they can bridge.
    pub bridge: f64,
}

/// What gets through a surface.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Through {
    /// U value, W/(m²·K).
    pub u_w_per_m2_k: f64,
    /// Whether more can get through than that: ribs not told, or more than ISO 6946 is for.
    pub is_least: bool,
}

/// Resistance of a layer, m²·K/W: thickness over conductivity, R = d/λ (ISO 6946).
#[must_use]
pub fn layer_m2_k_per_w(thickness_mm: f64, conductivity_w_per_m_k: f64) -> f64 {
    thickness_mm / 1000.0 / conductivity_w_per_m_k
}

/// The least and the most resistance of a surface, m²·K/W, that is bridged on `share` of it (ISO
/// 6946, lower and upper limit). `films` are both films of air; both U values take them in.
#[must_use]
pub fn bridged_m2_k_per_w(films: f64, u: f64, bridged_u: f64, share: f64) -> (f64, f64) {
    let most = 1.0 / ((1.0 - share) * u + share * bridged_u);
    let body = |u: f64| (1.0 / u - films).max(0.0);
    let least = films + 1.0 / ((1.0 - share) / body(u) + share / body(bridged_u));
    // A part that resists less than its films do is told too well; the other end is then no less.
    (least.min(most), most)
}

impl Surface {
    /// What gets through: U in W/(m²·K), 1/(R of both films + Σ d/λ), or as told; where ribs bridge
    /// it, 1 over the middle between ISO 6946's upper and lower resistance, which is that
    /// standard's own (6.7.2; the clause from memory).
    ///
    /// # Errors
    /// A layer or a bridged part told in half, nothing told at all ([`Problem::Missing`]); layers and
    /// a U value both, or no thickness left ([`Problem::Contradiction`]).
    pub fn through(&self, within: &Within) -> Result<Through, Refusal> {
        let films = self.films_m2_k_per_w(within);
        let layers = self.layers_m2_k_per_w()?;
        let known = !self.u_w_per_m2_k.is_nan();
        let u = match (layers, known) {
            (Some(_), true) => return Err(Refusal::at(place::U, Problem::Contradiction)),
            (None, false) => return Err(Refusal::at(place::LAYERS, Problem::Missing)),
            (None, true) => self.u_w_per_m2_k,
            (Some(layers), false) => 1.0 / (films + layers),
        };
        if self.bridged_share.is_nan() {
            let is_least = !known;
            return Ok(Through {
                u_w_per_m2_k: u,
                is_least,
            });
        }
        if self.bridged_share == 0.0 {
            return Ok(Through {
                u_w_per_m2_k: u,
                is_least: false,
            });
        }
        if self.bridged_u_w_per_m2_k.is_nan() {
            return Err(Refusal::at(place::BRIDGED_U, Problem::Missing));
        }
        let (least, most) =
            bridged_m2_k_per_w(films, u, self.bridged_u_w_per_m2_k, self.bridged_share);
        let is_least = most > LARGEST_RATIO * least;
        let resists = if is_least {
            most
        } else {
            0.5 * (most + least - within.bridge * (most - least))
        };
        Ok(Through {
            u_w_per_m2_k: 1.0 / resists,
            is_least,
        })
    }

    /// Both films of air. Behind it, where that is not the outside, anything from wind to the still
    /// air of a room.
    fn films_m2_k_per_w(&self, within: &Within) -> f64 {
        let still = HeatFlow::of(self.flow).inside_film_m2_k_per_w();
        let (other, half) = if self.other_celsius.is_nan() {
            (OUTSIDE_FILM, OUTSIDE_HALF)
        } else {
            (0.5 * (still + OUTSIDE_FILM), 0.5 * (still - OUTSIDE_FILM))
        };
        still * (1.0 + INSIDE_SHARE * within.inside_film) + other + half * within.outside_film
    }

    /// All layers, where there are any.
    fn layers_m2_k_per_w(&self) -> Result<Option<f64>, Refusal> {
        let layers = [
            (self.thickness_1_mm, self.conductivity_1_w_per_m_k),
            (self.thickness_2_mm, self.conductivity_2_w_per_m_k),
            (self.thickness_3_mm, self.conductivity_3_w_per_m_k),
        ];
        let mut sum = None;
        for (i, (thickness_mm, conductivity)) in layers.into_iter().enumerate() {
            let at = place::LAYERS + 2 * i;
            match (thickness_mm.is_nan(), conductivity.is_nan()) {
                (true, true) => continue,
                (true, false) => return Err(Refusal::at(at, Problem::Missing)),
                (false, true) => return Err(Refusal::at(at + 1, Problem::Missing)),
                (false, false) => {}
            }
            // Told so poorly that nothing may be left of it.
            if thickness_mm <= 0.0 || conductivity <= 0.0 {
                return Err(Refusal::at(at, Problem::Contradiction));
            }
            sum = Some(sum.unwrap_or(0.0) + layer_m2_k_per_w(thickness_mm, conductivity));
        }
        Ok(sum)
    }
}
