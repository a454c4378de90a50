//! What can happen to a session.

use std::rc::Rc;

use fitup_core::build::Step;
use fitup_core::finding::Subject;
use fitup_core::fit::Desk;
use fitup_words::{Lang, Units};

use super::{Address, DrawingView, Edit, Notice, Sort, Theme, Trouble, View};

/// One thing that happens.
#[derive(Debug, Clone)]
pub enum Action {
    /// A catalogue has begun to load.
    Loading,
    /// So much of the catalogue has come, of so much if that is known (bytes).
    Progress(u64, Option<u64>),
    /// The catalogue is there.
    Loaded(Rc<Desk>),
    /// The catalogue is not to be had; what was there stays.
    Failed(Trouble),
    /// The page came to an address, at the start or by going back and forward.
    Arrive(Address),
    /// The user edits the build.
    Edit(Edit),
    /// One build back.
    Undo,
    /// One build forward.
    Redo,
    /// Open a step, or close the open one.
    OpenStep(Option<Step>),
    /// Turn to a view.
    Turn(View),
    /// Look at the machine from another side.
    Look(DrawingView),
    /// Open what the answer says of a subject, or close what is open.
    Open(Option<Subject>),
    /// Search the options.
    Search(String),
    /// Sort the options.
    Order(Sort),
    /// Choose colours.
    Theme(Theme),
    /// Choose a language.
    Speak(Lang),
    /// The texts of a language are not to be had.
    Unspoken(Lang),
    /// Choose units.
    MeasureIn(Units),
    /// Fold the drawing in or out where there is little room.
    Fold(bool),
    /// Put a notice away, or show one.
    Tell(Option<Notice>),
}
