//! Loading a catalogue: text to the core's catalogue, every check made.

use std::hint::black_box;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use fitup_bench::catalogue_text;

fn load(criterion: &mut Criterion) {
    let seed = serde_json::from_str(include_str!("../../catalogue/tests/minimal.json")).expect("the example is JSON");
    let mut group = criterion.benchmark_group("catalogue load");
    group.sample_size(20);
    for megabytes in [1, 5] {
        let text = catalogue_text(&seed, megabytes << 20);
        assert!(fitup_catalogue::read(&text).catalogue.is_some(), "the synthetic catalogue is good");
        group.throughput(Throughput::Bytes(text.len() as u64));
        group.bench_function(format!("{megabytes} MB good"), |bencher| {
            bencher.iter(|| fitup_catalogue::read(black_box(&text)));
        });
        let broken = text.replace("\"mass\":96", "\"mass\":-96");
        group.bench_function(format!("{megabytes} MB with problems"), |bencher| {
            bencher.iter(|| fitup_catalogue::read(black_box(&broken)));
        });
    }
    group.finish();
}

criterion_group!(benches, load);
criterion_main!(benches);
