//! What Trunk leaves to be done: the texts of each language, the service worker's list of files and
//! the compressed copies.

use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

use fitup_words::{Lang, page_texts, texts};

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
    lay_out_words(&staging.join(WORDS))?;
    // Node.js takes the scripts for what they are.
    fs::write(staging.join("package.json"), PACKAGE)?;
    crate::first::lay_out(&staging.join("index.html"))?;
    let mut files = Vec::new();
    list(staging, staging, &mut files)?;
    files.retain(|name| name != "sw.js");
    files.sort();
    if release {
        for name in files.iter().filter(|name| name.split('.').next_back() == Some("js")) {
            let script = staging.join(name);
            fs::write(&script, tight(&fs::read_to_string(&script)?))?;
        }
    }
    // Catalogues have editions of their own, and are no part of the program.
    let program: Vec<&String> = files.iter().filter(|name| !name.starts_with(CATALOGUES)).collect();
    let version = version(staging, &program)?;
    let names: Vec<String> = program.iter().map(|name| format!("{name:?}")).collect();
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

/// Says that the scripts are modules, and which of them is the interface.
const PACKAGE: &str = "{\"name\":\"fit-up\",\"private\":true,\"type\":\"module\",\"exports\":\"./fitup-engine.js\"}\n";

/// The folder of the catalogues.
const CATALOGUES: &str = "catalogue/";

/// The folder of the languages, two files each: the page's own texts, and all of them for the engine. The files are called `.txt` because
/// hosts know it for text and compress it.
pub const WORDS: &str = "words";

fn lay_out_words(folder: &Path) -> std::io::Result<()> {
    fs::create_dir_all(folder)?;
    for lang in Lang::ALL {
        fs::write(folder.join(format!("{}.txt", lang.tag())), texts(lang))?;
        fs::write(folder.join(format!("{}.page.txt", lang.tag())), page_texts(lang))?;
    }
    Ok(())
}

/// A script without indentation and without the lines that are comments. It has to have no text
/// that goes over several lines; neither the house's scripts nor wasm-bindgen's have.
fn tight(script: &str) -> String {
    let is_kept = |line: &&str| !line.is_empty() && !["//", "/*", "*"].iter().any(|mark| line.starts_with(mark));
    script.lines().map(str::trim).filter(is_kept).flat_map(|line| [line, "\n"]).collect()
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

/// Over names and contents: Trunk's own hashes are of what came before wasm-opt.
fn version(base: &Path, files: &[&String]) -> std::io::Result<u64> {
    let mut hash = FINGERPRINT_OF_NOTHING;
    for name in files {
        hash = fingerprint(hash, name.as_bytes());
        hash = fingerprint(hash, &fs::read(base.join(name))?);
    }
    Ok(hash)
}

/// Where a fingerprint starts: the offset of FNV-1a, 64 bits.
pub const FINGERPRINT_OF_NOTHING: u64 = 0xcbf2_9ce4_8422_2325;

/// FNV-1a, 64 bits, of what `hash` stands for followed by `bytes`.
pub fn fingerprint(hash: u64, bytes: &[u8]) -> u64 {
    bytes.iter().fold(hash, |hash, &byte| (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3))
}

/// Writes `.br` and `.gz` beside a file that is worth compressing.
fn compress(path: &Path) -> std::io::Result<()> {
    let extension = path.extension().and_then(|extension| extension.to_str()).unwrap_or_default();
    if !matches!(extension, "html" | "js" | "css" | "json" | "svg" | "wasm" | "webmanifest" | "txt" | "ts") {
        return Ok(());
    }
    let bytes = fs::read(path)?;
    fs::write(with_suffix(path, "br"), brotli_of(&bytes))?;
    fs::write(with_suffix(path, "gz"), gzip_of(&bytes))
}

/// The bytes in gzip, level 9.
pub fn gzip_of(bytes: &[u8]) -> Vec<u8> {
    let mut gzip = flate2::write::GzEncoder::new(Vec::new(), flate2::Compression::best());
    gzip.write_all(bytes).and_then(|()| gzip.finish()).expect("writing to memory does not fail")
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

#[cfg(test)]
mod tests {
    use super::*;

    fn staged(name: &str, index: &str) -> PathBuf {
        let folder = std::env::temp_dir().join(format!("fitup-site-{name}-{}", std::process::id()));
        fs::create_dir_all(folder.join("catalogue")).expect("the temporary folder is writable");
        fs::write(folder.join("index.html"), index).expect("writable");
        fs::write(folder.join("catalogue/demo.json"), "{}").expect("writable");
        finish(&folder, true).expect("finished");
        folder
    }

    #[test]
    fn the_service_worker_lists_every_file_of_the_program_and_changes_with_its_contents() {
        let (one, two) = (staged("one", "<p>one</p>"), staged("two", "<p>two</p>"));
        let worker = |folder: &Path| fs::read_to_string(folder.join("sw.js")).expect("written");
        let listed = ["index.html", "package.json"].map(str::to_owned).into_iter();
        // A dash sorts before a dot: what names a region stands before its language.
        let words = ["de", "en-US", "en", "es", "fr"].into_iter();
        let words = words.flat_map(|lang| [format!("words/{lang}.page.txt"), format!("words/{lang}.txt")]);
        let listed = listed.chain(words).map(|name| format!("{name:?}")).collect::<Vec<_>>().join(", ");
        assert!(worker(&one).contains(&listed), "{}", worker(&one));
        assert!(!worker(&one).contains("{{"));
        assert!(!worker(&one).contains("demo.json"), "a catalogue is no part of the program");
        assert_ne!(worker(&one), worker(&two));
        for folder in [one, two] {
            fs::remove_dir_all(folder).expect("was there");
        }
    }

    #[test]
    fn the_script_asks_early_for_any_language_there_is() {
        let script = fs::read_to_string(crate::root().join("www/language.js")).expect("it is there");
        let tags = Lang::ALL.map(|lang| format!("{:?}", lang.tag())).join(", ");
        assert!(script.contains(&format!("[{tags}]")), "www/language.js has to name the languages [{tags}]");
    }

    #[test]
    fn scripts_lose_comments_and_indentation_alone() {
        let script = "/**\n * What it does.\n */\nexport function f() {\n    // why\n    return \"//x\"; // so\n}\n";
        assert_eq!(tight(script), "export function f() {\nreturn \"//x\"; // so\n}\n");
    }

    #[test]
    fn what_is_served_compressed_is_what_was_there() {
        let folder = staged("compressed", "<p>a page</p>");
        let mut plain = Vec::new();
        let coded = fs::read(folder.join("index.html.br")).expect("written");
        brotli::BrotliDecompress(&mut &*coded, &mut plain).expect("brotli");
        assert_eq!(plain, b"<p>a page</p>");
        assert!(folder.join("sw.js.gz").exists());
        fs::remove_dir_all(folder).expect("was there");
    }
}
