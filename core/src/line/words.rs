//! The words of a line, each list in the order of its codes: the names that reports have too.

pub(super) const PARTS: [&str; 4] = ["heater", "pump", "filter", "pipe"];
pub(super) const HOLDS: [&str; 3] = ["back", "long_edge", "short_edge"];
pub(super) const VERDICTS: [&str; 4] = ["within", "beyond", "not_proven", "none"];
pub(super) const WHYS: [&str; 5] = [
    "limit_not_entered",
    "allowance_not_entered",
    "ends_disagree",
    "end_not_told",
    "roll_undefined",
];
/// Without the last one, a photo: a gauge has no camera.
pub(super) const ENDS: [&str; 3] = ["tail", "head", "cant_tell"];
pub(super) const BASES: [&str; 4] = ["manual", "law", "trade_usage", "assumed"];
pub(super) const ZEROS: [&str; 3] = ["assumed", "found", "turn"];

/// Stands for none.
pub(super) const NONE: &str = "-";

/// Whether a letter may stand in the software's version.
pub(super) fn is_of_version(letter: u8) -> bool {
    letter.is_ascii_alphanumeric() || matches!(letter, b'.' | b'+' | b'-')
}
