//! Room in a compartment.

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
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

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
