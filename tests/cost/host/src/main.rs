//! Prints the table: `cost-host <file of the board's lines> <criterion's folder>`.

mod figures;
mod stream;

use cost_items::rivals::{Attitude, Bare, BareMean, Fusion, Madgwick};
use cost_items::signal::{BATCH_HZ, WINDOW};
use figures::Figures;
use stream::{Errors, Stream};

/// One approach.
struct Column {
    key: &'static str,
    title: &'static str,
    gives: &'static str,
    lacks: &'static str,
    /// On the stream as recorded and as a browser rounds it, each from 1 s and from 10 s of rest.
    errors: [[Errors; 2]; 2],
}

fn rival<A: Attitude>(stream: &Stream, [title, gives, lacks]: [&'static str; 3]) -> Column {
    Column {
        key: A::NAME,
        title,
        gives,
        lacks,
        errors: [false, true].map(|rounded| stream.of::<A>(rounded)),
    }
}

fn columns() -> [Column; 5] {
    let stream = Stream::open();
    [
        Column {
            key: "plumbmark",
            title: "Plumbmark",
            gives: "angles, U and its parts, verdicts, advice; refuses movement and tremor",
            lacks: "heading; an angle while moving",
            errors: [false, true].map(|rounded| stream.of_plumbmark(rounded)),
        },
        rival::<BareMean>(
            &stream,
            [
                "nalgebra + libm, mean of 60",
                "roll and pitch, noise averaged",
                "U, verdict, stillness, what rounding hides",
            ],
        ),
        rival::<Bare>(
            &stream,
            [
                "the same, newest sample",
                "roll and pitch",
                "as left; averaging",
            ],
        ),
        rival::<Madgwick>(
            &stream,
            [
                "ahrs (Madgwick)",
                "attitude in motion, given a gyroscope",
                "as left; needs seconds of rest",
            ],
        ),
        rival::<Fusion>(
            &stream,
            ["fusion-ahrs", "the same; gyroscope bias", "as left"],
        ),
    ]
}

/// 12345.6 as "12 346".
fn whole(number: f64) -> String {
    let digits = format!("{number:.0}");
    let mut grouped = String::new();
    for (i, digit) in digits.chars().enumerate() {
        if i > 0 && (digits.len() - i) % 3 == 0 {
            grouped.push(' ');
        }
        grouped.push(digit);
    }
    grouped
}

fn main() {
    let mut args = std::env::args().skip(1);
    let mut next = || args.next().expect("two arguments");
    let figures = Figures::open(&next(), next().into());
    let columns = columns();
    let row = |name: &str, cell: &dyn Fn(&Column) -> String| {
        let cells: Vec<_> = columns.iter().map(cell).collect();
        println!("| {name} | {} |", cells.join(" | "));
    };
    row("", &|c| c.title.to_owned());
    println!("|{}", " --- |".repeat(columns.len() + 1));
    let still = format!("stillness, at each of {BATCH_HZ} batches a second");
    let full = format!("the same, {BATCH_HZ} live answers in full");
    for (name, key) in [
        ("instructions, Cortex-M0: one sample", "sample"),
        (&still, "still"),
        ("one live answer: two lights; roll and pitch", "live"),
        ("one capture: three verdicts; roll and pitch", "capture"),
        ("a sample's share of a second with all of these", "share"),
        ("the same, captured only", "share without live"),
        (&full, "share with full live"),
        ("state, bytes", "bytes"),
    ] {
        row(name, &|c| whole(figures.board(c.key, key)));
    }
    row("host, ns: one sample", &|c| {
        format!("{:.1}", figures.host_ns(c.key, "window") / WINDOW as f64)
    });
    row("one capture", &|c| whole(figures.host_ns(c.key, "answer")));
    for (s, stream) in ["as recorded", "rounded"].into_iter().enumerate() {
        for (r, rest) in ["after 1 s of rest", "after 10 s"].into_iter().enumerate() {
            row(&format!("error, {stream}, {rest}"), &|c| {
                let errors = &c.errors[s][r];
                format!("{:.2}° ({:.2}°)", errors.rms_deg, errors.largest_deg)
            });
        }
    }
    row("gives", &|c| c.gives.to_owned());
    row("does not give", &|c| c.lacks.to_owned());
}
