//! One build with all its findings and figures, and one drive over a ramp.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use fitup_bench::{SIZES, completed, ramp_roll_of_a_long_underside, yard};
use fitup_core::fit::{Desk, judge};

fn whole(criterion: &mut Criterion) {
    let desk = Desk::new(yard(SIZES[4]));
    let build = completed(&desk);
    criterion.bench_function("judge a complete build", |bencher| {
        bencher.iter(|| judge(&desk, black_box(&build)));
    });
    criterion.bench_function("ramp roll", |bencher| bencher.iter(ramp_roll_of_a_long_underside));
}

criterion_group!(benches, whole);
criterion_main!(benches);
