//! The gauge runs on a stack of its own, painted before it starts. It holds all of the gauge: what
//! the firmware's `main` has there too, and nothing of the script or of the sensor's model.
//! Whatever the gauge asks of its board is worked out on the script's stack, so that what is found
//! overwritten is the gauge's alone. A gauge that is left in the middle of something is a gauge
//! without power.

use crate::count::Counter;
use core::arch::global_asm;
use core::cell::{Cell, UnsafeCell};

/// Bytes of the gauge's stack: more than it may use, so that too much is measured and no crash.
pub const BYTES: usize = 7168;
const WORDS: usize = BYTES / 4;
/// What no gauge writes by chance.
const PAINT: u32 = 0x5aa5_c33c;
/// Words that a switch leaves on the stack: what a call must keep, and where to go on.
const KEPT: usize = if cfg!(target_abi = "eabihf") { 25 } else { 9 };

/// Why the script runs again.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Left {
    /// The gauge waits for its next tick.
    Tick,
    /// The program that ran in the gauge's place is done.
    Done,
    /// Power is gone.
    NoPower,
    /// The gauge hangs: the watchdog will start it anew.
    Watchdog,
    /// The gauge panicked, and its handler will start it anew.
    Panic,
}

#[derive(Clone, Copy)]
enum Asked {
    Work(*mut (dyn FnMut() + 'static)),
    Left(Left),
}

#[repr(C, align(8))]
struct Area(UnsafeCell<[u32; WORDS]>);

// SAFETY: one core, no interrupts; script and gauge run in turn.
unsafe impl Sync for Area {}

struct Switch {
    gauge: Cell<*mut u32>,
    script: Cell<*mut u32>,
    asked: Cell<Asked>,
    gauge_runs: Cell<bool>,
}

// SAFETY: as above.
unsafe impl Sync for Switch {}

static AREA: Area = Area(UnsafeCell::new([PAINT; WORDS]));
static SWITCH: Switch = Switch {
    gauge: Cell::new(core::ptr::null_mut()),
    script: Cell::new(core::ptr::null_mut()),
    asked: Cell::new(Asked::Left(Left::Done)),
    gauge_runs: Cell::new(false),
};

// Keeps what a call must keep on the stack in use, and goes on with the other one.
#[cfg(target_abi = "eabihf")]
global_asm!(
    ".section .text.switch_stack",
    ".thumb_func",
    ".global switch_stack",
    "switch_stack:",
    "push {{r4-r11, lr}}",
    "vpush {{d8-d15}}",
    "str sp, [r0]",
    "mov sp, r1",
    "vpop {{d8-d15}}",
    "pop {{r4-r11, pc}}",
);
#[cfg(not(target_abi = "eabihf"))]
global_asm!(
    ".section .text.switch_stack",
    ".syntax unified",
    ".thumb_func",
    ".global switch_stack",
    "switch_stack:",
    "push {{r4-r7, lr}}",
    "mov r4, r8",
    "mov r5, r9",
    "mov r6, r10",
    "mov r7, r11",
    "push {{r4-r7}}",
    "mov r2, sp",
    "str r2, [r0]",
    "mov sp, r1",
    "pop {{r4-r7}}",
    "mov r8, r4",
    "mov r9, r5",
    "mov r10, r6",
    "mov r11, r7",
    "pop {{r4-r7, pc}}",
);

unsafe extern "C" {
    fn switch_stack(from: *mut *mut u32, to: *mut u32);
}

/// Paints the stack and makes it one on which `program` begins.
pub fn prepare(program: extern "C" fn() -> !) {
    let area = AREA.0.get().cast::<u32>();
    // SAFETY: the gauge does not run, and what it left there is forgotten.
    unsafe {
        for at in 0..WORDS {
            area.add(at).write(PAINT);
        }
        let top = area.add(WORDS - KEPT);
        top.add(KEPT - 1).write(program as usize as u32);
        SWITCH.gauge.set(top);
    }
}

/// Lets the gauge go on until it waits or is lost; does meanwhile what it asks its board for.
pub fn resume() -> Left {
    loop {
        SWITCH.gauge_runs.set(true);
        Counter::begin();
        // SAFETY: the gauge's stack was prepared, or left by a switch.
        unsafe { switch_stack(SWITCH.script.as_ptr(), SWITCH.gauge.get()) };
        Counter::end();
        SWITCH.gauge_runs.set(false);
        assert!(!is_full(), "the gauge's stack is too small");
        match SWITCH.asked.get() {
            // SAFETY: the gauge waits, and with it the closure that it lent.
            Asked::Work(work) => unsafe { (*work)() },
            Asked::Left(left) => return left,
        }
    }
}

fn ask(asked: Asked) {
    SWITCH.asked.set(asked);
    // SAFETY: the script waits in `resume`.
    unsafe { switch_stack(SWITCH.gauge.as_ptr(), SWITCH.script.get()) };
}

/// The gauge's side: has `work` done on the script's stack.
pub fn beside(work: &mut dyn FnMut()) {
    let work: *mut (dyn FnMut() + '_) = work;
    // SAFETY: only the lifetime is left out; the script has done with it when this returns.
    ask(Asked::Work(unsafe {
        core::mem::transmute::<*mut (dyn FnMut() + '_), *mut (dyn FnMut() + 'static)>(work)
    }));
}

/// The gauge's side: waits.
pub fn wait() {
    ask(Asked::Left(Left::Tick));
}

/// The gauge's side: is lost.
pub fn lost(why: Left) -> ! {
    loop {
        ask(Asked::Left(why));
    }
}

/// Whether the gauge runs, and not the script.
pub fn gauge_runs() -> bool {
    SWITCH.gauge_runs.get()
}

/// Whether the last of the gauge's stack was written.
fn is_full() -> bool {
    // SAFETY: within the area; the gauge does not run.
    unsafe { AREA.0.get().cast::<u32>().read_volatile() != PAINT }
}

/// Bytes of the gauge's stack that were written since it was prepared.
pub fn deepest() -> usize {
    let area = AREA.0.get().cast::<u32>();
    // SAFETY: within the area; the gauge does not run.
    let painted = (0..WORDS).take_while(|at| unsafe { area.add(*at).read_volatile() } == PAINT);
    BYTES - 4 * painted.count()
}
