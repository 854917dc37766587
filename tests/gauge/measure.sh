#!/bin/sh
# The gauge's image for its real board, measured: flash, RAM, and every place that can panic:
# `sh tests/gauge/measure.sh`. Fails where it takes more than it may, or where core can panic. The
# stack is the deepest chain of calls in the machine code (deepest.py): nothing has to run for it.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/web/setup.sh"
. "$root/tests/panics.sh"
ram_most=4096

need_rust
need_objdump
CARGO_TARGET_DIR=${CARGO_TARGET_DIR:-"$root/core/gauge/target"}
# Names and places need line tables, which no board sees.
CARGO_PROFILE_RELEASE_DEBUG=line-tables-only
export CARGO_TARGET_DIR CARGO_PROFILE_RELEASE_DEBUG
sh "$root/core/gauge/build.sh"

image="$CARGO_TARGET_DIR/thumbv7em-none-eabihf/release/plumbmark-gauge"
static=$("${objdump%objdump}size" -A "$image" | awk '$1 ~ /^\.(data|bss|uninit)$/ { s += $2 } END { print s + 0 }')
chain=$("$objdump" -d -C --no-show-raw-insn "$image" |
  python3 "$root/tests/gauge/deepest.py" "$image" __cortex_m_rt_main "$root/tests/gauge/calls.txt") ||
  stop "the stack could not be followed."
stack=$(printf '%s\n' "$chain" | head -n 1)
say "RAM: $((static + stack)) of $ram_most bytes: $static static, $stack of stack at most, through"
printf '%s\n' "$chain" | tail -n +2 | sed 's/::h[0-9a-f]*$//'

places=$(panics_in "$image")
say "Places that can panic; each starts the gauge anew, and it says so (fault 9):"
say "${places:-none}" | sed "s|$root/||g; s|/[^ 	]*/registry/src/[^/]*/||g"
case $places in
  *"$root/core/src/"*) stop "core can panic." ;;
esac
[ $((static + stack)) -le "$ram_most" ]
