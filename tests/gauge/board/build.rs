//! Puts the memory map of QEMU's board where the linker finds it.

use std::{env, fs, path::PathBuf};

fn main() {
    let out = PathBuf::from(env::var_os("OUT_DIR").expect("set by cargo"));
    let target = env::var("TARGET").expect("set by cargo");
    let core = target.split('-').next().unwrap_or_default();
    let map = format!("{core}.x");
    fs::copy(&map, out.join("memory.x")).expect("there is a memory map for this core");
    println!("cargo:rustc-link-search={}", out.display());
    println!("cargo:rustc-link-arg-bins=-Tlink.x");
    println!("cargo:rerun-if-changed={map}");
}
