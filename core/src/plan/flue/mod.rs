//! Exhaust and combustion air: legs and low points of a pipe, what its end is near, a boat's outlet
//! as she heels.

pub mod boat_outlet;
pub mod ends;
pub mod leg;
pub mod pipe;
pub mod water;
