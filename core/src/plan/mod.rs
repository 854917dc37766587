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
//!
//! ```
//! use plumbmark::{decision::Verdict, plan::Sheet};
//!
//! // Free space before the warm-air outlet, mm; nothing told of the other seven distances. Not a
//! // number stands for "none", and as a half-width for the one that is assumed of a tape.
//! let told = [134.0, f64::NAN, f64::NAN, f64::NAN, f64::NAN, f64::NAN, f64::NAN, f64::NAN];
//! let worked = Sheet::Clearances.work(&told, &[]).unwrap();
//! let outlet_end = worked.check(0).unwrap();
//! // An invented manual asks for 132 mm or more: nearer than this tape can tell.
//! let answer = worked.judged(&outlet_end, 132.0, f64::NAN).unwrap();
//! assert_eq!(answer.verdict, Verdict::NotProven);
//! ```

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
