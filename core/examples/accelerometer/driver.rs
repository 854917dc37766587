//! A 12-bit accelerometer on I²C. The registers are those of a common part over ±2 g, from memory:
//! compare each of them, and the terms of [`sensor`], with the data sheet of yours.

use core::error::Error;
use core::fmt::{self, Debug, Display, Formatter};
use embedded_hal::delay::DelayNs;
use embedded_hal::i2c::I2c;
use plumbmark::check::End;
use plumbmark::direct::{Direct, Taken};
use plumbmark::holds::Placement;
use plumbmark::prior::STANDARD_GRAVITY_M_S2;
use plumbmark::reason::NoReading;
use plumbmark::sensor::Sensor;

/// Address on the bus.
pub const ADDRESS: u8 = 0x18;
/// Register that says what it is, and what it says.
pub const IDENTITY: (u8, u8) = (0x0F, 0x33);
/// Registers and their values: 100 samples a second, all axes; ±2 g in 12 bits, a sample's two
/// bytes held together.
pub const SETTINGS: [(u8, u8); 2] = [(0x20, 0x57), (0x23, 0x88)];
/// Register whose bit 3 says that a new sample is there.
pub const STATUS: u8 = 0x27;
/// First of six registers, two a value, the low byte first; the high bit asks for all in a row.
pub const VALUES: u8 = 0x28 | 0x80;

/// Time between two samples, microseconds.
const SAMPLE_US: u32 = 10_000;
/// Size of a count, m/s²: 1 mg.
const COUNT_M_S2: f32 = STANDARD_GRAVITY_M_S2 / 1000.0;
/// Looks for a new sample, one a millisecond, before the sensor counts as silent.
const LOOKS: u8 = 30;
/// Samples after which a capture gives up: five seconds.
const SAMPLES: u16 = 500;

/// Why there are no verdicts.
#[derive(Debug)]
pub enum Fault<E> {
    /// The bus failed.
    Bus(E),
    /// Something else answers at this address, or the settings did not stay.
    OtherSensor,
    /// No reading came of it, and why.
    NoReading(NoReading),
}

impl<E: Debug> Display for Fault<E> {
    fn fmt(&self, f: &mut Formatter<'_>) -> fmt::Result {
        match self {
            Self::Bus(fault) => write!(f, "the bus failed: {fault:?}"),
            Self::OtherSensor => write!(f, "no such sensor at address {ADDRESS:#04x}"),
            Self::NoReading(reason) => write!(f, "no reading: {reason}"),
        }
    }
}

impl<E: Debug> Error for Fault<E> {}

/// What the data sheet says of one axis: ±40 mg of zero and ±4 % of scale as bounds, rectangles
/// with a standard uncertainty of half-width/√3 (JCGM 100 §4.3.7). Values from memory.
#[must_use]
pub fn sensor() -> Sensor {
    Sensor::unchecked(0.040 / 1.732, 0.04 / 1.732)
}

/// A sensor on its bus, set up.
#[derive(Debug)]
pub struct Accelerometer<I> {
    bus: I,
}

impl<I: I2c> Accelerometer<I> {
    /// Sets the sensor up, and reads back that it is one.
    ///
    /// # Errors
    /// [`Fault::Bus`], [`Fault::OtherSensor`].
    pub fn new(bus: I) -> Result<Self, Fault<I::Error>> {
        let mut found = Self { bus };
        for (register, value) in SETTINGS {
            let set = found.bus.write(ADDRESS, &[register, value]);
            set.map_err(Fault::Bus)?;
        }
        for (register, value) in SETTINGS.into_iter().chain([IDENTITY]) {
            if found.read(register)? != [value] {
                return Err(Fault::OtherSensor);
            }
        }
        Ok(found)
    }

    fn read<const N: usize>(&mut self, register: u8) -> Result<[u8; N], Fault<I::Error>> {
        let mut bytes = [0; N];
        let read = self.bus.write_read(ADDRESS, &[register], &mut bytes);
        read.map(|()| bytes).map_err(Fault::Bus)
    }

    /// The next sample, counts. One that was read before never counts twice: scatter would look
    /// smaller than it is.
    ///
    /// # Errors
    /// [`Fault::Bus`]; [`NoReading::Stale`] where none comes.
    pub fn next(&mut self, delay: &mut impl DelayNs) -> Result<[i16; 3], Fault<I::Error>> {
        for _ in 0..LOOKS {
            let [status] = self.read(STATUS)?;
            if status & 0x08 != 0 {
                let [xl, xh, yl, yh, zl, zh] = self.read(VALUES)?;
                // Twelve bits stand at the upper end of sixteen.
                let pairs = [[xl, xh], [yl, yh], [zl, zh]];
                return Ok(pairs.map(|pair| i16::from_le_bytes(pair) >> 4));
            }
            delay.delay_ms(1);
        }
        Err(Fault::NoReading(NoReading::Stale))
    }
}

/// Waits until the sensor rests on the part, and takes what its checks are answered from.
/// `surface_deg` and `ends` as in [`Direct::take`].
///
/// # Errors
/// [`Fault`]; where it never rests, the last reason why not.
pub fn capture<I: I2c>(
    from: &mut Accelerometer<I>,
    delay: &mut impl DelayNs,
    placement: Placement,
    surface_deg: (f32, f32),
    ends: [Option<End>; 2],
) -> Result<Taken, Fault<I::Error>> {
    let mut direct = Direct::new(COUNT_M_S2, sensor(), placement);
    let mut last = NoReading::Starting;
    for _ in 0..SAMPLES {
        let taken = match direct.push(SAMPLE_US, from.next(delay)?) {
            Ok(true) => direct.take(surface_deg, ends),
            Ok(false) => continue,
            Err(reason) => Err(reason),
        };
        match taken {
            Ok(taken) => return Ok(taken),
            Err(reason) => last = reason,
        }
    }
    Err(Fault::NoReading(last))
}
