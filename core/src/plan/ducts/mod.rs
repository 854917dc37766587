//! Warm and return air: bends, loss, flow, openings.

pub mod air_flow;
pub mod duct;
pub mod duct_rows;
pub mod fan;
pub mod fitting;
pub mod friction;
pub mod grille;
pub mod piece;
pub mod piece_cost;
pub mod run;
