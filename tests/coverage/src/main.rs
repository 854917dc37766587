//! Runs the whole study and writes its tables and its plot into `tests/coverage`.

use plumbmark_coverage::gain;
use plumbmark_coverage::inputs::{folder, hash};
use plumbmark_coverage::row::{self, Row};
use plumbmark_coverage::share::on_all_cores;
use plumbmark_coverage::table::write;
use plumbmark_coverage::{cases, plot, stillness};
use std::error::Error;
use std::time::Instant;

fn main() -> Result<(), Box<dyn Error>> {
    let start = Instant::now();
    // Before the first draw: whoever edits a file meanwhile must run again.
    let inputs = hash();
    let rows = on_all_cores(&cases::all(), Row::of);
    let lines: Vec<String> = rows.iter().map(Row::line).collect();
    write("table.csv", &inputs, row::COLUMNS, &lines)?;
    plot::draw(&folder().join("coverage.svg"), &rows)?;
    write(
        "gain.csv",
        &inputs,
        gain::COLUMNS,
        &on_all_cores(&gain::all(), gain::line),
    )?;
    let lines = on_all_cores(&stillness::all(), stillness::line);
    write("stillness.csv", &inputs, stillness::COLUMNS, &lines)?;
    println!(
        "{} rows in {:.0} s",
        rows.len(),
        start.elapsed().as_secs_f64()
    );
    Ok(())
}
