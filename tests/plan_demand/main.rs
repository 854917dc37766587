//! Heat wanted, against values from outside: ISO 6946, handbook formulas, libraries.

use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::kind::{Problem, Refusal};
use plumbmark::plan::work::{Given, Worked};

mod loss;
mod night;
mod size;
mod surface;
mod warm;

const NONE: f64 = f64::NAN;

type Named = (&'static str, f64);

/// Numbers by their names; spreads in the middle, the rest empty.
fn fill(names: &[&str], named: &[Named]) -> Vec<f64> {
    for (name, _) in named {
        assert!(names.contains(name), "{name}");
    }
    let value = |name: &&str| {
        let given = named.iter().rev().find(|(n, _)| n == name);
        given.map_or(if name.ends_with("_spread") { 0.0 } else { NONE }, |g| g.1)
    };
    names.iter().map(value).collect()
}

/// Numbers of a sheet, then of its rows.
fn told(sheet: Sheet, named: &[Named], rows: &[Vec<Named>]) -> Vec<f64> {
    let names = sheet.names();
    let rows = rows.iter().flat_map(|row| fill(names.row, row));
    fill(names.inputs, named).into_iter().chain(rows).collect()
}

fn work(sheet: Sheet, named: &[Named], rows: &[Vec<Named>]) -> Worked {
    sheet.work(&told(sheet, named, rows), &[]).unwrap()
}

/// Row, field and problem of what is refused; row 0 for the sheet's own.
fn refusal(sheet: Sheet, named: &[Named], rows: &[Vec<Named>]) -> (usize, &'static str, Problem) {
    let Refusal { place, problem } = sheet.work(&told(sheet, named, rows), &[]).unwrap_err();
    let names = sheet.names();
    match place.checked_sub(names.inputs.len()) {
        None => (0, names.inputs[place], problem),
        Some(past) => (
            1 + past / names.row.len(),
            names.row[past % names.row.len()],
            problem,
        ),
    }
}

fn result(sheet: Sheet, worked: &Worked, name: &str) -> Given {
    let place = sheet.names().outputs.iter().position(|n| *n == name);
    worked.result(place.unwrap()).unwrap()
}

fn value(sheet: Sheet, worked: &Worked, name: &str) -> f64 {
    result(sheet, worked, name).value
}

/// The verdict of the check of a result.
fn verdict(sheet: Sheet, worked: &Worked, name: &str, high: f64) -> Verdict {
    let names = sheet.names().outputs;
    let mut checks = (0..).map_while(|place| worked.check(place));
    let check = checks.find(|c| names[c.output] == name).unwrap();
    worked.judged(&check, NONE, high).unwrap().verdict
}

fn near(got: f64, want: f64, share: f64) {
    assert!(
        (got - want).abs() <= share * want.abs(),
        "{got}, not {want}"
    );
}
