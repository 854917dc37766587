#!/bin/sh
# Sets up what is missing, builds the page, and serves it on localhost.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
sh "$root/web/build.sh"
exec node "$root/web/serve.mjs"
