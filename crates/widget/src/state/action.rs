//! What can happen to a session.

use std::rc::Rc;

use fitup_view::{
    Ask, DrawingView, Edit, Entry, Kind, Lang, ListFrom, Part, Photo, Place, SetOrder, Slide, Sort, Step, Supplied,
    Theme, Tool, Units, View, Way,
};

use super::{Address, EngineTrouble, Job, Memo, Notice, Trouble};

/// One thing that happens.
#[derive(Debug, Clone)]
pub enum Action {
    /// A catalogue has begun to load.
    Loading,
    /// So much of the catalogue has come, of so much if that is known (bytes).
    Progress(u64, Option<u64>),
    /// The catalogue is a copy kept on the device, of this time, because the network does not answer; `None` = it is not.
    Kept(Option<String>),
    /// Everything that was done and chosen is forgotten, as for the next visitor.
    Clear,
    /// The catalogue of this address was read.
    Read(String, Supplied),
    /// The catalogue could not be loaded; what was there stays.
    Failed(Trouble),
    /// A part of an answer of the engine, and what it answers.
    Said(Part, Rc<Ask>),
    /// There is no engine.
    NoEngine(EngineTrouble),
    /// The engine is begun once more.
    Retry,
    /// The page came to an address, at the start or by going back and forward.
    Arrive(Address),
    /// The user edits the build.
    Edit(Edit),
    /// A slider moves; it is edited when it is let go.
    Try(Edit),
    /// A slider moves what is looked at.
    Place(Slide, f64),
    /// One of two ways of looking is taken.
    Way(Way),
    /// So much room has the drawing.
    Room((u32, u32)),
    /// So much room have the hole patterns of the opened joint.
    Overlay((u32, u32)),
    /// So much room has the drawing of where to measure.
    Bench((u32, u32)),
    /// Go to a task on the desk.
    Task(u64),
    /// Measure with a tool from now on.
    With(Tool),
    /// Measure in a unit from now on.
    In(Units),
    /// Say what connects an unknown unit.
    Connects(Option<String>),
    /// Take in what was found on an unknown unit.
    Observe(Place, Kind, Entry),
    /// Forget what was found on it.
    Unobserve(Place, Kind),
    /// It is recognised: pick it, and look at the build again.
    Recognise(Edit),
    /// Pin the build at hand.
    Pin,
    /// Pin a build by its link.
    PinLink(String),
    /// Order the best complete sets by something else first.
    SetsBy(SetOrder),
    /// One of the two parts lists comes from here.
    List(usize, ListFrom),
    /// Whether the best complete sets keep the pick of a step.
    Keep(Step, bool),
    /// Take a pinned build away, by its place.
    Unpin(usize),
    /// Show all lines of a comparison, or only those that differ.
    DifferencesOnly,
    /// So much is marked on a photograph.
    Mark(Option<Photo>),
    /// Correct what was refused.
    Correct,
    /// Lay out more options.
    More,
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
    /// Open a row of the answer, or close what is open.
    Open(Option<u64>),
    /// Search the options.
    Search(String),
    /// Sort the options.
    Order(Sort),
    /// Choose colours.
    Theme(Theme),
    /// Choose a language.
    Speak(Lang),
    /// The texts of a language could not be loaded.
    Unspoken(Lang),
    /// Choose units.
    MeasureIn(Units),
    /// Fold the drawing in or out where there is little room.
    Fold(bool),
    /// The jobs that the device has kept, and a number with which new ids begin.
    KnowJobs(Vec<Job>, u64),
    /// A job was kept.
    JobKept(Job),
    /// Open a job by its id.
    OpenJob(String),
    /// Delete a job by its id.
    DeleteJob(String),
    /// Bring the job back that was deleted last.
    BringBack,
    /// Take the jobs of a file in.
    TakeJobs(Vec<Job>),
    /// Write something to the build.
    Write(Memo),
    /// Keep the build at hand beside, in the same job.
    KeepBuild,
    /// Take a build that was kept beside out of the job.
    DropBuild(usize),
    /// Open what is taken along, or close it.
    TakeAway(bool),
    /// Put a notice away, or show one.
    Tell(Option<Notice>),
}
