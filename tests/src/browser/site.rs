//! The built site, served as a dealer's server would serve it.

use std::io::{BufRead, BufReader};
use std::path::PathBuf;
use std::process::Command;

use super::process::Process;
use super::{Outcome, trouble};

/// A server of its own process, so that stopping it really refuses connections.
#[derive(Debug)]
pub struct Site {
    /// Address of the start page, ending with a slash.
    pub address: String,
    server: Option<Process>,
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
        let (program, first) = match std::env::var_os("FITUP_XTASK") {
            Some(xtask) => (xtask, &[][..]),
            None => ("cargo".into(), &["xtask"][..]),
        };
        let mut command = Command::new(program);
        command.args(first).args(["serve", "--no-build", "--port", &port.to_string()]).current_dir(root());
        let mut server = Process::start(&mut command)?;
        let mut address = String::new();
        if let Some(output) = server.output() {
            BufReader::new(output).read_line(&mut address)?;
        }
        let address = address.trim().to_owned();
        if !address.starts_with("http") {
            return Err(trouble("the server printed no address: run `cargo xtask serve --no-build` to see why"));
        }
        Ok(Self { address, server: Some(server) })
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
