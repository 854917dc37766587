#!/bin/sh
# The long studies: all draws of the coverage study; browsers killed fifty times while captures are
# taken and fifty times while a whole job is typed.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
printf 'Long studies: about 45 minutes on two cores.\n'
PLUMBMARK_STUDY=full PLUMBMARK_KILLS=50 exec sh "$root/tests/run.sh"
