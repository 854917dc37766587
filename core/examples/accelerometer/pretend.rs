//! A bus without wires, and on it a sensor that lies still, for machines without either.

use super::driver::{ADDRESS, IDENTITY, STATUS, VALUES};
use embedded_hal::delay::DelayNs;
use embedded_hal::i2c::{ErrorKind, ErrorType, I2c, NoAcknowledgeSource, Operation};

/// Counts of one g.
const G: f32 = 1000.0;

/// The sensor's registers, and what it feels.
#[derive(Debug)]
pub struct Bus {
    /// What a read gives.
    pub registers: [u8; 128],
    /// The register that is read or written next.
    next: usize,
    up: [f32; 3],
    /// State of the noise.
    state: u32,
}

impl Bus {
    /// A sensor on its back whose long side rises by `elevation_deg`, turned by `roll_deg` about it.
    pub fn at(elevation_deg: f32, roll_deg: f32) -> Self {
        let ((rise, level), (turn, flat)) = (
            elevation_deg.to_radians().sin_cos(),
            roll_deg.to_radians().sin_cos(),
        );
        let mut registers = [0; 128];
        registers[usize::from(IDENTITY.0)] = IDENTITY.1;
        registers[usize::from(STATUS)] = 0x08;
        Self {
            registers,
            next: 0,
            up: [-level * turn, rise, level * flat],
            state: 1,
        }
    }

    /// −3 to 3 counts, by a linear congruential generator (Numerical Recipes' constants, from
    /// memory).
    fn noise(&mut self) -> f32 {
        self.state = self
            .state
            .wrapping_mul(1_664_525)
            .wrapping_add(1_013_904_223);
        ((self.state >> 16) % 7) as f32 - 3.0
    }

    fn sample(&mut self) {
        let first = usize::from(VALUES & 0x7F);
        for (axis, up) in self.up.into_iter().enumerate() {
            let counts = (up * G + self.noise()).round() as i16;
            let at = first + 2 * axis;
            self.registers[at..at + 2].copy_from_slice(&(counts << 4).to_le_bytes());
        }
    }

    fn select(&mut self, register: u8) {
        if register == VALUES {
            self.sample();
        }
        self.next = usize::from(register & 0x7F);
    }
}

impl ErrorType for Bus {
    type Error = ErrorKind;
}

impl I2c for Bus {
    fn transaction(&mut self, address: u8, steps: &mut [Operation<'_>]) -> Result<(), ErrorKind> {
        if address != ADDRESS {
            return Err(ErrorKind::NoAcknowledge(NoAcknowledgeSource::Address));
        }
        for step in steps {
            match step {
                Operation::Write([register, values @ ..]) => {
                    self.select(*register);
                    for value in values.iter() {
                        self.registers[self.next] = *value;
                        self.next = (self.next + 1) % 128;
                    }
                }
                Operation::Write([]) => {}
                Operation::Read(bytes) => {
                    for byte in bytes.iter_mut() {
                        *byte = self.registers[self.next];
                        self.next = (self.next + 1) % 128;
                    }
                }
            }
        }
        Ok(())
    }
}

/// Takes no time.
#[derive(Debug)]
pub struct Delay;

impl DelayNs for Delay {
    fn delay_ns(&mut self, _: u32) {}
}
