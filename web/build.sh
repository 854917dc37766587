#!/bin/sh
# Leaves the page in web/dist/, for any static host with https; and as one file, plumbmark.html, for none.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/web/setup.sh"
say "Building the page: Rust target, npm's wasm-opt, wasm-bindgen and wasm-pack are set up if missing (bare machine: up to 30 minutes; else under 1)."
setup_build
# What an earlier build left would be packed too.
rm -rf "$root/web/pkg"
# The tape-measure half and the reader of a gauge's lines are modules of their own, loaded when they
# are first wanted.
for half in phone sheets gauge; do
  wasm-pack --log-level warn build "$root/wasm" --target web --release --out-dir "$root/web/pkg" \
    --out-name "plumbmark_$half" --mode no-install --no-pack -- --no-default-features --features "$half" ||
    stop "wasm-pack could not build wasm/; its message stands above."
done
# The core's lists by name: not in the .wasm, and yet the core's own.
for lists in catalogue.js sheets.js schema.json; do
  cargo run --quiet --locked --manifest-path "$root/Cargo.toml" -p plumbmark-wasm --example "${lists%.*}" \
    >"$root/web/pkg/$lists" || stop "the core's lists could not be written; cargo's message stands above."
done
node "$root/web/pack.mjs"
say "  by $(rustc --version), $(wasm-bindgen --version), $(wasm-opt --version), Node $(node --version)"
