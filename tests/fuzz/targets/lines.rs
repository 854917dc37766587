//! Lines of a gauge: any bytes, and sound lines with words changed and a sum that fits them. What is
//! read has numbers that can be, and comes back the same when it is written again.
#![no_main]

use arbitrary::{Arbitrary, Result, Unstructured};
use libfuzzer_sys::fuzz_target;
use plumbmark::check::End;
use plumbmark::direct::Direct;
use plumbmark::holds::{Hold, Placement, Surface};
use plumbmark::limits::LimitSet;
use plumbmark::line::{LONGEST, Speaker, read, write};
use plumbmark::parts::Part;
use plumbmark::sensor::Sensor;
use plumbmark_fuzz::any;

/// Counts of 1 mg, m/s².
const COUNT_M_S2: f32 = 0.009_806_65;

/// A line as a gauge writes it, of a sensor that lay somehow on something.
fn sound(u: &mut Unstructured<'_>) -> Result<Vec<u8>> {
    let (part, hold) = (*u.choose(&Part::ALL)?, *u.choose(&Hold::ALL)?);
    let mut line = Vec::new();
    let Ok(placement) = Placement::new(part, hold, *u.choose(&Surface::ALL)?) else {
        return Ok(line);
    };
    let mut direct = Direct::new(COUNT_M_S2, Sensor::unchecked(0.0231, 0.02), placement);
    let counts = any::direction(u)?.map(|v| (1000.0 * v) as i16);
    let noise: [i16; 4] = [
        u.int_in_range(-3..=3)?,
        u.int_in_range(-3..=3)?,
        u.int_in_range(-3..=3)?,
        u.int_in_range(-3..=3)?,
    ];
    for i in 0..75 {
        let felt = core::array::from_fn(|axis| counts[axis] + noise[(i + axis) % 4]);
        _ = direct.push(17_000, felt);
    }
    let told = [None, Some(End::Tail), Some(End::Head), Some(End::Photo)];
    let ends = [*u.choose(&told)?, *u.choose(&told)?];
    let set = LimitSet::trade_usage();
    let speaker = Speaker {
        gauge: u.arbitrary()?,
        count: u.arbitrary()?,
        software: Default::default(),
    };
    if let Ok(taken) = direct.take((0.3, 1.0), ends) {
        write(&speaker, &taken, &set.lines, (0.3, 1.0), &mut |b| {
            line.push(b)
        });
        assert!(read(&line).is_ok_and(|found| found.taken == taken));
    }
    Ok(line)
}

/// Bit by bit, as the catalogue of CRCs describes CRC-32/ISO-HDLC.
fn sum(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(u32::MAX, |crc, byte| {
        (0..8).fold(crc ^ u32::from(*byte), |crc, _| {
            (crc >> 1) ^ if crc & 1 == 1 { 0xEDB8_8320 } else { 0 }
        })
    })
}

/// A sound line with some of its bytes changed, and the sum that fits them.
fn changed(u: &mut Unstructured<'_>) -> Result<Vec<u8>> {
    let mut body = sound(u)?;
    // Without its sum and its end.
    body.truncate(body.len().saturating_sub(10));
    for _ in 0..u.int_in_range(0..=4)? {
        if body.is_empty() {
            break;
        }
        let at = u.choose_index(body.len())?;
        let letters = b"0123456789ABCDEF .-+abcdefghijklmnopqrstuvwxyz_\n\x80";
        match u.int_in_range(0..=2)? {
            0 => body[at] = *u.choose(letters)?,
            1 => drop(body.remove(at)),
            _ => body.insert(at, *u.choose(letters)?),
        }
    }
    let sum = format!("{:08X}\r\n", sum(&body));
    body.extend(sum.bytes());
    Ok(body)
}

fn run(u: &mut Unstructured<'_>) -> Result<()> {
    let bytes = if u.ratio(1, 4)? {
        Vec::arbitrary(u)?
    } else {
        changed(u)?
    };
    let Ok(line) = read(&bytes) else {
        return Ok(());
    };
    for shown in &line.shown {
        assert!(shown.measured_cdeg.is_none_or(|(_, u)| u > 0));
    }
    let mut again = Vec::new();
    let mut pen = |byte| again.push(byte);
    write(
        &line.speaker,
        &line.taken,
        &line.limits,
        line.surface_deg,
        &mut pen,
    );
    assert!(again.len() <= LONGEST);
    assert_eq!(read(&again), Ok(line));
    Ok(())
}

fuzz_target!(|data: &[u8]| {
    // Bytes that end too early end the run.
    let _ = run(&mut Unstructured::new(data));
});
