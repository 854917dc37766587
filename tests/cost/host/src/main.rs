//! Prints the table: `cost-host <file of the board's lines> <criterion's folder>`.

mod figures;
mod stream;

use cost_items::rivals::{Attitude, Bare, BareMean, Fusion, Madgwick};
use cost_items::signal::{LIVE_HZ, WINDOW};
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
            gives: "three angles with U and its parts, verdicts, advice; refuses movement and tremor",
            lacks: "heading; an angle while moving",
            errors: [false, true].map(|rounded| stream.of_plumbmark(rounded)),
        },
        rival::<BareMean>(
            &stream,
            [
                "nalgebra + libm, mean of 60",
                "roll and pitch, noise averaged",
                "uncertainty, verdict, stillness, rounding",
            ],
        ),
        rival::<Bare>(
            &stream,
            [
                "nalgebra + libm, newest sample",
                "roll and pitch",
                "uncertainty, verdict, stillness, rounding, averaging",
            ],
        ),
        rival::<Madgwick>(
            &stream,
            [
                "ahrs (Madgwick)",
                "attitude in motion, given a gyroscope",
                "uncertainty, verdict, stillness, rounding; rest without waiting",
            ],
        ),
        rival::<Fusion>(
            &stream,
            [
                "fusion-ahrs",
                "attitude in motion, given a gyroscope; gyroscope bias",
                "uncertainty, verdict, stillness, rounding; rest without waiting",
            ],
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
    let live = format!("and {LIVE_HZ} live answers a second");
    for (name, key) in [
        ("Cortex-M0, instructions: one sample", "sample"),
        ("one answer (three verdicts; else roll and pitch)", "answer"),
        ("a sample, with one answer in 60", "amortised"),
        (&live, "amortised and live"),
        ("state, bytes", "bytes"),
    ] {
        row(name, &|c| whole(figures.board(c.key, key)));
    }
    row("host, ns: one sample", &|c| {
        format!("{:.1}", figures.host_ns(c.key, "window") / WINDOW as f64)
    });
    row("one answer", &|c| whole(figures.host_ns(c.key, "answer")));
    for (s, stream) in ["as recorded", "rounded to 0.1 m/s²"]
        .into_iter()
        .enumerate()
    {
        for (r, rest) in ["from 1 s of rest", "from 10 s"].into_iter().enumerate() {
            row(&format!("error {stream}, {rest}: rms (largest)"), &|c| {
                let errors = &c.errors[s][r];
                format!("{:.2}° ({:.2}°)", errors.rms_deg, errors.largest_deg)
            });
        }
    }
    row("gives", &|c| c.gives.to_owned());
    row("does not give", &|c| c.lacks.to_owned());
}
