#![doc = include_str!("../README.md")]
//!
//! # The way through
//!
//! A browser's events enter [`live::Live`]; [`intake`] turns them into whole counts, [`window`] into
//! the sums of the last second, [`rounded`] into a mean that knows of rounding. [`frames`] makes an
//! angle of it, [`budget`] says how uncertain it is, [`decision`] compares it with a limit of the
//! [`limits::LimitSet`], [`advice`] says what would settle it, [`report`] is what is kept. A sensor
//! without a browser enters [`direct::Direct`] instead, and its captures leave as a [`mod@line`].
//! [`parts`] and [`holds`] say what can be read from where, [`prior`] what is assumed of an unknown
//! phone. [`plan`] is the half that needs no sensor: numbers off a tape, a meter or a manual.
#![no_std]
#![forbid(unsafe_code)]

pub mod advice;
mod answers;
pub mod blind;
mod bounded;
pub mod budget;
pub mod calibration;
pub mod check;
pub mod decision;
pub mod direct;
pub mod findings;
pub mod frames;
pub mod fused;
mod gathered;
pub mod holds;
pub mod in_vehicle;
pub mod intake;
pub mod level;
mod limit_error;
mod limit_set;
pub mod limits;
pub mod line;
pub mod live;
mod matrix;
pub mod parts;
pub mod phone;
pub mod plan;
pub mod prior;
pub mod reading;
pub mod reason;
pub mod report;
pub mod reversal;
pub mod rounded;
pub mod sensor;
pub mod shared;
mod stillness;
mod taken;
mod trig;
pub mod turn;
pub mod vector;
pub mod vehicle;
pub mod window;
