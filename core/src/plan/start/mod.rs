//! First start: carbon monoxide, what was measured, the steps and their timers.

pub mod co;
pub mod co_air;
pub mod started;
pub mod step_rows;
pub mod steps;
pub mod timer;
