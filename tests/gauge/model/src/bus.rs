//! The I²C bus with the part on it: two addresses, a register's address first, its highest bit for
//! going on to the next one.

use crate::registers::{IDENTITY, WHO_AM_I};
use crate::{BOOT_US, Fault, Sensor};
use embedded_hal::i2c::{ErrorKind, ErrorType, I2c, NoAcknowledgeSource, Operation};

/// Addresses of the accelerometer and of the magnetometer. Tables "SAD+Read/Write patterns".
pub const ACCELEROMETER: u8 = 0x19;
/// See [`ACCELEROMETER`].
pub const MAGNETOMETER: u8 = 0x1e;

impl ErrorType for Sensor {
    type Error = ErrorKind;
}

impl I2c for Sensor {
    fn transaction(
        &mut self,
        address: u8,
        operations: &mut [Operation<'_>],
    ) -> Result<(), ErrorKind> {
        self.acknowledges(address)?;
        let (mut register, mut goes_on) = (0, false);
        for operation in operations {
            match operation {
                Operation::Write(bytes) => {
                    let Some((first, values)) = bytes.split_first() else {
                        continue;
                    };
                    (register, goes_on) = (first & 0x7f, first & 0x80 != 0);
                    for value in values {
                        self.write_register(address, register, *value);
                        register += u8::from(goes_on);
                    }
                }
                Operation::Read(bytes) => {
                    for byte in bytes.iter_mut() {
                        *byte = self.read_register(address, register);
                        register += u8::from(goes_on);
                    }
                }
            }
        }
        Ok(())
    }
}

impl Sensor {
    fn acknowledges(&self, address: u8) -> Result<(), ErrorKind> {
        let there = match address {
            ACCELEROMETER => self.fault != Some(Fault::NoAcknowledge),
            MAGNETOMETER => true,
            _ => false,
        };
        if self.fault == Some(Fault::StuckBus) {
            Err(ErrorKind::Bus)
        } else if there && self.on_us >= BOOT_US {
            Ok(())
        } else {
            Err(ErrorKind::NoAcknowledge(NoAcknowledgeSource::Address))
        }
    }

    fn read_register(&mut self, address: u8, register: u8) -> u8 {
        if address == MAGNETOMETER {
            self.registers.read_magnetometer(register)
        } else if register == WHO_AM_I && self.fault == Some(Fault::WrongIdentity) {
            !IDENTITY
        } else {
            self.registers.read(register)
        }
    }

    fn write_register(&mut self, address: u8, register: u8, value: u8) {
        if address == MAGNETOMETER {
            self.registers.write_magnetometer(register, value);
        } else {
            self.registers.write(register, value);
        }
    }
}
