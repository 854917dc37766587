//! U values.

use super::{fill, near};
use plumbmark::plan::Sheet;
use plumbmark::plan::demand::material::MATERIALS;
use plumbmark::plan::demand::surface::{
    HeatFlow, OUTSIDE_FILM, Surface, Through, Within, bridged_m2_k_per_w,
};
use plumbmark::plan::kind::{Problem, Refusal};
use plumbmark::plan::row::Row;
use proptest::prelude::*;

const MIDDLE: Within = Within {
    inside_film: 0.0,
    outside_film: 0.0,
    bridge: 0.0,
};

fn surface(named: &[(&'static str, f64)]) -> Surface {
    let all = [&[("area_m2", 1.0), ("flow", 0.0)], named].concat();
    Surface::read(&fill(Sheet::HeatLoss.names().row, &all))
}

fn through(named: &[(&'static str, f64)]) -> Through {
    surface(named).through(&MIDDLE).unwrap()
}

const STEEL: [(&str, f64); 2] = [("thickness_1_mm", 1.5), ("conductivity_1_w_per_m_k", 50.0)];
const INSULATED: [(&str, f64); 6] = [
    ("thickness_1_mm", 5.0),
    ("conductivity_1_w_per_m_k", 0.13),
    ("thickness_2_mm", 25.0),
    ("conductivity_2_w_per_m_k", 0.035),
    ("thickness_3_mm", 1.5),
    ("conductivity_3_w_per_m_k", 50.0),
];

#[test]
fn u_values_by_iso_6946() {
    // Films 0.13 and 0.04 m²·K/W; 1/(0.13 + 0.04 + Σ d/λ), computed.
    near(through(&STEEL).u_w_per_m2_k, 5.8813, 1e-5);
    near(through(&INSULATED).u_w_per_m2_k, 1.0837, 5e-5);
    let glass = [("thickness_1_mm", 4.0), ("conductivity_1_w_per_m_k", 1.0)];
    near(through(&glass).u_w_per_m2_k, 5.7471, 1e-5);
    // The standard's table: sideways 0.13, up 0.10, down 0.17.
    let films = HeatFlow::ALL.map(HeatFlow::inside_film_m2_k_per_w);
    assert_eq!(films, [0.13, 0.10, 0.17]);
    for (code, film) in films.into_iter().enumerate() {
        let flow = ("flow", code as f64);
        let u = through(&[flow, STEEL[0], STEEL[1]]).u_w_per_m2_k;
        near(u, 1.0 / (film + OUTSIDE_FILM + 0.0015 / 50.0), 1e-12);
    }
}

#[test]
fn films_span_what_the_standard_gives() {
    // ISO 6946's annex (from memory): 1/(4 + 4·v + h_r), h_r = 0.9 · 5.1 W/(m²·K) at 10 °C.
    let film = |wind: f64| 1.0 / (4.0 + 4.0 * wind + 0.9 * 5.1);
    let u = |outside_film| {
        let within = Within {
            outside_film,
            ..MIDDLE
        };
        surface(&STEEL).through(&within).unwrap().u_w_per_m2_k
    };
    for (wind, end) in [(10.0, -1.0), (4.0, 0.0), (2.0, 1.0)] {
        near(u(end), 1.0 / (0.13 + film(wind) + 0.0015 / 50.0), 6e-3);
    }
    // Behind it a room: still air or wind, anything between.
    let room = surface(&[STEEL[0], STEEL[1], ("other_celsius", 10.0)]);
    for (outside_film, other) in [(-1.0, 0.04), (1.0, 0.13)] {
        let within = Within {
            outside_film,
            ..MIDDLE
        };
        let u = room.through(&within).unwrap().u_w_per_m2_k;
        near(u, 1.0 / (0.13 + other + 0.0015 / 50.0), 1e-12);
    }
}

#[test]
fn without_ribs_told_it_is_the_least() {
    assert!(through(&INSULATED).is_least);
    let none = [&INSULATED[..], &[("bridged_share", 0.0)]].concat();
    assert!(!through(&none).is_least);
    // A U value is of all of it.
    assert!(!through(&[("u_w_per_m2_k", 2.9)]).is_least);
}

#[test]
fn ribs_lie_between_both_ends() {
    // 15 % of softwood studs, 140 mm of 0.13, between mineral wool of 0.04, plasterboard 12.5 mm of
    // 0.25 in all of it taken into both paths: R' and R'' by hand.
    let (films, board, wool, stud) = (0.17, 0.05, 3.5, 0.14 / 0.13);
    let (u, bridged) = (1.0 / (films + board + wool), 1.0 / (films + board + stud));
    let (least, most) = bridged_m2_k_per_w(films, u, bridged, 0.15);
    near(most, 1.0 / (0.85 / 3.72 + 0.15 / (0.22 + stud)), 1e-12);
    let body = 1.0 / (0.85 / (board + wool) + 0.15 / (board + stud));
    near(least, films + body, 1e-12);
    let told = [
        ("u_w_per_m2_k", u),
        ("bridged_share", 0.15),
        ("bridged_u_w_per_m2_k", bridged),
    ];
    let got = through(&told);
    assert!(!got.is_least);
    near(got.u_w_per_m2_k, 2.0 / (least + most), 1e-12);
}

#[test]
fn bare_metal_through_insulation_stays_a_lower_end() {
    // R'/R'' is 4.4: beyond what ISO 6946's method is for.
    let ribs = [("bridged_share", 0.05), ("bridged_u_w_per_m2_k", 5.88)];
    let got = through(&[&INSULATED[..], &ribs].concat());
    assert!(got.is_least);
    near(got.u_w_per_m2_k, 0.95 * 1.0837 + 0.05 * 5.88, 1e-4);
}

#[test]
fn what_is_told_in_half_is_refused() {
    let refused = |named: &[(&'static str, f64)]| surface(named).through(&MIDDLE).unwrap_err();
    let missing = |place| Refusal::at(place, Problem::Missing);
    assert_eq!(refused(&[]), missing(2));
    assert_eq!(refused(&[("conductivity_2_w_per_m_k", 0.04)]), missing(4));
    assert_eq!(refused(&[("thickness_3_mm", 20.0)]), missing(7));
    let both = [&STEEL[..], &[("u_w_per_m2_k", 2.0)]].concat();
    assert_eq!(refused(&both), Refusal::at(8, Problem::Contradiction));
    let half = [&STEEL[..], &[("bridged_share", 0.1)]].concat();
    assert_eq!(refused(&half), missing(10));
    let thin = [("thickness_1_mm", -0.2), ("conductivity_1_w_per_m_k", 0.04)];
    assert_eq!(refused(&thin), Refusal::at(2, Problem::Contradiction));
}

#[test]
fn materials_as_the_library_has_them() {
    // ht 1.2.0, `building_materials`: DIN EN 12524 (2000-07).
    let table = [
        ("steel", 50.0),
        ("stainless", 17.0),
        ("aluminium", 160.0),
        ("glass", 1.0),
        ("acrylic", 0.2),
        ("plywood_500", 0.13),
        ("plywood_700", 0.17),
        ("timber_500", 0.13),
        ("particleboard_600", 0.14),
        ("polyester", 0.19),
        ("pvc", 0.17),
        ("rubber_floor", 0.17),
        ("carpet", 0.06),
    ];
    let ours: Vec<_> = MATERIALS
        .iter()
        .map(|m| (m.name, m.conductivity_w_per_m_k))
        .collect();
    assert_eq!(ours, table);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn ribs_never_insulate(
        u in 0.1..5.0f64, bridged in 0.1..20.0f64, share in 0.0001..0.9f64, spread in -1.0..1.0f64,
    ) {
        let named = [
            ("u_w_per_m2_k", u),
            ("bridged_share", share),
            ("bridged_u_w_per_m2_k", bridged),
        ];
        let within = Within { bridge: spread, ..MIDDLE };
        let got = surface(&named).through(&within).unwrap().u_w_per_m2_k;
        let parallel = (1.0 - share) * u + share * bridged;
        prop_assert!(got >= parallel * (1.0 - 1e-12));
    }

    #[test]
    fn a_layer_more_never_loses_more(mm in 0.2..200.0f64, k in 0.02..60.0f64) {
        let bare = through(&STEEL).u_w_per_m2_k;
        let named = [STEEL[0], STEEL[1], ("thickness_2_mm", mm), ("conductivity_2_w_per_m_k", k)];
        let insulated = through(&named).u_w_per_m2_k;
        prop_assert!(insulated > 0.0 && insulated < bare);
    }
}
