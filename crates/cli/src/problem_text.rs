//! Problems of a catalogue in English, each with its mend.

use fitup_catalogue::{Code, Position, Problem};

/// Where a problem is, as short as it can be said: line and column, or table, row and column.
pub fn place(problem: &Problem) -> String {
    match &problem.position {
        Some(Position::Text { line, column }) => format!("{line}:{column}"),
        Some(Position::Cell { table, row, column }) if column.is_empty() => format!("{table}:{row}"),
        Some(Position::Cell { table, row, column }) => format!("{table}:{row}:{column}"),
        None => String::new(),
    }
}

/// What is wrong, in a sentence.
#[expect(clippy::too_many_lines, reason = "one sentence for each code, in the order of the codes")]
pub fn sentence(problem: &Problem) -> String {
    let arg = |name: &str| problem.arg(name).unwrap_or_default();
    let found = arg("found");
    match problem.code {
        Code::NotText => format!("This is not UTF-8 text: byte {} belongs to no character.", arg("byte")),
        Code::Syntax => format!("This is not JSON: found {}, expected {}.", shown(found), token(arg("expected"))),
        Code::TooLarge => format!("The file has {found} bytes; the most that is read is {}.", arg("greatest")),
        Code::TooManyValues => format!("The file holds more than {} values.", arg("greatest")),
        Code::TooDeep => format!("Lists and records are nested more than {} deep.", arg("greatest")),
        Code::MoreProblems => format!("There are more problems; the first {} are shown.", arg("shown")),
        Code::UnknownTable => format!("There is no table {} in the format.", shown(found)),
        Code::MissingTable => format!("The table {} is missing.", shown(arg("table"))),
        Code::MissingFormat => "The file does not say which format it is in.".into(),
        Code::NewerFormat => {
            format!("The file is in format {found}, newer than format {} that this program reads.", arg("expected"))
        }
        Code::UnknownFormat => format!("There is no format {}.", shown(found)),
        Code::WrongType => format!("Found {}, expected {}.", token(found), token(arg("expected"))),
        Code::UnknownField => format!("There is no field {} here.", shown(found)),
        Code::MissingField => format!("The field {} is missing.", shown(arg("field"))),
        Code::DuplicateField => format!("The field {} stands twice.", shown(arg("field"))),
        Code::UnknownWord => format!("{} is not one of the words that may stand here.", shown(found)),
        Code::NotExactlyOne if found.is_empty() => "Nothing stands here; exactly one is wanted.".into(),
        Code::NotExactlyOne => format!("Several stand here ({found}); exactly one is wanted."),
        Code::NumberNotFinite => format!("{found} is not a finite number."),
        Code::NumberOutOfRange => {
            format!("{found} is out of range: from {} to {}.", arg("least"), arg("greatest"))
        }
        Code::NumberNotWhole => format!("{found} is not a whole number."),
        Code::UnsafeCharacter => format!("The text has the character {found}, which is invisible or turns text round."),
        Code::TextTooLong => format!("The text has {found} bytes; the most is {}.", arg("greatest")),
        Code::BlankText => "The text is empty.".into(),
        Code::EmptyRecord => "The record says nothing.".into(),
        Code::UnknownUnit => format!("{} is not a unit that is known here.", shown(found)),
        Code::UnknownCurrency => format!("{} is not a currency code of three capital letters.", shown(found)),
        Code::BadDate => format!("{} is not a date like 2014-02-01.", shown(found)),
        Code::BadId => format!("{} is not an id: lower-case letters, digits and hyphens.", shown(found)),
        Code::ReservedId => format!("The id {} has a meaning of its own in the guide.", shown(found)),
        Code::DuplicateId => format!("The id {} is taken by {}.", shown(found), arg("other")),
        Code::DuplicatePart => format!("The part number {} is taken by {}.", shown(found), arg("other")),
        Code::DuplicatePort => format!("Another port of this item is called {}.", shown(found)),
        Code::UnknownReference => format!("There is no {} in the table of {}.", shown(found), arg("table")),
        Code::UnknownPart => format!("Part number {} is not in the table of parts.", shown(found)),
        Code::MassNotPositive => format!("A mass of {found} cannot be: it has to be above zero."),
        Code::NotPositive => format!("{found} cannot be: it has to be above zero."),
        Code::Negative => format!("{found} cannot be: it has to be zero or more."),
        Code::RangeUpsideDown => {
            format!("The range is upside down: it ends at {}, below its start at {}.", arg("greatest"), arg("least"))
        }
        Code::OutsideOwnRange => {
            format!("{found} is outside its own range, from {} to {}.", arg("least"), arg("greatest"))
        }
        Code::ShareOutOfRange => format!("A share of {found} cannot be: it lies between 0 and 1."),
        Code::PriceTooFine => format!("The price {found} is finer than hundredths and is rounded."),
        Code::SleeveInsideOut => {
            format!(
                "The sleeve's inner diameter {} is not less than its outer diameter {}.",
                arg("inner"),
                arg("outer")
            )
        }
        Code::NoHoles => "The bolt pattern has no holes.".into(),
        Code::TooManyHoles => format!("The bolt pattern has {found} holes; the most is {}.", arg("greatest")),
        Code::HolesCoincide => format!("Holes {} and {} are at the same place.", arg("first"), arg("second")),
        Code::MoreBoltsThanHoles => {
            format!("{} bolts are required, but there are {} holes.", arg("required"), arg("holes"))
        }
        Code::NoPoints => "The pinned port has no points.".into(),
        Code::PoseNotSquare => {
            format!("A face that looks {} cannot have its up direction {}.", arg("faces"), arg("up"))
        }
        Code::PoseMissing => "The port does not say where it is, so nothing can be placed by it.".into(),
        Code::KindNotOfRole => {
            format!("A port of kind {} cannot serve as {}.", shown(arg("kind")), shown(arg("role")))
        }
        Code::MachineCarried => "Nothing carries a machine.".into(),
        Code::AdapterLeadsNowhere => "The adapter does not lead from one port to another.".into(),
        Code::MountWithoutPort => format!("The implement has no port to be mounted by ({}).", arg("mount")),
        Code::PathUnreadable => format!("The path data cannot be read: {}.", shown(found)),
        Code::PathOutOfRange => format!("The path data has a coordinate beyond {}.", arg("greatest")),
        Code::PathCurved => "An underside is made of straight lines; this one curves.".into(),
        Code::OutlineCrosses => {
            format!("The outline of {} crosses itself at ({}, {}).", shown(arg("shape")), arg("x"), arg("y"))
        }
        Code::OutlineTooDetailed => {
            format!("The outlines have too much detail to be checked, from {} on.", shown(arg("shape")))
        }
        Code::CentreOutside => format!(
            "The centre of gravity ({}, {}) lies outside the outline in the {} view.",
            arg("x"),
            arg("y"),
            arg("view")
        ),
        Code::CarrierWithoutArm => format!(
            "The shape {} moves with the {}, but the item has no digging arm.",
            shown(arg("shape")),
            arg("carrier")
        ),
        Code::LineageCircle => format!("The parts replace each other in a circle: {}.", arg("chain")),
        Code::LineageContradictory => format!(
            "That {} replaced {} is recorded as both ways and as forward only; the other record is {}.",
            arg("by"),
            arg("part"),
            arg("other")
        ),
        Code::ReplacedByNothing => "The part is replaced by nothing.".into(),
        Code::SetNamesNothing => "The set names no item.".into(),
        Code::DuplicateSet => format!("The set is listed already, at {}.", arg("other")),
        Code::ListedCannotMate => format!(
            "The set is listed, but {} cannot carry {} at the {} by the dimensions of their ports.",
            shown(arg("a")),
            shown(arg("b")),
            arg("role")
        ),
    }
}

/// What mends it.
pub fn mend(problem: &Problem) -> String {
    if let Some(suggestion) = problem.arg("suggestion") {
        return format!("Did you mean {}?", shown(suggestion));
    }
    let expected = problem.arg("expected").unwrap_or_default();
    match problem.code {
        Code::NotText => "Save the file as UTF-8.".into(),
        Code::Syntax => "Mend the punctuation here; JSON has no comments and no comma before a closing bracket.".into(),
        Code::TooLarge | Code::TooManyValues => "Split the catalogue into several.".into(),
        Code::TooDeep => "A catalogue needs no such nesting: compare with the format's description.".into(),
        Code::MoreProblems => "Mend these first.".into(),
        Code::MissingFormat => format!("Begin with \"format\": {expected}."),
        Code::NewerFormat => "Use a newer version of this program.".into(),
        Code::UnknownFormat => format!("The format is the number {expected}."),
        Code::UnknownField | Code::UnknownWord | Code::NotExactlyOne | Code::UnknownUnit | Code::KindNotOfRole => {
            format!("There are: {expected}.")
        }
        Code::MissingField | Code::MissingTable => "Add it.".into(),
        Code::UnknownTable => "Remove it, or correct its name.".into(),
        Code::DuplicateField | Code::DuplicateSet => "Remove one.".into(),
        Code::NumberNotFinite
        | Code::NumberOutOfRange
        | Code::NumberNotWhole
        | Code::MassNotPositive
        | Code::NotPositive
        | Code::Negative
        | Code::ShareOutOfRange
        | Code::OutsideOwnRange => "Correct the number, or leave the field out if it is not known.".into(),
        Code::WrongType => "Write a value of the expected sort, or leave an optional field out.".into(),
        Code::UnsafeCharacter => "Remove the character.".into(),
        Code::TextTooLong => "Shorten the text.".into(),
        Code::BlankText => "Fill it in.".into(),
        Code::EmptyRecord => "Leave it out.".into(),
        Code::UnknownCurrency => "Write the code of ISO 4217, such as USD, EUR or GBP.".into(),
        Code::BadDate => "Write year, month and day with hyphens.".into(),
        Code::BadId | Code::ReservedId | Code::DuplicateId | Code::DuplicatePort => "Give it another.".into(),
        Code::DuplicatePart => "Keep one row for each part number.".into(),
        Code::UnknownReference | Code::UnknownPart => "Correct the spelling, or add the row.".into(),
        Code::RangeUpsideDown => "Exchange the two, or correct the wrong one.".into(),
        Code::PriceTooFine => "Round it yourself.".into(),
        Code::SleeveInsideOut => "Exchange the two diameters.".into(),
        Code::NoHoles | Code::NoPoints => "Add them, or leave the port out if they are not known.".into(),
        Code::TooManyHoles => "Leave out holes that no bolt of the joint uses.".into(),
        Code::HolesCoincide => "Remove one, or correct its place.".into(),
        Code::MoreBoltsThanHoles => "Correct the number, or add the holes.".into(),
        Code::PoseNotSquare => "Choose an up direction at a right angle to the way the face looks.".into(),
        Code::PoseMissing => "Add the pose.".into(),
        Code::MachineCarried => "Make the port's end \"carrier\".".into(),
        Code::AdapterLeadsNowhere => "Give it a carried and a carrier port, or a sleeve.".into(),
        Code::MountWithoutPort => "Add a carried port of that role, or correct the mount.".into(),
        Code::PathUnreadable => "Use the commands M L H V C Q A Z, the first an M.".into(),
        Code::PathOutOfRange => "Correct the coordinate.".into(),
        Code::PathCurved => "Use M, L, H, V and Z only.".into(),
        Code::OutlineCrosses => "Bring its points into order round the outline.".into(),
        Code::OutlineTooDetailed => "Draw it with fewer points.".into(),
        Code::CentreOutside => "Correct the centre of gravity, or draw what is missing of the outline.".into(),
        Code::CarrierWithoutArm => "Add the arm, or let the shape move with the item.".into(),
        Code::LineageCircle | Code::LineageContradictory => "Remove the record that is wrong.".into(),
        Code::ReplacedByNothing => "Name what replaces it, or leave \"replaced\" out.".into(),
        Code::SetNamesNothing => "Name at least one item by its id.".into(),
        Code::ListedCannotMate => {
            "Compare both ports with the drawings; one of the dimensions or the listing is wrong.".into()
        }
    }
}

/// Text of the file, marked as such.
fn shown(text: &str) -> String {
    format!("“{text}”")
}

/// A word of the reader for people.
fn token(word: &str) -> &str {
    match word {
        "value" => "a value",
        "null" => "null",
        "flag" => "true or false",
        "number" => "a number",
        "whole-number" => "a whole number",
        "number-or-stated" => "a number, or a record with value, plus_minus and source",
        "text" => "text",
        "list" => "a list",
        "record" => "a record",
        "word-or-record" => "a word or a record",
        "end-of-file" => "the end of the file",
        "field-name" => "a field's name in double quotes",
        "colon" => "a colon",
        "comma-or-close-bracket" => "a comma or ]",
        "comma-or-close-brace" => "a comma or }",
        other => other,
    }
}
