//! What the calculation of ducts is given and gives: [`super::duct`].

use super::piece::SPREAD;
use crate::plan::bound::BoundId;
use crate::plan::form::Checked;
use crate::plan::kind::{Kind, Unit};
use crate::plan::row::row;

const FLOW: Kind = Kind::new(Unit::M3PerH, 0.0, 3000.0)
    .give_or_take(0.0, 0.05)
    .or_none();
const PRESSURE: Kind = Kind::new(Unit::Pa, 0.0, 5000.0)
    .give_or_take(0.0, 0.05)
    .or_none();

row! {
    /// The air that goes through.
    DuctAir {
        /// Volume that the heater draws in, at the room's density.
        flow_m3_per_h: Kind::new(Unit::M3PerH, 5.0, 2000.0).give_or_take(0.0, 0.1),
        /// Heat that goes into the air; 0 where the fan alone runs; less than 30 is kW.
        power_w: Kind::new(Unit::W, 0.0, 30_000.0).zero_or_from(30.0).give_or_take(0.0, 0.1),
        /// Air that the heater draws in.
        inlet_celsius: Kind::new(Unit::Celsius, -40.0, 60.0).give_or_take(2.0, 0.0),
        /// Height above the sea; the half-width is the weather's.
        altitude_m: Kind::new(Unit::M, -430.0, 6000.0).give_or_take(250.0, 0.0),
        /// What else the air must pass at this flow: a filter, a grille in a wall.
        other_loss_pa: Kind::new(Unit::Pa, 0.0, 2000.0).give_or_take(0.0, 0.3).or_none(),
        /// Place of the true loss within the spread of all fittings: 0, by definition.
        fittings_spread: SPREAD,
        /// The same for all flexible ducts.
        flexible_spread: SPREAD,
        /// The power of the flow with which the loss goes, where a fan's curve is told: 1.75 for
        /// smooth pipes, 2 for fittings, less where little air gets hot.
        power: Kind::new(Unit::Ratio, 1.5, 2.1).give_or_take(0.2, 0.0).or_none(),
        /// Density at which the fan's curve was measured; 1.2 kg/m³ is usual. Pressure goes with it.
        curve_density_kg_per_m3: Kind::new(Unit::KgPerM3, 0.5, 2.0).or_none(),
        /// First point of the fan's curve: by rising flow and falling pressure.
        flow_1_m3_per_h: FLOW,
        /// First point.
        pressure_1_pa: PRESSURE,
        /// Second point.
        flow_2_m3_per_h: FLOW,
        /// Second point.
        pressure_2_pa: PRESSURE,
        /// Third point.
        flow_3_m3_per_h: FLOW,
        /// Third point.
        pressure_3_pa: PRESSURE,
        /// Fourth point.
        flow_4_m3_per_h: FLOW,
        /// Fourth point.
        pressure_4_pa: PRESSURE,
        /// Fifth point.
        flow_5_m3_per_h: FLOW,
        /// Fifth point.
        pressure_5_pa: PRESSURE,
    }
}

row! {
    /// What comes of it. A layout that no piece is in has none.
    DuctsGiven {
        /// Bends of layout A, both runs.
        bends_a_deg: Kind::result(Unit::Deg),
        /// Length of layout A, both runs.
        length_a_m: Kind::result(Unit::M),
        /// Loss of layout A.
        loss_a_pa: Kind::result(Unit::Pa),
        /// Which piece of layout A costs most, counted from 1.
        dearest_a: Kind::result(Unit::Count),
        /// Flow at which the fan gives what layout A costs; none where its points don't reach.
        fan_flow_a_m3_per_h: Kind::result(Unit::M3PerH),
        /// Heated air then.
        fan_outlet_a_celsius: Kind::result(Unit::Celsius),
        /// Bends of layout B, both runs.
        bends_b_deg: Kind::result(Unit::Deg),
        /// Length of layout B, both runs.
        length_b_m: Kind::result(Unit::M),
        /// Loss of layout B.
        loss_b_pa: Kind::result(Unit::Pa),
        /// Which piece of layout B costs most, counted from 1.
        dearest_b: Kind::result(Unit::Count),
        /// Flow at which the fan gives what layout B costs; none where its points don't reach.
        fan_flow_b_m3_per_h: Kind::result(Unit::M3PerH),
        /// Heated air then.
        fan_outlet_b_celsius: Kind::result(Unit::Celsius),
        /// Loss of B less that of A; what both share cancels, in its uncertainty too.
        loss_difference_pa: Kind::result(Unit::Pa),
        /// Flow of B less that of A.
        fan_flow_difference_m3_per_h: Kind::result(Unit::M3PerH),
        /// Heated air as it leaves the heater, at the flow that is told.
        outlet_air_celsius: Kind::result(Unit::Celsius),
        /// By how much it is warmer than the room's.
        rise_k: Kind::result(Unit::Kelvin),
        /// Mass of air.
        mass_flow_kg_per_h: Kind::result(Unit::KgPerH),
        /// Density in the return run.
        return_density_kg_per_m3: Kind::result(Unit::KgPerM3),
        /// Density in the warm run.
        warm_density_kg_per_m3: Kind::result(Unit::KgPerM3),
    }
}

row! {
    /// What comes of one layout, in the order of [`DuctsGiven`].
    LayoutGiven {
        /// Bends.
        bends_deg: Kind::result(Unit::Deg),
        /// Length.
        length_m: Kind::result(Unit::M),
        /// Loss.
        loss_pa: Kind::result(Unit::Pa),
        /// Dearest piece.
        dearest: Kind::result(Unit::Count),
        /// Flow with the fan.
        fan_flow_m3_per_h: Kind::result(Unit::M3PerH),
        /// Heated air then.
        fan_outlet_celsius: Kind::result(Unit::Celsius),
    }
}

row! {
    /// What comes of both, after theirs.
    BothGiven {
        /// Loss of B less that of A.
        loss_difference_pa: Kind::result(Unit::Pa),
        /// Flow of B less that of A.
        fan_flow_difference_m3_per_h: Kind::result(Unit::M3PerH),
        /// Heated air.
        outlet_air_celsius: Kind::result(Unit::Celsius),
        /// Rise.
        rise_k: Kind::result(Unit::Kelvin),
        /// Mass of air.
        mass_flow_kg_per_h: Kind::result(Unit::KgPerH),
        /// Density in the return run.
        return_density_kg_per_m3: Kind::result(Unit::KgPerM3),
        /// Density in the warm run.
        warm_density_kg_per_m3: Kind::result(Unit::KgPerM3),
    }
}

row! {
    /// What comes of one piece.
    PieceGiven {
        /// Loss in layout A.
        piece_a_pa: Kind::result(Unit::Pa),
        /// Loss in layout B; another one where only one of them parts the flow.
        piece_b_pa: Kind::result(Unit::Pa),
        /// Speed of the air where it enters; in layout A, where the piece is in both.
        speed_m_per_s: Kind::result(Unit::MPerS),
        /// Share of the dynamic pressure that it costs, f·L/D + K; likewise.
        coefficient: Kind::result(Unit::Ratio),
    }
}

impl LayoutGiven {
    /// No layout.
    pub const NONE: Self = Self {
        bends_deg: f64::NAN,
        length_m: f64::NAN,
        loss_pa: f64::NAN,
        dearest: f64::NAN,
        fan_flow_m3_per_h: f64::NAN,
        fan_outlet_celsius: f64::NAN,
    };
}

/// Layout A is the one that is judged; B and the fan are held against the same limits beside it.
pub const CHECKS: &[Checked] = &[
    Checked::new(0, BoundId::DuctBends),
    Checked::new(1, BoundId::DuctLength),
    Checked::new(2, BoundId::DuctLoss),
    Checked::alternative(4, BoundId::AirFlow),
    Checked::alternative(5, BoundId::OutletAir),
    Checked::alternative(6, BoundId::DuctBends),
    Checked::alternative(7, BoundId::DuctLength),
    Checked::alternative(8, BoundId::DuctLoss),
    Checked::alternative(10, BoundId::AirFlow),
    Checked::alternative(11, BoundId::OutletAir),
    Checked::new(14, BoundId::OutletAir),
];
