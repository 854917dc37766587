//! What is cut, and what lies near it.

use super::*;

/// A round hole of 80 mm about the pilot hole, in a panel of 12 mm.
const HOLE: [(&str, f64); 10] = [
    ("panel_mm", 12.0),
    ("lean_right", 0.0),
    ("lean_up", 0.0),
    ("wander_mm", 0.0),
    ("middle_right_mm", 0.0),
    ("middle_up_mm", 0.0),
    ("turn_deg", 0.0),
    ("a_diameter_mm", 80.0),
    ("a_right_mm", 0.0),
    ("a_up_mm", 0.0),
];
/// A rectangle of 60 × 80, nothing round.
const RECTANGLE: [(&str, f64); 9] = [
    ("panel_mm", 12.0),
    ("lean_right", 0.0),
    ("lean_up", 0.0),
    ("wander_mm", 0.0),
    ("middle_right_mm", 0.0),
    ("middle_up_mm", 0.0),
    ("turn_deg", 0.0),
    ("width_mm", 60.0),
    ("height_mm", 80.0),
];
const NEAR: (&str, f64) = ("face", 0.0);
const FAR: (&str, f64) = ("face", 1.0);

fn plan(cut: &[(&str, f64)], also: &[(&str, f64)], rows: &[&[(&str, f64)]]) -> Vec<f64> {
    let mut x = told::<Cut>(&[cut, also].concat());
    for row in rows {
        x.extend(told::<Obstacle>(row));
    }
    x
}

fn gap(cut: &[(&str, f64)], also: &[(&str, f64)], row: &[(&str, f64)]) -> f64 {
    let worked = Sheet::CutPlan.work(&plan(cut, also, &[row]), &[]).unwrap();
    row_result(&worked, Sheet::CutPlan, 0, "gap_mm").value
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-3
}

#[test]
fn gaps_by_hand() {
    let hole = |row: &[(&str, f64)]| gap(&HOLE, &[], row);
    assert_eq!(hole(&[NEAR, ("right_mm", 100.0), ("up_mm", 0.0)]), 60.0);
    // 3, 4, 5.
    assert_eq!(hole(&[NEAR, ("right_mm", 60.0), ("up_mm", 80.0)]), 60.0);
    // A rib from 90 to 120 that runs on up and down.
    assert_eq!(
        hole(&[NEAR, ("right_mm", 90.0), ("right_to_mm", 120.0)]),
        50.0
    );
    // Told from its far side first.
    assert_eq!(
        hole(&[NEAR, ("right_mm", 120.0), ("right_to_mm", 90.0)]),
        50.0
    );
    // A pipe level below.
    assert_eq!(hole(&[NEAR, ("up_mm", -70.0)]), 30.0);
    // A cable that crosses the middle: 40 mm deep in the cut.
    assert_eq!(hole(&[NEAR, ("up_mm", 0.0)]), -40.0);
    let rectangle = |also: &[(&str, f64)], row: &[(&str, f64)]| gap(&RECTANGLE, also, row);
    let corner = [NEAR, ("right_mm", 60.0), ("up_mm", 80.0)];
    assert_eq!(rectangle(&[], &corner), 50.0);
    // Corners of 20: to their middle at (10, 20), √(50² + 60²) − 20.
    let rounded = rectangle(&[("corner_mm", 20.0)], &corner);
    assert!(close(rounded, 6100f64.sqrt() - 20.0), "{rounded}");
    // A box that ends 10 mm inside the right side.
    let inside = [
        NEAR,
        ("right_mm", 20.0),
        ("right_to_mm", 200.0),
        ("up_mm", -5.0),
        ("up_to_mm", 5.0),
    ];
    assert_eq!(rectangle(&[], &inside), -10.0);
}

#[test]
fn turned_and_moved() {
    let quarter = [("turn_deg", 90.0)];
    let right = [NEAR, ("right_mm", 100.0), ("up_mm", 0.0)];
    let turned: Vec<_> = RECTANGLE
        .iter()
        .filter(|(n, _)| *n != "turn_deg")
        .copied()
        .collect();
    assert!(close(gap(&turned, &quarter, &right), 60.0));
    // By 45°, the corner at √(30² + 40²) = 50 and 53.13° goes to 98.13°; to the right looks the
    // side between (30, −40) and (30, 40), whose corner comes to (30 + 40)/√2.
    assert!(close(
        gap(&turned, &[("turn_deg", 45.0)], &[NEAR, ("right_mm", 100.0)]),
        100.0 - 70.0 / 2f64.sqrt()
    ));
    let moved: Vec<_> = HOLE
        .iter()
        .filter(|(n, _)| *n != "middle_right_mm")
        .copied()
        .collect();
    assert_eq!(gap(&moved, &[("middle_right_mm", 25.0)], &right), 35.0);
}

#[test]
fn the_far_face_has_right_and_left_changed() {
    let moved: Vec<_> = HOLE
        .iter()
        .filter(|(n, _)| *n != "middle_right_mm")
        .copied()
        .collect();
    let by = [("middle_right_mm", 25.0)];
    let seen = |face, right: f64| gap(&moved, &by, &[face, ("right_mm", right), ("up_mm", 0.0)]);
    assert_eq!(seen(NEAR, 100.0), 35.0);
    assert_eq!(seen(FAR, 100.0), 85.0);
    assert_eq!(seen(FAR, -100.0), 35.0);
    let along = |face| {
        gap(
            &moved,
            &by,
            &[face, ("distance_mm", 100.0), ("direction_deg", 180.0)],
        )
    };
    assert!(close(along(NEAR), 85.0) && close(along(FAR), 35.0));
    // The page draws it where it is, seen from the near face.
    let x = plan(
        &moved,
        &by,
        &[&[
            FAR,
            ("right_mm", 60.0),
            ("right_to_mm", 75.0),
            ("up_mm", 10.0),
        ]],
    );
    let worked = Sheet::CutPlan.work(&x, &[]).unwrap();
    let side = |name| row_result(&worked, Sheet::CutPlan, 0, name).value;
    assert_eq!((side("left_mm"), side("right_mm")), (-75.0, -60.0));
    assert_eq!((side("bottom_mm"), side("top_mm")), (10.0, 10.0));
}

#[test]
fn a_drill_that_leans_counts_on_the_far_face() {
    let row = |face| [face, ("right_mm", -100.0), ("up_mm", 0.0)];
    let x = plan(&HOLE, &[], &[&row(NEAR), &row(FAR)]);
    let mut half = vec![0.0; x.len()];
    half[place_of::<Cut>("lean_right")] = 0.1;
    let worked = Sheet::CutPlan.work(&x, &half).unwrap();
    let u = |i| row_result(&worked, Sheet::CutPlan, i, "gap_mm").u;
    assert_eq!(u(0), 0.0);
    // 12 mm of panel × 0.1, a rectangle: U = 2 · 1.2/√3.
    assert!((u(1) - 2.4 / 3f64.sqrt()).abs() < 1e-9, "{}", u(1));
    let leaned: Vec<_> = HOLE
        .iter()
        .filter(|(n, _)| *n != "lean_right")
        .copied()
        .collect();
    assert!(close(
        gap(&leaned, &[("lean_right", 0.25)], &row(FAR)),
        63.0
    ));
}

#[test]
fn wander_moves_the_edge() {
    let cut: Vec<_> = RECTANGLE
        .iter()
        .filter(|(n, _)| *n != "wander_mm")
        .copied()
        .collect();
    let row = [NEAR, ("right_mm", 100.0), ("up_mm", 0.0)];
    assert_eq!(gap(&cut, &[("wander_mm", 3.0)], &row), 67.0);
    let worked = Sheet::CutPlan
        .work(&plan(&RECTANGLE, &[], &[&row]), &[])
        .unwrap();
    // Assumed: tape 2.2, wander 1.5, mark 1, width 0.31: half-widths of rectangles, and a turn of
    // 1° about a side that looks at the point: nothing to first order, 40 sin 0.58° at worst.
    let by_hand = 2.0 * ((2.2f64.powi(2) + 1.5f64.powi(2) + 1.0 + 0.31f64.powi(2)) / 3.0).sqrt();
    let u = row_result(&worked, Sheet::CutPlan, 0, "gap_mm").u;
    assert!(u >= by_hand && u < by_hand + 0.2, "{u} {by_hand}");
}

#[test]
fn plate_and_seal() {
    let plate = [
        ("plate_width_mm", 120.0),
        ("plate_height_mm", 108.0),
        ("plate_right_mm", 4.0),
        ("plate_up_mm", 0.0),
        ("seal_mm", 12.0),
    ];
    let under = [NEAR, ("right_mm", 60.0), ("up_mm", 0.0)];
    let behind = [FAR, ("right_mm", 60.0), ("up_mm", 0.0)];
    let x = plan(&HOLE, &plate, &[&under, &behind]);
    let worked = Sheet::CutPlan.work(&x, &[]).unwrap();
    // Beyond the hole's 40: 60 − 4 at the left, 54 above: 14 left, less 12.
    let spare = result(&worked, Sheet::CutPlan, "seal_spare_mm");
    assert_eq!(spare.value, 2.0);
    let check = worked.check(0).unwrap();
    assert_eq!(
        worked.judged(&check, NONE, NONE).unwrap().verdict,
        Verdict::NotProven
    );
    // Right side of the plate at 64; what is behind the panel is not under it.
    let plate_gap = |i| row_result(&worked, Sheet::CutPlan, i, "plate_gap_mm").value;
    assert_eq!(plate_gap(0), -4.0);
    assert!(plate_gap(1).is_nan());
    let checks: Vec<_> = (0..).map_while(|i| worked.check(i)).collect();
    assert_eq!(checks.len(), 5);
    assert_eq!(
        worked.judged(&checks[2], NONE, NONE).unwrap().verdict,
        Verdict::Beyond
    );
    assert_eq!(
        worked.judged(&checks[4], NONE, NONE).unwrap().verdict,
        Verdict::None
    );
}

#[test]
fn nearest_points_are_on_the_edges() {
    let x = plan(
        &RECTANGLE,
        &[("corner_mm", 20.0)],
        &[&[NEAR, ("right_mm", 60.0), ("up_mm", 80.0)]],
    );
    let worked = Sheet::CutPlan.work(&x, &[]).unwrap();
    let at = |name| row_result(&worked, Sheet::CutPlan, 0, name).value;
    let (from, to) = (
        [at("from_right_mm"), at("from_up_mm")],
        [at("to_right_mm"), at("to_up_mm")],
    );
    assert_eq!(to, [60.0, 80.0]);
    let far = (from[0] - to[0]).hypot(from[1] - to[1]);
    assert!(close(far, at("gap_mm")));
    assert!(close((from[0] - 10.0).hypot(from[1] - 20.0), 20.0));
    assert_eq!(
        result(&worked, Sheet::CutPlan, "reach_mm").value,
        (10f64.hypot(20.0)) + 20.0
    );
}

#[test]
fn refusals_name_the_place() {
    let refusal = |x: &[f64]| Sheet::CutPlan.work(x, &[]).unwrap_err();
    let at = |name: &str, problem| Refusal::at(place_of::<Cut>(name), problem);
    let first = Cut::NAMES.len();
    let row_at = |name: &str, problem| Refusal::at(first + place_of::<Obstacle>(name), problem);
    let base = &HOLE[..7];
    assert_eq!(
        refusal(&plan(base, &[], &[])),
        at("width_mm", Problem::Missing)
    );
    let wide = [("width_mm", 60.0)];
    assert_eq!(
        refusal(&plan(base, &wide, &[])),
        at("height_mm", Problem::Missing)
    );
    let round = [("corner_mm", 30.5)];
    assert_eq!(
        refusal(&plan(&RECTANGLE, &round, &[])),
        at("corner_mm", Problem::Contradiction)
    );
    let second = [("c_diameter_mm", 20.0), ("c_right_mm", 0.0)];
    assert_eq!(
        refusal(&plan(&HOLE, &second, &[])),
        at("c_up_mm", Problem::Missing)
    );
    let plate = [("plate_width_mm", 200.0), ("plate_height_mm", 200.0)];
    assert_eq!(
        refusal(&plan(&HOLE, &plate, &[])),
        at("plate_right_mm", Problem::Missing)
    );
    let unknown = [FAR];
    assert_eq!(
        refusal(&plan(&HOLE, &[], &[&unknown])),
        row_at("right_mm", Problem::Missing)
    );
    let twice = [FAR, ("up_mm", 5.0), ("distance_mm", 5.0)];
    assert_eq!(
        refusal(&plan(&HOLE, &[], &[&twice])),
        row_at("distance_mm", Problem::Contradiction)
    );
    let no_start = [FAR, ("up_to_mm", 5.0)];
    assert_eq!(
        refusal(&plan(&HOLE, &[], &[&no_start])),
        row_at("up_mm", Problem::Missing)
    );
    let no_distance = [FAR, ("direction_deg", 5.0)];
    assert_eq!(
        refusal(&plan(&HOLE, &[], &[&no_distance])),
        row_at("distance_mm", Problem::Missing)
    );
}

#[test]
fn doing_what_is_told_settles_it() {
    for right in [60.0, 78.0, 84.0] {
        let judged = |right: f64| {
            let x = plan(&HOLE, &[], &[&[FAR, ("right_mm", right), ("up_mm", 0.0)]]);
            let worked = Sheet::CutPlan.work(&x, &[]).unwrap();
            let check = worked.check(1).unwrap();
            worked.judged(&check, 42.0, NONE).unwrap()
        };
        let before = judged(right);
        assert_ne!(before.verdict, Verdict::Within);
        assert_eq!(judged(right + before.change).verdict, Verdict::Within);
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_distance_alone_is_taken_at_its_worst(
        distance in 0.0..400.0f64, direction in -360.0..360.0, turn in -180.0..180.0,
        right in -100.0..100.0, up in -100.0..100.0, face in 0u8..2,
    ) {
        let cut: Vec<_> = RECTANGLE.iter()
            .filter(|(n, _)| !["turn_deg", "middle_right_mm", "middle_up_mm"].contains(n)).copied().collect();
        let also = [("turn_deg", turn), ("middle_right_mm", right), ("middle_up_mm", up)];
        let distance = distance.round();
        let face = ("face", f64::from(face));
        let anywhere = gap(&cut, &also, &[face, ("distance_mm", distance)]);
        let there = gap(&cut, &also, &[face, ("distance_mm", distance), ("direction_deg", direction)]);
        // A point inside counts by the way out; the ring by what it would take to clear it all.
        prop_assert!(anywhere <= there + 1e-3, "{} {}", anywhere, there);
    }

    #[test]
    fn a_bigger_obstacle_is_never_farther(
        right in -200.0..200.0f64, up in -200.0..200.0, wide in 0.0..200.0, high in 0.0..200.0,
        turn in -180.0..180.0,
    ) {
        let cut: Vec<_> = RECTANGLE.iter().filter(|(n, _)| *n != "turn_deg").copied().collect();
        let also = [("turn_deg", turn)];
        let [right, up, wide, high] = [right, up, wide, high].map(f64::round);
        let point = [NEAR, ("right_mm", right), ("up_mm", up)];
        let area = [NEAR, ("right_mm", right), ("up_mm", up), ("right_to_mm", right + wide), ("up_to_mm", up + high)];
        let strip = [NEAR, ("right_mm", right), ("right_to_mm", right + wide)];
        let (point, area, strip) = (gap(&cut, &also, &point), gap(&cut, &also, &area), gap(&cut, &also, &strip));
        prop_assert!(area <= point + 1e-9 && strip <= area + 1e-9);
    }
}
