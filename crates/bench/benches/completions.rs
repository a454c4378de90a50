//! Completions at five sizes, up to 2.7 × 10⁹ builds.

use std::hint::black_box;
use std::time::Duration;

use criterion::{BatchSize, BenchmarkId, Criterion, criterion_group, criterion_main};
use fitup_bench::{SIZES, builds, completed, yard};
use fitup_core::build::Build;
use fitup_core::fit::Desk;
use fitup_core::search::Searcher;

fn completions(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("completions");
    group.sample_size(10).warm_up_time(Duration::from_millis(500)).measurement_time(Duration::from_secs(2));
    for size in SIZES {
        let catalogue = yard(size);
        let name = size.map(|count| count.to_string()).join("x");
        group.bench_function(BenchmarkId::new("catalogue laid out", &name), |bencher| {
            bencher.iter_batched(|| catalogue.clone(), Desk::new, BatchSize::PerIteration);
        });
        let desk = Desk::new(catalogue);
        group.bench_function(BenchmarkId::new("first search", &name), |bencher| {
            let search = |mut searcher: Searcher<&Desk>| searcher.reachable(&Build::default());
            bencher.iter_batched(|| Searcher::new(&desk), search, BatchSize::PerIteration);
        });
        let mut searcher = Searcher::new(&desk);
        for (chosen, build) in builds(&completed(&desk)) {
            group.bench_function(BenchmarkId::new(chosen, &name), |bencher| {
                bencher.iter(|| searcher.reachable(black_box(&build)));
            });
        }
    }
    group.finish();
}

criterion_group!(benches, completions);
criterion_main!(benches);
