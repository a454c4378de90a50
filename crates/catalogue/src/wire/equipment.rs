//! The table of equipment.

use fitup_core::item as core;

use super::body::item_row;
use super::define::record;
use super::value::{Flow, Hours, Length, Mass, Pressure};

item_row! {
    /// A piece of equipment: what can be fitted to a machine or taken off. Its local axes are the machine's own; its ports are
    /// those that it adds to the machine.
    Equipment {
        /// What it is, in words that frames require and exclude: "loader base", "belly mower".
        required kind: String,
        /// Ids of the machines it is for.
        required machines: Vec<String>,
        /// Names of the ports that the machine needs to have for it.
        optional needs: Vec<String>,
        /// Names of the machine's ports that nothing can be joined to while it is on.
        optional blocks: Vec<String>,
        /// Names of the machine's shapes that it takes the place of.
        optional hides: Vec<String>,
        /// What it changes of the machine; what is left out stays as it is.
        optional changes: Option<Changes>,
        /// Hours to put it on.
        optional hours_on: Option<Hours>,
        /// Hours to take it off.
        optional hours_off: Option<Hours>,
    }
}

record! {
    /// What a piece of equipment changes of the machine; what is left out stays as it is.
    #[derive(Copy, Default)]
    pub struct Changes {
        /// At the rear axle.
        optional rear: Option<AxleChange>,
        /// At the front axle.
        optional front: Option<AxleChange>,
        /// In the hydraulics.
        optional hydraulics: Option<HydraulicChange>,
        /// Lift capacity of the hitch with it.
        optional lift: Option<Mass>,
    }
}

record! {
    /// What a piece of equipment changes at an axle.
    #[derive(Copy, Default)]
    pub struct AxleChange => core::AxleChange {
        /// Added to the track.
        optional track_more: Option<Length>,
        /// Tyre width.
        optional tyre_width: Option<Length>,
        /// Static loaded radius.
        optional static_loaded_radius: Option<Length>,
        /// Overall (unloaded) radius.
        optional overall_radius: Option<Length>,
        /// Rated load of one tyre.
        optional tyre_rated: Option<Mass>,
    }
}

record! {
    /// What a piece of equipment changes in the hydraulics.
    #[derive(Copy, Default)]
    pub struct HydraulicChange => core::HydraulicChange {
        /// Flow at the outlets.
        optional flow: Option<Flow>,
        /// Relief pressure.
        optional relief: Option<Pressure>,
        /// Double-acting outlets more.
        optional outlets_more: Option<u32>,
        /// Whether power-beyond is provided.
        optional power_beyond: Option<bool>,
    }
}
