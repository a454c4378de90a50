//! The release site, built by Trunk into `dist/`.

use std::path::PathBuf;

use crate::failure::Failure;
use crate::run::quietly;
use crate::tools::{ensure_build, tooled};

/// Builds the release site.
pub fn command(_: &[String]) -> Result<(), Failure> {
    release().map(drop)
}

/// Builds the release site and says where it is.
pub fn release() -> Result<PathBuf, Failure> {
    ensure_build()?;
    let mut trunk = tooled("trunk");
    trunk.args(["build", "--release", "--offline"]).env_remove("NO_COLOR");
    quietly("release build of the widget", &mut trunk, "mend what the compiler says")?;
    Ok(dist())
}

/// Where the site is built.
pub fn dist() -> PathBuf {
    crate::root().join("dist")
}
