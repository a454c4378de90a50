//! Outline shapes.

use fitup_core::item as core;

use super::define::{record, words};

record! {
    /// One named shape of an item's outline.
    pub struct Shape {
        /// Name, for messages.
        required name: String,
        /// View it belongs to.
        required view: View,
        /// What it shows.
        required role: ShapeRole,
        /// What it moves with.
        optional carrier: Carrier,
        /// Whether other items have to keep clear of it; left out = true.
        optional clearance: Option<bool>,
        /// SVG path data in the view's two axes: side (x, z), plan (x, y), rear (y, z); z up, y left.
        required path: String,
    }
}

words! {
    /// A view of the machine.
    pub enum View => core::View {
        /// From the right-hand side: (x, z).
        Side "side",
        /// From above: (x, y).
        Plan "plan",
        /// From behind: (y, z).
        Rear "rear",
    }
}

words! {
    /// What a shape shows.
    pub enum ShapeRole => core::ShapeRole {
        /// Main body: gearbox, fenders, floor.
        Body "body",
        /// Bonnet (hood).
        Bonnet "bonnet",
        /// Grille, lights and other small features.
        Detail "detail",
        /// Glass of a cab or a screen.
        Glass "glass",
        /// Cab or canopy posts and roof.
        Cab "cab",
        /// Roll-over bar standing.
        RollOverBar "roll_over_bar",
        /// Roll-over bar folded.
        RollOverBarFolded "roll_over_bar_folded",
        /// Tyre.
        Tyre "tyre",
        /// Seat cushion and back.
        Seat "seat",
        /// The same with the back folded down.
        SeatFolded "seat_folded",
        /// Steering wheel, levers and other controls.
        Control "control",
        /// Rail or plate of a mounting frame.
        FrameRail "frame_rail",
        /// The frame's rear face.
        Rack "rack",
        /// Lower links, top link and their parts.
        Hitch "hitch",
        /// Boom of a digging arm.
        Boom "boom",
        /// Dipper of a digging arm.
        Dipper "dipper",
        /// Bucket.
        Bucket "bucket",
        /// Hydraulic cylinder.
        Cylinder "cylinder",
        /// Stabiliser leg and pad.
        Stabiliser "stabiliser",
        /// Operator's console of an implement.
        Console "console",
        /// Working tool: rotor, blade, tine, auger.
        Tool "tool",
        /// Guard, hood or deck of a tool.
        Guard "guard",
        /// Ballast.
        Weight "weight",
        /// Adapter piece.
        Adapter "adapter",
    }
}

words! {
    /// Which body a shape moves with.
    #[derive(Default)]
    pub enum Carrier => core::Carrier {
        /// The item itself.
        #[default]
        Item "item",
        /// A digging arm's boom: origin at the boom foot, first axis along the boom.
        Boom "boom",
        /// A digging arm's dipper: origin at the boom's end pin, first axis along the dipper.
        Dipper "dipper",
        /// A digging arm's bucket: origin at the dipper's end pin, first axis towards the tip.
        Bucket "bucket",
    }
}
