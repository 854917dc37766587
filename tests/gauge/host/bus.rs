//! What goes over the bus, byte by byte, between the driver and the sensor.

use embedded_hal::i2c::ErrorKind;
use embedded_hal::i2c::NoAcknowledgeSource::Address;
use embedded_hal_mock::eh1::i2c::{Mock, Transaction};
use plumbmark_gauge::accelerometer::Accelerometer;
use plumbmark_gauge::fault::Fault;
use plumbmark_gauge::lsm303agr::Lsm303agr;

const ACCELEROMETER: u8 = 0x19;
const MAGNETOMETER: u8 = 0x1e;

fn write(address: u8, register: u8, value: u8) -> Transaction {
    Transaction::write(address, vec![register, value])
}

fn read(register: u8, answer: &[u8]) -> Transaction {
    Transaction::write_read(ACCELEROMETER, vec![register], answer.to_vec())
}

/// Identity, then the settings: whole samples only, temperature sensor on, the magnetometer's
/// samples whole too, ±2 g, 100 a second with all axes, high resolution.
fn starts() -> Vec<Transaction> {
    vec![
        read(0x0f, &[0x33]),
        write(ACCELEROMETER, 0x23, 0x80),
        write(ACCELEROMETER, 0x1f, 0xc0),
        write(MAGNETOMETER, 0x62, 0x10),
        write(ACCELEROMETER, 0x23, 0x80),
        write(ACCELEROMETER, 0x20, 0x57),
        write(ACCELEROMETER, 0x23, 0x88),
    ]
}

/// Status says that there is a sample; then all six bytes in one transfer. Counts are 12 bits,
/// left-justified: 0x400, −1, −0x400.
fn sample() -> [Transaction; 2] {
    [
        read(0x27, &[0x0f]),
        read(0xa8, &[0x00, 0x40, 0xf0, 0xff, 0x00, 0xc0]),
    ]
}

fn on(bus: &Mock) -> Lsm303agr<Mock> {
    Lsm303agr::new(bus.clone(), |axes| axes)
}

fn refused(transaction: &Transaction) -> Transaction {
    transaction
        .clone()
        .with_error(ErrorKind::NoAcknowledge(Address))
}

#[test]
fn identity_settings_and_a_sample() {
    let mut bus = Mock::new(&[&starts()[..], &sample()[..]].concat());
    let mut sensor = on(&bus);
    assert_eq!(sensor.start(), Ok(()));
    assert_eq!(sensor.sample(), Ok(Some([0x400, -1, -0x400])));
    bus.done();
}

#[test]
fn axes_are_turned_as_the_board_says() {
    let mut bus = Mock::new(&[&starts()[..], &sample()[..]].concat());
    let mut sensor = Lsm303agr::new(bus.clone(), |[x, y, z]| [-y, x, -z]);
    assert_eq!(sensor.start(), Ok(()));
    assert_eq!(sensor.sample(), Ok(Some([1, 0x400, 0x400])));
    bus.done();
}

#[test]
fn what_is_not_ready_is_not_read() {
    for status in [0x00, 0x07, 0xf7] {
        let mut bus = Mock::new(&[&starts()[..], &[read(0x27, &[status])]].concat());
        let mut sensor = on(&bus);
        assert_eq!(sensor.start(), Ok(()));
        assert_eq!(sensor.sample(), Ok(None), "status {status:#x}");
        bus.done();
    }
}

#[test]
fn any_other_identity_is_no_accelerometer() {
    for identity in (0..=u8::MAX).filter(|identity| *identity != 0x33) {
        let mut bus = Mock::new(&[read(0x0f, &[identity])]);
        assert_eq!(on(&bus).start(), Err(Fault::WrongSensor), "{identity:#x}");
        bus.done();
    }
}

#[test]
fn a_transfer_refused_anywhere_is_no_answer_and_the_next_start_does_all_of_it() {
    let all = starts();
    for at in 0..all.len() {
        let before = &all[..at];
        let mut bus = Mock::new(&[before, &[refused(&all[at])], &all[..], &sample()[..]].concat());
        let mut sensor = on(&bus);
        assert_eq!(sensor.start(), Err(Fault::NoAnswer), "transfer {at}");
        assert_eq!(sensor.start(), Ok(()), "after transfer {at}");
        assert_eq!(sensor.sample(), Ok(Some([0x400, -1, -0x400])));
        bus.done();
    }
}

#[test]
fn a_refused_sample_is_no_answer() {
    let [status, axes] = sample();
    for refusing in [vec![refused(&status)], vec![status, refused(&axes)]] {
        let mut bus = Mock::new(&[&starts()[..], &refusing[..]].concat());
        let mut sensor = on(&bus);
        assert_eq!(sensor.start(), Ok(()));
        assert_eq!(sensor.sample(), Err(Fault::NoAnswer));
        bus.done();
    }
}

#[test]
fn a_held_bus_is_no_answer() {
    for error in [
        ErrorKind::Bus,
        ErrorKind::ArbitrationLoss,
        ErrorKind::Overrun,
        ErrorKind::Other,
    ] {
        let mut bus = Mock::new(&[starts()[0].clone().with_error(error)]);
        assert_eq!(on(&bus).start(), Err(Fault::NoAnswer), "{error:?}");
        bus.done();
    }
}

#[test]
fn a_sensor_that_lost_its_settings_gets_all_of_them_again() {
    let again = [
        read(0x0f, &[0x33]),
        write(ACCELEROMETER, 0x23, 0x88),
        write(ACCELEROMETER, 0x1f, 0xc0),
        write(MAGNETOMETER, 0x62, 0x10),
        write(ACCELEROMETER, 0x23, 0x88),
        write(ACCELEROMETER, 0x20, 0x57),
        write(ACCELEROMETER, 0x23, 0x88),
    ];
    let mut bus = Mock::new(&[&starts()[..], &again[..], &sample()[..]].concat());
    let mut sensor = on(&bus);
    assert_eq!(sensor.start(), Ok(()));
    assert_eq!(sensor.start(), Ok(()));
    assert_eq!(sensor.sample(), Ok(Some([0x400, -1, -0x400])));
    bus.done();
}
