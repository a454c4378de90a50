//! The marks that set apart what is put into a text. Control characters, which no text holds.

/// Begins a value: its name, and for a choice its variants.
pub const OPEN: char = '\u{1}';
/// Stands before the key and before the text of each variant.
pub const BAR: char = '\u{2}';
/// Ends a value.
pub const CLOSE: char = '\u{3}';
