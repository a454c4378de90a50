//! Rules of every kind in one list.

use super::ask::{Ask, Asked};
use super::{Rule, Seen, View};
use crate::build::{Build, Placed, Step};
use crate::finding::{Finding, Verdict};
use crate::fit::context::Context;
use crate::fit::desk::Desk;
use crate::item::{Catalogue, FrameId, ImplementId, ItemRef, MachineId, SeatId};

/// A rule, whatever it sees.
pub(crate) trait AnyRule: Sync {
    /// What it reads beyond its views.
    fn reads(&self) -> Reads;

    /// Whether two options of a step may stand for each other before the rule. The bare hitch stands for no frame.
    fn alike<'c>(&self, desk: &'c Desk, step: Step) -> Box<dyn Fn(usize, usize) -> bool + 'c>;

    /// Adds the findings it has.
    fn judge(&self, context: &Context, out: &mut Vec<Finding>);
}

/// What a rule reads of a build beyond its views and the side.
pub(crate) enum Reads {
    /// Nothing.
    Items,
    /// Which ports meet.
    Joined,
    /// Where some items stand.
    Placed(Asked),
    /// Too much to be judged for many builds at once: it is asked anew for every build, by this verdict if it has one.
    Whole(Option<QuickVerdict>),
}

/// The worst of what a rule finds in a build whose items are placed.
pub type QuickVerdict = fn(&Catalogue, &Build, &[Placed]) -> Verdict;

impl<R: Rule + Sync> AnyRule for R {
    fn reads(&self) -> Reads {
        let mut asked = Asked::default();
        <R::Asks<'static> as Ask<'static>>::note(&mut asked);
        match (asked.joints, asked.places) {
            _ if asked.whole => Reads::Whole(R::QUICK),
            (false, false) => Reads::Items,
            (true, false) => Reads::Joined,
            (false, true) => Reads::Placed(asked),
            (true, true) => Reads::Whole(None),
        }
    }

    fn alike<'c>(&self, desk: &'c Desk, step: Step) -> Box<dyn Fn(usize, usize) -> bool + 'c> {
        let catalogue = desk.catalogue();
        match step {
            Step::Machine => {
                equal::<_, R::Machine<'c>>(desk, &catalogue.machines, |at| ItemRef::Machine(MachineId::at(at)))
            }
            Step::Frame => {
                let frames = equal::<_, R::Frame<'c>>(desk, &catalogue.frames, |at| ItemRef::Frame(FrameId::at(at)));
                Box::new(move |a, b| a > 0 && b > 0 && frames(a - 1, b - 1))
            }
            Step::Seat => equal::<_, R::Seat<'c>>(desk, &catalogue.seats, |at| ItemRef::Seat(SeatId::at(at))),
            Step::Implement => {
                equal::<_, R::Implement<'c>>(desk, &catalogue.implements, |at| ItemRef::Implement(ImplementId::at(at)))
            }
        }
    }

    fn judge(&self, context: &Context, out: &mut Vec<Finding>) {
        // A list of its own, so that a rule cannot look at what others found.
        let mut own = Vec::new();
        R::judge(&Seen::of(context), &mut own);
        out.append(&mut own);
    }
}

/// Whether the views of two rows are equal.
fn equal<'c, T, V: View<'c, T>>(
    desk: &'c Desk,
    rows: &'c [T],
    item: impl Fn(usize) -> ItemRef,
) -> Box<dyn Fn(usize, usize) -> bool + 'c> {
    let views: Vec<V> = rows.iter().enumerate().map(|(at, row)| V::of(desk, item(at), row)).collect();
    Box::new(move |a, b| views[a] == views[b])
}
