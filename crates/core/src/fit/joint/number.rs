//! A part number read off the unit that is not the one listed.

use super::listing::{read_off, reads};
use super::{Mating, Meeting};
use crate::finding::{Check, Evidence, Grade, Name, PartNumber, Verdict};
use crate::fit::context::Context;
use crate::fit::context::read::Read;
use crate::item::{End, ItemRef, Port};
use crate::quantity::Source;
use crate::{findings, words};

findings! {
    /// The part number read off the unit is not the one listed.
    NumberReadDiffers = "number-read-differs", Fit {
        item: ItemRef, port: Name, read: PartNumber, listed: PartNumber, rests: Rests,
    }
}

words! {
    /// What the joint rests on in spite of it.
    Rests { Listed = "listed", Measured = "measured", Nothing = "nothing" }
}

/// What of a joint is left where a part was read that is not the listed one.
///
/// The row speaks of the listed part: what it states of the port may not be so on the one that is there. A set listed with the
/// part read proves the joint all the same, and so does what was measured; nothing that the row states does.
pub(super) fn told(context: &Context, meeting: &Meeting, is_listed: bool, mut mating: Mating) -> Mating {
    let differing: Vec<(End, &Read)> = sides(meeting)
        .into_iter()
        .filter_map(|(end, (item, port))| Some((end, context.read(item, port)?)))
        .filter(|(_, read)| read.differs)
        .collect();
    if differing.is_empty() {
        return mating;
    }
    let rests = |end: End| match unmeasured(meeting.end(end).1) {
        _ if is_listed => Rests::Listed,
        Some(left) if left.is_empty() => Rests::Measured,
        _ => Rests::Nothing,
    };
    if differing.iter().any(|&(end, _)| rests(end) == Rests::Nothing) {
        mating.findings.clear();
    }
    mating.findings.extend(differing.into_iter().map(|(end, read)| {
        let (item, port) = meeting.end(end);
        let left = unmeasured(port).unwrap_or_default();
        let fact = NumberReadDiffers {
            item,
            port: port.name.clone(),
            read: read.parts.join(" + "),
            listed: read.listed.join(" + "),
            rests: rests(end),
        };
        let verdict = if rests(end) == Rests::Nothing { Verdict::CheckFirst } else { Verdict::BoltsUp };
        let mut finding = meeting.finding(fact, verdict);
        finding.evidence = Evidence { read: read_off(context, meeting), ..Evidence::of(Grade::Measured) };
        if verdict == Verdict::CheckFirst {
            let measure = |dimension| Check::Measure { item, port: port.name.clone(), dimension, within: None };
            finding.checks.extend(left.into_iter().map(measure));
            if finding.checks.is_empty() {
                finding.checks.push(Check::Ask { a: meeting.carrier.0, b: meeting.carried.0 });
            }
        }
        finding
    }));
    mating
}

/// Whether something that differs was read of a joint.
pub(super) fn differs(context: &Context, meeting: &Meeting) -> bool {
    reads(context, meeting).any(|read| read.differs)
}

const fn sides(meeting: &Meeting) -> [(End, (ItemRef, usize)); 2] {
    [(End::Carrier, meeting.carrier), (End::Carried, meeting.carried)]
}

/// The dimensions of a port that were not measured on the unit, where it sits left out, since no joint asks that alone; `None`
/// if it has none that can be measured.
fn unmeasured(port: &Port) -> Option<Vec<String>> {
    let dimensions = port.dimensions().into_iter().map(|dimension| (dimension.name.to_string(), dimension.stated));
    let (names, known): (Vec<String>, Vec<bool>) = dimensions
        .filter(|(name, _)| !name.starts_with("at-"))
        .map(|(name, stated)| (name, stated.is_some_and(|stated| matches!(stated.source, Source::Measured(_)))))
        .unzip();
    let left = names.iter().zip(known).filter(|(_, known)| !known).map(|(name, _)| name.clone()).collect();
    (!names.is_empty()).then_some(left)
}
