//! The simulator against values known beforehand.

use approx::assert_abs_diff_eq;
use plumbmark_simulator::vector::{angles_of_up, dot, elevation_deg, turned, up_of_angles};
use plumbmark_simulator::{Draws, Event, G, Phone, Population, Scene};

/// (β, γ) and specific force, m/s²: W3C's rotation Z-X'-Y'' by scipy 1.17
/// `Rotation.from_euler("ZXY", …)`, applied to (0, 0, 9.80665).
const FORCES: [([f64; 2], [f64; 3]); 2] = [
    ([5.0, 0.0], [0.0, 0.854_706, 9.769_333]),
    ([30.0, 20.0], [-2.904_711, 4.903_325, 7.980_629]),
];

const Z: [f64; 3] = [0.0, 0.0, 1.0];

fn raw(up: [f64; 3], events: usize) -> Scene {
    Scene {
        events,
        rounded: false,
        oriented: true,
        ..Scene::at_rest(up, Z)
    }
}

fn draws() -> Draws {
    Draws::new(1, 0)
}

#[test]
fn a_perfect_phone_shows_the_force_and_the_angles_of_its_attitude() {
    for (angles, force) in FORCES {
        let up = up_of_angles(angles[0], angles[1]);
        let event = Phone::PERFECT.rest(&raw(up, 1), &mut draws())[0];
        for (shown, expected) in event.force_m_s2.into_iter().zip(force) {
            assert_abs_diff_eq!(shown, expected, epsilon = 5e-7);
        }
        assert_eq!(event.angles_deg, Some(angles));
    }
}

#[test]
fn angles_and_up_are_each_others_inverse_all_round() {
    for beta in (-175..180).step_by(10).map(f64::from) {
        for gamma in (-85..90).step_by(10).map(f64::from) {
            let back = angles_of_up(up_of_angles(beta, gamma));
            assert_abs_diff_eq!(back[0], beta, epsilon = 1e-9);
            assert_abs_diff_eq!(back[1], gamma, epsilon = 1e-9);
        }
    }
}

#[test]
fn readings_come_in_the_browsers_steps_and_with_its_sign() {
    let up = up_of_angles(30.0, 20.0);
    let phone = Phone {
        sign: -1.0,
        ..Phone::PERFECT
    };
    let event = phone.rest(&Scene::at_rest(up, Z), &mut draws())[0];
    assert_eq!(event.force_m_s2, [2.9, -4.9, -8.0]);
    assert_eq!(event.angles_deg, None);
}

fn column(events: &[Event], axis: usize) -> Vec<f64> {
    events.iter().map(|e| e.force_m_s2[axis]).collect()
}

#[test]
fn noise_is_as_large_and_as_coloured_as_asked() {
    let phone = Phone {
        noise_m_s2: 0.03,
        colour_s: 0.05,
        ..Phone::PERFECT
    };
    let n = 200_000;
    let x = column(&phone.rest(&raw(Z, n), &mut draws()), 0);
    let product = |lag: usize| x[lag..].iter().zip(&x).map(|(a, b)| a * b).sum::<f64>() / n as f64;
    let variance = product(0);
    assert_abs_diff_eq!(variance.sqrt(), 0.03, epsilon = 0.000_3);
    // exp(−dt/τ) at one and at three events of 1/60 s.
    assert_abs_diff_eq!(product(1) / variance, 0.7165, epsilon = 0.01);
    assert_abs_diff_eq!(product(3) / variance, 0.3679, epsilon = 0.01);
}

/// exp(−1) = 0.367879 after one time constant, exp(−3) after three; angles are good to 0.05°.
#[test]
fn the_fused_filter_forgets_its_start_as_a_first_order_lag() {
    let phone = Phone {
        lag_s: 2.0,
        ..Phone::PERFECT
    };
    let scene = Scene {
        start_deg: 10.0,
        ..raw(Z, 361)
    };
    let events = phone.rest(&scene, &mut draws());
    let off = |i: usize| {
        let [beta, gamma] = events[i].angles_deg.unwrap();
        let up = up_of_angles(beta, gamma);
        up[1] / up[2]
    };
    assert!(off(0).abs() > 0.1, "the seed starts it well off level");
    assert_abs_diff_eq!(off(120) / off(0), 0.367_879, epsilon = 0.01);
    assert_abs_diff_eq!(off(360) / off(0), 0.049_787, epsilon = 0.01);
}

/// A level phone with zeros (zx, zy) settles at atan(zy/g), like its accelerometer; a gyroscope's
/// bias of b adds b · τ.
#[test]
fn the_fused_filter_inherits_the_zero_and_the_gyroscopes_bias() {
    let phone = Phone {
        zero_m_s2: [0.0, 0.5, 0.0],
        lag_s: 2.0,
        ..Phone::PERFECT
    };
    let last = |phone: Phone| {
        let events = phone.rest(&raw(Z, 600), &mut draws());
        events[599].angles_deg.unwrap()
    };
    assert_abs_diff_eq!(last(phone)[0], 2.919, epsilon = 0.051);
    let biased = Phone {
        gyro_bias_deg_s: [0.5, 0.0, 0.0],
        ..Phone::PERFECT
    };
    let moved = last(Phone {
        lag_s: 4.0,
        ..biased
    })[0]
        .abs();
    assert_abs_diff_eq!(moved, 2.0, epsilon = 0.051);
}

/// Slow noise of a settled filter: σ · √(τn / (τn + τ)), from the first event on.
#[test]
fn a_settled_filter_starts_with_the_noise_it_will_go_on_with() {
    let phone = Phone {
        noise_m_s2: 0.5,
        colour_s: 0.1,
        lag_s: 0.5,
        ..Phone::PERFECT
    };
    let expected_deg = (0.5 / G * (0.1_f64 / 0.6).sqrt()).to_degrees();
    let n = 20_000;
    for at in [0, 30] {
        let squares: f64 = (0..n)
            .map(|i| {
                let events = phone.rest(&raw(Z, at + 1), &mut Draws::new(2, i));
                events[at].angles_deg.unwrap()[0].powi(2)
            })
            .sum();
        let seen = (squares / n as f64).sqrt();
        assert_abs_diff_eq!(seen, expected_deg, epsilon = 0.02 * expected_deg);
    }
}

/// The nominal population: zero 13.4 mg at 95 %, 6.7 % of phones with an axis above 16 mg (the
/// study behind the design); scale 0.4 %, cross-axis 0.2 %.
#[test]
fn the_nominal_population_is_as_wide_as_it_says() {
    let n = 100_000;
    let mut draws = draws();
    let phones: Vec<Phone> = (0..n)
        .map(|_| Phone::draw(&Population::NOMINAL, 0.2, &mut draws))
        .collect();
    let mg = |z: f64| z.abs() / G * 1e3;
    let mut zeros: Vec<f64> = phones.iter().flat_map(|p| p.zero_m_s2.map(mg)).collect();
    zeros.sort_by(f64::total_cmp);
    assert_abs_diff_eq!(zeros[zeros.len() * 95 / 100], 13.4, epsilon = 0.15);
    let far = |p: &&Phone| p.zero_m_s2.iter().any(|&z| mg(z) > 16.0);
    let share = phones.iter().filter(far).count() as f64 / f64::from(n);
    assert_abs_diff_eq!(share, 0.067, epsilon = 0.002);
    let rms = |f: &dyn Fn(&Phone) -> f64| {
        (phones.iter().map(|p| f(p).powi(2)).sum::<f64>() / f64::from(n)).sqrt()
    };
    assert_abs_diff_eq!(rms(&|p| p.response[1][1] - 1.0), 0.004, epsilon = 4e-5);
    assert_abs_diff_eq!(rms(&|p| p.response[0][2]), 0.002, epsilon = 2e-5);
}

/// Misplacement: `tilt_deg` about either direction of the surface, `heading_deg` about its normal.
#[test]
fn a_phone_lies_as_badly_as_asked() {
    let n = 40_000;
    let rms = |scene: Scene, axis: [f64; 3]| {
        let nominal = elevation_deg(axis, scene.up);
        let squares: f64 = (0..n)
            .map(|i| {
                let force = Phone::PERFECT.rest(&scene, &mut Draws::new(3, i))[0].force_m_s2;
                (elevation_deg(axis, force) - nominal).powi(2)
            })
            .sum();
        (squares / n as f64).sqrt()
    };
    let tilted = Scene {
        tilt_deg: 0.3,
        ..raw(Z, 1)
    };
    assert_abs_diff_eq!(rms(tilted, [1.0, 0.0, 0.0]), 0.3, epsilon = 0.005);
    assert_abs_diff_eq!(rms(tilted, [0.0, 1.0, 0.0]), 0.3, epsilon = 0.005);
    // A surface rolled by 30°: 1° of heading lifts the axis by sin 30°.
    let headed = Scene {
        heading_deg: 1.0,
        ..raw(turned(Z, [0.0, 30.0, 0.0]), 1)
    };
    assert_abs_diff_eq!(rms(headed, [0.0, 1.0, 0.0]), 0.5, epsilon = 0.008);
}

/// By hand: a part at 3.20°, a phone with 2° of zero: 5.20° one way, −1.20° the other; half the
/// difference is the part. What lies in the surface stays, what lies in the case does not.
#[test]
fn turned_end_for_end_the_phones_own_errors_change_sign_against_the_part() {
    let y = [0.0, 1.0, 0.0];
    let seen = |phone: Phone, scene: Scene| {
        elevation_deg(y, phone.rest(&scene, &mut draws())[0].force_m_s2)
    };
    let half_difference =
        |phone: Phone, scene: Scene| 0.5 * (seen(phone, scene) - seen(phone, scene.end_for_end()));
    let scene = raw(turned(Z, [-3.2, 0.0, 0.0]), 1);
    let zero = Phone {
        case_deg: [2.0, 0.0, 0.0],
        ..Phone::PERFECT
    };
    assert_abs_diff_eq!(seen(zero, scene), 5.2, epsilon = 1e-9);
    assert_abs_diff_eq!(seen(zero, scene.end_for_end()), -1.2, epsilon = 1e-9);
    assert_abs_diff_eq!(half_difference(zero, scene), 3.2, epsilon = 1e-9);
    let dirty = Scene {
        surface_deg: [0.5, 0.0, 0.0],
        ..scene
    };
    assert_abs_diff_eq!(half_difference(zero, dirty), 3.7, epsilon = 1e-9);
}

#[test]
fn tremor_wander_knock_and_drift_are_as_large_as_asked() {
    let n = 60_000;
    let spread = |scene: Scene| {
        let events = Phone::PERFECT.rest(&scene, &mut draws());
        let mean: f64 = column(&events, 0).iter().sum::<f64>() / n as f64;
        let squares = |e: &Event| (e.force_m_s2[0] - mean).powi(2);
        (events.iter().map(squares).sum::<f64>() / n as f64).sqrt()
    };
    let wandering = Scene {
        wander_deg: 0.5,
        ..raw(Z, n)
    };
    assert_abs_diff_eq!((spread(wandering) / G).to_degrees(), 0.5, epsilon = 0.03);

    let trembling = Scene {
        tremor_m_s2: 0.2,
        ..raw(Z, n)
    };
    let events = Phone::PERFECT.rest(&trembling, &mut draws());
    let shaking = |e: &Event| {
        let away = [e.force_m_s2[0], e.force_m_s2[1], e.force_m_s2[2] - G];
        dot(away, away)
    };
    let total = events.iter().map(shaking).sum::<f64>() / n as f64;
    assert_abs_diff_eq!((total / 3.0).sqrt(), 0.2, epsilon = 0.002);

    let knocked = Scene {
        knock_deg: 1.0,
        ..raw(Z, 10)
    };
    let events = Phone::PERFECT.rest(&knocked, &mut draws());
    assert_eq!(events[4].force_m_s2, [0.0, 0.0, G]);
    assert_abs_diff_eq!(elevation_deg(Z, events[5].force_m_s2), 89.0, epsilon = 1e-9);

    let warm = Phone::PERFECT.drifted(2.0, &mut draws()).zero_m_s2;
    let again = Phone::PERFECT.drifted(4.0, &mut draws()).zero_m_s2;
    assert!(warm.iter().all(|&z| z != 0.0 && z.abs() < 0.1));
    assert_abs_diff_eq!(again[0], 2.0 * warm[0], epsilon = 1e-12);
}

#[test]
fn the_same_seed_gives_the_same_events_and_another_stream_others() {
    let phone = Phone::draw(&Population::NOMINAL, 0.3, &mut draws());
    let scene = Scene {
        jitter_ms: 1.0,
        ..raw(Z, 50)
    };
    let once = phone.rest(&scene, &mut Draws::new(5, 0));
    assert_eq!(once, phone.rest(&scene, &mut Draws::new(5, 0)));
    assert_ne!(once, phone.rest(&scene, &mut Draws::new(5, 1)));
    let steps = once.windows(2).map(|w| w[1].t_ms - w[0].t_ms);
    assert!(
        steps
            .clone()
            .all(|s| (s - 1000.0 / 60.0).abs() <= 1.0 + 1e-9)
    );
    assert!(steps.fold(0.0, f64::max) > 17.0);
}
