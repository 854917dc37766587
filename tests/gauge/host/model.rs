//! The sensor's model against its data sheet, and the driver over it.

use embedded_hal::i2c::{ErrorKind, I2c, NoAcknowledgeSource};
use gauge_model::{BOOT_US, Fault, Felt, Sensor};
use plumbmark_gauge::accelerometer::Accelerometer;
use plumbmark_gauge::lsm303agr::Lsm303agr;
use std::cell::RefCell;
use std::rc::Rc;

const ADDRESS: u8 = 0x19;

fn quiet(force_mg: [f32; 3]) -> Sensor {
    let felt = Felt {
        force_mg,
        noise_mg: 0.0,
        ..Felt::still([0.0; 3])
    };
    let mut sensor = Sensor::new(felt, 1);
    sensor.pass(BOOT_US);
    sensor
}

fn set(sensor: &mut Sensor, register: u8, value: u8) {
    sensor
        .write(ADDRESS, &[register, value])
        .expect("it answers");
}

fn get<const N: usize>(sensor: &mut Sensor, register: u8) -> [u8; N] {
    let mut bytes = [0; N];
    sensor
        .write_read(ADDRESS, &[register], &mut bytes)
        .expect("it answers");
    bytes
}

#[test]
fn it_answers_when_it_has_started() {
    let mut sensor = Sensor::new(Felt::still([0.0, 0.0, 1.0]), 1);
    let nobody = Err(ErrorKind::NoAcknowledge(NoAcknowledgeSource::Address));
    assert_eq!(sensor.write(ADDRESS, &[0x20, 0x57]), nobody);
    sensor.pass(BOOT_US);
    assert_eq!(get(&mut sensor, 0x0f), [0x33]);
    assert_eq!(sensor.write(0x18, &[0x20, 0x57]), nobody);
}

#[test]
fn without_power_it_forgets() {
    let mut sensor = quiet([0.0, 0.0, 1000.0]);
    set(&mut sensor, 0x20, 0x57);
    sensor.power_again();
    sensor.pass(BOOT_US);
    assert_eq!(get(&mut sensor, 0x20), [0x07]);
}

#[test]
fn it_gives_samples_at_its_rate_and_none_in_power_down() {
    let mut sensor = quiet([0.0, 0.0, 1000.0]);
    sensor.pass(1_000_000);
    assert_eq!(get(&mut sensor, 0x27), [0]);
    for (rate, period_us) in [
        (1, 1_000_000),
        (2, 100_000),
        (3, 40_000),
        (4, 20_000),
        (5, 10_000),
        (6, 5_000),
        (7, 2_500),
    ] {
        set(&mut sensor, 0x20, rate << 4 | 7);
        sensor.pass(period_us);
        get::<6>(&mut sensor, 0xa8);
        sensor.pass(period_us - 1);
        assert_eq!(get(&mut sensor, 0x27), [0], "rate {rate}");
        sensor.pass(1);
        assert_eq!(get(&mut sensor, 0x27), [0x0f], "rate {rate}");
        sensor.pass(period_us);
        assert_eq!(get(&mut sensor, 0x27), [0xff], "overrun at rate {rate}");
        get::<6>(&mut sensor, 0xa8);
        assert_eq!(get(&mut sensor, 0x27), [0], "read at rate {rate}");
    }
}

#[test]
fn it_counts_by_its_mode_and_range() {
    // Registers 1 and 4, bits, size of a count: table 3, and the modes' table.
    let modes = [
        (0x57, 0x08, 12, 0.98_f32),
        (0x57, 0x18, 12, 1.95),
        (0x57, 0x28, 12, 3.9),
        (0x57, 0x38, 12, 11.72),
        (0x57, 0x00, 10, 3.9),
        (0x5f, 0x00, 8, 15.63),
    ];
    for (control_1, control_4, bits, step_mg) in modes {
        let mut sensor = quiet([1000.0, -1000.0, 0.0]);
        set(&mut sensor, 0x23, control_4);
        set(&mut sensor, 0x20, control_1);
        sensor.pass(10_000);
        let bytes = get::<6>(&mut sensor, 0xa8);
        let counts = (1000.0 / step_mg).round() as i16;
        let axis = |at: usize| i16::from_le_bytes([bytes[2 * at], bytes[2 * at + 1]]);
        let justified = [0, 1, 2].map(|at| axis(at) >> (16 - bits));
        assert_eq!(
            justified,
            [counts, -counts, 0],
            "{control_1:#x} {control_4:#x}"
        );
        assert_eq!(axis(0).trailing_zeros().min(16 - bits), 16 - bits);
    }
}

#[test]
fn its_range_ends() {
    let mut sensor = quiet([5000.0, -5000.0, 0.0]);
    set(&mut sensor, 0x23, 0x08);
    set(&mut sensor, 0x20, 0x57);
    sensor.pass(10_000);
    assert_eq!(get::<6>(&mut sensor, 0xa8), [0xf0, 0x7f, 0x00, 0x80, 0, 0]);
}

#[test]
fn an_axis_that_is_off_says_nothing() {
    let mut sensor = quiet([1000.0, 1000.0, 1000.0]);
    set(&mut sensor, 0x23, 0x08);
    set(&mut sensor, 0x20, 0x52);
    sensor.pass(10_000);
    let [x0, x1, y0, y1, z0, z1] = get(&mut sensor, 0xa8);
    assert_eq!(([x0, x1], [z0, z1]), ([0; 2], [0; 2]));
    assert_ne!([y0, y1], [0; 2]);
}

#[test]
fn without_the_highest_bit_one_register_is_read_again_and_again() {
    let mut sensor = quiet([1000.0, 500.0, 0.0]);
    set(&mut sensor, 0x23, 0x08);
    set(&mut sensor, 0x20, 0x57);
    sensor.pass(10_000);
    let [low, high, ..] = get::<6>(&mut sensor, 0xa8);
    assert_eq!(get(&mut sensor, 0x28), [low; 3]);
    assert_eq!(get(&mut sensor, 0x29), [high; 3]);
}

/// The model with a wire to it outside of the driver.
#[derive(Clone)]
struct Wired(Rc<RefCell<Sensor>>);

impl embedded_hal::i2c::ErrorType for Wired {
    type Error = ErrorKind;
}

impl I2c for Wired {
    fn transaction(
        &mut self,
        address: u8,
        operations: &mut [embedded_hal::i2c::Operation<'_>],
    ) -> Result<(), ErrorKind> {
        self.0.borrow_mut().transaction(address, operations)
    }
}

#[test]
fn the_driver_reads_what_it_feels() {
    let wired = Wired(Rc::new(RefCell::new(quiet([300.0, -600.0, 741.0]))));
    let mut driver = Lsm303agr::new(wired.clone(), |axes| axes);
    assert_eq!(driver.start(), Ok(()));
    wired.0.borrow_mut().pass(10_000);
    let step_mg = 0.98_f32;
    let counts = [300.0, -600.0, 741.0].map(|mg: f32| (mg / step_mg).round() as i16);
    assert_eq!(driver.sample(), Ok(Some(counts)));
    assert_eq!(driver.sample(), Ok(None));
}

#[test]
fn its_faults_come_and_go() {
    use plumbmark_gauge::fault::Fault as Shown;
    let wired = Wired(Rc::new(RefCell::new(quiet([300.0, -600.0, 741.0]))));
    let mut driver = Lsm303agr::new(wired.clone(), |axes| axes);
    let fault = |fault| wired.0.borrow_mut().fault = fault;
    for (begun, shown) in [
        (Fault::NoAcknowledge, Shown::NoAnswer),
        (Fault::StuckBus, Shown::NoAnswer),
        (Fault::WrongIdentity, Shown::WrongSensor),
    ] {
        fault(Some(begun));
        assert_eq!(driver.start(), Err(shown), "{begun:?}");
        fault(None);
        assert_eq!(driver.start(), Ok(()), "after {begun:?}");
    }
    let mut next = |begun| {
        fault(Some(begun));
        wired.0.borrow_mut().pass(10_000);
        driver.sample().expect("it answers")
    };
    let first = next(Fault::StuckAxis(0)).expect("a sample");
    wired.0.borrow_mut().felt.force_mg = [0.0, 0.0, 1000.0];
    let stuck = next(Fault::StuckAxis(0)).expect("a sample");
    assert_eq!((stuck[0], stuck[1]), (first[0], 0));
    assert_eq!(next(Fault::SaturatedAxis(2)).map(|[.., z]| z), Some(2047));
    assert_eq!(next(Fault::NeverReady), None);
    assert_eq!(next(Fault::Frozen).map(|[.., z]| z), Some(2047));
}

#[test]
fn its_noise_is_what_it_says() {
    let mut sensor = quiet([0.0, 0.0, 1000.0]);
    sensor.felt.noise_mg = 3.0;
    set(&mut sensor, 0x23, 0x08);
    set(&mut sensor, 0x20, 0x57);
    let (mut sum, mut squares) = (0.0, 0.0);
    const SAMPLES: u32 = 10_000;
    for _ in 0..SAMPLES {
        sensor.pass(10_000);
        let [x0, x1, ..] = get::<6>(&mut sensor, 0xa8);
        let mg = f64::from(i16::from_le_bytes([x0, x1]) >> 4) * 0.98;
        sum += mg;
        squares += mg * mg;
    }
    let mean = sum / f64::from(SAMPLES);
    let deviation = (squares / f64::from(SAMPLES) - mean * mean).sqrt();
    assert!(
        mean.abs() < 0.1 && (deviation - 3.0).abs() < 0.1,
        "{mean} {deviation}"
    );
}
