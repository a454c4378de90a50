//! A child process that ends with its owner.

use std::process::{Child, Command, Stdio};

use super::{Outcome, trouble};

/// A running child; dropping it ends it.
#[derive(Debug)]
pub struct Process(Child);

impl Process {
    /// Starts a command with its standard output open to us and its standard error kept silent.
    ///
    /// # Errors
    /// The command cannot be started.
    pub fn start(command: &mut Command) -> Outcome<Self> {
        let child = command.stdin(Stdio::null()).stdout(Stdio::piped()).stderr(Stdio::null()).spawn();
        child.map(Self).map_err(|error| trouble(format!("cannot start {command:?}: {error}")))
    }

    /// The child's standard output; `None` the second time.
    pub fn output(&mut self) -> Option<std::process::ChildStdout> {
        self.0.stdout.take()
    }

    /// Whether it has ended.
    pub fn has_ended(&mut self) -> bool {
        self.0.try_wait().is_ok_and(|status| status.is_some())
    }
}

impl Drop for Process {
    fn drop(&mut self) {
        // One that has ended by itself cannot be ended again.
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}
