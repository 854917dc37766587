//! A phone at rest on a part, as a browser would tell of it. Double precision, everything by its
//! definition, nothing taken from core.
//!
//! A [`Population`] says what phones are like, a [`Phone`] is one of them, a [`Scene`] is one
//! laying of it on a part; [`Phone::rest`] gives the events. Angles in degrees, forces in m/s².

mod draws;
mod phone;
mod scene;
mod stream;
pub mod vector;

pub use draws::Draws;
pub use phone::{Phone, Population};
pub use scene::Scene;
pub use stream::Event;

/// Standard gravity, m/s². 3rd CGPM (1901), exact by definition.
pub const G: f64 = 9.806_65;
/// Step of a browser's acceleration, m/s². W3C *Device Orientation and Motion*.
pub const FORCE_STEP_M_S2: f64 = 0.1;
/// Steps of a browser's angles in one degree. W3C *Device Orientation and Motion*: 0.1°.
pub const ANGLE_STEPS_PER_DEG: f64 = 10.0;
