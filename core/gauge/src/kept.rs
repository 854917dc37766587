//! The calibration in flash: two slots with a checksum each, written in turn. A write that power
//! cuts short leaves the other slot, the last good one.

use embedded_storage::nor_flash::NorFlash;
use plumbmark::calibration::Calibration;
use plumbmark::line::crc32;
use plumbmark::vector::Vec3;

/// Bytes of a record: a multiple of any common write size.
pub const BYTES: usize = 64;
/// First bytes of a record: what it is, and the version of its shape.
const MARK: [u8; 4] = *b"PMK1";
/// An erased byte.
const ERASED: u8 = 0xff;

/// A calibration with its number, from 1: one more at each write.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Kept {
    /// The number.
    pub number: u16,
    /// Zero and scale found.
    pub calibration: Calibration,
}

/// What a slot, or both of them, hold.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Found {
    /// Nothing was ever written.
    Nothing,
    /// Something, but no record whose checksum is right.
    Damaged,
    /// A record.
    Good(Kept),
}

/// Reads both slots; the newer good one counts.
#[inline(never)]
pub fn load<F: NorFlash>(flash: &mut F) -> Found {
    newer(&[slot(flash, 0), slot(flash, 1)])
}

/// Writes `calibration` to the slot that does not hold the last good one. What was kept, or `None`
/// where it can't be read back.
#[inline(never)]
pub fn save<F: NorFlash>(flash: &mut F, calibration: Calibration) -> Option<Kept> {
    let slots = [slot(flash, 0), slot(flash, 1)];
    let at = u32::from(newer_is_first(&slots));
    let number = match newer(&slots) {
        Found::Good(kept) => kept.number.checked_add(1).unwrap_or(1),
        Found::Nothing | Found::Damaged => 1,
    };
    let kept = Kept {
        number,
        calibration,
    };
    let (from, record) = (start::<F>(at), record(&kept));
    flash.erase(from, start::<F>(at + 1)).ok()?;
    flash.write(from, &record).ok()?;
    let mut back = [0; BYTES];
    flash.read(from, &mut back).ok()?;
    (back == record).then_some(kept)
}

fn newer(slots: &[Found; 2]) -> Found {
    let [first, second] = slots;
    match slots {
        [Found::Good(_), _] if newer_is_first(slots) => *first,
        [_, Found::Good(_)] => *second,
        [Found::Nothing, Found::Nothing] => Found::Nothing,
        _ => Found::Damaged,
    }
}

/// Whether the first slot holds the last good record. Numbers go round: the newer one is ahead by
/// less than half of them.
fn newer_is_first(slots: &[Found; 2]) -> bool {
    match slots {
        [Found::Good(a), Found::Good(b)] => b.number.wrapping_sub(a.number) as i16 <= 0,
        [first, _] => matches!(first, Found::Good(_)),
    }
}

/// Where a slot begins: each has a page of its own, as flash is erased by the page.
fn start<F: NorFlash>(at: u32) -> u32 {
    at * F::ERASE_SIZE as u32
}

fn slot<F: NorFlash>(flash: &mut F, at: u32) -> Found {
    let mut bytes = [0; BYTES];
    if flash.read(start::<F>(at), &mut bytes).is_err() {
        return Found::Damaged;
    }
    if bytes == [ERASED; BYTES] {
        return Found::Nothing;
    }
    read(&bytes).map_or(Found::Damaged, Found::Good)
}

/// Mark, number, four vectors, the rest zero; then the checksum of all that.
#[inline(never)]
fn record(kept: &Kept) -> [u8; BYTES] {
    let c = &kept.calibration;
    let vectors = [c.zero, c.u_zero, c.scale, c.u_scale];
    let numbers = vectors.iter().flatten().flat_map(|v| v.to_le_bytes());
    let body = MARK.into_iter().chain(kept.number.to_le_bytes());
    let mut bytes = [0; BYTES];
    for (to, from) in bytes.iter_mut().zip(body.chain(numbers)) {
        *to = from;
    }
    if let Some((body, sum)) = bytes.split_last_chunk_mut::<4>() {
        *sum = crc32(body).to_le_bytes();
    }
    bytes
}

fn read(bytes: &[u8; BYTES]) -> Option<Kept> {
    let (body, sum) = bytes.split_last_chunk::<4>()?;
    let (mark, rest) = body.split_first_chunk::<4>()?;
    let (number, rest) = rest.split_first_chunk::<2>()?;
    if *mark != MARK || u32::from_le_bytes(*sum) != crc32(body) {
        return None;
    }
    let mut numbers = rest
        .as_chunks::<4>()
        .0
        .iter()
        .map(|b| f32::from_le_bytes(*b));
    let mut vector =
        || -> Option<Vec3> { Some([numbers.next()?, numbers.next()?, numbers.next()?]) };
    let calibration = Calibration {
        zero: vector()?,
        u_zero: vector()?,
        scale: vector()?,
        u_scale: vector()?,
        for_orientation: false,
    };
    Some(Kept {
        number: u16::from_le_bytes(*number),
        calibration,
    })
}
