//! What was measured before: the board's lines and criterion's files.

use std::collections::HashMap;
use std::path::PathBuf;

/// Figures by name.
pub struct Figures {
    board: HashMap<String, f64>,
    criterion: PathBuf,
}

impl Figures {
    /// From the file that the board's lines went to, and criterion's folder.
    #[must_use]
    pub fn open(board: &str, criterion: PathBuf) -> Self {
        let text = std::fs::read_to_string(board).unwrap_or_else(|e| panic!("{board}: {e}"));
        let line = |line: &str| {
            let (name, number) = line.split_once('\t').expect("name, tab, number");
            (name.to_owned(), number.parse().expect("a number"))
        };
        Self {
            board: text.lines().map(line).collect(),
            criterion,
        }
    }

    /// A figure of the board.
    #[must_use]
    pub fn board(&self, who: &str, what: &str) -> f64 {
        let name = format!("{who} {what}");
        *self
            .board
            .get(&name)
            .unwrap_or_else(|| panic!("the board did not print {name}"))
    }

    /// Criterion's median, ns.
    #[must_use]
    pub fn host_ns(&self, who: &str, what: &str) -> f64 {
        let path = self
            .criterion
            .join(who)
            .join(what)
            .join("new/estimates.json");
        let text =
            std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
        let json: serde_json::Value = serde_json::from_str(&text).expect("criterion's own format");
        json["median"]["point_estimate"]
            .as_f64()
            .expect("criterion's own format")
    }
}
