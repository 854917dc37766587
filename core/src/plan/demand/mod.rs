//! How much heat is wanted: what the space loses, whether the heater gives it, how long it takes to
//! get warm, what a night costs.

pub mod heat_loss;
pub mod heater_size;
pub mod material;
pub mod night;
pub mod surface;
pub mod warm_up;

use super::kind::{Kind, Unit};

/// A temperature of air, told by a thermometer or wanted.
pub(crate) const AIR: Kind = Kind::new(Unit::Celsius, -50.0, 60.0).give_or_take(1.0, 0.0);
/// Heat lost by the hour, from [`heat_loss`] with its uncertainty, or known otherwise. Assumed where
/// typed: 20 %.
pub(crate) const LOSS: Kind = Kind::new(Unit::W, 10.0, 100_000.0).give_or_take(0.0, 0.2);
/// Heat that a heater gives, as its paper says: 10 %, assumed.
pub(crate) const OUTPUT: Kind = Kind::new(Unit::W, 100.0, 100_000.0).give_or_take(0.0, 0.1);
