//! Text of a file, made fit to be shown in a message.

/// Most characters of a file's text that a message shows. No source.
const SHOWN: usize = 60;

/// The text, cut to what can be read at a glance; what would steer a terminal or turn the text
/// round it is replaced.
pub fn shortened(text: &str) -> String {
    let mut chars = text.chars();
    let mut short: String = chars.by_ref().take(SHOWN).map(|c| if is_unsafe(c) { '\u{fffd}' } else { c }).collect();
    if chars.next().is_some() {
        short.push('…');
    }
    short
}

/// Whether a character may not stand in a file's text: control characters other than tab and
/// line feed, and those that turn the direction of the text around them.
///
/// # Source
/// The directional ones: Unicode Standard Annex 9, table 4 (explicit formatting characters).
pub fn is_unsafe(c: char) -> bool {
    (c.is_control() && c != '\n' && c != '\t') || matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn long_text_is_cut_and_steering_characters_are_replaced() {
        assert_eq!(shortened("short"), "short");
        assert_eq!(shortened(&"é".repeat(61)), format!("{}…", "é".repeat(60)));
        assert_eq!(shortened("a\u{1b}[31mb\u{202e}c"), "a\u{fffd}[31mb\u{fffd}c");
    }
}
