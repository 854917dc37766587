//! CRC-32/ISO-HDLC: polynomial 04C11DB7 reflected, begun and ended with all ones. Its check value
//! over "123456789" is CBF43926 (catalogue of parametrised CRC algorithms, from memory).

/// The polynomial, bits reversed.
const REVERSED: u32 = 0xEDB8_8320;

/// A sum that grows byte by byte.
#[derive(Clone, Copy)]
pub(super) struct Crc(u32);

impl Crc {
    pub(super) const EMPTY: Self = Self(u32::MAX);

    pub(super) fn add(&mut self, byte: u8) {
        self.0 ^= u32::from(byte);
        // Bit by bit: a table would cost a board a kilobyte for a few lines an hour.
        for _ in 0..8 {
            let low = self.0 & 1;
            self.0 = (self.0 >> 1) ^ (REVERSED * low);
        }
    }

    pub(super) fn sum(self) -> u32 {
        !self.0
    }
}

/// The sum of some bytes.
#[must_use]
pub fn crc32(bytes: &[u8]) -> u32 {
    let mut crc = Crc::EMPTY;
    for byte in bytes {
        crc.add(*byte);
    }
    crc.sum()
}
