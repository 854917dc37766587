#!/bin/sh
# What others can build on, one item a line, compared with the list that is kept: no part of it
# changes unseen. `sh tests/crate/api.sh keep` keeps it as it is now.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/web/setup.sh"
. "$root/tests/nightly.sh"
need_nightly
need_cargo_tool cargo-public-api cargo-public-api 0.52.0 --locked
PATH="$tools/cargo/bin:$PATH"
cd "$root"
kept=tests/crate/api.txt
log=$(mktemp)
now=$(mktemp)
trap 'rm -f "$log" "$now"' EXIT

cargo +nightly public-api -ss --all-features -p plumbmark >"$now.all" 2>"$log" || {
  cat "$log"
  stop "the listing can't be made. Where nightly Rust is too new for it, raise its version here."
}
# Of what a derive gives, the trait is enough.
grep -vE '::(clone|eq|fmt|format|serialize|deserialize)(<.*>)?\(|StructuralPartialEq' "$now.all" >"$now"
rm -f "$now.all"
if [ "${1:-}" = keep ]; then
  cp "$now" "$kept"
  say "$(wc -l <"$kept") lines kept in $kept"
  exit
fi
diff "$kept" "$now" ||
  stop "The public API has changed (> now). Where that is meant: sh tests/crate/api.sh keep, and a line in core/CHANGELOG.md."
say "the public API is as kept"
