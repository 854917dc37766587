//! Ducts against values from outside: handbook formulas, general libraries, and what must hold for
//! any layout. Sources beside each; `tests/plan_route/ducts.py` does the same for random cases.

mod any;
mod duty;
mod layouts;
mod measured;
mod pieces;
mod refused;
mod tables;

use approx::{assert_abs_diff_eq, assert_relative_eq};
use plumbmark::decision::Verdict;
use plumbmark::plan::ducts::piece::{Piece, PieceKind, field};
use plumbmark::plan::ducts::{fitting, friction};
use plumbmark::plan::kind::{Problem, Refusal, Unit};
use plumbmark::plan::row::Row;
use plumbmark::plan::work::{Given, Worked};
use plumbmark::plan::{Sheet, air};
use proptest::prelude::*;

const NONE: f64 = f64::NAN;

/// How many numbers come before the pieces.
const OTHERS: usize = 19;

/// Air that is told by flow, heat, temperature and height, then what else it costs; no fan.
const fn air_of(told: [f64; 5]) -> [f64; OTHERS] {
    let [flow, power, celsius, altitude, other] = told;
    let mut x = [NONE; OTHERS];
    (x[0], x[1], x[2], x[3], x[4]) = (flow, power, celsius, altitude, other);
    (x[5], x[6]) = (0.0, 0.0);
    x
}

/// 100 m³/h at 20 °C and sea level, no heat.
const AIR: [f64; OTHERS] = air_of([100.0, 0.0, 20.0, 0.0, NONE]);

/// Places of results.
const BENDS_A: usize = 0;
const LENGTH_A: usize = 1;
const LOSS_A: usize = 2;
const DEAREST_A: usize = 3;
const FAN_A: usize = 4;
const LOSS_B: usize = 8;
const DEAREST_B: usize = 9;
const LOSS_DIFFERENCE: usize = 12;
const FAN_DIFFERENCE: usize = 13;
const OUTLET: usize = 14;
const RISE: usize = 15;
const MASS: usize = 16;
const RETURN_DENSITY: usize = 17;
const WARM_DENSITY: usize = 18;
const DUCTS_GIVEN: usize = 19;
/// Of a piece.
const PIECE_GIVEN: usize = 4;
const PIECE_A: usize = 0;
const SPEED: usize = 2;

fn empty(run: f64, kind: PieceKind, bore_mm: f64) -> Piece {
    let place = PieceKind::ALL.iter().position(|k| *k == kind).unwrap();
    Piece {
        layout: 0.0,
        run,
        kind: place as f64,
        bore_mm,
        length_m: NONE,
        angle_deg: NONE,
        radius_ratio: NONE,
        second_bore_mm: NONE,
        roughness_mm: NONE,
        share: NONE,
        spread: 0.0,
    }
}

fn straight(bore_mm: f64, length_m: f64) -> Piece {
    Piece {
        length_m,
        ..empty(1.0, PieceKind::Straight, bore_mm)
    }
}

fn bend(bore_mm: f64, angle_deg: f64, radius_ratio: f64) -> Piece {
    Piece {
        angle_deg,
        radius_ratio,
        ..empty(1.0, PieceKind::Bend, bore_mm)
    }
}

fn mitre(bore_mm: f64, angle_deg: f64) -> Piece {
    Piece {
        angle_deg,
        ..empty(1.0, PieceKind::Mitre, bore_mm)
    }
}

fn numbers(others: &[f64], pieces: &[Piece]) -> Vec<f64> {
    let mut x = others.to_vec();
    for piece in pieces {
        let mut row = vec![NONE; Piece::KINDS.len()];
        piece.write(&mut row);
        x.extend(row);
    }
    x
}

fn results(worked: &Worked) -> Vec<Given> {
    (0..).map_while(|place| worked.result(place)).collect()
}

fn work(others: &[f64], pieces: &[Piece]) -> Result<Vec<Given>, Refusal> {
    let worked = Sheet::Ducts.work(&numbers(others, pieces), &[])?;
    Ok(results(&worked))
}

fn loss(others: &[f64], pieces: &[Piece]) -> f64 {
    work(others, pieces).unwrap()[2].value
}

/// Row result `which` of a piece.
fn of_piece(given: &[Given], piece: usize, which: usize) -> f64 {
    given[DUCTS_GIVEN + piece * PIECE_GIVEN + which].value
}

#[test]
fn names_stand_where_refusals_point() {
    let names = Piece::NAMES;
    for (place, name) in [
        (field::BORE, "bore_mm"),
        (field::LENGTH, "length_m"),
        (field::ANGLE, "angle_deg"),
        (field::RADIUS, "radius_ratio"),
        (field::SECOND_BORE, "second_bore_mm"),
        (field::SHARE, "share"),
    ] {
        assert_eq!(names[place], name);
    }
}
