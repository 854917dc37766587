#!/bin/sh
# Every command that a document tells somebody to type: runs, or is known to run elsewhere. Wants what
# sh tests/run.sh sets up.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/web/setup.sh"
setup_build
exec node "$root/tests/commands/run.mjs"
