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
    base: &[f64],
    found: &mut dyn FnMut(usize, usize, f64),
) {
    let mut moved = [f64::NAN; MOST_IN];
    let mut up = [f64::NAN; MOST_OUT];
    let mut down = [f64::NAN; MOST_OUT];
    for (to, from) in moved.iter_mut().zip(x) {
        *to = *from;
    }
    for (input, &u) in u.iter().enumerate().filter(|(_, u)| **u > 0.0) {
        let mut at = |by: f64, to: &mut [f64; MOST_OUT]| {
            if let (Some(to), Some(from)) = (moved.get_mut(input), x.get(input)) {
                *to = from + by;
            }
            let taken = moved.get(..x.len()).unwrap_or_default();
            if let Some(again) = again {
                for (to, base) in to.iter_mut().zip(base) {
                    *to = *base;
                }
                return again(taken, input, to).is_ok();
            }
            to.fill(f64::NAN);
            function(taken, to).is_ok()
        };
        let (fine_up, fine_down) = (at(u, &mut up), at(-u, &mut down));
        if let (Some(to), Some(from)) = (moved.get_mut(input), x.get(input)) {
            *to = *from;
        }
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
    }
}
