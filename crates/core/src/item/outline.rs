//! Outlines: named shapes per view, to draw and to keep clear of.

use crate::quantity::Length;

/// A view of the machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum View {
    /// From the right-hand side, forward to the right: (x, z).
    Side,
    /// From above: (x, y).
    Plan,
    /// From behind: (y, z).
    Rear,
}

/// What a shape shows; the drawing chooses line and tone by it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ShapeRole {
    /// Main body: gearbox, fenders, floor.
    Body,
    /// Bonnet (hood).
    Bonnet,
    /// Grille, lights and other small front features.
    Detail,
    /// Glass of a cab or a screen.
    Glass,
    /// Cab or canopy posts and roof.
    Cab,
    /// Roll-over bar standing.
    RollOverBar,
    /// Roll-over bar folded.
    RollOverBarFolded,
    /// Tyre (drawn from the axle's figures where a machine states none).
    Tyre,
    /// Seat cushion and back.
    Seat,
    /// The same with the back folded down.
    SeatFolded,
    /// Steering wheel, levers and other controls.
    Control,
    /// Rail or plate of a mounting frame.
    FrameRail,
    /// The frame's rear face.
    Rack,
    /// Lower links, top link and their parts.
    Hitch,
    /// Boom of a digging arm.
    Boom,
    /// Dipper of a digging arm.
    Dipper,
    /// Bucket.
    Bucket,
    /// Hydraulic cylinder.
    Cylinder,
    /// Stabiliser leg and pad.
    Stabiliser,
    /// Operator's console of an implement.
    Console,
    /// Working tool: rotor, blade, tine, auger.
    Tool,
    /// Guard, hood or deck of a tool.
    Guard,
    /// Ballast.
    Weight,
    /// Adapter piece.
    Adapter,
}

/// Which body a shape moves with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Carrier {
    /// The item itself.
    #[default]
    Item,
    /// A digging arm's boom: local origin at the boom foot, x along the boom.
    Boom,
    /// A digging arm's dipper: local origin at the boom's end pin, x along the dipper.
    Dipper,
    /// A digging arm's bucket: local origin at the dipper's end pin, x towards the tip.
    Bucket,
}

/// One step of a path, in the view's two axes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum PathCommand {
    /// Start a new run at a point.
    Move(Length, Length),
    /// Straight to a point.
    Line(Length, Length),
    /// Cubic curve to the last point over two control points.
    Cubic([(Length, Length); 3]),
    /// Back to the start of the run.
    Close,
}

/// One named shape.
#[derive(Debug, Clone, PartialEq)]
pub struct Shape {
    /// Name, for messages.
    pub name: String,
    /// View it belongs to.
    pub view: View,
    /// What it shows.
    pub role: ShapeRole,
    /// What it moves with.
    pub carrier: Carrier,
    /// Whether other items have to keep clear of it.
    pub clearance: bool,
    /// The path.
    pub path: Vec<PathCommand>,
}
