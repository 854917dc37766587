//! One sheet worked out: inputs checked, results with uncertainties, verdicts.

use super::bound::{Judged, judge};
use super::form::{Checked, Form};
use super::kind::{Kind, Kinds, Problem, Refusal, Unit};
use super::propagate::{MOST_IN, MOST_OUT, propagate};
use super::sheets::Sheet;

/// Coverage factor for 95 %, two-sided. A normal has 1.96, a rectangle alone 1.65.
pub const COVERAGE_FACTOR: f64 = 2.0;

/// A result with its uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Given {
    /// Best value; not a number where the sheet had nothing to tell it from.
    pub value: f64,
    /// Expanded uncertainty, two-sided 95 %; nothing for a place in a list.
    pub u: f64,
    /// Unit of both.
    pub unit: Unit,
    /// Place of the input that adds most to it.
    pub dominant: Option<usize>,
}

/// A sheet worked out.
#[derive(Debug, Clone)]
pub struct Worked {
    form: &'static Form,
    values: [f64; MOST_OUT],
    variances: [f64; MOST_OUT],
    largest: [(f64, usize); MOST_OUT],
    rows: usize,
    given: usize,
}

impl Sheet {
    /// Works the sheet out. `x` are the inputs, then the rows one after the other; `half` are their
    /// half-widths: the true number lies within `x ± half` (a rectangle, standard uncertainty
    /// half/√3, JCGM 100 §4.3.7); not a number stands for the assumed one.
    ///
    /// # Errors
    /// The first number that is refused, and why.
    pub fn work(self, x: &[f64], half: &[f64]) -> Result<Worked, Refusal> {
        self.contributions(x, half, &mut |_, _, _| {})
    }

    /// The same, and tells `found` the place of an input, that of a result, and what the one adds to
    /// the uncertainty of the other, as a standard uncertainty.
    ///
    /// # Errors
    /// As [`Self::work`].
    pub fn contributions(
        self,
        x: &[f64],
        half: &[f64],
        found: &mut dyn FnMut(usize, usize, f64),
    ) -> Result<Worked, Refusal> {
        let form = self.form();
        let rows = form.rows_in(x.len())?;
        let given = form.outputs.len() + rows * form.row_outputs.len();
        if x.len() > MOST_IN || given > MOST_OUT {
            return Err(Refusal::at(MOST_IN.min(x.len()), Problem::TooMany));
        }
        let mut u = [0.0; MOST_IN];
        for (place, (u, &x)) in u.iter_mut().zip(x).enumerate() {
            let kind = form.kind(place);
            kind.check(x).map_err(|p| Refusal::at(place, p))?;
            let told = half.get(place).copied().unwrap_or(f64::NAN);
            *u = standard(kind, x, told).ok_or(Refusal::at(place, Problem::HalfWidth))?;
        }
        let mut worked = Worked {
            form,
            values: [f64::NAN; MOST_OUT],
            variances: [0.0; MOST_OUT],
            largest: [(0.0, usize::MAX); MOST_OUT],
            rows,
            given,
        };
        (form.function)(x, &mut worked.values)?;
        let base = worked.values;
        propagate(
            form.function,
            form.moved,
            x,
            &u,
            &base,
            &mut |input, output, change| {
                worked.count(input, output, change);
                found(input, output, change);
            },
        );
        worked.unbound_beyond_formula();
        Ok(worked)
    }
}

/// Standard uncertainty of an input; `None` where its half-width can't be.
fn standard(kind: &Kind, x: f64, told: f64) -> Option<f64> {
    if x.is_nan() || matches!(kind.unit, Unit::Choice | Unit::Count) {
        return Some(0.0);
    }
    let half = if told.is_nan() { kind.assumed(x) } else { told };
    (half >= 0.0 && half.is_finite()).then_some(half / libm::sqrt(3.0))
}

impl Worked {
    fn count(&mut self, input: usize, output: usize, change: f64) {
        if let Some(sum) = self.variances.get_mut(output) {
            *sum += change * change;
        }
        if let Some(largest) = self.largest.get_mut(output)
            && change > largest.0
        {
            *largest = (change, input);
        }
    }

    /// Where a result that the formulas depend on may lie outside of where they hold, the others
    /// can be anything.
    fn unbound_beyond_formula(&mut self) {
        let leaves = |place| {
            let kind = self.output(place);
            self.result(place)
                .is_some_and(|g| g.value - g.u < kind.low || g.value + g.u > kind.high)
        };
        if !(0..self.given).any(leaves) {
            return;
        }
        for place in 0..self.given {
            let kind = self.output(place);
            if let Some(variance) = self.variances.get_mut(place)
                && kind.low.is_infinite()
                && kind.high.is_infinite()
            {
                *variance = f64::INFINITY;
            }
        }
    }

    /// The kind of the result at `place`.
    fn output(&self, place: usize) -> &'static Kind {
        at(self.form.outputs, self.form.row_outputs, place)
    }

    /// The result at `place`, those of the rows last.
    #[must_use]
    pub fn result(&self, place: usize) -> Option<Given> {
        if place >= self.given {
            return None;
        }
        let (change, input) = *self.largest.get(place)?;
        let unit = self.output(place).unit;
        // A place in a list has no interval.
        let listed = unit == Unit::Choice;
        let variance = *self.variances.get(place)?;
        Some(Given {
            value: *self.values.get(place)?,
            u: COVERAGE_FACTOR * libm::sqrt(if listed { 0.0 } else { variance }),
            unit,
            dominant: (change > 0.0).then_some(input),
        })
    }

    /// The check at `place`, those of the rows last.
    #[must_use]
    pub fn check(&self, place: usize) -> Option<Checked> {
        self.form.check(place, self.rows)
    }

    /// Holds a result against its limit: lowest and highest value permitted, not a number where
    /// there is none. A limit that needs no document ([`super::bound::BoundId::of_itself`]) stands.
    #[must_use]
    pub fn judged(&self, check: &Checked, low: f64, high: f64) -> Option<Judged> {
        let given = self.result(check.output)?;
        let (low, high) = check.bound.of_itself().unwrap_or((low, high));
        Some(judge(&given, low, high, check.only_beyond))
    }
}

impl Form {
    /// Number of rows in so many numbers.
    fn rows_in(&self, numbers: usize) -> Result<usize, Refusal> {
        let wrong = Refusal::at(numbers, Problem::Missing);
        let rest = numbers.checked_sub(self.inputs.len()).ok_or(wrong)?;
        if self.row.is_empty() {
            return if rest == 0 { Ok(0) } else { Err(wrong) };
        }
        if rest % self.row.len() == 0 {
            Ok(rest / self.row.len())
        } else {
            Err(wrong)
        }
    }

    /// The kind of the input at `place`.
    fn kind(&self, place: usize) -> &'static Kind {
        at(self.inputs, self.row, place)
    }

    /// The check at `place` of a sheet with `rows` rows, those of the rows last: place of the result,
    /// and what it is held against.
    #[must_use]
    pub fn check(&self, place: usize, rows: usize) -> Option<Checked> {
        let Some(past) = place.checked_sub(self.checks.len()) else {
            return self.checks.get(place).copied();
        };
        let row = past.checked_div(self.row_checks.len())?;
        let check = *self
            .row_checks
            .get(past.checked_rem(self.row_checks.len())?)?;
        (row < rows).then_some(Checked {
            output: self.outputs.len() + row * self.row_outputs.len() + check.output,
            ..check
        })
    }
}

/// The kind at `place` in a list that is followed by rows.
fn at(first: Kinds, row: Kinds, place: usize) -> &'static Kind {
    const NONE: &Kind = &Kind::new(Unit::Ratio, 0.0, 0.0);
    let in_rows = || row.get(place.checked_sub(first.len())?.checked_rem(row.len())?);
    let kind = first.get(place).or_else(in_rows);
    kind.copied().unwrap_or(NONE)
}
