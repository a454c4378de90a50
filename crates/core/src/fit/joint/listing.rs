//! Evidence by listing: the two items together in the guide, or their joint-bearing parts in a
//! set that the guide lists.

use crate::finding::{Chain, ChainStep, Evidence, Finding, Grade, Name, PartNumber, ReadOff, Verdict};
use crate::findings;
use crate::fit::context::Context;
use crate::fit::context::read::{Borne, Read};
use crate::fit::desk::{Desk, ListedBy};
use crate::fit::joint::Meeting;
use crate::item::{End, ItemRef};

findings! {
    /// The guide or the maker lists the two together; the guide's name and date where it is the guide.
    JointListed = "joint-listed", Fit { guide: Option<Name>, date: Option<Name> }
    /// The joint is borne by the same parts as in a listed set.
    JointSamePart = "joint-same-part", Fit { part: PartNumber, witness: ItemRef, witness_other: ItemRef }
    /// The joint is borne by parts that replace those of a listed set.
    JointReplacedPart = "joint-replaced-part", Fit { part: PartNumber, witness: ItemRef, witness_other: ItemRef }
}

/// The strongest listing this joint has: direct, then by the same parts, then by replacement.
///
/// A unit whose parts at the joint were read and are others than those listed is not the one that is listed: what counts is
/// what the parts read serve for.
pub(super) fn find(context: &Context, meeting: &Meeting) -> Option<Finding> {
    let (x, y) = (meeting.carrier.0, meeting.carried.0);
    if !reads(context, meeting).any(|read| read.differs)
        && let Some(by) = context.desk.listed_at(meeting.role, x, y)
    {
        let guide = by.guide_row().and(context.catalogue().guide.as_ref());
        let fact =
            JointListed { guide: guide.map(|guide| guide.name.clone()), date: guide.map(|guide| guide.date.clone()) };
        let mut finding = meeting.finding(fact, Verdict::BoltsUp);
        finding.evidence = Evidence {
            witness: Some((x, y)),
            guide_row: by.guide_row(),
            read: read_off(context, meeting),
            ..Evidence::of(Grade::Listed)
        };
        return Some(finding);
    }
    let [carrier, carried] = [meeting.carrier, meeting.carried].map(|(item, port)| context.borne(item, port));
    match (carrier, carried) {
        (Some(carrier), Some(carried)) => inherited(context, meeting, &carrier, &carried),
        (Some(known), None) => by_one_side(context, meeting, End::Carrier, &known),
        (None, Some(known)) => by_one_side(context, meeting, End::Carried, &known),
        (None, None) => None,
    }
}

/// What was read of the two ports.
pub(super) fn reads<'c>(context: &'c Context, meeting: &Meeting) -> impl Iterator<Item = &'c Read> + use<'c> {
    [meeting.carrier, meeting.carried].into_iter().filter_map(|(item, port)| context.read(item, port))
}

/// The same, as evidence.
pub(super) fn read_off(context: &Context, meeting: &Meeting) -> Vec<ReadOff> {
    reads(context, meeting).map(Read::evidence).collect()
}

fn inherited(context: &Context, meeting: &Meeting, carrier: &Borne, carried: &Borne) -> Option<Finding> {
    let desk = context.desk;
    let found = desk.listings(meeting.role).iter().filter_map(|listing| {
        let steps = [carrier.serves(desk, listing.carrier)?, carried.serves(desk, listing.carried)?];
        Some((listing, steps))
    });
    let (listing, [by_carrier, by_carried]) = found.min_by_key(|(listing, [a, b])| (a.len() + b.len(), *listing))?;
    let chains = vec![
        chain(desk, [meeting.carrier.0, listing.witness.0], carrier, by_carrier),
        chain(desk, [meeting.carried.0, listing.witness.1], carried, by_carried),
    ];
    Some(witnessed(context, meeting, listing.witness, listing.by, chains))
}

/// One side bears no known part, but its item is listed with another that bears, where they join, what the item here bears.
fn by_one_side(context: &Context, meeting: &Meeting, known: End, borne: &Borne) -> Option<Finding> {
    let desk = context.desk;
    let (here, unknown) = match known {
        End::Carrier => (meeting.carrier.0, meeting.carried),
        End::Carried => (meeting.carried.0, meeting.carrier),
    };
    let found = desk.one_sided(unknown.0, unknown.1).iter();
    let found = found.filter_map(|listing| Some((listing, borne.serves(desk, listing.other)?)));
    let (listing, steps) = found.min_by_key(|(listing, steps)| (steps.len(), *listing))?;
    let witness = match known {
        End::Carrier => (listing.witness, unknown.0),
        End::Carried => (unknown.0, listing.witness),
    };
    let chains = vec![chain(desk, [here, listing.witness], borne, steps)];
    Some(witnessed(context, meeting, witness, listing.by, chains))
}

fn chain(desk: &Desk, [item, stands_for]: [ItemRef; 2], borne: &Borne, steps: Vec<ChainStep>) -> Chain {
    Chain { item, stands_for, steps, parts: borne.numbers(desk) }
}

fn witnessed(
    context: &Context,
    meeting: &Meeting,
    witness: (ItemRef, ItemRef),
    by: ListedBy,
    mut chains: Vec<Chain>,
) -> Finding {
    chains.retain(|chain| chain.item != chain.stands_for || !chain.steps.is_empty());
    let part = chains.first().map(|chain| chain.parts.join(" + ")).unwrap_or_default();
    let (first, other) = witness;
    let (mut finding, grade) = if chains.iter().all(|chain| chain.steps.is_empty()) {
        let fact = JointSamePart { part, witness: first, witness_other: other };
        (meeting.finding(fact, Verdict::BoltsUp), Grade::SamePart)
    } else {
        let fact = JointReplacedPart { part, witness: first, witness_other: other };
        (meeting.finding(fact, Verdict::BoltsUp), Grade::ReplacedPart)
    };
    let (guide_row, read) = (by.guide_row(), read_off(context, meeting));
    finding.evidence = Evidence { witness: Some(witness), guide_row, chains, read, ..Evidence::of(grade) };
    finding
}
