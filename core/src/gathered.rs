//! Collecting into a vector of fixed size without a panic: `collect()` has one where it is full.

use heapless::Vec;

/// The items, as many as there is room for; callers' lists fit by their types.
pub(crate) fn gathered<T, const N: usize>(items: impl Iterator<Item = T>) -> Vec<T, N> {
    let mut all = Vec::new();
    for item in items.take(N) {
        // Room is left for N, so nothing is lost here.
        let _ = all.push(item);
    }
    all
}
