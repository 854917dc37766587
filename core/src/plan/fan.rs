//! Where a fan and its ducts settle: the flow at which the fan gives what the ducts cost. The
//! fan's curve is told by two to five points, straight between them; beyond them nothing is told.

use super::air;
use super::bound::BoundId;
use super::curve::Curve;
use super::duct::{Air, DuctAir};
use super::duty::{Duty, NO_DUTY, settled};
use super::kind::{Kind, Refusal, Unit};
use super::piece::{Piece, PieceKind, SPREAD};
use super::row::{Row, row};
use super::run::{self, Pieces};
use super::sheets::Checked;

const FLOW: Kind = Kind::new(Unit::M3PerH, 0.0, 3000.0).give_or_take(0.0, 0.05);
const PRESSURE: Kind = Kind::new(Unit::Pa, 0.0, 5000.0).give_or_take(0.0, 0.05);

row! {
    /// The air as in [`DuctAir`], then the fan: points by rising flow and falling pressure.
    FanAir {
        /// Volume at which `other_loss_pa` is told.
        flow_m3_per_h: Kind::new(Unit::M3PerH, 5.0, 2000.0).give_or_take(0.0, 0.1),
        /// Heat that goes into the air.
        power_w: Kind::new(Unit::W, 0.0, 30_000.0).give_or_take(0.0, 0.1),
        /// Air that the heater draws in.
        inlet_celsius: Kind::new(Unit::Celsius, -40.0, 60.0).give_or_take(2.0, 0.0),
        /// Height above the sea; the half-width is the weather's.
        altitude_m: Kind::new(Unit::M, -430.0, 6000.0).give_or_take(250.0, 0.0),
        /// What else the air must pass: grows with the square of the flow.
        other_loss_pa: Kind::new(Unit::Pa, 0.0, 2000.0).give_or_take(0.0, 0.3).or_none(),
        /// Place of the true loss within the spread of all fittings: 0, by definition.
        fittings_spread: SPREAD,
        /// The same for all flexible ducts.
        flexible_spread: SPREAD,
        /// Density at which the curve was measured; 1.2 kg/m³ is usual. Pressure goes with it.
        curve_density_kg_per_m3: Kind::new(Unit::KgPerM3, 0.5, 2.0),
        /// First point.
        flow_1_m3_per_h: FLOW,
        /// First point.
        pressure_1_pa: PRESSURE,
        /// Second point.
        flow_2_m3_per_h: FLOW,
        /// Second point.
        pressure_2_pa: PRESSURE,
        /// Third point.
        flow_3_m3_per_h: FLOW.or_none(),
        /// Third point.
        pressure_3_pa: PRESSURE.or_none(),
        /// Fourth point.
        flow_4_m3_per_h: FLOW.or_none(),
        /// Fourth point.
        pressure_4_pa: PRESSURE.or_none(),
        /// Fifth point.
        flow_5_m3_per_h: FLOW.or_none(),
        /// Fifth point.
        pressure_5_pa: PRESSURE.or_none(),
    }
}

/// Place of the curve's density; the points follow.
const DENSITY: usize = 7;

row! {
    /// Where they settle; none where the curve's points don't reach that far.
    FanGiven {
        /// Volume that the heater draws in, layout A.
        flow_a_m3_per_h: Kind::result(Unit::M3PerH),
        /// What the ducts cost then.
        loss_a_pa: Kind::result(Unit::Pa),
        /// Heated air.
        outlet_air_a_celsius: Kind::result(Unit::Celsius),
        /// The power of the flow with which the loss goes, near there.
        power_a: Kind::result(Unit::Ratio),
        /// The same for layout B.
        flow_b_m3_per_h: Kind::result(Unit::M3PerH),
        /// Loss.
        loss_b_pa: Kind::result(Unit::Pa),
        /// Heated air.
        outlet_air_b_celsius: Kind::result(Unit::Celsius),
        /// Power.
        power_b: Kind::result(Unit::Ratio),
        /// Flow of B less that of A.
        flow_difference_m3_per_h: Kind::result(Unit::M3PerH),
    }
}

row! {
    /// What a piece costs where fan and ducts settle; of its uncertainty, only what the piece itself
    /// adds is exact.
    PieceAtDuty {
        /// In layout A.
        loss_a_pa: Kind::result(Unit::Pa),
        /// In layout B.
        loss_b_pa: Kind::result(Unit::Pa),
    }
}

/// Flow against what the heater needs, temperature against what it may have.
pub const CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::AirFlow),
    Checked::new(2, BoundId::OutletAir),
    Checked::new(4, BoundId::AirFlow),
    Checked::new(6, BoundId::OutletAir),
];

impl FanGiven {
    fn of(a: &Duty, b: &Duty) -> Self {
        Self {
            flow_a_m3_per_h: a.flow_m3_per_h,
            loss_a_pa: a.loss_pa,
            outlet_air_a_celsius: a.outlet_celsius,
            power_a: a.power,
            flow_b_m3_per_h: b.flow_m3_per_h,
            loss_b_pa: b.loss_pa,
            outlet_air_b_celsius: b.outlet_celsius,
            power_b: b.power,
            flow_difference_m3_per_h: b.flow_m3_per_h - a.flow_m3_per_h,
        }
    }

    fn a(&self) -> Duty {
        Duty {
            flow_m3_per_h: self.flow_a_m3_per_h,
            loss_pa: self.loss_a_pa,
            outlet_celsius: self.outlet_air_a_celsius,
            power: self.power_a,
        }
    }

    fn b(&self) -> Duty {
        Duty {
            flow_m3_per_h: self.flow_b_m3_per_h,
            loss_pa: self.loss_b_pa,
            outlet_celsius: self.outlet_air_b_celsius,
            power: self.power_b,
        }
    }
}

/// Results of the pieces among all results.
fn rows(to: &mut [f64]) -> core::slice::ChunksExactMut<'_, f64> {
    let rows = to.get_mut(FanGiven::KINDS.len()..).unwrap_or_default();
    rows.chunks_exact_mut(PieceAtDuty::KINDS.len())
}

fn pieces(x: &[f64]) -> Pieces<'_> {
    Pieces::after(x, FanAir::KINDS.len())
}

/// The curve at the density that the fan draws in.
fn curve(x: &[f64], told: &DuctAir) -> Result<Curve, Refusal> {
    let density = air::density_kg_per_m3(told.inlet_celsius, air::pressure_pa(told.altitude_m));
    let numbers = x.get(DENSITY..FanAir::KINDS.len()).unwrap_or_default();
    let (at, points) = numbers.split_first().unwrap_or((&f64::NAN, &[]));
    Curve::new(points, density / at)
        .map_err(|(place, problem)| Refusal::at(DENSITY + 1 + place, problem))
}

/// Fan and ducts, see [`FanAir`]; rows are pieces as in [`super::duct`].
///
/// # Errors
/// A curve that does not fall, and what [`super::duct::ducts`] refuses.
pub fn fan_duty(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let told = DuctAir::read(x);
    let curve = curve(x, &told)?;
    let pieces = pieces(x);
    pieces.follow(run::A)?;
    pieces.follow(run::B)?;
    let mut of = |layout: f64, which: usize| {
        let mut tell = |place: usize, loss: f64| {
            if let Some(to) = rows(to).nth(place).and_then(|row| row.get_mut(which)) {
                *to = loss;
            }
        };
        let duty = settled(pieces, layout, &told, &curve, &mut tell)?;
        if duty.flow_m3_per_h.is_nan() {
            // What was tried on the way is no result.
            (0..pieces.each().count()).for_each(|place| tell(place, f64::NAN));
        }
        Ok(duty)
    };
    let (a, b) = (of(run::A, 0)?, of(run::B, 1)?);
    FanGiven::of(&a, &b).write(to);
    Ok(())
}

/// [`fan_duty`] where one number was moved: a piece's own number, or one of the curve, changes what
/// is lost or given where they settled, and the power found there leads to where they settle now.
///
/// # Errors
/// As [`fan_duty`].
pub fn fan_duty_moved(x: &[f64], place: usize, to: &mut [f64]) -> Result<(), Refusal> {
    let told = DuctAir::read(x);
    let pieces = pieces(x);
    let moved = pieces.of_number(place);
    let alone = moved.is_some_and(|(_, piece)| piece.kind() != PieceKind::Branch);
    if place < DENSITY || (moved.is_some() && !alone) {
        return fan_duty(x, to);
    }
    let curve = curve(x, &told)?;
    let was = FanGiven::read(to);
    let mut again = |layout: f64, which: usize, was: Duty| {
        let loss = was.loss_pa + more_pa(pieces, layout, which, moved, &told, &was, to)?;
        let Some(flow) = curve.meets(loss, was.flow_m3_per_h, was.power) else {
            return Ok(NO_DUTY);
        };
        let grown = libm::exp(was.power * libm::log(flow / was.flow_m3_per_h));
        for of_piece in rows(to).filter_map(|row| row.get_mut(which)) {
            *of_piece *= grown;
        }
        Ok(Duty::at(&told, flow, loss * grown, was.power))
    };
    let (a, b) = (again(run::A, 0, was.a())?, again(run::B, 1, was.b())?);
    FanGiven::of(&a, &b).write(to);
    Ok(())
}

/// What a moved piece costs more than it did where the layout had settled.
fn more_pa(
    pieces: Pieces,
    layout: f64,
    which: usize,
    moved: Option<(usize, Piece)>,
    told: &DuctAir,
    was: &Duty,
    to: &mut [f64],
) -> Result<f64, Refusal> {
    let air = Air::drawn(told, was.flow_m3_per_h);
    let Some(((place, piece), air)) = moved.zip(air) else {
        return Ok(0.0);
    };
    let cost = pieces.cost(layout, place, &piece, told, &air)?;
    let row = rows(to).nth(place);
    let loss = cost.zip(row.and_then(|row| row.get_mut(which)));
    Ok(loss.map_or(0.0, |(cost, old)| {
        let more = cost.loss_pa - *old;
        *old = cost.loss_pa;
        more
    }))
}
