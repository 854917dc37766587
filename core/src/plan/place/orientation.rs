//! The 24 ways that a box stands square in another: its own axes on those of the compartment.
//!
//! The heater's x points to the warm-air outlet, its fuel port along −z ([`crate::parts::Part`]); y
//! completes them, left seen from the intake end. The compartment's x points right, y inwards, z up.

/// A way along an axis of the compartment.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum Way {
    /// Along +x.
    Right,
    /// Along −x.
    Left,
    /// Along +y.
    Inwards,
    /// Along −y.
    Outwards,
    /// Along +z.
    Up,
    /// Along −z.
    Down,
}

impl Way {
    /// As a unit vector.
    #[must_use]
    pub const fn vector(self) -> [i8; 3] {
        match self {
            Self::Right => [1, 0, 0],
            Self::Left => [-1, 0, 0],
            Self::Inwards => [0, 1, 0],
            Self::Outwards => [0, -1, 0],
            Self::Up => [0, 0, 1],
            Self::Down => [0, 0, -1],
        }
    }
}

/// How the heater stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Orientation {
    /// Where its outlet points.
    pub outlet: Way,
    /// Where its fuel port points.
    pub port: Way,
}

/// The ways round, for each way that the port points: those of the outlet.
const ROUND_X: [Way; 4] = [Way::Inwards, Way::Outwards, Way::Up, Way::Down];
const ROUND_Y: [Way; 4] = [Way::Right, Way::Left, Way::Up, Way::Down];
const ROUND_Z: [Way; 4] = [Way::Right, Way::Left, Way::Inwards, Way::Outwards];

const fn all() -> [Orientation; 24] {
    let ports = [
        (Way::Down, ROUND_Z),
        (Way::Right, ROUND_X),
        (Way::Left, ROUND_X),
        (Way::Inwards, ROUND_Y),
        (Way::Outwards, ROUND_Y),
        (Way::Up, ROUND_Z),
    ];
    let none = Orientation {
        outlet: Way::Right,
        port: Way::Down,
    };
    let mut list = [none; 24];
    let mut i = 0;
    while i < list.len() {
        let (port, outlets) = ports[i / 4];
        let outlet = outlets[i % 4];
        list[i] = Orientation { outlet, port };
        i += 1;
    }
    list
}

impl Orientation {
    /// All 24, the port straight down first.
    pub const ALL: [Self; 24] = all();

    /// Whether neither the fuel port nor the outlet points up: 16 of the 24.
    #[must_use]
    pub fn is_allowed(self) -> bool {
        self.outlet != Way::Up && self.port != Way::Up
    }

    /// Where the heater's x, y and z point.
    #[must_use]
    pub fn axes(self) -> [[i8; 3]; 3] {
        let x = self.outlet.vector();
        let z = self.port.vector().map(|v| -v);
        let [x0, x1, x2] = x;
        let [z0, z1, z2] = z;
        // y = z × x
        let y = [z1 * x2 - z2 * x1, z2 * x0 - z0 * x2, z0 * x1 - z1 * x0];
        [x, y, z]
    }

    /// Which of the six ways its length, width and height lie along the compartment's axes: twice
    /// the axis of the length, plus one where the height takes the later of the axes left. The four
    /// orientations that share one need the same room: clearances at both ends of an axis add up
    /// whichever end is which.
    #[must_use]
    pub fn lay(self) -> usize {
        let [x, y, z] = self.axes();
        let axis = |v: [i8; 3]| usize::from(v[1] != 0) + 2 * usize::from(v[2] != 0);
        2 * axis(x) + usize::from(axis(z) > axis(y))
    }
}
