//! The first start against values from outside: published thresholds, the mixed box, counts and
//! clocks by hand.

use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::form::Checked;
use plumbmark::plan::work::Worked;

mod air;
mod co;
mod measured;
mod steps;
mod timer;

const NONE: f64 = f64::NAN;

/// Numbers by their names; spreads in the middle, the rest empty.
fn named(names: &[&str], told: &[(&str, f64)]) -> Vec<f64> {
    for (name, _) in told {
        assert!(names.contains(name), "{name}");
    }
    let value = |name: &&str| {
        let given = told.iter().rev().find(|(n, _)| n == name);
        given.map_or(if name.ends_with("_spread") { 0.0 } else { NONE }, |g| g.1)
    };
    names.iter().map(value).collect()
}

/// The same for a sheet without rows.
fn told(sheet: Sheet, told: &[(&str, f64)]) -> Vec<f64> {
    named(sheet.names().inputs, told)
}

fn value(sheet: Sheet, worked: &Worked, name: &str) -> f64 {
    let place = sheet.names().outputs.iter().position(|n| *n == name);
    worked.result(place.unwrap()).unwrap().value
}

fn u(sheet: Sheet, worked: &Worked, name: &str) -> f64 {
    let place = sheet.names().outputs.iter().position(|n| *n == name);
    worked.result(place.unwrap()).unwrap().u
}

/// The verdict of the check of a result.
fn verdict(sheet: Sheet, worked: &Worked, name: &str, low: f64, high: f64) -> Verdict {
    let names = sheet.names().outputs;
    let all: Vec<Checked> = (0..).map_while(|place| worked.check(place)).collect();
    let check = all.iter().find(|c| names[c.output] == name).unwrap();
    worked.judged(check, low, high).unwrap().verdict
}

fn near(got: f64, want: f64, share: f64) {
    assert!(
        (got - want).abs() <= share * want.abs(),
        "{got}, not {want}"
    );
}
