//! The gauge's board: each thing that is asked of it is looked up in the world, beside the gauge's
//! stack.

use crate::count::{Counter, Work};
use crate::flash::Flash;
use crate::stack::{Left, beside, lost, wait};
use crate::world::{World, world};
use embedded_hal::i2c::{ErrorKind, ErrorType, I2c, Operation};
use embedded_storage::nor_flash::{
    ErrorType as FlashErrorType, NorFlash, NorFlashErrorKind, ReadNorFlash,
};
use plumbmark_gauge::board::Board;
use plumbmark_gauge::lsm303agr::Lsm303agr;
use plumbmark_gauge::run::{Running, TICK_US};

/// The gauge's own number here.
pub const NUMBER: u32 = 0xc0ff_ee42;

/// What the firmware's `main` does.
pub extern "C" fn gauge() -> ! {
    let mut gauge = Running::new(Fake::new());
    loop {
        gauge.turn();
    }
}

/// Asks the world on the script's stack; what the gauge goes on with is `work`.
fn asked<R: Default>(next: Work, mut ask: impl FnMut(&mut World) -> R) -> R {
    let mut answer = R::default();
    beside(&mut || {
        answer = world(&mut ask);
        Counter::now(next);
    });
    answer
}

/// From the sensor's axes to the gauge's, as the firmware's board has them; its own inverse.
pub fn turned([x, y, z]: [i16; 3]) -> [i16; 3] {
    [y, x, z].map(i16::saturating_neg)
}

/// The board.
pub struct Fake {
    accelerometer: Lsm303agr<Bus>,
    flash: Pages,
}

impl Fake {
    fn new() -> Self {
        Self {
            accelerometer: Lsm303agr::new(Bus, turned),
            flash: Pages,
        }
    }
}

impl Board for Fake {
    type Accelerometer = Lsm303agr<Bus>;
    type Flash = Pages;
    const LOWEST_MV: u16 = 2_000;

    fn accelerometer(&mut self) -> &mut Self::Accelerometer {
        &mut self.accelerometer
    }

    fn flash(&mut self) -> &mut Self::Flash {
        &mut self.flash
    }

    fn pressed(&mut self) -> [bool; 2] {
        let (pressed, panics) = asked(Work::Look, |world| (world.pressed, world.panics));
        assert!(!panics, "a panic on purpose");
        pressed
    }

    fn supply_mv(&mut self) -> u16 {
        asked(Work::Board, |world| world.supply_mv)
    }

    fn light(&mut self, row: usize, lights: u8) {
        asked(Work::Board, |world| world.seen.light(row, lights));
    }

    fn send(&mut self, byte: u8) {
        asked(Work::Line, |world| {
            world
                .line
                .push(byte)
                .expect("a line is no longer than it says");
        });
    }

    fn wait(&mut self) {
        asked(Work::Board, |world| {
            world.ticks += 1;
            world.sensor.pass(TICK_US);
        });
        wait();
    }

    fn number(&self) -> u32 {
        NUMBER
    }

    fn restarted(&self) -> bool {
        asked(Work::Board, |world| world.restarted)
    }
}

/// The wires to the sensor.
pub struct Bus;

impl ErrorType for Bus {
    type Error = ErrorKind;
}

impl I2c for Bus {
    fn transaction(
        &mut self,
        address: u8,
        operations: &mut [Operation<'_>],
    ) -> Result<(), ErrorKind> {
        let answer = asked(Work::Board, |world| {
            world.transfers += 1;
            (!world.bus_hangs).then(|| world.sensor.transaction(address, operations))
        });
        answer.unwrap_or_else(|| lost(Left::Watchdog))
    }
}

/// The flash's pages.
pub struct Pages;

impl FlashErrorType for Pages {
    type Error = NorFlashErrorKind;
}

fn on_flash(
    mut work: impl FnMut(&mut Flash) -> Result<(), NorFlashErrorKind>,
) -> Result<(), NorFlashErrorKind> {
    let (done, is_off) = asked(Work::Board, |world| {
        (Some(work(&mut world.flash)), world.flash.is_off)
    });
    if is_off {
        lost(Left::NoPower);
    }
    done.unwrap_or(Err(NorFlashErrorKind::Other))
}

impl ReadNorFlash for Pages {
    const READ_SIZE: usize = Flash::READ_SIZE;

    fn read(&mut self, offset: u32, bytes: &mut [u8]) -> Result<(), NorFlashErrorKind> {
        on_flash(|flash| flash.read(offset, bytes))
    }

    fn capacity(&self) -> usize {
        2 * Self::ERASE_SIZE
    }
}

impl NorFlash for Pages {
    const WRITE_SIZE: usize = Flash::WRITE_SIZE;
    const ERASE_SIZE: usize = Flash::ERASE_SIZE;

    fn erase(&mut self, from: u32, to: u32) -> Result<(), NorFlashErrorKind> {
        on_flash(|flash| flash.erase(from, to))
    }

    fn write(&mut self, offset: u32, bytes: &[u8]) -> Result<(), NorFlashErrorKind> {
        let panics = asked(Work::Board, |world| world.panics);
        assert!(!panics, "a panic on purpose");
        on_flash(|flash| flash.write(offset, bytes))
    }
}
