//! What is measured, on the board and on the host alike.
#![no_std]

pub mod gauge;
pub mod rivals;
pub mod signal;
