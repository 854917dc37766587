//! What a piece costs: its share K of the dynamic pressure, and how far off that may be. Sources
//! differ by 20 to 40 %, and most were measured on wider pipes and faster flows than an air heater
//! has: outside what was measured, a piece's own spread grows by half.

use super::fitting;
use super::friction::{Friction, darcy};
use super::piece::{Piece, PieceKind, field};
use crate::plan::kind::Problem;

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
        let known = self.bore_mm >= published.bore_mm.0
            && self.bore_mm <= published.bore_mm.1
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
        let most_deg = match kind {
            Mitre | Branch => 135.0,
            Bend => 180.0,
            _ => f64::INFINITY,
        };
        Err(
            if matches!(kind, Straight | Flexible) && self.length_m.is_nan() {
                (field::LENGTH, Problem::Missing)
            } else if (bend || kind == Branch) && self.angle_deg.is_nan() {
                (field::ANGLE, Problem::Missing)
            } else if curved && self.radius_ratio.is_nan() {
                (field::RADIUS, Problem::Missing)
            } else if kind == Reducer && self.second_bore_mm.is_nan() {
                (field::SECOND_BORE, Problem::Missing)
            } else if kind == Branch && self.share.is_nan() {
                (field::SHARE, Problem::Missing)
            } else if bend && self.angle_deg <= 0.0 {
                (field::ANGLE, Problem::Contradiction)
            } else if self.angle_deg > most_deg {
                (field::ANGLE, Problem::BeyondFormula)
            } else if kind == Flexible && self.share > 0.5 {
                (field::SHARE, Problem::BeyondFormula)
            } else if matches!(kind, OpenEnd | Branch) && self.share < CLOSED {
                (field::SHARE, Problem::Contradiction)
            } else if kind == Reducer && (self.bore_mm - self.second_bore_mm).abs() < 1.0 {
                (field::SECOND_BORE, Problem::Contradiction)
            } else {
                return Ok(());
            },
        )
    }

    /// K and half-widths, before they are widened for what was not measured.
    fn made(&self, kind: PieceKind, friction: Friction) -> Coefficient {
        let f = friction.factor;
        let along = match kind {
            PieceKind::Straight | PieceKind::Flexible => self.length_m / (0.001 * self.bore_mm),
            PieceKind::Bend => fitting::arc_bores(self.angle_deg, self.radius_ratio),
            _ => 0.0,
        };
        let tight = f * along;
        let mut extra = 0.0;
        // K of what is no pipe; what the sources were compared by; the dynamic pressure of that.
        let (k, compared, of) = match kind {
            PieceKind::Straight => (0.0, 0.0, 0.0),
            PieceKind::Flexible => {
                extra = tight * (fitting::slack_factor(or(self.share, 0.0), self.bore_mm) - 1.0);
                let bend = self.flexible_bends(f);
                (bend, bend, if self.turns() { 1.0 } else { 0.0 })
            }
            PieceKind::Bend => {
                let k = fitting::bend(self.angle_deg, self.radius_ratio, f);
                (k, k + tight, 1.0)
            }
            PieceKind::Mitre => whole(fitting::mitre(self.angle_deg)),
            PieceKind::OpenEnd => {
                let free = or(self.share, 1.0);
                let (k, plain) = if self.is_warm() {
                    (fitting::exit(free), 1.0)
                } else {
                    (fitting::entrance(free), 0.5)
                };
                (k, k - plain, 1.0)
            }
            PieceKind::Reducer => {
                let (k, here) = self.reducer(f);
                (k * here, k * here, here)
            }
            PieceKind::Branch => whole(self.branch()),
        };
        let published = kind.published();
        Coefficient {
            k: tight + extra + k,
            fittings_half: published.share * compared + published.more * of,
            flexible_half: 0.4 * extra,
            own_half: friction.half * along,
        }
    }

    /// K of a flexible duct's bends; more than half a turn is several, one after the other.
    fn flexible_bends(&self, friction: f64) -> f64 {
        if !self.turns() {
            return 0.0;
        }
        let turns = libm::ceil(self.angle_deg / 180.0);
        turns * fitting::bend(self.angle_deg / turns, self.radius_ratio, friction)
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

/// All of K compared, in the dynamic pressure where the flow enters.
fn whole(k: f64) -> (f64, f64, f64) {
    (k, k, 1.0)
}
