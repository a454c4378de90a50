//! Words of a list, and words with something beside them.

use super::wrong_type;
use crate::at::At;
use crate::problem::Code;
use crate::report::Report;
use crate::shortened::shortened;
use crate::tree::{Kind, Node};

/// Which of `words` a value is.
pub fn word(node: Node<'_>, words: &[&str], at: At<'_>, report: &mut Report) -> Option<usize> {
    let Kind::Text(text) = node.kind else {
        wrong_type(node, "text", at, report);
        return None;
    };
    find(text, node.at, words, at, report)
}

/// Which of `words` a value is, with what stands beside it: `"fixed"` alone or `{"fixed": …}`.
/// `alone` says of each word whether it stands alone.
pub fn chosen<'t>(
    node: Node<'t>,
    words: &[&str],
    alone: &[bool],
    at: At<'_>,
    report: &mut Report,
) -> Option<(usize, Node<'t>)> {
    let (text, start, content) = match node.kind {
        Kind::Text(text) => (text, node.at, None),
        Kind::Record([one]) => (one.name, one.at, Some(one.value)),
        Kind::Record(several) => {
            report.fault(Code::NotExactlyOne, at, node.at, || {
                let found: Vec<String> = several.iter().take(8).map(|entry| shortened(entry.name)).collect();
                vec![("found", found.join(", ")), ("expected", words.join(", "))]
            });
            return None;
        }
        _ => {
            wrong_type(node, "word-or-record", at, report);
            return None;
        }
    };
    let index = find(text, start, words, at, report)?;
    if !alone[index] && content.is_none() {
        // The word without what goes with it: `new` without how many.
        report.fault(Code::MissingField, at, start, || vec![("field", format!("{}.{}", at.last(), words[index]))]);
        report.invented(at);
        return None;
    }
    if alone[index] && content.is_some() {
        wrong_type(node, "text", at, report);
        return None;
    }
    Some((index, content.unwrap_or(node)))
}

/// Words of older files, and what is written now.
const RENAMED: [(&str, &str); 1] = [("front_seat_forward", "{\"driver_seat\": \"folded\"}")];

fn find(text: &str, start: u32, words: &[&str], at: At<'_>, report: &mut Report) -> Option<usize> {
    let index = words.iter().position(|word| *word == text);
    if index.is_none() {
        let renamed = RENAMED.iter().find(|(old, _)| *old == text).map(|(_, new)| (*new).to_owned());
        let suggestion = renamed.or_else(|| report.nearest(text, words.iter().copied()));
        report.fault(Code::UnknownWord, at, start, || {
            let mut args = vec![("found", shortened(text)), ("expected", words.join(", "))];
            args.extend(suggestion.map(|near| ("suggestion", near)));
            args
        });
    }
    index
}
