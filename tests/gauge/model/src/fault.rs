//! What can be wrong with the part or with its wires.

/// A fault that a test switches on, and off again.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fault {
    /// The accelerometer does not acknowledge its address, as if it were unplugged.
    NoAcknowledge,
    /// A wire is held: every transfer fails, whoever it is for.
    StuckBus,
    /// Something else answers: another identity.
    WrongIdentity,
    /// An axis (0, 1, 2) says what it said last.
    StuckAxis(usize),
    /// An axis is at the end of its range.
    SaturatedAxis(usize),
    /// Samples keep coming, the same one again and again.
    Frozen,
    /// No sample comes.
    NeverReady,
}
