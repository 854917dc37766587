#!/bin/sh
# Licences and sources of all that is built, one version of each crate in what is shipped; exact
# versions, hashes and licences of npm's and Python's packages; known weaknesses of both where their
# databases can be reached.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/web/setup.sh"
need_rust
need_node
need_cargo_tool cargo-deny cargo-deny 0.20.2 --locked
PATH="$tools/cargo/bin:$PATH"
cd "$root"

deny() { # folder, then options
  folder=$1
  shift
  cargo deny --manifest-path "$folder/Cargo.toml" --all-features --locked \
    --config tests/crate/deny.toml check --hide-inclusion-graph "$@"
}
for lock in Cargo.lock core/*/Cargo.lock tests/*/Cargo.lock; do
  [ ! -f "$lock" ] || deny "$(dirname "$lock")" -A license-not-encountered licenses sources
done
deny . bans
if timeout 60 cargo deny --config tests/crate/deny.toml fetch db >/dev/null 2>&1; then
  deny . --disable-fetch advisories
else
  say "note: the database of known weaknesses can't be reached; not looked at"
fi

node tests/crate/packages.mjs
for folder in web tests/browser; do
  # It fails too where there is no answer: only an answer has this line.
  said=$(cd "$folder" && timeout 60 npm audit --audit=true 2>&1) && continue
  if printf '%s' "$said" | grep -qE '^[0-9]+ .*vulnerabilit'; then
    printf '%s\n' "$said"
    exit 1
  fi
  say "note: npm's list of known weaknesses can't be reached; $folder is not looked at"
done
