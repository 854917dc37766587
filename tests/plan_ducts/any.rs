//! What must hold for any pieces.

use super::duty::*;
use super::*;

fn any_piece() -> impl Strategy<Value = Piece> {
    let numbers = (
        0usize..7,
        0usize..3,
        0usize..2,
        0.0..5.0f64,
        1.0..130.0f64,
        0.6..6.0f64,
        0.05..0.5f64,
    );
    numbers.prop_map(
        |(kind, layout, run, length_m, angle_deg, radius_ratio, share)| Piece {
            layout: layout as f64,
            run: run as f64,
            kind: kind as f64,
            bore_mm: 75.0,
            length_m,
            angle_deg: if kind == 6 { 0.0 } else { angle_deg },
            radius_ratio,
            second_bore_mm: if kind == 5 { 78.0 } else { NONE },
            roughness_mm: NONE,
            share,
            spread: 0.0,
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn more_air_costs_more(pieces in prop::collection::vec(any_piece(), 1..12), flow in 20.0..200.0f64) {
        let mut pieces = pieces;
        pieces.iter_mut().for_each(|p| p.layout = 0.0);
        let at = |flow: f64| {
            let mut others = AIR;
            others[0] = flow;
            loss(&others, &pieces)
        };
        let (less, more) = (at(flow), at(1.05 * flow));
        prop_assert!(less >= 0.0 && more > less);
    }

    #[test]
    fn a_longer_duct_costs_more(length in 0.1..10.0f64, share in 0.0..0.3f64, flow in 20.0..200.0f64) {
        let at = |length_m: f64, share: f64| {
            let piece = Piece { length_m, share, ..empty(1.0, PieceKind::Flexible, 75.0) };
            let mut others = AIR;
            others[0] = flow;
            loss(&others, &[piece])
        };
        prop_assert!(at(1.1 * length, share) > at(length, share));
        prop_assert!(at(length, share + 0.02) > at(length, share));
    }

    #[test]
    fn any_layout_gives_numbers_or_a_refusal(pieces in prop::collection::vec(any_piece(), 0..20)) {
        if let Ok(given) = work(&air_of([90.0, 2000.0, 10.0, 300.0, NONE]), &pieces) {
            let a = pieces.iter().any(|p| p.layout < 1.5);
            let b = pieces.iter().any(|p| p.layout > 1.5);
            prop_assert_eq!(given[LOSS_A].value.is_finite(), a);
            prop_assert_eq!(given[LOSS_B].value.is_finite(), b);
            for piece in 0..pieces.len() {
                let loss = of_piece(&given, piece, PIECE_A).max(of_piece(&given, piece, PIECE_A + 1));
                prop_assert!(loss.is_finite());
            }
            for one in given.iter().filter(|g| !g.value.is_nan()) {
                prop_assert!(one.u >= 0.0 && one.u.is_finite());
            }
        }
    }
}

const STRONG: [(f64, f64); 3] = [(20.0, 900.0), (70.0, 700.0), (140.0, 100.0)];

/// A layout with every kind of piece, parted in both runs, with pieces of A, of B and of both.
fn everything() -> Vec<Piece> {
    let with = |kind, run: f64, layout: f64| Piece {
        layout,
        length_m: 1.2,
        angle_deg: 60.0,
        radius_ratio: 1.5,
        share: 0.3,
        ..empty(run, kind, 75.0)
    };
    vec![
        with(PieceKind::OpenEnd, 0.0, 0.0),
        with(PieceKind::Straight, 0.0, 1.0),
        with(PieceKind::Branch, 0.0, 2.0),
        with(PieceKind::Bend, 0.0, 0.0),
        with(PieceKind::Flexible, 1.0, 0.0),
        with(PieceKind::Branch, 1.0, 1.0),
        with(PieceKind::Mitre, 1.0, 2.0),
        Piece {
            second_bore_mm: 60.0,
            ..with(PieceKind::Reducer, 1.0, 0.0)
        },
        Piece {
            bore_mm: 60.0,
            ..with(PieceKind::OpenEnd, 1.0, 0.0)
        },
    ]
}

#[test]
fn moving_one_number_gives_what_all_anew_would() {
    let form = Sheet::Ducts.form();
    let x = numbers(&fan(&STRONG, 100.0, 2000.0), &everything());
    let mut base = [NONE; 120];
    (form.function)(&x, &mut base).unwrap();
    let mut compared = 0;
    for place in 0..x.len() {
        let kinds = form.inputs.iter().chain(form.row.iter().cycle());
        let unit = kinds.take(place + 1).last().unwrap().unit;
        if x[place].is_nan() || unit == Unit::Choice {
            continue;
        }
        let mut moved = x.clone();
        moved[place] += 0.02 * x[place].max(0.1);
        let (mut full, mut quick) = ([NONE; 120], base);
        (form.function)(&moved, &mut full).unwrap();
        (form.moved.unwrap())(&moved, place, &mut quick).unwrap();
        for (full, quick) in full.iter().zip(&quick) {
            assert_eq!(full.is_nan(), quick.is_nan());
            if !full.is_nan() {
                assert_relative_eq!(full, quick, max_relative = 1e-9);
                compared += 1;
            }
        }
    }
    assert!(compared > 2000, "{compared}");
    assert!(base[FAN_A].is_finite() && base[FAN_A + 6].is_finite());
}
