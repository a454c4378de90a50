//! The guide: id strings to places in the tables.

use std::collections::BTreeMap;

use fitup_core::item as core;
use fitup_core::item::{Body, FrameId, ImplementId, MachineId, Named, SeatId};

use crate::wire::guide::{ANY, Guide, WITHOUT};

/// The guide of a file, looked up in the catalogue's tables. A row with a reference that leads
/// nowhere is left out; the checks have said so.
pub fn guide(guide: &Guide, catalogue: &core::Catalogue) -> core::Guide {
    let machines = index(catalogue.machines.iter().map(|row| &row.body));
    let frames = index(catalogue.frames.iter().map(|row| &row.body));
    let seats = index(catalogue.seats.iter().map(|row| &row.body));
    let implements = index(catalogue.implements.iter().map(|row| &row.body));
    let mut rows = Vec::with_capacity(guide.sets.len());
    let column = |value: &str, table: &BTreeMap<&str, usize>| match value {
        ANY => Some(Named::Any),
        WITHOUT => Some(Named::Without),
        id => table.get(id).map(|&index| Named::This(index)),
    };
    for set in &guide.sets {
        let machine = column(&set.machine, &machines);
        let frame = column(&set.frame, &frames);
        let seat = column(&set.seat, &seats);
        let implement = column(&set.implement, &implements);
        if let (Some(machine), Some(frame), Some(seat), Some(implement)) = (machine, frame, seat, implement) {
            rows.push(core::GuideRow {
                machine: named(machine, MachineId::at),
                frame: named(frame, FrameId::at),
                seat: named(seat, SeatId::at),
                implement: named(implement, ImplementId::at),
            });
        }
    }
    core::Guide { name: guide.name.clone(), date: guide.date.clone(), rows }
}

fn index<'a>(bodies: impl Iterator<Item = &'a Body>) -> BTreeMap<&'a str, usize> {
    bodies.enumerate().map(|(index, body)| (body.id.as_str(), index)).collect()
}

fn named<T>(column: Named<usize>, id: impl Fn(usize) -> T) -> Named<T> {
    match column {
        Named::Any => Named::Any,
        Named::Without => Named::Without,
        Named::This(index) => Named::This(id(index)),
    }
}
