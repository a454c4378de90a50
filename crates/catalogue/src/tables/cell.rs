//! Cells, and what stands in one.

use crate::write::decimal;

/// What a cell holds.
#[derive(Debug, Clone, PartialEq, Default)]
pub enum Cell {
    /// Nothing.
    #[default]
    Empty,
    /// Text.
    Text(String),
    /// A number.
    Number(f64),
    /// Yes or no.
    Flag(bool),
    /// A date that the spreadsheet made of what was typed, as ISO 8601 writes it.
    Date(String),
    /// What a formula that failed left behind: `#REF!`.
    Error(String),
    /// A formula whose value is not stored.
    Formula,
}

impl Cell {
    /// A cell that holds a text, or what a formula that failed left of one.
    pub fn of_text(text: &str) -> Self {
        if text.is_empty() {
            Self::Empty
        } else if is_error(text.trim()) {
            Self::Error(text.trim().to_owned())
        } else {
            Self::Text(text.to_owned())
        }
    }

    /// Whether nothing stands in it, blanks aside.
    pub fn is_blank(&self) -> bool {
        match self {
            Self::Empty => true,
            Self::Text(text) => text.trim().is_empty(),
            _ => false,
        }
    }

    /// What stands in it as text.
    pub fn text(&self) -> String {
        match self {
            Self::Empty => String::new(),
            Self::Number(number) => decimal(*number),
            Self::Flag(flag) => (if *flag { "yes" } else { "no" }).into(),
            Self::Text(text) | Self::Date(text) | Self::Error(text) => text.clone(),
            Self::Formula => "=".into(),
        }
    }
}

/// Whether a text is what spreadsheets show of a formula that failed: `#REF!`, `#NAME?`, `#N/A` in
/// whatever language, `Err:502`.
fn is_error(text: &str) -> bool {
    let in_capitals = |text: &str| text.chars().all(|c| !c.is_lowercase() && !c.is_whitespace());
    text.strip_prefix('#').is_some_and(|name| {
        (name.ends_with(['!', '?']) && name.chars().count() > 2 && in_capitals(name))
            || ["N/A", "NV", "N/D"].contains(&name)
    }) || text
        .strip_prefix("Err:")
        .is_some_and(|number| number.len() == 3 && number.bytes().all(|b| b.is_ascii_digit()))
}

/// Whether a row, a column or a sheet is the keeper's own, by its first cell, its heading or its
/// name: it begins with `#`, a blank after it. A part number such as `#4711` is not.
pub fn is_own(text: &str) -> bool {
    let text = text.trim_start();
    text.strip_prefix('#').is_some_and(|rest| rest.is_empty() || rest.starts_with(char::is_whitespace))
}

/// Text as a cell holds it. Spreadsheets take text that begins with one of some signs for a
/// formula, and a first cell with `#` is a note: such text, and text with an apostrophe in front,
/// gets an apostrophe in front.
pub fn guarded(text: &str) -> String {
    if text.starts_with(['=', '+', '-', '@', '#', '\'', '\t', '\r']) { format!("'{text}") } else { text.to_owned() }
}

/// The text that a cell holds.
pub fn unguarded(text: &str) -> &str {
    text.strip_prefix('\'').unwrap_or(text)
}

/// A list as it stands in one cell: `a; b`. A member with a semicolon, a comma, a quotation mark or blanks at its
/// ends stands in quotation marks, those within doubled.
pub fn joined<'a>(members: impl IntoIterator<Item = &'a str>) -> String {
    let quoted = |member: &str| {
        let is_plain = !member.is_empty() && !member.contains([';', ',', '"']) && member.trim() == member;
        if is_plain { member.to_owned() } else { format!("\"{}\"", member.replace('"', "\"\"")) }
    };
    members.into_iter().map(quoted).collect::<Vec<_>>().join("; ")
}

/// The members of a list as [`joined`] writes it. An unclosed quotation mark reaches to the end.
pub fn members(cell: &str) -> Vec<String> {
    let mut members = Vec::new();
    let mut rest = cell.trim();
    while !rest.is_empty() {
        if let Some(quoted) = rest.strip_prefix('"') {
            let (member, after) = unquoted(quoted);
            members.push(member);
            // What follows a closing quotation mark up to the next semicolon is nothing but blanks.
            rest = after.split_once(';').map_or("", |(_, rest)| rest).trim_start();
        } else {
            let (member, after) = rest.split_once(';').unwrap_or((rest, ""));
            members.push(member.trim_end().to_owned());
            rest = after.trim_start();
        }
    }
    members
}

fn unquoted(text: &str) -> (String, &str) {
    let mut member = String::new();
    let mut rest = text;
    while let Some((before, after)) = rest.split_once('"') {
        member.push_str(before);
        match after.strip_prefix('"') {
            Some(after) => {
                member.push('"');
                rest = after;
            }
            None => return (member, after),
        }
    }
    member.push_str(rest);
    (member, "")
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn lists_read_as_people_write_them() {
        assert_eq!(members("a;b ; c d"), ["a", "b", "c d"]);
        assert_eq!(members(" "), Vec::<String>::new());
        assert_eq!(members("a;"), ["a"]);
        assert_eq!(joined(["a;b", "say \"x\"", ""]), "\"a;b\"; \"say \"\"x\"\"\"; \"\"");
    }

    #[test]
    fn what_failed_is_told_from_what_is_written() {
        for text in ["#REF!", "#N/A", "#BEZUG!", "#¡REF!", "#NAME?", "Err:502", " #DIV/0! "] {
            assert!(matches!(Cell::of_text(text), Cell::Error(_)), "{text}");
        }
        for text in ["#4711", "# a note!", "#", "Err: 502", "really?", "#2!"] {
            assert_eq!(Cell::of_text(text), Cell::Text(text.into()));
        }
        for (text, own) in [("# note", true), ("#", true), (" #\tx", true), ("#4711", false), ("note", false)] {
            assert_eq!(is_own(text), own, "{text}");
        }
    }

    proptest! {
        #[test]
        fn lists_come_back_as_they_were(list in proptest::collection::vec("[a-c;\" ]{0,6}", 0..5)) {
            prop_assert_eq!(members(&joined(list.iter().map(String::as_str))), list);
        }

        #[test]
        fn guarded_text_comes_back_as_it_was(text in "[=+'#a-]{0,4}") {
            let held = guarded(&text);
            prop_assert_eq!(unguarded(&held), text.as_str());
        }
    }
}
