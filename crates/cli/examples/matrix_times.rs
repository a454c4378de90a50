//! How long the matrix of a large invented catalogue takes: `cargo run -p fitup --profile native --example matrix_times`.
//!
//! Takes the sizes as four numbers (machines, frames, seats, implements), else the whole size of the benchmarks.

use std::time::Instant;

use fitup_bench::{SIZES, yard};
use fitup_cli::matrix::{Format, cells, text};
use fitup_core::fit::Desk;
use fitup_words::{Lang, Units, Words};

/// Processor time of the whole process, seconds (Linux).
fn processor_time() -> f64 {
    let told = std::fs::read_to_string("/proc/self/stat").unwrap_or_default();
    let after_name = told.rsplit(')').next().unwrap_or_default();
    let ticks = after_name.split_whitespace().skip(11).take(2).filter_map(|ticks| ticks.parse::<f64>().ok());
    // Linux counts a hundred ticks a second here.
    ticks.sum::<f64>() / 100.0
}

fn main() {
    let numbers: Vec<usize> = std::env::args().skip(1).filter_map(|number| number.parse().ok()).collect();
    let size = match numbers[..] {
        [machines, frames, seats, implements] => [machines, frames, seats, implements],
        _ => SIZES[SIZES.len() - 1],
    };
    let start = Instant::now();
    let desk = Desk::new(yard(size));
    let words = Words::new(Lang::En, Units::Metric);
    println!("{size:?}: laid out in {:.1} s", start.elapsed().as_secs_f64());
    let (start, processor) = (Instant::now(), processor_time());
    let cells = cells(&desk, &words, |progress| {
        if progress.done % 20 == 0 {
            eprintln!("{} of {}, {:.0} s left", progress.done, progress.machines, progress.left.as_secs_f64());
        }
    });
    let mut counts = [0; 4];
    cells.iter().filter_map(|cell| cell.found.as_ref()).for_each(|found| counts[found.verdict as usize] += 1);
    let (wall, used) = (start.elapsed().as_secs_f64(), processor_time() - processor);
    println!("{} cells in {wall:.1} s, {used:.1} s of processor time; by verdict {counts:?}", cells.len());
    for format in [Format::Short, Format::Full, Format::Json, Format::Csv, Format::Html] {
        let start = Instant::now();
        let length = text(&desk, &words, &cells, format).len();
        println!("{format:?}: {:.1} MB in {:.1} s", length as f64 / 1e6, start.elapsed().as_secs_f64());
    }
}
