//! What the fuzz targets share: inputs that are often plausible and sometimes anything, and what
//! must hold of a reading and of a verdict.

pub mod any;
pub mod sound;
