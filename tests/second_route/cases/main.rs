//! Draws random readings with random budgets, lets core evaluate them, and writes inputs and
//! results to standard output: one case a line, cells `name=numbers`. What they should be says
//! `route.py`, which shares nothing with core.
//!
//! `route_cases [CASES] [SEED]`

mod fits;
mod reading;
mod row;
mod single;
mod sums;
mod turns;
mod vehicle;

use plumbmark_tests::Draws;
use row::Row;

fn main() {
    let mut numbers = std::env::args()
        .skip(1)
        .map(|a| a.parse().expect("a number"));
    let cases: u64 = numbers.next().unwrap_or(10_000);
    let mut draws = Draws::new(numbers.next().unwrap_or(1));
    for i in 0..cases {
        let row: Row = match i % 20 {
            0..8 => single::case(&mut draws),
            8..11 => turns::part(&mut draws),
            11 => turns::table(&mut draws),
            12..17 => vehicle::case(&mut draws),
            17..19 => sums::case(&mut draws),
            _ => fits::case(&mut draws),
        };
        row.print();
    }
}
