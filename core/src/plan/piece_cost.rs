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

impl Piece {
    /// What it costs at a Reynolds number, of the flow and the bore where the flow enters.
    ///
    /// # Errors
    /// The field that its kind needs or contradicts.
    pub fn coefficient(&self, reynolds: f64) -> Result<Coefficient, Wrong> {
        let kind = self.kind();
        let rough_mm = if self.roughness_mm.is_nan() {
            kind.usual_roughness_mm()
        } else {
            self.roughness_mm
        };
        let relative = rough_mm / self.bore_mm;
        let friction = || darcy(reynolds, relative);
        let mut made = match kind {
            PieceKind::Straight => self.straight(friction())?,
            PieceKind::Bend => self.bend(friction())?,
            PieceKind::Mitre => self.mitre()?,
            PieceKind::Flexible => self.flexible(friction())?,
            PieceKind::OpenEnd => self.open_end()?,
            PieceKind::Reducer => self.reducer(friction())?,
            PieceKind::Branch => self.branch()?,
        };
        let published = kind.published();
        let known = (published.bore_mm.0..=published.bore_mm.1).contains(&self.bore_mm)
            && reynolds >= published.reynolds;
        let wider = if known { 1.0 } else { 1.5 };
        let rough_bend = kind == PieceKind::Bend && relative > SMOOTH_ENOUGH;
        made.own_half += wider * published.own_share * if rough_bend { 2.0 } else { 1.0 } * made.k;
        made.flexible_half *= wider;
        Ok(made)
    }

    fn straight(&self, friction: Friction) -> Result<Coefficient, Wrong> {
        let bores = need(self.length_m, field::LENGTH)? / (0.001 * self.bore_mm);
        Ok(Coefficient {
            k: friction.factor * bores,
            fittings_half: 0.0,
            flexible_half: 0.0,
            own_half: friction.half * bores,
        })
    }

    /// Half-width: Rennels, Miller, Crane and Ito by fluids 1.3.1, 15 to 180°, r/D 1 to 5, walls up
    /// to 0.09 mm, lie within 0.4·K + 0.07 of Rennels.
    fn bend(&self, friction: Friction) -> Result<Coefficient, Wrong> {
        let angle = self.turn(180.0)?;
        let radius = need(self.radius_ratio, field::RADIUS)?;
        let arc = fitting::arc_bores(angle, radius);
        let k = fitting::bend(angle, radius, friction.factor) + friction.factor * arc;
        Ok(fitted(k, 0.4 * k + 0.07, friction.half * arc))
    }

    /// Half-width: Rennels, Miller, Crane and Blevins by fluids 1.3.1, 15 to 110°, lie within
    /// 0.35·K + 0.28 of Rennels.
    fn mitre(&self) -> Result<Coefficient, Wrong> {
        let k = fitting::mitre(self.turn(135.0)?);
        Ok(fitted(k, 0.35 * k + 0.28, 0.0))
    }

    fn flexible(&self, friction: Friction) -> Result<Coefficient, Wrong> {
        let tight = self.straight(friction)?;
        let share = if self.share.is_nan() { 0.0 } else { self.share };
        if share > 0.5 {
            return Err((field::SHARE, Problem::BeyondFormula));
        }
        let extra = tight.k * (fitting::slack_factor(share, self.bore_mm) - 1.0);
        let mut made = Coefficient {
            k: tight.k + extra,
            flexible_half: 0.4 * extra,
            ..tight
        };
        if self.turns() {
            let radius = need(self.radius_ratio, field::RADIUS)?;
            // More than half a turn is several bends, one after the other.
            let turns = libm::ceil(self.angle_deg / 180.0);
            let bend = turns * fitting::bend(self.angle_deg / turns, radius, friction.factor);
            made.k += bend;
            made.fittings_half = 0.4 * bend + 0.07;
        }
        Ok(made)
    }

    /// Half-width: with a grille, Blevins' thick one and Idelchik's thin one lie 45 % apart.
    fn open_end(&self) -> Result<Coefficient, Wrong> {
        let free = if self.share.is_nan() { 1.0 } else { self.share };
        if free < 0.05 {
            return Err((field::SHARE, Problem::Contradiction));
        }
        let of = if self.is_warm() {
            fitting::exit
        } else {
            fitting::entrance
        };
        let open = of(1.0);
        let k = of(free);
        Ok(fitted(k, 0.1 + 0.45 * (k - open), 0.0))
    }

    /// Half-width: what fluids 1.3.1 has of Rennels, Crane, Idelchik, Miller and Hooper, 50 to
    /// 100 mm, lies within 0.3·K + 0.08, of the dynamic pressure at the narrow end.
    fn reducer(&self, friction: Friction) -> Result<Coefficient, Wrong> {
        let (from, to) = (self.bore_mm, need(self.second_bore_mm, field::SECOND_BORE)?);
        if (from - to).abs() < 1.0 {
            return Err((field::SECOND_BORE, Problem::Contradiction));
        }
        let length_mm = 1000.0 * self.length_m.max(0.0);
        let (k, narrow) = if from > to {
            (fitting::narrowing(from, to, length_mm, friction.factor), to)
        } else {
            (
                fitting::widening(to, from, length_mm, friction.factor),
                from,
            )
        };
        let ratio = from / narrow;
        let here = ratio * ratio * ratio * ratio;
        Ok(fitted(k * here, (0.3 * k + 0.08) * here, 0.0))
    }

    /// Of the whole flow's dynamic pressure. Half-width: Crane's own factors, 0.55 to 1.3, lie
    /// within 0.35·K + 0.2.
    fn branch(&self) -> Result<Coefficient, Wrong> {
        let share = need(self.share, field::SHARE)?;
        if share < 0.02 {
            return Err((field::SHARE, Problem::Contradiction));
        }
        let angle = need(self.angle_deg, field::ANGLE)?;
        if angle > 135.0 {
            return Err((field::ANGLE, Problem::BeyondFormula));
        }
        let k = if self.turns() {
            let (before, after) = self.ends_mm();
            let side = if self.is_warm() { after } else { before };
            let ratio = self.bore_mm / side;
            let speed = share * ratio * ratio;
            if self.is_warm() {
                fitting::parting_off(speed, angle)
            } else {
                fitting::joining_aside(share, speed, angle)
            }
        } else if self.is_warm() {
            fitting::parting_straight(share)
        } else {
            fitting::joining_straight(1.0 - share)
        };
        Ok(fitted(k, 0.35 * k + 0.2, 0.0))
    }

    /// Angle of a bend: some, and no more than the formula is for.
    fn turn(&self, most_deg: f64) -> Result<f64, Wrong> {
        let angle = need(self.angle_deg, field::ANGLE)?;
        if angle <= 0.0 {
            Err((field::ANGLE, Problem::Contradiction))
        } else if angle > most_deg {
            Err((field::ANGLE, Problem::BeyondFormula))
        } else {
            Ok(angle)
        }
    }
}

fn need(value: f64, place: usize) -> Result<f64, Wrong> {
    if value.is_nan() {
        Err((place, Problem::Missing))
    } else {
        Ok(value)
    }
}

fn fitted(k: f64, fittings_half: f64, own_half: f64) -> Coefficient {
    Coefficient {
        k,
        fittings_half,
        flexible_half: 0.0,
        own_half,
    }
}
