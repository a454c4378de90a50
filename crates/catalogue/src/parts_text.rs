//! A parts list as a person has it: a CSV file, or text copied out of a parts catalogue.
//!
//! Columns are told apart by tab, semicolon, comma or vertical bar, else by two spaces or more. Headings in one of the languages
//! say what a column holds; without them it is guessed: the part numbers have figures and letters, the quantities are small whole
//! numbers, positions are whole numbers that go up. A line that holds nothing but words heads the lines below it.

use fitup_core::item::{PartsList, PartsListRow, plain_number};

use crate::shortened::shortened;

/// The longest list that is read, in lines. Own choice, many times the longest that is printed.
pub const MOST_LINES: usize = 50_000;

/// A list, and what of the text could not be read.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PartsText {
    /// The list.
    pub list: PartsList,
    /// What is wrong, in the order of the lines.
    pub faults: Vec<ListFault>,
}

/// What is wrong with a line of a list.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ListFault {
    /// The line, counted from 1.
    pub line: usize,
    /// What is wrong.
    pub what: ListFaultKind,
}

/// The kinds of faults.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ListFaultKind {
    /// There is no part number in the line.
    NoNumber(String),
    /// The quantity is no whole number above zero.
    Quantity(String),
    /// The number stands in an earlier line of the assembly as well; the quantities are added up.
    Doubled(String, usize),
    /// The text holds no list at all.
    NoList,
    /// The list has more lines than are read.
    TooLong,
    /// It is no text.
    NotText,
}

impl ListFaultKind {
    /// The word that files and texts know it by.
    pub const fn word(&self) -> &'static str {
        match self {
            Self::NoNumber(_) => "no-number",
            Self::Quantity(_) => "quantity",
            Self::Doubled(..) => "doubled",
            Self::NoList => "no-list",
            Self::TooLong => "too-long",
            Self::NotText => "not-text",
        }
    }

    /// Whether the line was left out for it.
    pub const fn leaves_out(&self) -> bool {
        !matches!(self, Self::Doubled(..))
    }
}

/// What a column holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Column {
    Assembly,
    Position,
    Number,
    Description,
    Quantity,
}

/// Headings in small letters. A heading that begins with one of these is meant as well; the longest that does counts.
const HEADINGS: &[(Column, &[&str])] = &[
    (
        Column::Assembly,
        &["assembly", "group", "heading", "section", "baugruppe", "gruppe", "conjunto", "grupo", "ensemble", "groupe"],
    ),
    (Column::Position, &["position", "pos", "item", "ref", "fig", "key", "posición", "repère"]),
    (
        Column::Number,
        &[
            "part number",
            "part no",
            "part",
            "number",
            "no.",
            "teilenummer",
            "teil",
            "nummer",
            "bestellnummer",
            "artikel",
            "número",
            "referencia",
            "pieza",
            "numéro",
            "référence",
            "pièce",
        ],
    ),
    (
        Column::Description,
        &[
            "description",
            "name",
            "denomination",
            "bezeichnung",
            "benennung",
            "descripción",
            "denominación",
            "désignation",
            "nom",
        ],
    ),
    (
        Column::Quantity,
        &["quantity", "qty", "q'ty", "pcs", "menge", "anzahl", "stück", "stk", "cantidad", "cant", "quantité", "qté"],
    ),
];

/// Reads a list from the bytes of a file.
pub fn read_parts_bytes(bytes: &[u8]) -> PartsText {
    match std::str::from_utf8(bytes) {
        Ok(text) if !text.contains('\0') => read_parts_text(text),
        _ => PartsText { faults: vec![ListFault { line: 1, what: ListFaultKind::NotText }], ..PartsText::default() },
    }
}

/// Reads a list from text.
///
/// # Examples
/// ```
/// let read = fitup_catalogue::read_parts_text("Qty;Part number\n2;HK-7001\n");
/// assert_eq!((read.list.rows[0].part.as_str(), read.list.rows[0].quantity), ("HK-7001", 2));
/// ```
pub fn read_parts_text(text: &str) -> PartsText {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let lines = text.lines().enumerate().map(|(at, line)| (at + 1, line));
    let lines: Vec<(usize, &str)> = lines.filter(|(_, line)| !line.trim().is_empty()).take(MOST_LINES + 1).collect();
    let fault = |line, what| ListFault { line, what };
    if let Some(&(line, _)) = lines.get(MOST_LINES) {
        return PartsText { faults: vec![fault(line, ListFaultKind::TooLong)], ..PartsText::default() };
    }
    let separator = separator(&lines);
    let rows: Vec<(usize, Vec<String>)> = lines.iter().map(|&(at, line)| (at, cells(line, separator))).collect();
    let (columns, first) = columns(&rows);
    let mut read = PartsText::default();
    let mut heading = String::new();
    let mut seen = std::collections::BTreeMap::new();
    for (line, cells) in &rows[first..] {
        let cell = |column: Column| {
            let at = columns.iter().position(|known| *known == Some(column));
            at.and_then(|at| cells.get(at)).map(|cell| cell.trim()).filter(|cell| !cell.is_empty())
        };
        let mut filled = cells.iter().map(|cell| cell.trim()).filter(|cell| !cell.is_empty());
        let alone = filled.next().filter(|_| filled.next().is_none());
        if let Some(words) = alone.filter(|words| !is_number(words) && words.chars().any(char::is_alphabetic)) {
            words.trim_end_matches(':').clone_into(&mut heading);
            continue;
        }
        let Some(part) = cell(Column::Number)
            .or(alone.filter(|alone| is_number(alone)))
            .filter(|part| part.chars().any(char::is_alphanumeric))
        else {
            read.faults.push(fault(*line, ListFaultKind::NoNumber(shortened(&cells.join(" ")))));
            continue;
        };
        let written = cell(Column::Quantity).unwrap_or("1");
        let Some(quantity) = quantity(written) else {
            read.faults.push(fault(*line, ListFaultKind::Quantity(shortened(written))));
            continue;
        };
        let assembly = cell(Column::Assembly).unwrap_or(&heading).to_owned();
        let before = *seen.entry((assembly.to_lowercase(), plain_number(part))).or_insert(*line);
        if before != *line {
            read.faults.push(fault(*line, ListFaultKind::Doubled(shortened(part), before)));
        }
        read.list.rows.push(PartsListRow {
            assembly,
            position: cell(Column::Position).unwrap_or_default().to_owned(),
            part: part.to_owned(),
            description: cell(Column::Description).unwrap_or_default().to_owned(),
            quantity,
        });
    }
    if read.list.rows.is_empty() && read.faults.is_empty() {
        read.faults.push(fault(1, ListFaultKind::NoList));
    }
    read
}

/// What the cells of a line are parted by: the sign that most lines have, or two spaces.
fn separator(lines: &[(usize, &str)]) -> Option<char> {
    let with = |sign: char| lines.iter().filter(|(_, line)| line.contains(sign)).count();
    let best = ['\t', ';', '|', ','].into_iter().max_by_key(|&sign| with(sign)).filter(|&sign| with(sign) > 0)?;
    // A comma in a description parts nothing where cells stand apart by spaces.
    let spaced = lines.iter().filter(|(_, line)| line.trim().contains("  ")).count();
    if best == ',' && spaced > with(',') { None } else { Some(best) }
}

/// The cells of a line; between quotation marks a separator is none, and two of them are one.
fn cells(line: &str, separator: Option<char>) -> Vec<String> {
    let Some(separator) = separator else {
        return line.split("  ").map(str::trim).filter(|cell| !cell.is_empty()).map(str::to_owned).collect();
    };
    let mut cells = vec![String::new()];
    let mut quoted = false;
    let mut signs = line.chars().peekable();
    while let Some(sign) = signs.next() {
        let cell = cells.last_mut().expect("there is always one");
        match sign {
            '"' if quoted && signs.peek() == Some(&'"') => {
                cell.push('"');
                signs.next();
            }
            '"' if quoted || cell.trim().is_empty() => quoted = !quoted,
            sign if sign == separator && !quoted => cells.push(String::new()),
            sign => cell.push(sign),
        }
    }
    cells
}

/// What each column holds, and the first row that is no heading.
fn columns(rows: &[(usize, Vec<String>)]) -> (Vec<Option<Column>>, usize) {
    if let Some(columns) = rows.first().map(|(_, cells)| cells.iter().map(|cell| named(cell)).collect::<Vec<_>>())
        && columns.contains(&Some(Column::Number))
    {
        return (columns, 1);
    }
    (guessed(rows), 0)
}

fn named(cell: &str) -> Option<Column> {
    let cell = cell.trim().to_lowercase();
    // A heading has no figures: "part 12" is a description.
    if cell.bytes().any(|byte| byte.is_ascii_digit()) {
        return None;
    }
    let fits = HEADINGS.iter().flat_map(|(column, names)| names.iter().map(move |name| (*column, *name)));
    fits.filter(|(_, name)| cell.starts_with(name)).max_by_key(|(_, name)| name.len()).map(|(column, _)| column)
}

fn guessed(rows: &[(usize, Vec<String>)]) -> Vec<Option<Column>> {
    let width = rows.iter().map(|(_, cells)| cells.len()).max().unwrap_or_default();
    let filled = |at: usize| {
        rows.iter()
            .filter(|(_, cells)| cells.len() > 1)
            .filter_map(move |(_, cells)| cells.get(at))
            .map(|cell| cell.trim())
    };
    let share = |at: usize, is: fn(&str) -> bool| {
        let all = filled(at).filter(|cell| !cell.is_empty());
        let (met, count) = all.fold((0, 0), |(met, count), cell| (met + u32::from(is(cell)), count + 1));
        if count == 0 { 0.0 } else { f64::from(met) / f64::from(count) }
    };
    let mut columns = vec![None; width];
    let is_small = |cell: &str| quantity(cell).is_some_and(|quantity| quantity < 1_000);
    let mut numbers: Vec<usize> =
        (0..width).filter(|&at| share(at, is_number) > 0.5 && share(at, is_small) < 0.9).collect();
    // A description may end in a size; a part number is one word.
    numbers.sort_by(|&a, &b| share(b, |cell| !cell.contains(' ')).total_cmp(&share(a, |cell| !cell.contains(' '))));
    if let Some(&at) = numbers.first() {
        columns[at] = Some(Column::Number);
    } else if width == 1 {
        columns[0] = Some(Column::Number);
    }
    for at in (0..width).filter(|&at| columns[at].is_none() && share(at, is_small) > 0.5).collect::<Vec<_>>() {
        let counted: Vec<u32> = filled(at).filter_map(quantity).collect();
        let goes_up = counted.len() > 2 && counted.windows(2).all(|pair| pair[0] < pair[1]);
        let column = if goes_up { Column::Position } else { Column::Quantity };
        // Of several that may be quantities, the last is.
        if let Some(known) = columns.iter_mut().find(|known| **known == Some(column)) {
            *known = None;
        }
        columns[at] = Some(column);
    }
    let longest = (0..width).filter(|&at| columns[at].is_none());
    let longest = longest.max_by_key(|&at| filled(at).map(str::len).sum::<usize>());
    if let Some(at) = longest {
        columns[at] = Some(Column::Description);
    }
    columns
}

/// Whether a text may be a part number: it has a figure, three signs that count, and few words.
fn is_number(text: &str) -> bool {
    text.chars().any(|sign| sign.is_ascii_digit())
        && plain_number(text).chars().count() >= 3
        && text.split_whitespace().count() <= 4
        && !text.ends_with(':')
}

/// A quantity as people write it: `2`, `2 x`, `x2`, `2 pcs`, `2.0`.
fn quantity(text: &str) -> Option<u32> {
    let text = text.trim().trim_start_matches(['x', 'X', '×']).trim_start();
    let figures: String = text.chars().take_while(char::is_ascii_digit).collect();
    let rest = text[figures.len()..].trim_start_matches([',', '.']).trim_start_matches('0').trim();
    let is_unit = [
        "", "x", "X", "×", "pc", "pcs", "pcs.", "pc.", "St", "St.", "Stk", "Stk.", "Stück", "ea", "ud", "uds", "pz",
        "pce",
    ];
    (is_unit.contains(&rest)).then(|| figures.parse().ok()).flatten().filter(|&quantity| quantity > 0)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Rows as `assembly|position|number|description|quantity`.
    fn rows(text: &str) -> Vec<String> {
        let read = read_parts_text(text);
        let row = |row: &PartsListRow| {
            format!("{}|{}|{}|{}|{}", row.assembly, row.position, row.part, row.description, row.quantity)
        };
        read.list.rows.iter().map(row).collect()
    }

    fn faults(text: &str) -> Vec<(usize, &'static str)> {
        read_parts_text(text).faults.iter().map(|fault| (fault.line, fault.what.word())).collect()
    }

    #[test]
    fn columns_may_stand_in_any_order_and_in_any_of_the_languages() {
        let wanted = ["hooks|1|HK-7001|hook, left|2"];
        for text in [
            "Assembly,Pos,Part number,Description,Qty\nhooks,1,HK-7001,\"hook, left\",2\n",
            "\u{feff}Menge;Bezeichnung;Teilenummer;Pos.;Baugruppe\r\n2;hook, left;HK-7001;1;hooks\r\n",
            "Cantidad\tReferencia\tDescripción\tPosición\tConjunto\n2 x\tHK-7001\thook, left\t1\thooks\n",
            "Repère|Référence|Désignation|Qté|Ensemble\n1|HK-7001|hook, left|2|hooks\n",
        ] {
            assert_eq!(rows(text), wanted, "{text}");
        }
    }

    #[test]
    fn pasted_text_without_headings_is_guessed() {
        let text = "Hooks:\n1   HK-7001   hook    2\n2   PN-20    latch pin    1\n3   B-12 40    bolt M12x40   4\n";
        assert_eq!(
            rows(text),
            ["Hooks|1|HK-7001|hook|2", "Hooks|2|PN-20|latch pin|1", "Hooks|3|B-12 40|bolt M12x40|4"]
        );
        assert_eq!(rows("HK-7001\nPN-20\n"), ["||HK-7001||1", "||PN-20||1"], "numbers alone are one each");
        assert_eq!(rows("HK-7001;2\nPN-20;1\nB-1;4"), ["||HK-7001||2", "||PN-20||1", "||B-1||4"]);
    }

    #[test]
    fn rubbish_is_told_with_its_line_and_the_rest_is_read() {
        let text = "Part number;Qty\nHK-7001;2\n;3\nPN-20;many\n\nB-1;0\nB-2;1\nhk 7001;1\n";
        assert_eq!(faults(text), [(3, "no-number"), (4, "quantity"), (6, "quantity"), (8, "doubled")]);
        assert_eq!(rows(text), ["||HK-7001||2", "||B-2||1", "||hk 7001||1"]);
        assert_eq!(read_parts_text(text).faults[3].what, ListFaultKind::Doubled("hk 7001".into(), 2));
        assert_eq!((faults(""), faults("hooks\n")), (vec![(1, "no-list")], vec![(1, "no-list")]));
        let bytes = |bytes: &[u8]| read_parts_bytes(bytes).faults[0].what.clone();
        assert_eq!((bytes(&[0xff, 0xfe, 0x00]), bytes(b"PK\0\0")), (ListFaultKind::NotText, ListFaultKind::NotText));
    }

    #[test]
    fn a_long_list_is_read_and_one_beyond_all_measure_is_not() {
        let lines: Vec<String> = (0..10_000).map(|at| format!("N-{at};part {at};{}", at % 7 + 1)).collect();
        let read = read_parts_text(&lines.join("\n"));
        assert_eq!((read.list.rows.len(), read.faults.len()), (10_000, 0));
        assert_eq!((read.list.rows[9_999].part.as_str(), read.list.rows[9_999].quantity), ("N-9999", 9_999 % 7 + 1));
        assert_eq!(faults(&"N-1;1\n".repeat(MOST_LINES + 1)), [(MOST_LINES + 1, "too-long")]);
    }

    #[test]
    fn quantities_are_read_as_people_write_them() {
        let of = ["2", "2x", "x 2", "×2", "2 pcs", "2,0", "2.00", "2 Stk."];
        assert!(of.iter().all(|text| quantity(text) == Some(2)), "{:?}", of.map(quantity));
        assert!(
            ["", "two", "0", "-1", "2,5", "1e3", "2 and more", "99999999999"].iter().all(|it| quantity(it).is_none())
        );
    }
}
