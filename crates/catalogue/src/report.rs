//! Where problems are gathered.

use crate::at::At;
use crate::problem::{Code, Problem};

/// Most problems that are written down. No source: nobody reads more in one go.
const MOST_PROBLEMS: usize = 1_000;

/// Most characters compared in search of suggestions, for the whole file: a fraction of a second.
/// No source.
const SUGGESTING: usize = 20_000_000;

/// Longest text that is offered or looked up as a suggestion, bytes. No source.
const LONGEST_SUGGESTION: usize = 80;

/// The problems of one reading.
#[derive(Debug)]
pub struct Report {
    problems: Vec<Problem>,
    silenced: Vec<String>,
    invented: Vec<String>,
    overflow: bool,
    suggesting: usize,
}

impl Default for Report {
    fn default() -> Self {
        Self {
            problems: Vec::new(),
            silenced: Vec::new(),
            invented: Vec::new(),
            overflow: false,
            suggesting: SUGGESTING,
        }
    }
}

impl Report {
    /// Nothing wrong yet.
    pub fn new() -> Self {
        Self::default()
    }

    /// Writes a problem down, unless it only follows from one that is written down already.
    pub fn add(&mut self, problem: Problem) {
        // Once problems are left out, one more makes no difference.
        if self.overflow || self.is_silent(&problem.path) {
            return;
        }
        if self.problems.len() < MOST_PROBLEMS {
            self.problems.push(problem);
        } else {
            self.overflow = true;
        }
    }

    /// Writes down that the value at a place is not what the format wants. Something is invented
    /// in its stead.
    pub fn fault(&mut self, code: Code, at: At<'_>, start: u32, args: impl FnOnce() -> Vec<(&'static str, String)>) {
        if !self.skips() {
            self.write(code, at, start, args());
        }
    }

    fn write(&mut self, code: Code, at: At<'_>, start: u32, args: Vec<(&'static str, String)>) {
        let problem = Problem { at: Some(start), args, ..Problem::new(code, at) };
        if code != Code::MissingField {
            self.invented.push(problem.path.clone());
        }
        self.problems.push(problem);
    }

    /// Writes down what is wrong at a cell of a table.
    #[cfg(feature = "tables")]
    pub fn fault_at(&mut self, code: Code, cell: u32, args: Vec<(&'static str, String)>) {
        if !self.skips() {
            self.problems.push(Problem { at: Some(cell), args, ..Problem::new(code, "") });
        }
    }

    /// Remembers that the value at a place is invented.
    pub fn invented(&mut self, at: At<'_>) {
        if !self.is_full() {
            self.invented.push(at.to_string());
        }
    }

    /// From here on, problems at, above or below invented values are not written down.
    pub fn silence_invented(&mut self) {
        self.silenced.append(&mut self.invented);
    }

    /// Whether a problem now found is only counted among those that are not shown.
    pub fn skips(&mut self) -> bool {
        self.overflow |= self.is_full();
        self.overflow
    }

    fn is_full(&self) -> bool {
        self.problems.len() >= MOST_PROBLEMS
    }

    /// The candidate nearest to what was found, if one is near enough to have been meant.
    pub fn nearest<'a>(&mut self, found: &str, candidates: impl IntoIterator<Item = &'a str>) -> Option<String> {
        if found.len() > LONGEST_SUGGESTION {
            return None;
        }
        let near_enough = (found.chars().count() / 3).max(1);
        let mut best: Option<(usize, &str)> = None;
        for candidate in candidates {
            // What differs in its numbers is another thing, however near: `arm-2` is not meant by `arm-3`.
            if digits(candidate) != digits(found) {
                continue;
            }
            if candidate.len() > LONGEST_SUGGESTION || candidate.len().abs_diff(found.len()) > 4 * near_enough {
                continue;
            }
            let cost = (candidate.len() + 1) * (found.len() + 1);
            if cost > self.suggesting {
                break;
            }
            self.suggesting -= cost;
            let distance = strsim::osa_distance(&found.to_ascii_lowercase(), &candidate.to_ascii_lowercase());
            if distance <= near_enough && best.is_none_or(|(least, _)| distance < least) {
                best = Some((distance, candidate));
            }
        }
        best.map(|(_, candidate)| candidate.to_owned())
    }

    /// The problems so far.
    pub fn problems(&self) -> &[Problem] {
        &self.problems
    }

    /// Whether something at, above or below a place is invented.
    pub fn is_silent(&self, path: &str) -> bool {
        self.silenced.iter().any(|silent| is_within(path, silent) || is_within(silent, path))
    }

    /// The problems, in the order they were found.
    pub fn into_problems(mut self) -> Vec<Problem> {
        if self.overflow {
            self.problems.push(Problem::new(Code::MoreProblems, "").with("shown", MOST_PROBLEMS));
        }
        self.problems
    }
}

/// The digits of a name, one after the other.
fn digits(name: &str) -> impl PartialEq + use<> {
    name.bytes().filter(u8::is_ascii_digit).collect::<Vec<u8>>()
}

/// Whether `path` is `outer` or leads on from it.
fn is_within(path: &str, outer: &str) -> bool {
    path.strip_prefix(outer).is_some_and(|rest| rest.is_empty() || rest.starts_with(['.', '[']))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_follows_from_an_invented_value_is_not_said() {
        let mut report = Report::new();
        let table = At::top("machines");
        report.invented(table.index(1).field("mass"));
        report.silence_invented();
        for path in
            ["machines[1].mass", "machines[1].mass.value", "machines[1]", "machines[1].masses", "machines[10].mass"]
        {
            report.add(Problem::new(Code::MassNotPositive, path));
        }
        let paths: Vec<_> = report.into_problems().into_iter().map(|p| p.path).collect();
        assert_eq!(paths, ["machines[1].masses", "machines[10].mass"]);
    }

    #[test]
    fn a_suggestion_is_near_or_none() {
        let mut report = Report::new();
        let known = ["axle_anchor", "front_anchor", "rack"];
        assert_eq!(report.nearest("axle_ancor", known), Some("axle_anchor".into()));
        assert_eq!(report.nearest("RACK", known), Some("rack".into()));
        assert_eq!(report.nearest("hitch", known), None);
        assert_eq!(report.nearest("arm-3", ["arm-1", "arm-2"]), None);
        assert_eq!(report.nearest("amr-2", ["arm-1", "arm-2"]), Some("arm-2".into()));
        assert_eq!(report.nearest(&"x".repeat(1000), known), None);
    }

    #[test]
    fn problems_beyond_the_limit_are_said_in_one() {
        let mut report = Report::new();
        for index in 0..=MOST_PROBLEMS {
            report.add(Problem::new(Code::NoHoles, index));
        }
        let problems = report.into_problems();
        assert_eq!(problems.len(), MOST_PROBLEMS + 1);
        assert_eq!(problems.last().map(|p| p.code), Some(Code::MoreProblems));
    }
}
