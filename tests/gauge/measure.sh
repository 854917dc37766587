#!/bin/sh
# The gauge's image for its real board, measured: flash, RAM, and every place that can panic.
# `sh tests/gauge/measure.sh`; fails where the image is larger than it may be, or where core can
# panic. The stack is the deepest chain of calls in the machine code, so nothing has to run.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/web/setup.sh"
. "$root/tests/panics.sh"
target=thumbv7em-none-eabihf
targets=$target
flash_most=32768
ram_most=4096

need_rust
need_objdump
CARGO_TARGET_DIR=${CARGO_TARGET_DIR:-"$root/target"}
export CARGO_TARGET_DIR
image="$CARGO_TARGET_DIR/$target/release/plumbmark-gauge"
cd "$root/core/gauge"
build() { cargo build --quiet --locked --release --target "$target" --features microbit-v2; }
# Bytes of the sections that a pattern names.
bytes() { "${objdump%objdump}size" -A "$image" | awk -v of="^\\\\.($1)$" '$1 ~ of { s += $2 } END { print s + 0 }'; }
# As it is flashed, but for line tables, which no board sees: names and places need them.
CARGO_PROFILE_RELEASE_DEBUG=line-tables-only build || stop "the firmware could not be built."

flash=$(bytes 'vector_table|text|rodata|data')
static=$(bytes 'data|bss|uninit')
"$objdump" -d -C --no-show-raw-insn "$image" |
  python3 "$root/tests/gauge/deepest.py" "$image" '__cortex_m_rt_main' >"$CARGO_TARGET_DIR/gauge-stack" ||
  stop "the stack could not be followed: $(cat "$CARGO_TARGET_DIR/gauge-stack")"
stack=$(head -n 1 "$CARGO_TARGET_DIR/gauge-stack")
say "Flash: $flash of $flash_most bytes"
say "RAM: $((static + stack)) of $ram_most bytes: $static static, $stack of stack at most, through"
tail -n +2 "$CARGO_TARGET_DIR/gauge-stack" | cut -c1-100

say "Places that can panic, each of which starts the gauge anew and has it say so (fault 9):"
places=$(panics_in "$image")
say "${places:-none}"
if printf '%s' "$places" | grep -q "$root/core/src/"; then
  stop "core can panic."
fi
[ "$flash" -le "$flash_most" ] && [ $((static + stack)) -le "$ram_most" ]
