//! Where the heater goes and what it stands on: free space, cut, fit, the face under the seal.

pub mod clearance;
pub mod cut;
mod cut_piece;
pub mod cut_told;
pub mod fit;
pub mod flat;
pub mod orientation;
pub mod space;
pub mod support;
pub mod twist;
