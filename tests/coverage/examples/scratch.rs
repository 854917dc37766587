//! scratch
use plumbmark_coverage::{cases, row::Row, share::on_all_cores};
fn main() {
    let filter: Vec<String> = std::env::args().skip(1).collect();
    let c: Vec<_> = cases::all()
        .into_iter()
        .filter(|c| filter.iter().all(|f| c.key().contains(f.as_str())))
        .collect();
    for r in on_all_cores(&c, Row::of) {
        println!("{}", r.line());
    }
}
