//! What the cable costs between battery and heater, out and back, with its joints; and what each
//! other conductor of the lists would.

use super::conductor::{self, SPREAD};
use super::{AMPERES, VOLTS, needed};
use crate::plan::bound::BoundId;
use crate::plan::form::{Checked, Declared};
use crate::plan::kind::{Kind, Problem, Refusal, Unit};
use crate::plan::row::{Row, row};

/// A length along the cable's way: 50 mm and 2 % (assumed).
const LENGTH: Kind = Kind::new(Unit::M, 0.05, 50.0).give_or_take(0.05, 0.02);
/// A resistance by its drop under current, or from paper: 1 mΩ and half of it (assumed).
const MOHM: Kind = Kind::new(Unit::Mohm, 0.0, 1000.0).give_or_take(1.0, 0.5);

row! {
    /// The way out and back. What was not measured stays empty.
    Cable {
        /// From the battery's plus to the heater.
        out_m: LENGTH,
        /// A conductor or the body, by its code.
        back_by: Kind::choice(2),
        /// From the heater to the battery's minus; where the body is the way back, the leads at
        /// both of its ends.
        back_m: LENGTH,
        /// The body between the leads; only where it is the way back.
        body_mohm: MOHM.or_none(),
        /// Size, by its place in both lists.
        conductor: Kind::choice(conductor::COUNT),
        /// What a metre resists at 20 °C, from the cable's own paper; empty: from the list.
        paper_ohm_per_km: Kind::new(Unit::OhmPerKm, 0.1, 60.0).give_or_take(0.0, 0.02).or_none(),
        /// How warm the conductor is where it is warmest.
        conductor_celsius: Kind::new(Unit::Celsius, -40.0, 150.0).give_or_take(10.0, 0.0),
        /// Joints, fuse with its holder, switch: all together.
        joints_mohm: MOHM,
        /// At the battery's posts while the start current flows.
        start_supply_v: VOLTS.or_none(),
        /// While the heater starts.
        start_a: AMPERES.or_none(),
        /// At the battery's posts while the heater runs.
        running_supply_v: VOLTS.or_none(),
        /// While the heater runs, at its highest.
        running_a: AMPERES.or_none(),
        /// Where the conductor lies within what its name can be.
        conductor_spread: Kind::new(Unit::Ratio, -1.0, 1.0).give_or_take(1.0, 0.0),
    }
}

row! {
    /// What it costs.
    CableGiven {
        /// All that the current passes, from post to post.
        loop_mohm: Kind::result(Unit::Mohm),
        /// Lost on the way out while it starts.
        start_out_v: Kind::result(Unit::V),
        /// Lost in joints, holder and switch.
        start_joints_v: Kind::result(Unit::V),
        /// Lost on the way back.
        start_back_v: Kind::result(Unit::V),
        /// All that is lost while it starts.
        start_drop_v: Kind::result(Unit::V),
        /// The same, of the battery's voltage then.
        start_drop_percent: Kind::result(Unit::Percent),
        /// All that is lost while it runs.
        running_drop_v: Kind::result(Unit::V),
        /// The same, of the battery's voltage then.
        running_drop_percent: Kind::result(Unit::Percent),
        /// At the heater while it starts.
        heater_start_v: Kind::result(Unit::V),
        /// At the heater while it runs.
        heater_running_v: Kind::result(Unit::V),
    }
}

row! {
    /// One of the lists' conductors, in place of the one that is there.
    Size {
        /// Its place in both lists.
        size: Kind::choice(conductor::COUNT),
    }
}

row! {
    /// What it would cost.
    SizeGiven {
        /// While it starts.
        size_start_drop_v: Kind::result(Unit::V),
        /// While it runs.
        size_running_drop_v: Kind::result(Unit::V),
        /// At the heater while it starts.
        size_heater_start_v: Kind::result(Unit::V),
    }
}

/// Both drops have their limit, both voltages theirs.
pub const CHECKS: &[Checked] = &[
    Checked::new(4, BoundId::CableDrop),
    Checked::new(6, BoundId::CableDrop),
    Checked::new(8, BoundId::StartVoltage),
    Checked::new(9, BoundId::SupplyVoltage),
];

/// The same of each size that could take its place.
pub const ROW_CHECKS: &[Checked] = &[
    Checked::alternative(0, BoundId::CableDrop),
    Checked::alternative(1, BoundId::CableDrop),
    Checked::alternative(2, BoundId::StartVoltage),
];

/// Volts lost by `amperes` through `mohm`, I·R (Ohm's law).
#[must_use]
pub fn lost_v(amperes: f64, mohm: f64) -> f64 {
    amperes * mohm / 1000.0
}

/// The sheet.
pub const SHEET: Declared = Declared::new::<Cable, CableGiven>("cable", cable)
    .rows::<Size>()
    .row_results::<SizeGiven>()
    .checks(CHECKS)
    .row_checks(ROW_CHECKS);

/// What is lost on the way: I·(R'·(out + back) + body + joints), R' a metre of the conductor at its
/// temperature; Ohm's law ([`lost_v`]), R' by IEC 60228 or ASTM B258 and IEC 60028
/// ([`super::conductor`]).
///
/// # Errors
/// A body that is the way back and not told ([`Problem::Missing`]), or told and not the way back
/// ([`Problem::Contradiction`]).
pub fn cable(x: &[f64], to: &mut [f64]) -> Result<(), Refusal> {
    let (fixed, sizes) = x.split_at_checked(Cable::KINDS.len()).unwrap_or_default();
    let way = Cable::read(fixed);
    let body_mohm = way.body_mohm()?;
    let listed = |code| conductor::mohm_per_m(code) * (1.0 + SPREAD * way.conductor_spread);
    let cold = if way.paper_ohm_per_km.is_nan() {
        listed(way.conductor)
    } else {
        way.paper_ohm_per_km
    };
    let warm = conductor::warm(way.conductor_celsius);
    let (own, each) = to
        .split_at_mut_checked(CableGiven::KINDS.len())
        .unwrap_or_default();
    way.given(cold * warm, body_mohm).write(own);
    let each = each.as_chunks_mut::<{ SizeGiven::KINDS.len() }>().0;
    for (&size, to) in sizes.iter().zip(each) {
        let one = way.given(listed(size) * warm, body_mohm);
        SizeGiven {
            size_start_drop_v: one.start_drop_v,
            size_running_drop_v: one.running_drop_v,
            size_heater_start_v: one.heater_start_v,
        }
        .write(to);
    }
    Ok(())
}

impl Cable {
    fn body_mohm(&self) -> Result<f64, Refusal> {
        const PLACE: usize = 3;
        if self.back_by > 0.5 {
            needed(self.body_mohm, PLACE)?;
            Ok(self.body_mohm)
        } else if self.body_mohm.is_nan() {
            Ok(0.0)
        } else {
            Err(Refusal::at(PLACE, Problem::Contradiction))
        }
    }

    #[inline(never)]
    fn given(&self, mohm_per_m: f64, body_mohm: f64) -> CableGiven {
        let out_mohm = mohm_per_m * self.out_m;
        let back_mohm = mohm_per_m * self.back_m + body_mohm;
        let loop_mohm = out_mohm + self.joints_mohm + back_mohm;
        let start_drop_v = lost_v(self.start_a, loop_mohm);
        let running_drop_v = lost_v(self.running_a, loop_mohm);
        CableGiven {
            loop_mohm,
            start_out_v: lost_v(self.start_a, out_mohm),
            start_joints_v: lost_v(self.start_a, self.joints_mohm),
            start_back_v: lost_v(self.start_a, back_mohm),
            start_drop_v,
            start_drop_percent: 100.0 * start_drop_v / self.start_supply_v,
            running_drop_v,
            running_drop_percent: 100.0 * running_drop_v / self.running_supply_v,
            heater_start_v: self.start_supply_v - start_drop_v,
            heater_running_v: self.running_supply_v - running_drop_v,
        }
    }
}
