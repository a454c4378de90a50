//! Evidence by listing: the two items together in the guide, or their joint-bearing parts in a
//! set that the guide lists.

use crate::finding::{Chain, Evidence, Finding, Grade, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::desk::Listing;
use crate::fit::joint::Meeting;
use crate::fit::lineage::SetId;

/// The strongest listing this joint has: direct, then by the same parts, then by replacement.
pub(super) fn find(context: &Context, meeting: &Meeting) -> Option<Finding> {
    let (x, y) = (meeting.carrier.0, meeting.carried.0);
    if let Some(by) = context.desk.listed_at(meeting.role, x, y) {
        let mut finding = meeting.finding("joint-listed", Verdict::BoltsUp);
        finding.evidence = Evidence { witness: Some((x, y)), guide_row: by.guide_row(), ..Evidence::of(Grade::Listed) };
        if let (Some(_), Some(guide)) = (by.guide_row(), &context.catalogue().guide) {
            finding =
                finding.with("guide", Value::Label(guide.name.clone())).with("date", Value::Label(guide.date.clone()));
        }
        return Some(finding);
    }
    let carrier = context.desk.port_set(x, meeting.carrier.1)?;
    let carried = context.desk.port_set(y, meeting.carried.1)?;
    inherited(context, meeting, carrier, carried)
}

fn inherited(context: &Context, meeting: &Meeting, carrier: SetId, carried: SetId) -> Option<Finding> {
    let sets = context.desk.sets();
    let best = context
        .desk
        .listings(meeting.role)
        .iter()
        .filter_map(|listing| {
            let by_carrier = sets.serves(carrier, listing.carrier)?;
            let by_carried = sets.serves(carried, listing.carried)?;
            Some((by_carrier.len() + by_carried.len(), listing))
        })
        .min_by_key(|&(steps, listing)| (steps, listing))?;
    Some(witnessed(context, meeting, best.1, best.0, carrier, carried))
}

fn witnessed(
    context: &Context,
    meeting: &Meeting,
    listing: &Listing,
    steps: usize,
    carrier: SetId,
    carried: SetId,
) -> Finding {
    let sets = context.desk.sets();
    let chain = |item, stands_for, have: SetId, want: SetId| Chain {
        item,
        stands_for,
        steps: sets.serves(have, want).unwrap_or_default().to_vec(),
        parts: sets.numbers(have),
    };
    let chains: Vec<Chain> = [
        chain(meeting.carrier.0, listing.witness.0, carrier, listing.carrier),
        chain(meeting.carried.0, listing.witness.1, carried, listing.carried),
    ]
    .into_iter()
    .filter(|chain| chain.item != chain.stands_for)
    .collect();
    let (code, grade) =
        if steps == 0 { ("joint-same-part", Grade::SamePart) } else { ("joint-replaced-part", Grade::ReplacedPart) };
    let part = chains.first().map(|chain| chain.parts.join(" + ")).unwrap_or_default();
    let mut finding = meeting
        .finding(code, Verdict::BoltsUp)
        .with("part", Value::Label(part))
        .with("witness", Value::Item(listing.witness.0))
        .with("witness-other", Value::Item(listing.witness.1));
    finding.evidence =
        Evidence { witness: Some(listing.witness), guide_row: listing.by.guide_row(), chains, ..Evidence::of(grade) };
    finding
}
