//! The tape-measure half of the job: place, support, ducts, fuel. Numbers read off a tape or a
//! manual go in, each with a half-width; values with an uncertainty and verdicts come out.
//!
//! A calculation is a [`Sheet`]: what it is given, in order, with its units and what each number
//! can be ([`kind`], [`row`]); a function of these numbers alone; what it gives; and which of that
//! is held against which limit ([`bound`]). [`propagate`] moves each input by its uncertainty and
//! looks at what comes of it, so no sheet has formulas of its own for that. [`work`] does all of it
//! in one call. The sheets stand in [`sheets`].

pub mod air;
pub mod air_flow;
pub mod bound;
pub mod bound_error;
pub mod bubble;
pub mod burn;
pub mod clearance;
pub mod cut;
mod cut_piece;
pub mod cut_told;
pub mod duct;
pub mod duct_rows;
pub mod fan;
pub mod fit;
pub mod fitting;
pub mod flat;
pub mod friction;
pub mod fuel;
pub mod fuel_pressure;
pub mod fuel_run;
pub mod grille;
pub mod kind;
pub mod orientation;
pub mod piece;
pub mod piece_cost;
pub mod prime;
pub mod propagate;
pub mod row;
pub mod run;
pub mod sheets;
pub mod space;
pub mod support;
pub mod tank;
pub mod twist;
pub mod usage;
pub mod work;

pub use sheets::Sheet;
