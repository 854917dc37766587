//! The board's own I²C bus. The HAL copies what it sends through a kilobyte of stack; a gauge sends
//! two bytes at most, and has four kilobytes in all.

use embedded_hal::i2c::{ErrorType, I2c, Operation};
use microbit::hal::twim::{Error, Twim};
use microbit::pac::TWIM0;

/// Longest message sent.
const LONGEST: usize = 4;

/// The bus.
pub struct Bus(pub Twim<TWIM0>);

impl ErrorType for Bus {
    type Error = Error;
}

impl I2c for Bus {
    fn transaction(&mut self, address: u8, steps: &mut [Operation<'_>]) -> Result<(), Error> {
        // What is sent must lie in RAM, and may be a constant in flash.
        let mut copy = [0; LONGEST];
        match steps {
            [Operation::Write(bytes)] => self.0.write(address, copied(bytes, &mut copy)?),
            [Operation::Write(bytes), Operation::Read(to)] => {
                self.0
                    .write_then_read(address, copied(bytes, &mut copy)?, to)
            }
            _ => Err(Error::TxBufferTooLong),
        }
    }
}

fn copied<'a>(bytes: &[u8], copy: &'a mut [u8; LONGEST]) -> Result<&'a [u8], Error> {
    let copy = copy.get_mut(..bytes.len()).ok_or(Error::TxBufferTooLong)?;
    for (to, from) in copy.iter_mut().zip(bytes) {
        *to = *from;
    }
    Ok(copy)
}
