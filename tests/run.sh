#!/bin/sh
# Sets up what is missing, passes every test. The last line says how many passed and failed.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/web/setup.sh"
. "$root/tests/nightly.sh"
targets="wasm32-unknown-unknown thumbv6m-none-eabi thumbv7em-none-eabihf"
say "Testing: Rust targets, nightly Rust with Miri, cargo-fuzz, cargo-public-api, cargo-deny, the oldest Rust that is served, wasm-bindgen, wasm-pack, npm packages, Chromium, QEMU, and Python's GTC, fluids, CoolProp, numpy, scipy and DuckDB are set up if missing (bare machine: up to 80 minutes; else about 45)."

logs=$(mktemp -d)
trap 'rm -rf "$logs"' EXIT
passed=0
failed=0

# One step: its name, then its command. Its output is shown only when it fails; its notes, which say
# what it could not do here, always.
step() {
  name=$1
  shift
  if "$@" >"$logs/out" 2>&1; then
    passed=$((passed + 1))
    say "ok    $name"
    sed -n 's/^note: /      /p' "$logs/out"
  else
    failed=$((failed + 1))
    say "FAIL  $name"
    cat "$logs/out"
  fi
}

# A step that runs tests of its own: they count, not the step.
counted() {
  name=$1
  how=$2
  shift 2
  "$@" >"$logs/out" 2>&1 && fine=yes || fine=no
  good=$("${how}_passed")
  bad=$("${how}_failed")
  [ "$fine" = yes ] || [ "$bad" -gt 0 ] || bad=1
  [ "$fine$good" != yes0 ] || bad=1 # nothing ran
  passed=$((passed + good))
  failed=$((failed + bad))
  say "$([ "$bad" = 0 ] && echo 'ok   ' || echo FAIL) $name: $good passed, $bad failed"
  if [ "$bad" = 0 ]; then grep -E '°|taps' "$logs/out" || :; else cat "$logs/out"; fi
}
sum() { awk '{ s += $1 } END { print s + 0 }'; }
cargo_passed() { sed -n 's/^test result:.* \([0-9]*\) passed.*/\1/p' "$logs/out" | sum; }
cargo_failed() { sed -n 's/^test result:.* \([0-9]*\) failed.*/\1/p' "$logs/out" | sum; }
node_passed() { sed -n 's/^# pass \([0-9]*\)$/\1/p' "$logs/out" | sum; }
node_failed() { sed -n -E 's/^# (fail|cancelled) ([0-9]+)$/\2/p' "$logs/out" | sum; }

need_chromium() {
  [ -n "${PLUMBMARK_CHROMIUM:-}" ] && return
  for program in chromium chromium-browser google-chrome; do
    PLUMBMARK_CHROMIUM=$(command -v "$program") && export PLUMBMARK_CHROMIUM && return
  done
  may_install || stop "Chromium is missing. Install it, or say where it is: PLUMBMARK_CHROMIUM=/path/to/chromium sh tests/run.sh"
  apt_install chromium
  PLUMBMARK_CHROMIUM=$(command -v chromium)
  export PLUMBMARK_CHROMIUM
}

need_python() {
  python3 -c 'import venv, ensurepip' 2>/dev/null && return
  may_install || stop "python3 with venv is missing. Install it (Debian: python3-venv), then run this again."
  apt_install python3-venv
}

need_components() {
  cargo clippy --version >/dev/null 2>&1 && cargo fmt --version >/dev/null 2>&1 && return
  command -v rustup >/dev/null || stop "clippy and rustfmt are missing and there is no rustup to add them."
  say "Adding clippy and rustfmt (seconds)"
  rustup component add clippy rustfmt >/dev/null || stop "rustup could not add clippy and rustfmt."
}

setup_build
need_components
need_packages "$root/tests/browser"
need_chromium
need_python
need_nightly
PATH="$root/tests/browser/node_modules/.bin:$PATH"
cd "$root"

step "format" cargo fmt --all --check
step "clippy" cargo clippy --quiet --locked --workspace --all-targets --all-features -- -D warnings
step "docs" env RUSTDOCFLAGS="-D warnings" cargo doc --quiet --locked --workspace --no-deps --all-features
for features in "" serde defmt "serde defmt"; do
  step "core on thumbv6m, features: ${features:-none}" \
    cargo check --quiet --locked -p plumbmark --target thumbv6m-none-eabi --features "$features"
done
step "core on thumbv7em" cargo check --quiet --locked -p plumbmark --target thumbv7em-none-eabihf
step "oldest Rust" sh "$root/tests/crate/oldest_rust.sh"
step "public API as kept" sh "$root/tests/crate/api.sh"
step "package" sh "$root/tests/crate/package.sh"
step "dependencies" sh "$root/tests/crate/dependencies.sh"
counted "core" cargo cargo test --locked --profile study -p plumbmark -p plumbmark-tests \
  -p plumbmark-simulator -p plumbmark-coverage -- --nocapture
for own in tests/fuzz tests/no_panic tests/cost tests/gauge core/gauge; do
  step "format of $own" cargo fmt --all --check --manifest-path "$own/Cargo.toml"
done
step "clippy of core/gauge" cargo clippy --quiet --locked --release --target thumbv7em-none-eabihf \
  --manifest-path core/gauge/Cargo.toml --features microbit-v2 -- -D warnings
step "gauge's image: 32 kB of flash, 4 kB of RAM, no panic from core" sh "$root/tests/gauge/measure.sh"
for core in thumbv6m-none-eabi thumbv7em-none-eabihf; do
  step "clippy of tests/gauge on $core" cargo clippy --quiet --locked --release --target "$core" \
    --manifest-path tests/gauge/Cargo.toml -p gauge-board -- -D warnings
done
step "clippy of tests/gauge on the host" cargo clippy --quiet --locked --all-targets \
  --manifest-path tests/gauge/Cargo.toml -p gauge-host -p gauge-model -- -D warnings
counted "gauge without hardware" cargo sh "$root/tests/gauge/run.sh"
step "clippy of tests/no_panic" cargo clippy --quiet --locked --release --target thumbv6m-none-eabi \
  --manifest-path tests/no_panic/Cargo.toml -- -D warnings
step "no panic reachable on a board" sh "$root/tests/no_panic/run.sh"
step "instructions on a board" sh "$root/tests/cost/run.sh" board
step "second route: 10 000 budgets from the equations" sh "$root/tests/second_route/run.sh"
step "second route notices a broken sign" sh "$root/tests/second_route/mutate.sh" 400
step "sheets by another route" sh "$root/tests/plan_route/run.sh"
step "Miri" sh "$root/tests/miri.sh"
step "fuzzing" sh "$root/tests/fuzz/run.sh"
step "page build" sh "$root/web/build.sh"
step "page built again elsewhere: the same bytes" sh "$root/tests/same_bytes/run.sh" built
step "page lint and format" sh -c "cd '$root/web' && biome check --error-on-warnings"
step "browser tests' lint and format" sh -c "cd '$root/tests/browser' && biome check --error-on-warnings"
step "page markup" sh -c "cd '$root/web' && html-validate index.html"
step "page types" sh -c "cd '$root/web' && tsc"
for own in speed commands; do
  step "lint and format of tests/$own" sh -c "cd '$root/tests/$own' && biome check --error-on-warnings"
done
step "documented commands" sh "$root/tests/commands/run.sh"
counted "page in Chromium" node sh -c \
  "cd '$root/tests/browser' && exec node --test --test-reporter=tap --test-timeout=2700000 --test-concurrency=1 *.test.mjs"

say "$passed passed, $failed failed"
[ "$failed" = 0 ]
