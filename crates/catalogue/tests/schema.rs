//! The stored JSON Schema is the one of the wire types, and good and bad files agree with it.
//!
//! Covers: catalogue/src/wire.

use std::path::Path;

use serde_json::Value;

#[test]
fn the_stored_schema_is_current() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../www/catalogue.schema.json");
    let current = serde_json::to_string_pretty(&fitup_catalogue::schema()).unwrap() + "\n";
    if std::env::var_os("UPDATE").is_some() {
        std::fs::write(&path, &current).unwrap();
    }
    let stored = std::fs::read_to_string(&path).unwrap();
    assert!(
        stored == current,
        "www/catalogue.schema.json is not current: UPDATE=1 cargo test -p fitup-catalogue --test schema"
    );
}

fn is_valid(text: &str) -> bool {
    let file: Value = serde_json::from_str(text).expect("the file is JSON");
    let mut schemas = boon::Schemas::new();
    let mut compiler = boon::Compiler::new();
    compiler.add_resource("catalogue.schema.json", fitup_catalogue::schema()).expect("the schema is new there");
    let index = compiler.compile("catalogue.schema.json", &mut schemas).expect("the schema is one");
    schemas.validate(&file, index).is_ok()
}

#[test]
fn a_validator_agrees_with_the_reader() {
    let good = include_str!("minimal.json");
    assert!(is_valid(good));
    for (from, to) in [
        ("\"station\": \"open\",", ""),
        ("\"wheelbase\"", "\"wheelbas\""),
        ("\"role\": \"axle_anchor\"", "\"role\": \"axle_ancor\""),
        ("\"mass\": 780", "\"mass\": \"780\""),
        ("\"source\": \"listed\"", "\"source\": \"guessed\""),
        ("\"stock\": {\"used\": 1}", "\"stock\": {\"lent\": 1}"),
    ] {
        let bad = good.replacen(from, to, 1);
        assert_ne!(bad, good, "{from}");
        assert!(!is_valid(&bad), "{to}");
        assert!(fitup_catalogue::read(&bad).catalogue.is_none(), "{to}");
    }
}

#[test]
fn the_demo_catalogue_agrees_with_the_schema_and_has_no_problems() {
    assert!(is_valid(include_str!("../../../www/catalogue/demo.json")));
    let (_, problems) = fitup_catalogue::read_closely(include_str!("../../../www/catalogue/demo.json"));
    assert_eq!(problems, []);
}
