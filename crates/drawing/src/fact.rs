//! What a picture says, as data: the words make its text alternative of it.

use fitup_core::finding::Verdict;
use fitup_core::item::{ItemRef, View};
use fitup_core::quantity::{Angle, Length, Mass};

use crate::scene::FigureName;

/// One thing a picture says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Fact {
    /// It is this view of a machine.
    View(View),
    /// It shows an item, from its least to its greatest place along the picture's first axis.
    Item(ItemRef, Length, Length),
    /// It states a length.
    Length(FigureName, Length),
    /// It states an angle, limited by an item.
    Angle(FigureName, Angle, Option<ItemRef>),
    /// It states a load.
    Mass(FigureName, Mass),
    /// It marks a joint, by its index in the answer.
    Joint(usize, Verdict),
    /// It marks a clash, by its finding's index in the answer.
    Clash(usize, Verdict),
    /// A second build lies beneath to compare with.
    Ghost,
    /// Two hole patterns lie over each other: bolts that go in, bolts that do not.
    Holes(usize, usize),
    /// A machine touches or comes near a profile: which item, the clearance there.
    Nearest(ItemRef, Length),
}
