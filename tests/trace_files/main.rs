//! Trace files made here: what the reader, the study and the command `traces` do with them.

mod columns;
mod faults;
mod made;
mod mounts;
