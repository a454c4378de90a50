//! The sheet a picture is drawn on: its room, its lettering, and where a model's point lies on it.

use fitup_core::finding::Verdict;
use fitup_core::plane::Point;
use fitup_core::quantity::{Angle, Length, Mass};

/// Turns quantities into words; the drawing itself knows no language and no unit.
pub trait Labels {
    /// A length, with or without its unit as drawings of the reader's country have it.
    fn length(&self, value: Length) -> String;
    /// An angle with its unit.
    fn angle(&self, value: Angle) -> String;
    /// A mass with its unit.
    fn mass(&self, value: Mass) -> String;
    /// The word of a verdict.
    fn verdict(&self, verdict: Verdict) -> String;
}

/// What a picture is to be drawn on.
#[derive(Clone, Copy)]
pub struct Sheet<'a> {
    /// Width in millimetres.
    pub width: f64,
    /// Greatest height in millimetres; a picture is only as high as it has to be.
    pub height: f64,
    /// Size of the dimension letters in millimetres; 3.5 is the usual one of ISO 3098, 2.5 its least.
    pub letters: f64,
    /// Dimensions and angles are drawn, or the shapes alone.
    pub dimensions: Shown,
    /// Joint markers are drawn.
    pub markers: Shown,
    /// How quantities become words.
    pub labels: &'a dyn Labels,
}

/// Whether something is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Shown {
    /// It is drawn.
    Yes,
    /// It is left out.
    No,
}

/// The least and greatest width a sheet is drawn on, millimetres: a thumbnail and a poster. Anything
/// outside, or not a number, is brought inside. Common sense, no source.
const WIDTHS: (f64, f64) = (10.0, 2000.0);

impl<'a> Sheet<'a> {
    /// A sheet with everything drawn.
    pub const fn new(width: f64, height: f64, labels: &'a dyn Labels) -> Self {
        Self { width, height, letters: 3.0, dimensions: Shown::Yes, markers: Shown::Yes, labels }
    }

    /// The width, brought inside what a sheet can be.
    pub(crate) fn sound_width(&self) -> f64 {
        sound(self.width)
    }

    pub(crate) fn sound_height(&self) -> f64 {
        sound(self.height)
    }

    pub(crate) fn has_dimensions(&self) -> bool {
        self.dimensions == Shown::Yes
    }

    pub(crate) fn has_markers(&self) -> bool {
        self.markers == Shown::Yes
    }
}

fn sound(length: f64) -> f64 {
    if length.is_nan() { 180.0 } else { length.max(WIDTHS.0).min(WIDTHS.1) }
}

/// A rectangle of a view, metres, that grows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Extent {
    pub left: f64,
    pub right: f64,
    pub low: f64,
    pub high: f64,
}

impl Extent {
    pub const NONE: Self =
        Self { left: f64::INFINITY, right: f64::NEG_INFINITY, low: f64::INFINITY, high: f64::NEG_INFINITY };

    pub fn take(&mut self, p: Point) {
        if p.is_finite() {
            self.left = self.left.min(p.x);
            self.right = self.right.max(p.x);
            self.low = self.low.min(p.y);
            self.high = self.high.max(p.y);
        }
    }

    pub fn join(&mut self, other: &Self) {
        if other.is_some() {
            self.take(Point::new(other.left, other.low));
            self.take(Point::new(other.right, other.high));
        }
    }

    pub fn is_some(&self) -> bool {
        self.left <= self.right && self.low <= self.high
    }

    pub fn width(&self) -> f64 {
        self.right - self.left
    }

    pub fn height(&self) -> f64 {
        self.high - self.low
    }

    /// Itself, or a square metre where there is nothing.
    pub fn or_square(self) -> Self {
        if self.is_some() { self } else { Self { left: 0.0, right: 1.0, low: 0.0, high: 1.0 } }
    }
}

/// Room kept free round the shapes, millimetres of the sheet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Margins {
    pub left: f64,
    pub right: f64,
    pub top: f64,
    pub bottom: f64,
}

/// Where a view's points lie on the sheet: scaled, the second axis turned down.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Mapping {
    /// Millimetres of the sheet for one metre.
    pub factor: f64,
    /// Sheet place of the view's origin.
    pub origin: Point,
    /// Width and height of the sheet.
    pub size: (f64, f64),
    /// Whether the first axis points to the left on the sheet (the view from behind).
    pub mirrored: bool,
}

/// Largest scale that is drawn, millimetres of the sheet for a metre: a part one metre long fills
/// a poster. Keeps a catalogue of tiny shapes from giving infinite ones.
const GREATEST_FACTOR: f64 = 1e6;

impl Mapping {
    /// Fits a view's extent between the margins, to the width or to the height, whichever is tighter.
    pub fn fit(extent: Extent, margins: Margins, sheet: &Sheet, mirrored: bool) -> Self {
        let extent = extent.or_square();
        let (width, most) = (sheet.sound_width(), sheet.sound_height());
        let room_x = (width - margins.left - margins.right).max(width * 0.2);
        let room_y = (most - margins.top - margins.bottom).max(most * 0.2);
        let per = |room: f64, length: f64| if length > 0.0 { room / length } else { GREATEST_FACTOR };
        let factor = per(room_x, extent.width()).min(per(room_y, extent.height())).min(GREATEST_FACTOR);
        let spare = (room_x - extent.width() * factor).max(0.0) / 2.0;
        let left = if mirrored { -extent.right } else { extent.left };
        let origin = Point::new(margins.left + spare - left * factor, margins.top + extent.high * factor);
        let height = margins.top + extent.height() * factor + margins.bottom;
        Self { factor, origin, size: (width, height), mirrored }
    }

    /// A point of the view, metres, on the sheet.
    pub fn at(&self, p: Point) -> Point {
        let x = if self.mirrored { -p.x } else { p.x };
        self.origin + Point::new(x * self.factor, -p.y * self.factor)
    }

    /// A length of the view on the sheet.
    pub fn length(&self, metres: f64) -> f64 {
        metres * self.factor
    }

    /// Real millimetres for one of the sheet.
    pub fn scale(&self) -> f64 {
        1000.0 / self.factor
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plain::Plain;

    const NO_MARGINS: Margins = Margins { left: 0.0, right: 0.0, top: 0.0, bottom: 0.0 };

    #[test]
    fn a_view_fills_the_width_and_its_second_axis_points_up_the_sheet() {
        let extent = Extent { left: -1.0, right: 3.0, low: 0.0, high: 2.0 };
        let map = Mapping::fit(extent, NO_MARGINS, &Sheet::new(200.0, 500.0, &Plain), false);
        assert!((map.factor - 50.0).abs() < 1e-12);
        assert_eq!(map.at(Point::new(-1.0, 2.0)), Point::ORIGIN);
        assert_eq!(map.at(Point::new(3.0, 0.0)), Point::new(200.0, 100.0));
        assert!((map.scale() - 20.0).abs() < 1e-12);
    }

    #[test]
    fn the_view_from_behind_has_left_on_the_left() {
        let extent = Extent { left: -1.0, right: 1.0, low: 0.0, high: 1.0 };
        let map = Mapping::fit(extent, NO_MARGINS, &Sheet::new(100.0, 500.0, &Plain), true);
        assert!(map.at(Point::new(1.0, 0.0)).x.abs() < 1e-12);
    }

    #[test]
    fn nothing_to_draw_and_an_absurd_sheet_still_map_to_numbers() {
        for width in [f64::NAN, f64::INFINITY, -3.0, 0.0] {
            let map = Mapping::fit(Extent::NONE, NO_MARGINS, &Sheet::new(width, width, &Plain), false);
            assert!(map.at(Point::new(1.0, 1.0)).is_finite());
        }
    }
}
