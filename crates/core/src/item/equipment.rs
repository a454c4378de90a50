//! Equipment: what can be fitted to a machine or taken off.

use super::Body;
use crate::quantity::{Angle, Flow, Length, Mass, Pressure, Work};

/// What can be fitted to a machine or taken off: a front loader's base, its arms and bucket, a mower deck, other tyres, wheel
/// spacers, ballast, links.
///
/// Its local axes are those of the machine that it is on. What is on stands with the machine as one: see [`Catalogue::standing`].
///
/// [`Catalogue::standing`]: super::Catalogue::standing
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Equipment {
    /// What every item has; its ports are those it adds to the machine.
    pub body: Body,
    /// What it is, in the catalogue's words ("loader base", "belly mower"): what frames require and exclude.
    pub kind: String,
    /// Ids of the machines it is for.
    pub machines: Vec<String>,
    /// Names of the ports that the machine needs to have for it.
    pub needs: Vec<String>,
    /// Names of the machine's ports that nothing can be joined to while it is on.
    pub blocks: Vec<String>,
    /// Names of the machine's shapes that it takes the place of.
    pub hides: Vec<String>,
    /// What it changes of the machine.
    pub changes: Changes,
    /// Workshop time to put it on.
    pub on: Option<Work>,
    /// Workshop time to take it off.
    pub off: Option<Work>,
}

/// What a piece of equipment changes of the machine; what it does not state stays as it is.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Changes {
    /// At the rear axle.
    pub rear: AxleChange,
    /// At the front axle.
    pub front: AxleChange,
    /// In the hydraulics.
    pub hydraulics: HydraulicChange,
    /// Lift capacity of the hitch with it.
    pub lift: Option<Mass>,
}

/// What a piece of equipment changes at an axle; what it does not state stays as it is.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct AxleChange {
    /// Added to the track.
    pub track_more: Option<Length>,
    /// Tyre width.
    pub tyre_width: Option<Length>,
    /// Static loaded radius.
    pub static_loaded_radius: Option<Length>,
    /// Overall (unloaded) radius.
    pub overall_radius: Option<Length>,
    /// Rated load of one tyre.
    pub tyre_rated: Option<Mass>,
}

/// What a piece of equipment changes in the hydraulics; what it does not state stays as it is.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct HydraulicChange {
    /// Flow at the outlets.
    pub flow: Option<Flow>,
    /// Relief pressure.
    pub relief: Option<Pressure>,
    /// Double-acting outlets more.
    pub outlets_more: Option<u32>,
    /// Whether power-beyond is provided.
    pub power_beyond: Option<bool>,
}

/// A piece of equipment on a machine as it stands.
#[derive(Debug, Clone, PartialEq)]
pub struct On {
    /// Its id.
    pub id: super::EquipmentId,
    /// How far it is lifted over the rear axle by tyres of another radius.
    pub lifted: Length,
    /// By how much it is pitched by them, nose up positive.
    pub pitch: Angle,
    /// Ports that it needs and that are not there.
    pub lacks: Vec<String>,
}
