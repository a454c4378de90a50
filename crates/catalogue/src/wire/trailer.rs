//! The table of trailers.

use fitup_core::item as core;

use super::define::{choice, record};
use super::value::{Angle, Length, Mass, Share};

record! {
    /// A trailer. Axes: origin on the ground under the axle (of a tandem: midway), x forward.
    pub struct Trailer => core::Trailer {
        /// Id of the row: lower-case letters, digits and hyphens, unique over all tables of the file.
        required id: String,
        /// The name people see.
        required label: String,
        /// Free note.
        optional note: String,
        /// Deck length.
        optional deck_length: Option<Length>,
        /// Deck width between the sides.
        optional deck_width: Option<Length>,
        /// Deck height.
        optional deck_height: Option<Length>,
        /// x of the deck's rear edge.
        optional deck_rear: Option<Length>,
        /// Ramp, by its length along the slope or by its angle.
        optional ramp: Option<Ramp>,
        /// Length of the beaver tail along its slope, if it has one.
        optional beaver_length: Option<Length>,
        /// Angle of the beaver tail.
        optional beaver_angle: Option<Angle>,
        /// Empty mass.
        optional empty_mass: Option<Mass>,
        /// x of the empty trailer's centre of gravity.
        optional centre_of_gravity: Option<Length>,
        /// Rated total mass.
        optional rated_total: Option<Mass>,
        /// Rated load of its axle or axles together.
        optional rated_axle: Option<Mass>,
        /// Distance from the coupling to the axle.
        optional coupling: Option<Length>,
        /// Least nose load, as a share of the laden trailer's mass.
        optional nose_least: Option<Share>,
        /// Greatest nose load, as a share of the laden trailer's mass.
        optional nose_most: Option<Share>,
        /// Greatest nose load, as a mass.
        optional rated_nose: Option<Mass>,
    }
}

choice! {
    /// How a ramp is stated.
    #[derive(Copy)]
    pub enum Ramp => core::RampSize {
        /// Length along the slope.
        Length(Length) "length",
        /// Angle to the ground.
        Angle(Angle) "angle",
    }
}
