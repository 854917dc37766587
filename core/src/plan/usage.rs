//! What the trade does, and what one law says: editable examples with their sources, never a
//! maker's numbers.

use super::bound::BoundId;
use crate::limits::Basis;

/// A limit with its source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Known {
    /// What has the limit.
    pub id: BoundId,
    /// Lowest value permitted.
    pub low: Option<f64>,
    /// Highest value permitted.
    pub high: Option<f64>,
    /// On whose word.
    pub basis: Basis,
    /// Document and clause.
    pub source: &'static str,
    /// The vehicles that a law is for.
    pub vehicles: &'static str,
}

const fn at_least(id: BoundId, low: f64) -> Known {
    Known {
        id,
        low: Some(low),
        high: None,
        basis: Basis::TradeUsage,
        source: "common practice, no source",
        vehicles: "",
    }
}

const fn at_most(id: BoundId, high: f64) -> Known {
    Known {
        low: None,
        high: Some(high),
        ..at_least(id, 0.0)
    }
}

/// Common practice, no source.
pub const USAGE: &[Known] = &[
    // 4 in beyond each end, 2 in on every side, 8 in between the outlet and any person.
    at_least(BoundId::ClearOutletEnd, 101.6),
    at_least(BoundId::ClearIntakeEnd, 101.6),
    at_least(BoundId::ClearTop, 50.8),
    at_least(BoundId::ClearBottom, 50.8),
    at_least(BoundId::ClearLeft, 50.8),
    at_least(BoundId::ClearRight, 50.8),
    at_least(BoundId::OutletToPerson, 203.2),
    at_most(BoundId::Unevenness, 1.0),
    at_most(BoundId::DuctBends, 270.0),
    at_least(BoundId::StandpipeGap, 25.4),
    // The exhaust ends outside the body's outline; a drain is a hole of 4 mm.
    at_least(BoundId::ExhaustPastBody, 0.0),
    Known {
        high: Some(4.0),
        ..at_least(BoundId::DrainBore, 4.0)
    },
];

/// Laws, each with the vehicles that it is for. Elsewhere an orientation.
pub const LAW: &[Known] = &[
    Known {
        basis: Basis::Law,
        // Exhausts are to be insulated where closer than 450 mm (18 in) to combustibles.
        source: "46 CFR 144.415",
        vehicles: "US towing vessels",
        ..at_least(BoundId::ExhaustToCombustible, 450.0)
    },
    Known {
        basis: Basis::Law,
        // At the source, or within 7 in along the conductor; 40 in where that is sheathed.
        source: "33 CFR 183.455",
        vehicles: "US petrol boats",
        ..at_most(BoundId::FuseToBattery, 177.8)
    },
];
