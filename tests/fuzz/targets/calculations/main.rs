//! Every public calculation of core with any numbers: no panic anywhere, and within their domain
//! what their documentation promises. One file a group; a new one is a line in `GROUPS`.
#![no_main]

mod angles;
mod budgets;
mod calibration;
mod checks;
mod decisions;
mod findings;
mod fused;
mod intake;
mod plan;
mod rest;
mod reversal;
mod rounded;
mod shared;
mod vectors;
mod vehicle;
mod window;

use arbitrary::{Result, Unstructured};
use libfuzzer_sys::fuzz_target;

const GROUPS: [fn(&mut Unstructured<'_>) -> Result<()>; 16] = [
    vectors::call,
    angles::call,
    intake::call,
    window::call,
    rounded::call,
    fused::call,
    budgets::call,
    decisions::call,
    checks::call,
    rest::call,
    reversal::call,
    calibration::call,
    findings::call,
    shared::call,
    vehicle::call,
    plan::call,
];

fuzz_target!(|data: &[u8]| {
    let u = &mut Unstructured::new(data);
    // Bytes that end too early end the run.
    let _ = u.choose(&GROUPS).copied().and_then(|group| group(u));
});
