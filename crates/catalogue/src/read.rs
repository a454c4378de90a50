//! Reading a file: from text to the core's catalogue, or to everything that is wrong with it.

use bumpalo::Bump;
use fitup_core::item::Catalogue;
use fitup_core::order;

use crate::check;
use crate::decode::in_format;
use crate::lower::{Units, lower};
use crate::problem::{Code, Problem, Severity};
use crate::report::Report;
use crate::tree::{self, Node, locate};
use crate::wire::{CatalogueFile, FORMAT};

/// What came of reading a file.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Reading {
    /// The catalogue; `None` when a problem is an error.
    pub catalogue: Option<Catalogue>,
    /// Everything that is wrong, in the order of the file.
    pub problems: Vec<Problem>,
}

/// Reads a catalogue file. Any text is safe to give: the worst that comes of it is a problem.
///
/// # Examples
/// ```
/// let reading = fitup_catalogue::read(r#"{"format": 2}"#);
/// assert_eq!(reading.problems[0].code.as_str(), "newer-format");
/// assert!(reading.catalogue.is_none());
/// ```
pub fn read(text: &str) -> Reading {
    let (read, problems) = read_text(text, Depth::Quick);
    Reading { catalogue: read.map(|(_, catalogue)| catalogue), problems }
}

/// Reads a catalogue file from bytes, which may not even be text.
pub fn read_bytes(bytes: &[u8]) -> Reading {
    match std::str::from_utf8(bytes) {
        Ok(text) => read(text),
        Err(error) => {
            let problem = Problem::new(Code::NotText, "").with("byte", error.valid_up_to());
            Reading { catalogue: None, problems: vec![problem] }
        }
    }
}

/// Reads a catalogue file and looks closer than [`read`], as its keeper wants it: at what is right in
/// form and hardly meant so, and at the guide's sets, which are judged one by one. Keeps the records as they are written, too, to turn
/// them into another form. There is something when no problem is an error.
///
/// A reader in the browser leaves this out: it costs a judgement for each set, and a build says
/// the same of its own joints anyway.
pub fn read_closely(text: &str) -> (Option<(CatalogueFile, Catalogue)>, Vec<Problem>) {
    read_text(text, Depth::Close)
}

/// How far reading looks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Depth {
    /// At what can be wrong.
    Quick,
    /// At what is hardly meant so, too, and at the guide's sets.
    Close,
}

fn read_text(text: &str, depth: Depth) -> (Option<(CatalogueFile, Catalogue)>, Vec<Problem>) {
    let memory = Bump::new();
    match tree::parse(text, &memory) {
        Ok(tree) => {
            let (read, mut problems) = examine(tree, depth);
            locate(text, &mut problems);
            (read, problems)
        }
        Err(problem) => {
            let mut problems = vec![*problem];
            locate(text, &mut problems);
            (None, problems)
        }
    }
}

/// Decodes, checks and lowers a tree. The problems come in the order of the file, each with the
/// place of its value but without a position.
pub(crate) fn examine(tree: Node<'_>, depth: Depth) -> (Option<(CatalogueFile, Catalogue)>, Vec<Problem>) {
    let mut report = Report::new();
    let read = in_format(tree, FORMAT, &mut report).map(|file: CatalogueFile| {
        report.silence_invented();
        let units = Units::of(&file.units, &mut report);
        check::records(&file, &mut report);
        let catalogue = lower(&file, units, &mut report);
        check::sizes(&catalogue, units, &mut report);
        check::outlines(&catalogue, units, &mut report);
        if depth == Depth::Close {
            check::closely(&file, &catalogue, units, &mut report);
            #[cfg(not(target_arch = "wasm32"))]
            check::dates(&file, &today(), &mut report);
        }
        if depth == Depth::Close && !report.has_error() {
            check::listed_joints(&catalogue, &mut report);
        }
        (file, catalogue)
    });
    let read = read.filter(|_| !report.has_error());
    let mut problems = report.into_problems();
    for problem in &mut problems {
        problem.row = tree::row_id(tree, &problem.path);
        if let Some(other) = problem.arg("other") {
            problem.other_at = Some(tree::find(tree, other).at);
        }
        if problem.at.is_none() && problem.code != Code::MoreProblems {
            problem.at = Some(tree::find(tree, &problem.path).at);
        }
    }
    order::sort(&mut problems, |a, b| {
        let last = |p: &Problem| p.code == Code::MoreProblems;
        (last(a), a.at, a.code, &a.path).cmp(&(last(b), b.at, b.code, &b.path))
    });
    (read, problems)
}

/// Today's date by the machine's clock, as ISO 8601 writes it. A clock that is wrong by a day makes a
/// warning at most.
#[cfg(not(target_arch = "wasm32"))]
fn today() -> String {
    const DAY: u64 = 86_400;
    let since = std::time::SystemTime::now().duration_since(std::time::UNIX_EPOCH).unwrap_or_default();
    let mut left = since.as_secs() / DAY;
    let mut year = 1970;
    while left >= u64::from(check::days_of_year(year)) {
        left -= u64::from(check::days_of_year(year));
        year += 1;
    }
    let mut month = 1;
    while left >= u64::from(check::days_of_month(year, month)) {
        left -= u64::from(check::days_of_month(year, month));
        month += 1;
    }
    format!("{year:04}-{month:02}-{:02}", left + 1)
}

impl Report {
    /// Whether anything that is written down keeps the file from being used.
    fn has_error(&self) -> bool {
        self.problems().iter().any(|problem| problem.code.severity() == Severity::Error)
    }
}
