//! The supply: too low is a fault until it has clearly recovered.

/// How far above its lowest voltage the supply must come back, mV: batteries recover by that when
/// the load is gone, and would only fall again.
const RECOVERED_MV: u16 = 100;

/// Whether the supply is too low.
#[derive(Debug, Clone, Copy, Default)]
pub struct Supply {
    low: bool,
}

impl Supply {
    /// Takes a reading of the supply; whether it is too low for readings.
    pub fn is_low(&mut self, mv: u16, lowest_mv: u16) -> bool {
        let enough = if self.low {
            lowest_mv.saturating_add(RECOVERED_MV)
        } else {
            lowest_mv
        };
        self.low = mv < enough;
        self.low
    }
}
