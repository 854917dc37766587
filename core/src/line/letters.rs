//! A line taken apart: words parted by one space, and numbers in one word.

use super::LineError::{self, ImpossibleNumber, UnknownWord, WordCount};
use super::words::{NONE, is_of_version};
use crate::vector::Vec3;
use core::ops::RangeInclusive;
use heapless::String;

/// The words left; `None` behind the last one.
pub(super) struct Words<'a>(pub(super) Option<&'a [u8]>);

impl<'a> Words<'a> {
    pub(super) fn next(&mut self) -> Result<&'a [u8], LineError> {
        let rest = self.0.ok_or(WordCount)?;
        let mut parted = rest.splitn(2, |b| *b == b' ');
        let word = parted.next().ok_or(WordCount)?;
        self.0 = parted.next();
        Ok(word)
    }

    pub(super) fn is(&mut self, word: &str) -> Result<(), LineError> {
        let found = self.next()? == word.as_bytes();
        found.then_some(()).ok_or(UnknownWord)
    }

    pub(super) fn digits(&mut self) -> Result<u32, LineError> {
        digits(self.next()?).ok_or(UnknownWord)
    }

    pub(super) fn whole(&mut self) -> Result<u32, LineError> {
        decimal(self.next()?).ok_or(UnknownWord)
    }

    pub(super) fn version<const N: usize>(&mut self) -> Result<String<N>, LineError> {
        let word = self.next()?;
        let known = !word.is_empty() && word.iter().all(|b| is_of_version(*b));
        let text = core::str::from_utf8(word).ok().filter(|_| known);
        text.and_then(|t| String::try_from(t).ok())
            .ok_or(UnknownWord)
    }

    /// Place of a word among `names`; `None` for none.
    pub(super) fn place(&mut self, names: &[&str]) -> Result<Option<usize>, LineError> {
        let word = self.next()?;
        if word == NONE.as_bytes() {
            return Ok(None);
        }
        let found = names.iter().position(|name| name.as_bytes() == word);
        found.map(Some).ok_or(UnknownWord)
    }

    /// A number with two decimals, in hundredths.
    pub(super) fn hundredths(&mut self) -> Result<Option<i32>, LineError> {
        let word = self.next()?;
        if word == NONE.as_bytes() {
            return Ok(None);
        }
        let sign = if word.starts_with(b"-") { -1 } else { 1 };
        let size = word.strip_prefix(b"-").unwrap_or(word);
        hundredths(size)
            .map(|size| Some(sign * size))
            .ok_or(UnknownWord)
    }

    /// The bits of a number within `range`, or none.
    pub(super) fn option_bits(
        &mut self,
        range: RangeInclusive<f32>,
    ) -> Result<Option<f32>, LineError> {
        let word = self.next()?;
        if word == NONE.as_bytes() {
            return Ok(None);
        }
        let mut numbers = Numbers(word);
        let number = numbers.next(range)?;
        numbers
            .0
            .is_empty()
            .then_some(Some(number))
            .ok_or(UnknownWord)
    }
}

/// The numbers left, eight digits each.
pub(super) struct Numbers<'a>(pub(super) &'a [u8]);

impl Numbers<'_> {
    pub(super) fn next(&mut self, range: RangeInclusive<f32>) -> Result<f32, LineError> {
        let (word, rest) = self.0.split_at_checked(8).ok_or(WordCount)?;
        self.0 = rest;
        let number = digits(word).map(f32::from_bits).ok_or(UnknownWord)?;
        // NaN lies in no range.
        let can_be = range.contains(&number);
        can_be.then_some(number).ok_or(ImpossibleNumber)
    }

    pub(super) fn three(&mut self, range: &RangeInclusive<f32>) -> Result<Vec3, LineError> {
        let mut all = [0.0; 3];
        for number in &mut all {
            *number = self.next(range.clone())?;
        }
        Ok(all)
    }
}

/// Eight digits, capitals only: a line has one way to say a number.
pub(super) fn digits(word: &[u8]) -> Option<u32> {
    if word.len() != 8 {
        return None;
    }
    word.iter().try_fold(0_u32, |sum, &letter| {
        let digit = match letter {
            b'0'..=b'9' => letter - b'0',
            b'A'..=b'F' => letter - b'A' + 10,
            _ => return None,
        };
        Some((sum << 4) | u32::from(digit))
    })
}

/// A decimal number without leading zeros.
fn decimal(word: &[u8]) -> Option<u32> {
    if word.is_empty() || (word.len() > 1 && word.starts_with(b"0")) {
        return None;
    }
    added(0, word)
}

/// Decimal digits behind those of `sum`.
fn added(sum: u32, word: &[u8]) -> Option<u32> {
    word.iter().try_fold(sum, |sum, letter| {
        let digit = letter.checked_sub(b'0').filter(|d| *d < 10)?;
        sum.checked_mul(10)?.checked_add(u32::from(digit))
    })
}

fn hundredths(word: &[u8]) -> Option<i32> {
    let (whole, rest) = word.split_at_checked(word.len().checked_sub(3)?)?;
    let cents = rest.strip_prefix(b".")?;
    i32::try_from(added(decimal(whole)?, cents)?).ok()
}
