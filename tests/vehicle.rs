//! A part in a vehicle: against rotation matrices in double precision, and by examples.

use approx::{assert_abs_diff_eq, assert_relative_eq};
use nalgebra::{Rotation3, Vector3};
use plumbmark::budget::{Contact, Source, UpEstimate};
use plumbmark::check::{Basis, End, answer};
use plumbmark::decision::Verdict;
use plumbmark::frames::DEG;
use plumbmark::holds::Hold;
use plumbmark::in_vehicle::{Vehicle, VehicleOutcome, in_vehicle};
use plumbmark::level::{Level, LevelRefusal};
use plumbmark::limits::Limit;
use plumbmark::parts::Check;
use plumbmark::vehicle::{Pointing, VehicleTerms};
use plumbmark_tests::{Draws, certain};

const CERTAIN: Contact = Contact {
    hold_deg: 0.0,
    align_deg: 0.0,
    normal: [0.0, 0.0, 1.0],
};

/// Heading and rake as certain as they never are.
const TERMS: VehicleTerms = VehicleTerms {
    heading_deg: 0.0,
    rake_deg: 0.0,
    ..VehicleTerms::ASSUMED
};

/// An up vector of the body frame, as a phone on its back has it.
fn on_back(up_body: [f64; 3]) -> UpEstimate {
    certain([-up_body[1], up_body[0], up_body[2]])
}

fn level_of(up: UpEstimate) -> Result<Level, LevelRefusal> {
    Level::new(up, CERTAIN, Hold::Back.rotation(), 0.0)
}

fn answered(
    check: Check,
    part: &UpEstimate,
    rail: &UpEstimate,
    terms: &VehicleTerms,
    pointing: Pointing,
    limit: &Limit,
) -> Result<VehicleOutcome, LevelRefusal> {
    let from = Basis {
        up: part,
        other_up: None,
        rotation: &Hold::Back.rotation(),
        contact: &CERTAIN,
    };
    let level = level_of(*rail)?;
    let vehicle = Vehicle {
        level: &level,
        terms,
        pointing,
    };
    let parked = answer(check, &from, limit, Some(End::Photo));
    in_vehicle(&parked, &from, &vehicle, limit)
}

fn open(
    check: Check,
    part: &UpEstimate,
    rail: &UpEstimate,
    terms: &VehicleTerms,
) -> VehicleOutcome {
    let limit = Limit::not_entered(check);
    answered(check, part, rail, terms, Pointing::Same, &limit).unwrap()
}

/// Up of a body that pitches its head up by `pitch_deg`, no roll.
fn pitched(pitch_deg: f64) -> [f64; 3] {
    let (s, c) = pitch_deg.to_radians().sin_cos();
    [s, 0.0, c]
}

/// A vehicle and a part in it, both as rotations from body to earth (Z-Y-X); the vehicle is then
/// set level, the part with it.
#[test]
fn the_rotation_is_solved_exactly() {
    let mut draws = Draws::new(11);
    let mut worst: f64 = 0.0;
    for i in 0..2000 {
        let mut angle = |most_deg: f64| draws.between(-most_deg, most_deg).to_radians();
        let (yaw, pitch, roll) = (angle(180.0), angle(8.0), angle(8.0));
        let vehicle = Rotation3::from_euler_angles(roll, pitch, yaw);
        let k = i % 4;
        let turn = [0.0_f64, 90.0, 180.0, -90.0][k].to_radians();
        let part = Rotation3::from_euler_angles(angle(180.0), angle(65.0), yaw + turn);
        let up = Vector3::z();
        let [rail_up, part_up] = [vehicle, part].map(|r| r.inverse() * up);
        // The part's frame against the vehicle's stays; the vehicle's z goes upright.
        let part_in_vehicle = vehicle.inverse() * part;
        let level_up = part_in_vehicle.inverse() * up;
        let check = [Check::PumpOutlet, Check::HeaterPort, Check::FilterUpright][i % 3];
        let (axis, off) = match check {
            Check::HeaterPort => (-Vector3::z(), false),
            Check::FilterUpright => (Vector3::x(), true),
            _ => (Vector3::x(), false),
        };
        let elevation = axis
            .dot(&level_up)
            .atan2(axis.cross(&level_up).norm())
            .to_degrees();
        let want = if off { 90.0 - elevation } else { elevation };
        let got = answered(
            check,
            &on_back(part_up.into()),
            &on_back(rail_up.into()),
            &TERMS,
            Pointing::ALL[k],
            &Limit::not_entered(check),
        );
        let measured = got.unwrap().outcome.measured.unwrap();
        worst = worst.max((f64::from(measured.value_deg) - want).abs());
        assert!(measured.u_deg < 1e-4, "nothing is uncertain: {measured:?}");
    }
    println!("part in vehicle: largest deviation {worst:.1e}°");
    assert!(worst < 5e-5, "{worst}"); // achieved 1.6e-5
}

/// The phone pointing the same way: its zero cancels. The other way: it counts twice.
#[test]
fn datum_minus_part_cancels_or_doubles_the_zero() {
    let mut flat = on_back(pitched(0.0));
    flat.sensor.u_zero = [0.5 / DEG; 3];
    let zero = |pointing| {
        let limit = Limit::not_entered(Check::PumpOutlet);
        let got = answered(Check::PumpOutlet, &flat, &flat, &TERMS, pointing, &limit).unwrap();
        got.outcome.budget.of(Source::Zero)
    };
    assert_abs_diff_eq!(zero(Pointing::Same), 0.0, epsilon = 2e-4);
    assert_relative_eq!(zero(Pointing::Opposite), 1.0, max_relative = 1e-3);
    // Crosswise: two axes of the phone, with nothing in common.
    assert_relative_eq!(
        zero(Pointing::Left),
        0.5 * 2_f32.sqrt(),
        max_relative = 1e-3
    );
}

/// 4° of slope with 15° of heading error: sin 4° · 15° = 1.05° where the slope lies across.
#[test]
fn slope_couples_with_heading() {
    let terms = VehicleTerms {
        heading_deg: 15.0,
        ..TERMS
    };
    let flat = on_back(pitched(0.0));
    let (s, c) = 4_f64.to_radians().sin_cos();
    let heading = |rail: [f64; 3], part: [f64; 3]| {
        let got = open(Check::PumpOutlet, &on_back(part), &on_back(rail), &terms);
        f64::from(got.outcome.budget.of(Source::Heading))
    };
    let across = heading([0.0, s, c], [0.0, s, c]);
    assert_relative_eq!(across, 15.0 * s, max_relative = 1e-3);
    assert!((1.0..1.05).contains(&across), "{across}");
    assert!(heading(pitched(4.0), pitched(4.0)) < 2e-3, "slope along x");
    // A level yard couples with nothing.
    let level = open(Check::PumpOutlet, &flat, &flat, &terms);
    assert!(level.outcome.budget.of(Source::Heading) < 1e-3);
}

#[test]
fn rake_counts_in_every_direction_and_lean_is_taken_off() {
    let terms = VehicleTerms {
        rake_deg: 0.8,
        lean_lengthwise_deg: 2.0,
        ..TERMS
    };
    // The rail leans by 2° on level ground and by 5° here: the yard slopes by 3°.
    let got = open(
        Check::PumpOutlet,
        &on_back(pitched(20.0)),
        &on_back(pitched(5.0)),
        &terms,
    );
    let measured = got.outcome.measured.unwrap();
    assert_abs_diff_eq!(measured.value_deg, 17.0, epsilon = 1e-4);
    assert_relative_eq!(
        got.outcome.budget.of(Source::Rake),
        0.8,
        max_relative = 1e-3
    );
}

#[test]
fn near_plumb_there_is_no_heading() {
    let answer = |part_deg: f64, rail_deg: f64| {
        let limit = Limit::not_entered(Check::FilterUpright);
        let (part, rail) = (on_back(pitched(part_deg)), on_back(pitched(rail_deg)));
        answered(
            Check::FilterUpright,
            &part,
            &rail,
            &TERMS,
            Pointing::Same,
            &limit,
        )
        .err()
    };
    for deg in [71.0, -71.0, 89.0, 90.0, -90.0] {
        assert_eq!(answer(deg, 1.0), Some(LevelRefusal::NoHeading), "{deg}");
    }
    assert_eq!(answer(69.0, 1.0), None);
    assert_eq!(answer(0.0, 31.0), Some(LevelRefusal::TooSteep));
    assert_eq!(answer(0.0, -29.0), None);
}

/// Elevation: s. Roll: asin(sin s/|u × x|), and nothing is left once s ≥ 90° − |e|.
#[test]
fn a_working_slope_takes_its_share() {
    let flat = on_back(pitched(0.0));
    let takes = |check, elevation_deg: f64, slope_deg: f32| {
        let terms = VehicleTerms {
            working_crosswise_deg: slope_deg,
            ..TERMS
        };
        let working = open(check, &on_back(pitched(elevation_deg)), &flat, &terms)
            .working
            .unwrap();
        assert_abs_diff_eq!(working.slope_deg, slope_deg, epsilon = 1e-4);
        working.takes_deg
    };
    assert_abs_diff_eq!(
        takes(Check::PumpOutlet, 30.0, 12.0).unwrap(),
        12.0,
        epsilon = 1e-4
    );
    for (e, s) in [(0.0_f64, 12.0_f64), (50.0, 12.0), (65.0, 24.9)] {
        let want = (s.to_radians().sin() / e.to_radians().cos())
            .asin()
            .to_degrees();
        let got = f64::from(takes(Check::PumpRoll, e, s as f32).unwrap());
        assert_abs_diff_eq!(got, want, epsilon = 0.01);
    }
    assert_eq!(takes(Check::PumpRoll, 65.0, 25.01), None);
    // Both ways together are steeper than either: tan² adds.
    let terms = VehicleTerms {
        working_lengthwise_deg: 10.0,
        working_crosswise_deg: 10.0,
        ..TERMS
    };
    let want = (10_f64.to_radians().tan() * 2_f64.sqrt())
        .atan()
        .to_degrees();
    assert_abs_diff_eq!(f64::from(terms.working_slope_deg()), want, epsilon = 1e-5);
    assert_eq!(open(Check::PumpOutlet, &flat, &flat, &TERMS).working, None);
}

/// It decides only where the limit holds in operation.
#[test]
fn a_working_slope_decides_only_where_the_limit_says_so() {
    let terms = VehicleTerms {
        working_lengthwise_deg: 10.0,
        ..TERMS
    };
    let verdict = |deg: f64, holds| {
        let mut limit = Limit::not_entered(Check::PumpOutlet);
        limit.low_deg = Some(15.0);
        limit.holds_in_operation = holds;
        let (part, rail) = (on_back(pitched(deg)), on_back(pitched(0.0)));
        let got = answered(
            Check::PumpOutlet,
            &part,
            &rail,
            &terms,
            Pointing::Same,
            &limit,
        );
        got.unwrap().outcome.verdict
    };
    assert_eq!(verdict(20.0, false), Verdict::Within);
    assert_eq!(verdict(20.0, true), Verdict::Beyond, "10° at worst");
    assert_eq!(verdict(26.0, true), Verdict::Within);
    assert_eq!(verdict(14.0, true), Verdict::Beyond);
}
