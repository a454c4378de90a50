//! Problems of a catalogue as plain data.

use fitup_catalogue::{Position, Problem, Severity};
use fitup_words::Words;
use serde::{Serialize, Serializer};

/// One thing that is wrong.
#[derive(Serialize)]
pub struct ProblemReport {
    code: &'static str,
    severity: &'static str,
    path: String,
    row: String,
    line: Option<u32>,
    column: Option<u32>,
    #[serde(serialize_with = "as_record")]
    args: Vec<(&'static str, String)>,
}

/// The same in words, with what mends it.
#[derive(Serialize)]
pub struct ToldReport {
    #[serde(flatten)]
    problem: ProblemReport,
    text: String,
    mend: String,
}

impl ToldReport {
    /// A problem in a language.
    pub fn of(words: &Words, problem: &Problem) -> Self {
        let told = words.problem(problem);
        Self { problem: ProblemReport::of(problem), text: told.sentence, mend: told.mend }
    }
}

impl ProblemReport {
    /// Where and what, for an error's message.
    pub fn line(&self) -> String {
        let place = self.line.zip(self.column).map(|(line, column)| format!("{line}:{column} ")).unwrap_or_default();
        format!("{place}{}: {}", self.path, self.code)
    }

    /// A problem.
    pub fn of(problem: &Problem) -> Self {
        let (line, column) = match problem.position {
            Some(Position::Text { line, column }) => (Some(line), Some(column)),
            _ => (None, None),
        };
        Self {
            code: problem.code.as_str(),
            severity: match problem.code.severity() {
                Severity::Error => "error",
                Severity::Warning => "warning",
            },
            path: problem.path.clone(),
            row: problem.row.clone(),
            line,
            column,
            args: problem.args.clone(),
        }
    }
}

fn as_record<S: Serializer>(args: &[(&'static str, String)], serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_map(args.iter().map(|(name, value)| (name, value)))
}
