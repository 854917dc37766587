#!/bin/sh
# One sign broken in a copy of core at a time: the second route must fail each time. It fails too
# where a line to break is no longer there. `sh tests/second_route/mutate.sh [CASES]`
set -eu
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../.." && pwd)
cases=${1:-600}
export PLUMBMARK_ROUTE_PROFILE=dev
# Always the same place, so that each build is an incremental one; with a target folder of its own:
# to cargo the copy's core is the same package, and broken builds would pass for the root's.
copy=${CARGO_TARGET_DIR:-$root/target}/second_route_broken
export CARGO_TARGET_DIR="$copy.target"
log=$copy/log
rm -rf "$copy"
mkdir -p "$copy"
export PLUMBMARK_ROUTE_ROOT="$copy"

fresh() {
  for part in Cargo.toml Cargo.lock core wasm; do
    rm -rf "${copy:?}/$part"
    cp -R "$root/$part" "$copy/$part"
  done
  rm -rf "$copy/tests"
  mkdir "$copy/tests"
  (cd "$root/tests" && cp -R Cargo.toml ./*.rs traces trace_files second_route plan_* coverage "$copy/tests")
}

failed=0
# What is broken, in which file, the line as it stands, and as it is broken.
break_at() {
  name=$1 file=$2 line=$3 broken=$4
  cp "$root/core/src/$file" "$copy/core/src/$file"
  if [ "$(grep -cF -- "$line" "$copy/core/src/$file")" != 1 ]; then
    echo "FAIL  $name: '$line' is not one line of core/src/$file any more; choose another"
    failed=1
    return
  fi
  LINE=$line BROKEN=$broken awk '
    (at = index($0, ENVIRON["LINE"])) {
      $0 = substr($0, 1, at - 1) ENVIRON["BROKEN"] substr($0, at + length(ENVIRON["LINE"]))
    } { print }' "$root/core/src/$file" >"$copy/core/src/$file"
  began=$(date +%s)
  if sh "$here/run.sh" "$cases" >"$log" 2>&1; then
    echo "FAIL  $name: the second route does not notice"
    failed=1
  elif ! grep -q 'results of core are not what the equations give' "$log"; then
    echo "FAIL  $name: the second route did not run to its end"
    cat "$log"
    failed=1
  else
    echo "ok    $name: noticed, $(($(date +%s) - began)) s"
  fi
  cp "$root/core/src/$file" "$copy/core/src/$file"
}

fresh
sh "$here/run.sh" "$cases" >"$log" 2>&1 || { cat "$log"; echo "FAIL  unbroken core"; exit 1; }
echo "ok    unbroken core agrees"
break_at "covariance of a sum" shared.rs \
  "total += 2.0 * weight * other_weight * share.covariance(other);" \
  "total -= 2.0 * weight * other_weight * share.covariance(other);"
break_at "covariance of datum and part" in_vehicle.rs "+ 2.0 * of(&a, &b)" "- 2.0 * of(&a, &b)"
break_at "heading" in_vehicle.rs "seen[0] * cos + seen[1] * sin" "seen[0] * cos - seen[1] * sin"
break_at "half turn" reversal.rs "minus(scaled(n, 2.0 * dot(v, n)), v)" "minus(scaled(n, -2.0 * dot(v, n)), v)"
break_at "mean of two placements" reversal.rs \
  "let mean = core::array::from_fn(|i| 0.5 * (one[i] + back[i]));" \
  "let mean = core::array::from_fn(|i| 0.5 * (one[i] - back[i]));"
break_at "zero" sensor.rs "length * a[i] - b[i]" "length * a[i] + b[i]"
break_at "length of what is felt" sensor.rs "scaled(up, along + libm::sqrtf(rest))" "scaled(up, along - libm::sqrtf(rest))"
break_at "zero in the length of what is felt" sensor.rs "scaled(up, along + libm::sqrtf(rest))" "scaled(up, -along + libm::sqrtf(rest))"
break_at "where a zero was found" shared.rs \
  "cross_at: minus(from.up, sensor.found_at)" "cross_at: minus(from.up, scaled(sensor.found_at, -1.0))"
break_at "covariance by cross-axis error" shared.rs \
  "total + dot(self.cross_deg, other.cross_deg)" "total - dot(self.cross_deg, other.cross_deg)"
break_at "covariance by a side" shared.rs \
  "total += dot(self.side_deg, other.side_deg);" "total -= dot(self.side_deg, other.side_deg);"
break_at "what the error across a slope bends" budget.rs \
  "across.variance_deg2() * steepness" "across.variance_deg2() / steepness"
break_at "direction of a slope" frames.rs \
  "scaled(minus(axis, scaled(up, sine)), 1.0 / cosine)" \
  "scaled(minus(axis, scaled(up, -sine)), 1.0 / cosine)"
break_at "factor k" budget.rs "K_NORMAL - 0.168 * g2" "K_NORMAL + 0.168 * g2"
break_at "edges of the interval" decision.rs \
  "(value - self.u_deg, value + self.u_deg)" "(value + self.u_deg, value - self.u_deg)"
break_at "fit of a calibration" calibration.rs "*s -= a * residual;" "*s += a * residual;"
[ "$failed" = 0 ]
