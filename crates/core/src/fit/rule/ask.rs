//! What a rule may ask of a build beyond its items.

use std::marker::PhantomData;

use super::Datum;
use crate::build::{Build, Placement, Stack, Step};
use crate::finding::Unstated;
use crate::fit::context::Context;
use crate::fit::desk::solid::Solids;
use crate::item::{Body, Frame, Implement, ItemRef, Machine, Role, Seat};

/// Something a rule asks beyond the items. A tuple asks several things, `()` nothing.
pub trait Ask<'c> {
    /// The answer for a build that has been placed.
    fn of(context: &'c Context<'c>) -> Self;

    /// Notes what is asked, for the search for completions.
    fn note(asked: &mut Asked);
}

/// What a rule asks beyond the items, as the search for completions has to know it.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Asked {
    /// Whether it asks which ports meet.
    pub joints: bool,
    /// Whether it asks where something stands, or one of the following.
    pub places: bool,
    /// The steps of whose items it asks the place.
    pub stand: Vec<Step>,
    /// The two steps, earlier first, of whose items it asks whether they are listed together.
    pub listed: Option<[Step; 2]>,
    /// The roles of which it asks whether any two ports meet.
    pub meet: Vec<Role>,
    /// Whether it asks what the finished machine comes to: its loads, what it measures.
    pub whole: bool,
}

/// A kind of item that answers a step.
pub trait Answers {
    /// The step.
    const STEP: Step;
}

impl Answers for Machine {
    const STEP: Step = Step::Machine;
}

impl Answers for Frame {
    const STEP: Step = Step::Frame;
}

impl Answers for Seat {
    const STEP: Step = Step::Seat;
}

impl Answers for Implement {
    const STEP: Step = Step::Implement;
}

fn item_of<T: Answers>(build: &Build) -> Option<ItemRef> {
    T::STEP.chosen(build).and_then(|option| T::STEP.item(option))
}

/// Which ports meet, and which items a joint places.
#[derive(Debug, Clone, Copy)]
pub struct Joints<'c>(&'c Stack);

impl Joints<'_> {
    /// Role of each joint, and the items of carrier and carried end, each with the index of its port.
    pub fn iter(&self) -> impl Iterator<Item = (Role, [(ItemRef, usize); 2])> + '_ {
        let end = |(at, port): (usize, usize)| (self.0.placed[at].item, port);
        self.0.joints.iter().map(move |joint| (joint.role, [end(joint.carrier), end(joint.carried)]))
    }

    /// The items that joints place, and the machine, in the order they are placed.
    pub fn placed(&self) -> impl Iterator<Item = ItemRef> + '_ {
        self.0.placed.iter().map(|placed| placed.item)
    }

    /// Whether a joint places an item.
    pub fn holds(&self, item: ItemRef) -> bool {
        self.0.holds(item)
    }

    /// Whether `item` stands on `carrier`, directly or through what is between them.
    pub fn carries(&self, carrier: ItemRef, item: ItemRef) -> bool {
        self.0.carries(carrier, item)
    }
}

impl<'c> Ask<'c> for Joints<'c> {
    fn of(context: &'c Context<'c>) -> Self {
        Self(&context.stack)
    }

    fn note(asked: &mut Asked) {
        asked.joints = true;
    }
}

/// Where the item of kind `T` stands.
#[derive(Debug)]
pub struct Place<T> {
    /// Whether a joint places it, at a known place or not.
    pub is_held: bool,
    /// Its place.
    pub at: Datum<Placement>,
    of: PhantomData<T>,
}

impl<'c, T: Answers> Ask<'c> for Place<T> {
    fn of(context: &'c Context<'c>) -> Self {
        let item = item_of::<T>(context.build);
        let at = Datum::new(Unstated::Pose, item.and_then(|item| context.stack.placement(item)));
        Self { is_held: item.is_some_and(|item| context.stack.holds(item)), at, of: PhantomData }
    }

    fn note(asked: &mut Asked) {
        asked.places = true;
        asked.stand.push(T::STEP);
    }
}

/// An adapter that a joint places.
#[derive(Debug, Clone, Copy)]
pub struct PlacedAdapter<'c> {
    /// The adapter.
    pub item: ItemRef,
    /// Its place.
    pub at: Datum<Placement>,
    /// What of it others have to keep clear of.
    pub(crate) solids: Option<&'c Solids>,
}

/// Where the build's adapters stand, in the order they are placed.
#[derive(Debug, Clone)]
pub struct Adapters<'c>(pub Vec<PlacedAdapter<'c>>);

impl<'c> Ask<'c> for Adapters<'c> {
    fn of(context: &'c Context<'c>) -> Self {
        let adapters = context.stack.placed.iter().filter(|placed| matches!(placed.item, ItemRef::Adapter(_)));
        let placed = adapters.map(|placed| PlacedAdapter {
            item: placed.item,
            at: Datum::new(Unstated::Pose, placed.placement),
            solids: context.desk.solids(placed.item),
        });
        Self(placed.collect())
    }

    fn note(asked: &mut Asked) {
        asked.places = true;
    }
}

/// Whether the items of two kinds, the earlier step first, are listed together.
#[derive(Debug)]
pub struct Listed<A, B> {
    /// Whether they are.
    pub together: bool,
    of: PhantomData<(A, B)>,
}

impl<'c, A: Answers, B: Answers> Ask<'c> for Listed<A, B> {
    fn of(context: &'c Context<'c>) -> Self {
        let pair = item_of::<A>(context.build).zip(item_of::<B>(context.build));
        Self { together: pair.is_some_and(|(a, b)| context.desk.listed(a, b).is_some()), of: PhantomData }
    }

    fn note(asked: &mut Asked) {
        asked.places = true;
        asked.listed = Some([A::STEP, B::STEP]);
    }
}

/// Whether something hangs on the three-point hitch.
#[derive(Debug, Clone, Copy)]
pub struct HitchIsUsed(pub bool);

impl<'c> Ask<'c> for HitchIsUsed {
    fn of(context: &'c Context<'c>) -> Self {
        Self(context.stack.joints.iter().any(|joint| joint.role == Role::Hitch))
    }

    fn note(asked: &mut Asked) {
        asked.places = true;
        asked.meet.push(Role::Hitch);
    }
}

/// The items of the build of which the side says something: measured, looked for, changed, its serial number known, on hand.
///
/// No other option stands for them in a search, so that a rule may read all of them.
#[derive(Debug, Clone)]
pub struct SpokenOf<'c>(Vec<(ItemRef, &'c Body)>);

impl<'c> SpokenOf<'c> {
    /// The items, carriers first; one that is there twice comes twice.
    pub fn iter(&self) -> impl Iterator<Item = (ItemRef, &'c Body)> + '_ {
        self.0.iter().copied()
    }

    /// The row of an item, if it is one of them.
    pub fn body(&self, item: ItemRef) -> Option<&'c Body> {
        self.0.iter().find(|(of, _)| *of == item).map(|(_, body)| *body)
    }
}

impl<'c> Ask<'c> for SpokenOf<'c> {
    fn of(context: &'c Context<'c>) -> Self {
        let named = context.build.side.items();
        let items = context.build.items().into_iter().filter(|item| named.contains(item));
        Self(items.map(|item| (item, context.desk.catalogue().body(item))).collect())
    }

    fn note(_: &mut Asked) {}
}

impl<'c> Ask<'c> for () {
    fn of(_: &'c Context<'c>) -> Self {}

    fn note(_: &mut Asked) {}
}

macro_rules! ask_together {
    ($($part:ident)*) => {
        impl<'c, $($part: Ask<'c>),*> Ask<'c> for ($($part,)*) {
            fn of(context: &'c Context<'c>) -> Self {
                ($($part::of(context),)*)
            }

            fn note(asked: &mut Asked) {
                $($part::note(asked);)*
            }
        }
    };
}

ask_together!(A B);
ask_together!(A B C);
ask_together!(A B C D);
