#!/bin/sh
# The second route of the sheets: random cases recomputed with fluids, ht, CoolProp, numpy, scipy and shapely.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
venv=${XDG_CACHE_HOME:-$HOME/.cache}/plumbmark/plan_route

sum=$(cksum <"$here/requirements.txt")
if [ "$(cat "$venv/.seen" 2>/dev/null)" != "$sum" ]; then
  echo "Setting up fluids, ht, CoolProp, numpy, scipy and shapely (up to 2 minutes)"
  python3 -m venv --clear "$venv" || {
    echo "Python 3.11 or newer with venv is missing. Install it (Debian: python3-venv), then run this again." >&2
    exit 1
  }
  "$venv/bin/pip" install --quiet --disable-pip-version-check -r "$here/requirements.txt"
  printf '%s' "$sum" >"$venv/.seen"
fi

cd "$here/../.."
cargo build --quiet --locked -p plumbmark-tests --profile study --bin plan_answers
"$venv/bin/python" -B "$here/route.py" "${CARGO_TARGET_DIR:-target}/study/plan_answers"
