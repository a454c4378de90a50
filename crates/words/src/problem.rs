//! A problem of a catalogue in words.

use fitup_catalogue::{Code, Position, Problem};

use crate::{Arg, Words};

/// What is told of a problem.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ProblemText {
    /// Where it is: position, path and row, as far as they are known. "line 6, column 29 · units.mas".
    pub place: String,
    /// What is wrong.
    pub sentence: String,
    /// What mends it: what was probably meant, else what is to be done or what may stand there.
    pub mend: String,
}

/// The variant of a text for what is not there.
const NONE: &str = "none";

impl Words {
    /// A problem in words.
    ///
    /// # Examples
    /// ```
    /// use fitup_catalogue::{Code, Problem};
    /// use fitup_words::{Lang, Units, Words};
    /// let problem = Problem::new(Code::MissingField, "machines[0]").with("field", "mass");
    /// let told = Words::new(Lang::En, Units::Metric).problem(&problem);
    /// assert_eq!(told.place, "machines[0]");
    /// assert_eq!(told.sentence, "The field “mass” is missing.");
    /// assert_eq!(told.mend, "Add it.");
    /// ```
    pub fn problem(&self, problem: &Problem) -> ProblemText {
        let key = format!("problem-{}", problem.code.as_str());
        let args: Vec<(&str, Arg)> =
            problem.args.iter().map(|(name, value)| (*name, self.problem_arg(problem, name, value))).collect();
        let mend = match problem.arg("suggestion") {
            Some(_) => self.ui("problem-suggestion", &args),
            None => self.ui(&format!("{key}.mend"), &args),
        };
        ProblemText { place: self.problem_place(problem), sentence: self.ui(&key, &args), mend }
    }

    fn problem_place(&self, problem: &Problem) -> String {
        // The numbers of lines and rows are names: they are not grouped.
        let position = self.position(problem.position.as_ref());
        let parts = [position.as_str(), problem.path.as_str(), problem.row.as_str()];
        parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(" · ")
    }

    /// A place in what was read.
    fn position(&self, position: Option<&Position>) -> String {
        match position {
            Some(Position::Text { line, column }) => {
                let args = [("line", line.to_string().into()), ("column", column.to_string().into())];
                self.ui("problem-line-column", &args)
            }
            Some(Position::Cell { table, row, column }) => {
                let column = if column.is_empty() { choice(NONE) } else { column.as_str().into() };
                let args = [("table", table.as_str().into()), ("row", row.to_string().into()), ("column", column)];
                self.ui("problem-cell", &args)
            }
            None => String::new(),
        }
    }

    /// The reader's own words are put into words of the language; what a file holds stays as it is.
    fn problem_arg(&self, problem: &Problem, name: &str, value: &str) -> Arg {
        match (problem.code, name) {
            // Where the other row is, for people; a path only where nothing was read.
            (_, "other") if problem.other.is_some() => self.position(problem.other.as_ref()).into(),
            (Code::HiddenRows, "last") if problem.arg("first") == Some(value) => choice(NONE),
            (Code::WrongType, _) | (Code::Syntax, "expected") => self.ui(&format!("sort-{value}"), &[]).into(),
            (Code::Syntax, "found") if value == "end-of-file" => choice(value),
            (Code::NotExactlyOne, "found") if value.is_empty() => choice(NONE),
            (Code::UnknownReference, "table") if value == "items" => choice(value),
            (Code::CentreOutside, "view") => choice(value),
            (Code::ListedCannotMate | Code::BoltsDisagree | Code::LooksAway, "role") => {
                self.ui(&format!("role-{}", value.replace('_', "-")), &[]).into()
            }
            _ => value.into(),
        }
    }
}

fn choice(variant: &str) -> Arg {
    Arg::Choice(variant.to_owned())
}
