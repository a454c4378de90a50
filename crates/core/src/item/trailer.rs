//! Trailers the finished machine may travel on.

use crate::quantity::{Angle, Length, Mass};

/// How the ramp is stated: length along the slope, or angle. The deck height gives the other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum RampSize {
    /// Length along the slope.
    Length(Length),
    /// Angle to the ground.
    Angle(Angle),
}

/// A trailer. Frame: origin on the ground under the axle (of a tandem: midway), x forward.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Trailer {
    /// The row's id.
    pub id: String,
    /// The name people see.
    pub label: String,
    /// Free note.
    pub note: String,
    /// Deck length.
    pub deck_length: Option<Length>,
    /// Deck width between the sides.
    pub deck_width: Option<Length>,
    /// Deck height.
    pub deck_height: Option<Length>,
    /// x of the deck's rear edge.
    pub deck_rear: Option<Length>,
    /// Ramp.
    pub ramp: Option<RampSize>,
    /// Length of the beaver tail along its slope, if it has one.
    pub beaver_length: Option<Length>,
    /// Angle of the beaver tail.
    pub beaver_angle: Option<Angle>,
    /// Empty mass.
    pub empty_mass: Option<Mass>,
    /// x of the empty trailer's centre of gravity.
    pub centre_of_gravity: Option<Length>,
    /// Rated total mass.
    pub rated_total: Option<Mass>,
    /// Rated load of its axle or axles.
    pub rated_axle: Option<Mass>,
    /// Distance from the coupling to the axle.
    pub coupling: Option<Length>,
    /// Least nose load, as a share of the laden trailer's mass.
    pub nose_least: Option<f64>,
    /// Greatest nose load, as a share of the laden trailer's mass.
    pub nose_most: Option<f64>,
    /// Greatest nose load, as a mass.
    pub rated_nose: Option<Mass>,
}
