//! Parts of an installation and the angle checks that belong to them.

/// A part whose position has limits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum Part {
    /// The air heater. Body x towards the warm-air outlet, the fuel port along −z.
    Heater,
    /// The metering pump. Body x with the flow, towards its outlet; z out of its bracket's flat.
    Pump,
    /// The fuel filter. Body x with the flow, as its arrow points.
    Filter,
    /// One leg of the exhaust or combustion-air pipe. Body x away from the heater.
    Pipe,
}

impl Part {
    /// All parts, in the order of the work.
    pub const ALL: [Self; 4] = [Self::Heater, Self::Pump, Self::Filter, Self::Pipe];
}

/// What kind of angle a check compares with its limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum Quantity {
    /// Elevation of an axis above level, −90° to 90°.
    Elevation,
    /// Angle of an axis from straight up, 0° to 180°.
    OffPlumb,
    /// Roll about body x, −180° to 180°.
    Roll,
}

impl Quantity {
    /// Values that the quantity can take, degrees.
    #[must_use]
    pub fn range_deg(self) -> (f32, f32) {
        match self {
            Self::Elevation => (-90.0, 90.0),
            Self::OffPlumb => (0.0, 180.0),
            Self::Roll => (-180.0, 180.0),
        }
    }
}

/// One check of one part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
pub enum Check {
    /// Elevation of the direction that the heater's fuel port points in.
    HeaterPort,
    /// Elevation of the heater's warm-air outlet.
    HeaterOutlet,
    /// Elevation of the metering pump's outlet.
    PumpOutlet,
    /// Roll of the metering pump, read on a flat of its bracket.
    PumpRoll,
    /// Angle of the filter's arrow from straight up.
    FilterUpright,
    /// Elevation of a pipe leg on its way from the heater: negative where it falls.
    PipeFall,
}

impl Check {
    /// All checks, in the order of the work.
    pub const ALL: [Self; 6] = [
        Self::HeaterPort,
        Self::HeaterOutlet,
        Self::PumpOutlet,
        Self::PumpRoll,
        Self::FilterUpright,
        Self::PipeFall,
    ];

    /// The part that the check belongs to.
    #[must_use]
    pub fn part(self) -> Part {
        match self {
            Self::HeaterPort | Self::HeaterOutlet => Part::Heater,
            Self::PumpOutlet | Self::PumpRoll => Part::Pump,
            Self::FilterUpright => Part::Filter,
            Self::PipeFall => Part::Pipe,
        }
    }

    /// The kind of angle.
    #[must_use]
    pub fn quantity(self) -> Quantity {
        match self {
            Self::HeaterPort | Self::HeaterOutlet | Self::PumpOutlet | Self::PipeFall => {
                Quantity::Elevation
            }
            Self::FilterUpright => Quantity::OffPlumb,
            Self::PumpRoll => Quantity::Roll,
        }
    }

    /// The axis in the body frame, from the tail to the head end.
    #[must_use]
    pub fn axis_body(self) -> [f32; 3] {
        match self {
            Self::HeaterPort => [0.0, 0.0, -1.0],
            _ => [1.0, 0.0, 0.0],
        }
    }

    /// Whether the eye must say which end is lower: a phone held the wrong way round reads the
    /// same slope with the wrong end up, and no turning of the phone finds it.
    #[must_use]
    pub fn asks_lower_end(self) -> bool {
        self.quantity() != Quantity::Roll
    }

    /// This check's name in limit sets and reports, for messages.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::HeaterPort => "heater_port",
            Self::HeaterOutlet => "heater_outlet",
            Self::PumpOutlet => "pump_outlet",
            Self::PumpRoll => "pump_roll",
            Self::FilterUpright => "filter_upright",
            Self::PipeFall => "pipe_fall",
        }
    }
}
