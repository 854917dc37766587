//! One laying of a phone on a part.

use crate::vector::turned;

/// How a phone lies, moves and is listened to. Standard deviations unless it says otherwise.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Scene {
    /// Up in the device frame if the phone lay exactly as it should; unit length.
    pub up: [f64; 3],
    /// Normal of the surface it lies on, device frame; unit length.
    pub normal: [f64; 3],
    /// Tilt on the surface about either direction in it, degrees; drawn anew at each laying.
    pub tilt_deg: f64,
    /// Turn about the surface's normal, degrees; drawn anew at each laying.
    pub heading_deg: f64,
    /// Turn that lies in the surface (dirt, a weld), degrees, device frame.
    pub surface_deg: [f64; 3],
    /// Error of the fused filter at the start, degrees about either level axis; 0: long settled.
    pub start_deg: f64,
    /// Tremor of 8 to 12 Hz, m/s² rms an axis, itself.
    pub tremor_m_s2: f64,
    /// Slow wander of the hand with a correlation time of 0.7 s, degrees an axis.
    pub wander_deg: f64,
    /// A knock in the middle of the events, degrees, itself.
    pub knock_deg: f64,
    /// Time of the first event, ms.
    pub start_ms: f64,
    /// Events.
    pub events: usize,
    /// Time between two events, ms, itself.
    pub every_ms: f64,
    /// Largest deviation of it, ms; uniform.
    pub jitter_ms: f64,
    /// Whether acceleration comes in the browser's steps.
    pub rounded: bool,
    /// Whether the fused orientation is listened to; without it no angles are made.
    pub oriented: bool,
}

impl Scene {
    /// A phone at rest exactly as it should lie, with `up` and `normal` in the device frame.
    #[must_use]
    pub fn at_rest(up: [f64; 3], normal: [f64; 3]) -> Self {
        Self {
            up,
            normal,
            tilt_deg: 0.0,
            heading_deg: 0.0,
            surface_deg: [0.0; 3],
            start_deg: 0.0,
            tremor_m_s2: 0.0,
            wander_deg: 0.0,
            knock_deg: 0.0,
            start_ms: 0.0,
            events: 72,
            every_ms: 1000.0 / 60.0,
            jitter_ms: 0.0,
            rounded: true,
            oriented: false,
        }
    }

    /// The same place with the phone turned end for end about the surface's normal.
    #[must_use]
    pub fn end_for_end(mut self) -> Self {
        let half_turn = self.normal.map(|n| 180.0 * n);
        self.up = turned(self.up, half_turn);
        self.surface_deg = turned(self.surface_deg, half_turn);
        self
    }
}
