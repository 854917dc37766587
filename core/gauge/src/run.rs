//! The loop: a row of lights at each tick, a look every fifth. Nothing else runs, so that a gauge
//! that hangs shows one still row, and no verdict, until its watchdog starts it again.

use crate::accelerometer::Accelerometer;
use crate::board::Board;
use crate::gauge::{Gauge, LOOK_MS, Look, Outlet};
use crate::kept::{Kept, load, save};
use crate::lights::frame;
use crate::limits::{limits, surface_deg};
use crate::supply::Supply;
use plumbmark::calibration::Calibration;
use plumbmark::direct::Taken;
use plumbmark::line::{Speaker, write};

/// Time of a tick, µs: five rows are a picture, a hundred times a second.
pub const TICK_US: u32 = 2_000;
/// Looks between two readings of the supply.
const SUPPLY_EVERY: u8 = 50;

/// A gauge on its board.
pub struct Running<B> {
    board: B,
    gauge: Gauge,
    supply: Supply,
    supply_low: bool,
    looks: u8,
    /// Whether the accelerometer has to be started.
    start: bool,
}

impl<B: Board> Running<B> {
    /// Switched on.
    #[inline(never)]
    pub fn new(mut board: B) -> Self {
        let found = load(board.flash());
        let gauge = Gauge::new(&B::Accelerometer::STATED, &found, board.restarted());
        Self {
            board,
            gauge,
            supply: Supply::default(),
            supply_low: false,
            looks: 0,
            start: true,
        }
    }

    /// One picture of the lights and one look.
    #[inline(never)]
    pub fn turn(&mut self) {
        let (show, ms) = self.gauge.shown();
        for (row, lights) in frame(show, ms).into_iter().enumerate() {
            self.board.wait();
            self.board.light(row, lights);
        }
        if self.looks == 0 {
            self.supply_low = self.supply.is_low(self.board.supply_mv(), B::LOWEST_MV);
        }
        self.looks = (self.looks + 1) % SUPPLY_EVERY;
        let accelerometer = self.board.accelerometer();
        let sample = if self.start {
            accelerometer.start().map(|()| None)
        } else {
            accelerometer.sample()
        };
        let look = Look {
            sample,
            pressed: self.board.pressed(),
            supply_low: self.supply_low,
        };
        let mut out = Out(&mut self.board);
        self.start = self.gauge.look(look, &mut out);
    }

    /// The gauge, for whoever looks on.
    pub fn gauge(&self) -> &Gauge {
        &self.gauge
    }
}

/// The board as captures and calibrations leave by it.
struct Out<'a, B>(&'a mut B);

impl<B: Board> Outlet for Out<'_, B> {
    #[inline(never)]
    fn send(&mut self, taken: &Taken, count: u32) {
        let speaker = Speaker {
            gauge: self.0.number(),
            count,
            software: env!("CARGO_PKG_VERSION").try_into().unwrap_or_default(),
        };
        let surface = surface_deg(taken.placement.surface);
        let limits = limits(&taken.placement);
        write(&speaker, taken, &limits, surface, &mut |byte| {
            self.0.send(byte);
        });
    }

    fn keep(&mut self, calibration: Calibration) -> Option<Kept> {
        save(self.0.flash(), calibration)
    }
}

const _: () = assert!(LOOK_MS * 1_000 == 5 * TICK_US, "five rows are one look");
