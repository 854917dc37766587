//! Answers sheets read from standard input, a line each: `name;x0,x1,...;half0,half1,...`, "nan" for
//! what was not entered or is assumed. Writes `ok;values;us` or `refused;place;problem`.

use plumbmark::plan::Sheet;
use plumbmark::plan::kind::Problem;
use std::io::{BufRead, Write};

fn main() {
    let mut out = std::io::BufWriter::new(std::io::stdout().lock());
    for line in std::io::stdin().lock().lines() {
        let answer = answer(&line.expect("text"));
        writeln!(out, "{answer}").expect("a reader");
    }
}

fn answer(line: &str) -> String {
    let mut fields = line.split(';');
    let name = fields.next().unwrap_or_default();
    let mut numbers = || -> Vec<f64> {
        let field = fields.next().unwrap_or_default();
        let parts = field.split(',').filter(|t| !t.is_empty());
        parts.map(|t| t.parse().expect("a number")).collect()
    };
    let (x, half) = (numbers(), numbers());
    let sheet = Sheet::ALL.iter().find(|s| s.names().sheet == name);
    match sheet.expect("a sheet's name").work(&x, &half) {
        Ok(worked) => {
            let text = |number: fn(&plumbmark::plan::work::Given) -> f64| {
                let all = (0..).map_while(|place| worked.result(place));
                let each = all.map(|g| number(&g).to_string());
                each.collect::<Vec<_>>().join(",")
            };
            format!("ok;{};{}", text(|g| g.value), text(|g| g.u))
        }
        Err(refusal) => {
            let (code, _) = refusal.problem.code();
            let name = Problem::NAMES[usize::from(code)];
            format!("refused;{};{name}", refusal.place)
        }
    }
}
