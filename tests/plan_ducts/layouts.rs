//! Whole layouts: mass, sums, what two share, budgets, advice.

use super::*;

#[test]
fn mass_is_conserved_and_warm_air_is_faster() {
    let mut cold = straight(75.0, 1.0);
    cold.run = 0.0;
    let given = work(
        &air_of([100.0, 2000.0, 10.0, 1500.0, NONE]),
        &[cold, straight(75.0, 1.0)],
    )
    .unwrap();
    let (return_density, warm_density) = (given[RETURN_DENSITY].value, given[WARM_DENSITY].value);
    assert_relative_eq!(
        given[MASS].value,
        100.0 * return_density,
        max_relative = 1e-12
    );
    let speed = |piece| of_piece(&given, piece, SPEED);
    assert_relative_eq!(
        speed(0) * return_density,
        speed(1) * warm_density,
        max_relative = 1e-12
    );
    assert!(of_piece(&given, 1, PIECE_A) > of_piece(&given, 0, PIECE_A));
}

#[test]
fn totals_are_the_sum_of_the_pieces() {
    let pieces = [
        empty(0.0, PieceKind::OpenEnd, 75.0),
        bend(75.0, 90.0, 1.5),
        straight(75.0, 2.0),
        mitre(75.0, 45.0),
        empty(1.0, PieceKind::OpenEnd, 75.0),
    ];
    let mut others = AIR;
    others[4] = 12.0;
    let given = work(&others, &pieces).unwrap();
    let losses: Vec<f64> = (0..5).map(|p| of_piece(&given, p, PIECE_A)).collect();
    assert_relative_eq!(
        given[LOSS_A].value,
        12.0 + losses.iter().sum::<f64>(),
        max_relative = 1e-12
    );
    assert_eq!(given[BENDS_A].value, 135.0);
    // Bend: 90° of 1.5 bores of 75 mm.
    assert_relative_eq!(
        given[LENGTH_A].value,
        2.0 + 0.075 * 1.5 * core::f64::consts::FRAC_PI_2,
        max_relative = 1e-12
    );
    let dearest = losses.iter().cloned().fold(0.0, f64::max);
    assert_eq!(losses[given[DEAREST_A].value as usize - 1], dearest);
    // No piece is layout B's own.
    for place in [LOSS_B, DEAREST_B, LOSS_DIFFERENCE] {
        assert!(given[place].value.is_nan());
    }
}

#[test]
fn what_both_layouts_share_cancels() {
    let shared = [straight(75.0, 4.0), bend(75.0, 90.0, 1.0)];
    let own = |layout: f64, length: f64| Piece {
        layout,
        ..straight(75.0, length)
    };
    let apart = [own(1.0, 1.0), own(2.0, 2.0)];
    let alone = work(&AIR, &apart).unwrap();
    let together = work(&AIR, &[shared.as_slice(), &apart].concat()).unwrap();
    assert_relative_eq!(
        together[LOSS_DIFFERENCE].value,
        alone[LOSS_DIFFERENCE].value,
        max_relative = 1e-9
    );
    assert_relative_eq!(
        together[LOSS_DIFFERENCE].u,
        alone[LOSS_DIFFERENCE].u,
        max_relative = 1e-6
    );
    assert!(together[LOSS_DIFFERENCE].u < 0.5 * together[LOSS_B].u);
    assert!(together[LOSS_B].value > together[LOSS_A].value);
}

#[test]
fn bend_budget_counts_both_runs() {
    // Fewer than 270° together: common practice, no source (check-values §3).
    let run = |run: f64, angle: f64| Piece {
        run,
        ..bend(75.0, angle, 1.5)
    };
    let verdict = |first: f64| {
        let x = numbers(&AIR, &[run(0.0, first), run(1.0, 90.0)]);
        let worked = Sheet::Ducts.work(&x, &[]).unwrap();
        let check = worked.check(0).unwrap();
        worked.judged(&check, NONE, 270.0).unwrap().verdict
    };
    assert_eq!(verdict(90.0), Verdict::Within);
    assert_eq!(verdict(180.0), Verdict::NotProven);
    let flexible = Piece {
        length_m: 1.0,
        angle_deg: 200.0,
        radius_ratio: 1.5,
        ..empty(0.0, PieceKind::Flexible, 75.0)
    };
    let given = work(&AIR, &[flexible, run(1.0, 90.0)]).unwrap();
    assert_eq!(given[BENDS_A].value, 290.0);
}

#[test]
fn little_air_overheats() {
    let verdict = |flow: f64| {
        let x = numbers(
            &air_of([flow, 2000.0, 20.0, 0.0, NONE]),
            &[straight(75.0, 1.0)],
        );
        let worked = Sheet::Ducts.work(&x, &[])?;
        let check = worked.check(10).unwrap();
        Ok(worked.judged(&check, NONE, 110.0).unwrap().verdict)
    };
    assert_eq!(verdict(100.0), Ok(Verdict::Within));
    assert_eq!(verdict(70.0), Ok(Verdict::NotProven));
    assert_eq!(verdict(45.0), Ok(Verdict::Beyond));
    // Hotter than any table of ours: told at the flow.
    assert_eq!(verdict(20.0), Err(Refusal::at(0, Problem::BeyondFormula)));
}

#[test]
fn doing_what_is_told_settles_the_loss() {
    let told = |length: f64| {
        let worked = Sheet::Ducts
            .work(&numbers(&AIR, &[straight(75.0, length)]), &[])
            .unwrap();
        let check = worked.check(2).unwrap();
        let value = worked.result(2).unwrap().value;
        (worked.judged(&check, NONE, 40.0).unwrap(), value)
    };
    for length in [4.6, 5.0, 9.0] {
        let (judged, value) = told(length);
        assert_ne!(judged.verdict, Verdict::Within);
        let shorter = length * (value + judged.change) / value;
        assert_eq!(told(shorter).0.verdict, Verdict::Within, "{length}");
    }
}
