#!/bin/sh
# Fuzzes core: sh tests/fuzz/run.sh [runs a target]. Bounded by runs and not by time, from one seed,
# at fixed addresses where the system lets it: on a fresh clone every run is the same. A corpus that
# has grown here is used and kept.
set -eu
runs=${1:-10000}
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/web/setup.sh"
. "$root/tests/nightly.sh"
need_nightly
command -v c++ >/dev/null || { may_install && apt_install g++; } ||
  stop "a C++ compiler is missing. Install g++, then run this again."
need_cargo_tool cargo-fuzz cargo-fuzz 0.13.2
PATH="$tools/cargo/bin:$PATH"
CARGO_TARGET_DIR=${CARGO_TARGET_DIR:-"$root/target"}
export CARGO_TARGET_DIR
cd "$root/tests/fuzz"
log=$(mktemp)
trap 'rm -f "$log"' EXIT

cargo +nightly fuzz build --fuzz-dir . >"$log" 2>&1 || { cat "$log"; stop "the fuzz targets do not build."; }
fixed=$(setarch -R echo setarch -R 2>/dev/null) || fixed=
# Entropic scheduling depends on time. Long inputs from the start: a reading takes many events.
how="-seed=1 -runs=$runs -max_len=2000 -len_control=0 -entropic=0"
failed=0
for target in $(cargo +nightly fuzz list --fuzz-dir .); do
  # shellcheck disable=SC2086 # both are words
  if $fixed cargo +nightly fuzz run --fuzz-dir . "$target" -- $how >"$log" 2>&1; then
    say "ok    $target: $(sed -n 's/^#\([0-9]*\)\tDONE *cov: \([0-9]*\) .*/\1 runs, \2 edges covered/p' "$log")"
  else
    failed=$((failed + 1))
    say "FAIL  $target"
    grep -A 2 'panicked at' "$log" || :
    grep -vE '^#[0-9]+	(NEW|REDUCE|pulse|RELOAD)|Uses: [0-9]+$' "$log" | tail -n 60
  fi
done
[ "$failed" = 0 ]
