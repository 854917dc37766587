// What becomes of each documented command when the documents are tested.

/**
 * @typedef {object} Fate
 * @property {true} [run] here, as it stands
 * @property {string} [as] here, in these words: with a folder of ours, or so that it ends
 * @property {string} [step] runs among all tests, in the step of that name
 * @property {string} [not] runs nowhere by itself; why
 */

/** In the order in which they run. @type {Record<string, Fate>} */
export const FATES = {
  'sh web/serve.sh': { as: 'sh tests/commands/serve.sh' },
  'cargo run -p plumbmark --example csv_verdicts -- core/examples/pump.csv': { run: true },
  'node web/languages.mjs': { run: true },
  // The plain image last: it is the one that is left.
  'PLUMBMARK_LIMITS=/path/to/limits.json sh core/gauge/build.sh': {
    as: 'PLUMBMARK_LIMITS=tests/gauge/limits.json sh core/gauge/build.sh',
  },
  'sh core/gauge/build.sh': { run: true },
  'cp core/gauge/target/thumbv7em-none-eabihf/release/plumbmark-gauge.hex /media/$USER/MICROBIT/': {
    as: 'cp "$BUILT/thumbv7em-none-eabihf/release/plumbmark-gauge.hex" "$PLACE"',
  },
  'cp core/gauge/target/thumbv7em-none-eabihf/release/plumbmark-gauge.hex /Volumes/MICROBIT/': {
    not: 'the same where macOS puts the drive',
  },
  'rustup component add llvm-tools': { not: 'only where a Rust brings no objcopy' },
  'probe-rs run --chip nRF52833_xxAA': { not: 'wants a board and a probe' },
  'sh tests/run.sh': { not: 'is what this is part of' },
  'sh tests/long.sh': { not: '45 minutes: sh tests/run.sh with more draws' },
  'sh tests/speed/run.sh': { not: 'a benchmark: other work on the machine shows in it' },
  'sh web/build.sh': { step: 'page build' },
  'sh tests/gauge/run.sh': { step: 'gauge without hardware' },
  'sh tests/gauge/measure.sh': { step: "gauge's image: 32 kB of flash, 4 kB of RAM, no panic from core" },
  'sh tests/cost/run.sh': { step: 'instructions on a board' },
  'cargo test -p plumbmark-tests --profile study -- --nocapture': { step: 'core' },
  'cargo run -p plumbmark-tests --profile study --bin traces -- FOLDER': { step: 'core' },
  'cargo run -p plumbmark-tests --profile study --bin traces -- FOLDER [--remove-mount] [--round] [--turns N] [--csv]':
    { step: 'core' },
  'sh tests/second_route/run.sh': { step: 'second route: 10 000 budgets from the equations' },
  'sh tests/plan_route/run.sh': { step: 'sheets by another route' },
  'sh tests/fleet/run.sh FOLDER': { step: 'page in Chromium' },
  'cd tests/browser && node --test flow.test.mjs': { step: 'page in Chromium' },
  'sh tests/coverage/run.sh': {
    not: '6 minutes, and writes tables; a test in "core" fails where they are old',
  },
  'sh tests/no_panic/run.sh': { step: 'no panic reachable on a board' },
  'sh tests/fuzz/run.sh': { step: 'fuzzing' },
  'sh tests/fuzz/run.sh 1000000': { not: 'hours; the step "fuzzing" runs 10 000' },
  'sh tests/same_bytes/run.sh': { step: 'page built again elsewhere: the same bytes' },
  'sh tests/crate/dependencies.sh': { step: 'dependencies' },
  'sh tests/crate/api.sh': { step: 'public API as kept' },
  'sh tests/crate/api.sh keep': { not: 'writes the list that the step "public API as kept" compares' },
  'sh tests/miri.sh': { step: 'Miri' },
  'node web/icons/render.mjs': { not: 'draws anew what is kept' },
  'sh tests/commands/run.sh': { step: 'documented commands' },
};
