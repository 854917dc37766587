//! What the tests share: tables of outside values, random draws, vectors, recorded traces.

mod draws;
mod hand;
pub mod laid;
mod table;
pub mod traces;
pub mod vector;

pub use draws::Draws;
pub use hand::Hand;
pub use table::{Row, Table, Worst};

/// Whether long studies run in full (`PLUMBMARK_STUDY=full`) or at a tenth.
#[must_use]
pub fn full_study() -> bool {
    std::env::var("PLUMBMARK_STUDY").is_ok_and(|v| v == "full")
}

/// An up vector without any uncertainty, device frame: what is left is what a test adds.
#[must_use]
pub fn certain(up: [f64; 3]) -> plumbmark::budget::UpEstimate {
    let up = vector::unit(up).map(|v| v as f32);
    plumbmark::budget::UpEstimate {
        up,
        noise: [0.0; 3],
        half_steps: [[0.0; 3]; 6],
        worst_half_step: 0.0,
        settle_deg: 0.0,
        sensor: plumbmark::sensor::Sensor {
            u_zero: [0.0; 3],
            u_scale: [0.0; 3],
            found_at: up,
            ..plumbmark::sensor::Sensor::assumed()
        },
    }
}
