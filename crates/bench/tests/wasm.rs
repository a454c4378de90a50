//! The budgets that hold in wasm, timed in wasm. `cargo xtask bench --wasm` runs it.
#![cfg(target_arch = "wasm32")]

use std::hint::black_box;

use fitup_bench::{SIZES, builds, catalogue_text, completed, pace, ramp_roll_of_a_long_underside, yard};
use fitup_core::build::Build;
use fitup_core::fit::{Desk, judge};
use fitup_core::search::{Searcher, SetOrder};
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen_test::{console_log, wasm_bindgen_test};

#[wasm_bindgen]
extern "C" {
    #[wasm_bindgen(js_namespace = performance)]
    fn now() -> f64;
}

fn time(name: &str, run: impl FnMut()) {
    let pace = pace(now, run);
    console_log!(
        "{name:<60} median {:>9.3} ms   p95 {:>9.3} ms   least {:>9.3} ms   {} samples",
        pace.median,
        pace.p95,
        pace.least,
        pace.samples
    );
}

#[wasm_bindgen_test]
fn times() {
    for size in SIZES {
        let name = size.map(|count| count.to_string()).join("x");
        let catalogue = yard(size);
        let start = now();
        let desk = Desk::new(catalogue);
        let laid_out = now() - start;
        let start = now();
        let mut searcher = Searcher::new(&desk);
        black_box(searcher.reachable(&Build::default()));
        console_log!("{name}: laid out in {laid_out:.1} ms, first search {:.1} ms (once each)", now() - start);
        let complete = completed(&desk);
        for (chosen, build) in builds(&complete) {
            time(&format!("completions {name}, {chosen}"), || {
                black_box(searcher.reachable(&build));
            });
        }
        let start = now();
        let sets = searcher.sets(&Build::default(), SetOrder::Price);
        console_log!("sets {name}, nothing chosen: {:.1} ms (once), exact: {}", now() - start, sets.is_exact);
        if size == SIZES[4] {
            time("judge a complete build", || {
                black_box(judge(&desk, &complete));
            });
        }
    }
    time("ramp roll", || {
        black_box(ramp_roll_of_a_long_underside());
    });
    let seed = serde_json::from_str(include_str!("../../catalogue/tests/minimal.json")).expect("the example is JSON");
    let text = catalogue_text(&seed, 5 << 20);
    time("5 MB catalogue read and laid out", || {
        black_box(fitup_catalogue::read(&text).catalogue.map(Desk::new));
    });
}
