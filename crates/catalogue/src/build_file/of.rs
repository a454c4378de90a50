//! From the core's build to the file.

use fitup_core::build::{Build, Carrying, Change, Measurement, Presence};
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::quantity::Tool;

use super::{BuildFile, ChangeFile, LookedFile, MeasuredFile, ToolFile};

impl BuildFile {
    /// The file of a build made against `catalogue`.
    pub fn of(catalogue: &Catalogue, build: &Build) -> Self {
        let id = |item: ItemRef| catalogue.body(item).id.clone();
        Self {
            machine: build.machine.map(|m| id(ItemRef::Machine(m))),
            frame: build.carrying.frame().map(|f| id(ItemRef::Frame(f))),
            hitch: build.carrying == Carrying::Hitch,
            seat: build.seating.seat().map(|s| id(ItemRef::Seat(s))),
            implement: build.implement.map(|i| id(ItemRef::Implement(i))),
            adapters: build.adapters.iter().map(|&a| id(ItemRef::Adapter(a))).collect(),
            changes: build.changes.iter().map(|change| change_file(change, &id)).collect(),
            measured: build.measured.iter().map(|m| measured_file(m, &id)).collect(),
            looked: build
                .looked
                .iter()
                .map(|((item, what), seen)| LookedFile {
                    item: id(*item),
                    what: what.clone(),
                    there: *seen == Presence::Yes,
                })
                .collect(),
            serials: build.serials.iter().map(|(&item, &number)| (id(item), number)).collect(),
            on_hand: build.on_hand.iter().map(|&item| id(item)).collect(),
            trailer: build.trailer.map(|t| catalogue.trailer(t).id.clone()),
            site: build.site.map(|s| catalogue.site(s).id.clone()),
            ..Self::default()
        }
    }
}

fn change_file(change: &Change, id: &impl Fn(ItemRef) -> String) -> ChangeFile {
    match change {
        Change::Drill { item, port } => ChangeFile::Drill { item: id(*item), port: port.clone() },
        Change::OpenUp { item, port, by } => {
            ChangeFile::OpenUp { item: id(*item), port: port.clone(), by_mm: millimetres(*by) }
        }
        Change::FrontSeatForward => ChangeFile::FrontSeatForward,
        Change::FoldRollOverBar => ChangeFile::FoldRollOverBar,
        Change::TakeOff(what) => ChangeFile::TakeOff(what.clone()),
        Change::PutOn(what) => ChangeFile::PutOn(what.clone()),
        Change::Ramps { length } => ChangeFile::Ramps { length_mm: millimetres(*length) },
        Change::Ballast { mass, x } => ChangeFile::Ballast { mass_kg: mass.kg(), x_mm: millimetres(*x) },
    }
}

fn measured_file(measured: &Measurement, id: &impl Fn(ItemRef) -> String) -> MeasuredFile {
    MeasuredFile {
        item: id(measured.item),
        port: measured.port.clone(),
        dimension: measured.dimension.clone(),
        mm: millimetres(measured.value),
        tool: match measured.tool {
            Tool::Caliper => ToolFile::Caliper,
            Tool::Tape => ToolFile::Tape,
        },
        plus_minus_mm: measured.plus_minus.map(millimetres),
        note: measured.note.clone(),
    }
}

/// Millimetres, rounded to a nanometre so that 25.1 is not written 25.099999999999998.
fn millimetres(length: fitup_core::quantity::Length) -> f64 {
    (length.mm() * 1e6).round() / 1e6
}
