#!/bin/sh
# The second route: random budgets and readings evaluated by GTC and Monte Carlo from the
# measurement equations, and by core. `sh tests/second_route/run.sh [CASES] [SEED]`
set -eu
here=$(cd "$(dirname "$0")" && pwd)
root=${PLUMBMARK_ROUTE_ROOT:-$(cd "$here/../.." && pwd)}
venv=${XDG_CACHE_HOME:-$HOME/.cache}/plumbmark/second_route

sum=$(cksum <"$here/requirements.txt")
if [ "$(cat "$venv/.seen" 2>/dev/null)" != "$sum" ]; then
  echo "Setting up GTC, numpy and scipy (up to 2 minutes)"
  python3 -m venv --clear "$venv" || {
    echo "Python 3.11 or newer with venv is missing. Install it (Debian: python3-venv), then run this again." >&2
    exit 1
  }
  "$venv/bin/pip" install --quiet --disable-pip-version-check -r "$here/requirements.txt"
  printf '%s' "$sum" >"$venv/.seen"
fi

cd "$root"
cargo build --quiet --locked -p plumbmark-tests --profile "${PLUMBMARK_ROUTE_PROFILE:-study}" --bin route_cases
case ${PLUMBMARK_ROUTE_PROFILE:-study} in dev) built=debug ;; *) built=study ;; esac
cases=$(mktemp)
trap 'rm -f "$cases"' EXIT
"${CARGO_TARGET_DIR:-target}/$built/route_cases" "${1:-10000}" "${2:-1}" >"$cases"
"$venv/bin/python" -B "$here/route.py" <"$cases"
