//! Place: the 24 orientations, room in a compartment, the cut plan. Expectations are worked by hand
//! in plane and solid geometry; thousands of random ones in `plan_route/place.py`.

mod cut;
mod fit;
mod orientations;

use nalgebra::Matrix3;
use plumbmark::decision::Verdict;
use plumbmark::plan::Sheet;
use plumbmark::plan::kind::{Problem, Refusal};
use plumbmark::plan::place::cut_told::{Cut, Obstacle};
use plumbmark::plan::place::fit::{FitGiven, MOST_BOXES};
use plumbmark::plan::place::orientation::{Orientation, Way};
use plumbmark::plan::row::Row;
use plumbmark::plan::work::{Given, Worked};
use proptest::prelude::*;

const NONE: f64 = f64::NAN;

/// The numbers of a sheet by name; what is not named stays not entered.
fn told<T: Row>(named: &[(&str, f64)]) -> Vec<f64> {
    let mut x = vec![NONE; T::NAMES.len()];
    for (name, value) in named {
        let place = T::NAMES.iter().position(|n| n == name);
        x[place.expect(name)] = *value;
    }
    x
}

fn place_of<T: Row>(name: &str) -> usize {
    T::NAMES.iter().position(|n| *n == name).expect(name)
}

fn result(worked: &Worked, sheet: Sheet, name: &str) -> Given {
    let place = sheet.names().outputs.iter().position(|n| *n == name);
    worked.result(place.expect(name)).unwrap()
}

fn row_result(worked: &Worked, sheet: Sheet, row: usize, name: &str) -> Given {
    let names = sheet.names();
    let place = names.row_outputs.iter().position(|n| *n == name);
    let first = names.outputs.len() + row * names.row_outputs.len();
    worked.result(first + place.expect(name)).unwrap()
}
