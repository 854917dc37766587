//! From what the part feels to whole counts.

/// What the part feels and how well, along its own axes.
#[derive(Debug, Clone, Copy)]
pub struct Felt {
    /// Specific force, mg: 1000 upwards at rest.
    pub force_mg: [f32; 3],
    /// Zero of each axis, mg.
    pub zero_mg: [f32; 3],
    /// Scale of each axis.
    pub scale: [f32; 3],
    /// Standard deviation of the noise, mg; 3 at high resolution (value from memory).
    pub noise_mg: f32,
}

impl Felt {
    /// A part without error, at rest with `up` upwards.
    #[must_use]
    pub fn still(up: [f32; 3]) -> Self {
        Self {
            force_mg: up.map(|u| u * 1000.0),
            zero_mg: [0.0; 3],
            scale: [1.0; 3],
            noise_mg: 3.0,
        }
    }

    /// One sample in counts of `bits` bits.
    pub(crate) fn counts(&self, spread: &mut Spread, step_mg: f32, bits: u32) -> [i16; 3] {
        let largest = ((1_i32 << (bits - 1)) - 1) as f32;
        core::array::from_fn(|i| {
            let mg =
                self.force_mg[i] * self.scale[i] + self.zero_mg[i] + self.noise_mg * spread.draw();
            let counts = mg / step_mg;
            let rounded = if counts < 0.0 {
                counts - 0.5
            } else {
                counts + 0.5
            };
            rounded.max(-largest - 1.0).min(largest) as i16
        })
    }
}

/// Numbers that look normal: the sum of twelve even ones, less six. The same at each run.
#[derive(Debug, Clone)]
pub struct Spread(u32);

impl Spread {
    /// Begins with any seed.
    #[must_use]
    pub const fn new(seed: u32) -> Self {
        // An xorshift of zero stays zero.
        Self(seed | 1)
    }

    fn even(&mut self) -> u32 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 17;
        self.0 ^= self.0 << 5;
        self.0
    }

    /// The next one, of mean 0 and standard deviation 1.
    pub fn draw(&mut self) -> f32 {
        let sum: u32 = (0..12).map(|_| self.even() >> 16).sum();
        sum as f32 / 65_536.0 - 6.0
    }
}
