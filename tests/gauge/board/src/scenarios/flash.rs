//! The calibration in flash: power goes after any byte, and bits flip.

use super::ready;
use crate::fake::Pages;
use crate::flash::Flash;
use crate::motions::Motion;
use crate::rig::{A, SHORT_MS, comes, lay, power_on, press, restart, run, up};
use crate::stack::{Left, lost, prepare, resume};
use crate::world::world;
use plumbmark::calibration::Calibration;
use plumbmark_gauge::kept::{BYTES, Found, load, save};

/// Bytes of power that erasing and writing take.
const ALL: usize = 2 * BYTES;

/// A calibration of its own for each number.
fn calibration(number: f32) -> Calibration {
    Calibration {
        zero: [0.01 * number, -0.01, 0.02],
        u_zero: [0.002; 3],
        scale: [1.0, 1.01, 0.99],
        u_scale: [0.001; 3],
        for_orientation: false,
    }
}

/// What runs in the gauge's place: the third calibration is kept, and its power may go.
extern "C" fn keeps() -> ! {
    save(&mut Pages, calibration(3.0));
    lost(Left::Done)
}

/// Flash with so many calibrations kept before.
fn with(before: u8) -> Flash {
    let mut flash = Flash::ERASED;
    for number in 1..=before {
        let kept = save(&mut flash, calibration(f32::from(number)));
        assert_eq!(kept.map(|kept| kept.number), Some(number.into()));
    }
    flash
}

/// Power goes after so many bytes; what is found when it is back.
fn torn(before: u8, bytes: usize) -> Found {
    world(|world| {
        world.flash = with(before);
        world.flash.power_for = Some(bytes);
    });
    prepare(keeps);
    let left = resume();
    assert_eq!(
        left,
        if bytes < ALL {
            Left::NoPower
        } else {
            Left::Done
        }
    );
    world(|world| {
        world.flash.is_off = false;
        world.flash.power_for = None;
        load(&mut world.flash)
    })
}

/// After any byte of erasing and writing the last good calibration is there, or the new one whole.
pub fn torn_anywhere() {
    for before in [1, 2] {
        for bytes in 0..=ALL {
            let Found::Good(kept) = torn(before, bytes) else {
                panic!("cut after {bytes} bytes nothing is found");
            };
            let new = (before as u16 + 1, calibration(3.0));
            let old = (before.into(), calibration(before.into()));
            let found = (kept.number, kept.calibration);
            assert!(
                found == old || (bytes >= ALL && found == new),
                "cut after {bytes} bytes: {kept:?}"
            );
        }
    }
}

/// Without an earlier one there is nothing, or what is there is known to be damaged.
pub fn torn_first() {
    for bytes in 0..ALL {
        let found = torn(0, bytes);
        assert!(
            !matches!(found, Found::Good(_)),
            "cut after {bytes} bytes: {found:?}"
        );
    }
    assert!(matches!(torn(0, ALL), Found::Good(_)));
}

/// A gauge whose only calibration was torn says so until it has been seen, then works as its data
/// sheet says.
pub fn damaged() {
    torn(0, BYTES + 20);
    lay(up(0.0, 0.0));
    power_on();
    comes(Motion::Fault(8), 100);
    run(3_000);
    press(A, SHORT_MS);
    comes(Motion::Ready(None), 2_500);
}

/// A gauge with a torn second calibration goes on with the first one, and keeps the next one.
pub fn goes_on() {
    for bytes in [0, 1, BYTES - 1, BYTES, BYTES + 1, ALL - 1, ALL] {
        torn(1, bytes);
        ready(up(0.0, 0.0));
        comes(Motion::Ready(None), 500);
        let next = world(|world| save(&mut world.flash, calibration(4.0)));
        assert!(next.is_some_and(|kept| kept.number >= 2));
        let found = world(|world| load(&mut world.flash));
        assert_eq!(Some(found), next.map(Found::Good));
    }
}

/// A panic of the flash's own driver starts the gauge anew like any other; the calibration from
/// before is there.
pub fn panicking() {
    lay(up(0.0, 0.0));
    torn(1, 0);
    world(|world| world.panics = true);
    prepare(keeps);
    assert_eq!(resume(), Left::Panic);
    restart();
    comes(Motion::Fault(9), 100);
    let found = world(|world| load(&mut world.flash));
    assert!(
        matches!(found, Found::Good(kept) if kept.number == 1),
        "{found:?}"
    );
}

/// Any bit that flips makes a record damaged; the other slot stands in.
pub fn flipped() {
    for at in 0..BYTES {
        for bit in 0..8 {
            let mut flash = with(2);
            flash.pages[slot_of(&flash, 2)][at] ^= 1 << bit;
            let Found::Good(kept) = load(&mut flash) else {
                panic!("byte {at}, bit {bit}: the older one is lost");
            };
            assert_eq!(kept.number, 1, "byte {at}, bit {bit}");
        }
    }
}

fn slot_of(flash: &Flash, number: u8) -> usize {
    let alone = |slot: usize| {
        let mut flash = flash.clone();
        flash.pages[1 - slot] = [0xff; BYTES];
        load(&mut flash)
    };
    let is = |found: &Found| matches!(found, Found::Good(kept) if kept.number == u16::from(number));
    usize::from(is(&alone(1)))
}
