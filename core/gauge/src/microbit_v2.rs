//! The micro:bit v2: its pins, and nothing else. Held with the lights towards you and the edge
//! connector down, button A is at the gauge's tail end and button B at its head end.

use crate::bus::Bus;
use cortex_m::peripheral::SCB;
use embedded_hal::digital::{InputPin, OutputPin};
use microbit::board::{Board as Parts, Buttons};
use microbit::hal::Timer;
use microbit::hal::clocks::Clocks;
use microbit::hal::gpio::{Output, Pin, PushPull};
use microbit::hal::nvmc::Nvmc;
use microbit::hal::saadc::{Gain, InternalVdd, Reference, Saadc, SaadcConfig};
use microbit::hal::timer::Periodic;
use microbit::hal::twim::{Frequency, Twim};
use microbit::hal::uarte::{Baudrate, Parity, Uarte};
use microbit::hal::wdt::{Watchdog, WatchdogHandle, count, handles::Hdl0};
use microbit::pac::{NVMC, POWER, TIMER0, UARTE0, WDT};
use plumbmark_gauge::board::Board;
use plumbmark_gauge::lsm303agr::Lsm303agr;
use plumbmark_gauge::run::TICK_US;

type Light = Pin<Output<PushPull>>;

/// Longest time without a tick, at 32 768 Hz: 0.5 s. To erase a page takes 0.09 s.
const PATIENCE: u32 = 16_384;
/// Left in a register that a reset spares.
const PANICKED: u8 = 0x50;
/// Two pages for the calibration: see memory.x.
const KEPT_BYTES: usize = 8 * 1024;

unsafe extern "C" {
    static mut _kept: [u8; KEPT_BYTES];
}

/// The board.
pub struct MicrobitV2 {
    accelerometer: Lsm303agr<Bus>,
    flash: Nvmc<NVMC>,
    buttons: Buttons,
    columns: [Light; 5],
    rows: [Light; 5],
    adc: Saadc,
    serial: Uarte<UARTE0>,
    ticks: Timer<TIMER0, Periodic>,
    watchdog: WatchdogHandle<Hdl0>,
    number: u32,
    restarted: bool,
}

impl MicrobitV2 {
    /// Takes the board; a second time would start the gauge again.
    #[inline(never)]
    pub fn take() -> Self {
        let Some(parts) = Parts::take() else {
            start_again()
        };
        Clocks::new(parts.CLOCK).enable_ext_hfosc();
        let (columns, rows) = parts.display_pins.degrade();
        let bus = Twim::new(parts.TWIM0, parts.i2c_internal.into(), Frequency::K250);
        let mut ticks = Timer::periodic(parts.TIMER0);
        ticks.start(TICK_US);
        let kept = &raw mut _kept;
        // SAFETY: the linker script sets this memory aside, aligned to a page; nobody else names
        // it, and the board is taken once.
        let kept = unsafe { &mut *kept };
        Self {
            accelerometer: Lsm303agr::new(Bus(bus), turned),
            flash: Nvmc::new(parts.NVMC, kept),
            buttons: parts.buttons,
            columns,
            rows,
            adc: Saadc::new(parts.ADC, of_3_6_volts()),
            serial: Uarte::new(
                parts.UARTE0,
                parts.uart.into(),
                Parity::EXCLUDED,
                Baudrate::BAUD115200,
            ),
            ticks,
            watchdog: watched(parts.WDT),
            number: parts.FICR.deviceid[0].read().bits(),
            restarted: has_restarted(&parts.POWER),
        }
    }
}

impl Board for MicrobitV2 {
    type Accelerometer = Lsm303agr<Bus>;
    type Flash = Nvmc<NVMC>;
    /// The accelerometer wants 1.71 V (its data sheet, table 4); what is above it is our reserve.
    const LOWEST_MV: u16 = 2_000;

    fn accelerometer(&mut self) -> &mut Self::Accelerometer {
        &mut self.accelerometer
    }

    fn flash(&mut self) -> &mut Self::Flash {
        &mut self.flash
    }

    fn pressed(&mut self) -> [bool; 2] {
        let Buttons { button_a, button_b } = &mut self.buttons;
        // The contacts pull to ground; reading a pin of the chip cannot fail.
        [button_a.is_low() == Ok(true), button_b.is_low() == Ok(true)]
    }

    fn supply_mv(&mut self) -> u16 {
        // A reading that failed is no supply.
        let count = self.adc.read_channel(&mut InternalVdd).unwrap_or(0);
        (i32::from(count.max(0)) * 3_600 / 16_384) as u16
    }

    fn light(&mut self, row: usize, lights: u8) {
        for row in &mut self.rows {
            _ = row.set_low();
        }
        for (at, column) in self.columns.iter_mut().enumerate() {
            // A column sinks the current of the lights that are on.
            let off = lights & (0b10000 >> at) == 0;
            _ = column.set_state(off.into());
        }
        if let Some(row) = self.rows.get_mut(row) {
            _ = row.set_high();
        }
    }

    fn send(&mut self, byte: u8) {
        // Nobody may listen; the capture is shown all the same.
        _ = self.serial.write(&[byte]);
    }

    fn wait(&mut self) {
        while !self.ticks.reset_if_finished() {}
        self.watchdog.pet();
    }

    fn number(&self) -> u32 {
        self.number
    }

    fn restarted(&self) -> bool {
        self.restarted
    }
}

/// From the sensor's axes, x to button A, y to the logo, z out of the back (board support code and
/// published readings agree on z; x and y by the former), to the gauge's: x to the edge connector,
/// y to button B, z out of the lights.
fn turned([x, y, z]: [i16; 3]) -> [i16; 3] {
    [y, x, z].map(i16::saturating_neg)
}

/// 14 bits over 3.6 V: the chip's own reference of 0.6 V by six.
fn of_3_6_volts() -> SaadcConfig {
    SaadcConfig {
        reference: Reference::INTERNAL,
        gain: Gain::GAIN1_6,
        ..SaadcConfig::default()
    }
}

/// A watchdog that runs from here on; after some resets it still runs from before.
fn watched(wdt: WDT) -> WatchdogHandle<Hdl0> {
    let parts = match Watchdog::try_new(wdt) {
        Ok(mut idle) => {
            idle.set_lfosc_ticks(PATIENCE);
            Ok(idle.activate::<count::One>())
        }
        Err(wdt) => Watchdog::try_recover::<count::One>(wdt),
    };
    let Ok(parts) = parts else { start_again() };
    let (handle,) = parts.handles;
    handle
}

/// Whether the watchdog, a lock-up or a panic started the board; forgets it.
fn has_restarted(power: &POWER) -> bool {
    let reason = power.resetreas.read();
    let panicked = power.gpregret.read().gpregret().bits() == PANICKED;
    let restarted = reason.dog().is_detected() || reason.lockup().is_detected() || panicked;
    // Writing a one clears a reason.
    power
        .resetreas
        .write(|w| w.dog().set_bit().lockup().set_bit());
    power.gpregret.reset();
    restarted
}

/// Starts the board anew, so that it shows [`plumbmark_gauge::fault::Fault::Restarted`].
pub fn start_again() -> ! {
    // SAFETY: one write to a register that nothing else of the gauge writes.
    let power = unsafe { &*POWER::ptr() };
    power
        .gpregret
        .write(|w| unsafe { w.gpregret().bits(PANICKED) });
    SCB::sys_reset()
}
