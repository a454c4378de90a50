//! What a workbook does to its cells without changing what stands in them: rows that it hides, and
//! in `OpenDocument` cells that it merges.
//!
//! A workbook that cannot be looked into so has nothing unseen: what matters of it, the reader of its
//! cells says.

use std::collections::BTreeMap;
use std::io::{Cursor, Read};

use quick_xml::Reader;
use quick_xml::events::{BytesStart, Event};
use zip::ZipArchive;

use super::Merged;

/// Most bytes of one part of a workbook that are unpacked. No source.
const MOST_BYTES: u64 = 1 << 30;

/// Most rows that one entry of an `OpenDocument` table may stand for before the rest is its empty end.
/// No source.
const MOST_REPEATED: u32 = 10_000;

/// What is not seen of one worksheet.
#[derive(Debug, Default, PartialEq)]
pub struct Unseen {
    /// Rows it hides, counted from 1.
    pub hidden: Vec<u32>,
    /// Cells it merges; of `OpenDocument` only.
    pub merged: Vec<Merged>,
}

/// The hidden rows of an .xlsx workbook by worksheet.
pub fn unseen_of_xlsx(bytes: &[u8]) -> BTreeMap<String, Unseen> {
    let Ok(mut archive) = ZipArchive::new(Cursor::new(bytes)) else { return BTreeMap::new() };
    let mut targets: BTreeMap<String, String> = BTreeMap::new();
    each_start(&part(&mut archive, "xl/_rels/workbook.xml.rels"), |name, tag| {
        if let ("Relationship", Some(id), Some(target)) = (name, attribute(tag, "Id"), attribute(tag, "Target")) {
            targets.insert(id, target);
        }
    });
    let mut sheets: Vec<(String, String)> = Vec::new();
    each_start(&part(&mut archive, "xl/workbook.xml"), |tag_name, tag| {
        if let ("sheet", Some(name), Some(id)) = (tag_name, attribute(tag, "name"), attribute(tag, "r:id")) {
            sheets.extend(targets.get(&id).map(|target| (name, target.clone())));
        }
    });
    let mut all = BTreeMap::new();
    for (name, target) in sheets {
        let path = target.strip_prefix('/').map_or_else(|| format!("xl/{target}"), str::to_owned);
        let mut hidden = Vec::new();
        let mut row = 0;
        each_start(&part(&mut archive, &path), |name, tag| {
            if name == "row" {
                row = attribute(tag, "r").and_then(|number| number.parse().ok()).unwrap_or(row + 1);
                if attribute(tag, "hidden").is_some_and(|it| it == "1" || it == "true") {
                    hidden.push(row);
                }
            }
        });
        all.insert(name, Unseen { hidden, merged: Vec::new() });
    }
    all
}

/// The hidden rows and merged cells of an .ods workbook by worksheet.
pub fn unseen_of_ods(bytes: &[u8]) -> BTreeMap<String, Unseen> {
    let Ok(mut archive) = ZipArchive::new(Cursor::new(bytes)) else { return BTreeMap::new() };
    let mut all: BTreeMap<String, Unseen> = BTreeMap::new();
    let (mut sheet, mut row, mut column, mut repeated) = (String::new(), 0_u32, 0_u32, 1_u32);
    let number = |tag: &BytesStart<'_>, name: &str| attribute(tag, name).and_then(|text| text.parse::<u32>().ok());
    each_start(&part(&mut archive, "content.xml"), |name, tag| match name {
        "table:table" => {
            sheet = attribute(tag, "table:name").unwrap_or_default();
            (row, column, repeated) = (0, 0, 0);
        }
        "table:table-row" => {
            row = row.saturating_add(repeated);
            (column, repeated) = (0, number(tag, "table:number-rows-repeated").unwrap_or(1));
            let is_hidden = attribute(tag, "table:visibility").is_some_and(|it| it != "visible");
            if is_hidden && repeated <= MOST_REPEATED {
                all.entry(sheet.clone()).or_default().hidden.extend((0..repeated).map(|nth| row + nth + 1));
            }
        }
        "table:table-cell" | "table:covered-table-cell" => {
            let wide = number(tag, "table:number-columns-spanned").unwrap_or(1).max(1);
            let high = number(tag, "table:number-rows-spanned").unwrap_or(1).max(1);
            if wide > 1 || high > 1 {
                let last = (row.saturating_add(high - 1), column.saturating_add(wide - 1));
                all.entry(sheet.clone()).or_default().merged.push(Merged { first: (row, column), last });
            }
            column = column.saturating_add(number(tag, "table:number-columns-repeated").unwrap_or(1));
        }
        _ => {}
    });
    all
}

fn part(archive: &mut ZipArchive<Cursor<&[u8]>>, path: &str) -> String {
    let mut text = String::new();
    if let Ok(file) = archive.by_name(path) {
        // A part that is no text has nothing to be seen in it.
        if file.take(MOST_BYTES).read_to_string(&mut text).is_err() {
            text.clear();
        }
    }
    text
}

/// Every opening tag of a text with its name, as far as the text can be read.
fn each_start(text: &str, mut visit: impl FnMut(&str, &BytesStart<'_>)) {
    let mut reader = Reader::from_str(text);
    loop {
        match reader.read_event() {
            Ok(Event::Start(tag) | Event::Empty(tag)) => visit(tag.name().as_ref(), &tag),
            Ok(Event::Eof) | Err(_) => return,
            Ok(_) => {}
        }
    }
}

fn attribute(tag: &BytesStart<'_>, name: &str) -> Option<String> {
    let attribute = tag.try_get_attribute(name).ok().flatten()?;
    attribute.normalized_value(quick_xml::XmlVersion::default()).ok().map(std::borrow::Cow::into_owned)
}
