#!/bin/sh
# The fleet's question, asked of the record tables in a folder: sh tests/fleet/run.sh FOLDER; with a GUIDE.md, that guide's SQL
set -eu
here=$(cd "$(dirname "$0")" && pwd)
venv=${XDG_CACHE_HOME:-$HOME/.cache}/plumbmark/fleet

sum=$(cksum <"$here/requirements.txt")
if [ "$(cat "$venv/.seen" 2>/dev/null)" != "$sum" ]; then
  echo "Setting up DuckDB (a minute)" >&2
  python3 -m venv --clear "$venv" || {
    echo "Python 3.11 or newer with venv is missing. Install it (Debian: python3-venv), then run this again." >&2
    exit 1
  }
  "$venv/bin/pip" install --quiet --disable-pip-version-check -r "$here/requirements.txt" >&2
  printf '%s' "$sum" >"$venv/.seen"
fi
exec "$venv/bin/python" -B "$here/fleet.py" "$@"
