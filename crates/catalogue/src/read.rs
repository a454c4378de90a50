//! Reading a file: from text to the core's catalogue, or to everything that is wrong with it.

use fitup_core::item::Catalogue;

use crate::lower::lower;
use crate::problem::{Code, Position, Problem, Severity};
use crate::wire::CatalogueFile;

/// What came of reading a file.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Reading {
    /// The catalogue; `None` when a problem is an error.
    pub catalogue: Option<Catalogue>,
    /// Everything that is wrong, in the order of the file.
    pub problems: Vec<Problem>,
}

/// Reads a catalogue file. Any text is safe to give: the worst that comes of it is a problem.
pub fn read(text: &str) -> Reading {
    let mut problems = Vec::new();
    let file: Option<CatalogueFile> = match serde_json::from_str(text) {
        Ok(file) => Some(file),
        Err(error) => {
            let code = if error.is_data() { Code::Decode } else { Code::Syntax };
            let count = |n: usize| u32::try_from(n).unwrap_or(u32::MAX);
            let position = Position { line: count(error.line()), column: count(error.column()) };
            let problem = Problem::new(code, "").with("found", error.to_string());
            problems.push(Problem { position: Some(position), ..problem });
            None
        }
    };
    let catalogue = file.and_then(|file| lower(&file, &mut problems));
    let usable = problems.iter().all(|problem| problem.code.severity() == Severity::Warning);
    Reading { catalogue: catalogue.filter(|_| usable), problems }
}

/// Reads a catalogue file from bytes, which may not even be text.
pub fn read_bytes(bytes: &[u8]) -> Reading {
    match std::str::from_utf8(bytes) {
        Ok(text) => read(text),
        Err(error) => {
            let problem = Problem::new(Code::Syntax, "").with("found", error.to_string());
            Reading { catalogue: None, problems: vec![problem] }
        }
    }
}
