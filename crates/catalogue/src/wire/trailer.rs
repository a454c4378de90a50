//! The table of trailers.

use serde::{Deserialize, Serialize};

use super::value::{Angle, Length, Mass, Share};

/// A trailer. Axes: origin on the ground under the axle (of a tandem: midway), x forward.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Trailer {
    /// Id of the row: lower-case letters, digits and hyphens, unique over all tables of the file.
    pub id: String,
    /// The name people see.
    pub label: String,
    /// Free note.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
    /// Deck length.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub deck_length: Option<Length>,
    /// Deck width between the sides.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub deck_width: Option<Length>,
    /// Deck height.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub deck_height: Option<Length>,
    /// x of the deck's rear edge.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub deck_rear: Option<Length>,
    /// Ramp, by its length along the slope or by its angle.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ramp: Option<Ramp>,
    /// Length of the beaver tail along its slope, if it has one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub beaver_length: Option<Length>,
    /// Angle of the beaver tail.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub beaver_angle: Option<Angle>,
    /// Empty mass.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub empty_mass: Option<Mass>,
    /// x of the empty trailer's centre of gravity.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub centre_of_gravity: Option<Length>,
    /// Rated total mass.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rated_total: Option<Mass>,
    /// Rated load of its axle or axles together.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rated_axle: Option<Mass>,
    /// Distance from the coupling to the axle.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub coupling: Option<Length>,
    /// Least nose load, as a share of the laden trailer's mass.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub nose_least: Option<Share>,
    /// Greatest nose load, as a share of the laden trailer's mass.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub nose_most: Option<Share>,
    /// Greatest nose load, as a mass.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rated_nose: Option<Mass>,
}

/// How a ramp is stated.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Ramp {
    /// Length along the slope.
    Length(Length),
    /// Angle to the ground.
    Angle(Angle),
}
