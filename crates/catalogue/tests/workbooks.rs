//! What workbooks do to their cells is seen, in both kinds of them, and what is the keeper's own stays.
//!
//! Covers: catalogue/src/tables.

use std::io::{Cursor, Write as _};

use fitup_catalogue::read_closely;
use fitup_catalogue::tables::{
    Cell, Merged, Sheet, TemplateUnits, csv, kept, read_sheets, sheet_of_csv, sheets, sheets_of_workbook, template,
    workbook,
};
use rust_xlsxwriter::{ExcelDateTime, Format, Formula, Workbook};

const GOOD: &str = include_str!("minimal.json");

fn good() -> Vec<Sheet> {
    sheets(&read_closely(GOOD).0.expect("the good file is good").0)
}

#[test]
fn a_workbook_tells_what_its_cells_hold_and_what_it_does_to_them() {
    let mut book = Workbook::new();
    let sheet = book.add_worksheet();
    sheet.merge_range(0, 1, 0, 3, "size", &Format::new()).unwrap();
    sheet.write_formula(1, 0, Formula::new("=A1").set_result("")).unwrap();
    sheet.write_formula(1, 1, Formula::new("=1+1").set_result("2")).unwrap();
    sheet.write_formula(1, 2, Formula::new("=B9/0").set_result("#DIV/0!")).unwrap();
    let date = ExcelDateTime::from_ymd(2025, 3, 1).unwrap();
    sheet.write_datetime_with_format(2, 0, date, &Format::new().set_num_format("yyyy-mm-dd")).unwrap();
    sheet.write_boolean(2, 1, true).unwrap();
    sheet.set_row_hidden(2).unwrap();
    let bytes = book.save_to_buffer().unwrap();
    let sheets = sheets_of_workbook(&bytes).unwrap();
    assert_eq!(sheets[0].merged, [Merged { first: (0, 1), last: (0, 3) }]);
    assert_eq!(sheets[0].hidden, [3]);
    let rows = &sheets[0].rows;
    assert_eq!(rows[1][1..3], [Cell::Number(2.0), Cell::Error("#DIV/0!".into())]);
    assert_eq!(rows[2], [Cell::Date("2025-03-01".into()), Cell::Flag(true)]);
}

/// An `OpenDocument` workbook of one table, by its rows.
fn open_document(rows: &str) -> Vec<u8> {
    let names = ["office", "table", "text"]
        .map(|name| format!("xmlns:{name}=\"urn:oasis:names:tc:opendocument:xmlns:{name}:1.0\""));
    let content = format!(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?><office:document-content {} xmlns:of=\"urn:oasis:names:tc:opendocument:xmlns:of:1.2\">\
         <office:body><office:spreadsheet><table:table table:name=\"sites\">{rows}</table:table></office:spreadsheet></office:body></office:document-content>",
        names.join(" ")
    );
    let mut archive = zip::ZipWriter::new(Cursor::new(Vec::new()));
    let stored = zip::write::SimpleFileOptions::default().compression_method(zip::CompressionMethod::Stored);
    for (name, text) in [
        ("mimetype", "application/vnd.oasis.opendocument.spreadsheet"),
        (
            "META-INF/manifest.xml",
            "<?xml version=\"1.0\"?><manifest:manifest xmlns:manifest=\"urn:oasis:names:tc:opendocument:xmlns:manifest:1.0\"/>",
        ),
        ("content.xml", content.as_str()),
    ] {
        archive.start_file(name, stored).expect("memory does not fail");
        archive.write_all(text.as_bytes()).expect("memory does not fail");
    }
    archive.finish().expect("memory does not fail").into_inner()
}

#[test]
fn an_open_document_tells_the_same() {
    let text = |text: &str| {
        format!("<table:table-cell office:value-type=\"string\"><text:p>{text}</text:p></table:table-cell>")
    };
    let rows = format!(
        "<table:table-row>{}<table:table-cell table:number-columns-spanned=\"2\" office:value-type=\"string\"><text:p>size</text:p></table:table-cell><table:covered-table-cell/></table:table-row>\
         <table:table-row table:visibility=\"collapse\">{}<table:table-cell office:value-type=\"float\" office:value=\"1200\"><text:p>1200</text:p></table:table-cell>\
         <table:table-cell table:formula=\"of:=[.B9]\"/></table:table-row>\
         <table:table-row>{}<table:table-cell office:value-type=\"date\" office:date-value=\"2025-03-01\"><text:p>1 Mar</text:p></table:table-cell></table:table-row>",
        text("id"),
        text("gate"),
        text("#REF!"),
    );
    let sheets = sheets_of_workbook(&open_document(&rows)).unwrap();
    assert_eq!((sheets[0].name.as_str(), &sheets[0].hidden[..]), ("sites", &[2][..]));
    assert_eq!(sheets[0].merged, [Merged { first: (0, 1), last: (0, 2) }]);
    assert_eq!(sheets[0].rows[1][..], [Cell::Text("gate".into()), Cell::Number(1200.0), Cell::Formula]);
    assert_eq!(sheets[0].rows[2][..2], [Cell::Error("#REF!".into()), Cell::Date("2025-03-01".into())]);
}

#[test]
fn what_is_the_keepers_own_is_no_mistake_and_stays_through_both_forms() {
    let mut tables = good();
    let text = |text: &str| Cell::Text(text.into());
    for sheet in &mut tables {
        sheet.rows[0].extend([text("remarks"), text("# checked by")]);
        if let Some(row) = sheet.rows.get_mut(1) {
            row.extend([text("#REF! is looked into"), text("K., on Monday")]);
        }
        sheet.rows.push(vec![text("# still to be measured")]);
    }
    tables.push(Sheet::of("# to do", "# to do", vec![vec![text("ring the"), Cell::Empty, text("workshop")]]));
    let (read, problems) = read_sheets(&tables);
    assert_eq!(problems, []);
    let (file, _) = read.expect("what is one's own is passed over");
    let as_text = kept(&tables)
        .iter()
        .map(|sheet| sheet_of_csv(&sheet.name, &sheet.name, &csv(sheet)).unwrap())
        .collect::<Vec<_>>();
    let again = sheets_of_workbook(&workbook(&kept(&as_text)).unwrap()).unwrap();
    assert_eq!(read_sheets(&again).0.expect("it is read again").0, file);
    for (was, is) in tables.iter().zip(&again) {
        assert_eq!(was.name, is.name);
        let words = |sheet: &Sheet| {
            sheet.rows.iter().flatten().filter(|cell| !cell.is_blank()).map(Cell::text).collect::<Vec<_>>()
        };
        assert_eq!(words(was), words(is), "{}", was.name);
    }
    let mass = |sheets: &[Sheet]| {
        sheets.iter().find(|sheet| sheet.name == "machines").unwrap().rows[1]
            .iter()
            .filter(|cell| matches!(cell, Cell::Number(_)))
            .count()
    };
    assert_eq!(mass(&tables), mass(&again), "numbers that were text are numbers again");
}

/// The text of the worksheet that is the nth of a workbook.
fn worksheet(bytes: &[u8], nth: usize) -> String {
    let mut archive = zip::ZipArchive::new(Cursor::new(bytes)).expect("it is an archive");
    let mut text = String::new();
    let mut part = archive.by_name(&format!("xl/worksheets/sheet{nth}.xml")).expect("the worksheet");
    std::io::Read::read_to_string(&mut part, &mut text).expect("it is text");
    text
}

#[test]
fn the_template_offers_words_and_names_and_keeps_names_text() {
    let tables = template(TemplateUnits::Metric);
    let bytes = workbook(&tables).unwrap();
    let nth = |name: &str| 1 + tables.iter().position(|sheet| sheet.name == name).unwrap();
    let machines = worksheet(&bytes, nth("machines"));
    assert!(machines.contains("<formula1>\"open,cab\"</formula1>"), "words to choose from");
    assert!(machines.contains("outlineLevel=\"1\""), "columns in groups");
    let guide = worksheet(&bytes, nth("guide"));
    assert!(guide.contains("<formula1>implements!$A$4:$A$10000</formula1>"), "{guide}");
    let ports = worksheet(&bytes, nth("ports"));
    assert!(ports.contains("COUNTIF(machines!$A:$A,A4)+"), "a warning where no item has the id");
    let parts_lists = worksheet(&bytes, nth("parts_lists"));
    let first = &parts_lists[parts_lists.find("<col ").unwrap()..];
    assert!(first.split("/>").next().unwrap().contains("style="), "the column of ids has a format of its own");
}
