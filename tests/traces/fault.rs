//! Why a trace can't be judged: where, what, and what to do.

use std::fmt;

/// What is wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// The file or folder can't be read as text.
    Unreadable,
    /// There is no line of names, or no row below it.
    Empty,
    /// A header key that the format does not know.
    UnknownKey,
    /// A header key with a value that the format does not know.
    BadKey,
    /// A column that must be there is not.
    MissingColumn,
    /// A column that the format does not know, or the same one twice.
    BadColumn,
    /// A row has more or fewer cells than there are names.
    Cells,
    /// A cell is no number, or one that can't stand there.
    BadNumber,
    /// Some cells of a vector or a pair of angles are empty, but not all.
    Incomplete,
    /// A row is older than the one before it.
    TimeBackward,
    /// No row has a reference.
    NoReference,
    /// The header says that a browser rounded, and the values say that none did.
    NotRounded,
    /// The values have been rounded already, and would be rounded once more in another frame.
    RoundedTwice,
    /// No rest sample has a reference, so that no mount rotation can be found.
    NoRest,
    /// The mount rotation is too large to be one.
    LargeMount,
    /// Core gave no reading that could be judged.
    NoReading,
}

impl Kind {
    /// The name in messages.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Unreadable => "unreadable",
            Self::Empty => "empty",
            Self::UnknownKey => "unknown_key",
            Self::BadKey => "bad_key",
            Self::MissingColumn => "missing_column",
            Self::BadColumn => "bad_column",
            Self::Cells => "cells",
            Self::BadNumber => "bad_number",
            Self::Incomplete => "incomplete",
            Self::TimeBackward => "time_backward",
            Self::NoReference => "no_reference",
            Self::NotRounded => "not_rounded",
            Self::RoundedTwice => "rounded_twice",
            Self::NoRest => "no_rest",
            Self::LargeMount => "large_mount",
            Self::NoReading => "no_reading",
        }
    }
}

/// One fault of one file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fault {
    /// The file, or the session that several files share.
    pub file: String,
    /// The line, from 1, where it lies in one.
    pub line: Option<usize>,
    /// The column's or the key's name, where it lies in one.
    pub column: Option<String>,
    /// What is wrong.
    pub kind: Kind,
    /// What was found and what to do.
    pub text: String,
}

impl Fault {
    /// A fault of a whole file.
    pub(super) fn of_file(file: &str, kind: Kind, text: impl Into<String>) -> Self {
        Self {
            file: file.to_owned(),
            line: None,
            column: None,
            kind,
            text: text.into(),
        }
    }

    /// The same fault in a line.
    #[must_use]
    pub(super) fn at_line(mut self, line: usize) -> Self {
        self.line = Some(line);
        self
    }

    /// The same fault in a column.
    #[must_use]
    pub(super) fn in_column(mut self, column: &str) -> Self {
        self.column = Some(column.to_owned());
        self
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.file)?;
        if let Some(line) = self.line {
            write!(f, ", line {line}")?;
        }
        if let Some(column) = &self.column {
            write!(f, ", {column}")?;
        }
        write!(f, ": {}: {}", self.kind.name(), self.text)
    }
}

impl std::error::Error for Fault {}
