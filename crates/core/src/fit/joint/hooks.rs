//! Hook racks: hooks over a bar, held by a latch pin.

use super::uncertain::{Decided, Weighed};
use super::{JoinsBy, KindsDiffer, Mating, Meeting};
use crate::finding::{Dimension, Finding, PartSize, Probability, Verdict};
use crate::findings;
use crate::item::{DimensionName, End, HookRack, HookSide, Line};
use crate::order;
use crate::quantity::{Length, Stated};

findings! {
    /// The hooks go on and hold.
    HooksHold = "hooks-hold", Fit { play: Length, limit: PartSize }
    /// A dimension is too close to call.
    HooksMayHold = "hooks-may-hold", Fit {
        dimension: Dimension, play: Length, limit: PartSize, probability: Probability, settles: Option<Length>,
    }
    /// A dimension is off by more than the limit.
    HooksMisfit = "hooks-misfit", Fit {
        dimension: Dimension, carrier: PartSize, carried: PartSize, off_by: Length, limit: PartSize,
    }
    /// A hook on its bar or a latch pin in its bore has so much play that a bush has to take it up.
    HooksNeedBush = "hooks-need-bush", Fit {
        dimension: Dimension, play: Length, limit: PartSize, carrier: PartSize, carried: PartSize,
    }
    /// A dimension is not stated.
    HooksUnknown = "hooks-unknown", Fit { missing: Dimension }
}

/// Play of a hook on its bar, and of a latch pin in its bore. Common practice, no source.
pub const PLAY_LIMIT: Length = Length::from_mm(3.0);

/// Play that a bush or sleeve takes up; where there is more, hooks and bar are of two sizes. Common practice, no source.
pub const BUSH_LIMIT: Length = Length::from_mm(10.0);

/// Difference that spread, drop and setback may have. Common practice, no source.
pub const OFF_LIMIT: Length = Length::from_mm(3.0);

/// The hook has to go over the bar without rattling, the latch pin through its bore, and spread,
/// drop and setback have to agree.
pub(super) fn judge(meeting: &Meeting, carrier: &HookRack, carried: &HookRack) -> Mating {
    if carrier.side == carried.side {
        let half = if carrier.side == HookSide::Bar { JoinsBy::Bar } else { JoinsBy::Hook };
        return meeting.finding(KindsDiffer { carrier: half, carried: half }, Verdict::WontMount).into();
    }
    let bar_carries = carrier.side == HookSide::Bar;
    let both = [carrier, carried];
    let mut findings = vec![
        // The hook's opening goes over the bar; the latch pin of the hooks goes into the bar's bore.
        play(meeting, &HookRack::DIAMETER, both, !bar_carries),
        play(meeting, &HookRack::LATCH, both, bar_carries),
        off(meeting, &HookRack::SPREAD, both),
        off(meeting, &HookRack::DROP, both),
        off(meeting, &HookRack::SETBACK, both),
    ];
    order::sort_by_key(&mut findings, |finding| std::cmp::Reverse(finding.verdict));
    let worst = findings[0].verdict;
    if worst == Verdict::BoltsUp {
        findings.truncate(1);
    } else {
        findings.retain(|finding| finding.verdict != Verdict::BoltsUp);
    }
    Mating { findings, overlay: None }
}

fn stated(
    meeting: &Meeting,
    line: &Line<HookRack>,
    [carrier, carried]: [&HookRack; 2],
) -> Result<[Stated<Length>; 2], Box<Finding>> {
    let a = line.of(carrier).ok_or_else(|| Box::new(unknown(meeting, End::Carrier, line.name())))?;
    let b = line.of(carried).ok_or_else(|| Box::new(unknown(meeting, End::Carried, line.name())))?;
    Ok([a, b])
}

fn unknown(meeting: &Meeting, side: End, dimension: DimensionName) -> Finding {
    meeting.unknown(side, dimension, |missing| HooksUnknown { missing })
}

/// Something round in something open: the play has to lie between nothing and the limit.
fn play(meeting: &Meeting, line: &Line<HookRack>, both: [&HookRack; 2], carrier_is_open: bool) -> Finding {
    let [a, b] = match stated(meeting, line, both) {
        Ok(stated) => stated,
        Err(unknown) => return *unknown,
    };
    let play = if carrier_is_open { a.value - b.value } else { b.value - a.value };
    let ranges = [meeting.carrier_port.half_range(&a), meeting.carried_port.half_range(&b)];
    let certain = |margin: Length, wanted| Weighed::new(margin, &ranges).is_some_and(|it| it.decided == wanted);
    if certain(PLAY_LIMIT - play, Decided::Misfits) && certain(BUSH_LIMIT - play, Decided::Fits) {
        let (dimension, limit, carrier, carried) = (line.name().to_string(), PLAY_LIMIT, a.value, b.value);
        let fact = HooksNeedBush { dimension, play, limit, carrier, carried };
        return meeting.finding(fact, Verdict::BoltsUpWithWork);
    }
    let margin = play.min(PLAY_LIMIT - play);
    verdict(meeting, line.name(), [a, b], margin, play, PLAY_LIMIT)
}

fn off(meeting: &Meeting, line: &Line<HookRack>, both: [&HookRack; 2]) -> Finding {
    let [a, b] = match stated(meeting, line, both) {
        Ok(stated) => stated,
        Err(unknown) => return *unknown,
    };
    let off = (a.value - b.value).abs();
    verdict(meeting, line.name(), [a, b], OFF_LIMIT - off, off, OFF_LIMIT)
}

fn verdict(
    meeting: &Meeting,
    name: DimensionName,
    [a, b]: [Stated<Length>; 2],
    margin: Length,
    play: Length,
    limit: Length,
) -> Finding {
    let ranges = [meeting.carrier_port.half_range(&a), meeting.carried_port.half_range(&b)];
    let Some(weighed) = Weighed::new(margin, &ranges) else {
        return unknown(meeting, End::Carrier, name);
    };
    let dimension = name.to_string();
    match weighed.decided {
        Decided::Fits => meeting.finding(HooksHold { play, limit }, Verdict::BoltsUp),
        Decided::Misfits => {
            let (carrier, carried) = (a.value, b.value);
            let off_by = (carrier - carried).abs();
            meeting.finding(HooksMisfit { dimension, carrier, carried, off_by, limit }, Verdict::WontMount)
        }
        Decided::Open => {
            let (probability, settles) = (weighed.probability(), weighed.settles());
            let (item, port) = meeting.end(End::Carried);
            meeting
                .finding(HooksMayHold { dimension, play, limit, probability, settles }, Verdict::CheckFirst)
                .check(weighed.check(item, &port.name, name))
                .check(meeting.compare())
        }
    }
}
