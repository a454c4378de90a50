//! What Trunk leaves to be done: the service worker's list of files and the compressed copies.

use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

use crate::failure::{Failure, failure};

/// Finishes the build that Trunk has staged (`TRUNK_STAGING_DIR`).
pub fn command(_: &[String]) -> Result<(), Failure> {
    let Some(staging) = std::env::var_os("TRUNK_STAGING_DIR").map(PathBuf::from) else {
        return Err(failure("finishing the site", "TRUNK_STAGING_DIR is not set", "run cargo xtask build"));
    };
    finish(&staging, std::env::var("TRUNK_PROFILE").is_ok_and(|profile| profile == "release"))
        .map_err(|error| failure("finishing the site", error.to_string(), "see that the disk has room"))
}

fn finish(staging: &Path, release: bool) -> std::io::Result<()> {
    let mut files = Vec::new();
    list(staging, staging, &mut files)?;
    files.retain(|name| name != "sw.js");
    files.sort();
    let version = version(staging, &files)?;
    let names: Vec<String> = files.iter().map(|name| format!("{name:?}")).collect();
    let worker = fs::read_to_string(crate::root().join("www/sw.template.js"))?
        .replace("\"{{VERSION}}\"", &format!("\"{version:016x}\""))
        .replace("[\"{{FILES}}\"]", &format!("[{}]", names.join(", ")));
    fs::write(staging.join("sw.js"), worker)?;
    if release {
        files.push("sw.js".to_owned());
        for name in &files {
            compress(&staging.join(name))?;
        }
    }
    Ok(())
}

fn list(base: &Path, folder: &Path, files: &mut Vec<String>) -> std::io::Result<()> {
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            list(base, &path, files)?;
        } else if let Ok(name) = path.strip_prefix(base) {
            files.push(name.to_string_lossy().replace('\\', "/"));
        }
    }
    Ok(())
}

/// FNV-1a over names and contents: Trunk's own hashes are of what came before wasm-opt.
fn version(base: &Path, files: &[String]) -> std::io::Result<u64> {
    let mut hash = 0xcbf2_9ce4_8422_2325_u64;
    let mut take = |bytes: &[u8]| {
        for &byte in bytes {
            hash = (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
        }
    };
    for name in files {
        take(name.as_bytes());
        take(&fs::read(base.join(name))?);
    }
    Ok(hash)
}

/// Writes `.br` and `.gz` beside a file that is worth compressing.
fn compress(path: &Path) -> std::io::Result<()> {
    let extension = path.extension().and_then(|extension| extension.to_str()).unwrap_or_default();
    if !matches!(extension, "html" | "js" | "css" | "json" | "svg" | "wasm" | "webmanifest" | "txt" | "ts") {
        return Ok(());
    }
    let bytes = fs::read(path)?;
    fs::write(with_suffix(path, "br"), brotli_of(&bytes))?;
    let mut gzip = flate2::write::GzEncoder::new(Vec::new(), flate2::Compression::best());
    gzip.write_all(&bytes)?;
    fs::write(with_suffix(path, "gz"), gzip.finish()?)
}

/// The bytes in brotli, quality 11.
pub fn brotli_of(bytes: &[u8]) -> Vec<u8> {
    let mut out = Vec::new();
    let parameters = brotli::enc::BrotliEncoderParams { quality: 11, lgwin: 22, ..Default::default() };
    brotli::BrotliCompress(&mut &*bytes, &mut out, &parameters).expect("writing to memory does not fail");
    out
}

fn with_suffix(path: &Path, suffix: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(".");
    name.push(suffix);
    name.into()
}
