//! Sizes of the start page in parts, against the budget and the stored baseline.

use std::fs;
use std::path::Path;

use crate::build::{dist, release};
use crate::failure::{Failure, failure};
use crate::site::{brotli_of, gzip_of};

/// What the whole start page without catalogue should weigh at most, brotli, bytes.
const BUDGET: usize = 280_000;
/// Growth over the baseline that has to be acknowledged, bytes.
const GROWTH: usize = 2_000;
const BASELINE: &str = "crates/xtask/size-baseline.txt";

/// The parts; the last is not counted against the budget.
const PARTS: [&str; 8] = ["wasm", "script", "styles", "markup", "font", "pictures", "words", "catalogue"];
/// The part of which a reader loads one file at most: the largest counts.
const WORDS: usize = 6;

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
    let start: usize = rows[..PARTS.len() - 1].iter().map(|[_, _, brotli]| brotli).sum();
    println!("start page without catalogue: {start} bytes brotli (budget {BUDGET})");
    if let Some(over @ 1..) = start.checked_sub(BUDGET) {
        println!("{over} bytes over the budget");
    }
    let path = crate::root().join(BASELINE);
    let baseline = fs::read_to_string(&path).ok().and_then(|text| text.trim().parse::<usize>().ok());
    judge(start, baseline, accept)?;
    if accept {
        fs::write(&path, format!("{start}\n")).map_err(|error| {
            failure(format!("writing {BASELINE}"), error.to_string(), "see that the folder is writable")
        })?;
    }
    Ok(())
}

/// Growth fails, over the budget or under it; being over the budget is said, and ends with the page getting smaller.
fn judge(start: usize, baseline: Option<usize>, accept: bool) -> Result<(), Failure> {
    let mend = "make it smaller, or acknowledge it with cargo xtask size --accept and commit the baseline";
    match baseline {
        _ if accept => Ok(()),
        None => Err(failure("size", format!("{BASELINE} holds no number"), mend)),
        Some(baseline) if start > baseline + GROWTH => {
            Err(failure("size", format!("{start} bytes are {} more than the baseline", start - baseline), mend))
        }
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
            *sum = if part == WORDS { size.max(*sum) } else { size + *sum };
        }
    }
    Ok(())
}

/// The part a file of the start page belongs to; `None` for files it does not load.
fn part_of(name: &str) -> Option<usize> {
    let extension = name.rsplit('.').next()?;
    match extension {
        "wasm" => Some(0),
        "js" if !["sw.js", "embed.js"].contains(&name) => Some(1),
        "css" if name != "embed.css" => Some(2),
        "html" if name == "index.html" => Some(3),
        "woff2" => Some(4),
        "svg" | "webmanifest" if !name.contains('/') => Some(5),
        "txt" if name.starts_with(crate::site::WORDS) => Some(WORDS),
        "json" if name == "catalogue/demo.json" => Some(7),
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
        assert_eq!(part_of("words/de.txt"), Some(WORDS));
        assert_eq!(part_of("fonts/OFL.txt"), None);
        assert_eq!(part_of("sw.js"), None);
        assert_eq!(part_of("a.wasm.br"), None);
        assert_eq!(part_of("kiosk.html"), None);
    }

    #[test]
    fn growth_has_to_be_acknowledged() {
        assert!(judge(100_000, Some(99_000), false).is_ok());
        assert!(judge(102_000, Some(99_000), false).is_err());
        assert!(judge(102_000, Some(99_000), true).is_ok());
        assert!(judge(102_000, None, false).is_err());
    }
}
