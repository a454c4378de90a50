//! Tools the project needs beyond Rust: found, or installed into one folder a user.
//!
//! The folder is `$FITUP_TOOLS`, else `$XDG_CACHE_HOME/fitup-tools`, else `~/.cache/fitup-tools`;
//! every clone shares it. Versions are pinned here and nowhere else (the toolchain itself in
//! `rust-toolchain.toml`, crates in `Cargo.lock`).

use std::path::{Path, PathBuf};
use std::process::Command;

use crate::failure::{Failure, failure};
use crate::run::quietly;

const TRUNK: &str = "0.21.14";
/// Has to be the version of the `wasm-bindgen` crate in `Cargo.toml`.
const WASM_BINDGEN: &str = "0.2.130";
const BINARYEN: &str = "132.0.0";
const AXE: &str = "4.14.1";
const TARGET: &str = "wasm32-unknown-unknown";

/// Installs whatever is missing.
pub fn command(_: &[String]) -> Result<(), Failure> {
    ensure_build()?;
    ensure_browser()
}

/// The tools' folder.
pub fn folder() -> PathBuf {
    let from = |name: &str| std::env::var_os(name).map(PathBuf::from).filter(|path| !path.as_os_str().is_empty());
    from("FITUP_TOOLS")
        .or_else(|| from("XDG_CACHE_HOME").map(|cache| cache.join("fitup-tools")))
        .or_else(|| from("HOME").map(|home| home.join(".cache/fitup-tools")))
        .unwrap_or_else(|| crate::root().join("target/tools"))
}

/// A command that finds the tools first and, on a machine without rustup's wasm target, builds
/// with Debian's toolchain for the web.
pub fn tooled(program: &str) -> Command {
    let mut command = Command::new(program);
    let mut path = vec![folder().join("bin"), folder().join("node_modules/.bin")];
    if debian_toolchain_serves() {
        path.push("/usr/bin".into());
        command
            .env("RUSTC_BOOTSTRAP", "1")
            .env("CARGO_UNSTABLE_BUILD_STD", "std,panic_abort")
            .env("CARGO_UNSTABLE_PANIC_ABORT_TESTS", "true")
            .env("CARGO_TARGET_DIR", crate::root().join("target-debian"));
    }
    path.extend(std::env::split_paths(&std::env::var_os("PATH").unwrap_or_default()));
    // A tool's path with a colon in it cannot be named in PATH; the plain one is tried then.
    if let Ok(joined) = std::env::join_paths(path) {
        command.env("PATH", joined);
    }
    command.current_dir(crate::root());
    command
}

/// What building the widget needs.
pub fn ensure_build() -> Result<(), Failure> {
    ensure_wasm_target()?;
    ensure_crate("trunk", "trunk", TRUNK, &["--locked", "--no-default-features", "--features", "rustls"])?;
    // Its lock file names a version that is no longer served, hence without --locked.
    ensure_crate("wasm-bindgen-cli", "wasm-bindgen", WASM_BINDGEN, &[])?;
    ensure_npm("binaryen", BINARYEN)
}

/// What the browser tests need on top.
pub fn ensure_browser() -> Result<(), Failure> {
    ensure_npm("axe-core", AXE)?;
    let missing: Vec<&str> = [("/usr/bin/chromium", "chromium"), ("/usr/bin/chromedriver", "chromium-driver")]
        .into_iter()
        .filter(|(path, _)| !Path::new(path).exists())
        .map(|(_, package)| package)
        .collect();
    if missing.is_empty() {
        return Ok(());
    }
    eprintln!("installing {}", missing.join(", "));
    install_packages(&missing)
}

/// Chromium's axe script for accessibility tests.
pub fn axe_script() -> PathBuf {
    folder().join("node_modules/axe-core/axe.min.js")
}

fn ensure_wasm_target() -> Result<(), Failure> {
    if has_wasm_target() || debian_toolchain_serves() {
        return Ok(());
    }
    eprintln!("installing the wasm target");
    let mut rustup = Command::new("timeout");
    rustup.args(["120", "rustup", "target", "add", TARGET]).current_dir(crate::root());
    if quietly("rustup target add", &mut rustup, "").is_ok() {
        return Ok(());
    }
    eprintln!("rustup cannot fetch the target; taking Debian's toolchain for the web instead");
    install_packages(&[
        "rustc-web",
        "cargo-web",
        "rust-web-src",
        "rust-web-llvm",
        "rust-web-clippy",
        "rustfmt-web",
        "lld-22",
    ])
}

fn has_wasm_target() -> bool {
    let printed = Command::new("rustc").args(["--print", "sysroot"]).current_dir(crate::root()).output();
    let sysroot = printed.ok().filter(|out| out.status.success());
    sysroot.is_some_and(|out| {
        let sysroot = String::from_utf8_lossy(&out.stdout).trim().to_owned();
        Path::new(&sysroot).join("lib/rustlib").join(TARGET).join("lib").is_dir()
    })
}

fn debian_toolchain_serves() -> bool {
    !has_wasm_target() && Path::new("/usr/lib/rust-web").exists()
}

fn ensure_crate(package: &str, binary: &str, version: &str, flags: &[&str]) -> Result<(), Failure> {
    let installed = folder().join("bin").join(binary);
    let says = Command::new(&installed).arg("--version").output();
    if says.is_ok_and(|out| String::from_utf8_lossy(&out.stdout).contains(version)) {
        return Ok(());
    }
    eprintln!("installing {package} {version} (a few minutes, once)");
    let mut cargo = Command::new("cargo");
    cargo
        .args(["install", "--root"])
        .arg(folder())
        .arg(format!("{package}@{version}"))
        .args(flags)
        .current_dir(std::env::temp_dir())
        .env("CARGO_TARGET_DIR", folder().join("build"))
        // The tools run for seconds: built fast rather than fast to run.
        .env("CARGO_PROFILE_RELEASE_LTO", "off")
        .env("CARGO_PROFILE_RELEASE_CODEGEN_UNITS", "16")
        .env("CARGO_PROFILE_RELEASE_OPT_LEVEL", "1")
        .env("CARGO_PROFILE_RELEASE_DEBUG", "0");
    quietly(
        &format!("{package} {version}"),
        &mut cargo,
        "see that crates.io can be reached, then run the command again",
    )?;
    // What was compiled on the way is of no further use.
    let _ = std::fs::remove_dir_all(folder().join("build"));
    Ok(())
}

fn ensure_npm(package: &str, version: &str) -> Result<(), Failure> {
    let manifest = folder().join("node_modules").join(package).join("package.json");
    if std::fs::read_to_string(&manifest).is_ok_and(|text| text.contains(&format!("\"version\": \"{version}\""))) {
        return Ok(());
    }
    std::fs::create_dir_all(folder())
        .map_err(|error| failure(format!("making {}", folder().display()), error.to_string(), "set FITUP_TOOLS"))?;
    eprintln!("installing {package} {version}");
    let mut npm = Command::new("npm");
    npm.args(["install", "--no-audit", "--no-fund", "--prefix"]).arg(folder()).arg(format!("{package}@{version}"));
    quietly(
        &format!("{package} {version}"),
        &mut npm,
        "install Node.js 20 or later with npm, then run the command again",
    )
    .map(drop)
}

fn install_packages(packages: &[&str]) -> Result<(), Failure> {
    let mend = format!("install these packages by hand: {}", packages.join(" "));
    quietly("apt-get update", Command::new("apt-get").args(["update", "-qq"]), &mend)?;
    let mut install = Command::new("apt-get");
    install.args(["install", "-y", "-qq", "--no-install-recommends"]).args(packages);
    install.env("DEBIAN_FRONTEND", "noninteractive");
    quietly(&format!("apt-get install {}", packages.join(" ")), &mut install, &mend).map(drop)
}
