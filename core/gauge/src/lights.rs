//! Five by five lights: each state is a shape of its own and a motion of its own, readable without
//! colour. A picture that does not move is a gauge that has stopped.

use crate::fault::Fault;

/// Rows from the top, the tail end's column as the highest of five bits.
pub type Frame = [u8; 5];

/// An end or a side of the gauge, seen with its lights towards you and the tail end on the left.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Towards {
    /// The tail end, left.
    Tail,
    /// The head end, right.
    Head,
    /// The upper long side.
    Upper,
    /// The lower long side.
    Lower,
}

/// What is shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Show {
    /// The self test runs: one light goes round.
    SelfTest,
    /// It has passed: a blinking bar at the side that is up; `None` when that is the face.
    Ready(Option<Towards>),
    /// A check was chosen, by its number from 1.
    Chosen(u8),
    /// Which end looks lower? The ends' columns blink in turn.
    WhichEnd,
    /// No reading: one light goes to and fro.
    NoReading,
    /// Not proven: a dashed frame, its dashes creeping.
    NotProven,
    /// Within a limit of the manual or a law: a solid square that grows and shrinks.
    Within,
    /// Within trade usage or an assumed number: the same, hollow.
    WithinUsage,
    /// Beyond: a wedge runs to the end or side that has to rise; `None`: a frame breaks open.
    Beyond(Option<Towards>),
    /// The eye and the gauge name different ends, or the eye can't tell: both ends' columns close in.
    NoVerdict,
    /// The first placement is kept: turn the gauge end for end. Two lights circle.
    Turn,
    /// Poses of the calibration so far; the next one blinks.
    Poses(u8),
    /// A capture has been sent: a row runs up.
    Sent,
    /// The calibration has been kept: a row runs down.
    Stored,
    /// What was asked for was not done: a bar shakes.
    Refused,
    /// A fault: a cross, then its number in lights, one after the other.
    Fault(Fault),
}

/// Length of a step of most motions, ms.
const STEP_MS: u32 = 150;
/// The outer lights, clockwise from the first row's tail end: row and bit.
const ROUND: [(u8, u8); 16] = [
    (0, 4),
    (0, 3),
    (0, 2),
    (0, 1),
    (0, 0),
    (1, 0),
    (2, 0),
    (3, 0),
    (4, 0),
    (4, 1),
    (4, 2),
    (4, 3),
    (4, 4),
    (3, 4),
    (2, 4),
    (1, 4),
];
const DARK: Frame = [0; 5];
const FULL: Frame = [0b11111; 5];
const RING: Frame = [0b11111, 0b10001, 0b10001, 0b10001, 0b11111];
const BLOCK: Frame = [0, 0b01110, 0b01110, 0b01110, 0];
const SMALL_RING: Frame = [0, 0b01110, 0b01010, 0b01110, 0];
const MIDDLE: Frame = [0, 0, 0b00100, 0, 0];
const CROSS: Frame = [0b10001, 0b01010, 0b00100, 0b01010, 0b10001];
const BROKEN: Frame = [0b11011, 0b10001, 0, 0b10001, 0b11011];
const APART: Frame = [0b10001, 0, 0, 0, 0b10001];
/// A wedge that points to the head end.
const WEDGE: Frame = [0b01000, 0b00100, 0b00010, 0b00100, 0b01000];

/// The picture of a state that has been shown for `ms`.
#[must_use]
#[inline(never)]
pub fn frame(show: Show, ms: u32) -> Frame {
    let step = ms / STEP_MS;
    match show {
        Show::SelfTest => round(1 << (step % 16)),
        Show::Ready(side) => blink(step / 2, side.map_or(MIDDLE, edge)),
        Show::Chosen(number) => blink(step / 3, dots(number)),
        Show::WhichEnd => pick(step / 2, &[edge(Towards::Tail), edge(Towards::Head)]),
        Show::NoReading => to_and_fro(step),
        Show::NotProven => round(0x3333_u16.rotate_left(step)),
        Show::Within => pick(step / 2, &[BLOCK, FULL]),
        Show::WithinUsage => pick(step / 2, &[SMALL_RING, RING]),
        Show::Beyond(None) => pick(step / 2, &[BROKEN, APART, DARK]),
        Show::Beyond(Some(side)) => turned(run(step), side),
        Show::NoVerdict => pick(step / 2, &[[0b10001; 5], [0b01010; 5], DARK]),
        Show::Turn => round(0x0101 << (step % 8)),
        Show::Poses(taken) => dots(taken + (step / 2 % 2) as u8),
        Show::Sent => row(4 - step % 5),
        Show::Stored => row(step % 5),
        Show::Refused => pick(step, &[[0, 0, 0b11100, 0, 0], [0, 0, 0b00111, 0, 0]]),
        Show::Fault(fault) => counted(fault.number(), ms),
    }
}

fn pick(step: u32, pictures: &[Frame]) -> Frame {
    let at = step as usize % pictures.len().max(1);
    pictures.get(at).copied().unwrap_or(DARK)
}

fn blink(step: u32, picture: Frame) -> Frame {
    pick(step, &[picture, DARK])
}

/// The outer lights that have a bit, clockwise from the first row's tail end.
fn round(lit: u16) -> Frame {
    let mut picture = DARK;
    for (at, (row, bit)) in ROUND.iter().enumerate() {
        if let Some(lights) = picture.get_mut(usize::from(*row)) {
            *lights |= ((lit >> at & 1) as u8) << bit;
        }
    }
    picture
}

fn edge(side: Towards) -> Frame {
    match side {
        Towards::Tail => [0b10000; 5],
        Towards::Head => [0b00001; 5],
        Towards::Upper => row(0),
        Towards::Lower => row(4),
    }
}

fn row(at: u32) -> Frame {
    let mut picture = DARK;
    if let Some(lights) = picture.get_mut(at as usize) {
        *lights = 0b11111;
    }
    picture
}

/// The first lights, row by row.
fn dots(number: u8) -> Frame {
    let mut left = number;
    DARK.map(|_| {
        let here = left.min(5);
        left -= here;
        0b11111 << (5 - here) & 0b11111
    })
}

fn to_and_fro(step: u32) -> Frame {
    let at = step % 8;
    [0, 0, 1 << at.min(8 - at), 0, 0]
}

/// The wedge on its way from the tail to the head end.
fn run(step: u32) -> Frame {
    match step % 4 {
        0 => WEDGE.map(|lights| lights << 1 & 0b11111),
        1 => WEDGE,
        2 => WEDGE.map(|lights| lights >> 1),
        _ => DARK,
    }
}

/// A picture made for the head end, turned towards another side.
fn turned(picture: Frame, side: Towards) -> Frame {
    let mirrored = picture.map(|lights| (0..5).fold(0, |m, bit| m << 1 | lights >> bit & 1));
    match side {
        Towards::Head => picture,
        Towards::Tail => mirrored,
        Towards::Lower => swapped(picture),
        Towards::Upper => swapped(mirrored),
    }
}

/// Rows for columns.
fn swapped(picture: Frame) -> Frame {
    let mut bit = 5;
    DARK.map(|_| {
        bit -= 1;
        picture
            .iter()
            .fold(0, |m, lights| m << 1 | lights >> bit & 1)
    })
}

/// A cross for 0.6 s, then lights that add up to the number, 0.4 s each, and a pause.
fn counted(number: u8, ms: u32) -> Frame {
    let of_round = ms % (1_400 + 400 * u32::from(number));
    match of_round.checked_sub(600) {
        None => CROSS,
        Some(since) => dots(number.min((since / 400) as u8 + 1)),
    }
}
