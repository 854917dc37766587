//! The half of the job that needs no sensor: place, ducts, fuel, flue, supply, demand, start-up.
//! Numbers read off a tape, a meter or a manual go in, each with a half-width; values with an
//! uncertainty and verdicts come out.
//!
//! A calculation is a [`Sheet`]: what it is given, in order, with its units and what each number
//! can be ([`kind`], [`row`]); a function of these numbers alone; what it gives; and which of that
//! is held against which limit ([`bound`], [`form`]). [`propagate`] moves each input by its
//! uncertainty and looks at what comes of it, so no sheet has formulas of its own for that.
//! [`work`] does all of it in one call. The sheets stand in [`sheets`], their formulas in a folder
//! for each part of the job.

pub mod air;
pub mod bound;
pub mod bound_error;
pub mod demand;
pub mod ducts;
pub mod flue;
pub mod form;
pub mod fuel;
pub mod kind;
pub mod moved;
pub mod place;
pub mod propagate;
pub mod row;
pub mod sheets;
pub mod start;
pub mod supply;
pub mod usage;
pub mod work;

pub use sheets::Sheet;
