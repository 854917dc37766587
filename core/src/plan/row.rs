//! A row of numbers with names: written once, read from a slice, written to a slice. So formulas
//! see fields with units in their names, and a border sees numbers in order.

use super::kind::Kind;

/// A row of numbers.
pub trait Row: Sized {
    /// What each number is, in order.
    const KINDS: &'static [Kind];
    /// What each number is called, in order.
    const NAMES: &'static [&'static str];
    /// Takes the numbers in order; what is missing is not a number.
    fn read(x: &[f64]) -> Self;
    /// Puts the numbers in order.
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
            const KINDS: &'static [$crate::plan::kind::Kind] = &[$($kind),*];
            const NAMES: &'static [&'static str] = &[$(stringify!($field)),*];

            fn read(x: &[f64]) -> Self {
                let mut numbers = x.iter().copied();
                Self { $($field: numbers.next().unwrap_or(f64::NAN),)* }
            }

            fn write(&self, to: &mut [f64]) {
                for (to, from) in to.iter_mut().zip([$(self.$field),*]) {
                    *to = from;
                }
            }
        }
    };
}
pub(crate) use row;
