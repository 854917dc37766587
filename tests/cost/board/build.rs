//! Puts the board's memory map where the linker finds it.

use std::{env, fs, path::PathBuf};

fn main() {
    let out = PathBuf::from(env::var_os("OUT_DIR").expect("set by cargo"));
    fs::copy("memory.x", out.join("memory.x")).expect("memory.x can be copied");
    println!("cargo:rustc-link-search={}", out.display());
    println!("cargo:rustc-link-arg-bins=-Tlink.x");
    println!("cargo:rerun-if-changed=memory.x");
}
