//! Dimension lines.
//!
//! Source: ISO 129-1:2018 for extension lines with a gap at the feature and an overrun past the dimension
//! line, slim filled arrowheads, values above the line and readable from below or from the right
//! (from memory); the sizes below are its usual ones for letters of 3 mm.

use fitup_core::plane::Point;
use fitup_core::quantity::Length;

use crate::fact::Fact;
use crate::ink;
use crate::look::{Letter, Look, Pen, Tone};
use crate::scene::{Anchor, FigureName, Node, Scene, Target, Text};
use crate::sheet::{Mapping, Sheet};

/// Gap between a feature and its extension line, millimetres.
const GAP: f64 = 1.0;
/// Overrun of an extension line past the dimension line, millimetres.
const OVERRUN: f64 = 1.6;
/// Length of an arrowhead, millimetres; it is a quarter as wide.
const ARROW: f64 = 2.6;
/// Length of an upright line, in letters, from which a value too long to be turned stands beside it.
const BESIDE: f64 = 6.0;
/// Width of a figure for its em, for telling whether a value has room. By measurement of usual faces.
const FIGURE: f64 = 0.58;

/// A distance along one axis of the sheet.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Linear {
    /// The two features, on the sheet.
    pub from: Point,
    pub to: Point,
    /// Where the dimension line lies.
    pub line: Along,
    /// The value, ready for people.
    pub words: String,
    /// Size of its letters.
    pub letters: f64,
}

/// Which way a dimension line runs and where it lies.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Along {
    /// Level, at this height of the sheet.
    Level(f64),
    /// Upright, at this place across the sheet.
    Upright(f64),
}

/// States a length in a scene: its dimension between two places of the machine, and the fact.
pub(crate) fn state(
    scene: &mut Scene,
    sheet: &Sheet,
    map: &Mapping,
    name: FigureName,
    value: Length,
    [from, to]: [Point; 2],
    line: Along,
) {
    let words = sheet.labels.length(value);
    let dimension = Linear { from: map.at(from), to: map.at(to), line, words, letters: sheet.letters };
    scene.nodes.push(ink::group(Target::Figure(name), linear(&dimension)));
    scene.facts.push(Fact::Length(name, value));
}

/// Draws a linear dimension.
pub(crate) fn linear(dimension: &Linear) -> Vec<Node> {
    let thin = Look::line(Pen::Dimension);
    let (a, b) = ends(dimension);
    let mut nodes = Vec::new();
    for (feature, end) in [(dimension.from, a), (dimension.to, b)] {
        nodes.extend(extension(feature, end));
    }
    let (a, b) = if is_ordered(dimension.line, a, b) { (a, b) } else { (b, a) };
    let along = (b - a) * (1.0 / a.distance(b).max(1e-9));
    let room = a.distance(b);
    let width = width(&dimension.words, dimension.letters);
    let middle = (a + b) * 0.5;
    let is_inside = room >= width + 2.0 * ARROW + 1.0;
    if is_inside || room >= 2.6 * ARROW {
        nodes.push(ink::line(thin, a, b));
        nodes.push(arrow(a, along));
        nodes.push(arrow(b, -along));
    } else {
        // Too short for arrowheads within: they point in from outside.
        nodes.push(ink::line(thin, a - along * (2.0 * ARROW), b + along * (2.0 * ARROW)));
        nodes.push(arrow(a, -along));
        nodes.push(arrow(b, along));
    }
    if room >= width + 1.0 {
        nodes.push(value(dimension, middle));
        return nodes;
    }
    match dimension.line {
        Along::Level(_) => {
            let at = b + along * (2.2 * ARROW + width / 2.0);
            let start = if room >= 2.6 * ARROW { b } else { b + along * (2.0 * ARROW) };
            nodes.push(ink::line(thin, start, at + along * (width / 2.0)));
            nodes.push(value(dimension, at));
        }
        // Turned, it would run on into whatever stands above: it stays level, beside the line or the line's tail below.
        Along::Upright(_) if room >= BESIDE * dimension.letters => nodes.push(beside(dimension, middle)),
        Along::Upright(_) => {
            let tail = a - along * (2.0 * ARROW + dimension.letters * 0.2);
            nodes.push(ink::line(thin, a, tail));
            nodes.push(beside(dimension, tail));
        }
    }
    nodes
}

/// A level value to the right of a place on an upright line.
fn beside(dimension: &Linear, at: Point) -> Node {
    let at = at + Point::new(0.9, dimension.letters * 0.35);
    ink::text(Letter::Dimension, at, Anchor::Start, dimension.letters, dimension.words.clone())
}

/// An arrowhead whose point is at `tip`, lying in the direction `into`.
pub(crate) fn arrow(tip: Point, into: Point) -> Node {
    let side = into.quarter_turn() * (ARROW * 0.125);
    let base = tip + into * ARROW;
    ink::polygon(Look::fill(Tone::Ink), &[tip, base + side, base - side])
}

/// Room a text takes along its line, millimetres.
pub(crate) fn width(words: &str, letters: f64) -> f64 {
    words.chars().count() as f64 * FIGURE * letters
}

fn ends(dimension: &Linear) -> (Point, Point) {
    match dimension.line {
        Along::Level(y) => (Point::new(dimension.from.x, y), Point::new(dimension.to.x, y)),
        Along::Upright(x) => (Point::new(x, dimension.from.y), Point::new(x, dimension.to.y)),
    }
}

/// Level lines run to the right, upright ones up the sheet: the way their values are read.
fn is_ordered(line: Along, a: Point, b: Point) -> bool {
    match line {
        Along::Level(_) => a.x <= b.x,
        Along::Upright(_) => a.y >= b.y,
    }
}

fn extension(feature: Point, end: Point) -> Option<Node> {
    let length = feature.distance(end);
    if length <= GAP {
        return None;
    }
    let along = (end - feature) * (1.0 / length);
    Some(ink::line(Look::line(Pen::Dimension), feature + along * GAP, end + along * OVERRUN))
}

/// The value above its line, read from below or from the right.
fn value(dimension: &Linear, at: Point) -> Node {
    let above = 0.9;
    let (at, turn) = match dimension.line {
        Along::Level(_) => (at + Point::new(0.0, -above), 0.0),
        Along::Upright(_) => (at + Point::new(-above, 0.0), 90.0),
    };
    Node::Text(Text {
        letter: Letter::Dimension,
        at,
        anchor: Anchor::Middle,
        turn,
        size: dimension.letters,
        words: dimension.words.clone(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scene::PathStep;

    fn level(to: f64) -> Linear {
        Linear {
            from: Point::ORIGIN,
            to: Point::new(to, 0.0),
            line: Along::Level(10.0),
            words: "1234".to_owned(),
            letters: 3.0,
        }
    }

    fn text(nodes: &[Node]) -> &Text {
        nodes.iter().find_map(|node| if let Node::Text(text) = node { Some(text) } else { None }).expect("a value")
    }

    #[test]
    fn a_long_dimension_has_its_value_in_the_middle_above_the_line() {
        let nodes = linear(&level(50.0));
        assert_eq!(text(&nodes).at, Point::new(25.0, 9.1));
        assert_eq!(nodes.len(), 6, "two extension lines, the line, two arrowheads, the value");
    }

    #[test]
    fn a_short_dimension_has_its_value_beside_it_and_the_line_drawn_out_to_it() {
        let nodes = linear(&level(6.0));
        assert!(text(&nodes).at.x > 6.0);
        let nodes = linear(&level(3.0));
        assert!(text(&nodes).at.x > 3.0);
    }

    #[test]
    fn an_upright_value_without_room_stays_level_beside_the_line_or_its_tail() {
        let upright = |to: f64, words: &str| {
            let words = words.to_owned();
            linear(&Linear { line: Along::Upright(5.0), to: Point::new(0.0, to), words, ..level(0.0) })
        };
        let long = upright(-20.0, "4 ft 10 9/16 in");
        assert_eq!((text(&long).turn, text(&long).at), (0.0, Point::new(5.9, -10.0 + 1.05)));
        let low = upright(-4.0, "8 1/16 in");
        assert!(text(&low).at.y > 0.0 && text(&low).turn == 0.0, "under the feature it is measured from");
    }

    #[test]
    fn extension_lines_leave_a_gap_at_the_feature_and_run_over_the_line() {
        let Some(Node::Path(path)) = linear(&level(50.0)).into_iter().next() else { panic!("a path first") };
        assert_eq!(path.steps, [PathStep::Move(Point::new(0.0, 1.0)), PathStep::Line(Point::new(0.0, 11.6))]);
    }

    #[test]
    fn upright_values_are_read_from_the_right() {
        let nodes = linear(&Linear { line: Along::Upright(-8.0), to: Point::new(0.0, 40.0), ..level(0.0) });
        assert!((text(&nodes).turn - 90.0).abs() < 1e-12);
    }
}
