//! Pieces that make no sense.

use super::*;
use plumbmark::plan::kind::Slip;

#[test]
fn pieces_that_make_no_sense_are_refused_at_their_field() {
    let width = Piece::KINDS.len();
    let refused = |pieces: &[Piece]| work(&AIR, pieces).unwrap_err();
    let at =
        |piece: usize, place: usize, problem| Refusal::at(OTHERS + piece * width + place, problem);
    let plain = straight(75.0, 1.0);
    for (pieces, expected) in [
        (
            vec![straight(75.0, NONE)],
            at(0, field::LENGTH, Problem::Missing),
        ),
        (
            vec![plain, bend(75.0, 90.0, NONE)],
            at(1, field::RADIUS, Problem::Missing),
        ),
        (
            vec![bend(75.0, 0.0, 1.5)],
            at(0, field::ANGLE, Problem::Contradiction),
        ),
        (
            vec![bend(75.0, 200.0, 1.5)],
            at(0, field::ANGLE, Problem::BeyondFormula),
        ),
        (
            vec![mitre(75.0, 140.0)],
            at(0, field::ANGLE, Problem::BeyondFormula),
        ),
        // 90 mm after 75 mm, and no reducer.
        (
            vec![plain, straight(90.0, 1.0)],
            at(1, field::BORE, Problem::Contradiction),
        ),
        (
            vec![Piece {
                second_bore_mm: 75.0,
                ..empty(1.0, PieceKind::Reducer, 75.0)
            }],
            at(0, field::SECOND_BORE, Problem::Contradiction),
        ),
        (
            vec![Piece {
                share: 0.0,
                ..empty(1.0, PieceKind::OpenEnd, 75.0)
            }],
            at(0, field::SHARE, Problem::Contradiction),
        ),
        (
            vec![Piece {
                share: 0.6,
                ..Piece { kind: 3.0, ..plain }
            }],
            at(0, field::SHARE, Problem::BeyondFormula),
        ),
        (
            vec![Piece {
                angle_deg: 45.0,
                ..empty(1.0, PieceKind::Branch, 75.0)
            }],
            at(0, field::SHARE, Problem::Missing),
        ),
    ] {
        assert_eq!(refused(&pieces), expected, "{pieces:?}");
    }
    let odd = |bore_mm: f64| refused(&[straight(bore_mm, 1.0)]).problem;
    assert_eq!(odd(4000.0), Problem::OutOfRange);
    assert!(matches!(odd(0.075), Problem::OtherUnit(_)));
    assert!(matches!(
        refused(&[straight(75.0, 1200.0)]).problem,
        Problem::OtherUnit(_)
    ));
    let heat = |power_w| {
        let air = air_of([100.0, power_w, 20.0, 0.0, NONE]);
        work(&air, &[plain]).map_err(|refusal| refusal.problem)
    };
    assert_eq!(heat(2.0).unwrap_err(), Problem::OtherUnit(Slip::Kilowatts));
    assert!(heat(0.0).is_ok(), "the fan alone");
    assert!(heat(30.0).is_ok());
    assert_eq!(heat(29.0).unwrap_err(), Problem::OtherUnit(Slip::Kilowatts));
    assert_eq!(
        work(&AIR, &vec![plain; 30]).unwrap_err().problem,
        Problem::TooMany
    );
}
