//! The built site, served as a dealer's server would serve it.

use std::fs;
use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::atomic::{AtomicU32, Ordering};

use super::process::Process;
use super::{Outcome, trouble};

/// A server of its own process, so that stopping it really refuses connections.
#[derive(Debug)]
pub struct Site {
    /// Address of the start page, ending with a slash.
    pub address: String,
    server: Option<Process>,
    /// A copy of the site that is served, to be removed in the end.
    folder: Option<PathBuf>,
}

/// What becomes of a file.
pub type Change<'a> = dyn Fn(Vec<u8>) -> Option<Vec<u8>> + 'a;

impl Drop for Site {
    fn drop(&mut self) {
        // What cannot be removed lies below target/ and is in nobody's way.
        self.folder.iter().for_each(|folder| drop(fs::remove_dir_all(folder)));
    }
}

pub(super) fn copy(from: &Path, to: &Path) -> std::io::Result<()> {
    fs::create_dir_all(to)?;
    for entry in fs::read_dir(from)? {
        let (path, name) = entry.map(|entry| (entry.path(), entry.file_name()))?;
        if path.is_dir() {
            copy(&path, &to.join(name))?;
        } else {
            fs::copy(&path, to.join(name))?;
        }
    }
    Ok(())
}

impl Site {
    /// Serves `dist/` on a free port.
    ///
    /// # Errors
    /// `dist/` is not built, or the server does not start.
    pub fn serve() -> Outcome<Self> {
        Self::serve_on(0)
    }

    /// Serves on a given port: a server that comes back after [`Site::stop`].
    ///
    /// # Errors
    /// As [`Site::serve`], or the port is taken.
    pub fn serve_on(port: u16) -> Outcome<Self> {
        Self::serve_from(port, None, None)
    }

    /// Serves a copy of `dist/` on a given port, with files of it changed: each change gets what its file holds, nothing of a
    /// file that is new, and gives what it is to hold, or nothing for a file that is to be gone.
    ///
    /// # Errors
    /// As [`Site::serve`], or the copy cannot be written.
    pub fn serve_changed(port: u16, changes: &[(&str, &Change<'_>)]) -> Outcome<Self> {
        let folder = Self::folder();
        copy(&root().join("dist"), &folder)?;
        for (name, change) in changes {
            let file = folder.join(name);
            let changed = change(fs::read(&file).unwrap_or_default());
            for suffix in ["", ".br", ".gz"] {
                // A file that is new or not worth compressing has no copies.
                let _ = fs::remove_file(folder.join(format!("{name}{suffix}")));
            }
            if let Some(bytes) = changed {
                fs::write(&file, bytes)?;
            }
        }
        Ok(Self::serve_from(port, Some(&folder), None)?.keeping(folder))
    }

    /// Serves a folder, each file with its type of a table and nothing else.
    pub(super) fn serve_with(port: u16, folder: &Path, types: Option<&Path>) -> Outcome<Self> {
        Self::serve_from(port, Some(folder), types)
    }

    /// A folder of one's own below `target/`.
    pub(super) fn folder() -> PathBuf {
        static MADE: AtomicU32 = AtomicU32::new(0);
        let made = MADE.fetch_add(1, Ordering::Relaxed);
        root().join("target/changed").join(format!("{}-{made}", std::process::id()))
    }

    /// A site that another server serves.
    pub(super) const fn of(address: String, server: Process) -> Self {
        Self { address, server: Some(server), folder: None }
    }

    /// Removes this folder in the end.
    #[must_use]
    pub(super) fn keeping(mut self, folder: PathBuf) -> Self {
        self.folder = Some(folder);
        self
    }

    fn serve_from(port: u16, folder: Option<&Path>, types: Option<&Path>) -> Outcome<Self> {
        let (program, first) = match std::env::var_os("FITUP_XTASK") {
            Some(xtask) => (xtask, &[][..]),
            None => ("cargo".into(), &["xtask"][..]),
        };
        let mut command = Command::new(program);
        command.args(first).args(["serve", "--no-build", "--port", &port.to_string()]).current_dir(root());
        if let Some(folder) = folder {
            command.arg("--from").arg(folder);
        }
        if let Some(types) = types {
            command.arg("--types").arg(types);
        }
        let mut server = Process::start(&mut command)?;
        let mut address = String::new();
        if let Some(output) = server.output() {
            BufReader::new(output).read_line(&mut address)?;
        }
        let address = address.trim().to_owned();
        if !address.starts_with("http") {
            return Err(trouble("the server printed no address: run `cargo xtask serve --no-build` to see why"));
        }
        Ok(Self::of(address, server))
    }

    /// The port it serves on.
    pub fn port(&self) -> u16 {
        let digits = self.address.trim_end_matches('/').rsplit(':').next();
        digits.and_then(|digits| digits.parse().ok()).unwrap_or_default()
    }

    /// Stops serving: from now on connections are refused.
    pub fn stop(&mut self) {
        self.server = None;
    }
}

/// The repository's root.
pub fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("..")
}
