//! From JSON text to the tree. The tokens are the library's; the grammar of RFC 8259 is here,
//! with limits on size, number and depth.

use std::borrow::Cow;

use bumpalo::Bump;
use jsonc_parser::tokens::Token;
use jsonc_parser::{Scanner, ScannerOptions};

use super::{Entry, GREATEST_COUNT, GREATEST_DEPTH, GREATEST_SIZE, Kind, Node};
use crate::problem::{Code, Problem, SORTS};
use crate::shortened::shortened;

/// Why a text is no tree, with its place.
type Fault = Box<Problem>;

/// The tree of a text, laid out in `memory`.
///
/// # Errors
/// The first thing that keeps it from being one.
pub fn parse<'t>(text: &'t str, memory: &'t Bump) -> Result<Node<'t>, Fault> {
    if text.len() > GREATEST_SIZE {
        let problem = Problem::new(Code::TooLarge, "").with("found", text.len().to_string());
        return Err(fault(problem.with("greatest", GREATEST_SIZE), 0));
    }
    let skipped = if text.starts_with('\u{feff}') { '\u{feff}'.len_utf8() } else { 0 };
    let mut reader = Reader::new(&text[skipped..], skipped, memory);
    let first = reader.next()?;
    let node = reader.value(first, 0)?;
    match reader.next()? {
        None => Ok(node),
        token => Err(reader.unexpected(token.as_ref(), "end-of-file")),
    }
}

fn fault(problem: Problem, byte: usize) -> Fault {
    Box::new(Problem { at: u32::try_from(byte).ok(), ..problem })
}

struct Reader<'t> {
    scanner: Scanner<'t>,
    skipped: usize,
    count: usize,
    memory: &'t Bump,
    /// Values of lists that are not at their end yet, the innermost last.
    nodes: Vec<Node<'t>>,
    /// Fields of records that are not at their end yet.
    entries: Vec<Entry<'t>>,
}

impl<'t> Reader<'t> {
    fn new(text: &'t str, skipped: usize, memory: &'t Bump) -> Self {
        // `NaN` and `Infinity` are read, so that the fault can name the field they stand in.
        let options = ScannerOptions {
            allow_single_quoted_strings: false,
            allow_hexadecimal_numbers: false,
            allow_unary_plus_numbers: false,
            allow_bare_decimal_point_numbers: false,
            allow_non_finite_numbers: true,
            allow_extended_string_escapes: false,
        };
        let scanner = Scanner::new(text, &options);
        Self { scanner, skipped, count: 0, memory, nodes: Vec::new(), entries: Vec::new() }
    }

    fn next(&mut self) -> Result<Option<Token<'t>>, Fault> {
        match self.scanner.scan() {
            Ok(token) => Ok(token),
            Err(error) => {
                let at = error.range().start;
                let rest = self.scanner.file_text().get(at..).unwrap_or_default();
                let found = shortened(&rest.chars().take(12).collect::<String>());
                let problem = Problem::new(Code::Syntax, "").with("found", found).with("expected", "value");
                Err(fault(problem, at + self.skipped))
            }
        }
    }

    fn unexpected(&self, token: Option<&Token<'t>>, expected: &'static str) -> Fault {
        debug_assert!(SORTS.contains(&expected), "{expected} has no words");
        let found = token.map_or("end-of-file".into(), |token| shortened(token.as_str()));
        let at = if token.is_some() { self.scanner.token_start() } else { self.scanner.file_text().len() };
        let problem = Problem::new(Code::Syntax, "").with("found", found).with("expected", expected);
        fault(problem, at + self.skipped)
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
            return Err(fault(problem, at as usize));
        }
        let kind = match token {
            Some(Token::Null) => Kind::Null,
            Some(Token::Boolean(flag)) => Kind::Flag(flag),
            Some(Token::Number(number)) => Kind::Number(number),
            Some(Token::String(text)) => Kind::Text(self.text(text)),
            Some(Token::OpenBracket | Token::OpenBrace) if depth == GREATEST_DEPTH => {
                let problem = Problem::new(Code::TooDeep, "").with("greatest", GREATEST_DEPTH.to_string());
                return Err(fault(problem, at as usize));
            }
            Some(Token::OpenBracket) => Kind::List(self.list(depth + 1)?),
            Some(Token::OpenBrace) => Kind::Record(self.record(depth + 1)?),
            token => return Err(self.unexpected(token.as_ref(), "value")),
        };
        Ok(Node { at, kind })
    }

    fn text(&self, text: Cow<'t, str>) -> &'t str {
        match text {
            Cow::Borrowed(text) => text,
            // Text with escapes is not as it stands in the file.
            Cow::Owned(text) => self.memory.alloc_str(&text),
        }
    }

    fn list(&mut self, depth: usize) -> Result<&'t [Node<'t>], Fault> {
        let first = self.nodes.len();
        let mut token = self.next()?;
        if token == Some(Token::CloseBracket) {
            return Ok(&[]);
        }
        loop {
            let node = self.value(token, depth)?;
            self.nodes.push(node);
            match self.next()? {
                Some(Token::Comma) => token = self.next()?,
                Some(Token::CloseBracket) => break,
                token => return Err(self.unexpected(token.as_ref(), "comma-or-close-bracket")),
            }
        }
        Ok(self.memory.alloc_slice_fill_iter(self.nodes.drain(first..)))
    }

    fn record(&mut self, depth: usize) -> Result<&'t [Entry<'t>], Fault> {
        let first = self.entries.len();
        let mut token = self.next()?;
        if token == Some(Token::CloseBrace) {
            return Ok(&[]);
        }
        loop {
            let Some(Token::String(name)) = token else { return Err(self.unexpected(token.as_ref(), "field-name")) };
            let (at, name) = (self.place(), self.text(name));
            match self.next()? {
                Some(Token::Colon) => {}
                token => return Err(self.unexpected(token.as_ref(), "colon")),
            }
            let start = self.next()?;
            let value = self.value(start, depth)?;
            self.entries.push(Entry { at, name, value });
            match self.next()? {
                Some(Token::Comma) => token = self.next()?,
                Some(Token::CloseBrace) => break,
                token => return Err(self.unexpected(token.as_ref(), "comma-or-close-brace")),
            }
        }
        Ok(self.memory.alloc_slice_fill_iter(self.entries.drain(first..)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fault(text: &str) -> (Code, usize, String) {
        let problem = parse(text, &Bump::new()).unwrap_err();
        (problem.code, problem.at.unwrap() as usize, problem.arg("expected").unwrap_or_default().to_owned())
    }

    #[test]
    fn values_know_where_they_start() {
        let text = "\u{feff}{ \"a\": [1, \"b\\n\"], \"c\": null }";
        let memory = Bump::new();
        let tree = parse(text, &memory).unwrap();
        let list = tree.field("a").unwrap();
        assert_eq!(text.as_bytes()[list.at as usize], b'[');
        let Kind::List(nodes) = list.kind else { panic!("a list") };
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
