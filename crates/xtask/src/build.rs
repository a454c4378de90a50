//! The release site, built by Trunk into `dist/`.

use std::path::PathBuf;
use std::sync::atomic::{AtomicBool, Ordering};

use crate::failure::Failure;
use crate::run::quietly;
use crate::tools::{ensure_build, tooled};

/// Builds the release site.
pub fn command(_: &[String]) -> Result<(), Failure> {
    release().map(drop)
}

/// Set once this run has built the site.
static BUILT: AtomicBool = AtomicBool::new(false);

/// Builds the release site, once in a run, and says where it is.
pub fn release() -> Result<PathBuf, Failure> {
    if BUILT.load(Ordering::Relaxed) {
        return Ok(dist());
    }
    ensure_build()?;
    let mut trunk = tooled("trunk");
    trunk.args(["build", "--release", "--offline"]).env_remove("NO_COLOR").env("RUST_BACKTRACE", "0");
    quietly("release build of the widget", &mut trunk, "mend what the compiler says")?;
    BUILT.store(true, Ordering::Relaxed);
    Ok(dist())
}

/// Where the site is built.
pub fn dist() -> PathBuf {
    crate::root().join("dist")
}
