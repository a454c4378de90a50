//! From the core's build to the file.

use fitup_core::build::{ArmAngles, Build, Carrying, Change, Measurement, Presence};
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::quantity::{Angle, Length, Tool};

use super::{BUILD_FORMAT, BuildFile, ChangeFile, LookedFile, MeasuredFile, PoseFile, ToolFile};

impl BuildFile {
    /// The file of a build made against `catalogue`.
    pub fn of(catalogue: &Catalogue, build: &Build) -> Self {
        let id = |item: ItemRef| catalogue.body(item).id.clone();
        Self {
            format: BUILD_FORMAT,
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
            pose: build.pose.map(pose_file),
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
        Change::Gateway { width } => ChangeFile::Gateway { width_mm: millimetres(*width) },
        Change::Path { width } => ChangeFile::Path { width_mm: millimetres(*width) },
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

fn pose_file(pose: ArmAngles) -> PoseFile {
    let degrees = |angle: Angle| tidy(angle.deg());
    PoseFile { boom_deg: degrees(pose.boom), dipper_deg: degrees(pose.dipper), bucket_deg: degrees(pose.bucket) }
}

fn millimetres(length: Length) -> f64 {
    tidy(length.mm())
}

/// Rounded to a millionth, so that 25.1 is not written 25.099999999999998.
fn tidy(value: f64) -> f64 {
    (value * 1e6).round() / 1e6
}
