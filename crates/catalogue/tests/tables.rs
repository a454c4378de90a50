//! The authoring tables hold everything the file holds, and say what is wrong by cell.
//!
//! Covers: catalogue/src/tables.

use fitup_catalogue::tables::{
    Cell, Sheet, TemplateUnits, csv, read_sheets, sheet_of_csv, sheets, sheets_of_workbook, template, workbook,
};
use fitup_catalogue::wire::CatalogueFile;
use fitup_catalogue::{Code, Position, Problem, read_closely, write};
use proptest::prelude::*;
use serde_json::Value;

const GOOD: &str = include_str!("minimal.json");
const DEMO: &str = include_str!("../../../www/catalogue/demo.json");

fn file(text: &str) -> CatalogueFile {
    let (read, problems) = read_closely(text);
    read.unwrap_or_else(|| panic!("{problems:?}")).0
}

fn through_csv(tables: &[Sheet]) -> Vec<Sheet> {
    tables.iter().map(|sheet| sheet_of_csv(&sheet.name, &sheet.name, &csv(sheet)).expect("it is CSV")).collect()
}

fn through_workbook(tables: &[Sheet]) -> Vec<Sheet> {
    sheets_of_workbook(&workbook(tables).expect("it fits")).expect("it is a workbook")
}

fn back(tables: &[Sheet]) -> CatalogueFile {
    let (read, problems) = read_sheets(tables);
    read.unwrap_or_else(|| panic!("{problems:?}")).0
}

#[test]
fn files_come_back_from_tables_as_they_were() {
    for text in [GOOD, DEMO] {
        let file = file(text);
        let tables = sheets(&file);
        for came_back in [back(&tables), back(&through_csv(&tables)), back(&through_workbook(&tables))] {
            assert!(came_back == file, "{}\n{}", write(&file), write(&came_back));
        }
    }
}

/// Text that spreadsheets, CSV and lists have marks of their own for.
fn tricky() -> impl Strategy<Value = String> {
    "[a-z=+@#'\";, \n\té-]{0,8}[a-z]".prop_map(String::from)
}

/// Gives texts and numbers of a file other values, the nth from the nth of `texts` and `numbers`.
fn vary(value: &mut Value, texts: &mut dyn Iterator<Item = String>, numbers: &mut dyn Iterator<Item = f64>) {
    match value {
        Value::Array(values) => values.iter_mut().for_each(|value| vary(value, texts, numbers)),
        Value::Object(fields) => {
            for (name, field) in fields {
                match (name.as_str(), &field) {
                    (
                        "label" | "note" | "notice" | "description" | "assembly" | "position" | "series",
                        Value::String(_),
                    ) => {
                        *field = texts.next().map_or(Value::Null, Value::String);
                    }
                    ("needs" | "requires" | "excludes", Value::Array(_)) => {
                        *field = texts.take(3).map(Value::String).collect();
                    }
                    ("x" | "u" | "cab_rear" | "index_x", Value::Number(_)) => {
                        *field = numbers.next().map_or(Value::Null, Value::from);
                    }
                    _ => vary(field, texts, numbers),
                }
            }
        }
        _ => {}
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]

    #[test]
    fn whatever_a_file_says_comes_back(
        texts in proptest::collection::vec(tricky(), 20),
        numbers in proptest::collection::vec(-1e9f64..1e9, 20),
        serial in any::<u64>(),
    ) {
        let mut value: Value = serde_json::from_str(GOOD).unwrap();
        vary(&mut value, &mut texts.iter().cycle().cloned(), &mut numbers.iter().cycle().copied());
        value["machines"][0]["serials"] = serde_json::json!({ "last": serial });
        let file = file(&value.to_string());
        let tables = sheets(&file);
        prop_assert_eq!(&back(&through_csv(&tables)), &file);
        prop_assert_eq!(&back(&through_workbook(&tables)), &file);
        prop_assert_eq!(write(&back(&tables)), write(&file));
        // All forms one after the other: workbook, JSON, CSV, JSON.
        let published = write(&back(&through_workbook(&tables)));
        let again = read_closely(&published).0.expect("what is odd of it are its sizes alone").0;
        let last = write(&back(&through_csv(&sheets(&again))));
        prop_assert_eq!(last, published);
    }

    #[test]
    fn any_text_as_a_table_is_read_to_its_end(text in "\\PC{0,80}|[a-z,;\"\n]{0,80}", which in 0usize..15) {
        let mut tables = template(TemplateUnits::Metric);
        let name = tables[which].name.clone();
        if let Ok(sheet) = sheet_of_csv(&name, &name, &text) {
            tables[which] = sheet;
            read_sheets(&tables);
        }
    }

    #[test]
    fn any_bytes_as_a_workbook_are_read_to_their_end(bytes in proptest::collection::vec(any::<u8>(), 0..300)) {
        prop_assert!(sheets_of_workbook(&bytes).is_err());
    }
}

/// The problems after a cell of the good tables is changed.
fn after(table: &str, row: usize, heading: &str, cell: Cell) -> Vec<Problem> {
    let mut tables = sheets(&file(GOOD));
    let sheet = tables.iter_mut().find(|sheet| sheet.name == table).expect("the table");
    let column =
        sheet.rows[0].iter().position(|cell| cell.text().split(" [").next() == Some(heading)).expect("the heading");
    sheet.rows[row - 1][column] = cell;
    read_sheets(&tables).1
}

#[test]
fn what_is_wrong_is_said_by_table_row_and_column() {
    let text = |text: &str| Cell::Text(text.into());
    let cases = [
        ("machines", 2, "mass", text("heavy"), Code::NotNumber, "mass"),
        ("machines", 2, "mass", Cell::Number(0.0), Code::MassNotPositive, "mass"),
        ("machines", 2, "wheelbase.plus_minus", Cell::Number(-1.0), Code::Negative, "wheelbase.plus_minus"),
        ("machines", 2, "operator_seat.turns", text("perhaps"), Code::NotFlag, "operator_seat.turns"),
        ("machines", 2, "stock", text("new"), Code::NotExactlyOne, "stock"),
        ("machines", 2, "station", Cell::Empty, Code::MissingField, ""),
        ("ports", 2, "role", text("axle_ancor"), Code::UnknownWord, "role"),
        ("ports", 2, "item", text("smal-open"), Code::UnknownReference, "item"),
        ("holes", 2, "port", text("axle pad"), Code::UnknownReference, "port"),
        ("holes", 2, "diameter", Cell::Number(-14.0), Code::NotPositive, "diameter"),
        ("shapes", 2, "path", text("M 0 0 K"), Code::PathUnreadable, "path"),
        ("guide", 2, "frame", text("small-fram"), Code::UnknownReference, "frame"),
        ("catalogue", 2, "units.length", text("mn"), Code::UnknownUnit, "units.length"),
        ("sites", 1, "gate_width", text("gate_wdth"), Code::UnknownColumn, "gate_wdth"),
        ("sites", 1, "gate_width", text("gate_height"), Code::DuplicateField, "gate_height"),
    ];
    for (table, row, heading, cell, code, column) in cases {
        let problems = after(table, row, heading, cell);
        let place = Position::Cell { table: table.into(), row: u32::try_from(row).unwrap(), column: column.into() };
        let found = problems.iter().any(|problem| problem.code == code && problem.position.as_ref() == Some(&place));
        assert!(found, "{code:?} at {place:?}: {problems:?}");
    }
}

#[test]
fn tables_that_are_not_of_the_format_or_not_there_are_told() {
    let mut tables = sheets(&file(GOOD));
    tables.retain(|sheet| sheet.name != "catalogue");
    tables.push(Sheet::of("machine", "machine.csv", Vec::new()));
    let problems = read_sheets(&tables).1;
    assert!(problems.iter().any(|problem| problem.code == Code::MissingTable));
    let unknown = problems.iter().find(|problem| problem.code == Code::UnknownTable).unwrap();
    assert_eq!(unknown.arg("suggestion"), Some("machines"));
}

#[test]
fn the_template_says_what_its_columns_hold_and_is_good_as_it_is() {
    for units in [TemplateUnits::Metric, TemplateUnits::Us] {
        let tables = template(units);
        assert_eq!(tables.len(), sheets(&file(GOOD)).len());
        for sheet in &tables {
            assert_eq!(sheet.rows[0].len(), sheet.rows[1].len(), "{}", sheet.name);
            assert!(sheet.rows[1][0].text().starts_with("# "), "{}", sheet.name);
            assert_eq!(sheet.rows[0].last().map(Cell::text), Some("remarks".into()));
        }
        assert!(tables.iter().filter(|sheet| sheet.rows.len() == 3).count() >= 13, "most have an example");
        for read in [through_workbook(&tables), through_csv(&tables)] {
            let (read, problems) = read_sheets(&read);
            assert_eq!(problems, []);
            assert_eq!(read.expect("it is good").0.machines, []);
        }
    }
}

#[test]
fn examples_of_the_template_are_rows_as_soon_as_they_are_no_notes() {
    let mut tables = template(TemplateUnits::Metric);
    for sheet in
        tables.iter_mut().filter(|sheet| sheet.rows.len() > 2 && !["catalogue", "guide"].contains(&sheet.name.as_str()))
    {
        let first = sheet.rows[2][0].text();
        sheet.rows[2][0] = Cell::Text(first.trim_start_matches("# such as ").to_owned());
        sheet.rows.remove(1);
    }
    let problems = read_sheets(&through_workbook(&tables)).1;
    // One hole of four, one part of five: that more is wanted is all that is wrong.
    let wrong: Vec<_> = problems
        .iter()
        .filter(|it| ![Code::UnknownPart, Code::MountWithoutPort, Code::FrameWithoutPort].contains(&it.code))
        .collect();
    assert!(wrong.is_empty(), "{wrong:?}");
}
