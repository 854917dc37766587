//! The calibration in flash: whatever cuts a write short, the last good one stays.

use embedded_storage::nor_flash::{
    ErrorType, NorFlash, NorFlashError, NorFlashErrorKind, ReadNorFlash,
};
use plumbmark::calibration::Calibration;
use plumbmark_gauge::kept::{BYTES, Found, Kept, load, save};

const PAGE: usize = 4096;

/// Two pages of flash whose supply may end after so many bytes.
#[derive(Clone)]
struct Flash {
    bytes: Vec<u8>,
    bytes_left: usize,
}

impl Flash {
    fn new() -> Self {
        Self {
            bytes: vec![0xff; 2 * PAGE],
            bytes_left: usize::MAX,
        }
    }

    /// One byte more, if there is power for it.
    fn powered(&mut self) -> Result<(), Off> {
        self.bytes_left = self.bytes_left.checked_sub(1).ok_or(Off)?;
        Ok(())
    }
}

#[derive(Debug)]
struct Off;

impl NorFlashError for Off {
    fn kind(&self) -> NorFlashErrorKind {
        NorFlashErrorKind::Other
    }
}

impl ErrorType for Flash {
    type Error = Off;
}

impl ReadNorFlash for Flash {
    const READ_SIZE: usize = 1;

    fn read(&mut self, offset: u32, bytes: &mut [u8]) -> Result<(), Off> {
        bytes.copy_from_slice(&self.bytes[offset as usize..][..bytes.len()]);
        Ok(())
    }

    fn capacity(&self) -> usize {
        self.bytes.len()
    }
}

impl NorFlash for Flash {
    const WRITE_SIZE: usize = 4;
    const ERASE_SIZE: usize = PAGE;

    fn erase(&mut self, from: u32, to: u32) -> Result<(), Off> {
        for at in from as usize..to as usize {
            self.powered()?;
            self.bytes[at] = 0xff;
        }
        Ok(())
    }

    fn write(&mut self, offset: u32, bytes: &[u8]) -> Result<(), Off> {
        assert!(offset.is_multiple_of(4) && bytes.len().is_multiple_of(4));
        for (at, byte) in (offset as usize..).zip(bytes) {
            self.powered()?;
            // Flash can only clear bits: an erase that was left out would show.
            self.bytes[at] &= byte;
        }
        Ok(())
    }
}

fn calibration(zero: f32) -> Calibration {
    Calibration {
        zero: [zero, -zero, 0.5 * zero],
        u_zero: [0.000_3, 0.000_4, 0.000_5],
        scale: [1.01, 0.99, 1.004],
        u_scale: [0.000_6, 0.000_7, 0.000_8],
        for_orientation: false,
    }
}

fn good(number: u16, zero: f32) -> Found {
    Found::Good(Kept {
        number,
        calibration: calibration(zero),
    })
}

#[test]
fn what_is_kept_comes_back_and_slots_take_turns() {
    let mut flash = Flash::new();
    assert_eq!(load(&mut flash), Found::Nothing);
    for number in 1..=5 {
        let zero = f32::from(number) * 0.001;
        let kept = save(&mut flash, calibration(zero)).expect("kept");
        assert_eq!(Found::Good(kept), good(number, zero));
        assert_eq!(load(&mut flash), good(number, zero));
    }
    // The one before the last still stands in the other slot.
    flash.bytes[..PAGE].fill(0);
    assert_eq!(load(&mut flash), good(4, 0.004));
}

#[test]
fn a_write_cut_short_at_any_byte_leaves_the_last_good_one() {
    for before in 1..=2_u16 {
        let mut flash = Flash::new();
        for number in 1..=before {
            save(&mut flash, calibration(f32::from(number) * 0.001)).expect("kept");
        }
        let last = load(&mut flash);
        for bytes_left in 0..PAGE + BYTES {
            let mut cut = Flash {
                bytes_left,
                ..flash.clone()
            };
            assert_eq!(save(&mut cut, calibration(0.01)), None, "{bytes_left}");
            assert_eq!(load(&mut cut), last, "{bytes_left}");
            // With power back it is kept as ever.
            cut.bytes_left = usize::MAX;
            assert!(save(&mut cut, calibration(0.02)).is_some());
            assert_eq!(load(&mut cut), good(before + 1, 0.02));
        }
        let mut whole = Flash {
            bytes_left: PAGE + BYTES,
            ..flash.clone()
        };
        assert!(save(&mut whole, calibration(0.01)).is_some());
    }
}

#[test]
fn the_very_first_write_cut_short_is_said() {
    let mut flash = Flash {
        bytes_left: PAGE + 10,
        ..Flash::new()
    };
    assert_eq!(save(&mut flash, calibration(0.01)), None);
    assert_eq!(load(&mut flash), Found::Damaged);
}

#[test]
fn any_bit_changed_is_noticed() {
    let mut flash = Flash::new();
    save(&mut flash, calibration(0.001)).expect("kept");
    for bit in 0..8 * BYTES {
        let mut changed = flash.clone();
        changed.bytes[bit / 8] ^= 1 << (bit % 8);
        assert_eq!(load(&mut changed), Found::Damaged, "{bit}");
    }
}

#[test]
fn numbers_go_round() {
    let mut flash = Flash::new();
    for number in 1..=65_537_u32 {
        let kept = save(&mut flash, calibration(0.001)).expect("kept");
        // 0 stands for "assumed" and is left out.
        assert_eq!(u32::from(kept.number), (number - 1) % 65_535 + 1);
        assert_eq!(load(&mut flash), Found::Good(kept));
    }
}
