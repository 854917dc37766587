#!/bin/sh
# `sh web/serve.sh` as somebody types it, until it has served the page.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
PORT=${PORT:-8139}
export PORT
sh "$root/web/serve.sh" &
server=$!
trap 'kill "$server"' EXIT
trap 'exit 1' INT TERM
for _ in $(seq 150); do
  kill -0 "$server" || exit 1
  page=$(node -e "fetch('http://localhost:$PORT/').then((r) => r.text()).then(console.log, () => {})")
  case $page in *app.js*) exit 0 ;; esac
  sleep 1
done
echo "no page on port $PORT" >&2
exit 1
