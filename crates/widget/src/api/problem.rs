//! Problems of a catalogue as plain data.

use fitup_catalogue::{Position, Problem, Severity};
use serde::{Serialize, Serializer};

/// Everything that is wrong with a file.
#[derive(Serialize)]
pub struct Problems {
    problems: Vec<ProblemReport>,
}

impl Problems {
    /// The problems of a reading.
    pub fn of(problems: &[Problem]) -> Self {
        Self { problems: problems.iter().map(ProblemReport::of).collect() }
    }
}

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

impl ProblemReport {
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
