//! What a space loses.

use super::{Named, near, refusal, result, told, value, work};
use plumbmark::plan::Sheet;
use plumbmark::plan::air;
use plumbmark::plan::demand::heat_loss::air_loss_w;
use plumbmark::plan::kind::Problem;

const SHEET: Sheet = Sheet::HeatLoss;
/// A box of 3.0 × 1.7 × 1.8 m, 30 K warmer than outside.
const BOX: [Named; 5] = [
    ("inside_celsius", 20.0),
    ("outside_celsius", -10.0),
    ("volume_m3", 9.18),
    ("changes_per_h", 1.0),
    ("altitude_m", 0.0),
];

fn whole(area: f64, u: f64) -> Vec<Named> {
    vec![("area_m2", area), ("flow", 0.0), ("u_w_per_m2_k", u)]
}

#[test]
fn a_box_by_hand() {
    // 27.12 m² · 1.0837 W/(m²·K) · 30 K = 881.69 W; ρ·cp = 1206 J/(m³·K): 92.26 W.
    near(air_loss_w(9.18, 1.0, 1.2, 1005.0 * 30.0), 92.26, 5e-5);
    let worked = work(SHEET, &BOX, &[whole(27.12, 1.0837)]);
    near(value(SHEET, &worked, "surfaces_w"), 881.69, 1e-5);
    // The box's 973.95 W has air of 1.2 kg/m³; at 20 °C and 101 325 Pa it has 1.2046 (CoolProp).
    near(value(SHEET, &worked, "loss_w"), 973.95, 6e-4);
    // CoolProp 8.0.0: 1.20458 kg/m³ · 1006.14 J/(kg·K) at 20 °C.
    let air = 9.18 * 30.0 / 3600.0 * 1.20458 * 1006.14;
    near(value(SHEET, &worked, "air_w"), air, 1e-3);
    assert!(value(SHEET, &worked, "at_least_w").is_nan());
    // One row's own results follow.
    near(worked.result(5).unwrap().value, 1.0837, 1e-12);
    near(worked.result(6).unwrap().value, 881.69, 1e-5);
}

#[test]
fn air_thins_with_height() {
    // ISO 2533: 89 875, 79 495 and 70 109 Pa at 1000, 2000 and 3000 m.
    for (altitude, pascal) in [(1000.0, 89_875.0), (2000.0, 79_495.0), (3000.0, 70_109.0)] {
        near(air::pressure_pa(altitude), pascal, 2e-5);
        let mut high = BOX;
        high[4].1 = altitude;
        let of = |named: &[Named]| value(SHEET, &work(SHEET, named, &[whole(1.0, 1.0)]), "air_w");
        near(of(&high) / of(&BOX), pascal / 101_325.0, 2e-5);
    }
}

#[test]
fn one_surface_without_ribs_told_opens_the_whole() {
    let sheet_metal = vec![
        ("area_m2", 4.0),
        ("flow", 1.0),
        ("thickness_1_mm", 1.0),
        ("conductivity_1_w_per_m_k", 50.0),
    ];
    let mut ribs = sheet_metal.clone();
    ribs.push(("bridged_share", 0.0));
    let open = work(SHEET, &BOX, &[whole(10.0, 2.0), sheet_metal]);
    let closed = work(SHEET, &BOX, &[whole(10.0, 2.0), ribs]);
    assert!(value(SHEET, &open, "loss_w").is_nan());
    assert_eq!(value(SHEET, &open, "open_surfaces"), 1.0);
    assert_eq!(value(SHEET, &closed, "open_surfaces"), 0.0);
    let at_least = value(SHEET, &open, "at_least_w");
    assert_eq!(at_least, value(SHEET, &closed, "loss_w"));
    // A roof: film 0.10.
    near(
        open.result(5 + 3 + 1).unwrap().value,
        4.0 * 30.0 / (0.14 + 2e-5),
        1e-9,
    );
}

#[test]
fn what_lies_behind_counts() {
    let mut partition = whole(3.0, 2.0);
    partition.push(("other_celsius", 12.0));
    let worked = work(SHEET, &BOX, &[partition]);
    near(value(SHEET, &worked, "surfaces_w"), 3.0 * 2.0 * 8.0, 1e-12);
}

#[test]
fn films_of_all_surfaces_go_together() {
    // Two bare surfaces are as uncertain as one of their area: the same wind blows on both.
    let bare = |area: f64| {
        vec![
            ("area_m2", area),
            ("flow", 0.0),
            ("thickness_1_mm", 1.0),
            ("conductivity_1_w_per_m_k", 50.0),
            ("bridged_share", 0.0),
        ]
    };
    let exact = |rows: &[Vec<Named>]| {
        let x = told(SHEET, &BOX, rows);
        let names = SHEET.names();
        let spread = |i: usize| names.inputs.get(i).is_some_and(|n| n.ends_with("_spread"));
        let half: Vec<f64> = (0..x.len())
            .map(|i| f64::from(u8::from(spread(i))))
            .collect();
        SHEET.work(&x, &half).unwrap().result(0).unwrap()
    };
    let (one, two) = (exact(&[bare(8.0)]), exact(&[bare(3.0), bare(5.0)]));
    near(two.value, one.value, 1e-12);
    near(two.u, one.u, 1e-9);
    assert!(one.u > 0.1 * one.value);
}

#[test]
fn refusals_name_the_field() {
    assert_eq!(refusal(SHEET, &BOX, &[]), (1, "area_m2", Problem::Missing));
    let mut warm = BOX;
    warm[1].1 = 21.0;
    assert_eq!(
        refusal(SHEET, &warm, &[whole(1.0, 1.0)]),
        (0, "outside_celsius", Problem::Contradiction)
    );
    let mut hot = whole(1.0, 1.0);
    hot.push(("other_celsius", 45.0));
    assert_eq!(
        refusal(SHEET, &BOX, &[whole(1.0, 1.0), hot]),
        (2, "other_celsius", Problem::Contradiction)
    );
    let half = vec![("area_m2", 1.0), ("flow", 0.0), ("thickness_2_mm", 25.0)];
    assert_eq!(
        refusal(SHEET, &BOX, &[whole(1.0, 1.0), half]),
        (2, "conductivity_2_w_per_m_k", Problem::Missing)
    );
}

#[test]
fn as_many_surfaces_as_the_sheet_takes() {
    let rows = |n: usize| vec![whole(1.0, 2.0); n];
    let worked = work(SHEET, &BOX, &rows(23));
    near(value(SHEET, &worked, "surfaces_w"), 23.0 * 60.0, 1e-12);
    assert!(result(SHEET, &worked, "loss_w").u > 0.0);
    let refused = SHEET.work(&told(SHEET, &BOX, &rows(24)), &[]).unwrap_err();
    assert_eq!(refused.problem, Problem::TooMany);
}
