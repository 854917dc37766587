//! Presses, short and long, of either button and of both, with contacts that bounce.

use plumbmark_gauge::buttons::{Buttons, Press};

/// Presses told while the contacts say so, 10 ms each.
fn told(contacts: impl IntoIterator<Item = [bool; 2]>) -> Vec<Press> {
    let mut buttons = Buttons::default();
    let free = std::iter::repeat_n([false; 2], 20);
    let looks = contacts.into_iter().chain(free);
    looks.filter_map(|pressed| buttons.look(pressed)).collect()
}

fn held(pressed: [bool; 2], looks: usize) -> Vec<[bool; 2]> {
    vec![pressed; looks]
}

const A: [bool; 2] = [true, false];
const B: [bool; 2] = [false, true];
const BOTH: [bool; 2] = [true; 2];

#[test]
fn short_and_long_presses() {
    for (pressed, short, long) in [
        (A, Press::A, Press::LongA),
        (B, Press::B, Press::LongB),
        (BOTH, Press::Both, Press::LongBoth),
    ] {
        assert_eq!(told(held(pressed, 20)), [short]);
        assert_eq!(told(held(pressed, 78)), [short]);
        // Told once, while it is still held, and not again when it ends.
        assert_eq!(told(held(pressed, 90)), [long]);
        assert_eq!(told(held(pressed, 2_000)), [long]);
    }
}

#[test]
fn a_contact_that_touches_for_less_than_30_ms_is_no_press() {
    assert_eq!(told(held(A, 2)), []);
    let bounces = [A, [false; 2], A, A, [false; 2], B, [false; 2], B];
    assert_eq!(told(bounces), []);
}

#[test]
fn bounces_at_both_ends_are_one_press() {
    let ends = [A, [false; 2], A, [false; 2]];
    let press = ends.into_iter().chain(held(A, 20)).chain(ends);
    assert_eq!(told(press), [Press::A]);
}

#[test]
fn both_need_not_be_pressed_at_once() {
    let press = [held(A, 10), held(BOTH, 10), held(B, 10)].concat();
    assert_eq!(told(press), [Press::Both]);
}

#[test]
fn one_press_follows_another() {
    let press = [held(A, 10), held([false; 2], 10), held(B, 10)].concat();
    assert_eq!(told(press), [Press::A, Press::B]);
}
