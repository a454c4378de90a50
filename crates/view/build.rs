//! Makes the version that page and engine compare: a fingerprint of what they speak.

use std::{env, fs};

fn main() {
    println!("cargo::rerun-if-changed=src");
    let mut files: Vec<_> = fs::read_dir("src")
        .expect("the sources are there")
        .map(|entry| entry.expect("the folder can be listed").path())
        .collect();
    files.sort();
    // FNV-1a, 64 bits.
    let hash = files.iter().flat_map(|file| fs::read(file).expect("a source can be read"));
    let hash =
        hash.fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3));
    let version = env::var("CARGO_PKG_VERSION").expect("cargo sets it for build scripts");
    println!("cargo::rustc-env=FITUP_VIEW_VERSION={version}-{hash:016x}");
}
