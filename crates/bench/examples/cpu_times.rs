//! Completions in processor time, for a machine that others use at the same time (Linux).
//!
//! The kernel's count goes in steps of a few milliseconds, so that short searches are run often.

use std::hint::black_box;

use fitup_bench::{SIZES, builds, completed, yard};
use fitup_core::build::Build;
use fitup_core::fit::Desk;
use fitup_core::search::reachable;

/// Processor time of this thread, milliseconds.
fn now() -> f64 {
    let told = std::fs::read_to_string("/proc/thread-self/schedstat").unwrap_or_default();
    told.split(' ').next().and_then(|first| first.parse::<f64>().ok()).unwrap_or_default() / 1e6
}

fn main() {
    for size in SIZES {
        let catalogue = yard(size);
        let start = now();
        let desk = Desk::new(catalogue);
        let laid_out = now() - start;
        let start = now();
        let found = reachable(&desk, &Build::default());
        println!("{size:?}: laid out in {laid_out:.0} ms, first search {:.0} ms", now() - start);
        let mut counts = [0; 4];
        for reach in found.implements.iter().flatten() {
            counts[reach.verdict as usize] += 1;
        }
        println!("  implements by the verdict they reach: {counts:?}");
        for (chosen, build) in builds(&completed(&desk)) {
            let start = now();
            let mut runs = 0;
            while now() - start < 200.0 || runs < 3 {
                black_box(reachable(&desk, &build));
                runs += 1;
            }
            println!("  {chosen:<26} {:>9.2} ms", (now() - start) / f64::from(runs));
        }
    }
}
