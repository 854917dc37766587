#!/bin/sh
# What core costs, and what else would: `sh tests/cost/run.sh` prints the table, with `board` only
# the instruction counts. Either fails while the budget is not met.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/web/setup.sh"
targets=thumbv6m-none-eabi
# Instructions on a Cortex-M0, one sample's share of a second: 60 samples into the sums, stillness
# judged at each of 5 batches, one live answer for two checks (value, U, verdict), one capture of
# three verdicts with everything that is kept.
budget=4800

out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
need_rust
command -v qemu-system-arm >/dev/null || { may_install && apt_install qemu-system-arm; } ||
  stop "QEMU is missing. Install qemu-system-arm, then run this again."
cd "$root/tests/cost"
built=$(cargo metadata --locked --format-version 1 --no-deps | sed 's/.*"target_directory":"\([^"]*\)".*/\1/')

say "Counting instructions in QEMU (under 1 minute after the first build)"
cargo build --quiet --locked --release -p cost-board --target "$targets" || stop "the board's program could not be built."
timeout 120 qemu-system-arm -M microbit -icount shift=0 -nographic \
  -semihosting-config enable=on,target=native \
  -kernel "$built/$targets/release/cost-board" </dev/null >"$out/board" || stop "the board's program failed: $(tail -n 3 "$out/board")"
figure() { awk -F '\t' -v name="$1" '$1 == name { printf "%.0f", $2 }' "$out/board"; }
[ "$(figure 'ruler 8 nop')" = 8 ] || stop "eight instructions were counted as $(figure 'ruler 8 nop')."

if [ "${1:-}" = board ]; then
  cat "$out/board"
else
  say "Timing the host, judging errors on the recording (2 minutes)"
  cargo bench --quiet --locked -p cost-host --bench cost -- --warm-up-time 1 --measurement-time 3 >"$out/bench" 2>&1 ||
    stop "the host's benchmarks failed: $(tail -n 3 "$out/bench")"
  cpu=$(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo 2>/dev/null | head -n 1)
  printf '\n%s, %s, %s cores, %s\n\n' "$(date +%F)" "${cpu:-$(uname -m)}" "$(getconf _NPROCESSORS_ONLN)" "$(rustc --version | cut -d' ' -f1,2)"
  cargo run --quiet --locked --release -p cost-host -- "$out/board" "$built/criterion"
  say ""
  say "- RAM, bytes: a gauge's window $(figure 'Window bytes'), all that it keeps with three limits $(figure 'plumbmark bytes'); the page's \`Live\` $(figure 'Live bytes')."
  say ""
fi

spent=$(figure 'plumbmark share')
say "Budget: $spent of $budget instructions a sample ($(figure 'plumbmark share without live') without live answers, $(figure 'plumbmark share with full live') with five full ones a second)"
[ "$spent" -le "$budget" ]
