//! Writing a file: the same records always give the same text.

use serde_json::Value;

use crate::wire::CatalogueFile;

/// Widest line that a list or record is written on in one piece, characters.
const WIDEST: usize = 110;

/// The text of a catalogue file.
///
/// Fields come in the order of the format, fields that say nothing are left out, whole numbers
/// have no decimals; a list or record stands on one line if that is short enough to read.
pub fn write(file: &CatalogueFile) -> String {
    let value = serde_json::to_value(file).expect("wire types are text, numbers, lists and records of them");
    let mut text = String::new();
    put(&mut text, &value, 0);
    text.push('\n');
    text
}

fn put(text: &mut String, value: &Value, indent: usize) {
    let start = text.rfind('\n').map_or(0, |at| at + 1);
    let used = text[start..].chars().count();
    let flat = flat(value);
    if indent > 0 && used + flat.chars().count() <= WIDEST {
        text.push_str(&flat);
        return;
    }
    match value {
        Value::Array(elements) if !elements.is_empty() => {
            text.push('[');
            for (index, element) in elements.iter().enumerate() {
                text.push_str(if index == 0 { "\n" } else { ",\n" });
                push_indent(text, indent + 1);
                put(text, element, indent + 1);
            }
            text.push('\n');
            push_indent(text, indent);
            text.push(']');
        }
        Value::Object(fields) if !fields.is_empty() => {
            text.push('{');
            for (index, (name, field)) in fields.iter().enumerate() {
                text.push_str(if index == 0 { "\n" } else { ",\n" });
                push_indent(text, indent + 1);
                text.push_str(&Value::from(name.as_str()).to_string());
                text.push_str(": ");
                put(text, field, indent + 1);
            }
            text.push('\n');
            push_indent(text, indent);
            text.push('}');
        }
        _ => text.push_str(&flat),
    }
}

fn push_indent(text: &mut String, indent: usize) {
    text.extend(std::iter::repeat_n("  ", indent));
}

/// The value on one line.
fn flat(value: &Value) -> String {
    match value {
        Value::Array(elements) => format!("[{}]", elements.iter().map(flat).collect::<Vec<_>>().join(", ")),
        Value::Object(fields) => {
            let field = |(name, value): (&String, &Value)| format!("{}: {}", Value::from(name.as_str()), flat(value));
            format!("{{{}}}", fields.iter().map(field).collect::<Vec<_>>().join(", "))
        }
        Value::Number(number) => number.as_f64().filter(|_| number.is_f64()).map_or(number.to_string(), decimal),
        value => value.to_string(),
    }
}

/// A number as short as it can be written and still be read back the same, without an exponent.
pub(crate) fn decimal(number: f64) -> String {
    // `-0` is written as 0: no quantity of the format knows a difference.
    if number == 0.0 { "0".into() } else { number.to_string() }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::read_closely;

    #[test]
    fn what_is_written_reads_back_the_same_and_is_written_the_same() {
        let (read, problems) = read_closely(include_str!("../tests/minimal.json"));
        assert_eq!(problems, []);
        let (file, catalogue) = read.expect("a good file");
        let text = write(&file);
        let (again, problems) = read_closely(&text);
        assert_eq!(problems, []);
        let (file_again, catalogue_again) = again.expect("a good file");
        assert_eq!(file_again, file);
        assert_eq!(catalogue_again, catalogue);
        assert_eq!(write(&file_again), text);
    }

    #[test]
    fn short_records_stand_on_one_line() {
        let (read, _) = read_closely(include_str!("../tests/minimal.json"));
        let text = write(&read.expect("a good file").0);
        assert!(text.contains("\n      \"years\": {\"first\": 2009, \"last\": 2014},\n"), "{text}");
        assert!(text.lines().all(|line| line.chars().count() <= 130), "{text}");
    }

    #[test]
    fn numbers_are_written_as_short_as_they_are() {
        for (number, written) in [(780.0, "780"), (0.1, "0.1"), (-0.0, "0"), (1e-7, "0.0000001"), (-12.5, "-12.5")] {
            assert_eq!(decimal(number), written);
        }
    }
}
