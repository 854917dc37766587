#!/bin/sh
# Builds the gauge for its board and says what it takes: `sh core/gauge/build.sh`. Leaves
# plumbmark-gauge.hex, to be copied to the board's drive. PLUMBMARK_LIMITS=FILE builds a limit file
# in that the page exported. The linker refuses an image of more than 32 kB (memory.x).
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/web/setup.sh"
targets=thumbv7em-none-eabihf
need_rust
if [ -n "${PLUMBMARK_LIMITS:-}" ]; then
  PLUMBMARK_LIMITS=$(realpath "$PLUMBMARK_LIMITS") || stop "there is no such limit file."
  export PLUMBMARK_LIMITS
fi
cd "$root/core/gauge"
CARGO_TARGET_DIR=${CARGO_TARGET_DIR:-"$PWD/target"}
export CARGO_TARGET_DIR

say "Building the gauge (1 to 3 minutes the first time)"
cargo build --quiet --locked --release --target "$targets" --features microbit-v2 ||
  stop "the gauge could not be built."
built="$CARGO_TARGET_DIR/$targets/release"
# Comes with Rust; its own name for it differs by version.
objcopy=$(ls "$sysroot"/lib/rustlib/*/bin/rust-objcopy "$sysroot"/lib/rustlib/*/bin/llvm-objcopy 2>/dev/null | head -n 1)
[ -n "$objcopy" ] || stop "this Rust brings no objcopy: rustup component add llvm-tools, then run this again."
"$objcopy" -O ihex "$built/plumbmark-gauge" "$built/plumbmark-gauge.hex"
"$objcopy" -O binary "$built/plumbmark-gauge" "$built/plumbmark-gauge.bin"

flash=$(wc -c <"$built/plumbmark-gauge.bin" | tr -d ' ')
say "Flash: $flash of 32768 bytes. Limits: ${PLUMBMARK_LIMITS:-examples of trade usage}."
say "$built/plumbmark-gauge.hex"
[ "$flash" -le 32768 ]
