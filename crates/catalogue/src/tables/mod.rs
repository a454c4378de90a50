//! The authoring form: the catalogue as tables, in a folder of CSV files or a workbook.
//!
//! One row holds one machine, one port, one hole and so on; a row of a table below another names
//! the row above it in its first columns. Which columns there are and what they mean comes from
//! the wire types, so the tables and the published file are one format in two forms and turn
//! into each other without loss.
//!
//! # Form
//! Row 1 has the headings. What begins with `#` and a blank is the keeper's own and is passed over:
//! a row by its first cell, a column by its heading, a sheet by its name; a column `remarks` too.
//! Everything else is read or told. A heading may have its unit behind it, `track [mm]`. A field of a record inside is headed `rear.track`; a number that states its half range has
//! `wheelbase`, `wheelbase.plus_minus` and `wheelbase.source`; a choice has its word in one
//! column, `kind`, and what goes with the word in others, `kind.hook_rack.spread`. Lists stand in
//! one cell, their members separated by semicolons. Text that begins with a sign that spreadsheets take
//! for a formula is written with an apostrophe before it.

mod cell;
mod csv_files;
mod draft;
mod dressed;
mod follows;
mod from_file;
mod from_workbook;
mod headings;
mod kept;
mod layout;
mod sheet;
mod template;
mod to_file;
mod unseen;
mod workbook;

pub use cell::Cell;
pub use csv_files::{csv, sheet_of_csv};
pub use from_file::sheets;
pub use from_workbook::sheets_of_workbook;
pub use kept::kept;
pub use sheet::{Merged, Sheet};
pub use template::{TemplateUnits, template};
pub use to_file::read_sheets;
pub use workbook::workbook;
