//! Sizes of the start page in parts, against the cap and the stored baseline.

use std::fs;
use std::path::Path;

use crate::build::{dist, release};
use crate::failure::{Failure, failure};
use crate::site::brotli_of;

/// The whole start page without catalogue, brotli, bytes.
const CAP: usize = 280_000;
/// Growth over the baseline that has to be acknowledged, bytes.
const GROWTH: usize = 2_000;
const BASELINE: &str = "crates/xtask/size-baseline.txt";

const PARTS: [&str; 5] = ["wasm", "script", "styles", "markup", "catalogue"];

/// Prints the sizes; fails over the cap or on growth that is not acknowledged by `--accept`.
pub fn command(arguments: &[String]) -> Result<(), Failure> {
    release()?;
    check(arguments.iter().any(|argument| argument == "--accept"))
}

/// Checks the site that is built.
pub fn check(accept: bool) -> Result<(), Failure> {
    let rows = measure(&dist())
        .map_err(|error| failure("measuring the site", error.to_string(), "run cargo xtask build first"))?;
    println!("{:<10} {:>10} {:>10}", "part", "raw", "brotli");
    for (part, [raw, brotli]) in PARTS.iter().zip(rows) {
        println!("{part:<10} {raw:>10} {brotli:>10}");
    }
    let start: usize = rows[..4].iter().map(|[_, brotli]| brotli).sum();
    println!("start page without catalogue: {start} bytes brotli (cap {CAP})");
    if start > CAP {
        return Err(failure("size", format!("{start} bytes are over the cap of {CAP}"), "make it smaller"));
    }
    let path = crate::root().join(BASELINE);
    let baseline = fs::read_to_string(&path).ok().and_then(|text| text.trim().parse::<usize>().ok());
    match baseline {
        Some(baseline) if !accept && start > baseline + GROWTH => Err(failure(
            "size",
            format!("{start} bytes are {} more than the baseline of {baseline}", start - baseline),
            "make it smaller, or acknowledge the growth with cargo xtask size --accept",
        )),
        Some(_) if !accept => Ok(()),
        _ => fs::write(&path, format!("{start}\n")).map_err(|error| {
            failure(format!("writing {BASELINE}"), error.to_string(), "see that the folder is writable")
        }),
    }
}

fn measure(site: &Path) -> std::io::Result<[[usize; 2]; 5]> {
    let mut rows = [[0; 2]; 5];
    measure_folder(site, site, &mut rows)?;
    Ok(rows)
}

fn measure_folder(site: &Path, folder: &Path, rows: &mut [[usize; 2]; 5]) -> std::io::Result<()> {
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            measure_folder(site, &path, rows)?;
            continue;
        }
        let name = path.strip_prefix(site).unwrap_or(&path).to_string_lossy().into_owned();
        let Some(part) = part_of(&name) else { continue };
        let bytes = fs::read(&path)?;
        rows[part][0] += bytes.len();
        rows[part][1] += brotli_of(&bytes).len();
    }
    Ok(())
}

/// The part a file of the start page belongs to; `None` for files it does not load.
fn part_of(name: &str) -> Option<usize> {
    let extension = name.rsplit('.').next()?;
    match extension {
        "wasm" => Some(0),
        "js" if name != "sw.js" => Some(1),
        "css" => Some(2),
        "html" if name == "index.html" => Some(3),
        "json" if name == "catalogue/demo.json" => Some(4),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_the_start_page_loads_is_counted() {
        assert_eq!(part_of("fitup-widget_bg.wasm"), Some(0));
        assert_eq!(part_of("snippets/a/element.js"), Some(1));
        assert_eq!(part_of("sw.js"), None);
        assert_eq!(part_of("a.wasm.br"), None);
        assert_eq!(part_of("kiosk.html"), None);
    }
}
