//! A catalogue file of any size, made of copies of a small one.

/// The text of a catalogue of at least `bytes` bytes without problems: copies of every table of
/// the `seed` file, each with ids and part numbers of its own.
///
/// The seed is a catalogue file as the format's smallest example is written: each table a list
/// of the file's record, its ids and numbers given.
pub fn catalogue_text(seed: &serde_json::Value, bytes: usize) -> String {
    let mut file = seed.clone();
    let names = names_of(seed);
    let rows = TABLES.iter().filter_map(|table| seed.pointer(table)?.as_array()).flatten();
    let once: usize = rows.map(|row| row.to_string().len()).sum();
    for copy in 1..=bytes.div_ceil(once.max(1)) {
        for table in TABLES {
            let Some(rows) = seed.pointer(table).and_then(serde_json::Value::as_array) else { continue };
            let copies: Vec<_> = rows.iter().map(|row| renamed(row, &names, copy)).collect();
            if let Some(all) = file.pointer_mut(table).and_then(serde_json::Value::as_array_mut) {
                all.extend(copies);
            }
        }
    }
    file.to_string()
}

const TABLES: [&str; 11] = [
    "/machines",
    "/equipment",
    "/frames",
    "/seats",
    "/implements",
    "/adapters",
    "/parts",
    "/parts_lists",
    "/guide/sets",
    "/trailers",
    "/sites",
];

/// Ids of rows and numbers of parts.
fn names_of(seed: &serde_json::Value) -> std::collections::BTreeSet<String> {
    let rows = TABLES.iter().filter_map(|table| seed.pointer(table)?.as_array()).flatten();
    let names = rows.flat_map(|row| [row["id"].as_str(), row["number"].as_str()]);
    names.flatten().map(str::to_owned).collect()
}

fn renamed(value: &serde_json::Value, names: &std::collections::BTreeSet<String>, copy: usize) -> serde_json::Value {
    use serde_json::Value;
    match value {
        Value::String(text) if names.contains(text) => Value::String(format!("{text}-{copy}")),
        Value::Array(values) => values.iter().map(|value| renamed(value, names, copy)).collect(),
        Value::Object(fields) => {
            fields.iter().map(|(name, value)| (name.clone(), renamed(value, names, copy))).collect()
        }
        value => value.clone(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_text_is_as_large_as_asked_and_good() {
        let seed = serde_json::from_str(include_str!("../../catalogue/tests/minimal.json")).unwrap();
        let text = catalogue_text(&seed, 100_000);
        assert!(text.len() >= 100_000 && text.len() < 130_000, "{}", text.len());
        assert_eq!(fitup_catalogue::read(&text).problems, []);
    }
}
