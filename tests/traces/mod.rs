//! Recorded traces with references, run through core and judged by pose. `FORMAT.md` documents the
//! files; the program `traces` runs a folder of them.

mod cells;
mod fault;
mod judged;
mod mount;
mod poses;
mod print;
mod read;
mod run;
mod study;

pub use fault::{Fault, Kind};
pub use judged::{Moving, ONSET_MS, Row, Summary};
pub use mount::{LARGEST_DEG, Mount, mount};
pub use poses::{Spot, spots};
pub use print::{aligned, csv};
pub use read::{Sample, Trace};
pub use run::{How, Reading, run};
pub use study::{Options, Report, study};
