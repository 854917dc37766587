//! Battery, cable and fuse: what the cable costs, what the fuse is for, where the supply is taken,
//! how long it lasts.

pub mod bank;
pub mod battery;
pub mod cable;
pub mod conductor;
pub mod fuse;

use super::kind::{Kind, Problem, Refusal, Unit};

/// A voltage by a hand-held meter: 0.5 % and two steps of 10 mV (assumed).
pub const VOLTS: Kind = Kind::new(Unit::V, 1.0, 60.0).give_or_take(0.02, 0.005);
/// A current by a clamp, or from the manual: 3 % and 0.1 A (assumed).
pub const AMPERES: Kind = Kind::new(Unit::A, 0.0, 100.0).give_or_take(0.1, 0.03);

/// Refuses the number at `place` while it is empty.
fn needed(value: f64, place: usize) -> Result<(), Refusal> {
    if value.is_nan() {
        Err(Refusal::at(place, Problem::Missing))
    } else {
        Ok(())
    }
}
