//! Tank, line, pump: bore, lift, pressure, prime, consumption.

pub mod bubble;
pub mod burn;
pub mod fuel_pressure;
pub mod fuel_run;
pub mod liquid;
pub mod prime;
pub mod tank;
