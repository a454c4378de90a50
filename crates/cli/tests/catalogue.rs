//! The catalogue commands from outside: what they print, write and exit with.
//!
//! Covers: cli/src/main.rs, cli/src/catalogue.rs.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

const EXAMPLE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../catalogue/tests/minimal.json");

fn fitup(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_fitup")).args(arguments).output().expect("the command starts")
}

fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    if folder.exists() {
        fs::remove_dir_all(&folder).expect("the folder is ours");
    }
    fs::create_dir_all(&folder).expect("the folder is ours");
    folder
}

fn text(path: &Path) -> &str {
    path.to_str().expect("the path is text")
}

#[test]
fn a_catalogue_goes_through_every_form_and_comes_back_the_same() {
    let folder = folder("forms");
    let (first, tables) = (folder.join("first.json"), folder.join("tables"));
    let (book, last) = (folder.join("book.xlsx"), folder.join("last.json"));
    let steps = [
        (EXAMPLE, text(&first)),
        (text(&first), text(&tables)),
        (text(&tables), text(&book)),
        (text(&book), text(&last)),
    ];
    for (from, to) in steps {
        let output = fitup(&["convert", from, to]);
        assert!(output.status.success(), "{from} to {to}: {output:?}");
    }
    assert_eq!(fs::read_to_string(&first).unwrap(), fs::read_to_string(&last).unwrap());
    for form in [&first, &tables, &book] {
        let output = fitup(&["check", text(form)]);
        assert_eq!(output.status.code(), Some(0), "{output:?}");
    }
    let again = fitup(&["convert", EXAMPLE, text(&last)]);
    assert_eq!(again.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&again.stderr).contains("is there already"), "{again:?}");
    assert!(fitup(&["convert", EXAMPLE, text(&last), "--force"]).status.success());
}

#[test]
fn a_wrong_cell_is_told_by_file_row_and_column() {
    let folder = folder("wrong-cell");
    let tables = folder.join("tables");
    assert!(fitup(&["convert", EXAMPLE, text(&tables)]).status.success());
    let sites = tables.join("sites.csv");
    let changed = fs::read_to_string(&sites).unwrap().replace(",1200,", ",twelve hundred,");
    fs::write(&sites, changed).unwrap();
    let output = fitup(&["check", text(&tables), "--format", "short"]);
    assert_eq!(output.status.code(), Some(1));
    let told = String::from_utf8(output.stdout).unwrap();
    assert_eq!(
        told,
        format!(
            "{}:sites.csv:2:gate_width: error[not-number]: “twelve hundred” is not a number. Write the number alone, \
             with a decimal point and nothing between thousands; leave it out if it is not known.\n",
            text(&tables)
        )
    );
    let convert = fitup(&["convert", text(&tables), text(&folder.join("out.json"))]);
    assert_eq!(convert.status.code(), Some(1));
    assert!(!folder.join("out.json").exists());
}

#[test]
fn a_template_is_a_start_and_is_not_written_over_work() {
    let folder = folder("template");
    for name in ["tables", "book.xlsx"] {
        let to = folder.join(name);
        assert!(fitup(&["template", text(&to)]).status.success());
        assert_eq!(fitup(&["template", text(&to)]).status.code(), Some(2));
        let output = fitup(&["check", text(&to), "--format", "short"]);
        assert_eq!(output.status.code(), Some(0), "{output:?}");
    }
}

#[test]
fn what_cannot_be_read_exits_2_and_says_why() {
    for (arguments, why) in [
        (["check", "nowhere.json"], "nowhere.json: No such file"),
        (["check", "catalogue.doc"], "not .doc"),
        (["check", "no-such-folder/"], "no-such-folder/"),
    ] {
        let output = fitup(&arguments);
        assert_eq!(output.status.code(), Some(2), "{output:?}");
        assert!(String::from_utf8_lossy(&output.stderr).contains(why), "{output:?}");
    }
}

#[test]
fn the_schema_is_printed_as_it_is_stored() {
    let output = fitup(&["schema"]);
    let stored = fs::read(concat!(env!("CARGO_MANIFEST_DIR"), "/../../www/catalogue.schema.json")).unwrap();
    assert!(output.stdout == stored);
}
