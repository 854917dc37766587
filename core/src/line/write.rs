//! A capture as a line, byte by byte: nothing is kept, and no text is formatted by `core::fmt`.

use super::crc::Crc;
use super::words::{BASES, ENDS, HOLDS, NONE, PARTS, VERDICTS, WHYS, ZEROS, is_of_version};
use super::{FORMAT, Shown, Speaker, VERSION};
use crate::direct::Taken;
use crate::limit_set::line_of;
use crate::limits::Limit;
use crate::reading::ZeroBy;
use crate::vector::dot;

/// Writes the line of what was taken, answered by `lines` and `surface_deg` as in
/// [`Taken::decided`], to `to`.
pub fn write(
    speaker: &Speaker,
    taken: &Taken,
    lines: &[Limit],
    surface_deg: (f32, f32),
    to: &mut dyn FnMut(u8),
) {
    let mut pen = Pen {
        to,
        crc: Crc::EMPTY,
    };
    pen.word(FORMAT);
    pen.whole(VERSION);
    pen.speaker(speaker);
    let placement = &taken.placement;
    pen.named(&PARTS, placement.part.map(|p| p as u8));
    pen.named(&HOLDS, Some(placement.hold as u8));
    pen.word(placement.surface.name());
    let decided = taken.decided(lines, surface_deg);
    for (&check, decided) in placement.checks.iter().zip(&decided) {
        pen.word(check.name());
        pen.shown(&Shown::of(decided));
        pen.named(&ENDS, taken.end_told(check).map(|end| end as u8));
        pen.limit(line_of(lines, check));
    }
    pen.named(&ZEROS, Some(taken.zero_by as u8));
    pen.whole(taken.samples);
    pen.numbers(taken, surface_deg);
    pen.space();
    pen.digits(pen.crc.sum());
    pen.byte(b'\r');
    pen.byte(b'\n');
}

struct Pen<'a> {
    to: &'a mut dyn FnMut(u8),
    crc: Crc,
}

impl Pen<'_> {
    fn byte(&mut self, byte: u8) {
        self.crc.add(byte);
        (self.to)(byte);
    }

    fn space(&mut self) {
        self.byte(b' ');
    }

    fn letters(&mut self, letters: &str) {
        for byte in letters.bytes() {
            self.byte(byte);
        }
    }

    fn word(&mut self, word: &str) {
        self.letters(word);
        self.space();
    }

    fn named(&mut self, names: &[&'static str], code: Option<u8>) {
        let name = code.and_then(|code| names.get(usize::from(code)));
        self.word(name.unwrap_or(&NONE));
    }

    fn whole_number(&mut self, number: u32) {
        let mut power = 1_000_000_000;
        while power > 0 {
            let rest = number / power;
            if rest > 0 || power == 1 {
                self.byte(b'0' + (rest % 10) as u8);
            }
            power /= 10;
        }
    }

    fn whole(&mut self, number: u32) {
        self.whole_number(number);
        self.space();
    }

    fn digits(&mut self, number: u32) {
        for at in (0..8).rev() {
            let digit = ((number >> (4 * at)) & 0xF) as u8;
            self.byte(if digit < 10 {
                b'0' + digit
            } else {
                b'A' + digit - 10
            });
        }
    }

    fn bits(&mut self, number: f32) {
        self.digits(number.to_bits());
    }

    fn all_bits(&mut self, numbers: &[f32]) {
        for number in numbers {
            self.bits(*number);
        }
    }

    fn option_bits(&mut self, number: Option<f32>) {
        match number {
            Some(number) => {
                self.bits(number);
                self.space();
            }
            None => self.word(NONE),
        }
    }

    fn hundredths(&mut self, cdeg: i32) {
        let size = cdeg.unsigned_abs();
        if cdeg < 0 {
            self.byte(b'-');
        }
        self.whole_number(size / 100);
        self.byte(b'.');
        self.byte(b'0' + (size / 10 % 10) as u8);
        self.byte(b'0' + (size % 10) as u8);
        self.space();
    }

    fn speaker(&mut self, speaker: &Speaker) {
        self.digits(speaker.gauge);
        self.space();
        self.whole(speaker.count);
        if speaker.software.is_empty() {
            self.letters(NONE);
        }
        for byte in speaker.software.bytes() {
            self.byte(if is_of_version(byte) { byte } else { b'-' });
        }
        self.space();
    }

    fn shown(&mut self, shown: &Shown) {
        if let Some((value_cdeg, u_cdeg)) = shown.measured_cdeg {
            self.hundredths(value_cdeg);
            self.hundredths(u_cdeg);
        } else {
            self.word(NONE);
            self.word(NONE);
        }
        self.named(&VERDICTS, Some(shown.verdict as u8));
        self.named(&WHYS, shown.why.map(|why| why as u8));
    }

    fn limit(&mut self, limit: &Limit) {
        self.named(&BASES, Some(limit.basis as u8));
        for number in [limit.low_deg, limit.high_deg, limit.allowance_deg] {
            self.option_bits(number);
        }
        self.whole(u32::from(limit.at_limit_allowed));
    }

    fn numbers(&mut self, taken: &Taken, surface_deg: (f32, f32)) {
        let (up, sensor) = (&taken.up, &taken.up.sensor);
        let normal = taken.placement.hold.normal();
        self.all_bits(&[taken.rate_hz, taken.step_m_s2, surface_deg.0, surface_deg.1]);
        self.all_bits(&up.up);
        self.all_bits(&up.noise);
        let placements = if taken.zero_by == ZeroBy::Turn { 2 } else { 1 };
        // Each rectangle lies along one axis, of either placement.
        for half in up.half_steps.iter().take(3 * placements) {
            self.bits(half.iter().sum());
        }
        self.bits(up.worst_half_step);
        self.all_bits(&sensor.u_zero);
        self.all_bits(&sensor.u_scale);
        self.bits(dot(sensor.found_at, normal));
    }
}
