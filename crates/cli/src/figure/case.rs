//! Cases in and answers out.

use std::fmt;
use std::slice;

use fitup_catalogue::decode::{At, Decode, Report, wrong_type};
use fitup_catalogue::tree::{self, Bump, Kind, Lines, Node};
use fitup_catalogue::{Code, Position, Problem};
use serde_json::{Value, json};

use super::fault::english;
use super::{CaseError, Compute};

/// A case's answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// The case's id as written, null when there is none.
    pub id: Value,
    /// The case's place in the list, from 0.
    pub place: usize,
    /// The result, or everything for which there is none.
    pub outcome: Result<Value, Vec<CaseError>>,
}

/// Why no case can be read at all.
#[derive(Debug)]
pub enum CasesError {
    /// The text is not JSON.
    Syntax(Box<Problem>),
    /// The text is JSON but neither a case nor a list.
    Shape(Box<Problem>),
}

impl fmt::Display for CasesError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (Self::Syntax(problem) | Self::Shape(problem)) = self;
        let told = english().problem(problem);
        write!(f, "{}: {}", told.place, told.sentence)?;
        match self {
            Self::Syntax(_) => write!(f, " {}", told.mend),
            Self::Shape(_) => f.write_str(" Give one case {\"id\": …, \"inputs\": {…}} or a list of cases."),
        }
    }
}

/// The answers to the cases in a file's text: one case or a list of them. Of a case `id` and `inputs` are read; other
/// keys (`expected`, `tolerance`, `note`) are not. What is wrong with a case spoils that case alone.
///
/// # Errors
/// The text is not JSON, or neither a record nor a list.
pub fn answers(compute: Compute, text: &str) -> Result<Vec<Answer>, CasesError> {
    let memory = Bump::new();
    let located = |mut problems: Vec<Problem>| {
        tree::locate(text, &mut problems);
        problems.swap_remove(0)
    };
    let tree = tree::parse(text, &memory).map_err(|problem| CasesError::Syntax(Box::new(located(vec![*problem]))))?;
    let cases = match tree.kind {
        Kind::List(cases) => cases,
        Kind::Record(_) => slice::from_ref(&tree),
        _ => {
            let mut report = Report::new();
            wrong_type(tree, "record", At::TOP, &mut report);
            return Err(CasesError::Shape(Box::new(located(report.into_problems()))));
        }
    };
    let mut answers: Vec<Answer> =
        cases.iter().enumerate().map(|(place, &case)| answer(compute, place, case)).collect();
    locate(text, cases, &mut answers);
    Ok(answers)
}

/// The answers as a JSON list of `{"id", "result"}`, with `{"id", "error"}` for those without one.
pub fn to_json(answers: &[Answer]) -> Value {
    let entry = |answer: &Answer| match &answer.outcome {
        Ok(result) => json!({ "id": answer.id, "result": result }),
        Err(_) => json!({ "id": answer.id, "error": answer.told() }),
    };
    Value::Array(answers.iter().map(entry).collect())
}

impl Answer {
    /// Why there is no result: a sentence or two for each fault. Empty when there is one.
    pub fn told(&self) -> String {
        let faults = self.outcome.as_ref().err().into_iter().flatten();
        faults.map(|fault| fault.told(&self.id, self.place)).collect::<Vec<_>>().join(" ")
    }
}

/// A figure's result, its inputs read from the tree.
pub fn figure<T: Decode>(
    inputs: Node<'_>,
    compute: fn(&T) -> Result<Value, CaseError>,
) -> Result<Value, Vec<CaseError>> {
    let mut report = Report::new();
    let read = T::decode(inputs, At::top("inputs"), &mut report);
    let problems = report.into_problems();
    if !problems.is_empty() {
        return Err(problems.iter().map(CaseError::misread).collect());
    }
    compute(&read).map_err(|fault| vec![fault])
}

fn answer(compute: Compute, place: usize, case: Node<'_>) -> Answer {
    let mut report = Report::new();
    let outcome = match (case.kind, case.field("inputs")) {
        (_, Some(inputs)) => compute(inputs),
        (Kind::Record(_), None) => {
            Err(vec![CaseError::misread(&Problem::new(Code::MissingField, "").with("field", "inputs"))])
        }
        _ => {
            wrong_type(case, "record", At::TOP, &mut report);
            Err(report.problems().iter().map(CaseError::misread).collect())
        }
    };
    Answer { id: case.field("id").map_or(Value::Null, value), place, outcome }
}

/// Gives every fault its line and column.
fn locate(text: &str, cases: &[Node<'_>], answers: &mut [Answer]) {
    let mut places: Vec<(usize, &mut Option<Position>)> = Vec::new();
    for (&case, answer) in cases.iter().zip(answers) {
        for fault in answer.outcome.as_mut().err().into_iter().flatten() {
            let key = fault.path.split(", ").next().unwrap_or_default();
            places.push((tree::find(case, key).at as usize, &mut fault.position));
        }
    }
    places.sort_by_key(|(byte, _)| *byte);
    let bytes: Vec<usize> = places.iter().map(|(byte, _)| *byte).collect();
    for ((_, position), found) in places.into_iter().zip(Lines::of(text).positions(&bytes)) {
        *position = Some(found);
    }
}

/// A value of the tree, to be handed back as it is. A number that JSON does not know is null.
fn value(node: Node<'_>) -> Value {
    match node.kind {
        Kind::Null => Value::Null,
        Kind::Flag(flag) => flag.into(),
        Kind::Number(number) => number.parse().map_or(Value::Null, Value::Number),
        Kind::Text(text) => text.into(),
        Kind::List(nodes) => nodes.iter().map(|&node| value(node)).collect(),
        Kind::Record(entries) => entries.iter().map(|entry| (entry.name.to_owned(), value(entry.value))).collect(),
    }
}

/// A figure's result for inputs written in place.
#[cfg(test)]
pub fn computed<T: Decode>(compute: fn(&T) -> Result<Value, CaseError>, inputs: &Value) -> Result<Value, CaseError> {
    let (text, memory) = (inputs.to_string(), Bump::new());
    let tree = tree::parse(&text, &memory).expect("JSON that was just written");
    figure(tree, compute).map_err(|mut faults| faults.swap_remove(0))
}

#[cfg(test)]
mod tests {
    use fitup_catalogue::decode::Filled;
    use fitup_catalogue::read_record;

    use super::super::wire::Item;
    use super::*;

    read_record! {
        struct Double {
            required x: f64,
        }
    }

    read_record! {
        struct Side {
            required wheelbase_mm: f64,
            required items: Filled<Item>,
            nullable bolts: Option<u32>,
        }
    }

    fn double(inputs: Node<'_>) -> Result<Value, Vec<CaseError>> {
        figure(inputs, |inputs: &Double| match inputs.x {
            x if x < -100.0 => Err(CaseError::new("inputs.x", "is too low")),
            x => Ok(json!(2.0 * x)),
        })
    }

    fn told(text: &str) -> Value {
        to_json(&answers(double, text).expect("readable"))
    }

    #[test]
    fn one_case_and_a_list_are_both_answered_with_a_list() {
        assert_eq!(told(r#"{"id": "a", "inputs": {"x": 2}, "note": "n"}"#), json!([{"id": "a", "result": 4.0}]));
        assert_eq!(told("\u{feff}[]"), json!([]));
    }

    #[test]
    fn a_bad_case_stands_in_its_place_and_the_others_are_computed() {
        let answers = told(
            r#"[{"id": "a"}, {"id": 7, "inputs": {"x": 1}}, 3, {"inputs": {"x": "no"}}, {"id": ["d"], "inputs": 1},
                {"id": "e", "inputs": {"x": -101}}]"#,
        );
        let mend = "Write a value of the expected sort, or leave an optional field out.";
        assert_eq!(
            answers,
            json!([
                {"id": "a", "error": "case \"a\", key \"inputs\" (line 1, column 2): The field “inputs” is missing. Add it."},
                {"id": 7, "result": 2.0},
                {"id": null, "error": format!("case 3 of the list (line 1, column 46): Found a number, expected a record. {mend}")},
                {"id": null, "error": "case 4 of the list, key \"x\" (line 1, column 66): “no” is not a number. Write the number alone, with a decimal point and nothing between thousands; leave it out if it is not known."},
                {"id": ["d"], "error": format!("case [\"d\"], key \"inputs\" (line 1, column 98): Found a number, expected a record. {mend}")},
                {"id": "e", "error": "case \"e\", key \"x\" (line 2, column 45): is too low"},
            ])
        );
    }

    #[test]
    fn all_faults_of_a_case_are_told_each_with_its_place() {
        let side = |inputs: Node<'_>| figure(inputs, |_: &Side| Ok(Value::Null));
        let text = r#"{"inputs": {"wheelbase": 1500, "bolts": -1.5,
            "items": [{"name": "a", "points_mm": [[0, 1], [2, "x"], [3]]}, {"name": "b", "points_mm": []}]}}"#;
        let answers = answers(side, text).expect("readable");
        let faults = answers[0].outcome.as_ref().expect_err("much is wrong");
        let told = |path: &str| {
            let fault = faults.iter().find(|fault| fault.path == path).unwrap_or_else(|| panic!("{path}: {faults:?}"));
            fault.told(&Value::Null, 0)
        };
        assert_eq!(faults.len(), 6, "{faults:?}");
        let unknown = told("inputs.wheelbase");
        assert!(unknown.contains("There is no field “wheelbase” here. Did you mean “wheelbase_mm”?"), "{unknown}");
        assert!(told("inputs.wheelbase_mm").contains("is missing"));
        assert!(told("inputs.bolts").contains("(line 1, column 41): -1.5 is not a whole number"));
        assert!(told("inputs.items[0].points_mm[1][1]").contains("is not a number"));
        assert!(told("inputs.items[0].points_mm[2]").contains("Values in the list: 1; needed: 2"));
        assert!(told("inputs.items[1].points_mm").contains("(line 2, column 103): The list is empty"));
    }

    #[test]
    fn a_field_that_may_be_left_out_may_be_null() {
        let bolts = |inputs: Node<'_>| figure(inputs, |it: &Side| Ok(json!(it.bolts)));
        let items = r#"[{"name": "a", "points_mm": [[0, 1]]}]"#;
        for (more, found) in [("", Value::Null), (r#", "bolts": null"#, Value::Null), (r#", "bolts": 3"#, json!(3))] {
            let text = format!(r#"{{"inputs": {{"wheelbase_mm": 1500, "items": {items}{more}}}}}"#);
            assert_eq!(answers(bolts, &text).expect("readable")[0].outcome, Ok(found));
        }
        assert!(told(r#"{"inputs": {"x": null}}"#)[0]["error"].is_string());
    }

    #[test]
    fn a_number_that_json_does_not_know_spoils_its_own_case_alone() {
        let answers = told(
            r#"[{"id": "NaN \"\\", "inputs": {"x": NaN}}, {"id": "é", "inputs": {"x": -Infinity}}, {"id": "c", "inputs": {"x": 1e999}},
                {"id": "d", "inputs": {"x": -1.5e1}, "note": [null, true, "1e999", NaN]}]"#,
        );
        for (place, number) in ["NaN", "-Infinity", "1e999"].into_iter().enumerate() {
            let error = answers[place]["error"].as_str().expect("told");
            assert!(
                error.contains("key \"x\"") && error.contains(&format!("{number} is not a finite number")),
                "{error}"
            );
        }
        assert_eq!(answers[3], json!({"id": "d", "result": -30.0}));
    }

    #[test]
    fn a_number_is_read_to_its_last_digit() {
        // A quick reader is one step off here.
        let read = 0.602_588_647_407_699_1_f64;
        assert_eq!(told(r#"{"id": 1, "inputs": {"x": 0.6025886474076991}}"#)[0]["result"].as_f64(), Some(2.0 * read));
    }

    #[test]
    fn what_holds_no_case_is_refused_whole_with_its_place() {
        for text in ["", "{", "[NaN", "[1e999,]", "[1,]"] {
            assert!(matches!(answers(double, text), Err(CasesError::Syntax(_))), "{text}");
        }
        for text in ["3", "null", "\"a\"", "true"] {
            assert!(matches!(answers(double, text), Err(CasesError::Shape(_))), "{text}");
        }
        let told = answers(double, "[1,\n]").expect_err("a comma too many").to_string();
        assert!(told.starts_with("line 2, column 1: This is not JSON: found “]”, expected a value."), "{told}");
    }
}
