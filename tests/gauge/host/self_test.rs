//! A sensor that is silent, stuck or at the end of its range, and a supply that sinks.

use gauge_host::STATED;
use plumbmark_gauge::fault::Fault;
use plumbmark_gauge::self_test::SelfTest;
use plumbmark_gauge::supply::Supply;

/// The first fault among samples, and after how many of them.
fn fault(samples: impl IntoIterator<Item = Option<[i16; 3]>>) -> Option<(usize, Fault)> {
    let mut test = SelfTest::default();
    (1..).zip(samples).find_map(|(at, sample)| {
        let fault = test.judge(sample, &STATED).err()?;
        Some((at, fault))
    })
}

fn alive(at: usize) -> [i16; 3] {
    let step = (at % 3) as i16;
    [step, 1 - step, 1000 + step]
}

#[test]
fn a_sound_sensor_passes_after_0_7_s() {
    let mut test = SelfTest::default();
    for at in 0..70 {
        assert!(!test.has_passed());
        assert!(test.judge(Some(alive(at)), &STATED).is_ok());
    }
    assert!(test.has_passed());
}

/// Before a second of samples is full, so that no reading rests on it.
#[test]
fn a_dead_axis_does_not_pass() {
    let mut test = SelfTest::default();
    for at in 0..95 {
        let [_, y, z] = alive(at);
        assert!(test.judge(Some([5, y, z]), &STATED).is_ok());
        assert!(!test.has_passed());
    }
    let dead = (0..100).map(|at| {
        let [_, y, z] = alive(at);
        Some([5, y, z])
    });
    assert_eq!(fault(dead), Some((100, Fault::Stuck)));
}

#[test]
fn silence_of_0_1_s_is_a_fault() {
    assert_eq!(fault(vec![None; 20]), Some((10, Fault::NoAnswer)));
    let now_and_then = (0..200).map(|at| (at % 3 == 0).then(|| alive(at / 3)));
    assert_eq!(fault(now_and_then), None);
}

#[test]
fn values_that_do_not_change_are_a_fault() {
    let frozen = (0..200).map(|_| Some([3, -7, 1020]));
    assert_eq!(fault(frozen), Some((100, Fault::Stuck)));
}

#[test]
fn two_seconds_without_gravity_are_a_fault() {
    for far in [1.2, 0.8] {
        let seen = (0..300).map(|at| {
            let [x, y, z] = alive(at);
            Some([x, y, (f64::from(z) * far) as i16])
        });
        assert_eq!(fault(seen).map(|f| f.1), Some(Fault::NotGravity));
    }
}

#[test]
fn an_axis_at_its_end_is_a_fault() {
    for end in [STATED.largest_count, -STATED.largest_count - 1] {
        let saturated = (0..100).map(|at| {
            let [x, y, _] = alive(at);
            Some([x, y, end])
        });
        let (after, of_end) = fault(saturated).expect("saturated");
        assert_eq!(of_end, Fault::Saturated);
        assert!(after <= 30, "{after}");
    }
}

#[test]
fn a_supply_recovers_by_a_tenth_of_a_volt() {
    let mut supply = Supply::default();
    let seen = [2_500, 2_000, 1_999, 2_050, 2_099, 2_100, 2_050];
    let low = seen.map(|mv| supply.is_low(mv, 2_000));
    assert_eq!(low, [false, false, true, true, true, false, false]);
}
