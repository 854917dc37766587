//! Exhaust and combustion air: heights with what readings share, low points and drains, distances
//! of the ends, a boat's outlet.

mod boat;
mod drains;
mod ends;
mod heights;
mod legs;
mod water;
