#!/bin/sh
# What is shipped with the oldest Rust that Cargo.toml names, and which stands nowhere else.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/web/setup.sh"
targets=
need_rust
cd "$root"
oldest=$wanted # as need_rust read it

if ! cargo "+$oldest" --version >/dev/null 2>&1; then
  command -v rustup >/dev/null && rustup toolchain install "$oldest" --profile minimal >/dev/null 2>&1 || {
    say "note: Rust $oldest is not here and can't be fetched; not tried: rustup toolchain install $oldest"
    exit 0
  }
fi
cargo "+$oldest" check --quiet --locked -p plumbmark -p plumbmark-wasm --all-targets --all-features
say "builds with $(rustc "+$oldest" --version)"
