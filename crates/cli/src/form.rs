//! The forms a catalogue comes in: the published JSON file, a folder of CSV tables, a workbook.

use std::fs;
use std::io::Read;
use std::path::{Path, PathBuf};

use fitup_catalogue::tables::{
    Sheet, TemplateUnits, csv, kept, read_sheets, sheet_of_csv, sheets, sheets_of_workbook, template, workbook,
};
use fitup_catalogue::wire::CatalogueFile;
use fitup_catalogue::{Problem, read_bytes, read_closely, write};
use fitup_core::item::Catalogue;

/// A form.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// The published file.
    Json,
    /// A folder of CSV files, one for each table.
    Folder,
    /// A workbook with a worksheet for each table.
    Workbook,
}

/// The form that a path stands for: by its ending, a folder if it has none.
///
/// # Errors
/// An ending that stands for none.
pub fn form_of(path: &str) -> Result<Form, String> {
    let as_path = Path::new(path);
    if path == "-" {
        return Ok(Form::Json);
    }
    if as_path.is_dir() || path.ends_with(['/', '\\']) {
        return Ok(Form::Folder);
    }
    match as_path.extension().and_then(|ending| ending.to_str()).map(str::to_lowercase).as_deref() {
        Some("json") => Ok(Form::Json),
        Some("xlsx" | "ods") => Ok(Form::Workbook),
        None if as_path.is_file() => Ok(Form::Json),
        None => Ok(Form::Folder),
        Some(other) => {
            Err(format!("{path}: a catalogue is a .json file, an .xlsx or .ods workbook or a folder, not .{other}"))
        }
    }
}

/// A catalogue that was read.
#[derive(Debug)]
pub struct FormRead {
    /// Its records, if no problem is an error.
    pub file: Option<CatalogueFile>,
    /// The catalogue, if no problem is an error.
    pub catalogue: Option<Catalogue>,
    /// Everything that is wrong with it.
    pub problems: Vec<Problem>,
    /// The text, of a JSON file.
    pub text: Option<String>,
    /// The tables, of a folder or a workbook.
    pub sheets: Option<Vec<Sheet>>,
}

/// Reads a catalogue in any form; `-` is JSON from the standard input.
///
/// # Errors
/// What cannot be read, and why.
pub fn read(path: &str) -> Result<FormRead, String> {
    if form_of(path)? != Form::Json {
        let sheets = sheets_of(path)?;
        let (read, problems) = read_sheets(&sheets);
        let (file, catalogue) = read.unzip();
        return Ok(FormRead { file, catalogue, problems, text: None, sheets: Some(sheets) });
    }
    match String::from_utf8(bytes_of(path)?) {
        Ok(text) => {
            let (read, problems) = read_closely(&text);
            let (file, catalogue) = read.unzip();
            Ok(FormRead { file, catalogue, problems, text: Some(text), sheets: None })
        }
        Err(error) => {
            let problems = read_bytes(error.as_bytes()).problems;
            Ok(FormRead { file: None, catalogue: None, problems, text: None, sheets: None })
        }
    }
}

/// The catalogue of a path in any form and what is wrong with it, looked at no closer than it takes to use it.
///
/// # Errors
/// What cannot be read, and why.
pub fn open(path: &str) -> Result<(Option<Catalogue>, Vec<Problem>), String> {
    if form_of(path)? == Form::Json {
        let reading = read_bytes(&bytes_of(path)?);
        return Ok((reading.catalogue, reading.problems));
    }
    let (read, problems) = read_sheets(&sheets_of(path)?);
    Ok((read.map(|(_, catalogue)| catalogue), problems))
}

/// The tables of a folder or a workbook.
fn sheets_of(path: &str) -> Result<Vec<Sheet>, String> {
    match form_of(path)? {
        Form::Workbook => sheets_of_workbook(&bytes_of(path)?).map_err(|error| format!("{path}: {error}")),
        _ => sheets_of_folder(path),
    }
}

/// Writes a catalogue in the form that the path stands for. What was read as tables goes into tables
/// with everything that is the keeper's own: notes, remarks, further sheets.
///
/// # Errors
/// What cannot be written, and why; also when something is there already, unless `over` it.
pub fn write_file(path: &str, file: &CatalogueFile, read: Option<&[Sheet]>, over: bool) -> Result<(), String> {
    match form_of(path)? {
        Form::Json => store(Path::new(path), write(file).as_bytes(), over),
        _ => write_sheets(path, &read.map_or_else(|| sheets(file), kept), over),
    }
}

/// Writes tables for a new catalogue: headings, notes on what each column holds, examples.
///
/// # Errors
/// What cannot be written, and why; also when something is there already.
pub fn write_template(path: &str, units: TemplateUnits) -> Result<(), String> {
    match form_of(path)? {
        Form::Json => Err(format!("{path}: a template is a folder of CSV tables or an .xlsx workbook")),
        _ => write_sheets(path, &template(units), false),
    }
}

fn write_sheets(path: &str, sheets: &[Sheet], over: bool) -> Result<(), String> {
    if path.to_lowercase().ends_with(".ods") {
        return Err(format!("{path}: workbooks are read in both kinds and written as .xlsx"));
    }
    if form_of(path)? == Form::Workbook {
        let bytes = workbook(sheets).map_err(|error| format!("{path}: {error}"))?;
        return store(Path::new(path), &bytes, over);
    }
    fs::create_dir_all(path).map_err(|error| format!("{path}: {error}"))?;
    let files: Vec<(PathBuf, &Sheet)> =
        sheets.iter().map(|sheet| (Path::new(path).join(format!("{}.csv", sheet.name)), sheet)).collect();
    // All or none: the folder is looked through before the first file is written.
    if let Some((there, _)) = files.iter().find(|(file, _)| !over && file.exists()) {
        return Err(is_there(there));
    }
    files.iter().try_for_each(|(file, sheet)| store(file, csv(sheet).as_bytes(), over))
}

fn store(path: &Path, bytes: &[u8], over: bool) -> Result<(), String> {
    if !over && path.exists() {
        return Err(is_there(path));
    }
    fs::write(path, bytes).map_err(|error| format!("{}: {error}", path.display()))
}

fn is_there(path: &Path) -> String {
    format!("{} is there already; give another name, or --force to write over it", path.display())
}

fn sheets_of_folder(path: &str) -> Result<Vec<Sheet>, String> {
    let failed = |error: std::io::Error| format!("{path}: {error}");
    let mut files: Vec<PathBuf> = Vec::new();
    for entry in fs::read_dir(path).map_err(failed)? {
        let file = entry.map_err(failed)?.path();
        if file.extension().is_some_and(|ending| ending.eq_ignore_ascii_case("csv")) {
            files.push(file);
        }
    }
    files.sort();
    if files.is_empty() {
        return Err(format!("{path}: the folder has no CSV tables; `fitup template` makes empty ones"));
    }
    files.iter().map(|file| sheet_of_file(file)).collect()
}

fn sheet_of_file(file: &Path) -> Result<Sheet, String> {
    let shown = file.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    let name = file.file_stem().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    let bytes = fs::read(file).map_err(|error| format!("{}: {error}", file.display()))?;
    let text =
        String::from_utf8(bytes).map_err(|_| format!("{}: not UTF-8; save the table as CSV UTF-8", file.display()))?;
    sheet_of_csv(&name, &shown, &text)
}

fn bytes_of(path: &str) -> Result<Vec<u8>, String> {
    if path == "-" {
        let mut bytes = Vec::new();
        std::io::stdin().read_to_end(&mut bytes).map_err(|error| format!("standard input: {error}"))?;
        return Ok(bytes);
    }
    fs::read(path).map_err(|error| format!("{path}: {error}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_ending_tells_the_form() {
        assert_eq!(form_of("a/catalogue.json"), Ok(Form::Json));
        assert_eq!(form_of("-"), Ok(Form::Json));
        assert_eq!(form_of("Book.XLSX"), Ok(Form::Workbook));
        assert_eq!(form_of("tables"), Ok(Form::Folder));
        assert_eq!(form_of("tables.v2/"), Ok(Form::Folder));
        assert_eq!(form_of("book.ods"), Ok(Form::Workbook));
        assert!(form_of("book.doc").is_err());
    }
}
