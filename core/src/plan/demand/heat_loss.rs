//! What a heated space loses by the hour in steady cold: through its surfaces and by the air that is
//! changed. Sun, people, and heat kept in walls are left out; so is the water that damp air carries
//! off.
//!
//! Where ribs are not told, a surface loses at least so much: the total then is a lower end, and no
//! heater is proven to be enough by it.

use super::AIR;
use super::surface::{Surface, Within};
use crate::plan::air;
use crate::plan::form::Declared;
use crate::plan::kind::{Kind, Problem, Refusal, Unit};
use crate::plan::row::{Row, row};

const SPREAD: Kind = Kind::new(Unit::Ratio, -1.0, 1.0).give_or_take(1.0, 0.0);

row! {
    /// The space and the cold round it.
    HeatLoss {
        /// Wanted inside.
        inside_celsius: AIR,
        /// Coldest air outside that counts.
        outside_celsius: AIR,
        /// Air inside.
        volume_m3: Kind::new(Unit::M3, 0.1, 1000.0).give_or_take(0.0, 0.05),
        /// How often in an hour all of it is changed; hardly ever known better than to a half.
        changes_per_h: Kind::new(Unit::PerH, 0.0, 50.0).give_or_take(0.0, 0.5),
        /// Height above the sea; the half-width is the weather's.
        altitude_m: Kind::new(Unit::M, -430.0, 6000.0).give_or_take(250.0, 0.0),
        /// Where the film of air inside lies within what it can be.
        inside_film_spread: SPREAD,
        /// The same of the film on the other side.
        outside_film_spread: SPREAD,
        /// Where ribs lie between the least and the most that they can bridge.
        bridge_spread: SPREAD,
    }
}

row! {
    /// What it loses.
    HeatLossGiven {
        /// Through the surfaces.
        surfaces_w: Kind::result(Unit::W),
        /// By the air that is changed.
        air_w: Kind::result(Unit::W),
        /// Together, where every surface is told with its ribs.
        loss_w: Kind::result(Unit::W),
        /// Together, where not: it loses at least so much.
        at_least_w: Kind::result(Unit::W),
        /// Surfaces that can lose more than is told.
        open_surfaces: Kind::result(Unit::Count),
    }
}

row! {
    /// What one surface loses.
    SurfaceGiven {
        /// U value.
        u_w_per_m2_k: Kind::result(Unit::WPerM2K),
        /// Heat through all of it.
        through_w: Kind::result(Unit::W),
        /// 1 where it can lose more than is told.
        open: Kind::result(Unit::Count),
    }
}

/// The sheet.
pub const SHEET: Declared = Declared::new::<HeatLoss, HeatLossGiven>("heat_loss", heat_loss)
    .rows::<Surface>()
    .row_results::<SurfaceGiven>();

/// Places in [`HeatLoss`] and [`Surface`] of what is refused.
const OUTSIDE: usize = 1;
const OTHER: usize = 11;

/// Heat in W that goes out with `changes_per_h` times `volume_m3` of air of `density_kg_per_m3`,
/// each kilogram of which was warmed by `j_per_kg`: Φ = n·V·ρ·Δh/3600, the balance of a steady flow.
#[must_use]
pub fn air_loss_w(
    volume_m3: f64,
    changes_per_h: f64,
    density_kg_per_m3: f64,
    j_per_kg: f64,
) -> f64 {
    volume_m3 * changes_per_h / 3600.0 * density_kg_per_m3 * j_per_kg
}

/// Heat lost by the hour in W, see [`HeatLoss`]: Φ = Σ U·A·ΔT + n·V·ρ·Δh/3600 ([`air_loss_w`]), a
/// surface's U by ISO 6946 ([`Surface::through`]). Air goes out with the density of the inside.
///
/// # Errors
/// No surface; one that is refused ([`Surface::through`]); an outside or other side no colder than
/// the inside, which would give heat ([`Problem::Contradiction`]).
pub fn heat_loss(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let (fixed, rows) = x
        .split_at_checked(HeatLoss::KINDS.len())
        .unwrap_or_default();
    let space = HeatLoss::read(fixed);
    if space.outside_celsius >= space.inside_celsius {
        return Err(Refusal::at(OUTSIDE, Problem::Contradiction));
    }
    let within = Within {
        inside_film: space.inside_film_spread,
        outside_film: space.outside_film_spread,
        bridge: space.bridge_spread,
    };
    let (own, given) = to
        .split_at_mut_checked(HeatLossGiven::KINDS.len())
        .unwrap_or_default();
    let told = rows.as_chunks::<{ Surface::KINDS.len() }>().0;
    if told.is_empty() {
        return Err(Refusal::at(x.len(), Problem::Missing));
    }
    let each = given.as_chunks_mut::<{ SurfaceGiven::KINDS.len() }>().0;
    let (mut surfaces_w, mut open_surfaces) = (0.0, 0.0);
    for (i, (row, to)) in told.iter().zip(each).enumerate() {
        let at = |place| HeatLoss::KINDS.len() + i * Surface::KINDS.len() + place;
        let surface = Surface::read(row);
        let through = surface.through(&within);
        let through = through.map_err(|r| Refusal::at(at(r.place), r.problem))?;
        if surface.other_celsius > space.inside_celsius {
            return Err(Refusal::at(at(OTHER), Problem::Contradiction));
        }
        let behind = if surface.other_celsius.is_nan() {
            space.outside_celsius
        } else {
            surface.other_celsius
        };
        let through_w = surface.area_m2 * through.u_w_per_m2_k * (space.inside_celsius - behind);
        let open = f64::from(u8::from(through.is_least));
        surfaces_w += through_w;
        open_surfaces += open;
        SurfaceGiven {
            u_w_per_m2_k: through.u_w_per_m2_k,
            through_w,
            open,
        }
        .write(to);
    }
    space.total(surfaces_w, open_surfaces).write(own);
    Ok(())
}

impl HeatLoss {
    fn total(&self, surfaces_w: f64, open_surfaces: f64) -> HeatLossGiven {
        let pressure = air::pressure_pa(self.altitude_m);
        let density = air::density_kg_per_m3(self.inside_celsius, pressure);
        let heat = air::heat_between_j_per_kg(self.outside_celsius, self.inside_celsius);
        let air_w = air_loss_w(self.volume_m3, self.changes_per_h, density, heat);
        let whole = open_surfaces == 0.0;
        let total_w = surfaces_w + air_w;
        HeatLossGiven {
            surfaces_w,
            air_w,
            loss_w: if whole { total_w } else { f64::NAN },
            at_least_w: if whole { f64::NAN } else { total_w },
            open_surfaces,
        }
    }
}
