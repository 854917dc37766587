//! One line of the table.

use plumbmark::budget::Source;
use plumbmark::check::Outcome;
use plumbmark::decision::Verdict;

/// Cells of one case; numbers in full precision.
pub struct Row(String);

impl Row {
    /// A case of `kind`.
    pub fn new(kind: &str) -> Self {
        Self(kind.to_owned())
    }

    /// Adds a cell of numbers.
    pub fn numbers(&mut self, name: &str, numbers: &[f64]) {
        let text: Vec<String> = numbers.iter().map(f64::to_string).collect();
        self.word(name, &text.join(" "));
    }

    /// The same for single precision.
    pub fn singles(&mut self, name: &str, numbers: &[f32]) {
        let wide: Vec<f64> = numbers.iter().map(|&v| f64::from(v)).collect();
        self.numbers(name, &wide);
    }

    /// Adds a cell of text.
    pub fn word(&mut self, name: &str, word: &str) {
        self.0 += &format!(",{name}={word}");
    }

    /// Adds what core made of a check. A roll that is lost leaves `value` out.
    pub fn outcome(&mut self, outcome: &Outcome) {
        self.singles("core_budget", &Source::ALL.map(|s| outcome.budget.of(s)));
        if let Some(m) = outcome.measured {
            self.singles("core_value", &[m.value_deg]);
            self.singles("core_combined", &[m.combined_deg]);
            self.singles("core_rectangle", &[m.rectangle_deg]);
            self.singles("core_u", &[m.u_deg]);
        }
        let verdict = match outcome.verdict {
            Verdict::Within => "within",
            Verdict::Beyond => "beyond",
            Verdict::NotProven => "not_proven",
            Verdict::None => "none",
        };
        self.word("core_verdict", verdict);
    }

    /// Writes the line.
    pub fn print(&self) {
        println!("{}", self.0);
    }
}
