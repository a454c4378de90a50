//! Whether an item has the ports that its table needs.

use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::wire::CatalogueFile;
use crate::wire::adapter::Adapter;
use crate::wire::implement::{Implement, Mount};
use crate::wire::machine::Machine;
use crate::wire::port::{End, Role};

/// Checks the ports of machines, implements and adapters against what each is.
pub fn stack(file: &CatalogueFile, report: &mut Report) {
    for (index, row) in file.machines.iter().enumerate() {
        machine(row, At::top("machines").index(index), report);
    }
    for (index, row) in file.implements.iter().enumerate() {
        implement(row, At::top("implements").index(index), report);
    }
    for (index, row) in file.adapters.iter().enumerate() {
        adapter(row, At::top("adapters").index(index), report);
    }
}

/// Nothing carries a machine.
fn machine(row: &Machine, at: At<'_>, report: &mut Report) {
    let place = at.field("ports");
    for (index, port) in row.ports.iter().enumerate() {
        if port.end == End::Carried {
            report.add(Problem::new(Code::MachineCarried, place.index(index).field("end")));
        }
    }
}

/// An implement hangs by a port of its mount's role.
fn implement(row: &Implement, at: At<'_>, report: &mut Report) {
    let (role, mount) = match row.mount {
        Mount::Rack => (Role::Rack, "rack"),
        Mount::ThreePoint => (Role::Hitch, "three_point"),
    };
    if !row.ports.iter().any(|port| port.role == role && port.end == End::Carried) {
        report.add(Problem::new(Code::MountWithoutPort, at.field("mount")).with("mount", mount));
    }
}

/// An adapter leads from what carries it to what it carries, unless it is a sleeve.
fn adapter(row: &Adapter, at: At<'_>, report: &mut Report) {
    let has = |end: End| row.ports.iter().any(|port| port.end == end);
    if row.sleeve.is_none() && !(has(End::Carried) && has(End::Carrier)) {
        report.add(Problem::new(Code::AdapterLeadsNowhere, at.field("ports")));
    }
}
