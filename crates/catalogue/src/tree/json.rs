//! From JSON text to the tree. The tokens are the library's; the grammar of RFC 8259 is here,
//! with limits on size, number and depth.

use std::borrow::Cow;

use jsonc_parser::tokens::Token;
use jsonc_parser::{Scanner, ScannerOptions};

use super::{Entry, GREATEST_COUNT, GREATEST_DEPTH, GREATEST_SIZE, Kind, Node};
use crate::problem::{Code, Problem};
use crate::shortened::shortened;

/// A fault with the byte it is at.
pub type Fault = Box<(Problem, usize)>;

/// The tree of a text, or the first fault.
pub fn parse(text: &str) -> Result<Node<'_>, Fault> {
    if text.len() > GREATEST_SIZE {
        let problem = Problem::new(Code::TooLarge, "").with("found", text.len().to_string());
        return Err(Box::new((problem.with("greatest", GREATEST_SIZE), 0)));
    }
    let skipped = if text.starts_with('\u{feff}') { '\u{feff}'.len_utf8() } else { 0 };
    let mut reader = Reader::new(&text[skipped..], skipped);
    let first = reader.next()?;
    let node = reader.value(first, 0)?;
    match reader.next()? {
        None => Ok(node),
        token => Err(reader.unexpected(token.as_ref(), "end-of-file")),
    }
}

struct Reader<'t> {
    scanner: Scanner<'t>,
    skipped: usize,
    count: usize,
}

impl<'t> Reader<'t> {
    fn new(text: &'t str, skipped: usize) -> Self {
        // `NaN` and `Infinity` are read, so that the fault can name the field they stand in.
        let options = ScannerOptions {
            allow_single_quoted_strings: false,
            allow_hexadecimal_numbers: false,
            allow_unary_plus_numbers: false,
            allow_bare_decimal_point_numbers: false,
            allow_non_finite_numbers: true,
            allow_extended_string_escapes: false,
        };
        Self { scanner: Scanner::new(text, &options), skipped, count: 0 }
    }

    fn next(&mut self) -> Result<Option<Token<'t>>, Fault> {
        match self.scanner.scan() {
            Ok(token) => Ok(token),
            Err(error) => {
                let at = error.range().start;
                let rest = self.scanner.file_text().get(at..).unwrap_or_default();
                let found = shortened(&rest.chars().take(12).collect::<String>());
                let problem = Problem::new(Code::Syntax, "").with("found", found).with("expected", "value");
                Err(Box::new((problem, at + self.skipped)))
            }
        }
    }

    fn unexpected(&self, token: Option<&Token<'t>>, expected: &'static str) -> Fault {
        let found = token.map_or("end-of-file".into(), |token| shortened(token.as_str()));
        let at = if token.is_some() { self.scanner.token_start() } else { self.scanner.file_text().len() };
        let problem = Problem::new(Code::Syntax, "").with("found", found).with("expected", expected);
        Box::new((problem, at + self.skipped))
    }

    #[expect(clippy::cast_possible_truncation, reason = "the text is shorter than GREATEST_SIZE")]
    fn place(&self) -> u32 {
        (self.scanner.token_start() + self.skipped) as u32
    }

    fn value(&mut self, token: Option<Token<'t>>, depth: usize) -> Result<Node<'t>, Fault> {
        let at = self.place();
        self.count += 1;
        if self.count > GREATEST_COUNT {
            let problem = Problem::new(Code::TooManyValues, "").with("greatest", GREATEST_COUNT.to_string());
            return Err(Box::new((problem, at as usize)));
        }
        let kind = match token {
            Some(Token::Null) => Kind::Null,
            Some(Token::Boolean(flag)) => Kind::Flag(flag),
            Some(Token::Number(number)) => Kind::Number(Cow::Borrowed(number)),
            Some(Token::String(text)) => Kind::Text(text),
            Some(Token::OpenBracket | Token::OpenBrace) if depth == GREATEST_DEPTH => {
                let problem = Problem::new(Code::TooDeep, "").with("greatest", GREATEST_DEPTH.to_string());
                return Err(Box::new((problem, at as usize)));
            }
            Some(Token::OpenBracket) => Kind::List(self.list(depth + 1)?),
            Some(Token::OpenBrace) => Kind::Record(self.record(depth + 1)?),
            token => return Err(self.unexpected(token.as_ref(), "value")),
        };
        Ok(Node { at, kind })
    }

    fn list(&mut self, depth: usize) -> Result<Vec<Node<'t>>, Fault> {
        let mut nodes = Vec::new();
        let mut token = self.next()?;
        if token == Some(Token::CloseBracket) {
            return Ok(nodes);
        }
        loop {
            nodes.push(self.value(token, depth)?);
            match self.next()? {
                Some(Token::Comma) => token = self.next()?,
                Some(Token::CloseBracket) => return Ok(nodes),
                token => return Err(self.unexpected(token.as_ref(), "comma-or-close-bracket")),
            }
        }
    }

    fn record(&mut self, depth: usize) -> Result<Vec<Entry<'t>>, Fault> {
        let mut entries = Vec::new();
        let mut token = self.next()?;
        if token == Some(Token::CloseBrace) {
            return Ok(entries);
        }
        loop {
            let Some(Token::String(name)) = token else { return Err(self.unexpected(token.as_ref(), "field-name")) };
            let at = self.place();
            match self.next()? {
                Some(Token::Colon) => {}
                token => return Err(self.unexpected(token.as_ref(), "colon")),
            }
            let first = self.next()?;
            entries.push(Entry { at, name, value: self.value(first, depth)? });
            match self.next()? {
                Some(Token::Comma) => token = self.next()?,
                Some(Token::CloseBrace) => return Ok(entries),
                token => return Err(self.unexpected(token.as_ref(), "comma-or-close-brace")),
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fault(text: &str) -> (Code, usize, String) {
        let (problem, at) = *parse(text).unwrap_err();
        (problem.code, at, problem.arg("expected").unwrap_or_default().to_owned())
    }

    #[test]
    fn values_know_where_they_start() {
        let text = "\u{feff}{ \"a\": [1, \"b\\n\"], \"c\": null }";
        let tree = parse(text).unwrap();
        let list = tree.field("a").unwrap();
        assert_eq!(text.as_bytes()[list.at as usize], b'[');
        let Kind::List(nodes) = &list.kind else { panic!("a list") };
        assert_eq!(nodes[1].text(), Some("b\n"));
        assert_eq!(tree.field("c").unwrap().kind, Kind::Null);
    }

    #[test]
    fn only_json_is_read() {
        assert_eq!(fault("").2, "value");
        assert_eq!(fault("{\"a\":1,}").2, "field-name");
        assert_eq!(fault("[1,]"), (Code::Syntax, 3, "value".into()));
        assert_eq!(fault("[1 2]"), (Code::Syntax, 3, "comma-or-close-bracket".into()));
        assert_eq!(fault("{\"a\" 1}").2, "colon");
        assert_eq!(fault("{\"a\":1").2, "comma-or-close-brace");
        assert_eq!(fault("{a:1}").2, "field-name");
        assert_eq!(fault("1 1").2, "end-of-file");
        for text in ["// x\n1", "'a'", "0x10", "+1", ".5", "5.", "01", "\"\\x41\"", "\"open", "tru", "[", "\"\\ud800\""]
        {
            assert_eq!(fault(text).0, Code::Syntax, "{text}");
        }
    }

    #[test]
    fn depth_and_count_are_limited() {
        assert_eq!(fault(&"[".repeat(100_000)).0, Code::TooDeep);
        assert_eq!(fault(&"{\"a\":".repeat(100_000)).0, Code::TooDeep);
        assert_eq!(fault(&format!("[{}0]", "0,".repeat(GREATEST_COUNT))).0, Code::TooManyValues);
        assert_eq!(fault(&" ".repeat(GREATEST_SIZE + 1)).0, Code::TooLarge);
    }
}
