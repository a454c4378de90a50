//! Tools the project needs beyond Rust: found, or installed into one folder a user.
//!
//! The folder is `$FITUP_TOOLS`, else `$XDG_CACHE_HOME/fitup-tools`, else `~/.cache/fitup-tools`;
//! every clone shares it. Versions are pinned here and nowhere else (the toolchain itself in
//! `rust-toolchain.toml`, crates in `Cargo.lock`).

use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Instant;

use crate::failure::{Failure, failure};
use crate::run::quietly;

const TRUNK: &str = "0.21.14";
/// Has to be the version of the `wasm-bindgen` crate in `Cargo.toml`.
const WASM_BINDGEN: &str = "0.2.130";
const BINARYEN: &str = "132.0.0";
const AXE: &str = "4.14.1";
const LIGHTHOUSE: &str = "12.8.2";
const MUTANTS: &str = "27.1.0";
const TARGET: &str = "wasm32-unknown-unknown";

/// Installs whatever is missing, and says where the tools are.
pub fn command(_: &[String]) -> Result<(), Failure> {
    let started = Instant::now();
    ensure_build()?;
    ensure_browser()?;
    println!("tools: {} ({:.0} s)", folder().display(), started.elapsed().as_secs_f64());
    Ok(())
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
    // What was compiled on the way is of no further use; that it is not there is no trouble.
    let _ = std::fs::remove_dir_all(folder().join("build"));
    ensure_npm("binaryen", BINARYEN)
}

/// What the browser tests need on top.
pub fn ensure_browser() -> Result<(), Failure> {
    ensure_npm("axe-core", AXE)?;
    let mut missing = Vec::new();
    if chromium().is_none() {
        missing.push("chromium");
    }
    if on_path("chromedriver").is_none() {
        missing.push("chromium-driver");
    }
    for (program, package) in [("nginx", "nginx-light"), ("apache2", "apache2-bin")] {
        if !Path::new("/usr/sbin").join(program).is_file() && on_path(program).is_none() {
            missing.push(package);
        }
    }
    if missing.is_empty() { Ok(()) } else { install_packages(&missing) }
}

/// What the performance measurement needs on top.
pub fn ensure_lighthouse() -> Result<(), Failure> {
    ensure_npm("lighthouse", LIGHTHOUSE)
}

/// What mutation testing needs.
pub fn ensure_mutants() -> Result<(), Failure> {
    ensure_crate("cargo-mutants", "cargo-mutants", MUTANTS, &["--locked"])
}

/// The browser, under one of the names it goes by.
pub fn chromium() -> Option<PathBuf> {
    ["chromium", "chromium-browser", "google-chrome"].into_iter().find_map(on_path)
}

fn on_path(program: &str) -> Option<PathBuf> {
    let path = std::env::var_os("PATH")?;
    std::env::split_paths(&path).map(|folder| folder.join(program)).find(|file| file.is_file())
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
    !has_wasm_target() && Path::new("/usr/bin/rust-lld").exists()
}

fn ensure_crate(package: &str, binary: &str, version: &str, flags: &[&str]) -> Result<(), Failure> {
    let installed = folder().join("bin").join(binary);
    // A command of cargo's is called by cargo with its own name first.
    let called = binary.strip_prefix("cargo-");
    let says = Command::new(&installed).args(called).arg("--version").output();
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
    Ok(())
}

fn ensure_npm(package: &str, version: &str) -> Result<(), Failure> {
    let manifest = folder().join("node_modules").join(package).join("package.json");
    if std::fs::read_to_string(&manifest).is_ok_and(|text| text.contains(&format!("\"version\": \"{version}\""))) {
        return Ok(());
    }
    std::fs::create_dir_all(folder())
        .map_err(|error| failure(format!("making {}", folder().display()), error.to_string(), "set FITUP_TOOLS"))?;
    if on_path("npm").is_none() {
        install_packages(&["nodejs", "npm"])?;
    }
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
    let names = packages.join(" ");
    let mend = format!("install by hand: {names} (as root on Debian or Ubuntu: apt-get install {names})");
    eprintln!("installing {names}");
    quietly("apt-get update", apt().args(["update", "-qq"]), &mend)?;
    let mut install = apt();
    install.args(["install", "-y", "-qq", "--no-install-recommends"]).args(packages);
    quietly(&format!("apt-get install {names}"), &mut install, &mend).map(drop)
}

/// apt-get, which starts no service that it installs (`RUNLEVEL=1`); through sudo (without asking) for whoever is not root.
fn apt() -> Command {
    let id = Command::new("id").arg("-u").output();
    let is_root = id.is_ok_and(|out| out.stdout.trim_ascii() == b"0");
    let mut command = Command::new(if is_root { "env" } else { "sudo" });
    command.args(if is_root { &[][..] } else { &["-n", "env"][..] });
    command.args(["DEBIAN_FRONTEND=noninteractive", "RUNLEVEL=1", "apt-get"]);
    command
}

#[cfg(test)]
mod tests {
    use super::*;

    fn workspace_manifest() -> String {
        std::fs::read_to_string(crate::root().join("Cargo.toml")).expect("the workspace has a manifest")
    }

    #[test]
    fn wasm_bindgen_is_the_same_version_as_the_crate() {
        assert!(workspace_manifest().contains(&format!("wasm-bindgen = \"={WASM_BINDGEN}\"")));
    }

    #[test]
    fn tools_are_found_before_the_machines_own() {
        let command = tooled("trunk");
        let path = command.get_envs().find(|(name, _)| *name == "PATH").and_then(|(_, path)| path).expect("set");
        assert!(std::env::split_paths(path).next().expect("one at least").starts_with(folder()));
    }

    #[test]
    fn a_program_that_is_nowhere_is_not_found() {
        assert_eq!(on_path("no-such-program-anywhere"), None);
    }
}
