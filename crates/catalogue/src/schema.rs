//! The JSON Schema of the format, and its tables for people.

use std::fmt::Write as _;

use schemars::SchemaGenerator;
use serde_json::{Map, Value};

use crate::wire::CatalogueFile;

/// The JSON Schema of a catalogue file, made from the wire types.
pub fn schema() -> Value {
    let generator = SchemaGenerator::default();
    let mut schema = generator.into_root_schema_for::<CatalogueFile>().to_value();
    if let Some(top) = schema.as_object_mut() {
        top.insert("title".into(), "Fit-up catalogue, format 1".into());
    }
    schema
}

/// The format as one Markdown table per record: field, what it holds, whether it is required, and
/// what it means. All of it comes from the wire types, so that it cannot lag behind them.
pub fn reference() -> String {
    let schema = schema();
    let mut text = String::new();
    record(&mut text, "Top of the file", &schema);
    let empty = Map::new();
    let definitions = schema["$defs"].as_object().unwrap_or(&empty);
    for (name, definition) in definitions {
        if definition.get("properties").is_some() {
            record(&mut text, name, definition);
        }
    }
    for (name, definition) in definitions {
        if let Some(options) = definition.get("oneOf").and_then(Value::as_array) {
            words(&mut text, name, definition, options);
        }
    }
    text
}

fn record(text: &mut String, name: &str, schema: &Value) {
    let _ = write!(text, "\n### {name}\n{}\n\n", description(schema));
    text.push_str("| field | holds | required | meaning |\n| --- | --- | --- | --- |\n");
    let required: Vec<&str> = schema["required"].as_array().into_iter().flatten().filter_map(Value::as_str).collect();
    for (field, property) in schema["properties"].as_object().into_iter().flatten() {
        let needed = if required.contains(&field.as_str()) { "yes" } else { "" };
        let _ = writeln!(text, "| `{field}` | {} | {needed} | {} |", holds(property), description(property));
    }
}

fn words(text: &mut String, name: &str, schema: &Value, options: &[Value]) {
    let _ = write!(text, "\n### {name}\n{}\n\n| written | meaning |\n| --- | --- |\n", description(schema));
    for option in options {
        if let Some(word) = option["const"].as_str() {
            let _ = writeln!(text, "| `\"{word}\"` | {} |", description(option));
        }
        for word in option["enum"].as_array().into_iter().flatten().filter_map(Value::as_str) {
            let _ = writeln!(text, "| `\"{word}\"` | {} |", description(option));
        }
        for (word, inner) in option["properties"].as_object().into_iter().flatten() {
            let _ = writeln!(text, "| `{{\"{word}\": …}}` with {} | {} |", holds(inner), description(option));
        }
    }
}

fn description(schema: &Value) -> String {
    schema["description"].as_str().unwrap_or_default().replace('\n', " ")
}

fn holds(property: &Value) -> String {
    if let Some(name) = property["$ref"].as_str().and_then(|path| path.rsplit('/').next()) {
        return linked(name);
    }
    let alternatives = property.get("anyOf").or_else(|| property.get("oneOf")).and_then(Value::as_array);
    if let Some(alternatives) = alternatives {
        let named = alternatives.iter().find(|one| one["type"] != "null");
        return named.map(holds).unwrap_or_default();
    }
    let kind = match &property["type"] {
        Value::Array(kinds) => kinds.iter().find(|kind| *kind != "null").and_then(Value::as_str),
        kind => kind.as_str(),
    };
    match kind {
        Some("array") => format!("list of {}", holds(&property["items"])),
        Some("string") => "text".into(),
        Some("boolean") => "true or false".into(),
        Some("integer") => "whole number".into(),
        Some("number") => "number".into(),
        _ => String::new(),
    }
}

fn linked(name: &str) -> String {
    match name {
        "Length" | "Mass" | "Pressure" | "Flow" | "Power" | "Angle" | "Money" | "Hours" | "Torque" | "Share" => {
            name.to_lowercase()
        }
        "StatedLength" => "length, stated".into(),
        "StatedMass" => "mass, stated".into(),
        _ => format!("[{name}](#{})", name.to_lowercase()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::decode::Need;
    use crate::wire;

    type Fields = &'static [(&'static str, Need)];

    /// Decoding and schema come from one definition; this holds them to each other.
    #[test]
    fn fields_and_what_is_required_are_the_same_in_decoding_and_schema() {
        let schema = schema();
        let records: [(&str, Fields); 10] = [
            ("Machine", wire::machine::Machine::FIELDS),
            ("Frame", wire::frame::Frame::FIELDS),
            ("Seat", wire::seat::Seat::FIELDS),
            ("Implement", wire::implement::Implement::FIELDS),
            ("Adapter", wire::adapter::Adapter::FIELDS),
            ("Port", wire::port::Port::FIELDS),
            ("Shape", wire::shape::Shape::FIELDS),
            ("PartsListRow", wire::part::PartsListRow::FIELDS),
            ("Trailer", wire::trailer::Trailer::FIELDS),
            ("StatedNumber", wire::value::StatedNumber::FIELDS),
        ];
        for (name, fields) in records {
            let record = &schema["$defs"][name];
            let properties: Vec<&str> = record["properties"].as_object().unwrap().keys().map(String::as_str).collect();
            assert_eq!(properties, fields.iter().map(|(field, _)| *field).collect::<Vec<_>>(), "{name}");
            let required: Vec<&str> = record["required"].as_array().unwrap().iter().filter_map(Value::as_str).collect();
            let needed = fields.iter().filter(|(_, need)| *need == Need::Required).map(|(field, _)| *field);
            assert_eq!(required, needed.collect::<Vec<_>>(), "{name}");
        }
    }
}
