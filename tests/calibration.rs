//! Calibration from poses: the six-face example, every refusal, and when it counts for which channel.

use plumbmark::calibration::{Calibration, CalibrationRefusal, POSES, Pose, Poses};
use plumbmark::findings::{Device, Key};
use plumbmark::holds::Hold;
use plumbmark::live::Channel;
use plumbmark::sensor::Sensor;
use plumbmark_tests::Hand;
use plumbmark_tests::vector::{dot, unit};

const G: f64 = 9.80665;
const OFFSET_M_S2: [f64; 3] = [0.15, -0.10, 0.20];
const SCALE: [f64; 3] = [1.01, 0.99, 1.005];

/// The faces of a cube and the middles of its edges, as directions: eighteen.
fn all_sides() -> Vec<[f64; 3]> {
    let mut sides = Vec::new();
    for x in [-1.0, 0.0, 1.0] {
        for y in [-1.0, 0.0, 1.0] {
            for z in [-1.0, 0.0, 1.0] {
                if [1.0, 2.0].contains(&dot([x, y, z], [x, y, z])) {
                    sides.push(unit([x, y, z]));
                }
            }
        }
    }
    // Faces first.
    sides.sort_by_key(|v| v.iter().all(|c| c.abs() < 0.9));
    sides
}

/// What the example's sensor feels, m/s².
fn felt_m_s2(up: [f64; 3]) -> [f64; 3] {
    [0, 1, 2].map(|i| SCALE[i] * G * up[i] + OFFSET_M_S2[i])
}

fn pose(force: [f64; 3]) -> Pose {
    Pose {
        force: force.map(|f| f as f32),
        u: 0.001,
        channels_agree: false,
    }
}

fn fitted(forces: impl IntoIterator<Item = [f64; 3]>) -> Result<Calibration, CalibrationRefusal> {
    let mut poses = Poses::new();
    for force in forces {
        poses.add(pose(force)).expect("a new pose");
    }
    poses.fit()
}

/// Six faces of a sensor of offset (0.15, −0.10, 0.20) m/s² and scale (1.01, 0.99, 1.005), and
/// twelve poses more; a pose of 5° reads 5.803204° raw and 5.000000° corrected. Recomputed here.
#[test]
fn the_six_face_example() {
    let raw = felt_m_s2([1.0, 0.0, 0.0])[0];
    assert!(
        (raw - 10.054716).abs() < 1e-6 && (felt_m_s2([0.0, -1.0, 0.0])[1] + 9.808584).abs() < 1e-6
    );
    let found = fitted(
        all_sides()
            .into_iter()
            .map(|up| felt_m_s2(up).map(|f| f / G)),
    )
    .unwrap();
    for i in 0..3 {
        let zero_m_s2 = f64::from(found.zero[i]) * G;
        assert!((zero_m_s2 - OFFSET_M_S2[i]).abs() < 2e-6, "{found:?}");
        assert!(
            (f64::from(found.scale[i]) - SCALE[i]).abs() < 2e-7,
            "{found:?}"
        );
    }
    let tilt_deg = |v: [f64; 3]| v[0].hypot(v[1]).atan2(v[2]).to_degrees();
    let (s, c) = 5_f64.to_radians().sin_cos();
    let felt = felt_m_s2([s, 0.0, c]);
    assert!((tilt_deg(felt) - 5.803204).abs() < 1e-6);
    let sensor = Sensor {
        zero: found.zero,
        scale: found.scale,
        ..Sensor::assumed()
    };
    let corrected = sensor.corrected(felt.map(|f| (f / G) as f32));
    assert!(
        (tilt_deg(corrected.map(f64::from)) - 5.0).abs() < 2e-5,
        "{corrected:?}"
    );
}

#[test]
fn every_refusal_by_its_name() {
    use CalibrationRefusal as Why;
    let sides = all_sides();
    assert_eq!(fitted(sides.iter().copied().take(8)), Err(Why::TooFewPoses));
    assert_eq!(
        fitted(sides.iter().copied().filter(|v| v[2] > -0.4)),
        Err(Why::OneSided)
    );
    // On the cone |x| = |y| the scales of x and y can't be told apart.
    let cone = |z: f64| {
        let a = ((1.0 - z * z) / 2.0).sqrt();
        [[a, a, z], [-a, a, z], [a, -a, z], [-a, -a, z]]
    };
    assert_eq!(
        fitted([0.0, 0.55, -0.55].into_iter().flat_map(cone)),
        Err(Why::Singular)
    );
    // Five times gravity is out of reach of the fit; a zero of 0.1 and a scale of 1.07 are not a
    // sensor's.
    let all = |f: &dyn Fn([f64; 3]) -> [f64; 3]| fitted(sides.iter().copied().map(f));
    assert_eq!(all(&|v| v.map(|c| 5.0 * c)), Err(Why::NoConvergence));
    assert_eq!(all(&|v| [v[0] + 0.1, v[1], v[2]]), Err(Why::TooLarge));
    assert_eq!(all(&|v| [v[0], v[1], 1.07 * v[2]]), Err(Why::TooLarge));
    // One pose of eighteen was moved by 50 times its uncertainty.
    let off = |v: [f64; 3]| if v[1] == 1.0 { [0.0, 1.05, 0.0] } else { v };
    assert_eq!(all(&off), Err(Why::DoesNotFit));
    assert!(all(&|v| v).is_ok());
}

#[test]
fn a_pose_must_be_new_and_find_room() {
    let mut poses = Poses::new();
    for side in all_sides() {
        assert_eq!(poses.add(pose(side)), Ok(()));
    }
    assert_eq!(poses.len(), POSES);
    // 15° from a face; and a corner, 35° from everything, finds no room.
    let (s, c) = 15_f64.to_radians().sin_cos();
    let taken = CalibrationRefusal::PoseTaken;
    assert_eq!(poses.add(pose([s, 0.0, c])), Err(taken));
    assert_eq!(poses.add(pose([0.0; 3])), Err(taken), "no direction");
    let corner = unit([1.0, 1.0, 1.0]);
    assert_eq!(poses.add(pose(corner)), Err(CalibrationRefusal::Full));
}

/// Poses through events: `agreeing` of them with three seconds of the fused orientation.
fn calibrated(agreeing: usize) -> Hand {
    let mut hand = Hand::new([0.012, -0.009, 0.006]);
    for (i, up) in all_sides().into_iter().take(12).enumerate() {
        hand.lift();
        hand.alpha_deg = (i < agreeing).then_some(0.0);
        assert_eq!(hand.lie(up, 230), None, "pose {i}");
        assert_eq!(hand.live.add_pose(), Ok(i + 1));
    }
    hand.live.calibrate().expect("a calibration");
    hand
}

#[test]
fn it_counts_for_the_orientation_after_six_agreeing_poses() {
    for (agreeing, counts) in [(0, false), (5, false), (6, true)] {
        let hand = calibrated(agreeing);
        let (_, calibration, _) = hand.live.findings().any_calibration().unwrap();
        for (found, is) in calibration.zero.into_iter().zip(hand.zero) {
            assert!((f64::from(found) - is).abs() < 0.001, "{calibration:?}");
        }
        for channel in Channel::ALL {
            let key = Key {
                device: Device::default(),
                channel,
                hold: Hold::Back,
            };
            let counts = counts || channel == Channel::Acceleration;
            let found = hand.live.findings().calibration(key, 0.0);
            assert_eq!(found.is_some(), counts, "{agreeing} agree, {channel:?}");
        }
    }
}
