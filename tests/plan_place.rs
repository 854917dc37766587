//! Place: the 24 orientations, room in a compartment, the cut plan. Expectations are worked by hand
//! in plane and solid geometry; thousands of random ones in `plan_route/place.py`.

use nalgebra::Matrix3;
use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::cut_told::{Cut, Obstacle};
use plumbmark::plan::fit::{FitGiven, MOST_BOXES};
use plumbmark::plan::kind::{Problem, Refusal};
use plumbmark::plan::orientation::{Orientation, Way};
use plumbmark::plan::row::Row;
use plumbmark::plan::work::{Given, Worked};
use proptest::prelude::*;

const NONE: f64 = f64::NAN;

/// The numbers of a sheet by name; what is not named stays not entered.
fn told<T: Row>(named: &[(&str, f64)]) -> Vec<f64> {
    let mut x = vec![NONE; T::NAMES.len()];
    for (name, value) in named {
        let place = T::NAMES.iter().position(|n| n == name);
        x[place.expect(name)] = *value;
    }
    x
}

fn place_of<T: Row>(name: &str) -> usize {
    T::NAMES.iter().position(|n| *n == name).expect(name)
}

fn result(worked: &Worked, sheet: Sheet, name: &str) -> Given {
    let place = sheet.names().outputs.iter().position(|n| *n == name);
    worked.result(place.expect(name)).unwrap()
}

fn row_result(worked: &Worked, sheet: Sheet, row: usize, name: &str) -> Given {
    let names = sheet.names();
    let place = names.row_outputs.iter().position(|n| *n == name);
    let first = names.outputs.len() + row * names.row_outputs.len();
    worked.result(first + place.expect(name)).unwrap()
}

mod orientations {
    use super::*;

    fn matrix(orientation: Orientation) -> Matrix3<f64> {
        let [x, y, z] = orientation.axes().map(|v| v.map(f64::from));
        Matrix3::from_columns(&[x.into(), y.into(), z.into()])
    }

    #[test]
    fn are_all_proper_rotations_of_a_cube_once() {
        // Every matrix with one ±1 in each row and column and determinant 1, by trying all 3⁹.
        let mut proper = Vec::new();
        for code in 0..3usize.pow(9) {
            let m = Matrix3::from_fn(|r, c| {
                f64::from((code / 3usize.pow((3 * r + c) as u32) % 3) as u8) - 1.0
            });
            if m * m.transpose() == Matrix3::identity() && m.determinant() > 0.5 {
                proper.push(m);
            }
        }
        assert_eq!(proper.len(), 24);
        for m in proper {
            let same = Orientation::ALL.iter().filter(|o| matrix(**o) == m);
            assert_eq!(same.count(), 1, "{m}");
        }
    }

    #[test]
    fn sixteen_keep_port_and_outlet_from_pointing_up() {
        // Heater: x to the outlet, port along −z (core/src/parts.rs). Neither may look up: common
        // practice, no source (check-values §5).
        let up = |m: &Matrix3<f64>, body: [f64; 3]| (m * nalgebra::Vector3::from(body))[2] > 0.5;
        let mut allowed = 0;
        for o in Orientation::ALL {
            let m = matrix(o);
            let looks_up = up(&m, [1.0, 0.0, 0.0]) || up(&m, [0.0, 0.0, -1.0]);
            assert_eq!(o.is_allowed(), !looks_up, "{o:?}");
            allowed += usize::from(o.is_allowed());
        }
        assert_eq!(allowed, 16);
        assert_eq!(Orientation::ALL[0].port, Way::Down);
    }

    #[test]
    fn four_share_each_lay() {
        for lay in 0..6 {
            let same = Orientation::ALL.iter().filter(|o| o.lay() == lay);
            assert_eq!(same.count(), 4);
        }
    }
}

mod fit {
    use super::*;

    /// An invented heater with unequal clearances in an invented locker.
    fn locker() -> Vec<f64> {
        vec![
            620.0, 430.0, 360.0, // compartment
            370.0, 140.0, 150.0, // heater
            110.0, 90.0, 60.0, 40.0, 55.0, 45.0, // outlet, intake, top, bottom, left, right
            NONE,
        ]
    }

    fn chosen(mut x: Vec<f64>, orientation: usize) -> Worked {
        x[12] = orientation as f64;
        Sheet::Fit.work(&x, &[]).unwrap()
    }

    fn room(worked: &Worked, name: &str) -> Given {
        result(worked, Sheet::Fit, name)
    }

    #[test]
    fn room_by_hand() {
        let worked = Sheet::Fit.work(&locker(), &[]).unwrap();
        // Needed: 370+110+90 = 570 along the heater, 140+55+45 = 240 across, 150+60+40 = 250 high.
        // Left: 620−570, 430−240, 360−250 = 50, 190, 110: half of the least.
        assert_eq!(room(&worked, "room_xz_mm").value, 25.0);
        // On its side: 50, 180, 120.
        assert_eq!(room(&worked, "room_xy_mm").value, 25.0);
        // Along the depth: 430−570.
        assert_eq!(room(&worked, "room_yz_mm").value, -70.0);
        // Upright: 360−570.
        assert_eq!(room(&worked, "room_zy_mm").value, -105.0);
        assert_eq!(room(&worked, "best").value, 0.0);
        assert_eq!(room(&worked, "best").u, 0.0);
        assert!(room(&worked, "room_mm").value.is_nan());
    }

    #[test]
    fn uncertainty_by_hand() {
        let half = [4.0, 0.0, 0.0, 3.0, 0.0, 0.0];
        let worked = Sheet::Fit.work(&locker(), &half).unwrap();
        // (620 ± 4 − 370 ± 3 − 200)/2: u = √(4² + 3²)/(2 √3), U = 2 u.
        let u = room(&worked, "room_xz_mm").u;
        assert!((u - 5.0 / 3f64.sqrt()).abs() < 1e-9, "{u}");
    }

    #[test]
    fn verdict_needs_the_whole_interval() {
        let verdict = |inner_x: f64| {
            let mut x = locker();
            x[0] = inner_x;
            let worked = Sheet::Fit.work(&x, &[4.0, 0.0, 0.0, 3.0]).unwrap();
            let check = worked.check(1).unwrap();
            // No limit is told: nothing left is the limit of itself.
            worked.judged(&check, NONE, NONE).unwrap().verdict
        };
        // Needed 570; U of the room is 2.9.
        assert_eq!(verdict(576.0), Verdict::Within);
        assert_eq!(verdict(573.0), Verdict::NotProven);
        assert_eq!(verdict(570.0), Verdict::NotProven);
        assert_eq!(verdict(567.0), Verdict::NotProven);
        assert_eq!(verdict(564.0), Verdict::Beyond);
    }

    #[test]
    fn clearances_turn_with_the_heater() {
        let outlet_right = chosen(locker(), 0);
        // Outlet right, port down: left is inwards. 25 mm of room at each end beyond the intake's
        // 90, half of 190 before the right side's 45, half of 110 under the bottom's 40.
        assert_eq!(room(&outlet_right, "at_x_mm").value, 115.0);
        assert_eq!(room(&outlet_right, "at_y_mm").value, 140.0);
        assert_eq!(room(&outlet_right, "at_z_mm").value, 95.0);
        let outlet_left = chosen(locker(), 1);
        assert_eq!(room(&outlet_left, "at_x_mm").value, 135.0);
        assert_eq!(room(&outlet_left, "at_y_mm").value, 150.0);
        assert_eq!(room(&outlet_left, "spare_y_mm").value, 190.0);
    }

    #[test]
    fn a_box_in_the_way_by_hand() {
        // A wheel arch across the locker's depth, 100 wide, 200 high, in the left corner: beside it
        // 520 are left, above it 160: too little. Lengthwise −50/2; but 30 high leave 330 above it.
        let with = |height: f64| {
            let mut x = locker();
            x.extend([0.0, 0.0, 0.0, 100.0, 430.0, height]);
            let worked = Sheet::Fit.work(&x, &[]).unwrap();
            room(&worked, "room_xz_mm").value
        };
        assert_eq!(with(200.0), -25.0);
        // 620−570 lengthwise against 360−30−250 upwards.
        assert_eq!(with(30.0), 25.0);
        // 360−90−250 = 20 upwards.
        assert_eq!(with(90.0), 10.0);
    }

    #[test]
    fn a_box_that_fills_everything_leaves_nothing() {
        let mut x = locker();
        x.extend([-10.0, -10.0, -10.0, 900.0, 900.0, 900.0]);
        let worked = Sheet::Fit.work(&x, &[]).unwrap();
        let check = worked.check(0).unwrap();
        assert!(room(&worked, "room_xy_mm").value < -100.0);
        let judged = worked.judged(&check, NONE, NONE).unwrap();
        assert_eq!(judged.verdict, Verdict::Beyond);
    }

    #[test]
    fn refusals() {
        let mut x = locker();
        x[6] = NONE;
        let missing = Sheet::Fit.work(&x, &[]).unwrap_err();
        assert_eq!(missing, Refusal::at(6, Problem::Missing));
        let mut x = locker();
        for _ in 0..=MOST_BOXES {
            x.extend([0.0, 0.0, 0.0, 10.0, 10.0, 10.0]);
        }
        let many = Sheet::Fit.work(&x, &[]).unwrap_err();
        assert_eq!(many, Refusal::at(13 + 6 * MOST_BOXES, Problem::TooMany));
        let mut x = locker();
        x[12] = 24.0;
        let none = Sheet::Fit.work(&x, &[]).unwrap_err();
        assert_eq!(none, Refusal::at(12, Problem::OutOfRange));
    }

    fn any_job() -> impl Strategy<Value = Vec<f64>> {
        let inner = prop::collection::vec(200.0..1200.0, 3);
        let heater = prop::collection::vec(60.0..500.0, 3);
        let clear = prop::collection::vec(0.0..150.0, 6);
        let one = (
            prop::collection::vec(-50.0..1000.0, 3),
            prop::collection::vec(5.0..600.0, 3),
        );
        let boxes = prop::collection::vec(one, 0..5);
        (inner, heater, clear, boxes).prop_map(|(inner, heater, clear, boxes)| {
            let mut x = [inner, heater, clear, vec![NONE]].concat();
            for (at, size) in boxes {
                // A tape tells whole millimetres.
                x.extend(at.into_iter().map(f64::round));
                x.extend(size);
            }
            x
        })
    }

    fn rooms(x: &[f64]) -> Vec<f64> {
        let worked = Sheet::Fit.work(x, &vec![0.0; x.len()]).unwrap();
        (0..6).map(|i| worked.result(i).unwrap().value).collect()
    }

    proptest! {
        #[test]
        fn placed_where_nothing_is(x in any_job(), which in 0usize..24) {
            let mut x = x;
            x[12] = which as f64;
            let worked = Sheet::Fit.work(&x, &vec![0.0; x.len()]).unwrap();
            let three = |from: &str| -> [f64; 3] {
                let first = place_of::<FitGiven>(from);
                std::array::from_fn(|i| worked.result(first + i).unwrap().value)
            };
            let (at, extent) = (three("at_x_mm"), three("extent_x_mm"));
            let room = room(&worked, "room_mm").value;
            prop_assume!(room >= 0.0);
            // Around the heater, its clearances and the room: nothing of walls and boxes.
            let [bx, by, bz] = Orientation::ALL[which].axes();
            let mut low = at;
            let mut high: [f64; 3] = std::array::from_fn(|a| at[a] + extent[a]);
            let ends = [(x[7], x[6]), (x[11], x[10]), (x[9], x[8])];
            for a in 0..3 {
                for (way, ends) in [bx, by, bz].iter().zip(ends) {
                    let (l, h) = match way[a] { 1 => ends, -1 => (ends.1, ends.0), _ => (0.0, 0.0) };
                    low[a] -= l;
                    high[a] += h;
                }
                low[a] -= room;
                high[a] += room;
                prop_assert!(low[a] > -1e-9 && high[a] < x[a] + 1e-9);
            }
            for b in x[13..].chunks_exact(6) {
                let apart = (0..3).any(|a| high[a] < b[a] + 1e-9 || low[a] > b[a] + b[a + 3] - 1e-9);
                prop_assert!(apart);
            }
        }

        #[test]
        fn more_room_never_leaves_less(x in any_job(), which in 0usize..6, by in 0.0..80.0f64) {
            let before = rooms(&x);
            let mut wider = x.clone();
            wider[which] += if which < 3 { by } else { -by.min(x[which] - 55.0) };
            // What stands at the far wall stays there.
            for (a, b) in rooms(&wider).iter().zip(&before) {
                prop_assert!(a + 1e-9 >= *b);
            }
            let mut fuller = x.clone();
            prop_assume!((fuller.len() - 13) / 6 < MOST_BOXES);
            let at = by.round();
            fuller.extend([at, at, at, 100.0, 100.0, 100.0]);
            for (a, b) in rooms(&fuller).iter().zip(&before) {
                prop_assert!(*a <= b + 1e-9);
            }
        }

        #[test]
        fn changes_no_more_than_what_is_told(x in any_job(), which in 0usize..12, by in 0.0..5.0) {
            let before = rooms(&x);
            let mut moved = x.clone();
            moved[which] += by;
            for (a, b) in rooms(&moved).iter().zip(&before) {
                prop_assert!((a - b).abs() <= by + 1e-9);
            }
        }

        #[test]
        fn best_is_allowed_and_roomiest(x in any_job()) {
            let worked = Sheet::Fit.work(&x, &vec![0.0; x.len()]).unwrap();
            let best = Orientation::ALL[room(&worked, "best").value as usize];
            prop_assert!(best.is_allowed());
            let rooms = rooms(&x);
            for o in Orientation::ALL.iter().filter(|o| o.is_allowed()) {
                prop_assert!(rooms[o.lay()] <= rooms[best.lay()]);
            }
        }
    }
}

mod cut {
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
        let seen =
            |face, right: f64| gap(&moved, &by, &[face, ("right_mm", right), ("up_mm", 0.0)]);
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
        let by_hand =
            2.0 * ((2.2f64.powi(2) + 1.5f64.powi(2) + 1.0 + 0.31f64.powi(2)) / 3.0).sqrt();
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
}
