#!/bin/sh
# The crate as its registry would take it: what belongs in it is in it, it builds from that alone,
# and the registry has nothing to object to. Without the registry the last is left out, and said.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/web/setup.sh"
need_rust
cd "$root"
log=$(mktemp)
trap 'rm -f "$log"' EXIT

packed=$(cargo package --quiet --list --allow-dirty -p plumbmark)
for file in README.md CHANGELOG.md LICENSE-MIT LICENSE-APACHE src/lib.rs examples/csv_verdicts.rs; do
  printf '%s\n' "$packed" | grep -qx "$file" || stop "the package lacks $file: see include in core/Cargo.toml."
done

if cargo publish --dry-run --locked --allow-dirty -p plumbmark >"$log" 2>&1; then
  grep '^warning' "$log" | grep -v 'aborting upload due to dry run' && stop "publishing warns."
  say "publishing would go through"
elif grep -qE 'config.json failed|offline was specified' "$log"; then
  cargo package --offline --locked --allow-dirty -p plumbmark >"$log" 2>&1 || { cat "$log"; exit 1; }
  say "note: the registry can't be reached; the package builds, and was not compared with it"
else
  cat "$log"
  exit 1
fi
