//! The fuel line against values from outside: handbook formulas, published criterion, libraries.

use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::form::Checked;
use plumbmark::plan::kind::{Problem, Refusal};
use plumbmark::plan::work::Worked;

mod formulas;
mod line;
mod pressure;
mod tanks;

const NONE: f64 = f64::NAN;

/// Numbers of a sheet by their names; spreads in the middle, the rest empty.
fn told(sheet: Sheet, named: &[(&str, f64)]) -> Vec<f64> {
    let names = sheet.names().inputs;
    for (name, _) in named {
        assert!(names.contains(name), "{name}");
    }
    let value = |name: &&str| {
        let given = named.iter().rev().find(|(n, _)| n == name);
        given.map_or(if name.ends_with("_spread") { 0.0 } else { NONE }, |g| g.1)
    };
    names.iter().map(value).collect()
}

fn work(sheet: Sheet, named: &[(&str, f64)]) -> Worked {
    sheet.work(&told(sheet, named), &[]).unwrap()
}

fn refusal(sheet: Sheet, named: &[(&str, f64)]) -> (&'static str, Problem) {
    let Refusal { place, problem } = sheet.work(&told(sheet, named), &[]).unwrap_err();
    (sheet.names().inputs[place], problem)
}

fn value(sheet: Sheet, worked: &Worked, name: &str) -> f64 {
    let place = sheet.names().outputs.iter().position(|n| *n == name);
    worked.result(place.unwrap()).unwrap().value
}

/// The checks of a sheet in order.
fn checks(worked: &Worked) -> impl Iterator<Item = Checked> + '_ {
    (0..).map_while(|place| worked.check(place))
}

/// The verdict of the check of a result.
fn verdict(sheet: Sheet, worked: &Worked, name: &str, low: f64, high: f64) -> Verdict {
    let names = sheet.names().outputs;
    let check = checks(worked).find(|c| names[c.output] == name).unwrap();
    worked.judged(&check, low, high).unwrap().verdict
}

fn near(got: f64, want: f64, share: f64) {
    assert!(
        (got - want).abs() <= share * want.abs(),
        "{got}, not {want}"
    );
}

/// An invented line, warm diesel.
const LINE: &[(&str, f64)] = &[
    ("fuel", 0.0),
    ("fuel_celsius", 10.0),
    ("cloud_point_celsius", -3.0),
    ("stroke_ml", 0.03),
    ("stroke_ms", 40.0),
    ("suction_bore_mm", 2.0),
    ("suction_length_m", 1.4),
    ("suction_lift_mm", 350.0),
    ("pressure_bore_mm", 2.0),
    ("pressure_length_m", 3.1),
    ("pressure_lift_mm", 420.0),
];

fn line(with: &[(&'static str, f64)]) -> Vec<(&'static str, f64)> {
    LINE.iter().chain(with).copied().collect()
}
