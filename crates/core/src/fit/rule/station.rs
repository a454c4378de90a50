//! Frames and seats are made for open stations, for cabs, or for both.

use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::rule::Alike;
use crate::item::{ItemRef, Station};

/// Reads the stations of machine, frame and seat arrangement.
pub(super) const ALIKE: Alike = Alike {
    machine: |_, a, b| a.station == b.station,
    frame: |_, a, b| a.stations == b.stations,
    seat: |_, a, b| a.stations == b.stations,
    ..Alike::ALL
};

/// The frame has to be made for the machine's station, and so has the seat arrangement.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let Some((_, machine)) = context.machine() else { return };
    let station = Value::Label(name(machine.station).to_owned());
    if let Some((id, frame)) = context.frame() {
        let item = ItemRef::Frame(id);
        if frame.stations.is_empty() {
            out.push(
                Finding::new("station-unknown", Subject::Item(item), Verdict::CheckFirst, Grade::None)
                    .check(Check::FindOut { item, what: "stations" }),
            );
        } else if !frame.stations.contains(&machine.station) {
            out.push(
                Finding::new("station-differs", Subject::Item(item), Verdict::WontMount, Grade::Listed)
                    .with("station", station.clone()),
            );
        }
    }
    if let Some((id, seat)) = context.seat()
        && !seat.stations.is_empty()
        && !seat.stations.contains(&machine.station)
    {
        out.push(
            Finding::new("seat-station-differs", Subject::Item(ItemRef::Seat(id)), Verdict::WontMount, Grade::Listed)
                .with("station", station),
        );
    }
}

/// The station as figures name it; the words translate it.
const fn name(station: Station) -> &'static str {
    match station {
        Station::Open => "open",
        Station::Cab => "cab",
    }
}
