//! Values as JSON text.

use std::io;

use serde::Serialize;
use serde_json::Serializer;
use serde_json::ser::Formatter;

/// A value as JSON text without spaces; numbers as Rust shows them, the same natively and in the
/// browser.
///
/// # Examples
/// ```
/// assert_eq!(fitup_catalogue::json(&(1.0, 0.5, "a")), r#"[1,0.5,"a"]"#);
/// ```
pub fn json(value: &impl Serialize) -> String {
    let mut bytes = Vec::new();
    let written = value.serialize(&mut Serializer::with_formatter(&mut bytes, Numbers));
    written.expect("keys are text and memory does not fail");
    String::from_utf8(bytes).expect("JSON of text is text")
}

/// Writes numbers by the means that are there anyway: those of the JSON library are as large in
/// the browser as everything else it does here.
struct Numbers;

impl Formatter for Numbers {
    fn write_f64<W: ?Sized + io::Write>(&mut self, writer: &mut W, value: f64) -> io::Result<()> {
        write!(writer, "{value}")
    }
}

#[cfg(test)]
mod tests {
    use super::json;

    #[test]
    fn numbers_come_back_as_they_were() {
        for number in [0.0, -0.0, 0.1 + 0.2, 1e-7, 1.5e300, f64::MIN_POSITIVE, 123_456_789.125, -25.1] {
            let read: f64 = serde_json::from_str(&json(&number)).unwrap();
            assert!((read - number).abs() <= number.abs() * 1e-15, "{number}");
        }
        assert_eq!(json(&f64::NAN), "null");
    }
}
