//! What the tests share: tables of outside values, random draws, vectors, recorded traces.

mod draws;
mod table;
pub mod traces;
pub mod vector;

pub use draws::Draws;
pub use table::{Row, Table, Worst};

/// Whether long studies run in full (`PLUMBMARK_STUDY=full`) or at a tenth.
#[must_use]
pub fn full_study() -> bool {
    std::env::var("PLUMBMARK_STUDY").is_ok_and(|v| v == "full")
}
