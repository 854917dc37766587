//! Angle checks for fuel-fired air heaters: accelerometer vectors in, verdicts with stated
//! uncertainty out. `no_std`, no heap, no unsafe code; the same bits on a host, in a browser and
//! on a microcontroller.
//!
//! The way through: a browser's events enter [`live::Live`]; [`intake`] turns them into whole
//! counts, [`window`] into the sums of the last second, [`rounded`] into a mean that knows of
//! rounding. [`frames`] makes an angle of it, [`budget`] says how uncertain it is, [`decision`]
//! compares it with a limit of the [`limits::LimitSet`], [`advice`] says what would settle it,
//! [`report`] is what is kept. A sensor without a browser enters [`direct::Direct`] instead, and its
//! captures leave as a [`line`]. [`parts`] and [`holds`] say what can be read from where, [`prior`]
//! what is assumed of an unknown phone.
//!
//! ```
//! use plumbmark::{check::End, decision::Verdict, holds::{Hold, Surface}, live::Live};
//! use plumbmark::parts::{Check, Part};
//!
//! let mut live = Live::new();
//! live.set_sign(1);
//! live.select(Part::Pump, Hold::LongEdge, Surface::RoundBody).unwrap();
//! live.tell_end(Check::PumpOutlet, Some(End::Tail));
//! // A phone at rest at 30°, rounded to 0.1 m/s² as browsers do, 60 times a second.
//! for i in 0..70 {
//!     live.motion(f64::from(i) * 16.7, [Some(-8.5), Some(4.9), Some(0.0)]);
//! }
//! let outcome = live.tick(69.0 * 16.7).unwrap().outcomes[0];
//! assert_eq!(outcome.verdict, Verdict::Within); // trade usage: 15° or more
//! // Perfectly still, and yet not certain: zero and rounding are in the interval.
//! assert!(outcome.measured.unwrap().u_deg > 0.9);
//! ```
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
