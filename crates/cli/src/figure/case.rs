//! Cases in and answers out.

use std::fmt;

use serde_json::{Map, Value, json};

use super::{CaseError, Compute};

/// One case: its id and its inputs. Other keys (`expected`, `tolerance`, `note`) are not read.
#[derive(Debug, Clone, PartialEq)]
pub struct Case {
    /// The id as written, null when there is none.
    pub id: Value,
    /// What the figure is computed from, or why the case cannot be read.
    pub inputs: Result<Value, CaseError>,
}

/// A case's answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// The case's id.
    pub id: Value,
    /// The result, or why there is none.
    pub outcome: Result<Value, CaseError>,
}

/// Why no case can be read at all.
#[derive(Debug)]
pub enum CasesError {
    /// The text is not JSON.
    Syntax(serde_json::Error),
    /// The text is JSON but neither a case nor a list.
    Shape(&'static str),
}

impl fmt::Display for CasesError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Syntax(error) => {
                write!(f, "not JSON: {error}; JSON knows no NaN or Infinity, no comments and no trailing commas")
            }
            Self::Shape(kind) => {
                write!(f, "holds {kind}; give one case {{\"id\": …, \"inputs\": {{…}}}} or a list of cases")
            }
        }
    }
}

/// The cases in a file's text.
///
/// NaN and Infinity, which JSON does not know but many programs write, and numbers beyond any double spoil their own
/// case alone.
///
/// # Errors
/// The text is not JSON, or neither an object nor a list.
pub fn cases(text: &str) -> Result<Vec<Case>, CasesError> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let value = serde_json::from_str(text)
        .or_else(|error| serde_json::from_str(&with_unsound_numbers_as_texts(text)).map_err(|_| error));
    match value.map_err(CasesError::Syntax)? {
        Value::Array(list) => Ok(list.into_iter().map(case).collect()),
        one @ Value::Object(_) => Ok(vec![case(one)]),
        other => Err(CasesError::Shape(kind(&other))),
    }
}

/// The answer to one case.
pub fn answer(compute: Compute, case: &Case) -> Answer {
    let outcome = case.inputs.as_ref().map_err(Clone::clone).and_then(compute);
    Answer { id: case.id.clone(), outcome }
}

/// The answers as a JSON list of `{"id", "result"}`, with `{"id", "error"}` for those without one.
pub fn to_json(answers: &[Answer]) -> Value {
    let entry = |(place, answer): (usize, &Answer)| match &answer.outcome {
        Ok(result) => json!({ "id": answer.id, "result": result }),
        Err(error) => json!({ "id": answer.id, "error": error.told(&answer.id, place) }),
    };
    Value::Array(answers.iter().enumerate().map(entry).collect())
}

/// The text with every number in it that is not finite put in quotes, so that the key that holds it can be told.
fn with_unsound_numbers_as_texts(text: &str) -> String {
    let mut sound = String::with_capacity(text.len());
    let mut rest = text;
    while !rest.is_empty() {
        let (piece, after) = rest.split_at(piece(rest));
        if piece.parse::<f64>().is_ok_and(|number| !number.is_finite()) {
            sound.extend(["\"", piece, "\""]);
        } else {
            sound.push_str(piece);
        }
        rest = after;
    }
    sound
}

/// How long the quoted text, the word, the number or the single sign is that this starts with.
fn piece(text: &str) -> usize {
    let in_word = |sign: char| sign.is_ascii_alphanumeric() || "+-.".contains(sign);
    if let Some(quoted) = text.strip_prefix('"') {
        let mut escaped = false;
        let ends = |sign: char| {
            let ends = sign == '"' && !escaped;
            escaped = sign == '\\' && !escaped;
            ends
        };
        quoted.find(ends).map_or(text.len(), |end| end + 2)
    } else if text.starts_with(in_word) {
        text.find(|sign| !in_word(sign)).unwrap_or(text.len())
    } else {
        text.chars().next().map_or(0, char::len_utf8)
    }
}

fn case(value: Value) -> Case {
    match value {
        Value::Object(mut fields) => Case { id: fields.remove("id").unwrap_or(Value::Null), inputs: inputs(fields) },
        other => {
            let message = format!("a case is an object, not {}; write {{\"id\": …, \"inputs\": {{…}}}}", kind(&other));
            Case { id: Value::Null, inputs: Err(CaseError::new("", message)) }
        }
    }
}

fn inputs(mut fields: Map<String, Value>) -> Result<Value, CaseError> {
    match fields.remove("inputs") {
        Some(inputs @ Value::Object(_)) => Ok(inputs),
        Some(other) => {
            Err(CaseError::new("inputs", format!("must be an object of named values, not {}", kind(&other))))
        }
        None => Err(CaseError::new("inputs", "is missing; put the figure's values in it")),
    }
}

const fn kind(value: &Value) -> &'static str {
    match value {
        Value::Null => "null",
        Value::Bool(_) => "true or false",
        Value::Number(_) => "a number",
        Value::String(_) => "a text",
        Value::Array(_) => "a list",
        Value::Object(_) => "an object",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn double(inputs: &Value) -> Result<Value, CaseError> {
        let x = inputs["x"].as_f64().ok_or_else(|| CaseError::new("inputs.x", "must be a number"))?;
        Ok(json!(2.0 * x))
    }

    fn told(text: &str) -> Value {
        let cases = cases(text).expect("readable");
        to_json(&cases.iter().map(|case| answer(double, case)).collect::<Vec<_>>())
    }

    #[test]
    fn one_case_and_a_list_are_both_answered_with_a_list() {
        assert_eq!(told(r#"{"id": "a", "inputs": {"x": 2}, "note": "n"}"#), json!([{"id": "a", "result": 4.0}]));
        assert_eq!(told("\u{feff}[]"), json!([]));
    }

    #[test]
    fn a_bad_case_stands_in_its_place_and_the_others_are_computed() {
        let answers = told(
            r#"[{"id": "a"}, {"id": 7, "inputs": {"x": 1}}, 3, {"inputs": {"x": "no"}}, {"id": "d", "inputs": 1}]"#,
        );
        assert_eq!(
            answers,
            json!([
                {"id": "a", "error": "case \"a\", key \"inputs\": is missing; put the figure's values in it"},
                {"id": 7, "result": 2.0},
                {"id": null, "error": "case 3 of the list: a case is an object, not a number; write {\"id\": …, \"inputs\": {…}}"},
                {"id": null, "error": "case 4 of the list, key \"x\": must be a number"},
                {"id": "d", "error": "case \"d\", key \"inputs\": must be an object of named values, not a number"},
            ])
        );
    }

    #[test]
    fn a_number_that_json_does_not_know_spoils_its_own_case_alone() {
        let answers = told(
            r#"[{"id": "NaN \"\\", "inputs": {"x": NaN}}, {"id": "é", "inputs": {"x": -Infinity}}, {"id": "c", "inputs": {"x": 1e999}},
                {"id": "d", "inputs": {"x": -1.5e1}, "note": [null, true, "1e999"]}]"#,
        );
        assert_eq!(
            answers,
            json!([
                {"id": "NaN \"\\", "error": "case \"NaN \\\"\\\\\", key \"x\": must be a number"},
                {"id": "é", "error": "case \"é\", key \"x\": must be a number"},
                {"id": "c", "error": "case \"c\", key \"x\": must be a number"},
                {"id": "d", "result": -30.0},
            ])
        );
    }

    #[test]
    fn a_number_is_read_to_its_last_digit() {
        // A quick reader is one step off here.
        let read = 0.602_588_647_407_699_1_f64;
        assert_eq!(told(r#"{"id": 1, "inputs": {"x": 0.6025886474076991}}"#)[0]["result"].as_f64(), Some(2.0 * read));
    }

    #[test]
    fn what_holds_no_case_is_refused_whole() {
        for text in ["", "{", "[NaN", "[1e999,]", "[1,]"] {
            assert!(matches!(cases(text), Err(CasesError::Syntax(_))), "{text}");
        }
        for text in ["3", "null", "\"a\"", "true"] {
            assert!(matches!(cases(text), Err(CasesError::Shape(_))), "{text}");
        }
    }
}
