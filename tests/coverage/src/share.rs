//! Shares, their bounds, and work shared out to threads.

use statrs::distribution::{Beta, ContinuousCDF};
use std::sync::atomic::{AtomicUsize, Ordering};

/// Upper 99 % bound of the share that gave `hits` in `n`: Clopper and Pearson (1934), one-sided.
#[must_use]
pub fn upper_99(hits: usize, n: usize) -> f64 {
    if hits >= n {
        return 1.0;
    }
    let beta = Beta::new(hits as f64 + 1.0, (n - hits) as f64).expect("positive shapes");
    beta.inverse_cdf(0.99)
}

/// `hits` of `n` in percent; NaN of nothing.
#[must_use]
pub fn percent(hits: usize, n: usize) -> f64 {
    100.0 * hits as f64 / n as f64
}

/// `work` on every item, on all cores, results in order. Nothing depends on the threads' order.
pub fn on_all_cores<T: Sync, R: Send>(items: &[T], work: impl Fn(&T) -> R + Sync) -> Vec<R> {
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    let next = AtomicUsize::new(0);
    let mut done: Vec<(usize, R)> = std::thread::scope(|scope| {
        let worker = || {
            let mut mine = Vec::new();
            loop {
                let at = next.fetch_add(1, Ordering::Relaxed);
                let Some(item) = items.get(at) else {
                    return mine;
                };
                mine.push((at, work(item)));
            }
        };
        let workers: Vec<_> = (0..threads).map(|_| scope.spawn(worker)).collect();
        let joined = workers
            .into_iter()
            .flat_map(|w| w.join().expect("no panic"));
        joined.collect()
    });
    done.sort_by_key(|(at, _)| *at);
    done.into_iter().map(|(_, result)| result).collect()
}
