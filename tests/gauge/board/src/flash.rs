//! Two pages of flash as the chip has them, of which a record uses the beginning. Power may go
//! after any byte.

use embedded_storage::nor_flash::{ErrorType, NorFlash, NorFlashErrorKind, ReadNorFlash};

/// Bytes of a page that are modelled; nothing may be written behind them.
const BACKED: usize = 64;
const PAGE: u32 = 4096;
const PAGES: u32 = 2;

/// What the pages hold, and how much longer there is power.
#[derive(Debug, Clone)]
pub struct Flash {
    /// The beginning of each page.
    pub pages: [[u8; BACKED]; PAGES as usize],
    /// Bytes that may still be erased or written before power goes; `None`: it stays.
    pub power_for: Option<usize>,
    /// Whether power has gone.
    pub is_off: bool,
    /// Whether it can't be erased or written any more.
    pub is_broken: bool,
}

impl Flash {
    /// As from the factory.
    pub const ERASED: Self = Self {
        pages: [[0xff; BACKED]; PAGES as usize],
        power_for: None,
        is_off: false,
        is_broken: false,
    };

    /// Spends power on a byte; `None` where it was not enough: what is left is neither the old byte
    /// nor the new one.
    fn spend(&mut self) -> Option<()> {
        if let Some(left) = &mut self.power_for {
            let Some(less) = left.checked_sub(1) else {
                self.is_off = true;
                return None;
            };
            *left = less;
        }
        Some(())
    }

    fn page(&mut self, offset: u32) -> Option<(usize, usize)> {
        let (page, at) = (offset / PAGE, (offset % PAGE) as usize);
        (page < PAGES).then_some((page as usize, at))
    }
}

impl ErrorType for Flash {
    type Error = NorFlashErrorKind;
}

impl ReadNorFlash for Flash {
    const READ_SIZE: usize = 1;

    fn read(&mut self, offset: u32, bytes: &mut [u8]) -> Result<(), NorFlashErrorKind> {
        let (page, at) = self.page(offset).ok_or(NorFlashErrorKind::OutOfBounds)?;
        if at + bytes.len() > PAGE as usize {
            return Err(NorFlashErrorKind::OutOfBounds);
        }
        for (byte, at) in bytes.iter_mut().zip(at..) {
            *byte = self.pages[page].get(at).copied().unwrap_or(0xff);
        }
        Ok(())
    }

    fn capacity(&self) -> usize {
        (PAGE * PAGES) as usize
    }
}

impl NorFlash for Flash {
    const WRITE_SIZE: usize = 4;
    const ERASE_SIZE: usize = PAGE as usize;

    fn erase(&mut self, from: u32, to: u32) -> Result<(), NorFlashErrorKind> {
        if self.is_broken {
            return Err(NorFlashErrorKind::Other);
        }
        if !from.is_multiple_of(PAGE) || !to.is_multiple_of(PAGE) || from > to || to > PAGE * PAGES
        {
            return Err(NorFlashErrorKind::NotAligned);
        }
        for page in from / PAGE..to / PAGE {
            for at in 0..BACKED {
                let power = self.spend();
                let byte = &mut self.pages[page as usize][at];
                *byte |= if power.is_some() { 0xff } else { 0x55 };
                if power.is_none() {
                    return Err(NorFlashErrorKind::Other);
                }
            }
        }
        Ok(())
    }

    fn write(&mut self, offset: u32, bytes: &[u8]) -> Result<(), NorFlashErrorKind> {
        if !offset.is_multiple_of(4) || !bytes.len().is_multiple_of(4) {
            return Err(NorFlashErrorKind::NotAligned);
        }
        let (page, at) = self.page(offset).ok_or(NorFlashErrorKind::OutOfBounds)?;
        for (new, at) in bytes.iter().zip(at..) {
            let power = self.spend();
            let byte = self.pages[page]
                .get_mut(at)
                .ok_or(NorFlashErrorKind::OutOfBounds)?;
            assert_eq!(*byte, 0xff, "written without erasing");
            // Writing clears bits.
            let torn = if *new | 0x33 == *new {
                0xff
            } else {
                *new | 0x33
            };
            *byte &= if power.is_some() { *new } else { torn };
            if power.is_none() {
                return Err(NorFlashErrorKind::Other);
            }
        }
        Ok(())
    }
}
