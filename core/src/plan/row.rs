//! A row of numbers with names: written once, read from a slice, written to a slice. So formulas
//! see fields with units in their names, and a border sees numbers in order.

use super::kind::Kinds;

/// A row of numbers.
pub trait Row: Sized {
    /// What each number is, in order.
    const KINDS: Kinds;
    /// What each number is called, in order.
    const NAMES: &'static [&'static str];
    /// Takes the numbers in order; none is a number where there are too few.
    fn read(x: &[f64]) -> Self;
    /// Puts the numbers in order, where there is room for all.
    fn write(&self, to: &mut [f64]);
}

/// Declares a struct of f64 fields and its [`Row`].
macro_rules! row {
    ($(#[$doc:meta])* $name:ident { $($(#[$field_doc:meta])* $field:ident: $kind:expr),* $(,)? }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq)]
        pub struct $name {
            $($(#[$field_doc])* pub $field: f64,)*
        }

        impl $crate::plan::row::Row for $name {
            const KINDS: $crate::plan::kind::Kinds = &[$(&$kind),*];
            const NAMES: &'static [&'static str] = &[$(stringify!($field)),*];

            fn read(x: &[f64]) -> Self {
                // A choice between two places, and no more code for each field than a load.
                const NONE: &[f64; $name::KINDS.len()] = &[f64::NAN; $name::KINDS.len()];
                let [$($field,)*] = *x.first_chunk().unwrap_or(NONE);
                Self { $($field,)* }
            }

            fn write(&self, to: &mut [f64]) {
                if let [$($field,)* ..] = to {
                    $(*$field = self.$field;)*
                }
            }
        }
    };
}
pub(crate) use row;
