//! The table for a spreadsheet: a row for each machine with each implement.

use fitup_catalogue::tables::{Cell as Field, Sheet, csv as csv_of};
use fitup_core::item::Catalogue;
use fitup_words::Words;

use super::{Cell, through, told};

/// The headings; names of data are the same in every language.
const HEADINGS: [&str; 12] = [
    "machine",
    "machine_label",
    "implement",
    "implement_label",
    "verdict",
    "verdict_text",
    "question",
    "frame",
    "frame_label",
    "seat",
    "seat_label",
    "reason",
];

/// The text of the file.
pub(super) fn csv(catalogue: &Catalogue, words: &Words, cells: &[Cell]) -> String {
    let field = |text: &str| if text.is_empty() { Field::Empty } else { Field::Text(text.to_owned()) };
    let mut rows = vec![HEADINGS.map(field).to_vec()];
    for cell in cells {
        let (machine, implement) = (&catalogue.machine(cell.machine).body, &catalogue.implement(cell.implement).body);
        let told = cell.found.as_ref().map(|found| told(words, found.verdict, found.question));
        let (frame_label, seat_label) = through(catalogue, words, cell).unwrap_or_default();
        let found = cell.found.as_ref();
        let frame = found.and_then(|it| it.frame).map_or("", |frame| &catalogue.frame(frame).body.id);
        let seat = found.map_or("", |it| &catalogue.seat(it.seat).body.id);
        let row = [
            machine.id.as_str(),
            &machine.label,
            &implement.id,
            &implement.label,
            told.as_ref().map_or("", |told| told.name),
            told.as_ref().map_or("", |told| told.word.as_str()),
            found.map_or("", |it| it.question.word()),
            frame,
            &frame_label,
            seat,
            &seat_label,
            found.and_then(|it| it.reason.as_deref()).unwrap_or_default(),
        ];
        rows.push(row.map(field).to_vec());
    }
    csv_of(&Sheet::of("matrix", "matrix.csv", rows))
}
