//! Distances of holes taken from a photograph with a sheet of known size on the plate. The picture stays in the page: what is sent
//! are the places that were marked on it.

use serde::{Deserialize, Serialize};

use crate::{Place, Units};

/// The sheet that lies on the plate.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum PaperSize {
    /// A4 paper.
    #[default]
    A4,
    /// Letter paper.
    Letter,
    /// Any rectangle, its sides as they were typed, the one first that is marked first.
    Own {
        /// The two sides.
        sides: [String; 2],
        /// The unit that a number without one is in.
        unit: Units,
    },
}

/// What was marked on a photograph.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Photo {
    /// The port that is seen.
    pub at: Place,
    /// What lies on it.
    pub paper: PaperSize,
    /// Width and height of the picture in pixels.
    pub size: (f64, f64),
    /// Four corners of the sheet, one after the other round it, a short side first; then the holes in the order of their numbers.
    pub marks: Vec<Mark>,
}

/// A place that was marked on a picture.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
pub struct Mark {
    /// Pixels of the picture, to the right.
    pub x: f64,
    /// Pixels of the picture, down.
    pub y: f64,
    /// Pixels of the picture to a CSS pixel where it was marked: how far a hand slips.
    pub scale: f64,
}

/// What can be said of the marks so far.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct PhotoShown {
    /// How many marks there are to be: the corners and the holes.
    pub wanted: u32,
    /// How each mark is called: "sheet corner 1", "hole 2".
    pub names: Vec<String>,
    /// What is to be marked next, or that all is.
    pub next: String,
    /// What is wrong with the marks, or with the sides of the sheet.
    pub wrong: Option<String>,
    /// The distances, a line each, once all is marked and nothing is wrong.
    pub lines: Vec<String>,
}

impl PhotoShown {
    /// Whether there is something to take.
    pub fn can_be_taken(&self) -> bool {
        !self.lines.is_empty() && self.wrong.is_none()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_distances_without_a_fault_can_be_taken() {
        let shown = PhotoShown { lines: vec!["1 to 2: 60 mm".into()], ..PhotoShown::default() };
        assert!(shown.can_be_taken() && !PhotoShown::default().can_be_taken());
        assert!(!PhotoShown { wrong: Some("two sides cross".into()), ..shown }.can_be_taken());
    }
}
