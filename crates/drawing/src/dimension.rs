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
use crate::room::{Lettered, RISE, width};
use crate::scene::{Anchor, FigureName, Node, Scene, Target, Text};
use crate::sheet::{Mapping, Sheet};

/// Gap between a feature and its extension line, millimetres.
const GAP: f64 = 1.0;
/// Overrun of an extension line past the dimension line, millimetres.
const OVERRUN: f64 = 1.6;
/// Length of an arrowhead, millimetres; it is a quarter as wide.
const ARROW: f64 = 2.6;
/// Where along its line a value may stand: in the middle, else a little to one side.
const PLACES: [f64; 3] = [0.5, 0.32, 0.68];

/// Length of an upright line, in letters, from which a value too long to be turned stands beside it.
const BESIDE: f64 = 6.0;

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
    let nodes = linear(&dimension, &Lettered::of(scene));
    scene.nodes.push(ink::group(Target::Figure(name), nodes));
    scene.facts.push(Fact::Length(name, value));
}

/// Draws a linear dimension, its value where it lies over nothing that is lettered already.
pub(crate) fn linear(dimension: &Linear, lettered: &Lettered) -> Vec<Node> {
    let thin = Look::line(Pen::Dimension);
    let (a, b) = ends(dimension);
    let mut nodes = Vec::new();
    for (feature, end) in [(dimension.from, a), (dimension.to, b)] {
        nodes.extend(extension(feature, end));
    }
    let (a, b) = if is_ordered(dimension.line, a, b) { (a, b) } else { (b, a) };
    let room = a.distance(b);
    let along = (b - a) * (1.0 / room.max(1e-9));
    let outside = outside(room);
    nodes.push(ink::line(thin, a - along * outside, b + along * outside));
    let inward = if outside > 0.0 { -1.0 } else { 1.0 };
    nodes.push(arrow(a, along * inward));
    nodes.push(arrow(b, along * -inward));
    let stands = stands(dimension, a, b);
    let free = stands.iter().find(|stand| lettered.is_free(&stand.value)).or(stands.first());
    if let Some(Stand { value, drawn_out }) = free {
        nodes.extend(drawn_out.map(|(from, to)| ink::line(thin, from, to)));
        nodes.push(Node::Text(value.clone()));
    }
    nodes
}

/// How far a line of this length is drawn over its ends: too short for arrowheads within, they point in from outside.
fn outside(room: f64) -> f64 {
    if room >= 2.6 * ARROW { 0.0 } else { 2.0 * ARROW }
}

/// A way a value may stand at its line.
struct Stand {
    value: Text,
    /// The line drawn out to it.
    drawn_out: Option<(Point, Point)>,
}

/// The ways a value may stand at the line from `a` to `b`, the usual one first; at least one.
fn stands(dimension: &Linear, a: Point, b: Point) -> Vec<Stand> {
    let letters = dimension.letters;
    let width = width(&dimension.words, letters);
    let room = a.distance(b);
    let along = (b - a) * (1.0 / room.max(1e-9));
    let mut stands = Vec::new();
    if room >= width + 1.0 {
        for place in PLACES {
            // Not over an arrowhead or past the end.
            let at = (place * room).max(width / 2.0 + 0.5).min(room - width / 2.0 - 0.5);
            stands.push(Stand { value: on_line(dimension, a + along * at), drawn_out: None });
        }
    }
    match dimension.line {
        Along::Level(_) => {
            for (end, out) in [(b, along), (a, -along)] {
                let at = end + out * (2.2 * ARROW + width / 2.0);
                let drawn_out = Some((end + out * outside(room), at + out * (width / 2.0)));
                stands.push(Stand { value: on_line(dimension, at), drawn_out });
            }
            // On a narrow sheet nothing is left but the room under the line.
            let under = (a + b) * 0.5 + Point::new(0.0, 0.9 + RISE * letters);
            stands.push(Stand { value: text(dimension, under, Anchor::Middle, 0.0), drawn_out: None });
        }
        // Turned, a long value would run on into whatever stands above: it stays level, beside the line or beside its
        // tail.
        Along::Upright(_) => {
            let beside = ((a + b) * 0.5 + Point::new(0.0, letters * 0.35), None);
            let tail = |end: Point, out: Point, foot: f64| {
                let tail = end + out * (2.0 * ARROW + letters * 0.2);
                (tail + Point::new(0.0, foot), Some((end, tail)))
            };
            let (low, high) = (tail(a, -along, 0.0), tail(b, along, RISE * letters));
            // Beside a short line a value would lie over what the line belongs to.
            let places = if room >= BESIDE * letters { [beside, low, high] } else { [low, high, beside] };
            for (place, drawn_out) in places {
                for (anchor, off) in [(Anchor::Start, 0.9), (Anchor::End, -0.9)] {
                    let value = text(dimension, place + Point::new(off, 0.0), anchor, 0.0);
                    stands.push(Stand { value, drawn_out });
                }
            }
        }
    }
    stands
}

/// A value above its line, read from below or from the right.
fn on_line(dimension: &Linear, at: Point) -> Text {
    let above = 0.9;
    match dimension.line {
        Along::Level(_) => text(dimension, at + Point::new(0.0, -above), Anchor::Middle, 0.0),
        Along::Upright(_) => text(dimension, at + Point::new(-above, 0.0), Anchor::Middle, 90.0),
    }
}

fn text(dimension: &Linear, at: Point, anchor: Anchor, turn: f64) -> Text {
    let words = dimension.words.clone();
    Text { letter: Letter::Dimension, at, anchor, turn, size: dimension.letters, words }
}

/// An arrowhead whose point is at `tip`, lying in the direction `into`.
pub(crate) fn arrow(tip: Point, into: Point) -> Node {
    let side = into.quarter_turn() * (ARROW * 0.125);
    let base = tip + into * ARROW;
    ink::polygon(Look::fill(Tone::Ink), &[tip, base + side, base - side])
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scene::PathStep;

    fn level(length: f64) -> Linear {
        let from = Point::new(100.0, 100.0);
        let to = from + Point::new(length, 0.0);
        Linear { from, to, line: Along::Level(110.0), words: "1234".to_owned(), letters: 3.0 }
    }

    fn upright(length: f64, words: &str) -> Linear {
        let from = Point::new(100.0, 100.0);
        let to = from + Point::new(0.0, -length);
        Linear { from, to, line: Along::Upright(105.0), words: words.to_owned(), letters: 3.0 }
    }

    /// On a sheet with nothing else on it.
    fn alone(dimension: &Linear) -> Vec<Node> {
        beside(dimension, &[])
    }

    fn beside(dimension: &Linear, texts: &[Text]) -> Vec<Node> {
        let nodes = texts.iter().cloned().map(Node::Text).collect();
        linear(dimension, &Lettered::of(&Scene { width: 200.0, height: 200.0, nodes, ..Scene::default() }))
    }

    fn text(nodes: &[Node]) -> &Text {
        nodes.iter().find_map(|node| if let Node::Text(text) = node { Some(text) } else { None }).expect("a value")
    }

    #[test]
    fn a_long_dimension_has_its_value_in_the_middle_above_the_line() {
        let nodes = alone(&level(50.0));
        assert_eq!(text(&nodes).at, Point::new(125.0, 109.1));
        assert_eq!(nodes.len(), 6, "two extension lines, the line, two arrowheads, the value");
    }

    #[test]
    fn a_short_dimension_has_its_value_beside_it_and_the_line_drawn_out_to_it() {
        assert!(text(&alone(&level(6.0))).at.x > 106.0);
        assert!(text(&alone(&level(3.0))).at.x > 103.0);
    }

    #[test]
    fn a_value_gives_way_to_what_is_lettered_already() {
        let first = text(&alone(&level(50.0))).clone();
        let second = text(&beside(&level(50.0), std::slice::from_ref(&first))).clone();
        assert!((second.at.x - 116.0).abs() < 1e-9);
        let third = text(&beside(&level(50.0), &[first.clone(), second.clone()])).clone();
        assert!((third.at.x - 134.0).abs() < 1e-9);
        let nodes = beside(&level(50.0), &[first.clone(), second, third]);
        assert!(text(&nodes).at.x > 150.0, "beyond the end, with the line drawn out to it");
        assert_eq!(nodes.len(), 7);
        // Where nothing is free it stands where it usually does: it is not left out.
        let filled = Text { words: "8".repeat(500), size: 200.0, at: Point::new(100.0, 200.0), ..first.clone() };
        assert_eq!(text(&beside(&level(50.0), &[filled])).at, first.at);
    }

    #[test]
    fn an_upright_value_without_room_stays_level_beside_the_line_or_its_tail() {
        let long = alone(&upright(20.0, "4 ft 10 9/16 in"));
        assert_eq!((text(&long).turn, text(&long).at), (0.0, Point::new(105.9, 91.05)));
        let low = alone(&upright(4.0, "8 1/16 in"));
        assert!(text(&low).at.y > 100.0 && text(&low).turn == 0.0, "under the feature it is measured from");
        let narrow = Linear { line: Along::Upright(195.0), ..upright(20.0, "4 ft 10 9/16 in") };
        assert!(text(&alone(&narrow)).at.x < 195.0, "on the other side where the sheet ends");
    }

    #[test]
    fn extension_lines_leave_a_gap_at_the_feature_and_run_over_the_line() {
        let Some(Node::Path(path)) = alone(&level(50.0)).into_iter().next() else { panic!("a path first") };
        assert_eq!(path.steps, [PathStep::Move(Point::new(100.0, 101.0)), PathStep::Line(Point::new(100.0, 111.6))]);
    }

    #[test]
    fn upright_values_are_read_from_the_right() {
        assert!((text(&alone(&upright(40.0, "1234"))).turn - 90.0).abs() < 1e-12);
    }
}
