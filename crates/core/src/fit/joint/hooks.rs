//! Hook racks: hooks over a bar, held by a latch pin.

use super::uncertain::{Decided, Weighed};
use super::{Mating, Meeting, Side};
use crate::finding::{Finding, Value, Verdict};
use crate::item::{HookRack, HookSide};
use crate::order;
use crate::quantity::{Length, Stated};

/// Play of a hook on its bar, and of a latch pin in its bore. Common practice, no source.
pub const PLAY_LIMIT: Length = Length::from_mm(3.0);

/// Difference that spread, drop and setback may have. Common practice, no source.
pub const OFF_LIMIT: Length = Length::from_mm(3.0);

/// The hook has to go over the bar without rattling, the latch pin through its bore, and spread,
/// drop and setback have to agree.
pub(super) fn judge(meeting: &Meeting, carrier: &HookRack, carried: &HookRack) -> Mating {
    if carrier.side == carried.side {
        let name = if carrier.side == HookSide::Bar { "bar" } else { "hook" };
        return meeting
            .finding("kinds-differ", Verdict::WontMount)
            .with("carrier", Value::Label(name.to_owned()))
            .with("carried", Value::Label(name.to_owned()))
            .into();
    }
    let bar_carries = carrier.side == HookSide::Bar;
    let mut findings = vec![
        // The hook's opening goes over the bar; the latch pin of the hooks goes into the bar's bore.
        play(meeting, "diameter", carrier.diameter, carried.diameter, !bar_carries),
        play(meeting, "latch", carrier.latch, carried.latch, bar_carries),
        off(meeting, "spread", carrier.spread, carried.spread),
        off(meeting, "drop", carrier.drop, carried.drop),
        off(meeting, "setback", carrier.setback, carried.setback),
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

type Dimension = Option<Stated<Length>>;

fn both(
    meeting: &Meeting,
    name: &str,
    carrier: Dimension,
    carried: Dimension,
) -> Result<[Stated<Length>; 2], Box<Finding>> {
    let a = carrier.ok_or_else(|| Box::new(meeting.unknown("hooks-unknown", Side::Carrier, name)))?;
    let b = carried.ok_or_else(|| Box::new(meeting.unknown("hooks-unknown", Side::Carried, name)))?;
    Ok([a, b])
}

/// Something round in something open: the play has to lie between nothing and the limit.
fn play(meeting: &Meeting, name: &str, carrier: Dimension, carried: Dimension, carrier_is_open: bool) -> Finding {
    let [a, b] = match both(meeting, name, carrier, carried) {
        Ok(both) => both,
        Err(unknown) => return *unknown,
    };
    let play = if carrier_is_open { a.value - b.value } else { b.value - a.value };
    let margin = play.min(PLAY_LIMIT - play);
    verdict(meeting, name, [a, b], margin, play, PLAY_LIMIT)
}

fn off(meeting: &Meeting, name: &str, carrier: Dimension, carried: Dimension) -> Finding {
    let [a, b] = match both(meeting, name, carrier, carried) {
        Ok(both) => both,
        Err(unknown) => return *unknown,
    };
    let off = (a.value - b.value).abs();
    verdict(meeting, name, [a, b], OFF_LIMIT - off, off, OFF_LIMIT)
}

fn verdict(
    meeting: &Meeting,
    name: &str,
    [a, b]: [Stated<Length>; 2],
    margin: Length,
    play: Length,
    limit: Length,
) -> Finding {
    let ranges = [meeting.carrier_port.half_range(&a), meeting.carried_port.half_range(&b)];
    let Some(weighed) = Weighed::new(margin, &ranges) else {
        return meeting.unknown("hooks-unknown", Side::Carrier, name);
    };
    let label = Value::Label(name.to_owned());
    match weighed.decided {
        Decided::Fits => meeting
            .finding("hooks-hold", Verdict::BoltsUp)
            .with("play", Value::Length(play))
            .with("limit", Value::Length(limit)),
        Decided::Misfits => meeting
            .finding("hooks-misfit", Verdict::WontMount)
            .with("dimension", label)
            .with("carrier", Value::Length(a.value))
            .with("carried", Value::Length(b.value))
            .with("off-by", Value::Length((a.value - b.value).abs()))
            .with("limit", Value::Length(limit)),
        Decided::Open => {
            let finding = meeting
                .finding("hooks-may-hold", Verdict::CheckFirst)
                .with("dimension", label)
                .with("play", Value::Length(play))
                .with("limit", Value::Length(limit));
            weighed.open(finding, meeting.carried.0, &meeting.carried_port.name, name).check(meeting.compare())
        }
    }
}
