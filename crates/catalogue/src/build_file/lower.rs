//! From the file to the core's build, naming what does not resolve.

use fitup_core::build::{
    ArmAngles, Build, Carrying, Change, Choices, Measurement, NumberRead, Presence, Seating, Side,
};
use fitup_core::fit::refusal;
use fitup_core::item::{ArmLink, Catalogue, ImplementId, ItemRef, Port, Refused, plain_number};
use fitup_core::quantity::{Angle, Length, Mass, Tool, shortest};

use super::{
    BallastFile, BuildFile, ChangeFile, MeasuredFile, NumberReadFile, OpenUpFile, PortFile, PoseFile, ToolFile,
};

/// The greatest length a build may state, in millimetres: a hundred metres. Common sense, no
/// source; it keeps a slip of the decimal point from drawing a machine as long as a street.
const LONGEST_MM: f64 = 1e5;
/// The greatest mass a build may state, in kilograms: a hundred tonnes; as above.
const HEAVIEST_KG: f64 = 1e5;

/// What a pose may stand beyond a link's limits: angles are written to a millionth of a degree.
const SLACK: Angle = Angle::from_deg(1e-5);

/// Where in a build something did not resolve.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum UnresolvedIn {
    /// The machine.
    Machine,
    /// The frame.
    Frame,
    /// The seat arrangement.
    Seat,
    /// The implement.
    Implement,
    /// An adapter.
    Adapter,
    /// Work decided on.
    Change,
    /// A measurement.
    Measured,
    /// The value of a measurement.
    MeasuredValue,
    /// The half range of a measurement.
    MeasuredHalfRange,
    /// Part numbers that were read.
    NumberRead,
    /// Something looked for.
    Looked,
    /// A serial number.
    Serial,
    /// Something on hand.
    OnHand,
    /// The trailer.
    Trailer,
    /// The site.
    Site,
    /// The digging arm's pose.
    Pose,
}

/// Something of a build that this catalogue does not have or that cannot be.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Unresolved {
    /// Where in the build.
    pub place: UnresolvedIn,
    /// The id as written, or the value that cannot be.
    pub text: String,
}

impl BuildFile {
    /// The build against `catalogue`, and everything that did not resolve. What resolves is kept,
    /// whatever else does not.
    pub fn resolve(&self, catalogue: &Catalogue) -> (Build, Vec<Unresolved>) {
        let mut find = Find { catalogue, unresolved: Vec::new() };
        let build = find.build(self);
        (build, find.unresolved)
    }
}

/// Finds an id in one table and no other.
macro_rules! in_table {
    ($table:ident) => {
        |catalogue: &Catalogue, id: &str| match catalogue.find(id) {
            Some(ItemRef::$table(id)) => Some(id),
            _ => None,
        }
    };
}

struct Find<'a> {
    catalogue: &'a Catalogue,
    unresolved: Vec<Unresolved>,
}

impl<'a> Find<'a> {
    fn build(&mut self, file: &BuildFile) -> Build {
        let machine = self.named(UnresolvedIn::Machine, file.machine.as_deref(), in_table!(Machine));
        let frame = self.named(UnresolvedIn::Frame, file.frame.as_deref(), in_table!(Frame));
        let seat = self.named(UnresolvedIn::Seat, file.seat.as_deref(), in_table!(Seat));
        let implement = self.named(UnresolvedIn::Implement, file.implement.as_deref(), in_table!(Implement));
        let adapters = file.adapters.iter();
        let adapters =
            adapters.filter_map(|id| self.named(UnresolvedIn::Adapter, Some(id), in_table!(Adapter))).collect();
        let carrying = match frame {
            Some(frame) => Carrying::Frame(frame),
            None if file.hitch => Carrying::Hitch,
            None => Carrying::Open,
        };
        let trailer = self.named(UnresolvedIn::Trailer, file.trailer.as_deref(), Catalogue::find_trailer);
        let site = self.named(UnresolvedIn::Site, file.site.as_deref(), Catalogue::find_site);
        Build {
            choices: Choices { machine, carrying, seating: seat.map_or(Seating::Open, Seating::This), implement },
            side: Side {
                adapters,
                changes: file.changes.iter().filter_map(|change| self.change(change)).collect(),
                measured: file.measured.iter().filter_map(|measured| self.measured(measured)).collect(),
                read: file.numbers_read.iter().filter_map(|read| self.number_read(read)).collect(),
                looked: file
                    .looked
                    .iter()
                    .filter_map(|looked| {
                        let item = self.item(UnresolvedIn::Looked, &looked.item)?;
                        Some(((item, looked.what.clone()), if looked.there { Presence::Yes } else { Presence::No }))
                    })
                    .collect(),
                serials: file
                    .serials
                    .iter()
                    .filter_map(|(id, &number)| Some((self.item(UnresolvedIn::Serial, id)?, number)))
                    .collect(),
                on_hand: file.on_hand.iter().filter_map(|id| self.item(UnresolvedIn::OnHand, id)).collect(),
                trailer,
                site,
                pose: file.pose.and_then(|pose| self.pose(pose, implement)),
            },
        }
    }

    fn named<T>(
        &mut self,
        place: UnresolvedIn,
        id: Option<&str>,
        find: impl Fn(&Catalogue, &str) -> Option<T>,
    ) -> Option<T> {
        let id = id?;
        let found = find(self.catalogue, id);
        self.note_unless(found.is_some(), place, id);
        found
    }

    fn item(&mut self, place: UnresolvedIn, id: &str) -> Option<ItemRef> {
        self.named(place, Some(id), Catalogue::find)
    }

    fn note_unless(&mut self, holds: bool, place: UnresolvedIn, text: &str) {
        if !holds {
            self.unresolved.push(Unresolved { place, text: text.to_owned() });
        }
    }

    fn change(&mut self, change: &ChangeFile) -> Option<Change> {
        let place = UnresolvedIn::Change;
        Some(match change {
            ChangeFile::Drill(PortFile { item, port }) => {
                Change::Drill { item: self.item(place, item)?, port: port.clone() }
            }
            ChangeFile::OpenUp(OpenUpFile { item, port, by_mm }) => {
                Change::OpenUp { item: self.item(place, item)?, port: port.clone(), by: self.length(place, *by_mm)? }
            }
            ChangeFile::DriverSeat(state) => Change::DriverSeat(state.core()),
            ChangeFile::RearSeat(state) => Change::RearSeat(state.core()),
            ChangeFile::FoldRollOverBar => Change::FoldRollOverBar,
            ChangeFile::TakeOff(what) => Change::TakeOff(self.named(place, Some(what), in_table!(Equipment))?),
            ChangeFile::PutOn(what) => Change::PutOn(self.named(place, Some(what), in_table!(Equipment))?),
            ChangeFile::Ramps(it) => Change::Ramps { length: self.extent(place, it.length_mm)? },
            ChangeFile::Gateway(it) => Change::Gateway { width: self.extent(place, it.width_mm)? },
            ChangeFile::Path(it) => Change::Path { width: self.extent(place, it.width_mm)? },
            ChangeFile::Ballast(BallastFile { mass_kg, x_mm }) => {
                let possible = mass_kg.is_finite() && (0.0..=HEAVIEST_KG).contains(mass_kg);
                self.note_unless(possible, place, &format!("{} kg", shortest(*mass_kg)));
                let x = self.length(place, *x_mm)?;
                possible.then(|| Change::Ballast { mass: Mass::from_kg(*mass_kg), x })?
            }
        })
    }

    /// A measurement that the port can have; of a dimension that it does not have the judgement tells.
    fn measured(&mut self, file: &MeasuredFile) -> Option<Measurement> {
        let (item, port) = self.port(UnresolvedIn::Measured, &file.item, &file.port)?;
        let tool = match file.tool {
            ToolFile::Caliper => Tool::Caliper,
            ToolFile::Tape => Tool::Tape,
            ToolFile::Photograph => Tool::Photograph,
        };
        let measurement = Measurement {
            plus_minus: file.plus_minus_mm.map(Length::from_mm),
            readings: file.readings_mm.iter().copied().map(Length::from_mm).collect(),
            note: file.note.clone(),
            ..Measurement::new(item, &file.port, &file.dimension, Length::from_mm(file.mm), tool)
        };
        let at = format!("{} {} {}", file.item, file.port, file.dimension);
        let mut refuse = |place, value: f64, sign: &str| {
            self.note_unless(false, place, &format!("{at}: {sign}{} mm", shortest(value)));
        };
        match refusal(port, &measurement) {
            Some(Refused::Impossible) => {
                let reading = file.readings_mm.iter().copied().find(|mm| mm.is_nan() || mm.abs() > LONGEST_MM);
                refuse(UnresolvedIn::MeasuredValue, reading.unwrap_or(file.mm), "");
                None
            }
            Some(Refused::HalfRange) => {
                let off = file.plus_minus_mm.unwrap_or(measurement.half_range().mm());
                refuse(UnresolvedIn::MeasuredHalfRange, off, "±");
                None
            }
            Some(Refused::NoPort | Refused::NoDimension) | None => Some(measurement),
        }
    }

    /// Numbers read off a port that there is, and that are some.
    fn number_read(&mut self, file: &NumberReadFile) -> Option<NumberRead> {
        let place = UnresolvedIn::NumberRead;
        let (item, _) = self.port(place, &file.item, &file.port)?;
        let NumberReadFile { port, parts, by, when, .. } = file.clone();
        let is_number = !parts.is_empty() && parts.iter().all(|part| !plain_number(part).is_empty());
        self.note_unless(is_number, place, &format!("{} {port}: \"{}\"", file.item, parts.join(" + ")));
        is_number.then_some(NumberRead { item, port, parts, by, when })
    }

    fn port(&mut self, place: UnresolvedIn, item: &str, name: &str) -> Option<(ItemRef, &'a Port)> {
        let id = item;
        let item = self.item(place, id)?;
        let port = self.catalogue.port(item, name);
        self.note_unless(port.is_some(), place, &format!("{id} {name}"));
        Some((item, port?))
    }

    /// A pose within the arm's limits; without the implement there is nothing to hold it.
    fn pose(&mut self, pose: PoseFile, implement: Option<ImplementId>) -> Option<ArmAngles> {
        let arm = implement.and_then(|id| self.catalogue.implement(id).arm);
        let mut link = |degrees: f64, link: Option<ArmLink>| {
            let angle = Angle::from_deg(degrees);
            // Written angles are rounded.
            let (least, greatest) = link.map(|link| (link.least - SLACK, link.greatest + SLACK))?;
            let possible = least <= angle && angle <= greatest;
            self.note_unless(possible, UnresolvedIn::Pose, &format!("{}°", shortest(degrees)));
            possible.then_some(angle)
        };
        let boom = link(pose.boom_deg, arm.map(|arm| arm.boom));
        let dipper = link(pose.dipper_deg, arm.map(|arm| arm.dipper));
        let bucket = link(pose.bucket_deg, arm.map(|arm| arm.bucket));
        Some(ArmAngles { boom: boom?, dipper: dipper?, bucket: bucket? })
    }

    /// A length above nothing.
    fn extent(&mut self, place: UnresolvedIn, mm: f64) -> Option<Length> {
        let length = self.length(place, mm)?;
        self.note_unless(length > Length::ZERO, place, &format!("{} mm", shortest(mm)));
        (length > Length::ZERO).then_some(length)
    }

    fn length(&mut self, place: UnresolvedIn, mm: f64) -> Option<Length> {
        let possible = mm.is_finite() && mm.abs() <= LONGEST_MM;
        self.note_unless(possible, place, &format!("{} mm", shortest(mm)));
        possible.then(|| Length::from_mm(mm))
    }
}
