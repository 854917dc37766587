# shellcheck shell=sh
# Nightly Rust with Miri and its own source, for fuzzing and Miri. Sourced after web/setup.sh.

need_nightly() {
  targets=
  need_rust
  cargo +nightly miri --version >/dev/null 2>&1 &&
    [ -d "$(rustc +nightly --print sysroot)/lib/rustlib/src/rust/library" ] && return
  how="rustup toolchain install nightly --profile minimal -c rust-src -c miri"
  command -v rustup >/dev/null || stop "nightly Rust is missing. Install rustup (rustup.rs), then: $how"
  say "Installing nightly Rust with Miri (1 to 3 minutes)"
  $how >/dev/null || stop "rustup could not fetch nightly Rust. Once the network is there: $how"
}
