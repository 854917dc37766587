//! A gauge's line across the border: its letters one number each; what it says, and its report by
//! the limit set that was put in, as numbers in a row.

use crate::numbers::Numbers;
use crate::page::page;
use crate::refusals::coded;
use crate::report::put_report;
use plumbmark::limits::LimitSet;
use plumbmark::line::{LONGEST, Line, LineError, read};

/// Reads the line of so many letters given and answers it by the set put in last: so many
/// numbers, or a refusal. First the gauge's number, its count, the line's CRC, the letters of its software
/// behind their number; then for each check value and U that the gauge showed, hundredths of a
/// degree, the codes of its verdict and of what stands behind it, its limit's basis and ends,
/// degrees, all behind the number of checks; then the report.
#[wasm_bindgen::prelude::wasm_bindgen]
pub fn read_line(letters: usize) -> i32 {
    let page = page();
    let mut bytes = [0; LONGEST];
    for (byte, given) in bytes.iter_mut().zip(page.given.row(0, letters)) {
        *byte = *given as u8;
    }
    let line = bytes.get(..letters).ok_or(LineError::NotALine);
    coded(line.and_then(read).map(|line| {
        page.numbers.clear();
        put_line(&mut page.numbers, &line, &page.draft);
        page.numbers.count()
    }))
}

fn put_line(to: &mut Numbers, line: &Line, limits: &LimitSet) {
    let speaker = &line.speaker;
    for number in [speaker.gauge, speaker.count, line.crc] {
        to.put(f64::from(number));
    }
    to.put_code(speaker.software.len() as u8);
    for letter in speaker.software.bytes() {
        to.put_code(letter);
    }
    to.put_code(line.shown.len() as u8);
    for (shown, limit) in line.shown.iter().zip(&line.limits) {
        let (value, u) = shown.measured_cdeg.unzip();
        for number in [value, u] {
            to.put(number.map_or(f64::NAN, f64::from));
        }
        to.put_code(shown.verdict as u8);
        to.put_code(shown.why.map_or(0, |why| why as u8 + 1));
        to.put_code(limit.basis as u8);
        to.put_option(limit.low_deg);
        to.put_option(limit.high_deg);
    }
    if let Ok(report) = line.taken.report(limits) {
        put_report(to, &report);
    }
}
