//! Frames and seats are made for open stations, for cabs, or for both.

use super::{Datum, Rule, Seen, View};
use crate::finding::{Check, Fact, Finding, Grade, Subject, Unstated, Verdict};
use crate::fit::desk::Desk;
use crate::item::{Frame, ItemRef, Machine, Seat, Station};
use crate::{findings, words};

findings! {
    /// The frame is not made for the machine's station.
    StationDiffers = "station-differs", Fit { station: Station }
    /// For which stations the frame is made is not stated.
    StationUnknown = "station-unknown", Fit {}
    /// The seat is not made for the machine's station.
    SeatStationDiffers = "seat-station-differs", Fit { station: Station }
    /// For which stations the seat is made is not stated.
    SeatStationUnknown = "seat-station-unknown", Fit {}
}

words! {
    for Station, shown as "station-" { Open = "open", Cab = "cab" }
}

/// The frame has to be made for the machine's station, and so has the seat arrangement.
///
/// A frame for the other station is *check first*: whether it goes on is for its joints to say.
pub(super) struct StationFits;

/// The machine's station.
#[derive(PartialEq)]
pub struct Has(Station);

impl<'c> View<'c, Machine> for Has {
    fn of(_: &'c Desk, _: ItemRef, machine: &'c Machine) -> Self {
        Self(machine.station)
    }
}

/// The stations something is made for.
#[derive(PartialEq)]
pub struct MadeFor<'c>(Datum<&'c [Station]>);

impl<'c> MadeFor<'c> {
    fn stations(stations: &'c [Station]) -> Self {
        Self(Datum::new(Unstated::Stations, Some(stations).filter(|stations| !stations.is_empty())))
    }
}

impl<'c> View<'c, Frame> for MadeFor<'c> {
    fn of(_: &'c Desk, _: ItemRef, frame: &'c Frame) -> Self {
        Self::stations(&frame.stations)
    }
}

impl<'c> View<'c, Seat> for MadeFor<'c> {
    fn of(_: &'c Desk, _: ItemRef, seat: &'c Seat) -> Self {
        Self::stations(&seat.stations)
    }
}

impl Rule for StationFits {
    type Machine<'c> = Has;
    type Frame<'c> = MadeFor<'c>;
    type Seat<'c> = MadeFor<'c>;
    type Implement<'c> = ();
    type Asks<'c> = ();

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let Some(machine) = &seen.machine else { return };
        let station = machine.sees.0;
        if let Some(frame) = seen.frame() {
            let item = frame.item;
            let unknown = |what| {
                Finding::of(StationUnknown {}, Subject::Item(item), Verdict::CheckFirst, Grade::None)
                    .check(Check::FindOut { item, what })
            };
            if frame.sees.0.need(out, unknown).is_some_and(|stations| !stations.contains(&station)) {
                let ask = Check::Ask { a: machine.item, b: item };
                out.push(differs(StationDiffers { station }, item, Verdict::CheckFirst).check(ask));
            }
        }
        if let Some(seat) = &seen.seat {
            let item = seat.item;
            let unknown = |what| {
                Finding::of(SeatStationUnknown {}, Subject::Item(item), Verdict::CheckFirst, Grade::None)
                    .check(Check::FindOut { item, what })
            };
            let stations = seat.sees.0.need(out, unknown);
            if stations.is_some_and(|stations| !stations.contains(&station)) {
                out.push(differs(SeatStationDiffers { station }, item, Verdict::WontMount));
            }
        }
    }
}

fn differs<F: Fact>(fact: F, item: ItemRef, verdict: Verdict) -> Finding {
    Finding::of(fact, Subject::Item(item), verdict, Grade::Listed)
}
