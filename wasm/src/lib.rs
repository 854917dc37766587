//! The border between the page and the core: types only. Numbers in and flat getters out on the
//! hot path, where nothing is allocated; one report at capture.

#![cfg_attr(target_arch = "wasm32", no_std)]

extern crate alloc;

mod limits;
mod object;
mod phone;
mod plan;
mod vehicle;

use limits::Limits;
use plumbmark::check::{End, Outcome};
use plumbmark::holds::{Hold, Refusal, Surface};
use plumbmark::limits::{LimitError, LimitSet};
use plumbmark::live::{Blind, Live as Core, Reading};
use plumbmark::parts::{Check, Part};
use plumbmark::reason::NoReading;
use wasm_bindgen::prelude::{JsError, JsValue, wasm_bindgen};

/// The entry of a catalogue's list.
fn known<T: Copy>(all: &[T], code: u8) -> Result<T, JsError> {
    let found = all.get(usize::from(code)).copied();
    found.ok_or_else(|| JsError::new("unknown code"))
}

/// A limit set's error: line, field, the problem's name and its numbers. The words are the page's.
fn in_words(error: LimitError) -> JsValue {
    let (low, high) = error.problem.numbers();
    object::error(error.line, error.field, error.problem.name(), [low, high])
}

/// A reason for no reading, by its name.
fn no_reading(reason: NoReading) -> JsError {
    JsError::new(reason.name())
}

/// A placement's refusal, by its name.
fn refused(refusal: Refusal) -> JsError {
    JsError::new(refusal.name())
}

/// A value of core's as a plain object.
fn to_js<T: serde::Serialize>(value: &T) -> Result<JsValue, JsError> {
    object::to_js(value).ok_or_else(|| JsError::new("no such shape"))
}

// Half the size of the default one, and as good: a few objects at capture, none per event.
#[cfg(target_arch = "wasm32")]
#[global_allocator]
static ALLOCATOR: lol_alloc::LockedAllocator<lol_alloc::FreeListAllocator> =
    lol_alloc::LockedAllocator::new(lol_alloc::FreeListAllocator::new());

// The page builds the core anew after a trap; there is nobody to read a message.
#[cfg(target_arch = "wasm32")]
#[panic_handler]
fn trap(_: &core::panic::PanicInfo<'_>) -> ! {
    core::arch::wasm32::unreachable()
}

/// Place of the first check in the vehicle; those as parked come before.
const IN_VEHICLE: usize = 2;

/// A phone held to a part: see `plumbmark::live::Live`.
#[wasm_bindgen]
pub struct Live(Core);

#[wasm_bindgen]
impl Live {
    /// Nothing received yet, no limit entered.
    #[expect(clippy::new_without_default, reason = "a page calls the constructor")]
    #[wasm_bindgen(constructor)]
    #[must_use]
    pub fn new() -> Self {
        Self(Core::with_limits(LimitSet::not_entered()))
    }

    /// Chooses part, hold and surface by their places in the catalogue; an error names the refusal.
    pub fn select(&mut self, part: u8, hold: u8, surface: u8) -> Result<(), JsError> {
        let part = known(&Part::ALL, part)?;
        let hold = known(&Hold::ALL, hold)?;
        let surface = known(&Surface::ALL, surface)?;
        self.0.select(part, hold, surface).map_err(refused)
    }

    /// Puts a limit set in force; an error names the field.
    pub fn set_limits(&mut self, limits: &Limits) -> Result<(), JsValue> {
        self.0.set_limits(limits.set().clone()).map_err(in_words)
    }

    /// Says which end of a check's axis looked lower: its place among the catalogue's ends, or
    /// nothing.
    pub fn tell_end(&mut self, check: u8, end: Option<u8>) -> Result<(), JsError> {
        let end = end.map(|e| known(&End::ALL, e)).transpose()?;
        self.0.tell_end(known(&Check::ALL, check)?, end);
        Ok(())
    }

    /// Takes a sign known from before, or 0 to learn it again.
    pub fn set_sign(&mut self, sign: i8) {
        self.0.set_sign(sign);
    }

    /// Decides the sign for a phone that lies face up now; 0 when it does not.
    pub fn learn_sign_face_up(&mut self) -> i8 {
        self.0.learn_sign_face_up()
    }

    /// One motion event, ms and m/s².
    pub fn motion(&mut self, t_ms: f64, x: Option<f64>, y: Option<f64>, z: Option<f64>) {
        self.0.motion(t_ms, [x, y, z]);
    }

    /// One orientation event, degrees. Its time is that of the motion events around it.
    pub fn orientation(&mut self, beta_deg: Option<f64>, gamma_deg: Option<f64>) {
        self.0.orientation(beta_deg, gamma_deg);
    }

    /// Answers anew; 0 for a reading, else the code of a reason.
    pub fn tick(&mut self, now_ms: f64) -> u8 {
        self.0.tick(now_ms).err().map_or(0, |reason| reason.code())
    }

    /// Arms a blind reading.
    pub fn arm(&mut self, now_ms: f64) {
        self.0.arm(now_ms);
    }

    /// Ends a blind reading.
    pub fn disarm(&mut self) {
        self.0.disarm();
    }

    /// 0 off, 1 armed, 2 moved, 3 at rest: capture now.
    #[wasm_bindgen(getter)]
    pub fn blind(&self) -> u8 {
        match self.0.blind() {
            Blind::Off => 0,
            Blind::Armed(_) => 1,
            Blind::Moved => 2,
            Blind::Ready => 3,
        }
    }

    /// Number of checks in the reading.
    #[wasm_bindgen(getter)]
    pub fn count(&self) -> usize {
        self.reading().map_or(0, |r| r.outcomes.len())
    }

    /// Share of the window that is filled.
    #[wasm_bindgen(getter)]
    pub fn progress(&self) -> f32 {
        self.0.progress()
    }

    /// Sign of this browser's gravity; 0 while not known.
    #[wasm_bindgen(getter)]
    pub fn sign(&self) -> i8 {
        self.0.sign()
    }

    /// A number of check `i`, NaN where there is none: 0 value and 1 U, degrees; 2 margin and 3 turn
    /// that would settle it, degrees; 4 rise of the head end for that turn and 5 the length it is
    /// for, mm; codes of 6 the verdict, 7 what stands behind it (0 when plain), 8 the kind of
    /// advice, 9 the largest contribution. The first two places `i` are the checks as parked, the
    /// next two the same in the vehicle.
    pub fn number(&self, i: usize, what: u8) -> f32 {
        let number = self.outcome(i).and_then(|o| match what {
            0 => o.measured.map(|m| m.value_deg),
            1 => o.measured.map(|m| m.u_deg),
            2 => o.margin_deg,
            3 => o.advice.turn_deg,
            4 => o.advice.rise_mm,
            5 => o.advice.over_mm,
            6 => Some(f32::from(o.verdict as u8)),
            7 => Some(o.why.map_or(0.0, |w| f32::from(w as u8 + 1))),
            8 => Some(f32::from(o.advice.kind as u8)),
            9 => Some(f32::from(o.budget.dominant() as u8)),
            _ => None,
        });
        number.unwrap_or(f32::NAN)
    }

    /// The report of the last tick's reading; an error names the reason why there is none.
    pub fn capture(&self) -> Result<JsValue, JsError> {
        to_js(&self.0.capture().map_err(no_reading)?)
    }
}

impl Live {
    fn reading(&self) -> Option<&Reading> {
        self.0.reading().ok()
    }

    /// Check `i` as parked; from [`IN_VEHICLE`] on, in the vehicle.
    fn outcome(&self, i: usize) -> Option<&Outcome> {
        let reading = self.reading()?;
        match i.checked_sub(IN_VEHICLE) {
            None => reading.outcomes.get(i),
            Some(i) => Some(&reading.in_vehicle.as_ref()?.as_ref().ok()?.get(i)?.outcome),
        }
    }
}
