//! How the phone touches the part. A placement is a rotation from the device to the part's body
//! **and** the list of checks that it can give; every other pair is refused by name.

use crate::budget::Contact;
use crate::frames::Rotation;
use crate::parts::{Check, Part};
use crate::vector::Vec3;

/// Which side of the phone lies on the part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum Hold {
    /// The back, screen away from the part, top edge towards the head end.
    Back,
    /// The right long edge, top edge towards the head end.
    LongEdge,
    /// The bottom short edge, right side towards the head end.
    ShortEdge,
}

impl Hold {
    /// All holds.
    pub const ALL: [Self; 3] = [Self::Back, Self::LongEdge, Self::ShortEdge];

    /// Body axes as rows over device axes (x right, y to the top edge, z out of the screen):
    /// body x towards the head end, body z out of the surface that the phone lies on.
    #[must_use]
    pub fn rotation(self) -> Rotation {
        match self {
            Self::Back => [[0, 1, 0], [-1, 0, 0], [0, 0, 1]],
            Self::LongEdge => [[0, 1, 0], [0, 0, -1], [-1, 0, 0]],
            Self::ShortEdge => [[1, 0, 0], [0, 0, -1], [0, 1, 0]],
        }
    }

    /// Normal of the surface that the phone lies on, device frame: body z.
    #[must_use]
    pub fn normal(self) -> Vec3 {
        self.rotation()[2].map(f32::from)
    }

    /// Factor on a surface's hold uncertainty: a short edge stands on half the length. Assumed.
    fn hold_factor(self) -> f32 {
        match self {
            Self::Back | Self::LongEdge => 1.0,
            Self::ShortEdge => 2.0,
        }
    }
}

/// What the phone lies on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum Surface {
    /// A machined or cast face.
    MetalFace,
    /// Sheet metal or a moulded cover.
    Sheet,
    /// A round body, along its length.
    RoundBody,
    /// A flat of a bracket or plug whose direction is known.
    Bracket,
    /// A straight bar laid along the part.
    Bar,
}

impl Surface {
    /// All surfaces.
    pub const ALL: [Self; 5] = [
        Self::MetalFace,
        Self::Sheet,
        Self::RoundBody,
        Self::Bracket,
        Self::Bar,
    ];

    /// The surface's name in limit sets and reports.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::MetalFace => "metal_face",
            Self::Sheet => "sheet",
            Self::RoundBody => "round_body",
            Self::Bracket => "bracket",
            Self::Bar => "bar",
        }
    }

    /// Standard uncertainties assumed until the limit set says otherwise, degrees: of the phone's
    /// tilt on the surface, and of its turn about the surface's normal. For scale: 0.5 mm under
    /// 140 mm is 0.20°. Assumed.
    #[must_use]
    pub fn assumed_deg(self) -> (f32, f32) {
        match self {
            Self::MetalFace => (0.1, 1.0),
            Self::Sheet => (0.2, 1.0),
            Self::RoundBody => (0.3, 1.5),
            Self::Bracket => (0.3, 1.0),
            Self::Bar => (0.2, 1.0),
        }
    }
}

/// Why a part cannot be read from a hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
#[non_exhaustive]
pub enum Refusal {
    /// The part has no such surface.
    NoSuchSurface,
    /// A bracket's flat is too short for an edge to say anything of the part's length.
    EdgeOnBracket,
    /// The short edge covers too little of a bar or an uneven sheet.
    EdgeTooShort,
}

impl Refusal {
    /// All refusals, in the order of their codes, from 1; 0 is left for "placed".
    pub const ALL: [Self; 3] = [Self::NoSuchSurface, Self::EdgeOnBracket, Self::EdgeTooShort];

    /// The refusal's name in reports and messages.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::NoSuchSurface => "no_such_surface",
            Self::EdgeOnBracket => "edge_on_bracket",
            Self::EdgeTooShort => "edge_too_short",
        }
    }
}

impl core::fmt::Display for Refusal {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.name())
    }
}

impl core::error::Error for Refusal {}

/// A way to hold the phone to a part, or to a table or the vehicle, and what it can give.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub struct Placement {
    /// The part; none for a table or the vehicle's own floor and rails.
    pub part: Option<Part>,
    /// The side of the phone.
    pub hold: Hold,
    /// What it lies on.
    pub surface: Surface,
    /// What can be read; at most two.
    pub checks: &'static [Check],
}

impl Placement {
    /// The placement of `hold` on `surface` for `part`.
    ///
    /// A flat of known direction under the phone's back gives everything; an edge gives the
    /// elevation along itself only, since the eye holds the rest; a round body and a bar give the
    /// elevation of the part's length only.
    ///
    /// # Errors
    /// [`Refusal`] where the pair can't give anything.
    pub fn new(part: Part, hold: Hold, surface: Surface) -> Result<Self, Refusal> {
        use Check::{FilterUpright, HeaterOutlet, HeaterPort, PipeFall, PumpOutlet, PumpRoll};
        use Surface::{Bar, Bracket, MetalFace, RoundBody, Sheet};
        let flat = hold == Hold::Back;
        let checks: &'static [Check] = match (part, surface) {
            (Part::Heater, MetalFace | Sheet) if flat => &[HeaterPort, HeaterOutlet],
            (Part::Heater, MetalFace | Sheet | Bar) => &[HeaterOutlet],
            (Part::Pump, Bracket) if flat => &[PumpOutlet, PumpRoll],
            (Part::Filter, Bracket) if flat => &[FilterUpright],
            (Part::Pump | Part::Filter, Bracket) => return Err(Refusal::EdgeOnBracket),
            (Part::Pump, RoundBody | Bar) => &[PumpOutlet],
            (Part::Filter, RoundBody | Bar) => &[FilterUpright],
            (Part::Pipe, RoundBody | Bar) => &[PipeFall],
            _ => return Err(Refusal::NoSuchSurface),
        };
        if hold == Hold::ShortEdge && matches!(surface, Sheet | Bar) {
            return Err(Refusal::EdgeTooShort);
        }
        Ok(Self {
            part: Some(part),
            hold,
            surface,
            checks,
        })
    }

    /// The placement of `hold` on a table, or on the vehicle's floor or rail: it gives no check,
    /// but this phone's zero, or the vehicle's level.
    ///
    /// # Errors
    /// [`Refusal`] on a round body or a bracket, and for the short edge where it is too short.
    pub fn on_face(hold: Hold, surface: Surface) -> Result<Self, Refusal> {
        match surface {
            Surface::RoundBody | Surface::Bracket => return Err(Refusal::NoSuchSurface),
            Surface::Sheet | Surface::Bar if hold == Hold::ShortEdge => {
                return Err(Refusal::EdgeTooShort);
            }
            Surface::MetalFace | Surface::Sheet | Surface::Bar => {}
        }
        Ok(Self {
            part: None,
            hold,
            surface,
            checks: &[],
        })
    }

    /// A surface's uncertainties as this hold meets them, degrees.
    #[must_use]
    pub fn contact_deg(&self, (hold_deg, align_deg): (f32, f32)) -> (f32, f32) {
        (hold_deg * self.hold.hold_factor(), align_deg)
    }

    /// How the phone touches the part, by its surface's uncertainties, degrees.
    #[must_use]
    pub fn contact(&self, surface_deg: (f32, f32)) -> Contact {
        let (hold_deg, align_deg) = self.contact_deg(surface_deg);
        Contact {
            hold_deg,
            align_deg,
            normal: self.hold.normal(),
        }
    }
}
