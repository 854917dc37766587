//! Uncertainty of what a function gives, from that of what it is given: each input is moved by its
//! standard uncertainty, both ways, and the larger change counts (JCGM 100:2008 §5.1.3 note 2, the
//! numerical form). Inputs are taken as independent.

use super::kind::Refusal;

/// Most numbers that a sheet takes, rows included.
pub const MOST_IN: usize = 288;
/// Most numbers that a sheet gives, rows included.
pub const MOST_OUT: usize = 120;

/// A function of numbers in order; it gives numbers in order. Not a number stands for "none".
pub type Function = fn(&[f64], &mut [f64]) -> Result<(), Refusal>;

/// The same, where only the number at a place differs from those that gave what is now in the
/// results: a sheet of many rows need not do all of them again.
pub type Moved = fn(&[f64], usize, &mut [f64]) -> Result<(), Refusal>;

/// Moves the inputs `x` one after the other by their standard uncertainties `u` and tells `found`
/// the place of the input, the place of the result and how much that result changed. `base` is
/// what the function gives of `x`. An input that moves out of what the function takes counts by
/// its other side; where both sides are refused, infinitely.
pub fn propagate(
    function: Function,
    again: Option<Moved>,
    x: &[f64],
    u: &[f64],
    base: &[f64; MOST_OUT],
    found: &mut dyn FnMut(usize, usize, f64),
) {
    let mut moved = [f64::NAN; MOST_IN];
    for (to, from) in moved.iter_mut().zip(x) {
        *to = *from;
    }
    let (mut up, mut down) = (*base, *base);
    for (input, (&u, &middle)) in u.iter().zip(x).enumerate() {
        if u <= 0.0 {
            continue;
        }
        let mut at = |by: f64, to: &mut [f64; MOST_OUT]| {
            if let Some(place) = moved.get_mut(input) {
                *place = middle + by;
            }
            *to = *base;
            let taken = moved.get(..x.len()).unwrap_or_default();
            let done = match again {
                Some(again) => again(taken, input, to),
                None => function(taken, to),
            };
            done.is_ok()
        };
        let (fine_up, fine_down) = (at(u, &mut up), at(-u, &mut down));
        for (output, ((base, up), down)) in base.iter().zip(&up).zip(&down).enumerate() {
            if base.is_nan() {
                continue;
            }
            let one = |fine: bool, value: f64| if fine { (value - base).abs() } else { f64::NAN };
            // `max` passes over what is not a number: a side that was refused.
            let larger = one(fine_up, *up).max(one(fine_down, *down));
            found(
                input,
                output,
                if larger.is_nan() {
                    f64::INFINITY
                } else {
                    larger
                },
            );
        }
        if let Some(place) = moved.get_mut(input) {
            *place = middle;
        }
    }
}
