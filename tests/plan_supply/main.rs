//! The supply against values from outside: standards, handbook tables, a law, worked examples.

use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::bound::Judged;
use plumbmark::plan::kind::{Problem, Refusal};
use plumbmark::plan::supply::conductor::{COUNT, Series, named};
use plumbmark::plan::work::{Given, Worked};

mod battery;
mod cable;
mod conductors;
mod posts;
mod sizes;

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

/// Nothing is uncertain.
fn exact(sheet: Sheet, named: &[(&str, f64)]) -> Worked {
    let x = told(sheet, named);
    sheet.work(&x, &vec![0.0; x.len()]).unwrap()
}

fn refusal(sheet: Sheet, named: &[(&str, f64)]) -> (&'static str, Problem) {
    let Refusal { place, problem } = sheet.work(&told(sheet, named), &[]).unwrap_err();
    (sheet.names().inputs[place], problem)
}

fn place(sheet: Sheet, name: &str) -> usize {
    let found = sheet.names().outputs.iter().position(|n| *n == name);
    found.unwrap_or_else(|| panic!("{name}"))
}

fn given(sheet: Sheet, worked: &Worked, name: &str) -> Given {
    worked.result(place(sheet, name)).unwrap()
}

fn value(sheet: Sheet, worked: &Worked, name: &str) -> f64 {
    given(sheet, worked, name).value
}

/// A result held against its limit.
fn judged(sheet: Sheet, worked: &Worked, name: &str, low: f64, high: f64) -> Judged {
    let checks = (0..).map_while(|at| worked.check(at));
    let of = |output| output == place(sheet, name);
    let check = checks.into_iter().find(|c| of(c.output)).unwrap();
    worked.judged(&check, low, high).unwrap()
}

fn verdict(sheet: Sheet, worked: &Worked, name: &str, low: f64, high: f64) -> Verdict {
    judged(sheet, worked, name, low, high).verdict
}

/// The place of a conductor in both lists.
fn code(series: Series, size: f64) -> f64 {
    let found = (0..COUNT).find(|&c| named(c) == Some((series, size)));
    found.unwrap() as f64
}

fn near(got: f64, want: f64, share: f64) {
    assert!(
        (got - want).abs() <= share * want.abs(),
        "{got}, not {want}"
    );
}
