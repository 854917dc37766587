//! What a piece costs: its share K of the dynamic pressure, and how far off that may be. Sources
//! differ by 20 to 40 %, and most were measured on wider pipes and faster flows than an air heater
//! has: outside what was measured, a piece's own spread grows by half.

use super::fitting;
use super::friction::{Friction, darcy};
use super::kind::Problem;
use super::piece::{Piece, PieceKind, field};

/// What a piece costs, of the dynamic pressure where the flow enters it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coefficient {
    /// K.
    pub k: f64,
    /// Half-width that all fittings share, since one source gives them all.
    pub fittings_half: f64,
    /// Half-width that all flexible ducts share.
    pub flexible_half: f64,
    /// Half-width of its own: workmanship, what stands close before it.
    pub own_half: f64,
}

/// What is wrong with a piece: place among its fields, and why.
pub type Wrong = (usize, Problem);

/// Largest relative roughness that the bends' formulas were made for; above, the spread doubles.
const SMOOTH_ENOUGH: f64 = 0.003;

/// Shortest free share of a grille or a branch: less is closed.
const CLOSED: f64 = 0.02;

impl Piece {
    /// What it costs at a Reynolds number, of the flow and the bore where the flow enters.
    ///
    /// # Errors
    /// The field that its kind needs or contradicts.
    pub fn coefficient(&self, reynolds: f64) -> Result<Coefficient, Wrong> {
        self.check()?;
        let kind = self.kind();
        let rough_mm = or(self.roughness_mm, kind.usual_roughness_mm());
        let relative = rough_mm / self.bore_mm;
        let friction = darcy(reynolds, relative);
        let mut made = self.made(kind, friction);
        let published = kind.published();
        let known = (published.bore_mm.0..=published.bore_mm.1).contains(&self.bore_mm)
            && reynolds >= published.reynolds;
        let wider = if known { 1.0 } else { 1.5 };
        let rough_bend = kind == PieceKind::Bend && relative > SMOOTH_ENOUGH;
        let rougher = if rough_bend { 2.0 } else { 1.0 };
        made.own_half += wider * rougher * published.own_share * made.k;
        made.flexible_half *= wider;
        Ok(made)
    }

    /// What its kind needs is there, and fits.
    fn check(&self) -> Result<(), Wrong> {
        use PieceKind::{Bend, Branch, Flexible, Mitre, OpenEnd, Reducer, Straight};
        let kind = self.kind();
        let bend = matches!(kind, Bend | Mitre);
        let curved = kind == Bend || kind == Flexible && self.turns();
        for (needed, place, value) in [
            (
                matches!(kind, Straight | Flexible),
                field::LENGTH,
                self.length_m,
            ),
            (bend || kind == Branch, field::ANGLE, self.angle_deg),
            (curved, field::RADIUS, self.radius_ratio),
            (kind == Reducer, field::SECOND_BORE, self.second_bore_mm),
            (kind == Branch, field::SHARE, self.share),
        ] {
            if needed && value.is_nan() {
                return Err((place, Problem::Missing));
            }
        }
        let most_deg = match kind {
            Mitre | Branch => 135.0,
            Bend => 180.0,
            _ => f64::INFINITY,
        };
        let slack = kind == Flexible && self.share > 0.5;
        let closed = matches!(kind, OpenEnd | Branch) && self.share < CLOSED;
        let level = kind == Reducer && (self.bore_mm - self.second_bore_mm).abs() < 1.0;
        for (wrong, place, problem) in [
            (
                bend && self.angle_deg <= 0.0,
                field::ANGLE,
                Problem::Contradiction,
            ),
            (
                self.angle_deg > most_deg,
                field::ANGLE,
                Problem::BeyondFormula,
            ),
            (slack, field::SHARE, Problem::BeyondFormula),
            (closed, field::SHARE, Problem::Contradiction),
            (level, field::SECOND_BORE, Problem::Contradiction),
        ] {
            if wrong {
                return Err((place, problem));
            }
        }
        Ok(())
    }

    /// K and half-widths, before they are widened for what was not measured.
    fn made(&self, kind: PieceKind, friction: Friction) -> Coefficient {
        let f = friction.factor;
        let bores = self.length_m / (0.001 * self.bore_mm);
        match kind {
            PieceKind::Straight => Coefficient {
                own_half: friction.half * bores,
                ..fitted(f * bores, 0.0, 0.0)
            },
            PieceKind::Flexible => self.flexible(friction, bores),
            // Rennels, Miller, Crane and Ito by fluids 1.3.1, 15 to 180°, r/D 1 to 5, walls up to
            // 0.09 mm, lie within 0.4·K + 0.07 of Rennels.
            PieceKind::Bend => {
                let arc = fitting::arc_bores(self.angle_deg, self.radius_ratio);
                let k = fitting::bend(self.angle_deg, self.radius_ratio, f) + f * arc;
                Coefficient {
                    own_half: friction.half * arc,
                    ..fitted(k, 0.4, 0.07)
                }
            }
            // Rennels, Miller, Crane and Blevins by fluids 1.3.1, 15 to 110°, lie within
            // 0.35·K + 0.28 of Rennels.
            PieceKind::Mitre => fitted(fitting::mitre(self.angle_deg), 0.35, 0.28),
            // With a grille, Blevins' thick one and Idelchik's thin one lie 45 % apart.
            PieceKind::OpenEnd => {
                let free = or(self.share, 1.0);
                if self.is_warm() {
                    fitted(fitting::exit(free), 0.45, 0.1 - 0.45)
                } else {
                    fitted(fitting::entrance(free), 0.45, 0.1 - 0.45 * 0.5)
                }
            }
            // What fluids 1.3.1 has of Rennels, Crane, Idelchik, Miller and Hooper, 50 to 100 mm,
            // lies within 0.3·K + 0.08, of the dynamic pressure at the narrow end.
            PieceKind::Reducer => {
                let (k, here) = self.reducer(f);
                fitted(k * here, 0.3, 0.08 * here)
            }
            // Crane's own factors, 0.55 to 1.3, lie within 0.35·K + 0.2.
            PieceKind::Branch => fitted(self.branch(), 0.35, 0.2),
        }
    }

    fn flexible(&self, friction: Friction, bores: f64) -> Coefficient {
        let tight = friction.factor * bores;
        let extra = tight * (fitting::slack_factor(or(self.share, 0.0), self.bore_mm) - 1.0);
        let mut made = Coefficient {
            k: tight + extra,
            fittings_half: 0.0,
            flexible_half: 0.4 * extra,
            own_half: friction.half * bores,
        };
        if self.turns() {
            // More than half a turn is several bends, one after the other.
            let turns = libm::ceil(self.angle_deg / 180.0);
            let angle = self.angle_deg / turns;
            let bend = turns * fitting::bend(angle, self.radius_ratio, friction.factor);
            made.k += bend;
            made.fittings_half = 0.4 * bend + 0.07;
        }
        made
    }

    /// K of the narrow end, and that end's dynamic pressure over the one where the flow enters.
    fn reducer(&self, friction: f64) -> (f64, f64) {
        let (from, to) = (self.bore_mm, self.second_bore_mm);
        let length_mm = 1000.0 * self.length_m.max(0.0);
        let narrows = from > to;
        let (wide, narrow) = if narrows { (from, to) } else { (to, from) };
        let k = fitting::cone(wide, narrow, length_mm, friction, narrows);
        let ratio = from / narrow;
        (k, ratio * ratio * ratio * ratio)
    }

    /// K of the whole flow's dynamic pressure.
    fn branch(&self) -> f64 {
        let share = self.share;
        if !self.turns() {
            return if self.is_warm() {
                fitting::parting_straight(share)
            } else {
                fitting::joining_straight(1.0 - share)
            };
        }
        let ratio = self.bore_mm / or(self.second_bore_mm, self.bore_mm);
        let speed = share * ratio * ratio;
        if self.is_warm() {
            fitting::parting_off(speed, self.angle_deg)
        } else {
            fitting::joining_aside(share, speed, self.angle_deg)
        }
    }
}

/// What was told, or what it is otherwise.
fn or(told: f64, otherwise: f64) -> f64 {
    if told.is_nan() { otherwise } else { told }
}

/// A fitting of which other methods lie within a share of K and so much more.
fn fitted(k: f64, share: f64, more: f64) -> Coefficient {
    Coefficient {
        k,
        fittings_half: share * k + more,
        flexible_half: 0.0,
        own_half: 0.0,
    }
}
