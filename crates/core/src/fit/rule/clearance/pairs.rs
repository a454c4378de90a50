//! Which parts have to keep clear of which, as data.
//!
//! Parts that are joined touch by design: a frame's rails lie on the machine's body, a rack's hooks in each other, links on
//! the implement's mast. So only pairs that have no business with each other are here, by what their shapes show; a shape of
//! a role that no pair names is not judged.

use crate::item::ShapeRole::{
    self, Body, Boom, Bucket, Cab, Console, Control, Cylinder, Dipper, FrameRail, Glass, Guard, RollOverBar, Seat,
    Stabiliser, Tool, Tyre, Weight,
};
use crate::quantity::Length;

/// Whose shapes a side of a pair takes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Owner {
    Machine,
    Frame,
    Seat,
    Implement,
}

/// Two groups of shapes that have to keep clear of each other.
pub(super) struct Pair {
    pub rear: (Owner, &'static [ShapeRole]),
    pub front: (Owner, &'static [ShapeRole]),
    /// Gap wanted between them; less is worth a look.
    pub wanted: Length,
}

/// What an implement carries along, its own seat apart: that is used, and judged as a seat, or it comes off.
const IMPLEMENT: &[ShapeRole] =
    &[Boom, Dipper, Bucket, Cylinder, Stabiliser, Console, Control, Tool, Guard, Weight, Body];

/// Every pair. Gaps: common practice, no source; a larger one asks for more looks, a smaller one lets parts rub that sway on
/// their joints.
pub(super) const PAIRS: &[Pair] = &[
    // A folded arm sways against the rear window, and the window opens.
    Pair { rear: (Owner::Implement, IMPLEMENT), front: (Owner::Machine, &[Glass, Cab]), wanted: Length::from_mm(30.0) },
    // Tyres bulge under load, throw mud and may carry chains.
    Pair { rear: (Owner::Implement, IMPLEMENT), front: (Owner::Machine, &[Tyre]), wanted: Length::from_mm(30.0) },
    Pair { rear: (Owner::Frame, &[FrameRail]), front: (Owner::Machine, &[Tyre]), wanted: Length::from_mm(30.0) },
    // The operator's room; how much the knees need is the seat's own rule.
    Pair { rear: (Owner::Implement, IMPLEMENT), front: (Owner::Seat, &[Seat]), wanted: Length::ZERO },
    Pair { rear: (Owner::Seat, &[Seat]), front: (Owner::Machine, &[Glass, Cab]), wanted: Length::ZERO },
    // The bar, whichever way it stands: see the rule for what becomes of it.
    Pair { rear: (Owner::Implement, IMPLEMENT), front: (Owner::Machine, &[RollOverBar]), wanted: Length::ZERO },
    Pair { rear: (Owner::Seat, &[Seat]), front: (Owner::Machine, &[RollOverBar]), wanted: Length::ZERO },
];
