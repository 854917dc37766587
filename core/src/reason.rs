//! Why there is no reading. No reading, no verdict, no number on the screen.

/// The named reasons for "no reading".
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "defmt", derive(defmt::Format))]
#[non_exhaustive]
pub enum NoReading {
    /// Nothing has been received yet, and it is too early to say that nothing will be.
    Starting,
    /// The window is not full yet.
    Filling,
    /// No motion sensor answers: no events, or all of their values missing.
    NoSensor,
    /// One or two of the three values of an event are missing.
    ValuesMissing,
    /// A value or a time stamp is NaN or infinite.
    NotFinite,
    /// Two events carry the same time stamp.
    TimeRepeated,
    /// An event is older than the one before it.
    TimeBackward,
    /// More than 200 ms between two events.
    Gap,
    /// The last event is more than 300 ms old.
    Stale,
    /// The length of the vector is far from that of gravity: a knock, a fall, a fault.
    NotGravity,
    /// The phone moves.
    Moving,
    /// The phone trembles at 8 to 12 Hz: a hand, or an engine.
    Tremor,
    /// The fused orientation creeps: slow movement, or a filter that has not settled.
    Drifting,
    /// Less than three seconds of fused orientation, which needs them alone.
    Settling,
    /// Acceleration and fused orientation say different things.
    ChannelsDisagree,
    /// Which sign this browser gives to gravity is not known.
    SignUnknown,
    /// The sign of gravity changed.
    SignFlipped,
    /// The first placement of a turn is kept, and the phone has not been turned end for end yet.
    NotTurned,
    /// The first placement of a turn is more than three minutes old.
    TurnTooOld,
    /// The two placements of a turn don't fit together: the phone was tipped, it rocks, or the
    /// part has moved.
    TurnDisagrees,
}

impl NoReading {
    /// All reasons, in the order of their codes; the code of the first is 1.
    pub const ALL: [Self; 20] = [
        Self::Starting,
        Self::Filling,
        Self::NoSensor,
        Self::ValuesMissing,
        Self::NotFinite,
        Self::TimeRepeated,
        Self::TimeBackward,
        Self::Gap,
        Self::Stale,
        Self::NotGravity,
        Self::Moving,
        Self::Tremor,
        Self::Drifting,
        Self::Settling,
        Self::ChannelsDisagree,
        Self::SignUnknown,
        Self::SignFlipped,
        Self::NotTurned,
        Self::TurnTooOld,
        Self::TurnDisagrees,
    ];

    /// The reason's name in reports and messages.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Starting => "starting",
            Self::Filling => "filling",
            Self::NoSensor => "no_sensor",
            Self::ValuesMissing => "values_missing",
            Self::NotFinite => "not_finite",
            Self::TimeRepeated => "time_repeated",
            Self::TimeBackward => "time_backward",
            Self::Gap => "gap",
            Self::Stale => "stale",
            Self::NotGravity => "not_gravity",
            Self::Moving => "moving",
            Self::Tremor => "tremor",
            Self::Drifting => "drifting",
            Self::Settling => "settling",
            Self::ChannelsDisagree => "channels_disagree",
            Self::SignUnknown => "sign_unknown",
            Self::SignFlipped => "sign_flipped",
            Self::NotTurned => "not_turned",
            Self::TurnTooOld => "turn_too_old",
            Self::TurnDisagrees => "turn_disagrees",
        }
    }

    /// 1 for the first of [`Self::ALL`]; 0 is left for "reading".
    #[must_use]
    pub fn code(self) -> u8 {
        self as u8 + 1
    }
}

impl core::fmt::Display for NoReading {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.name())
    }
}

impl core::error::Error for NoReading {}
