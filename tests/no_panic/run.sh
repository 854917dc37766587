#!/bin/sh
# Links every public calculation of core into an image for a small board. The link fails while a
# panic can be reached; then this names the places. A panic put in on purpose must fail it too.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/web/setup.sh"
. "$root/tests/panics.sh"
target=thumbv6m-none-eabi
targets=$target
need_rust
cd "$root/tests/no_panic"
CARGO_TARGET_DIR=${CARGO_TARGET_DIR:-"$root/target"}
export CARGO_TARGET_DIR
log=$(mktemp)
trap 'rm -f "$log"' EXIT

build() { cargo build --quiet --locked --release --target "$target" "$@" >"$log" 2>&1; }
fails_by_panic() { grep -q "undefined symbol: a_panic_is_reachable" "$log"; }

# Links with an ordinary handler and looks up each call of a panic; calls are kept apart for it.
name_places() {
  need_objdump
  CARGO_PROFILE_RELEASE_DEBUG=1 \
    RUSTFLAGS="-Cllvm-args=-enable-tail-merge=false -Cllvm-args=-simplifycfg-sink-common=false" \
    build --features diagnose || { cat "$log"; return; }
  panics_in "$CARGO_TARGET_DIR/$target/release/plumbmark-no-panic"
}

if build --features control; then
  stop "a panic put in on purpose went unnoticed: this check proves nothing."
fi
fails_by_panic || { cat "$log"; stop "the image with a panic on purpose failed for another reason."; }
if build; then
  say "no panic reachable"
elif fails_by_panic; then
  say "Panics are reachable from core:"
  name_places
  exit 1
else
  cat "$log"
  stop "the image does not build."
fi
