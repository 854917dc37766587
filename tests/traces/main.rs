//! Runs recorded traces through core and prints coverage, U and error by pose.

use plumbmark_tests::traces::{Mount, Options, aligned, csv, study};
use std::path::PathBuf;
use std::process::ExitCode;

const USAGE: &str = "traces FOLDER [--remove-mount] [--round] [--turns N] [--csv]
  FOLDER          a folder of traces, or a single one: tests/traces/FORMAT.md says how they look
  --remove-mount  estimates one rotation a session from the samples at rest, and removes it
  --round         rounds to 0.1 m/s2 and 0.1 degrees first, as browsers do
  --turns N       runs N times in frames turned at random, to meet other phases of the rounding
  --csv           prints rows for a program instead of columns for the eye";

struct Asked {
    path: PathBuf,
    options: Options,
    csv: bool,
}

fn asked(mut words: impl Iterator<Item = String>) -> Result<Asked, String> {
    let mut options = Options::default();
    let mut csv = false;
    let mut path = None;
    while let Some(word) = words.next() {
        match word.as_str() {
            "--remove-mount" => options.remove_mount = true,
            "--round" => options.round = true,
            "--csv" => csv = true,
            "--turns" => {
                let n = words.next().and_then(|n| n.parse().ok()).filter(|n| *n > 0);
                options.turns = n.ok_or("--turns needs a whole number above 0")?;
            }
            flag if flag.starts_with('-') => return Err(format!("{flag} is not known")),
            _ if path.is_some() => return Err(format!("one folder at a time, not {word} too")),
            _ => path = Some(PathBuf::from(word)),
        }
    }
    let path = path.ok_or("which folder?")?;
    Ok(Asked { path, options, csv })
}

/// What was removed from a session, in words.
fn said(session: &str, mount: &Mount) -> String {
    let three = |v: [f64; 3]| v.map(|c| format!("{c:.3}")).join(", ");
    let turn = three(mount.turn.map(f64::to_degrees));
    let left_out = mount.left_out.map_or_else(String::new, |d| {
        format!("; all poses lie near one direction, so that the part about ({}) can't be told and is left out", three(d))
    });
    format!("session {session}: mount rotation ({turn})° removed{left_out}")
}

fn main() -> ExitCode {
    let asked = match asked(std::env::args().skip(1)) {
        Ok(asked) => asked,
        Err(why) => {
            eprintln!("{why}\n{USAGE}");
            return ExitCode::from(2);
        }
    };
    let report = study(&asked.path, &asked.options);
    let mounts = report.mounts.iter().map(|(s, m)| said(s, m));
    if asked.csv {
        mounts.for_each(|line| eprintln!("{line}"));
        print!("{}", csv(&report.rows));
    } else {
        mounts.for_each(|line| println!("{line}"));
        print!("{}", aligned(&report.rows));
    }
    for fault in &report.faults {
        eprintln!("{fault}");
    }
    ExitCode::from(u8::from(!report.faults.is_empty()))
}
