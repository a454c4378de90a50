//! Mistakes that keepers make, each seeded alone into good tables: it is told once, at its cell, with
//! a mend that leads on; nothing else is told beside it.
//!
//! Covers: catalogue/src/tables, catalogue/src/check, words/src/problem.rs.

use fitup_catalogue::tables::{Cell, Merged, Sheet, read_sheets, sheets};
use fitup_catalogue::{Position, read_closely};
use fitup_words::{Lang, Units, Words};

const GOOD: &str = include_str!("../../catalogue/tests/minimal.json");

/// The good tables, to be spoilt.
struct Tables(Vec<Sheet>);

impl Tables {
    fn good() -> Self {
        Self(sheets(&read_closely(GOOD).0.expect("the good file is good").0))
    }

    fn sheet(&mut self, name: &str) -> &mut Sheet {
        self.0.iter_mut().find(|sheet| sheet.name == name).expect("the table")
    }

    /// A cell by table, row as the spreadsheet counts, and heading.
    fn cell(&mut self, table: &str, row: usize, heading: &str) -> &mut Cell {
        let sheet = self.sheet(table);
        let at = sheet.rows[0].iter().position(|cell| cell.text().split(" [").next() == Some(heading));
        let at = at.unwrap_or_else(|| panic!("{table} has the column {heading}"));
        &mut sheet.rows[row - 1][at]
    }

    fn text(&mut self, table: &str, row: usize, heading: &str, text: &str) {
        *self.cell(table, row, heading) = Cell::of_text(text);
    }

    /// One more row like another.
    fn again(&mut self, table: &str, row: usize) {
        let sheet = self.sheet(table);
        let like = sheet.rows[row - 1].clone();
        sheet.rows.push(like);
    }
}

/// A mistake: its name, what makes it, the place it is told at, and words of the sentence and the mend.
type Mistake = (&'static str, fn(&mut Tables), &'static str, &'static str, &'static str);

#[rustfmt::skip]
const MISTAKES: &[Mistake] = &[
    // Spreadsheets.
    ("a column without a heading", |t| t.sheet("sites").rows[1].push(Cell::Text("ask first".into())),
        "sites:2:I", "“ask first” stands in a column without a heading", "remarks"),
    ("a heading rubbed out", |t| t.text("machines", 1, "turning_radius", ""),
        "machines:2:AN", "“2300” stands in a column without a heading", "row 1"),
    ("a misspelled heading", |t| t.text("sites", 1, "gate_width", "gate_wdth"),
        "sites:1:gate_wdth", "no column “gate_wdth”", "“gate_width”"),
    ("a heading of one’s own without a sign", |t| t.sheet("sites").rows[0].push(Cell::Text("checked by".into())),
        "sites:1:checked by", "no column “checked by”", "begin it with #"),
    ("a heading in another unit", |t| t.text("sites", 1, "gate_width", "gate_width [in]"),
        "sites:1:gate_width", "The heading says in, but the header says mm", "in mm"),
    ("a merged heading", |t| {
        let at = 27;
        for cell in &mut t.sheet("machines").rows[0][at + 1..at + 4] { *cell = Cell::Empty; }
        let first = (0, u32::try_from(at).expect("small"));
        t.sheet("machines").merged.push(Merged { first, last: (0, first.1 + 3) });
    }, "machines:1:AB", "AB1:AE1 are merged", "Unmerge"),
    ("merged cells down a column", |t| {
        for row in 2..5 { t.sheet("holes").rows[row][0] = Cell::Empty; }
        t.sheet("holes").merged.push(Merged { first: (1, 0), last: (4, 0) });
    }, "holes:2:A", "A2:A5 are merged", "fill in each cell"),
    ("an error in a note", |t| t.text("machines", 2, "note", "#REF!"),
        "machines:2:note", "the error #REF!", "Mend the formula"),
    ("an error in the first column", |t| t.text("guide", 2, "machine", "#N/A"),
        "guide:2:machine", "the error #N/A", "Mend the formula"),
    ("an error in another language", |t| t.text("sites", 2, "gate_width", "#BEZUG!"),
        "sites:2:gate_width", "the error #BEZUG!", "write the value"),
    ("an error where a row is named", |t| t.text("holes", 2, "item", "#N/A"),
        "holes:2:item", "the error #N/A", "write the value"),
    ("a formula without its value", |t| *t.cell("machines", 2, "mass") = Cell::Formula,
        "machines:2:mass", "a formula, but not its value", "let it calculate"),
    ("a position made a date", |t| *t.cell("parts_lists", 2, "position") = Cell::Date("2025-03-01".into()),
        "parts_lists:2:position", "the date 2025-03-01", "format “text”"),
    ("a number made a date", |t| *t.cell("sites", 2, "gate_width") = Cell::Date("1903-04-14".into()),
        "sites:2:gate_width", "the date 1903-04-14", "format “text”"),
    ("a part number that begins with #", |t| {
        t.text("parts", 2, "number", "#4711");
        t.text("ports", 2, "parts", "#4712");
    }, "ports:2:parts", "Part number “#4712” is not in the table", "add the row"),
    ("commas in a list", |t| t.text("frames", 2, "requires", "loader base, belly mower"),
        "frames:2:requires", "has a comma", "“loader base; belly mower”"),
    ("a doubled sheet", |t| { let again = t.sheet("parts").clone(); t.0.push(Sheet { name: "Parts".into(), shown: "Parts".into(), ..again }); },
        "Parts:1:", "“Parts” is a second sheet", "into the first sheet"),
    ("a sheet of one’s own without a sign", |t| t.0.push(Sheet::of("to do", "to do", Vec::new())),
        "to do:1:", "no table “to do”", "begin it with #"),
    ("a misspelled sheet", |t| t.0.push(Sheet::of("part_lists", "part_lists", Vec::new())),
        "part_lists:1:", "no table “part_lists”", "“parts_lists”"),
    ("a hidden row", |t| t.sheet("sites").hidden.push(2),
        "sites:2:", "Row 2 is hidden", "Show the rows"),
    ("a blank after an id", |t| t.text("frames", 2, "id", "small-frame "),
        "frames:2:id", "“small-frame ” has blanks", "“small-frame”"),
    ("a blank after a part number", |t| t.text("parts", 2, "number", "AX-10 "),
        "parts:2:number", "“AX-10 ” has blanks", "“AX-10”"),
    ("a blank before the item of a port", |t| t.text("ports", 3, "item", " small-open"),
        "ports:3:item", "“ small-open” has blanks", "“small-open”"),
    ("a decimal comma", |t| t.text("machines", 2, "hydraulics.flow", "16,5"),
        "machines:2:hydraulics.flow", "“16,5” is not a number", "“16.5”"),
    ("a thousands comma", |t| t.text("machines", 2, "rear.track", "1,520"),
        "machines:2:rear.track", "“1,520” is not a number", "nothing between thousands"),
    ("a unit in a cell", |t| t.text("machines", 2, "rear.track", "960 mm"),
        "machines:2:rear.track", "“960 mm” has “mm” beside the number", "Write 960 alone"),
    ("not applicable", |t| t.text("machines", 2, "mass", "n/a"),
        "machines:2:mass", "“n/a” is not a number", "leave it out"),
    ("a cross for yes", |t| t.text("machines", 2, "operator_seat.turns", "x"),
        "machines:2:operator_seat.turns", "“x” is neither yes nor no", "yes or no"),
    ("a stock word without how many", |t| *t.cell("machines", 2, "stock.used") = Cell::Empty,
        "machines:2:stock", "“stock.used” is missing", "Add it"),
    ("one port’s item misspelled", |t| t.text("ports", 2, "item", "smal-open"),
        "ports:2:item", "no “smal-open” in the table of items", "“small-open”"),
    ("one port’s name misspelled", |t| t.text("ports", 4, "name", "axle plats"),
        "holes:6:port", "no “axle plates” in the table of ports", "“axle plats”"),
    ("a hole’s item that is nobody’s", |t| t.text("holes", 2, "item", "big-open"),
        "holes:2:item", "no “big-open” in the table of items", "add the row"),
    ("a word misspelled", |t| t.text("ports", 2, "role", "axle_ancor"),
        "ports:2:role", "“axle_ancor” is not one of the words", "“axle_anchor”"),
    ("a unit nobody knows", |t| t.text("catalogue", 2, "units.length", "mn"),
        "catalogue:2:units.length", "“mn” is not a unit", "mm"),
    // References.
    ("another part’s number", |t| t.text("parts_lists", 2, "part", "FR-21"),
        "parts_lists:2:part", "“FR-21” is not in the table of parts", "Correct the spelling, or add the row"),
    ("a part number written otherwise", |t| t.text("parts_lists", 2, "part", "fr20"),
        "parts_lists:2:part", "“fr20” is not in the table of parts", "“FR-20”"),
    ("an id given twice", |t| { t.again("sites", 2); t.text("sites", 3, "label", "Churchyard, back gate"); },
        "sites:3:id", "“churchyard” is taken by sites, row 2", "another"),
    ("a set listed twice", |t| t.again("guide", 2),
        "guide:3:", "listed already, at guide, row 2", "Remove one"),
    // What contradicts itself.
    ("a mass in tonnes", |t| *t.cell("implements", 2, "mass") = Cell::Number(0.31),
        "implements:2:mass", "weighs 0.31, but its links alone weigh 145", "unit of the header"),
    ("a diameter for a radius", |t| *t.cell("machines", 2, "front.static_loaded_radius") = Cell::Number(540.0),
        "machines:2:front.static_loaded_radius", "stands 1080 high, above everything outlined of the machine (1000)", "a diameter"),
    ("axle loads that are not the mass", |t| *t.cell("machines", 2, "mass") = Cell::Number(870.0),
        "machines:2:mass", "bear 780 together, but the mass is 870", "Weigh again"),
    ("an axle above its rating", |t| *t.cell("machines", 2, "front.rated") = Cell::Number(300.0),
        "machines:2:front.bare_load", "bears 335 as the machine stands bare, more than the 300", "the rating"),
    ("a pressure in psi", |t| *t.cell("machines", 2, "hydraulics.relief") = Cell::Number(2030.0),
        "machines:2:hydraulics.relief", "2030 is hardly right here: 10 to 500", "unit of the header"),
    ("a flow times a hundred", |t| *t.cell("machines", 2, "hydraulics.flow") = Cell::Number(1850.0),
        "machines:2:hydraulics.flow", "1850 is hardly right here", "decimal point"),
    ("angles in radians", |t| for (end, angle) in [("least", -2.6), ("greatest", 0.5), ("transport", -1.0)] {
            *t.cell("implements", 2, &format!("arm.bucket.{end}")) = Cell::Number(angle);
        }, "implements:2:arm.bucket.greatest", "3.1 is hardly right here", "unit of the header"),
    ("holes counted from another point", |t| for row in 2..6 {
            let Cell::Number(v) = *t.cell("holes", row, "v") else { panic!("a number") };
            *t.cell("holes", row, "v") = Cell::Number(v + 900.0);
        }, "holes:2:", "their middle at u = 0, v = 900", "move the pose to the holes"),
    ("another bolt on the other side", |t| *t.cell("ports", 2, "kind.bolt_pattern.bolt") = Cell::Number(12.0),
        "guide:2:", "“small-open” states a bolt of 12 and “small-frame” one of 14", "the side that is wrong"),
    ("a line twice", |t| t.again("parts_lists", 2),
        "parts_lists:5:", "stands already at parts_lists, row 2", "Remove one"),
    ("another word for the same", |t| t.text("frames", 2, "requires", "loader base; front loader base"),
        "frames:2:requires", "No equipment is of the kind “front loader base”", "add equipment of that kind"),
    ("a size with a comma", |t| t.text("ports", 7, "kind.coupler.size", "12,5"),
        "ports:7:kind.coupler.size", "“12,5” stands only here", "“12.5”"),
    ("a label of a page", |t| t.text("machines", 2, "label", &"long ".repeat(200)),
        "machines:2:label", "has 1000 characters", "the note"),
    ("two rows with one label", |t| { t.again("seats", 2); t.text("seats", 3, "id", "own-seat-b"); },
        "seats:3:label", "is also the label of seats, row 2", "a label of its own"),
    ("a year with a digit too many", |t| *t.cell("machines", 2, "years.last") = Cell::Number(20_199.0),
        "machines:2:years.last", "20199 is hardly a year", "leave it out"),
    ("a day that is not", |t| t.text("catalogue", 2, "guide.date", "2014-02-31"),
        "catalogue:2:guide.date", "“2014-02-31” is not a date", "year, month and day"),
    ("a date to come", |t| t.text("catalogue", 2, "guide.date", "2914-02-01"),
        "catalogue:2:guide.date", "2914-02-01 is still to come", "Correct the date"),
    ("a part number in small letters", |t| { t.again("parts", 2); t.text("parts", 8, "number", "ax10"); },
        "parts:8:number", "“ax10” and “AX-10” (parts, row 2", "Keep one row"),
    ("a rack that looks forward", |t| t.text("ports", 5, "pose.faces", "front"),
        "ports:5:pose.faces", "faces front, away from", "face rear"),
    ("a port far behind", |t| *t.cell("ports", 2, "pose.at.x") = Cell::Number(-4300.0),
        "ports:2:pose.at.x", "x = -4300, well away", "from the rear axle"),
    ("holes in one another", |t| *t.cell("holes", 3, "v") = Cell::Number(-36.0),
        "holes:3:", "Holes 1 and 2 are 4 apart", "a slot"),
    ("a hole too small for its bolt", |t| *t.cell("holes", 6, "diameter") = Cell::Number(13.0),
        "holes:6:diameter", "bolt of 14 does not go through a hole of 13", "the hole or the port’s bolt"),
    ("a mass below zero", |t| *t.cell("frames", 2, "mass") = Cell::Number(-96.0),
        "frames:2:mass", "A mass of -96 is not possible", "Correct the number"),
    ("a centre beside the frame", |t| *t.cell("frames", 2, "centre_of_gravity.z") = Cell::Number(200.0),
        "frames:2:centre_of_gravity.x", "(100, 200) lies outside the outline", "Correct the centre"),
    ("a listed set that overloads its axle", |t| *t.cell("machines", 2, "rear.rated") = Cell::Number(500.0),
        "guide:2:", "listed, but by its data it cannot be mounted so: axle-overloaded", "fitup coverage"),
];

fn place(position: Option<&Position>) -> String {
    match position {
        Some(Position::Cell { table, row, column }) => format!("{table}:{row}:{column}"),
        other => format!("{other:?}"),
    }
}

#[test]
fn every_mistake_is_told_once_at_its_cell_with_its_mend() {
    let words = Words::new(Lang::En, Units::Metric);
    let mut wrong = Vec::new();
    for (name, spoil, at, sentence, mend) in MISTAKES {
        let mut tables = Tables::good();
        spoil(&mut tables);
        let told: Vec<_> = read_sheets(&tables.0)
            .1
            .iter()
            .map(|problem| {
                let told = words.problem(problem);
                (place(problem.position.as_ref()), told.sentence, told.mend)
            })
            .collect();
        let is_right = matches!(told.as_slice(), [(place, said, does)]
            if place == at && said.contains(sentence) && does.contains(mend));
        if !is_right {
            wrong.push(format!("{name}: {told:#?}"));
        }
    }
    assert!(wrong.is_empty(), "{} of {}:\n{}", wrong.len(), MISTAKES.len(), wrong.join("\n"));
    println!("mistakes seeded and told once, at their place, with the mend: {}", MISTAKES.len());
}

#[test]
fn good_tables_have_nothing_told_of_them() {
    assert_eq!(read_sheets(&Tables::good().0).1, []);
}
