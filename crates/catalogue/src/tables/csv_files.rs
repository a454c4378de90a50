//! Tables as CSV files (RFC 4180).

use super::{Cell, Sheet};

/// The text of a table's CSV file.
pub fn csv(sheet: &Sheet) -> String {
    let mut writer = csv::WriterBuilder::new().from_writer(Vec::new());
    let widest = sheet.rows.iter().map(Vec::len).max().unwrap_or(0);
    for row in &sheet.rows {
        // Rows of a workbook end with their last cell.
        let cells = row.iter().map(Cell::text).chain(std::iter::repeat_n(String::new(), widest - row.len()));
        writer.write_record(cells).expect("rows of one length go into memory");
    }
    let bytes = writer.into_inner().expect("memory does not fail");
    String::from_utf8(bytes).expect("what is written is text")
}

/// The table of a CSV file's text. The separator is the comma, or the semicolon or tab if the headings have
/// more of those: spreadsheets of many countries write them.
///
/// # Errors
/// What the CSV reader says, if the quotation marks cannot be read.
pub fn sheet_of_csv(name: &str, shown: &str, text: &str) -> Result<Sheet, String> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let headings = text.lines().next().unwrap_or_default();
    let count = |separator: char| headings.matches(separator).count();
    let separator = [',', ';', '\t'].into_iter().rev().max_by_key(|&one| count(one)).unwrap_or(',');
    let delimiter = u8::try_from(separator).unwrap_or(b',');
    let mut reader =
        csv::ReaderBuilder::new().has_headers(false).flexible(true).delimiter(delimiter).from_reader(text.as_bytes());
    let mut rows = Vec::new();
    for record in reader.records() {
        let record = record.map_err(|error| format!("{shown}: {error}"))?;
        rows.push(record.iter().map(Cell::of_text).collect());
    }
    Ok(Sheet::of(name, shown, rows))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_separator_is_found_by_the_headings() {
        for text in ["id,label\na,\"x, y; z\"\n", "\u{feff}id;label\na;\"x, y; z\"\n", "id\tlabel\r\na\tx, y; z\r\n"] {
            let sheet = sheet_of_csv("sites", "sites.csv", text).unwrap();
            assert_eq!(sheet.rows[1], [Cell::Text("a".into()), Cell::Text("x, y; z".into())], "{text}");
        }
    }
}
