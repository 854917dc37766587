//! What each state shows, drawn by hand from the gauge's guide and not by its code: pictures in
//! their order, each with its time. `#` is a light, the tail end is on the left.

use crate::seen::Frame;
use heapless::Vec;

/// An end or a side of the gauge.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    Tail,
    Head,
    Upper,
    Lower,
}

/// A state, as the guide names it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Motion {
    SelfTest,
    Ready(Option<Side>),
    Chosen(u8),
    WhichEnd,
    NoReading,
    NotProven,
    Within,
    WithinUsage,
    Beyond(Option<Side>),
    NoVerdict,
    Turn,
    Poses(u8),
    Sent,
    Stored,
    Refused,
    Fault(u8),
}

/// A picture and its time, ms.
pub type Part = (Frame, u32);
/// Pictures in a round.
pub type Cycle = Vec<Part, 16>;

/// The motions that answer a check.
pub const VERDICTS: [Motion; 9] = [
    Motion::Within,
    Motion::WithinUsage,
    Motion::NotProven,
    Motion::NoVerdict,
    Motion::Beyond(None),
    Motion::Beyond(Some(Side::Tail)),
    Motion::Beyond(Some(Side::Head)),
    Motion::Beyond(Some(Side::Upper)),
    Motion::Beyond(Some(Side::Lower)),
];

/// No light.
pub const DARK_FRAME: Frame = [0; 5];

const DARK: &str = "..... ..... ..... ..... .....";
const RING: &str = "##### #...# #...# #...# #####";
const MIDDLE: &str = "..... ..... ..#.. ..... .....";
const TAIL: &str = "#.... #.... #.... #.... #....";
const HEAD: &str = "....# ....# ....# ....# ....#";
const UPPER: &str = "##### ..... ..... ..... .....";
const LOWER: &str = "..... ..... ..... ..... #####";
const CROSS: &str = "#...# .#.#. ..#.. .#.#. #...#";
/// The round of a motion.
pub fn cycle(motion: Motion) -> Cycle {
    use Motion as M;
    match motion {
        M::SelfTest => one_goes_round(),
        M::Ready(side) => all(300, &[side.map_or(MIDDLE, edge), DARK]),
        M::Chosen(number) => frames(450, &[count(number), DARK_FRAME]),
        M::WhichEnd => all(300, &[TAIL, HEAD]),
        M::NoReading => all(150, &TO_AND_FRO),
        M::NotProven => all(150, &CREEPING),
        M::Within => all(
            300,
            &[
                "..... .###. .###. .###. .....",
                "##### ##### ##### ##### #####",
            ],
        ),
        M::WithinUsage => all(300, &["..... .###. .#.#. .###. .....", RING]),
        M::Beyond(None) => all(
            300,
            &[
                RING,
                "##.## #...# ..... #...# ##.##",
                "#...# ..... ..... ..... #...#",
            ],
        ),
        M::Beyond(Some(side)) => all(150, &wedge(side)),
        M::NoVerdict => all(
            300,
            &[
                "#...# #...# #...# #...# #...#",
                ".#.#. .#.#. .#.#. .#.#. .#.#.",
                DARK,
            ],
        ),
        M::Turn => two_circle(),
        M::Poses(taken) => frames(300, &[count(taken), count(taken + 1)]),
        M::Sent => all(150, &[LOWER, ROWS[3], ROWS[2], ROWS[1], UPPER]),
        M::Stored => all(150, &[UPPER, ROWS[1], ROWS[2], ROWS[3], LOWER]),
        M::Refused => all(
            150,
            &[
                "..... ..... ###.. ..... .....",
                "..... ..... ..### ..... .....",
            ],
        ),
        M::Fault(number) => counted(number),
    }
}

const ROWS: [&str; 5] = [
    UPPER,
    "..... ##### ..... ..... .....",
    "..... ..... ##### ..... .....",
    "..... ..... ..... ##### .....",
    LOWER,
];

/// Seen only while something is sent or stored.
pub const MIDDLE_ROW: Frame = [0, 0, 31, 0, 0];

/// Seen only before a fault's number.
pub const CROSS_FRAME: Frame = [17, 10, 4, 10, 17];

const TO_AND_FRO: [&str; 8] = [
    "..... ..... ....# ..... .....",
    "..... ..... ...#. ..... .....",
    "..... ..... ..#.. ..... .....",
    "..... ..... .#... ..... .....",
    "..... ..... #.... ..... .....",
    "..... ..... .#... ..... .....",
    "..... ..... ..#.. ..... .....",
    "..... ..... ...#. ..... .....",
];

const CREEPING: [&str; 4] = [
    "##..# ....# ..... #.... #..##",
    ".##.. ....# #...# #.... ..##.",
    "..##. #.... #...# ....# .##..",
    "#..## #.... ..... ....# ##..#",
];

fn edge(side: Side) -> &'static str {
    match side {
        Side::Tail => TAIL,
        Side::Head => HEAD,
        Side::Upper => UPPER,
        Side::Lower => LOWER,
    }
}

fn wedge(side: Side) -> [&'static str; 4] {
    match side {
        Side::Head => [
            "#.... .#... ..#.. .#... #....",
            ".#... ..#.. ...#. ..#.. .#...",
            "..#.. ...#. ....# ...#. ..#..",
            DARK,
        ],
        Side::Tail => [
            "....# ...#. ..#.. ...#. ....#",
            "...#. ..#.. .#... ..#.. ...#.",
            "..#.. .#... #.... .#... ..#..",
            DARK,
        ],
        Side::Lower => [
            "#...# .#.#. ..#.. ..... .....",
            "..... #...# .#.#. ..#.. .....",
            "..... ..... #...# .#.#. ..#..",
            DARK,
        ],
        Side::Upper => [
            "..... ..... ..#.. .#.#. #...#",
            "..... ..#.. .#.#. #...# .....",
            "..#.. .#.#. #...# ..... .....",
            DARK,
        ],
    }
}

fn all(ms: u32, pictures: &[&str]) -> Cycle {
    pictures
        .iter()
        .map(|picture| (drawn(picture), ms))
        .collect()
}

fn frames(ms: u32, pictures: &[Frame]) -> Cycle {
    pictures.iter().map(|picture| (*picture, ms)).collect()
}

/// A drawing as the lights have it.
pub fn drawn(picture: &str) -> Frame {
    let mut frame = [0; 5];
    for (row, lights) in frame.iter_mut().zip(picture.split(' ')) {
        *row = lights
            .bytes()
            .fold(0, |row, light| row << 1 | u8::from(light == b'#'));
    }
    frame
}

/// Row and column of the outer lights, clockwise from the tail end's upper one.
fn outer(at: usize) -> (usize, usize) {
    match at % 16 {
        at @ 0..=4 => (0, at),
        at @ 5..=8 => (at - 4, 4),
        at @ 9..=12 => (4, 12 - at),
        at => (16 - at, 0),
    }
}

fn lit(lights: &[usize]) -> Frame {
    let mut frame = [0; 5];
    for at in lights {
        let (row, column) = outer(*at);
        frame[row] |= 1 << (4 - column);
    }
    frame
}

fn one_goes_round() -> Cycle {
    (0..16).map(|at| (lit(&[at]), 150)).collect()
}

fn two_circle() -> Cycle {
    (0..8).map(|at| (lit(&[at, at + 8]), 150)).collect()
}

/// A cross, then lights that add up; the last of them stands longer.
fn counted(number: u8) -> Cycle {
    let mut cycle = all(600, &[CROSS]);
    for at in 1..=number {
        let ms = if at == number { 1_200 } else { 400 };
        assert!(cycle.push((count(at), ms)).is_ok());
    }
    cycle
}

/// So many lights, row by row from the tail end's upper one.
fn count(number: u8) -> Frame {
    core::array::from_fn(|row| {
        let here = number.saturating_sub(5 * row as u8).min(5);
        0b11111_u8 << (5 - here) & 0b11111
    })
}
