//! From paths to places, and from bytes to lines and columns.

use fitup_core::order;

use super::{Kind, Node};
use crate::problem::{Position, Problem};
use crate::shortened::shortened;

/// The value that a path leads to, or the deepest one on the way that is there. A path is written
/// `machines[3].ports[1].kind`; the place of a field is that of its value.
pub fn find<'t>(tree: Node<'t>, path: &str) -> Node<'t> {
    let mut node = tree;
    for part in path.split(['.', '[', ']']).filter(|part| !part.is_empty()) {
        let next = match node.kind {
            Kind::List(nodes) => part.parse::<usize>().ok().and_then(|index| nodes.get(index).copied()),
            _ => node.field(part),
        };
        match next {
            Some(next) => node = next,
            None => break,
        }
    }
    node
}

/// The id of the row that a path is in: `id` of an item, `number` of a part, `item` of a line of
/// a parts list; empty if there is none.
pub fn row_id(tree: Node<'_>, path: &str) -> String {
    let Some(end) = path.find(']') else { return String::new() };
    let row = find(tree, &path[..=end]);
    let id = ["id", "number", "item"].iter().find_map(|name| row.field(name)).and_then(Node::text);
    id.map(shortened).unwrap_or_default()
}

/// Gives every problem its line and column; the problems are in the order of the text.
pub fn locate(text: &str, problems: &mut [Problem]) {
    if problems.is_empty() {
        return;
    }
    let located = problems.iter_mut().filter_map(|problem| problem.at.map(|at| (at as usize, &mut problem.position)));
    let lines = Lines::of(text);
    let (bytes, positions): (Vec<usize>, Vec<_>) = located.unzip();
    for (position, found) in positions.into_iter().zip(lines.positions(&bytes)) {
        *position = Some(found);
    }
    // The second places are in no order.
    let seconds =
        problems.iter_mut().filter_map(|problem| problem.other_at.map(|at| (at as usize, &mut problem.other)));
    let mut seconds: Vec<(usize, &mut Option<Position>)> = seconds.collect();
    order::sort_by_key(&mut seconds, |(at, _)| *at);
    let (bytes, positions): (Vec<usize>, Vec<_>) = seconds.into_iter().unzip();
    for (position, found) in positions.into_iter().zip(lines.positions(&bytes)) {
        *position = Some(found);
    }
}

/// Lines and columns of a text.
pub struct Lines<'t> {
    text: &'t str,
    starts: Vec<usize>,
}

impl<'t> Lines<'t> {
    /// The lines of a text.
    pub fn of(text: &'t str) -> Self {
        let after_breaks = text.bytes().enumerate().filter(|&(_, byte)| byte == b'\n').map(|(at, _)| at + 1);
        Self { text, starts: std::iter::once(0).chain(after_breaks).collect() }
    }

    /// The positions of bytes, given in rising order. Each stretch of text is walked once, however
    /// many bytes there are on one long line.
    pub fn positions(&self, bytes: &[usize]) -> Vec<Position> {
        let (mut line, mut from, mut column) = (0, 0, 0);
        let mut positions = Vec::with_capacity(bytes.len());
        for &byte in bytes {
            let byte = byte.min(self.text.len());
            let at = self.starts.partition_point(|&start| start <= byte).saturating_sub(1);
            if at != line {
                (line, from, column) = (at, self.starts[at], 0);
            }
            column += self.text.get(from..byte).map_or(0, |walked| walked.chars().count());
            from = byte.max(from);
            let count = |n: usize| u32::try_from(n + 1).unwrap_or(u32::MAX);
            positions.push(Position::Text { line: count(line), column: count(column) });
        }
        positions
    }
}

#[cfg(test)]
mod tests {
    use super::super::parse;
    use super::*;

    #[test]
    fn paths_lead_to_values_and_stop_where_nothing_follows() {
        let text = r#"{"machines": [{"id": "a"}, {"id": "b", "ports": [{"name": "rack"}]}]}"#;
        let memory = bumpalo::Bump::new();
        let tree = parse(text, &memory).unwrap();
        assert_eq!(find(tree, "machines[1].ports[0].name").text(), Some("rack"));
        let port = find(tree, "machines[1].ports[0].kind.holes[3]");
        assert_eq!(&text[port.at as usize..][..7], "{\"name\"");
        assert_eq!(row_id(tree, "machines[1].ports[0].name"), "b");
        assert_eq!(row_id(tree, "units.length"), "");
        assert_eq!(find(tree, "machines[99999999999999999999].x").word(), "list");
    }

    #[test]
    fn columns_count_characters_and_lines_count_from_one() {
        let lines = Lines::of("ä{\n  é x\nlast");
        let found = lines.positions(&[0, 2, 4, 8, 12, 99]);
        let expected = [(1, 1), (1, 2), (2, 1), (2, 4), (3, 2), (3, 5)];
        assert_eq!(found, expected.map(|(line, column)| Position::Text { line, column }));
    }
}
