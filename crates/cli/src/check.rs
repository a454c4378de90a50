//! `check`: everything that is wrong with a catalogue.

use std::fmt::Write as _;

use clap::ValueEnum;
use fitup_catalogue::{Position, Problem, Severity};
use fitup_words::Words;
use serde_json::{Value, json};

/// How findings and problems are printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, ValueEnum)]
pub enum Format {
    /// One line for each.
    Short,
    /// Each with its place, the line it is in and the mend.
    #[default]
    Full,
    /// Data.
    Json,
}

/// The problems of a file as they are printed. `text` is what was read, if it was text: the full
/// format shows lines of it.
pub fn problems_text(words: &Words, file: &str, text: Option<&str>, problems: &[Problem], format: Format) -> String {
    match format {
        Format::Short => problems.iter().map(|problem| short(words, file, problem)).collect::<Vec<_>>().concat(),
        Format::Full => {
            let mut all: String =
                problems.iter().map(|problem| full(words, file, text, problem)).collect::<Vec<_>>().concat();
            all.push_str(&summary(words, file, problems));
            all
        }
        Format::Json => pretty(&problems_data(words, file, problems)),
    }
}

/// The problems of a file as data.
pub fn problems_data(words: &Words, file: &str, problems: &[Problem]) -> Value {
    let list: Vec<Value> = problems.iter().map(|problem| data(words, problem)).collect();
    json!({ "file": file, "problems": list })
}

/// Data as it is printed.
pub fn pretty(value: &Value) -> String {
    format!("{value:#}\n")
}

/// Where a problem is, as compilers write it: line and column, or table, row and column.
pub fn place(problem: &Problem) -> String {
    problem.position.as_ref().map_or_else(String::new, position)
}

fn position(position: &Position) -> String {
    match position {
        Position::Text { line, column } => format!("{line}:{column}"),
        Position::Cell { table, row, column } if column.is_empty() => format!("{table}:{row}"),
        Position::Cell { table, row, column } => format!("{table}:{row}:{column}"),
    }
}

fn short(words: &Words, file: &str, problem: &Problem) -> String {
    let at = place(problem);
    let at = if at.is_empty() { String::new() } else { format!(":{at}") };
    let told = words.problem(problem);
    format!(
        "{file}{at}: {}[{}]: {} {}\n",
        told_severity(words, problem),
        problem.code.as_str(),
        told.sentence,
        told.mend
    )
}

fn full(words: &Words, file: &str, text: Option<&str>, problem: &Problem) -> String {
    let told = words.problem(problem);
    let mut out = format!("{}[{}]: {}\n", told_severity(words, problem), problem.code.as_str(), told.sentence);
    let at = place(problem);
    let at = if at.is_empty() { String::new() } else { format!(":{at}") };
    let _ = writeln!(out, "  --> {file}{at}{}", whereabouts(problem));
    if let (Some(Position::Text { line, column }), Some(text)) = (&problem.position, text) {
        excerpt(&mut out, text, *line, *column);
    }
    if let Some(other) = &problem.other {
        let _ = writeln!(out, "  ::: {file}:{}", position(other));
        if let (Position::Text { line, column }, Some(text)) = (other, text) {
            excerpt(&mut out, text, *line, *column);
        }
    }
    let _ = writeln!(out, "  = {}\n", told.mend);
    out
}

/// Row and field of a problem in words a catalogue keeper finds again.
fn whereabouts(problem: &Problem) -> String {
    if problem.path.is_empty() {
        return String::new();
    }
    let field = problem.field();
    match (problem.row.is_empty(), field.is_empty()) {
        (true, _) => format!(" ({})", problem.path),
        (false, true) => format!(" ({} “{}”)", problem.table(), problem.row),
        (false, false) => format!(" ({} “{}”, {field})", problem.table(), problem.row),
    }
}

/// Characters of a line shown on either side of the place.
const SHOWN: usize = 50;

/// The line of the text, cut to what is near the place, with a mark under it.
fn excerpt(out: &mut String, text: &str, line: u32, column: u32) {
    let (line, column) = (line as usize, column as usize - 1);
    let Some(content) = text.lines().nth(line - 1) else { return };
    let from = column.saturating_sub(SHOWN);
    // What a file holds must not steer the terminal.
    let near: String =
        content.chars().skip(from).take(2 * SHOWN).map(|c| if c.is_control() { ' ' } else { c }).collect();
    let marked = span(content.chars().skip(column)).min(near.chars().count().saturating_sub(column - from)).max(1);
    let gutter = " ".repeat(line.to_string().len());
    let _ =
        writeln!(out, "{gutter} |\n{line} | {near}\n{gutter} | {}{}", " ".repeat(column - from), "^".repeat(marked));
}

/// How many characters of a line a value has that begins there: a text to its closing quotation mark, a
/// number or word to its end, of a list or record the bracket.
fn span(rest: impl Iterator<Item = char>) -> usize {
    let mut rest = rest.peekable();
    match rest.peek() {
        Some('"') => {
            let mut escaped = false;
            let is_open = |c: &char| {
                let is_open = *c != '"' || escaped;
                escaped = *c == '\\' && !escaped;
                is_open
            };
            2 + rest.skip(1).take_while(is_open).count()
        }
        Some(c) if c.is_alphanumeric() || *c == '-' => {
            rest.take_while(|c| c.is_alphanumeric() || ['-', '+', '.', '_'].contains(c)).count()
        }
        _ => 1,
    }
}

fn summary(words: &Words, file: &str, problems: &[Problem]) -> String {
    let errors = problems.iter().filter(|problem| problem.code.severity() == Severity::Error).count();
    let warnings = problems.len() - errors;
    let key = match (errors, warnings) {
        (0, 0) => "file-clean",
        (0, _) => "file-warned",
        _ => "file-faulty",
    };
    words.ui(key, &[("file", file.into()), ("errors", errors.into()), ("warnings", warnings.into())]) + "\n"
}

/// The severity as it is told.
fn told_severity(words: &Words, problem: &Problem) -> String {
    words.ui(if severity(problem) == "error" { "file-error" } else { "file-warning" }, &[])
}

fn severity(problem: &Problem) -> &'static str {
    match problem.code.severity() {
        Severity::Error => "error",
        Severity::Warning => "warning",
    }
}

fn data(words: &Words, problem: &Problem) -> Value {
    let told = words.problem(problem);
    let place = |position: Option<&Position>| match position {
        None => Value::Null,
        Some(Position::Text { line, column }) => json!({ "line": line, "column": column }),
        Some(Position::Cell { table, row, column }) => json!({ "table": table, "row": row, "column": column }),
    };
    let args: serde_json::Map<String, Value> =
        problem.args.iter().map(|(name, value)| ((*name).to_owned(), Value::from(value.as_str()))).collect();
    json!({
        "code": problem.code.as_str(),
        "severity": severity(problem),
        "path": problem.path,
        "row": problem.row,
        "position": place(problem.position.as_ref()),
        "other": place(problem.other.as_ref()),
        "args": args,
        "text": told.sentence,
        "mend": told.mend,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use fitup_catalogue::read;
    use fitup_words::{Lang, Units};

    const BAD: &str = "{\"format\": 1, \"name\": \"A\",\n\t\"unit\": {}}";

    fn english() -> Words {
        Words::new(Lang::En, Units::Metric)
    }

    #[test]
    fn problems_are_told_in_the_language_that_is_asked_for() {
        let german = Words::new(Lang::De, Units::Metric);
        let text = problems_text(&german, "a.json", Some(BAD), &read(BAD).problems, Format::Full);
        assert!(text.contains("Fehler[missing-field]: Das Feld „units“ fehlt."), "{text}");
        assert!(text.ends_with("a.json: 2 Fehler, 0 Warnungen\n"), "{text}");
        let data = problems_text(&german, "a.json", None, &read(BAD).problems, Format::Json);
        assert!(data.contains("\"severity\": \"error\""), "data stay as they are: {data}");
    }

    #[test]
    fn the_short_format_is_one_line_a_problem() {
        let text = problems_text(&english(), "a.json", Some(BAD), &read(BAD).problems, Format::Short);
        assert_eq!(
            text,
            "a.json:1:1: error[missing-field]: The field “units” is missing. Add it.\n\
             a.json:2:2: error[unknown-field]: There is no field “unit” here. Did you mean “units”?\n"
        );
    }

    #[test]
    fn the_full_format_shows_the_line_and_the_mend() {
        let text = problems_text(&english(), "a.json", Some(BAD), &read(BAD).problems, Format::Full);
        let last = "error[unknown-field]: There is no field “unit” here.\n  \
                    --> a.json:2:2 (unit)\n  \
                    |\n2 |  \"unit\": {}}\n  |  ^^^^^^\n  = Did you mean “units”?\n\n\
                    a.json: 2 errors, 0 warnings\n";
        assert!(text.ends_with(last), "{text}");
    }

    #[test]
    fn the_data_format_is_json_with_everything() {
        let text = problems_text(&english(), "a.json", None, &read(BAD).problems, Format::Json);
        let data: Value = serde_json::from_str(&text).unwrap();
        assert_eq!(data["problems"][1]["args"]["suggestion"], "units");
        assert_eq!(data["problems"][1]["position"]["line"], 2);
    }

    #[test]
    fn nothing_of_the_file_steers_the_terminal() {
        let text = problems_text(&english(), "a", Some("\u{1b}[31mred"), &read("\u{1b}[31mred").problems, Format::Full);
        assert!(!text.contains('\u{1b}'), "{text:?}");
    }
}
