//! Equipment: what it is for, what it adds and blocks, and that it does not contradict itself.

use super::references;
use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
use crate::wire::CatalogueFile;
use crate::wire::equipment::{AxleChange, Changes, Equipment, HydraulicChange};
use crate::wire::machine::Machine;
use crate::wire::port::End;

/// Checks the table of equipment, what machines are sold with, and what frames ask for.
pub fn equipment(file: &CatalogueFile, report: &mut Report) {
    let table = At::top("equipment");
    for (index, row) in file.equipment.iter().enumerate() {
        piece(file, row, table.index(index), report);
    }
    let table = At::top("machines");
    for (index, machine) in file.machines.iter().enumerate() {
        let at = table.index(index);
        let at = at.field("fitted");
        references::named_twice(&machine.fitted, at, report);
        for (nth, id) in machine.fitted.iter().enumerate() {
            let of = file.equipment.iter().find(|piece| piece.id == *id);
            if of.is_some_and(|piece| !piece.machines.contains(&machine.id)) {
                report.add(Problem::new(Code::FittedNotForMachine, at.index(nth)).with("found", shortened(id)));
            }
        }
    }
    let table = At::top("frames");
    for (index, frame) in file.frames.iter().enumerate() {
        let at = table.index(index);
        for (name, kinds) in [("requires", &frame.requires), ("excludes", &frame.excludes)] {
            for (nth, kind) in kinds.iter().enumerate() {
                if !file.equipment.iter().any(|piece| piece.kind == *kind) {
                    let place = at.field(name);
                    let problem = Problem::new(Code::KindOfNoEquipment, place.index(nth));
                    report.add(problem.with("found", shortened(kind)));
                }
            }
        }
    }
}

fn piece(file: &CatalogueFile, row: &Equipment, at: At<'_>, report: &mut Report) {
    if row.machines.is_empty() {
        report.add(Problem::new(Code::EquipmentForNothing, at.field("machines")));
    }
    references::named_twice(&row.machines, at.field("machines"), report);
    super::rows::not_blank(&row.kind, at.field("kind"), report);
    changes(row.changes, at.field("changes"), report);
    let ports = at.field("ports");
    let carried = row.ports.iter().enumerate().filter(|(_, port)| port.end == End::Carried);
    for (nth, _) in carried {
        report.add(Problem::new(Code::MachineCarried, ports.index(nth).field("end")));
    }
    for (nth, name) in row.blocks.iter().enumerate() {
        if row.ports.iter().any(|port| port.name == *name) {
            let problem = Problem::new(Code::EquipmentBlocksOwn, at.field("blocks").index(nth));
            report.add(problem.with("port", shortened(name)));
        }
    }
    let machines = || file.machines.iter().filter(|machine| row.machines.contains(&machine.id));
    let pieces = |of: &Machine| {
        let id = of.id.clone();
        file.equipment.iter().filter(move |piece| piece.machines.contains(&id))
    };
    let has_port = |machine: &Machine, name: &String| {
        let own = machine.ports.iter().any(|port| port.name == *name);
        own || pieces(machine).any(|piece| piece.ports.iter().any(|port| port.name == *name))
    };
    let has_shape = |machine: &Machine, name: &String| machine.shapes.iter().any(|shape| shape.name == *name);
    for (field, names, is_known) in [
        ("needs", &row.needs, &has_port as &dyn Fn(&Machine, &String) -> bool),
        ("blocks", &row.blocks, &has_port),
        ("hides", &row.hides, &has_shape),
    ] {
        for (nth, name) in names.iter().enumerate() {
            if machines().next().is_some() && !machines().any(|machine| is_known(machine, name)) {
                let problem = Problem::new(Code::EquipmentNamesNothing, at.field(field).index(nth));
                report.add(problem.with("found", shortened(name)));
            }
        }
    }
    for (nth, port) in row.ports.iter().enumerate().filter(|(_, port)| !row.blocks.contains(&port.name)) {
        let taken = |machine: &&Machine| machine.ports.iter().any(|own| own.name == port.name);
        if let Some(machine) = machines().find(taken) {
            let problem = Problem::new(Code::EquipmentPortTaken, ports.index(nth).field("name"));
            report.add(problem.with("port", shortened(&port.name)).with("machine", shortened(&machine.id)));
        }
    }
}

fn changes(changes: Option<Changes>, at: At<'_>, report: &mut Report) {
    use super::rows::not_empty;
    not_empty(changes.as_ref(), &Changes::default(), at, report);
    let Some(changes) = changes else { return };
    for (axle, place) in [(changes.rear, at.field("rear")), (changes.front, at.field("front"))] {
        not_empty(axle.as_ref(), &AxleChange::default(), place, report);
        if let Some(axle) = axle {
            super::rows::axle_change(&axle, place, report);
        }
    }
    let place = at.field("hydraulics");
    not_empty(changes.hydraulics.as_ref(), &HydraulicChange::default(), place, report);
    super::rows::lift_and_supply(changes, at, report);
}
