//! What a gauge needs of a board. Another board is one file that gives it.

use crate::accelerometer::Accelerometer;
use embedded_storage::nor_flash::NorFlash;

/// A board with an accelerometer, five by five lights, two buttons and two erasable pages.
pub trait Board {
    /// Its accelerometer.
    type Accelerometer: Accelerometer;
    /// Its flash: two erase pages at least, for the calibration alone.
    type Flash: NorFlash;
    /// Lowest supply that the accelerometer is good for, mV.
    const LOWEST_MV: u16;

    /// The accelerometer.
    fn accelerometer(&mut self) -> &mut Self::Accelerometer;
    /// The flash.
    fn flash(&mut self) -> &mut Self::Flash;
    /// Whether the buttons at the tail and at the head end are down.
    fn pressed(&mut self) -> [bool; 2];
    /// The supply, mV.
    fn supply_mv(&mut self) -> u16;
    /// Lights a row, from 0, and no other; the tail end's column is the highest of five bits.
    fn light(&mut self, row: usize, lights: u8);
    /// Sends one byte of a line.
    fn send(&mut self, byte: u8);
    /// Waits for the next of the ticks, [`crate::run::TICK_US`] apart, and feeds the watchdog.
    fn wait(&mut self);
    /// A number of this gauge's own.
    fn number(&self) -> u32;
    /// Whether it was the watchdog, a lock-up or a panic that started it.
    fn restarted(&self) -> bool;
}
