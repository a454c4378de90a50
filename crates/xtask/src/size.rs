//! Sizes of the start page in parts: the page, which paints, and the engine beside it, each against its budget and the stored
//! baseline.

use std::fs;
use std::path::Path;

use crate::build::{dist, release};
use crate::failure::{Failure, failure};
use crate::site::{brotli_of, gzip_of};

/// What is held to a budget of its own: what the page needs to paint its first screen, and the engine.
struct Half {
    name: &'static str,
    /// What it should weigh at most, brotli, bytes.
    budget: usize,
    baseline: &'static str,
    /// Its parts, as indexes into [`PARTS`].
    parts: std::ops::Range<usize>,
}

const HALVES: [Half; 2] = [
    Half { name: "page", budget: 170_000, baseline: "crates/xtask/size-page.txt", parts: 0..7 },
    Half { name: "engine", budget: 330_000, baseline: "crates/xtask/size-engine.txt", parts: 7..10 },
];
/// Growth over the baseline that has to be acknowledged, bytes.
const GROWTH: usize = 2_000;

/// The parts; the last belongs to neither half.
const PARTS: [&str; 11] = [
    "page wasm",
    "page script",
    "styles",
    "markup",
    "font",
    "pictures",
    "page words",
    "engine wasm",
    "engine script",
    "engine words",
    "catalogue",
];
/// The parts of which a reader loads one file at most: the largest counts.
const ONE_OF: [usize; 2] = [6, 9];

/// Sizes of a part: raw, gzip, brotli.
type Sizes = [usize; 3];

/// Prints the sizes; fails on growth that is not acknowledged by `--accept`.
pub fn command(arguments: &[String]) -> Result<(), Failure> {
    release()?;
    check(arguments.iter().any(|argument| argument == "--accept"))
}

/// Checks the site that is built.
pub fn check(accept: bool) -> Result<(), Failure> {
    let rows = measure(&dist())
        .map_err(|error| failure("measuring the site", error.to_string(), "run cargo xtask build first"))?;
    println!("{:<10} {:>10} {:>10} {:>10}", "part", "raw", "gzip", "brotli");
    for (part, [raw, gzip, brotli]) in PARTS.iter().zip(rows) {
        println!("{part:<10} {raw:>10} {gzip:>10} {brotli:>10}");
    }
    for half in &HALVES {
        let Half { name, budget, baseline, parts } = half;
        let bytes: usize = rows[parts.clone()].iter().map(|[_, _, brotli]| brotli).sum();
        println!("{name}: {bytes} bytes brotli (budget {budget})");
        if let Some(over @ 1..) = bytes.checked_sub(*budget) {
            println!("{over} bytes over the budget");
        }
        let path = crate::root().join(baseline);
        let before = fs::read_to_string(&path).ok().and_then(|text| text.trim().parse::<usize>().ok());
        judge(half, bytes, before, accept)?;
        if accept {
            fs::write(&path, format!("{bytes}\n")).map_err(|error| {
                failure(format!("writing {baseline}"), error.to_string(), "see that the folder is writable")
            })?;
        }
    }
    Ok(())
}

/// Growth fails, over the budget or under it; being over the budget is said, and ends with the page getting smaller.
fn judge(half: &Half, bytes: usize, before: Option<usize>, accept: bool) -> Result<(), Failure> {
    let mend = "make it smaller, or acknowledge it with cargo xtask size --accept and commit the baselines";
    match before {
        _ if accept => Ok(()),
        None => Err(failure("size", format!("{} holds no number", half.baseline), mend)),
        Some(before) if bytes > before + GROWTH => Err(failure(
            "size",
            format!("{}: {bytes} bytes are {} more than the baseline", half.name, bytes - before),
            mend,
        )),
        Some(_) => Ok(()),
    }
}

fn measure(site: &Path) -> std::io::Result<[Sizes; PARTS.len()]> {
    let mut rows = [[0; 3]; PARTS.len()];
    measure_folder(site, site, &mut rows)?;
    Ok(rows)
}

fn measure_folder(site: &Path, folder: &Path, rows: &mut [Sizes; PARTS.len()]) -> std::io::Result<()> {
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            measure_folder(site, &path, rows)?;
            continue;
        }
        let name = path.strip_prefix(site).unwrap_or(&path).to_string_lossy().into_owned();
        let Some(part) = part_of(&name) else { continue };
        let bytes = fs::read(&path)?;
        let sizes = [bytes.len(), gzip_of(&bytes).len(), brotli_of(&bytes).len()];
        for (sum, size) in rows[part].iter_mut().zip(sizes) {
            *sum = if ONE_OF.contains(&part) { size.max(*sum) } else { size + *sum };
        }
    }
    Ok(())
}

/// The part a file of the start page belongs to; `None` for files it does not load.
fn part_of(name: &str) -> Option<usize> {
    let extension = name.rsplit('.').next()?;
    let is_engine = name.starts_with("fitup-engine") || name == "worker.js";
    match extension {
        "wasm" => Some(if is_engine { 7 } else { 0 }),
        "js" if is_engine => Some(8),
        "js" if !["sw.js", "embed.js"].contains(&name) => Some(1),
        "css" if name != "embed.css" => Some(2),
        "html" if name == "index.html" => Some(3),
        "woff2" => Some(4),
        "svg" | "webmanifest" if !name.contains('/') => Some(5),
        "txt" if name.starts_with(crate::site::WORDS) => Some(if name.ends_with(".page.txt") { 6 } else { 9 }),
        "json" if name == "catalogue/demo.json" => Some(10),
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
        assert_eq!((part_of("words/de.page.txt"), part_of("words/de.txt")), (Some(6), Some(9)));
        assert_eq!((part_of("fitup-engine_bg.wasm"), part_of("worker.js")), (Some(7), Some(8)));
        assert_eq!(part_of("fonts/OFL.txt"), None);
        assert_eq!(part_of("sw.js"), None);
        assert_eq!(part_of("a.wasm.br"), None);
        assert_eq!(part_of("kiosk.html"), None);
    }

    #[test]
    fn growth_has_to_be_acknowledged() {
        let half = &HALVES[0];
        assert!(judge(half, 100_000, Some(99_000), false).is_ok());
        assert!(judge(half, 102_000, Some(99_000), false).is_err());
        assert!(judge(half, 102_000, Some(99_000), true).is_ok());
        assert!(judge(half, 102_000, None, false).is_err());
    }
}
