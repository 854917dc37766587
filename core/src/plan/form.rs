//! What a sheet is made of, and what its numbers are called.

use super::bound::BoundId;
use super::kind::Kinds;
use super::propagate::{Function, Moved};
use super::row::Row;

/// A result that is held against a limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Checked {
    /// Place of the result.
    pub output: usize,
    /// Its limit.
    pub bound: BoundId,
    /// Whether it is told by something that can break the limit but never keep it: a lower bound
    /// of what the limit is for.
    pub only_beyond: bool,
    /// Whether it is one of several ways to do it: what is chosen of them has a check of its own.
    pub alternative: bool,
    /// Whether it looks at a part alone, or with something that hardly sees: that it finds nothing
    /// says nothing.
    pub partial: bool,
}

impl Checked {
    /// A result that can be within and beyond.
    #[must_use]
    pub const fn new(output: usize, bound: BoundId) -> Self {
        Self {
            output,
            bound,
            only_beyond: false,
            alternative: false,
            partial: false,
        }
    }

    /// One that can break the limit but never keep it.
    #[must_use]
    pub const fn only_beyond(output: usize, bound: BoundId) -> Self {
        Self {
            only_beyond: true,
            ..Self::new(output, bound)
        }
    }

    /// One that can break the limit, and that finds nothing for want of looking.
    #[must_use]
    pub const fn partial(output: usize, bound: BoundId) -> Self {
        Self {
            partial: true,
            ..Self::only_beyond(output, bound)
        }
    }

    /// One of several ways to do it.
    #[must_use]
    pub const fn alternative(output: usize, bound: BoundId) -> Self {
        Self {
            alternative: true,
            ..Self::new(output, bound)
        }
    }
}

/// What a sheet is made of. A sheet without rows has empty lists for them.
#[derive(Debug, Clone, Copy)]
pub struct Form {
    /// Its inputs.
    pub inputs: Kinds,
    /// The inputs of each row that follows.
    pub row: Kinds,
    /// Its results.
    pub outputs: Kinds,
    /// The results of each row, after those.
    pub row_outputs: Kinds,
    /// Which results are held against which limit.
    pub checks: &'static [Checked],
    /// Which results of each row are, by their place in the row.
    pub row_checks: &'static [Checked],
    /// The calculation: inputs and rows in order to results in order.
    pub function: Function,
    /// A quicker one when a single number was moved, where there is one.
    pub moved: Option<Moved>,
}

/// What the numbers of a sheet are called, in the same order as its [`Form`].
#[derive(Debug, Clone, Copy)]
pub struct Names {
    /// The sheet.
    pub sheet: &'static str,
    /// Its inputs.
    pub inputs: &'static [&'static str],
    /// The inputs of a row.
    pub row: &'static [&'static str],
    /// Its results.
    pub outputs: &'static [&'static str],
    /// The results of a row.
    pub row_outputs: &'static [&'static str],
}

/// A sheet as its file declares it.
#[derive(Debug, Clone, Copy)]
pub struct Declared {
    /// What it is made of.
    pub form: Form,
    /// What its numbers are called.
    pub names: Names,
}

impl Declared {
    /// A sheet of inputs and results.
    #[must_use]
    pub const fn new<In: Row, Out: Row>(name: &'static str, function: Function) -> Self {
        Self {
            form: Form {
                inputs: In::KINDS,
                row: &[],
                outputs: Out::KINDS,
                row_outputs: &[],
                checks: &[],
                row_checks: &[],
                function,
                moved: None,
            },
            names: Names {
                sheet: name,
                inputs: In::NAMES,
                row: &[],
                outputs: Out::NAMES,
                row_outputs: &[],
            },
        }
    }

    /// The same with rows after its inputs.
    #[must_use]
    pub const fn rows<Each: Row>(mut self) -> Self {
        self.form.row = Each::KINDS;
        self.names.row = Each::NAMES;
        self
    }

    /// The same, each row with results of its own.
    #[must_use]
    pub const fn row_results<EachOut: Row>(mut self) -> Self {
        self.form.row_outputs = EachOut::KINDS;
        self.names.row_outputs = EachOut::NAMES;
        self
    }

    /// The same with results that have limits.
    #[must_use]
    pub const fn checks(mut self, checks: &'static [Checked]) -> Self {
        self.form.checks = checks;
        self
    }

    /// The same with results of each row that have limits.
    #[must_use]
    pub const fn row_checks(mut self, checks: &'static [Checked]) -> Self {
        self.form.row_checks = checks;
        self
    }

    /// The same with a quicker function for when a single number was moved.
    #[must_use]
    pub const fn moved(mut self, moved: Moved) -> Self {
        self.form.moved = Some(moved);
        self
    }
}
