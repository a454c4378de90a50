//! A port drawn by itself, large, with the two places between which something is taken.

use fitup_core::plane::Point;

use crate::dimension::arrow;
use crate::ink;
use crate::look::{Letter, Look, Pen, Tone};
use crate::scene::{Anchor, Node};
use crate::sheet::{Extent, Mapping, Margins, Sheet};

/// A piece of the drawing, metres, y up.
pub(super) enum Piece {
    /// A closed outline.
    Outline(Look, Vec<Point>),
    /// A circle.
    Round(Look, Point, f64),
    /// A straight line.
    Line(Look, Point, Point),
    /// A number beside a hole.
    Number(Point, String),
}

/// What caliper or tape go between.
#[derive(Debug, Clone, Copy)]
pub(super) struct Taken {
    /// One place.
    pub from: Point,
    /// The other.
    pub to: Point,
    /// How far beside it the line is drawn, in letters, to the left of the way from one to the other.
    pub beside: f64,
}

/// A port drawn by itself.
#[derive(Default)]
pub(super) struct Detail {
    /// Farthest first.
    pub pieces: Vec<Piece>,
    /// What is taken, if anything is.
    pub taken: Option<Taken>,
}

/// Material cut or seen.
pub(super) const SOLID: Look = Look::new(Pen::Outline, Tone::Carrier);
/// A hole.
pub(super) const HOLE: Look = Look::new(Pen::Outline, Tone::Paper);
/// A pin or bar seen from its end.
pub(super) const ROUND: Look = Look::new(Pen::Outline, Tone::Carried);

impl Detail {
    /// A rectangle between two corners.
    pub fn block(&mut self, look: Look, a: Point, b: Point) {
        self.pieces.push(Piece::Outline(look, vec![a, Point::new(b.x, a.y), b, Point::new(a.x, b.y)]));
    }

    /// A circle.
    pub fn round(&mut self, look: Look, at: Point, diameter: f64) {
        self.pieces.push(Piece::Round(look, at, diameter / 2.0));
    }

    /// A diameter is taken, across at the foot of the circle.
    pub fn across(&mut self, at: Point, diameter: f64) {
        let reach = Point::new(diameter / 2.0, 0.0);
        self.taken = Some(Taken { from: at - reach, to: at + reach, beside: 0.0 });
    }

    /// A distance is taken; its line lies so many letters to the left of the way.
    pub fn between(&mut self, from: Point, to: Point, beside: f64) {
        self.taken = Some(Taken { from, to, beside });
    }

    /// The drawing on a sheet of its own.
    pub fn nodes(&self, sheet: &Sheet) -> Vec<Node> {
        let l = sheet.letters;
        let mut whole = Extent::NONE;
        for piece in &self.pieces {
            match piece {
                Piece::Outline(_, points) => points.iter().for_each(|&p| whole.take(p)),
                Piece::Round(_, at, radius) => {
                    let reach = Point::new(*radius, *radius);
                    whole.take(*at - reach);
                    whole.take(*at + reach);
                }
                Piece::Line(_, a, b) => [a, b].into_iter().for_each(|&p| whole.take(p)),
                Piece::Number(..) => {}
            }
        }
        let edge = 3.2 * l;
        let map = Mapping::fit(whole, Margins { left: edge, right: edge, top: edge, bottom: edge }, sheet, false);
        let down = ((sheet.sound_height() - map.size.1) / 2.0).max(0.0);
        let at = |p: Point| map.at(p) + Point::new(0.0, down);
        let mut nodes: Vec<Node> = self
            .pieces
            .iter()
            .map(|piece| match piece {
                Piece::Outline(look, points) => ink::polygon(*look, &points.iter().map(|&p| at(p)).collect::<Vec<_>>()),
                Piece::Round(look, centre, radius) => ink::circle(*look, at(*centre), map.length(*radius)),
                Piece::Line(look, a, b) => ink::line(*look, at(*a), at(*b)),
                Piece::Number(beside, words) => ink::text(
                    Letter::Quiet,
                    at(*beside) + Point::new(0.0, l * 0.36),
                    Anchor::Middle,
                    l * 0.9,
                    words.clone(),
                ),
            })
            .collect();
        if let Some(taken) = self.taken {
            nodes.extend(rule(at(taken.from), at(taken.to), taken.beside * l, l));
        }
        nodes
    }
}

/// The line between two places of the sheet, `beside` them to the left, with arrowheads and the question that is to be answered.
pub(super) fn rule(from: Point, to: Point, beside: f64, letters: f64) -> Vec<Node> {
    let pen = Look::line(Pen::Accent);
    let length = from.distance(to).max(1e-6);
    let along = (to - from) * (1.0 / length);
    // On the sheet y runs down, so the left of a way is the other quarter turn.
    let left = along.quarter_turn() * -1.0;
    let (a, b) = (from + left * beside, to + left * beside);
    let mut nodes = Vec::new();
    if beside.abs() > 0.5 {
        let over = left * beside.signum() * 1.4;
        nodes.push(ink::line(pen, from, a + over));
        nodes.push(ink::line(pen, to, b + over));
    }
    // Too short for arrowheads within, they point in from outside.
    let (out, inward) = if length >= 7.0 { (0.0, 1.0) } else { (5.2, -1.0) };
    nodes.push(ink::line(pen, a - along * out, b + along * out));
    nodes.push(arrow(a, along * inward));
    nodes.push(arrow(b, along * -inward));
    let middle = if out > 0.0 { b + along * (out + letters * 0.8) } else { a.lerp(b, 0.5) + left * (letters * 0.95) };
    let foot = middle + Point::new(0.0, letters * 0.5);
    nodes.push(ink::text(Letter::Label, foot, Anchor::Middle, letters * 1.35, "?"));
    nodes
}

#[cfg(test)]
mod tests {
    use super::*;

    fn places(nodes: &[Node]) -> Vec<Point> {
        nodes.iter().filter_map(|node| if let Node::Text(text) = node { Some(text.at) } else { None }).collect()
    }

    #[test]
    fn the_question_stands_above_a_level_line_and_beyond_a_short_one() {
        let [from, to] = [Point::new(10.0, 20.0), Point::new(40.0, 20.0)];
        let above = places(&rule(from, to, 0.0, 3.0));
        assert!((above[0].x - 25.0).abs() < 1e-9 && above[0].y < 20.0, "{above:?}");
        let short = places(&rule(from, Point::new(13.0, 20.0), 0.0, 3.0));
        assert!(short[0].x > 13.0, "{short:?}");
    }

    #[test]
    fn a_line_beside_its_places_is_drawn_out_to_them() {
        let [from, to] = [Point::new(10.0, 20.0), Point::new(40.0, 20.0)];
        assert_eq!(rule(from, to, 6.0, 3.0).len(), rule(from, to, 0.0, 3.0).len() + 2);
    }
}
