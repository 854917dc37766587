//! A line read back: every word must be one that its place can have, every number one that can be,
//! and the gauge's answer the one that follows from them.

use super::LineError::{
    self, Damaged, ImpossibleNumber, NoSuchPlacement, NotALine, OtherRules, OtherVersion,
    UnknownWord, WordCount,
};
use super::crc::Crc;
use super::letters::{Numbers, Words, digits};
use super::words::{BASES, ENDS, HOLDS, PARTS, VERDICTS, WHYS, ZEROS};
use super::{FORMAT, Line, Shown, Speaker, VERSION};
use crate::budget::UpEstimate;
use crate::check::End;
use crate::decision::{Verdict, Why};
use crate::direct::Taken;
use crate::holds::{Hold, Placement, Surface};
use crate::limits::{Basis, Limit, SurfaceTerms};
use crate::parts::{Check, Part};
use crate::reading::ZeroBy;
use crate::sensor::Sensor;
use crate::vector::{dot, scaled};
use core::ops::RangeInclusive;
use heapless::Vec;

/// Samples of five batches, from the shortest to the fullest.
const SAMPLES: RangeInclusive<u32> = 60..=5000;
/// Samples a second.
const RATE_HZ: RangeInclusive<f32> = 1.0..=100_000.0;
/// The sensor's step, m/s²; the coarsest one that still shows gravity.
const STEP_M_S2: RangeInclusive<f32> = 1e-6..=1.0;
/// Components of up, which is of length 1 but for rounding.
const COMPONENT: RangeInclusive<f32> = -1.0001..=1.0001;
const ONE: RangeInclusive<f32> = 0.9999..=1.0001;
/// Half of a rounding step, radians; after a turn it counts with its sign.
const HALF_STEP: RangeInclusive<f32> = -0.1..=0.1;
/// Standard uncertainties, radians or shares of gravity.
const UNCERTAINTY: RangeInclusive<f32> = 0.0..=0.2;

/// Reads a line.
///
/// # Errors
/// [`LineError`], the first thing that is wrong with it.
pub fn read(line: &[u8]) -> Result<Line, LineError> {
    let (body, crc) = sound(line)?;
    let mut words = Words(Some(body));
    // The name and the version were looked at before the sum.
    words.next()?;
    words.next()?;
    let speaker = Speaker {
        gauge: words.digits()?,
        count: words.whole()?,
        software: words.version()?,
    };
    let placement = placement(&mut words)?;
    let mut ends = [None; 2];
    let (mut limits, mut shown) = (Vec::new(), Vec::new());
    for (&check, end) in placement.checks.iter().zip(&mut ends) {
        words.is(check.name())?;
        // There is room for as many as a placement gives.
        _ = shown.push(shown_of(&mut words)?);
        *end = named(words.place(&ENDS)?, &End::ALL);
        _ = limits.push(limit(&mut words, check)?);
    }
    let zero_by = required(words.place(&ZEROS)?, &ZeroBy::ALL)?;
    let samples = words.whole()?;
    let mut numbers = Numbers(words.next()?);
    if words.0.is_some() {
        return Err(WordCount);
    }
    if !SAMPLES.contains(&samples) {
        return Err(ImpossibleNumber);
    }
    let (rate_hz, step_m_s2) = (numbers.next(RATE_HZ)?, numbers.next(STEP_M_S2)?);
    let surface_deg = surface(&mut numbers, placement.surface)?;
    let taken = Taken {
        up: up(&mut numbers, &placement, zero_by)?,
        placement,
        zero_by,
        samples,
        rate_hz,
        step_m_s2,
        ends,
    };
    let decided = taken.decided(&limits, surface_deg);
    if !decided.iter().map(Shown::of).eq(shown.iter().copied()) {
        return Err(OtherRules);
    }
    Ok(Line {
        speaker,
        taken,
        limits,
        surface_deg,
        shown,
        crc,
    })
}

/// The words before the CRC, and the CRC, of a line that came through unchanged.
fn sound(line: &[u8]) -> Result<(&[u8], u32), LineError> {
    let line = line.strip_suffix(b"\n").unwrap_or(line);
    let line = line.strip_suffix(b"\r").unwrap_or(line);
    let mut words = Words(Some(line));
    if words.next() != Ok(FORMAT.as_bytes()) {
        return Err(NotALine);
    }
    if words.whole() != Ok(VERSION) {
        return Err(OtherVersion);
    }
    let mut parts = line.rsplitn(2, |b| *b == b' ');
    let last = parts.next().and_then(digits).ok_or(Damaged)?;
    let body = parts.next().ok_or(WordCount)?;
    let mut crc = Crc::EMPTY;
    for byte in body.iter().chain(b" ") {
        crc.add(*byte);
    }
    if crc.sum() == last {
        Ok((body, last))
    } else {
        Err(Damaged)
    }
}

fn named<T: Copy>(place: Option<usize>, all: &[T]) -> Option<T> {
    place.and_then(|at| all.get(at)).copied()
}

fn required<T: Copy>(place: Option<usize>, all: &[T]) -> Result<T, LineError> {
    named(place, all).ok_or(UnknownWord)
}

fn placement(words: &mut Words<'_>) -> Result<Placement, LineError> {
    let part = required(words.place(&PARTS)?, &Part::ALL)?;
    let hold = required(words.place(&HOLDS)?, &Hold::ALL)?;
    let surfaces = Surface::ALL.map(Surface::name);
    let surface = required(words.place(&surfaces)?, &Surface::ALL)?;
    Placement::new(part, hold, surface).map_err(|_| NoSuchPlacement)
}

fn shown_of(words: &mut Words<'_>) -> Result<Shown, LineError> {
    let (value, u) = (words.hundredths()?, words.hundredths()?);
    Ok(Shown {
        measured_cdeg: value.zip(u),
        verdict: required(words.place(&VERDICTS)?, &Verdict::ALL)?,
        why: named(words.place(&WHYS)?, &Why::ALL),
    })
}

fn limit(words: &mut Words<'_>, check: Check) -> Result<Limit, LineError> {
    let basis = required(words.place(&BASES)?, &Basis::ALL)?;
    let any = f32::MIN..=f32::MAX;
    let mut limit = Limit {
        basis,
        low_deg: words.option_bits(any.clone())?,
        high_deg: words.option_bits(any.clone())?,
        allowance_deg: words.option_bits(any)?,
        at_limit_allowed: match words.whole()? {
            0 => false,
            1 => true,
            _ => return Err(UnknownWord),
        },
        ..Limit::not_entered(check)
    };
    // Stands for the document, which stays with the gauge; there is room for one letter.
    _ = limit.source.push('-');
    match limit.validate() {
        Ok(()) => Ok(limit),
        Err(_) => Err(ImpossibleNumber),
    }
}

/// Hold and alignment, degrees, such as a limit set can have.
fn surface(numbers: &mut Numbers<'_>, surface: Surface) -> Result<(f32, f32), LineError> {
    let any = f32::MIN..=f32::MAX;
    let terms = SurfaceTerms {
        surface,
        hold_deg: numbers.next(any.clone())?,
        align_deg: numbers.next(any)?,
    };
    match terms.validate() {
        Ok(()) => Ok((terms.hold_deg, terms.align_deg)),
        Err(_) => Err(ImpossibleNumber),
    }
}

fn up(
    numbers: &mut Numbers<'_>,
    placement: &Placement,
    zero_by: ZeroBy,
) -> Result<UpEstimate, LineError> {
    let up = numbers.three(&COMPONENT)?;
    let noise = numbers.three(&UNCERTAINTY)?;
    let mut half_steps = [[0.0; 3]; 6];
    let placements = if zero_by == ZeroBy::Turn { 2 } else { 1 };
    for placed in half_steps.chunks_mut(3).take(placements) {
        let [x, y, z] = numbers.three(&HALF_STEP)?;
        let along = [[x, 0.0, 0.0], [0.0, y, 0.0], [0.0, 0.0, z]];
        for (to, from) in placed.iter_mut().zip(along) {
            *to = from;
        }
    }
    let worst_half_step = numbers.next(0.0..=0.2)?;
    let mut sensor = Sensor::assumed();
    sensor.u_zero = numbers.three(&UNCERTAINTY)?;
    sensor.u_scale = numbers.three(&UNCERTAINTY)?;
    let normal = placement.hold.normal();
    sensor.found_at = scaled(normal, numbers.next(COMPONENT)?);
    if !numbers.0.is_empty() {
        return Err(WordCount);
    }
    // No sensor has a zero that is known for certain along the normal, nor a scale.
    let certain = dot(sensor.u_zero, normal) == 0.0 || sensor.u_scale.contains(&0.0);
    if certain || !ONE.contains(&dot(up, up)) {
        return Err(ImpossibleNumber);
    }
    Ok(UpEstimate {
        up,
        noise,
        half_steps,
        worst_half_step,
        settle_deg: 0.0,
        sensor,
    })
}
