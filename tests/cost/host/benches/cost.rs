//! The same work on the host: `cargo bench`.

use cost_items::gauge::Gauge;
use cost_items::rivals::{Attitude, Bare, BareMean, Fusion, Madgwick};
use cost_items::signal::{force_m_s2, rest};
use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use std::hint::black_box;

fn plumbmark(c: &mut Criterion) {
    let signal = rest();
    let mut gauge = Gauge::new();
    let mut group = c.benchmark_group("plumbmark");
    group.throughput(Throughput::Elements(signal.len() as u64));
    group.bench_function("window", |b| {
        b.iter(|| {
            for counts in &signal {
                gauge.push(black_box(*counts)).expect("at rest");
            }
        });
    });
    group.throughput(Throughput::Elements(1));
    group.bench_function("answer", |b| {
        b.iter(|| black_box(&gauge).verdicts::<3>());
    });
}

fn rival<A: Attitude>(c: &mut Criterion) {
    let signal = rest();
    let mut rival = A::default();
    let mut group = c.benchmark_group(A::NAME);
    group.throughput(Throughput::Elements(signal.len() as u64));
    group.bench_function("window", |b| {
        b.iter(|| {
            for counts in &signal {
                black_box(&mut rival).update(force_m_s2(black_box(*counts)));
            }
        });
    });
    group.throughput(Throughput::Elements(1));
    group.bench_function("answer", |b| b.iter(|| black_box(&rival).angles()));
}

criterion_group!(
    cost,
    plumbmark,
    rival::<BareMean>,
    rival::<Bare>,
    rival::<Madgwick>,
    rival::<Fusion>
);
criterion_main!(cost);
