#!/bin/sh
# Core under Miri: undefined behaviour and overflow in core and in what it is built on. Some hundred
# times slower than a normal run, so these are the quickest tests that go all the way through.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/web/setup.sh"
. "$root/tests/nightly.sh"
need_nightly
cd "$root"
# Some tests read files.
MIRIFLAGS=-Zmiri-disable-isolation
export MIRIFLAGS
cargo +nightly miri setup >/dev/null 2>&1 || stop "Miri could not build its standard library: cargo +nightly miri setup"

miri() { cargo +nightly miri test --quiet --locked "$@"; }
miri -p plumbmark
# 300 probabilities by scipy are arithmetic alone, and most of the time.
miri -p plumbmark-tests --test decision -- --skip conformance_probabilities_as_by_scipy
miri -p plumbmark-tests --test reasons -- a_still silence_is_stale roll_near_plumb the_lower_end
miri -p plumbmark-tests --test shared
# 2000 attitudes are arithmetic alone as well.
miri -p plumbmark-tests --test vehicle -- --skip the_rotation_is_solved_exactly
miri -p plumbmark-tests --test calibration -- the_six_face_example
miri -p plumbmark-tests --test turn -- half_the_difference every_refusal
