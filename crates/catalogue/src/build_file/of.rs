//! From the core's build to the file.

use fitup_core::build::{ArmAngles, Build, Carrying, Change, Measurement, NumberRead, Presence};
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::quantity::{Angle, Length, Tool};

use super::{
    BUILD_FORMAT, BallastFile, BuildFile, ChangeFile, LengthFile, LookedFile, MeasuredFile, NumberReadFile, OpenUpFile,
    PortFile, PoseFile, SeatStateFile, ToolFile, WidthFile,
};

impl BuildFile {
    /// The file of a build made against `catalogue`.
    pub fn of(catalogue: &Catalogue, build: &Build) -> Self {
        let id = |item: ItemRef| catalogue.body(item).id.clone();
        Self {
            format: BUILD_FORMAT,
            machine: build.choices.machine.map(|m| id(ItemRef::Machine(m))),
            frame: build.choices.carrying.frame().map(|f| id(ItemRef::Frame(f))),
            hitch: build.choices.carrying == Carrying::Hitch,
            seat: build.choices.seating.seat().map(|s| id(ItemRef::Seat(s))),
            implement: build.choices.implement.map(|i| id(ItemRef::Implement(i))),
            adapters: build.side.adapters.iter().map(|&a| id(ItemRef::Adapter(a))).collect(),
            changes: build.side.changes.iter().map(|change| change_file(change, &id)).collect(),
            measured: build.side.measured.iter().map(|m| measured_file(m, &id)).collect(),
            numbers_read: build.side.read.iter().map(|read| read_file(read, &id)).collect(),
            looked: build
                .side
                .looked
                .iter()
                .map(|((item, what), seen)| LookedFile {
                    item: id(*item),
                    what: what.clone(),
                    there: *seen == Presence::Yes,
                })
                .collect(),
            serials: build.side.serials.iter().map(|(&item, &number)| (id(item), number)).collect(),
            on_hand: build.side.on_hand.iter().map(|&item| id(item)).collect(),
            trailer: build.side.trailer.map(|t| catalogue.trailer(t).id.clone()),
            site: build.side.site.map(|s| catalogue.site(s).id.clone()),
            pose: build.side.pose.map(pose_file),
        }
    }
}

fn change_file(change: &Change, id: &impl Fn(ItemRef) -> String) -> ChangeFile {
    match change {
        Change::Drill { item, port } => ChangeFile::Drill(PortFile { item: id(*item), port: port.clone() }),
        Change::OpenUp { item, port, by } => {
            ChangeFile::OpenUp(OpenUpFile { item: id(*item), port: port.clone(), by_mm: millimetres(*by) })
        }
        Change::DriverSeat(state) => ChangeFile::DriverSeat(SeatStateFile::of(*state)),
        Change::RearSeat(state) => ChangeFile::RearSeat(SeatStateFile::of(*state)),
        Change::FoldRollOverBar => ChangeFile::FoldRollOverBar,
        Change::TakeOff(what) => ChangeFile::TakeOff(id(ItemRef::Equipment(*what))),
        Change::PutOn(what) => ChangeFile::PutOn(id(ItemRef::Equipment(*what))),
        Change::Ramps { length } => ChangeFile::Ramps(LengthFile { length_mm: millimetres(*length) }),
        Change::Gateway { width } => ChangeFile::Gateway(WidthFile { width_mm: millimetres(*width) }),
        Change::Path { width } => ChangeFile::Path(WidthFile { width_mm: millimetres(*width) }),
        Change::Ballast { mass, x } => ChangeFile::Ballast(BallastFile { mass_kg: mass.kg(), x_mm: millimetres(*x) }),
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
            Tool::Photograph => ToolFile::Photograph,
        },
        plus_minus_mm: measured.plus_minus.map(millimetres),
        readings_mm: measured.readings.iter().map(|&reading| millimetres(reading)).collect(),
        note: measured.note.clone(),
    }
}

fn read_file(read: &NumberRead, id: &impl Fn(ItemRef) -> String) -> NumberReadFile {
    let NumberRead { item, port, parts, by, when } = read.clone();
    NumberReadFile { item: id(item), port, parts, by, when }
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
