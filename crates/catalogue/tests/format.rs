//! The written reference is current, and the smallest example is good.

use std::path::Path;

const MARK: &str = "writes it anew.\n";

#[test]
fn the_format_reference_is_current() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("FORMAT.md");
    let stored = std::fs::read_to_string(&path).unwrap();
    let head = stored.find(MARK).expect("the mark stands in the file") + MARK.len();
    let current = format!("{}{}", &stored[..head], fitup_catalogue::reference());
    if std::env::var_os("UPDATE").is_some() {
        std::fs::write(&path, &current).unwrap();
    } else {
        assert!(stored == current, "FORMAT.md is not current: UPDATE=1 cargo test -p fitup-catalogue --test format");
    }
}

#[test]
fn the_smallest_example_reads_without_a_problem() {
    let reading = fitup_catalogue::read(include_str!("minimal.json"));
    assert_eq!(reading.problems, []);
    let catalogue = reading.catalogue.unwrap();
    assert_eq!(catalogue.machines.len(), 1);
    assert_eq!(catalogue.implements[0].body.ports.len(), 2);
    assert_eq!(catalogue.guide.unwrap().rows.len(), 1);
    assert_eq!(catalogue.frames[0].body.parts_list.rows.len(), 2);
}
