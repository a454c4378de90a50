//! Pins in lugs or clevises.

use super::table::table;
use crate::quantity::{Length, Stated};

/// Pins in lugs or clevises.
#[derive(Debug, Clone, PartialEq)]
pub struct Pins {
    /// Which half of the joint this is.
    pub form: PinForm,
    /// The points, in any order: which meets which is told by where they are.
    pub points: Vec<PinPoint>,
    /// Distance between left and right, centre to centre.
    pub spread: Option<Stated<Length>>,
}

impl Pins {
    /// This half, with nothing stated of it yet.
    pub const fn of(form: PinForm) -> Self {
        Self { form, points: Vec::new(), spread: None }
    }
}

/// Which half of a pinned joint a port is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PinForm {
    /// A lug with a bore, entering a clevis.
    Lug,
    /// A clevis with its pin.
    Clevis,
}

/// One pinned point.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PinPoint {
    /// Name as drawn ("lower left").
    pub name: String,
    /// Bore of a lug, pin of a clevis.
    pub diameter: Option<Stated<Length>>,
    /// Thickness of a lug, gap of a clevis.
    pub width: Option<Stated<Length>>,
    /// Centre height over the port's reference point.
    pub height: Option<Stated<Length>>,
    /// How far to the right of the port's reference point, as one looks at its face.
    pub across: Option<Stated<Length>>,
}

table! {
    Pins, besides [form], each ["point" points: PinPoint]
    size SPREAD "spread" spread;
}

table! {
    PinPoint, besides [name]
    size DIAMETER "diameter" diameter;
    size WIDTH "width" width;
    place HEIGHT "height" height;
    place ACROSS "across" across;
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_half_alone_has_no_points_and_no_spread() {
        assert_eq!(Pins::of(PinForm::Clevis), Pins { form: PinForm::Clevis, points: Vec::new(), spread: None });
    }
}
