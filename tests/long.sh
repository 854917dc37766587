#!/bin/sh
# The long studies: all draws of the coverage study, and fifty killed browsers.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
printf 'Long studies: about 30 minutes on two cores.\n'
PLUMBMARK_STUDY=full PLUMBMARK_KILLS=50 exec sh "$root/tests/run.sh"
