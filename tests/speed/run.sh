#!/bin/sh
# What the page takes, and how long somebody waits for it: prints the table, fails while a promise is
# not kept. A benchmark, no part of the tests: other work on the machine shows in it.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/web/setup.sh"
built="$root/web/dist/sw.js"
newer() {
  find "$root/web" "$root/wasm/src" "$root/core/src" \( -name node_modules -o -name dist -o -name pkg \) -prune \
    -o -type f -newer "$built" -print | head -n 1
}
{ [ -f "$built" ] && [ -z "$(newer)" ]; } || sh "$root/web/build.sh"
need_node
need_packages "$root/tests/browser"
say "Measuring the page in Chromium (about 2 minutes)"
cpu=$(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo 2>/dev/null | head -n 1)
printf '\n%s, %s, %s cores\n\n' "$(date +%F)" "${cpu:-$(uname -m)}" "$(getconf _NPROCESSORS_ONLN)"
status=0
told=$(timeout 900 node "$root/tests/speed/run.mjs") || status=$?
# The tests' harness has its reporter begin.
printf '%s\n' "$told" | sed '/^TAP version/d'
exit "$status"
