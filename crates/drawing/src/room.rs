//! Room that texts take on a sheet, so that none is written over another.

use crate::scene::{Anchor, Node, Scene, Text};

/// Width of a letter for its em. By measurement of usual faces, on the safe side for figures and their units.
const LETTER: f64 = 0.58;
/// Height of figures and capitals over the line they stand on, for their em. By measurement of usual faces.
pub(crate) const RISE: f64 = 0.72;
/// Kept free round a text, millimetres.
const FREE: f64 = 0.3;

/// The rectangle that a text takes, millimetres of the sheet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Room {
    /// The left edge.
    pub left: f64,
    /// The right edge.
    pub right: f64,
    /// The upper edge.
    pub top: f64,
    /// The lower edge.
    pub bottom: f64,
}

impl Room {
    /// The room of a text that is level, or upright and read from the right.
    pub fn of(text: &Text) -> Self {
        let width = width(&text.words, text.size);
        let before = match text.anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => width / 2.0,
            Anchor::End => width,
        };
        let (after, rise, at) = (width - before, text.size * RISE, text.at);
        if text.turn == 0.0 {
            Self { left: at.x - before, right: at.x + after, top: at.y - rise, bottom: at.y }
        } else {
            Self { left: at.x - rise, right: at.x, top: at.y - after, bottom: at.y + before }
        }
    }

    /// Whether two texts touch or come nearer than they may.
    pub fn meets(&self, other: &Self) -> bool {
        self.left < other.right + FREE
            && other.left < self.right + FREE
            && self.top < other.bottom + FREE
            && other.top < self.bottom + FREE
    }
}

/// What is lettered on a sheet so far.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Lettered {
    taken: Vec<Room>,
    size: (f64, f64),
}

impl Lettered {
    /// What a scene has so far.
    pub fn of(scene: &Scene) -> Self {
        let flat = scene.flat();
        let texts = flat.iter().filter_map(|(_, node)| if let Node::Text(text) = node { Some(text) } else { None });
        Self { taken: texts.map(Room::of).collect(), size: (scene.width, scene.height) }
    }

    /// Whether a text would lie on the sheet and over no other.
    pub fn is_free(&self, text: &Text) -> bool {
        let room = Room::of(text);
        let is_on = room.left >= 0.0 && room.right <= self.size.0 && room.top >= 0.0 && room.bottom <= self.size.1;
        is_on && !self.taken.iter().any(|taken| taken.meets(&room))
    }
}

/// Room a text takes along its line, millimetres.
pub(crate) fn width(words: &str, letters: f64) -> f64 {
    words.chars().count() as f64 * LETTER * letters
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::look::Letter;
    use fitup_core::plane::Point;

    fn text(at: (f64, f64), anchor: Anchor, turn: f64) -> Text {
        let at = Point::new(at.0, at.1);
        Text { letter: Letter::Dimension, at, anchor, turn, size: 10.0, words: "1234".to_owned() }
    }

    #[test]
    fn a_text_takes_its_letters_width_from_its_anchor_and_its_height_over_its_line() {
        let near = |room: Room, wanted: [f64; 4]| {
            let got = [room.left, room.right, room.top, room.bottom];
            assert!(got.iter().zip(wanted).all(|(a, b)| (a - b).abs() < 1e-9), "{got:?}");
        };
        // Four letters of 10 mm are 23.2 mm wide and 7.2 mm high.
        near(Room::of(&text((0.0, 0.0), Anchor::Start, 0.0)), [0.0, 23.2, -7.2, 0.0]);
        near(Room::of(&text((0.0, 0.0), Anchor::Middle, 0.0)), [-11.6, 11.6, -7.2, 0.0]);
        near(Room::of(&text((0.0, 0.0), Anchor::End, 0.0)), [-23.2, 0.0, -7.2, 0.0]);
        // Upright it runs up the sheet, and what is over its line is to the left.
        near(Room::of(&text((0.0, 0.0), Anchor::Start, 90.0)), [-7.2, 0.0, -23.2, 0.0]);
    }

    #[test]
    fn a_text_is_free_where_it_lies_on_the_sheet_and_over_no_other() {
        let first = text((50.0, 50.0), Anchor::Middle, 0.0);
        let scene = Scene { width: 100.0, height: 60.0, nodes: vec![Node::Text(first)], ..Scene::default() };
        let lettered = Lettered::of(&scene);
        assert!(!lettered.is_free(&text((60.0, 52.0), Anchor::Middle, 0.0)), "over the other");
        assert!(!lettered.is_free(&text((50.0, 57.4), Anchor::Middle, 0.0)), "nearer than it may be");
        assert!(lettered.is_free(&text((50.0, 57.6), Anchor::Middle, 0.0)));
        assert!(!lettered.is_free(&text((95.0, 20.0), Anchor::Middle, 0.0)), "off the sheet");
    }
}
