//! What a rule sees of the items of a build.

use super::Rule;
use super::ask::Ask;
use crate::build::{Build, Carrying, Presence, Side};
use crate::fit::context::Context;
use crate::fit::desk::Desk;
use crate::item::{Adapter, AdapterId, Catalogue, ItemRef, SiteId, TrailerId};

/// What a rule sees of an item of kind `T`.
///
/// Two items whose views are equal may stand for each other before the rule, so the completions judge only one of them.
/// `()` sees nothing: all items are alike.
pub trait View<'c, T>: PartialEq + Sized + 'c {
    /// The view of an item: its row, and the desk for what is laid out there.
    fn of(desk: &'c Desk, item: ItemRef, row: &'c T) -> Self;
}

impl<'c, T> View<'c, T> for () {
    fn of(_: &'c Desk, _: ItemRef, _: &'c T) -> Self {}
}

/// Two views of the same item.
impl<'c, T, A: View<'c, T>, B: View<'c, T>> View<'c, T> for (A, B) {
    fn of(desk: &'c Desk, item: ItemRef, row: &'c T) -> Self {
        (A::of(desk, item, row), B::of(desk, item, row))
    }
}

/// A view of an item that no other may stand for: outlines, of which hardly two are equal.
#[derive(Debug, Clone, Copy)]
pub struct Own<V> {
    item: ItemRef,
    /// What is seen of it.
    pub sees: V,
}

impl<V> PartialEq for Own<V> {
    fn eq(&self, other: &Self) -> bool {
        self.item == other.item
    }
}

impl<'c, T, V: View<'c, T>> View<'c, T> for Own<V> {
    fn of(desk: &'c Desk, item: ItemRef, row: &'c T) -> Self {
        Self { item, sees: V::of(desk, item, row) }
    }
}

/// The name of a port. Findings repeat it, and the side tells by it what was looked for; no verdict rests on the name itself, so
/// that all are alike.
#[derive(Debug, Clone, Copy)]
pub struct PortName<'c>(pub(super) &'c str);

impl PartialEq for PortName<'_> {
    fn eq(&self, _: &Self) -> bool {
        true
    }
}

impl PortName<'_> {
    /// The name for a finding.
    pub fn for_findings(self) -> String {
        self.0.to_owned()
    }

    /// Whether the port of an item was looked for, and found. No other option stands for an item that was looked at.
    pub fn looked_for(self, item: ItemRef, side: &Side) -> Option<Presence> {
        side.looked.get(&(item, self.0.to_owned())).copied()
    }
}

/// An item with what a rule sees of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Of<V> {
    /// The item, for findings to name.
    pub item: ItemRef,
    /// What the rule sees of it.
    pub sees: V,
}

/// What carries the implement.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Carried<V> {
    /// Not chosen yet.
    Open,
    /// The bare hitch.
    Hitch,
    /// A frame.
    Frame(Of<V>),
}

/// What a rule sees of a build, and all it sees.
pub struct Seen<'c, R: Rule> {
    /// The machine, if one is chosen.
    pub machine: Option<Of<R::Machine<'c>>>,
    /// What carries the implement.
    pub carrying: Carried<R::Frame<'c>>,
    /// The seat arrangement, if one is chosen.
    pub seat: Option<Of<R::Seat<'c>>>,
    /// The implement, if one is chosen.
    pub implement: Option<Of<R::Implement<'c>>>,
    /// What goes with the choices. A search never changes it, so a rule may read it freely.
    pub side: &'c Side,
    /// What the rule asks beyond the items.
    pub asks: R::Asks<'c>,
    catalogue: &'c Catalogue,
}

impl<'c, R: Rule> Seen<'c, R> {
    /// What the rule sees of a build under judgement.
    pub(super) fn of(context: &'c Context<'c>) -> Self {
        let (desk, build): (&'c Desk, &'c Build) = (context.desk, context.build);
        let (catalogue, choices) = (desk.catalogue(), build.choices);
        Self {
            machine: choices.machine.map(|id| of(desk, ItemRef::Machine(id), catalogue.machine(id))),
            carrying: match choices.carrying {
                Carrying::Open => Carried::Open,
                Carrying::Hitch => Carried::Hitch,
                Carrying::Frame(id) => Carried::Frame(of(desk, ItemRef::Frame(id), catalogue.frame(id))),
            },
            seat: choices.seating.seat().map(|id| of(desk, ItemRef::Seat(id), catalogue.seat(id))),
            implement: choices.implement.map(|id| of(desk, ItemRef::Implement(id), catalogue.implement(id))),
            side: &build.side,
            asks: Ask::of(context),
            catalogue,
        }
    }

    /// The frame, if one is chosen.
    pub const fn frame(&self) -> Option<&Of<R::Frame<'c>>> {
        match &self.carrying {
            Carried::Frame(frame) => Some(frame),
            Carried::Open | Carried::Hitch => None,
        }
    }

    /// The row of an adapter; those of a build belong to its side.
    pub fn adapter(&self, id: AdapterId) -> &'c Adapter {
        self.catalogue.adapter(id)
    }

    /// The label of a trailer, for findings; the build's belongs to its side.
    pub(super) fn label_of_trailer(&self, id: TrailerId) -> &'c str {
        &self.catalogue.trailer(id).label
    }

    /// The label of a site.
    pub(super) fn label_of_site(&self, id: SiteId) -> &'c str {
        &self.catalogue.site(id).label
    }
}

fn of<'c, T, V: View<'c, T>>(desk: &'c Desk, item: ItemRef, row: &'c T) -> Of<V> {
    Of { item, sees: V::of(desk, item, row) }
}
