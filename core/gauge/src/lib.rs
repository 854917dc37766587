//! A Plumbmark gauge without its board: accelerometer, lights, buttons and flash behind traits,
//! the rest is core's. No heap, no unsafe code.
//!
//! Functions are kept apart by `inline(never)` where one inside another would cost flash, or stack
//! for what only one of them needs.
//!
//! [`run::Running`] drives a [`board::Board`]; [`gauge::Gauge`] is what it shows and does.
#![no_std]
#![forbid(unsafe_code)]

pub mod accelerometer;
pub mod answer;
pub mod board;
pub mod buttons;
mod calibrate;
pub mod faces;
pub mod fault;
pub mod gauge;
pub mod kept;
pub mod lights;
pub mod limits;
pub mod lsm303agr;
pub mod lying;
mod read;
pub mod run;
pub mod self_test;
pub mod supply;
mod tested;
