//! The guide: id strings to places in the tables.

use std::collections::BTreeMap;

use fitup_core::item as core;
use fitup_core::item::{Body, FrameId, ImplementId, MachineId, Named, SeatId};

use crate::problem::{Code, Problem};
use crate::wire::guide::Guide;

/// The guide of a file, looked up in the catalogue's tables.
pub fn guide(guide: &Guide, catalogue: &core::Catalogue, problems: &mut Vec<Problem>) -> core::Guide {
    let machines = index(catalogue.machines.iter().map(|row| &row.body));
    let frames = index(catalogue.frames.iter().map(|row| &row.body));
    let seats = index(catalogue.seats.iter().map(|row| &row.body));
    let implements = index(catalogue.implements.iter().map(|row| &row.body));
    let mut rows = Vec::with_capacity(guide.sets.len());
    for (at, set) in guide.sets.iter().enumerate() {
        let mut column = |name: &str, value: &str, table: &BTreeMap<&str, usize>| match value {
            "any" => Some(Named::Any),
            "without" => Some(Named::Without),
            id => {
                let found = table.get(id).map(|&index| Named::This(index));
                if found.is_none() {
                    let path = format!("guide.sets[{at}].{name}");
                    problems.push(Problem::new(Code::UnknownReference, path).with("found", id));
                }
                found
            }
        };
        let machine = column("machine", &set.machine, &machines);
        let frame = column("frame", &set.frame, &frames);
        let seat = column("seat", &set.seat, &seats);
        let implement = column("implement", &set.implement, &implements);
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
