//! Values as JSON text.

use std::io;

use fitup_core::quantity::shortest;
use serde::Serialize;
use serde_json::Serializer;
use serde_json::ser::Formatter;

/// A value as JSON text without spaces, for numbers of a file: below 10¹⁸ and to 19 places.
///
/// # Examples
/// ```
/// assert_eq!(fitup_catalogue::json(&(1.0, 0.5, "a")), r#"[1,0.5,"a"]"#);
/// ```
pub fn json(value: &impl Serialize) -> String {
    let mut bytes = Vec::new();
    let written = value.serialize(&mut Serializer::with_formatter(&mut bytes, Numbers));
    assert!(written.is_ok(), "keys are text and memory does not fail");
    String::from_utf8(bytes).unwrap_or_else(|_| unreachable!("JSON of text is text"))
}

/// Writes numbers as the house does: the JSON library's own means are as large in the browser as
/// everything else it does here.
struct Numbers;

impl Formatter for Numbers {
    fn write_f64<W: ?Sized + io::Write>(&mut self, writer: &mut W, value: f64) -> io::Result<()> {
        writer.write_all(shortest(value).as_bytes())
    }
}

#[cfg(test)]
mod tests {
    use super::json;

    #[test]
    fn numbers_come_back_as_they_were() {
        for number in [0.0f64, -0.0, 0.1 + 0.2, 1e-7, 1e9, 123_456_789.125, -25.1] {
            let read: f64 = serde_json::from_str(&json(&number)).unwrap();
            assert!(read.to_bits() == number.to_bits(), "{number}");
        }
        assert_eq!(json(&f64::NAN), "null");
    }
}
