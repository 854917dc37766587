//! Where fan and ducts settle.

use super::*;

pub(crate) fn fan(points: &[(f64, f64)], flow: f64, power_w: f64) -> [f64; OTHERS] {
    let mut x = air_of([flow, power_w, 15.0, 0.0, 10.0 * (flow / 100.0).powi(2)]);
    (x[7], x[8]) = (1.8, 1.2);
    for (to, (flow, pressure)) in x[9..].chunks_exact_mut(2).zip(points) {
        (to[0], to[1]) = (*flow, *pressure);
    }
    x
}

pub(crate) const CURVE: [(f64, f64); 4] =
    [(20.0, 190.0), (70.0, 150.0), (120.0, 90.0), (170.0, 10.0)];

pub(crate) fn run() -> Vec<Piece> {
    let own = |layout: f64, angle: f64| Piece {
        layout,
        ..bend(75.0, angle, 1.0)
    };
    vec![
        Piece {
            run: 0.0,
            ..straight(75.0, 1.0)
        },
        straight(75.0, 3.0),
        own(1.0, 90.0),
        own(2.0, 180.0),
        empty(1.0, PieceKind::OpenEnd, 75.0),
    ]
}

/// Flow at which the ducts of layout B cost what the fan gives, by halving.
pub(crate) fn settled(power_w: f64) -> f64 {
    let (mut low, mut high) = (CURVE[0].0, CURVE[3].0);
    let density = air::density_kg_per_m3(15.0, air::SEA_LEVEL_PA) / 1.2;
    while high - low > 1e-9 {
        let flow = 0.5 * (low + high);
        let to = CURVE.iter().position(|(q, _)| *q >= flow).unwrap().max(1);
        let (from, to) = (CURVE[to - 1], CURVE[to]);
        let pressure = from.1 + (to.1 - from.1) / (to.0 - from.0) * (flow - from.0);
        let given = work(&fan(&[], flow, power_w), &run()).unwrap();
        if pressure * density > given[LOSS_B].value {
            low = flow;
        } else {
            high = flow;
        }
    }
    low
}

#[test]
fn fan_and_ducts_settle_where_both_agree() {
    for power_w in [0.0, 1200.0, 2500.0] {
        let flow = settled(power_w);
        let at = |told: f64| work(&fan(&CURVE, told, power_w), &run()).unwrap();
        // Told there, found there; from elsewhere, within its uncertainty; in two steps, near.
        assert_relative_eq!(at(flow)[FAN_A + 6].value, flow, max_relative = 1e-6);
        for told in [0.7 * flow, 0.85 * flow, 1.2 * flow, 1.5 * flow] {
            let first = at(told);
            let found = first[FAN_A + 6];
            assert!(
                (found.value - flow).abs() < found.u,
                "{told} {flow} {found:?}"
            );
            let second = at(found.value);
            assert_relative_eq!(second[FAN_A + 6].value, flow, max_relative = 5e-3);
            // The rise goes with one over the flow.
            let rise = first[RISE].value * told / found.value;
            assert_relative_eq!(first[FAN_A + 7].value, 15.0 + rise, max_relative = 1e-9);
        }
        let told = at(flow);
        let difference = told[FAN_DIFFERENCE];
        assert!(difference.value < 0.0 && difference.u < told[FAN_A].u);
    }
}

#[test]
fn fan_curves_that_cannot_be() {
    let refused = |points: &[(f64, f64)]| work(&fan(points, 100.0, 0.0), &run()).unwrap_err();
    let at = |place: usize, problem| Refusal::at(9 + place, problem);
    let flat = [(20.0, 190.0), (70.0, 190.0), (120.0, 90.0)];
    assert_eq!(refused(&flat), at(3, Problem::Contradiction));
    let back = [(20.0, 190.0), (70.0, 150.0), (70.0, 90.0)];
    assert_eq!(refused(&back), at(4, Problem::Contradiction));
    let gap = [(20.0, 190.0), (70.0, 150.0), (NONE, NONE), (120.0, 90.0)];
    assert_eq!(refused(&gap), at(4, Problem::Missing));
    let half = [(20.0, 190.0), (70.0, 150.0), (120.0, NONE)];
    assert_eq!(refused(&half), at(5, Problem::Missing));
    assert_eq!(refused(&[(20.0, 190.0)]), at(2, Problem::Missing));
    // Neither its power nor its density is assumed in silence.
    for place in [7, 8] {
        let mut others = fan(&CURVE, 100.0, 0.0);
        others[place] = NONE;
        let refusal = work(&others, &run()).unwrap_err();
        assert_eq!(refusal, Refusal::at(place, Problem::Missing));
    }
}

#[test]
fn no_flow_is_told_beyond_the_curve() {
    let flow = |points: &[(f64, f64)]| work(&fan(points, 100.0, 0.0), &run()).unwrap()[FAN_A].value;
    assert!(
        flow(&[(20.0, 190.0), (40.0, 180.0)]).is_nan(),
        "stops too early"
    );
    assert!(
        flow(&[(150.0, 20.0), (170.0, 10.0)]).is_nan(),
        "starts too late"
    );
    assert!(flow(&CURVE).is_finite());
}
