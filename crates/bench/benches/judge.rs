//! One build with all its findings and figures.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use fitup_bench::{SIZES, completed, yard};
use fitup_core::fit::{Desk, judge};

fn whole(criterion: &mut Criterion) {
    let desk = Desk::new(yard(SIZES[4]));
    let build = completed(&desk);
    criterion.bench_function("judge a complete build", |bencher| {
        bencher.iter(|| judge(&desk, black_box(&build)));
    });
}

criterion_group!(benches, whole);
criterion_main!(benches);
