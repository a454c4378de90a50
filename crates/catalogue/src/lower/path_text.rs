//! The text of SVG path data: letters and numbers (SVG 2, 9.3.9).

use fitup_core::quantity::decimal;

/// What of path data is still to be read.
pub struct PathText<'t> {
    rest: &'t str,
}

impl<'t> PathText<'t> {
    /// All of it.
    pub fn new(data: &'t str) -> Self {
        let mut text = Self { rest: data };
        text.skip_blanks();
        text
    }

    /// The next command's letter, `Some(None)` at the end. Where numbers go on without a letter it is
    /// the letter `before` again, a line after a move. `None` where no command can stand.
    #[expect(clippy::option_option, reason = "a fault, the end, or a letter")]
    pub fn command(&mut self, before: Option<u8>) -> Option<Option<u8>> {
        let Some(&first) = self.rest.as_bytes().first() else { return Some(None) };
        if first.is_ascii_alphabetic() {
            self.rest = &self.rest[1..];
            self.skip_blanks();
            return (before.is_some() || first.eq_ignore_ascii_case(&b'M')).then_some(Some(first));
        }
        self.skip_comma();
        match before? {
            b'Z' | b'z' => None,
            b'M' => Some(Some(b'L')),
            b'm' => Some(Some(b'l')),
            letter => Some(Some(letter)),
        }
    }

    /// A number.
    pub fn number(&mut self) -> Option<f64> {
        let bytes = self.rest.as_bytes();
        let (mut end, mut has_point, mut has_exponent) = (0, false, false);
        while let Some(&byte) = bytes.get(end) {
            match byte {
                b'0'..=b'9' => {}
                b'+' | b'-' if end == 0 || matches!(bytes[end - 1], b'e' | b'E') => {}
                b'.' if !has_point && !has_exponent => has_point = true,
                b'e' | b'E' if !has_exponent => has_exponent = true,
                _ => break,
            }
            end += 1;
        }
        let number = decimal(&self.rest[..end])?;
        self.rest = &self.rest[end..];
        self.skip_comma();
        Some(number)
    }

    /// A flag of an arc, which may stand right before the next number.
    pub fn flag(&mut self) -> Option<bool> {
        let flag = match self.rest.as_bytes().first()? {
            b'0' => false,
            b'1' => true,
            _ => return None,
        };
        self.rest = &self.rest[1..];
        self.skip_comma();
        Some(flag)
    }

    fn skip_blanks(&mut self) {
        self.rest = self.rest.trim_start_matches([' ', '\t', '\n', '\r', '\u{c}']);
    }

    fn skip_comma(&mut self) {
        self.skip_blanks();
        if let Some(after) = self.rest.strip_prefix(',') {
            self.rest = after;
            self.skip_blanks();
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The commands of path data with their numbers.
    fn read(data: &str) -> Option<Vec<(char, Vec<f64>)>> {
        let (mut text, mut all, mut before) = (PathText::new(data), Vec::new(), None);
        while let Some(letter) = text.command(before)? {
            let count = match letter.to_ascii_uppercase() {
                b'Z' => 0,
                b'H' | b'V' => 1,
                _ => 2,
            };
            let numbers = (0..count).map(|_| text.number()).collect::<Option<Vec<f64>>>()?;
            all.push((letter as char, numbers));
            before = Some(letter);
        }
        Some(all)
    }

    #[test]
    fn numbers_need_nothing_between_them_that_tells_them_apart() {
        let expected = vec![('M', vec![1.0, -2.0]), ('l', vec![0.5, 0.25]), ('l', vec![-3.0, 1e2]), ('Z', vec![])];
        assert_eq!(read("M1-2l.5.25-3,1e2Z"), Some(expected.clone()));
        assert_eq!(read(" M 1 , -2 l 0.5,0.25\n-3 100 Z "), Some(expected));
    }

    #[test]
    fn numbers_after_a_move_draw_lines() {
        assert_eq!(read("m1 2 3 4"), Some(vec![('m', vec![1.0, 2.0]), ('l', vec![3.0, 4.0])]));
    }

    #[test]
    fn what_is_no_path_data_is_not_read() {
        for data in ["L1 2", "1 2", "M1", "M1 2 3", "M1 2Z3 4", "M1 2 x", "M1 2 #", "M a b", "M1,,2"] {
            let read = read(data);
            assert!(read.as_ref().is_none_or(|read| read.iter().any(|(letter, _)| *letter == 'x')), "{data}: {read:?}");
        }
        assert_eq!(read(""), Some(vec![]));
    }

    #[test]
    fn flags_of_arcs_need_no_space() {
        let mut text = PathText::new("01.5");
        assert_eq!((text.flag(), text.flag(), text.number()), (Some(false), Some(true), Some(0.5)));
        assert_eq!(PathText::new("2").flag(), None);
    }
}
