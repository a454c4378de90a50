//! Completions and a judgement in processor time, for a machine that others use at the same time (Linux).
//!
//! The kernel's count goes in steps of a few milliseconds, so that short searches are run often.

use std::hint::black_box;

use fitup_bench::{SIZES, builds, completed, yard};
use fitup_core::build::Build;
use fitup_core::fit::{Desk, judge};
use fitup_core::search::Searcher;

/// Processor time of this thread, milliseconds.
fn now() -> f64 {
    let told = std::fs::read_to_string("/proc/thread-self/schedstat").unwrap_or_default();
    told.split(' ').next().and_then(|first| first.parse::<f64>().ok()).unwrap_or_default() / 1e6
}

/// Processor time of one run, milliseconds; over 200 ms of them, and three at least.
fn each(mut run: impl FnMut()) -> f64 {
    let (start, mut runs) = (now(), 0);
    while now() - start < 200.0 || runs < 3 {
        run();
        runs += 1;
    }
    (now() - start) / f64::from(runs)
}

fn main() {
    for size in SIZES {
        let catalogue = yard(size);
        let start = now();
        let desk = Desk::new(catalogue);
        let laid_out = now() - start;
        let start = now();
        let mut searcher = Searcher::new(&desk);
        let found = searcher.reachable(&Build::default());
        println!("{size:?}: laid out in {laid_out:.0} ms, first search {:.0} ms", now() - start);
        let mut counts = [0; 4];
        for reach in found.implements.iter().flatten() {
            counts[reach.verdict as usize] += 1;
        }
        println!("  implements by the verdict they reach: {counts:?}");
        let complete = completed(&desk);
        println!("  {:<26} {:>9.4} ms", "one build judged", each(|| drop(black_box(judge(&desk, &complete)))));
        for (chosen, build) in builds(&complete) {
            println!("  {chosen:<26} {:>9.2} ms", each(|| drop(black_box(searcher.reachable(&build)))));
        }
    }
}
