//! Writes the limits that the gauge is built with, and puts the board's memory map where the
//! linker finds it. `PLUMBMARK_LIMITS` names a limit file that the page exported.

use plumbmark::limits::{Limit, LimitSet};
use serde_json::Value;
use std::{env, fs, path::PathBuf, process::exit};

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
    let file = serde_json::from_str(&text).unwrap_or_else(|error| refuse(&error));
    let set: LimitSet =
        serde_json::from_value(angles_only(file)).unwrap_or_else(|error| refuse(&error));
    if let Err(error) = set.validate() {
        refuse(&error);
    }
    set
}

/// What a gauge can use of the page's file: version 2 has limits of the tape-measure half beside
/// the angles, and words on them, which the page has judged and core's own form does not know.
fn angles_only(mut file: Value) -> Value {
    if file["version"] != 2 {
        return file;
    }
    file["version"] = 1.into();
    if let Some(all) = file.as_object_mut() {
        all.remove("bounds");
    }
    let lines = file["lines"].as_array_mut().into_iter().flatten();
    for line in lines.filter_map(Value::as_object_mut) {
        line.remove("vehicles");
        line.remove("reason");
    }
    file
}

/// Two tables in Rust, for `src/limits.rs`.
fn written(set: &LimitSet) -> String {
    let entered = set.lines.iter().map(|line| {
        let Limit {
            check,
            at_limit_allowed,
            basis,
            ..
        } = line;
        format!(
            "Entered {{ check: Check::{check:?}, low_deg: {}, high_deg: {}, at_limit_allowed: {at_limit_allowed}, \
             allowance_deg: {}, basis: Basis::{basis:?} }},\n",
            bits(line.low_deg),
            bits(line.high_deg),
            bits(line.allowance_deg)
        )
    });
    let surfaces = set.surfaces.iter().map(|terms| {
        let (hold, align) = (terms.hold_deg.to_bits(), terms.align_deg.to_bits());
        let deg = format!("(f32::from_bits({hold}), f32::from_bits({align}))");
        format!("(Surface::{:?}, {deg}),\n", terms.surface)
    });
    format!(
        "static ENTERED: [Entered; {}] = [\n{}];\nstatic SURFACES_DEG: [(Surface, (f32, f32)); {}] = [\n{}];\n",
        set.lines.len(),
        entered.collect::<String>(),
        set.surfaces.len(),
        surfaces.collect::<String>()
    )
}

/// A number as its bits, so that none is lost in decimals.
fn bits(number: Option<f32>) -> String {
    number.map_or("None".into(), |n| {
        format!("Some(f32::from_bits({}))", n.to_bits())
    })
}
