//! Writes the limits that the gauge is built with, and puts the board's memory map where the
//! linker finds it. `PLUMBMARK_LIMITS` names a limit file that the page exported.

use plumbmark::limits::{Limit, LimitSet};
use std::{env, fmt::Write, fs, path::PathBuf, process::exit};

fn main() {
    let out = PathBuf::from(env::var_os("OUT_DIR").expect("set by cargo"));
    fs::write(out.join("limits.rs"), written(&limits())).expect("OUT_DIR can be written");
    fs::copy("memory.x", out.join("memory.x")).expect("memory.x can be copied");
    println!("cargo:rustc-link-search={}", out.display());
    println!("cargo:rustc-link-arg-bins=-Tlink.x");
    println!("cargo:rerun-if-changed=memory.x");
    println!("cargo:rerun-if-env-changed=PLUMBMARK_LIMITS");
}

fn limits() -> LimitSet {
    let Some(path) = env::var_os("PLUMBMARK_LIMITS") else {
        return LimitSet::trade_usage();
    };
    let path = PathBuf::from(path);
    println!("cargo:rerun-if-changed={}", path.display());
    let refuse = |why: &dyn std::fmt::Display| -> ! {
        eprintln!("The limit file {} cannot be used: {why}.", path.display());
        exit(1)
    };
    let text = fs::read_to_string(&path).unwrap_or_else(|error| refuse(&error));
    let set: LimitSet = serde_json::from_str(&text).unwrap_or_else(|error| refuse(&error));
    if let Err(error) = set.validate() {
        refuse(&error);
    }
    set
}

fn written(set: &LimitSet) -> String {
    let mut text = String::new();
    let count = set.lines.len();
    writeln!(
        text,
        "/// The limits entered.\npub static LIMITS: [Limit; {count}] = ["
    )
    .unwrap();
    for Limit {
        check,
        low_deg,
        high_deg,
        at_limit_allowed,
        allowance_deg,
        basis,
        ..
    } in &set.lines
    {
        writeln!(
            text,
            "limit(Check::{check:?}, ({}, {}), ({at_limit_allowed}, {}), plumbmark::limits::Basis::{basis:?}),",
            bits(*low_deg),
            bits(*high_deg),
            bits(*allowance_deg),
        )
        .unwrap();
    }
    let count = set.surfaces.len();
    writeln!(
        text,
        "];\nstatic SURFACES_DEG: [(Surface, (f32, f32)); {count}] = ["
    )
    .unwrap();
    for s in &set.surfaces {
        let (hold, align) = (s.hold_deg.to_bits(), s.align_deg.to_bits());
        writeln!(
            text,
            "(Surface::{:?}, (f32::from_bits({hold}), f32::from_bits({align}))),",
            s.surface
        )
        .unwrap();
    }
    text.push_str("];\n");
    text
}

/// A number as its bits, so that none is lost in decimals.
fn bits(number: Option<f32>) -> String {
    number.map_or("None".into(), |n| {
        format!("Some(f32::from_bits({}))", n.to_bits())
    })
}
