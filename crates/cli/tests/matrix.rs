//! `fitup matrix` on the demonstration yard.
//!
//! Covers: cli/src/matrix, cli/src/catalogue.rs.
//!
//! The table and its reasons are a snapshot: a change shows in them and each reason is read before it is taken over with
//! `INSTA_UPDATE=always`.

use std::path::Path;
use std::process::{Command, Output};

use fitup_catalogue::tables::{Cell, Sheet, sheet_of_csv};
use serde_json::Value;

const CATALOGUE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../www/catalogue/demo.json");

fn fitup(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_fitup")).args(arguments).output().expect("the command runs")
}

fn matrix(format: &str, more: &[&str]) -> String {
    let output = fitup(&[&["matrix", CATALOGUE, "--format", format], more].concat());
    assert_eq!(output.status.code(), Some(0), "{output:?}");
    String::from_utf8(output.stdout).expect("text")
}

fn records() -> Vec<Value> {
    serde_json::from_str(&matrix("json", &[])).expect("JSON")
}

#[test]
fn every_machine_with_every_implement_has_its_answer_and_its_reason() {
    insta::assert_snapshot!(matrix("full", &[]));
}

#[test]
fn the_data_have_a_record_for_every_machine_with_every_implement() {
    let cells = records();
    assert_eq!(cells.len(), 66);
    let cell = |machine: &str, implement: &str| {
        cells.iter().find(|cell| cell["machine"] == machine && cell["implement"] == implement).expect("a cell")
    };
    assert_eq!(cell("wren", "badger-arm")["verdict"], "bolts-up");
    assert!(cell("wren", "badger-arm")["reason"].is_null());
    assert_eq!(cell("wren", "otter-arm")["verdict"], "wont-mount");
    assert!(cell("wren", "otter-arm")["reason"].is_string());
}

#[test]
fn what_a_cell_says_is_what_judging_its_build_says() {
    for cell in records() {
        let word = |key: &str| cell[key].as_str().expect("text").to_owned();
        let frame = cell["frame"].as_str().unwrap_or("hitch").to_owned();
        let (machine, seat, implement) = (word("machine"), word("seat"), word("implement"));
        let build =
            ["--machine", &machine, "--frame", &frame, "--seat", &seat, "--implement", &implement, "--format", "json"];
        let output = fitup(&[&["judge", CATALOGUE], &build[..]].concat());
        let report: Value = serde_json::from_slice(&output.stdout).expect("JSON");
        assert_eq!(report["verdict"], cell["verdict"], "{cell}");
        assert_eq!(cell["reason"].is_null(), cell["verdict"] == "bolts-up", "{cell}");
    }
}

#[test]
fn the_spreadsheet_comes_back_with_the_same_records() {
    let text = matrix("csv", &["--lang", "de"]);
    let Sheet { rows, .. } = sheet_of_csv("matrix", "matrix.csv", &text).expect("CSV");
    let texts = |row: &Vec<Cell>| row.iter().map(Cell::text).collect::<Vec<String>>();
    let rows: Vec<Vec<String>> = rows.iter().map(texts).collect();
    let cells = records();
    assert_eq!(rows.len(), cells.len() + 1);
    for (row, cell) in rows[1..].iter().zip(&cells) {
        assert_eq!(row.len(), rows[0].len());
        for key in ["machine", "implement", "verdict", "frame", "seat"] {
            let at = rows[0].iter().position(|heading| heading == key).expect("a heading");
            assert_eq!(row[at], cell[key].as_str().unwrap_or_default(), "{key} of {cell}");
        }
    }
    assert!(text.contains("Passt nicht"), "{text}");
}

#[test]
fn the_page_is_well_formed_and_needs_nothing_else() {
    for lang in ["en", "de", "es", "fr"] {
        let page = matrix("html", &["--lang", lang]);
        let elements = elements(&page);
        let count = |name: &str| elements.iter().filter(|element| *element == name).count();
        assert_eq!([count("table"), count("tr"), count("td"), count("th")], [1, 12, 66, 18]);
        assert_eq!([count("h1"), count("main"), count("caption"), count("dt")], [1, 1, 1, 4]);
        for foreign in ["<script", "<link", "<img", "src=", "href=", "http", "@import", "url("] {
            assert!(!page.contains(foreign), "{lang}: {foreign}");
        }
        assert!(page.starts_with(&format!("<!DOCTYPE html>\n<html lang=\"{lang}\">")));
        assert!(page.contains("Fit-up demonstration yard") && page.contains("2026-11"), "name and edition");
        assert!(page.contains("Invented from end to end"), "the notice of the catalogue");
        assert!(!page.contains("matrix-") && !page.contains("ui-"), "{lang}: every text is there");
    }
    let page = matrix("html", &[]);
    assert!(page.contains("Fit-up is a planning aid"), "the caution");
    // Sign and word, and the reason to be read.
    assert!(page.contains("<td class=\"wont-mount\"><b><span aria-hidden=\"true\">×</span> Won’t mount</b>"), "{page}");
    assert!(page.contains("<span class=\"why\">Hooks do not fit: "), "{page}");
}

/// The names of the elements of a page, each closed where it has to be.
fn elements(page: &str) -> Vec<String> {
    let (mut open, mut all): (Vec<String>, Vec<String>) = (Vec::new(), Vec::new());
    let without_style = page.split("<style>").next().into_iter().chain(page.split("</style>").nth(1));
    for piece in without_style.collect::<String>().split('<').skip(1) {
        let (tag, _) = piece.split_once('>').unwrap_or_else(|| panic!("not closed: {piece}"));
        let name = tag.split(' ').next().expect("a name").to_owned();
        match name.strip_prefix('/') {
            Some(closed) => assert_eq!(open.pop().as_deref(), Some(closed), "{piece}"),
            None if name == "!DOCTYPE" || name == "meta" => {}
            None => {
                open.push(name.clone());
                all.push(name);
            }
        }
    }
    assert_eq!(open, Vec::<String>::new());
    all
}

#[test]
fn a_workbook_and_a_folder_give_the_same_table_and_are_judged_too() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("matrix-forms");
    std::fs::create_dir_all(&folder).expect("the folder is ours");
    let short = matrix("short", &[]);
    for form in ["book.xlsx", "tables/"] {
        let path = format!("{}/{form}", folder.display());
        let written = fitup(&["convert", CATALOGUE, &path, "--force"]);
        assert!(written.status.success(), "{written:?}");
        let output = fitup(&["matrix", &path, "--format", "short"]);
        assert_eq!(String::from_utf8_lossy(&output.stdout), short, "{form}: {output:?}");
        let build = ["--machine", "wren", "--frame", "hitch", "--seat", "driving-seat", "--implement", "mole-auger"];
        let judged = fitup(&[&["judge", &path], &build[..]].concat());
        assert_eq!(judged.status.code(), Some(0), "{judged:?}");
    }
}

#[test]
fn the_help_tells_each_format() {
    let help = fitup(&["matrix", "--help"]);
    let help = String::from_utf8_lossy(&help.stdout).into_owned();
    for format in ["short:", "full:", "json:", "csv:", "html:", "workbook"] {
        assert!(help.contains(format), "{help}");
    }
}
