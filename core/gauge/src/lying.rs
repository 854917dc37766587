//! Whether the gauge still lies as it did. A press is a knock, and what the eye and the hand said
//! outlasts it: to lay a gauge elsewhere takes longer, or leaves it otherwise.

/// Looks, 10 ms each, from a knock's first sample to its last one. Assumed.
const KNOCK: u8 = 50;
/// Looks without a disturbance that end one: fewer than a long press has between its two knocks.
const CALM: u8 = 30;

/// What has been seen since the gauge was laid down.
#[derive(Debug, Clone, Copy, Default)]
pub struct Lying {
    /// Looks since a disturbance began, and since its last sample; none where it is over.
    disturbed: Option<(u8, u8)>,
    /// A sample of how it lies.
    laid: Option<[i16; 3]>,
}

impl Lying {
    /// Another look.
    pub fn passes(&mut self) {
        self.disturbed = self
            .disturbed
            .and_then(|(since, calm)| (calm < CALM).then_some((since.saturating_add(1), calm + 1)));
    }

    /// A sample that is none of rest. Whether the gauge is being lifted.
    pub fn is_lifted(&mut self) -> bool {
        let (since, _) = self.disturbed.unwrap_or_default();
        self.disturbed = Some((since, 0));
        since > KNOCK
    }

    /// A sample of rest. Whether the gauge lies otherwise than it did, by `far` counts or more.
    pub fn is_otherwise(&mut self, sample: [i16; 3], far: u16) -> bool {
        let laid = self.laid.get_or_insert(sample);
        let otherwise = laid.iter().zip(sample).any(|(a, b)| a.abs_diff(b) >= far);
        if otherwise {
            *laid = sample;
        }
        otherwise
    }

    /// Something was said of how it lies from now on.
    pub fn is_said(&mut self) {
        *self = Self::default();
    }
}
