//! From the file to the core's build, naming what does not resolve.

use fitup_core::build::{ArmAngles, Build, Carrying, Change, Measurement, Presence, Seating};
use fitup_core::item::{ArmLink, Catalogue, ImplementId, ItemRef};
use fitup_core::quantity::{Angle, Length, Mass, Tool, shortest};

use super::{BuildFile, ChangeFile, MeasuredFile, PoseFile, ToolFile};

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

struct Find<'a> {
    catalogue: &'a Catalogue,
    unresolved: Vec<Unresolved>,
}

impl Find<'_> {
    fn build(&mut self, file: &BuildFile) -> Build {
        let machine = self.in_table(UnresolvedIn::Machine, file.machine.as_deref(), |item| match item {
            ItemRef::Machine(id) => Some(id),
            _ => None,
        });
        let frame = self.in_table(UnresolvedIn::Frame, file.frame.as_deref(), |item| match item {
            ItemRef::Frame(id) => Some(id),
            _ => None,
        });
        let seat = self.in_table(UnresolvedIn::Seat, file.seat.as_deref(), |item| match item {
            ItemRef::Seat(id) => Some(id),
            _ => None,
        });
        let implement = self.in_table(UnresolvedIn::Implement, file.implement.as_deref(), |item| match item {
            ItemRef::Implement(id) => Some(id),
            _ => None,
        });
        let mut adapters = Vec::new();
        for id in &file.adapters {
            adapters.extend(self.in_table(UnresolvedIn::Adapter, Some(id), |item| match item {
                ItemRef::Adapter(id) => Some(id),
                _ => None,
            }));
        }
        let carrying = match frame {
            Some(frame) => Carrying::Frame(frame),
            None if file.hitch => Carrying::Hitch,
            None => Carrying::Open,
        };
        let trailer = file.trailer.as_deref().and_then(|id| {
            let found = self.catalogue.find_trailer(id);
            self.note_unless(found.is_some(), UnresolvedIn::Trailer, id);
            found
        });
        let site = file.site.as_deref().and_then(|id| {
            let found = self.catalogue.find_site(id);
            self.note_unless(found.is_some(), UnresolvedIn::Site, id);
            found
        });
        Build {
            machine,
            carrying,
            seating: seat.map_or(Seating::Open, Seating::This),
            implement,
            adapters,
            changes: file.changes.iter().filter_map(|change| self.change(change)).collect(),
            measured: file.measured.iter().filter_map(|measured| self.measured(measured)).collect(),
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
        }
    }

    fn in_table<T>(
        &mut self,
        place: UnresolvedIn,
        id: Option<&str>,
        of_table: impl Fn(ItemRef) -> Option<T>,
    ) -> Option<T> {
        let id = id?;
        let found = self.catalogue.find(id).and_then(of_table);
        self.note_unless(found.is_some(), place, id);
        found
    }

    fn item(&mut self, place: UnresolvedIn, id: &str) -> Option<ItemRef> {
        let found = self.catalogue.find(id);
        self.note_unless(found.is_some(), place, id);
        found
    }

    fn note_unless(&mut self, holds: bool, place: UnresolvedIn, text: &str) {
        if !holds {
            self.unresolved.push(Unresolved { place, text: text.to_owned() });
        }
    }

    fn change(&mut self, change: &ChangeFile) -> Option<Change> {
        let place = UnresolvedIn::Change;
        Some(match change {
            ChangeFile::Drill { item, port } => Change::Drill { item: self.item(place, item)?, port: port.clone() },
            ChangeFile::OpenUp { item, port, by_mm } => {
                Change::OpenUp { item: self.item(place, item)?, port: port.clone(), by: self.length(place, *by_mm)? }
            }
            ChangeFile::FrontSeatForward => Change::FrontSeatForward,
            ChangeFile::FoldRollOverBar => Change::FoldRollOverBar,
            ChangeFile::TakeOff(what) => Change::TakeOff(what.clone()),
            ChangeFile::PutOn(what) => Change::PutOn(what.clone()),
            ChangeFile::Ramps { length_mm } => Change::Ramps { length: self.extent(place, *length_mm)? },
            ChangeFile::Gateway { width_mm } => Change::Gateway { width: self.extent(place, *width_mm)? },
            ChangeFile::Path { width_mm } => Change::Path { width: self.extent(place, *width_mm)? },
            ChangeFile::Ballast { mass_kg, x_mm } => {
                let possible = mass_kg.is_finite() && (0.0..=HEAVIEST_KG).contains(mass_kg);
                self.note_unless(possible, place, &format!("{} kg", shortest(*mass_kg)));
                let x = self.length(place, *x_mm)?;
                possible.then(|| Change::Ballast { mass: Mass::from_kg(*mass_kg), x })?
            }
        })
    }

    fn measured(&mut self, file: &MeasuredFile) -> Option<Measurement> {
        let place = UnresolvedIn::Measured;
        let item = self.item(place, &file.item)?;
        let has_port = self.catalogue.body(item).ports.iter().any(|port| port.name == file.port);
        self.note_unless(has_port, place, &format!("{} {}", file.item, file.port));
        let value = self.length(place, file.mm)?;
        let plus_minus = match file.plus_minus_mm {
            Some(mm) => Some(self.length(place, mm)?.abs()),
            None => None,
        };
        has_port.then(|| Measurement {
            item,
            port: file.port.clone(),
            dimension: file.dimension.clone(),
            value,
            tool: match file.tool {
                ToolFile::Caliper => Tool::Caliper,
                ToolFile::Tape => Tool::Tape,
            },
            plus_minus,
            note: file.note.clone(),
        })
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

#[cfg(test)]
mod tests {
    use fitup_core::item::{AdapterId, DiggingArm, FrameId, MachineId, Port, SeatId, SiteId, TrailerId};

    use super::*;
    use crate::link;

    /// A yard of one of everything, its arm beside an implement that has none.
    fn catalogue() -> Catalogue {
        let mut yard = fitup_yard::Yard::new();
        yard.trailer();
        yard.site();
        let (rack, auger) = (yard.port(fitup_yard::ARM, "hooks").clone(), &mut yard.catalogue.implements);
        auger.swap(0, 1);
        auger[0].body.id = "auger".into();
        auger[1].body.ports = vec![Port { name: "rack".into(), ..rack }];
        let link = |least: f64, greatest: f64| ArmLink {
            length: Length::from_m(1.0),
            least: Angle::from_deg(least),
            greatest: Angle::from_deg(greatest),
            transport: Angle::ZERO,
            mass: None,
            centre: None,
        };
        auger[1].arm = Some(DiggingArm {
            swing_x: Length::ZERO,
            foot_u: Length::ZERO,
            foot_z: Length::ZERO,
            boom: link(-30.0, 60.0),
            dipper: link(-120.0, 0.0),
            bucket: link(-90.0, 45.0),
            swing: Angle::ZERO,
            stabilisers: None,
            lift_at_full_reach: None,
        });
        yard.catalogue
    }

    #[test]
    fn what_resolves_is_kept_and_what_does_not_is_named_once() {
        let file = BuildFile {
            machine: Some("gone".into()),
            implement: Some("auger".into()),
            on_hand: vec!["auger".into(), "lost".into()],
            ..BuildFile::default()
        };
        let (build, unresolved) = file.resolve(&catalogue());
        assert_eq!(build.implement, Some(ImplementId(0)));
        assert_eq!(build.machine, None);
        assert_eq!(build.on_hand.len(), 1);
        let named: Vec<_> = unresolved.iter().map(|u| (u.place, u.text.as_str())).collect();
        assert_eq!(named, [(UnresolvedIn::Machine, "gone"), (UnresolvedIn::OnHand, "lost")]);
    }

    #[test]
    fn an_id_of_another_table_is_not_taken_for_this_one() {
        let file = BuildFile { machine: Some("auger".into()), ..BuildFile::default() };
        let (build, unresolved) = file.resolve(&catalogue());
        assert_eq!(build, Build::default());
        assert_eq!(unresolved.len(), 1);
    }

    #[test]
    fn impossible_lengths_and_masses_are_named_and_dropped() {
        let file = BuildFile {
            changes: vec![
                ChangeFile::Ballast { mass_kg: -5.0, x_mm: 0.0 },
                ChangeFile::Ramps { length_mm: -2.0 },
                ChangeFile::OpenUp { item: "auger".into(), port: "hitch".into(), by_mm: 1e9 },
            ],
            ..BuildFile::default()
        };
        let (build, unresolved) = file.resolve(&catalogue());
        assert_eq!(build.changes, []);
        assert_eq!(unresolved.iter().map(|u| u.text.as_str()).collect::<Vec<_>>(), ["-5 kg", "-2 mm", "1000000000 mm"]);
    }

    #[test]
    fn a_pose_is_within_its_arms_limits_and_needs_an_arm() {
        let catalogue = catalogue();
        let told = |file: BuildFile| {
            let (build, unresolved) = file.resolve(&catalogue);
            (build.pose.is_some(), unresolved.into_iter().map(|it| (it.place, it.text)).collect::<Vec<_>>())
        };
        let posed = |boom_deg: f64, dipper_deg: f64| BuildFile {
            implement: Some("arm".into()),
            pose: Some(PoseFile { boom_deg, dipper_deg, bucket_deg: 0.0 }),
            ..BuildFile::default()
        };
        assert_eq!(told(posed(60.0, -120.0)), (true, Vec::new()));
        let beyond = ["61°", "NaN°"].map(|text| (UnresolvedIn::Pose, text.to_owned())).to_vec();
        assert_eq!(told(posed(61.0, f64::NAN)), (false, beyond));
        let other = BuildFile { implement: Some("auger".into()), ..posed(0.0, 0.0) };
        assert_eq!(told(other), (false, Vec::new()));
    }

    #[test]
    fn a_build_survives_the_file_and_back() {
        let catalogue = catalogue();
        let arm = ItemRef::Implement(ImplementId(1));
        let length = Length::from_mm;
        let changes = vec![
            Change::Drill { item: arm, port: "rack".into() },
            Change::OpenUp { item: arm, port: "rack".into(), by: length(0.5) },
            Change::FrontSeatForward,
            Change::FoldRollOverBar,
            Change::TakeOff("belly mower".into()),
            Change::PutOn("loader base".into()),
            Change::Ramps { length: length(2600.0) },
            Change::Gateway { width: length(1250.5) },
            Change::Path { width: length(1900.0) },
            Change::Ballast { mass: Mass::from_kg(120.0), x: length(1850.0) },
        ];
        let measured = Measurement {
            item: arm,
            port: "rack".into(),
            dimension: "spread".into(),
            value: length(25.1),
            tool: Tool::Caliper,
            plus_minus: Some(length(0.05)),
            note: "cold".into(),
        };
        let degrees = Angle::from_deg;
        // Every field by its name, so that a new one cannot be left out here.
        let build = Build {
            machine: Some(MachineId(0)),
            carrying: Carrying::Frame(FrameId(0)),
            seating: Seating::This(SeatId(0)),
            implement: Some(ImplementId(1)),
            adapters: vec![AdapterId(0), AdapterId(0)],
            changes,
            measured: vec![measured],
            looked: [((arm, "spacer holes".to_owned()), Presence::No)].into_iter().collect(),
            serials: [(arm, 40_211)].into_iter().collect(),
            on_hand: [arm].into_iter().collect(),
            trailer: Some(TrailerId(0)),
            site: Some(SiteId(0)),
            pose: Some(ArmAngles { boom: degrees(31.0), dipper: degrees(-70.25), bucket: degrees(5.1) }),
        };
        let file = BuildFile::of(&catalogue, &build);
        assert_eq!(file.resolve(&catalogue), (build.clone(), Vec::new()));
        assert_eq!(link::read(&link::write(&file)).as_ref(), Ok(&file));
        let hung = Build { carrying: Carrying::Hitch, ..build };
        assert_eq!(BuildFile::of(&catalogue, &hung).resolve(&catalogue), (hung, Vec::new()));
    }
}
