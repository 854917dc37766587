#!/bin/sh
# The gauge without hardware: its parts and its bus on the host, then scenarios on QEMU's Cortex-M0
# and Cortex-M4, where its real driver meets a model of the sensor. Last lines: what it costs there.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/web/setup.sh"
targets="thumbv6m-none-eabi thumbv7em-none-eabihf"
# Static RAM and stack, bytes.
ram_most=4096
# Instructions on a Cortex-M0, one sample's share of a second of 60: see tests/cost/run.sh.
budget=4800

need_rust
command -v qemu-system-arm >/dev/null || { may_install && apt_install qemu-system-arm; } ||
  stop "QEMU is missing. Install qemu-system-arm, then run this again."
CARGO_TARGET_DIR=${CARGO_TARGET_DIR:-"$root/target"}
export CARGO_TARGET_DIR
out=$(mktemp)
trap 'rm -f "$out"' EXIT
cd "$root/tests/gauge"
figure() { awk -F '\t' -v name="$1" '$1 == name { print $2 }' "$out"; }

# Plays all scenarios on a board of QEMU's.
play() { # target machine
  PLUMBMARK_LIMITS="$root/tests/gauge/limits.json" \
    cargo build --quiet --locked --release -p gauge-board --target "$1" || stop "the image for $1 could not be built."
  timeout 600 qemu-system-arm -M "$2" -icount shift=0 -nographic \
    -semihosting-config enable=on,target=native \
    -kernel "$CARGO_TARGET_DIR/$1/release/gauge-board" </dev/null >"$out" && failed=0 || failed=1
  say "On $1 ($2):"
  cat "$out"
  say "test result: $([ "$failed" = 0 ] && echo ok || echo FAILED). $(grep -c '^ok' "$out") passed; $failed failed"
  [ "$failed" = 0 ] || stop "a scenario failed."
  [ "$(figure 'stack bytes')" -le "$ram_most" ] || stop "the stack is too deep."
}

cargo test --locked
play thumbv7em-none-eabihf mps2-an386
play thumbv6m-none-eabi microbit
spent=$(figure share)
say "Budget: $spent of $budget instructions a sample, one capture in 60 samples"
[ "$spent" -le "$budget" ]
