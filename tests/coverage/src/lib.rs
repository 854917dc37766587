//! The coverage study: phones of the simulator in, core's intervals and verdicts out, against the
//! truth that only the simulator knows. `sh tests/coverage/run.sh` writes the tables and the plot.

pub mod case;
pub mod cases;
pub mod gain;
pub mod inputs;
pub mod measure;
pub mod plot;
pub mod row;
pub mod share;
pub mod stillness;
pub mod table;
