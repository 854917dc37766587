//! What comes in from outside: a limit-set file that was damaged or written by hand, and the
//! fields of one, set one by one as the page does.
#![no_main]

use arbitrary::{Arbitrary, Result, Unstructured};
use libfuzzer_sys::fuzz_target;
use plumbmark::holds::Surface;
use plumbmark::limits::{Basis, Field, Limit, LimitSet, Problem, SurfaceTerms};
use plumbmark::live::Live;
use plumbmark_fuzz::any;

/// Pieces of other files and of other limit sets.
const PIECES: [&str; 16] = [
    "null",
    "-0",
    "1e39",
    "-1e999",
    "\"\"",
    "[]",
    "{}",
    ",",
    "\"manual\"",
    "\"law\"",
    "\"pump_roll\"",
    "\"low_deg\":15",
    "true",
    "\\ud800",
    "\u{feff}",
    "12",
];

/// A sound file with a few places cut out, doubled or written over.
fn damaged(u: &mut Unstructured<'_>) -> Result<Vec<u8>> {
    let set = any::limit_set(u)?;
    let mut file = serde_json::to_vec(&set).expect("a limit set is JSON");
    for _ in 0..u.int_in_range(0..=6)? {
        let from = u.choose_index(file.len().max(1))?;
        let to = (from + u.int_in_range(0..=40)?).min(file.len());
        match u.int_in_range(0..=4)? {
            0 => file.truncate(from),
            1 => drop(file.drain(from..to)),
            2 => {
                let twice = file[from..to].to_vec();
                file.splice(from..from, twice);
            }
            3 => drop(file.splice(from..to, u.choose(&PIECES)?.bytes())),
            _ => {
                if let Some(byte) = file.get_mut(from) {
                    *byte = u.arbitrary()?;
                }
            }
        }
    }
    Ok(file)
}

/// The page's way: see `wasm/src/limits.rs`.
fn by_fields(u: &mut Unstructured<'_>) -> Result<LimitSet> {
    let mut set = LimitSet::empty();
    let name: &str = u.arbitrary()?;
    let named = set.set_name(name);
    assert_eq!(named.is_ok(), name.len() <= 64);
    for _ in 0..u.int_in_range(0..=8)? {
        let mut line = Limit {
            low_deg: any::maybe(u)?,
            high_deg: any::maybe(u)?,
            preferred_low_deg: any::maybe(u)?,
            preferred_high_deg: any::maybe(u)?,
            at_limit_allowed: u.arbitrary()?,
            allowance_deg: any::maybe(u)?,
            basis: *u.choose(&Basis::ALL)?,
            holds_in_operation: u.arbitrary()?,
            length_mm: any::maybe(u)?,
            ..Limit::not_entered(any::check(u)?)
        };
        let source: &str = u.arbitrary()?;
        match line.set_source(source) {
            Ok(()) => assert_eq!(line.source, source),
            Err(error) => {
                assert!(source.len() > 120);
                assert_eq!(
                    (error.field, error.problem),
                    (Field::Source, Problem::TooLong(120))
                );
            }
        }
        let room = set.lines.len() < 6;
        assert_eq!(set.add_line(line).is_ok(), room);
    }
    set.set_surface(SurfaceTerms {
        surface: *u.choose(&Surface::ALL)?,
        hold_deg: any::number(u)?,
        align_deg: any::number(u)?,
    });
    Ok(set)
}

/// Puts it in force: all of it, or nothing and the set before stays.
fn import(set: LimitSet) {
    let mut live = Live::new();
    let before = live.limits().clone();
    let valid = set.validate();
    assert_eq!(live.set_limits(set.clone()), valid);
    let now = if valid.is_ok() { &set } else { &before };
    // Compared by their text: a refused set may hold NaN.
    assert_eq!(format!("{:?}", live.limits()), format!("{now:?}"));
    if valid.is_ok() {
        let json = serde_json::to_string(&set).expect("an accepted set is JSON");
        let again: LimitSet = serde_json::from_str(&json).expect("and can be read again");
        assert_eq!(again, set);
    }
}

fn run(u: &mut Unstructured<'_>) -> Result<()> {
    let set = if bool::arbitrary(u)? {
        Some(by_fields(u)?)
    } else {
        serde_json::from_slice(&damaged(u)?).ok()
    };
    if let Some(set) = set {
        import(set);
    }
    Ok(())
}

fuzz_target!(|data: &[u8]| {
    // Bytes that end too early end the run.
    let _ = run(&mut Unstructured::new(data));
});
