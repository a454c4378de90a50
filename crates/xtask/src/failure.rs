//! What went wrong: the command or step, the cause, and the mend.

use std::fmt;

/// A step that failed.
#[derive(Debug)]
pub struct Failure {
    /// The command or step.
    pub step: String,
    /// Why it failed.
    pub cause: String,
    /// What mends it.
    pub mend: String,
}

/// A failure of a step.
pub fn failure(step: impl Into<String>, cause: impl Into<String>, mend: impl Into<String>) -> Failure {
    Failure { step: step.into(), cause: cause.into(), mend: mend.into() }
}

impl fmt::Display for Failure {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(out, "failed: {}", self.step)?;
        writeln!(out, " cause: {}", self.cause.trim_end())?;
        write!(out, "  mend: {}", self.mend)
    }
}
