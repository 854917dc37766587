//! What can be wrong with the gauge itself. While anything is, no reading is shown.

/// A fault; its number is what the lights count out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fault {
    /// The accelerometer does not answer, or gives nothing new.
    NoAnswer = 1,
    /// Something else than the accelerometer answers in its place.
    WrongSensor = 2,
    /// An axis, or all of them, says the same for longer than noise allows.
    Stuck = 3,
    /// An axis stays at the end of its range.
    Saturated = 4,
    /// At rest, what is felt is not as long as gravity.
    NotGravity = 5,
    /// The end said to be up is down: the axes are not as the board's file says.
    Axes = 6,
    /// The supply is below what the accelerometer is specified for.
    SupplyLow = 7,
    /// The calibration kept is damaged: without it the gauge is as its data sheet says.
    KeptDamaged = 8,
    /// The gauge stopped and was started again by its watchdog, or after a panic.
    Restarted = 9,
}

impl Fault {
    /// All of them, by number from 1.
    pub const ALL: [Self; 9] = [
        Self::NoAnswer,
        Self::WrongSensor,
        Self::Stuck,
        Self::Saturated,
        Self::NotGravity,
        Self::Axes,
        Self::SupplyLow,
        Self::KeptDamaged,
        Self::Restarted,
    ];

    /// Its number, from 1.
    #[must_use]
    pub fn number(self) -> u8 {
        self as u8
    }

    /// Whether a press of a button sets it aside: the accelerometer works, but somebody must have
    /// seen the fault.
    #[must_use]
    pub fn ends_by_press(self) -> bool {
        matches!(self, Self::Axes | Self::KeptDamaged | Self::Restarted)
    }
}
