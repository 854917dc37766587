#!/bin/sh
# Runs the coverage study and writes its tables and its plot: about six minutes of one core.
set -eu
cd "$(dirname "$0")"
exec cargo run --quiet --locked --profile study -p plumbmark-coverage
