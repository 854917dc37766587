//! A piece of a duct: what it is, how long it is and how far it bends.

use super::fitting;
use crate::plan::kind::{Kind, Unit};
use crate::plan::row::row;

row! {
    /// A piece, in the order of the flow. What its kind has no use for stays empty.
    Piece {
        /// 0: in both layouts; 1: in A; 2: in B.
        layout: Kind::choice(3),
        /// 0: return, from the room to the heater; 1: warm, from the heater to the room.
        run: Kind::choice(2),
        /// Place in [`PieceKind::ALL`].
        kind: Kind::choice(PieceKind::ALL.len()),
        /// Inside diameter where the flow enters; of a return's branch, of the duct after it.
        bore_mm: Kind::new(Unit::Mm, 30.0, 300.0).give_or_take(1.0, 0.0),
        /// Length as laid. Reducer: of its cone, 0 or empty for a step.
        length_m: Kind::new(Unit::M, 0.0, 30.0).give_or_take(0.01, 0.01).or_none(),
        /// By how much the flow turns. Branch: 0 where this run goes straight on.
        angle_deg: Kind::new(Unit::Deg, 0.0, 1080.0).give_or_take(3.0, 0.0).or_none(),
        /// Radius of a bend's middle line, in bores.
        radius_ratio: Kind::new(Unit::Ratio, 0.5, 20.0).give_or_take(0.1, 0.05).or_none(),
        /// Reducer: inside diameter after it. Branch: of the duct at the side; empty: as the other.
        second_bore_mm: Kind::new(Unit::Mm, 30.0, 300.0).give_or_take(1.0, 0.0).or_none(),
        /// Height of the wall's roughness; empty: what is usual for the kind.
        roughness_mm: Kind::new(Unit::Mm, 0.0, 5.0).give_or_take(0.0, 0.5).or_none(),
        /// Flexible duct: by how much shorter it lies than pulled tight. Open end: free share of
        /// its grille, empty for none. Branch: share of the flow that is this run's.
        share: Kind::new(Unit::Ratio, 0.0, 1.0).give_or_take(0.05, 0.0).or_none(),
        /// Place of the true loss within this piece's own spread: 0, by definition.
        spread: SPREAD,
    }
}

/// Place within a spread: the middle, give or take all of it.
pub const SPREAD: Kind = Kind::new(Unit::Ratio, -1.0, 1.0).give_or_take(1.0, 0.0);

/// Places of a piece's fields, for refusals.
pub mod field {
    /// Inside diameter.
    pub const BORE: usize = 3;
    /// Length.
    pub const LENGTH: usize = 4;
    /// Angle.
    pub const ANGLE: usize = 5;
    /// Radius ratio.
    pub const RADIUS: usize = 6;
    /// Second bore.
    pub const SECOND_BORE: usize = 7;
    /// Share.
    pub const SHARE: usize = 9;
}

/// What a piece is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum PieceKind {
    /// Straight pipe.
    Straight,
    /// Smooth bend.
    Bend,
    /// Bend by one slanted cut.
    Mitre,
    /// Flexible duct, its bends included.
    Flexible,
    /// Open end to the room, with or without a grille.
    OpenEnd,
    /// Change of bore.
    Reducer,
    /// Another duct goes off or joins.
    Branch,
}

/// What is known of a kind's coefficient.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Published {
    /// Narrowest and widest bore that it was measured on.
    pub bore_mm: (f64, f64),
    /// Lowest Reynolds number.
    pub reynolds: f64,
    /// Half-width of what single pieces of the kind differ by, as a share.
    pub own_share: f64,
    /// Half-width of what sources differ by: this share of K ...
    pub share: f64,
    /// ... and so much more.
    pub more: f64,
}

impl PieceKind {
    /// All of them, by their places.
    pub const ALL: [Self; 7] = [
        Self::Straight,
        Self::Bend,
        Self::Mitre,
        Self::Flexible,
        Self::OpenEnd,
        Self::Reducer,
        Self::Branch,
    ];

    /// The kind at a place.
    #[must_use]
    pub fn at(place: f64) -> Self {
        Self::ALL
            .get(place as usize)
            .copied()
            .unwrap_or(Self::Straight)
    }

    /// What is known of its coefficient: bores and Reynolds numbers from memory, single pieces'
    /// shares assumed.
    #[must_use]
    pub fn published(self) -> &'static Published {
        let [straight, ..] = &PUBLISHED;
        PUBLISHED.get(self as usize).unwrap_or(straight)
    }

    /// Roughness in mm that is usual: classes "medium smooth" and "rough" of the ASHRAE handbook
    /// (values from memory).
    #[must_use]
    pub fn usual_roughness_mm(self) -> f64 {
        if self == Self::Flexible { 3.0 } else { 0.09 }
    }
}

const fn published(bore_mm: (f64, f64), reynolds: f64, share: f64, more: f64) -> Published {
    Published {
        bore_mm,
        reynolds,
        own_share: 0.1,
        share,
        more,
    }
}

/// By the kinds' places.
static PUBLISHED: [Published; 7] = [
    published((2.5, 5000.0), 4000.0, 0.0, 0.0),
    // Rennels, Miller, Crane and Ito by fluids 1.3.1, 15 to 180°, r/D 1 to 5, walls up to 0.09 mm,
    // lie within this of Rennels.
    published((25.0, 1000.0), 1e5, 0.4, 0.07),
    // Rennels, Miller, Crane and Blevins by fluids 1.3.1, 15 to 110°, of Rennels.
    published((25.0, 1000.0), 1e5, 0.35, 0.28),
    // Abushakra, Walker and Sherman: 150, 200 and 250 mm. The rest is that of its bends.
    Published {
        own_share: 0.2,
        ..published((150.0, 250.0), 4000.0, 0.4, 0.07)
    },
    // Without a grille; with one, Blevins' thick one and Idelchik's thin one lie 45 % apart.
    published((25.0, 1000.0), 1e4, 0.45, 0.1),
    // What fluids 1.3.1 has of Rennels, Crane, Idelchik, Miller and Hooper, 50 to 100 mm, of the
    // dynamic pressure at the narrow end.
    published((25.0, 1000.0), 1e5, 0.3, 0.08),
    // Crane's own factors, 0.55 to 1.3.
    published((25.0, 1000.0), 1e5, 0.35, 0.2),
];

impl Piece {
    /// Its kind.
    #[must_use]
    pub fn kind(&self) -> PieceKind {
        PieceKind::at(self.kind)
    }

    /// Whether it is on the warm side.
    #[must_use]
    pub fn is_warm(&self) -> bool {
        self.run > 0.5
    }

    /// Whether it is in a layout, 0 for A and 1 for B.
    #[must_use]
    pub fn is_in(&self, layout: usize) -> bool {
        self.layout == 0.0 || self.layout == (layout + 1) as f64
    }

    /// Whether there is such a layout because of it: A is what is not B's alone, B needs a piece of
    /// its own.
    #[must_use]
    pub fn makes(&self, layout: usize) -> bool {
        if layout == 0 {
            self.is_in(0)
        } else {
            self.layout > 1.0
        }
    }

    /// Whether its run turns off here.
    #[must_use]
    pub fn turns(&self) -> bool {
        self.angle_deg > 0.0
    }

    /// Share of the flow that goes on along its run.
    #[must_use]
    pub fn kept(&self) -> f64 {
        if self.kind() == PieceKind::Branch {
            self.share
        } else {
            1.0
        }
    }

    /// Bore in mm where the flow enters, and where it leaves.
    #[must_use]
    pub fn ends_mm(&self) -> (f64, f64) {
        let second = if self.second_bore_mm.is_nan() {
            self.bore_mm
        } else {
            self.second_bore_mm
        };
        match self.kind() {
            PieceKind::Reducer => (self.bore_mm, second),
            PieceKind::Branch if self.turns() && self.is_warm() => (self.bore_mm, second),
            PieceKind::Branch if self.turns() => (second, self.bore_mm),
            _ => (self.bore_mm, self.bore_mm),
        }
    }

    /// By how much it turns the flow, degrees.
    #[must_use]
    pub fn bends_deg(&self) -> f64 {
        match self.kind() {
            PieceKind::Straight | PieceKind::OpenEnd | PieceKind::Reducer => 0.0,
            _ => self.angle_deg.max(0.0),
        }
    }

    /// Length of its middle line in m: as told, or of a bend the arc α·r ([`fitting::arc_bores`]).
    #[must_use]
    pub fn along_m(&self) -> f64 {
        match self.kind() {
            PieceKind::Straight | PieceKind::Flexible | PieceKind::Reducer => {
                self.length_m.max(0.0)
            }
            PieceKind::Bend => {
                0.001 * self.bore_mm * fitting::arc_bores(self.angle_deg, self.radius_ratio)
            }
            _ => 0.0,
        }
    }
}
