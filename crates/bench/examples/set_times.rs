//! The best complete sets in processor time, at five sizes (Linux).

use std::hint::black_box;

use fitup_bench::{SIZES, builds, completed, yard};
use fitup_core::fit::Desk;
use fitup_core::search::{Searcher, SetOrder};

/// Processor time of this thread, milliseconds.
fn now() -> f64 {
    let told = std::fs::read_to_string("/proc/thread-self/schedstat").unwrap_or_default();
    told.split(' ').next().and_then(|first| first.parse::<f64>().ok()).unwrap_or_default() / 1e6
}

fn main() {
    for size in SIZES {
        let desk = Desk::new(yard(size));
        let mut searcher = Searcher::new(&desk);
        println!("{size:?}");
        for (chosen, build) in builds(&completed(&desk)) {
            for order in [SetOrder::Price, SetOrder::OnHand, SetOrder::Length] {
                let start = now();
                let sets = black_box(searcher.sets(&build, order));
                let (first, found) = (now() - start, sets.found.len());
                let start = now();
                black_box(searcher.sets(&build, order));
                let (again, exact, by) = (now() - start, sets.is_exact, order.word());
                println!(
                    "  {chosen:<26} by {by:<8} {first:>9.1} ms, again {again:>9.1} ms, {found} sets, exact: {exact}"
                );
            }
        }
    }
}
