//! A sensor at rest, as a microcontroller reads one: whole counts of 1 mg with a little noise.

use plumbmark::prior::STANDARD_GRAVITY_M_S2;

/// Samples a second.
pub const RATE_HZ: u32 = 60;
/// Samples in a window.
pub const WINDOW: usize = 60;
/// Batches closed a second: stillness is judged at each, since nothing new is known between.
pub const BATCH_HZ: u32 = 5;
/// One count, m/s²: 1 mg, as 12 bits over ±2 g give it.
pub const COUNT_M_S2: f32 = STANDARD_GRAVITY_M_S2 / 1000.0;

/// Up in counts: y raised by 20°, turned 3° about it.
const REST: [i16; 3] = [-49, 342, 938];

/// One window at rest. Noise: the sum of two dice of five faces, 2 counts rms, by a linear
/// congruential generator (Numerical Recipes' constants, from memory).
#[must_use]
pub fn rest() -> [[i16; 3]; WINDOW] {
    let mut state = 1_u32;
    let mut die = || {
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        ((state >> 16) % 5) as i16 - 2
    };
    core::array::from_fn(|_| REST.map(|v| v + die() + die()))
}

/// A sample in m/s², as the others take it.
#[must_use]
pub fn force_m_s2(counts: [i16; 3]) -> [f32; 3] {
    counts.map(|c| f32::from(c) * COUNT_M_S2)
}
