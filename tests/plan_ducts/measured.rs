//! Flow that parts, flow from a measured rise, openings for return air.

use super::*;

#[test]
fn flow_parts_and_joins() {
    let branch = |run: f64, angle_deg: f64| Piece {
        share: 0.4,
        angle_deg,
        ..empty(run, PieceKind::Branch, 75.0)
    };
    let cold = Piece {
        run: 0.0,
        ..straight(75.0, 1.0)
    };
    let warm = straight(75.0, 1.0);
    let given = work(
        &AIR,
        &[cold, branch(0.0, 90.0), cold, warm, branch(1.0, 0.0), warm],
    )
    .unwrap();
    let speed = |piece| of_piece(&given, piece, SPEED);
    assert_relative_eq!(speed(0), 0.4 * speed(2), max_relative = 1e-12);
    assert_relative_eq!(speed(5), 0.4 * speed(3), max_relative = 1e-12);
    assert_eq!(given[BENDS_A].value, 90.0);
}

#[test]
fn measured_rise_gives_the_flow_back() {
    let given = work(
        &air_of([88.0, 2200.0, 14.0, 700.0, NONE]),
        &[straight(75.0, 1.0)],
    )
    .unwrap();
    let x = [2200.0, 14.0, given[OUTLET].value, 700.0];
    let worked = Sheet::AirFlow.work(&x, &[]).unwrap();
    let back = results(&worked);
    assert_relative_eq!(back[2].value, 88.0, max_relative = 1e-9);
    assert_relative_eq!(back[1].value, given[MASS].value, max_relative = 1e-9);
    let wider = given[RETURN_DENSITY].value / given[WARM_DENSITY].value;
    assert_relative_eq!(back[3].value, 88.0 * wider, max_relative = 1e-9);
    // Power by 10 %, two thermometers by 2 and 3 K, air by 250 m: as rectangles.
    let rise = back[0].value;
    let parts = [0.1, 2.0 / rise + 2.0 / 287.0, 3.0 / rise, 0.029];
    let u = 2.0 * (parts.iter().map(|p| p * p / 3.0).sum::<f64>()).sqrt();
    assert_relative_eq!(back[2].u / back[2].value, u, max_relative = 0.05);
    let backwards = Sheet::AirFlow.work(&[2200.0, 20.0, 20.0, 0.0], &[]);
    assert_eq!(
        backwards.unwrap_err(),
        Refusal::at(2, Problem::Contradiction)
    );
}

#[test]
fn openings_add_up_and_the_needed_area_is_enough() {
    let around = |area: &[f64]| {
        let mut x = vec![100.0, 20.0, 0.0, 4.0, 0.0];
        x.extend(area);
        let worked = Sheet::ReturnAir.work(&x, &[]).unwrap();
        results(&worked)
    };
    // 100 x 60 mm, 65 % free, two of them; one of 50 mm round.
    let given = around(&[100.0, 60.0, 0.65, 2.0, 50.0, NONE, 1.0, 1.0]);
    assert_relative_eq!(given[4].value, 78.0, max_relative = 1e-12);
    assert_relative_eq!(given[5].value, 19.634_954, max_relative = 1e-7);
    assert_relative_eq!(given[0].value, 97.634_954, max_relative = 1e-7);
    // ρ/2·(Q/(0.6·A))², 1.2041 kg/m³ (ideal gas).
    let expected = 0.5 * 1.2041 * (100.0f64 / 3600.0 / (0.6 * given[0].value * 1e-4)).powi(2);
    assert_relative_eq!(given[2].value, expected, max_relative = 1e-4);
    let enough = around(&[given[3].value, 100.0, 1.0, 1.0]);
    assert_relative_eq!(enough[2].value, 4.0, max_relative = 1e-9);
    let nothing = Sheet::ReturnAir.work(&[100.0, 20.0, 0.0, NONE, 0.0], &[]);
    assert_eq!(nothing.unwrap_err().problem, Problem::Missing);
}
