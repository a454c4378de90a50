//! From the file to the core's build, naming what does not resolve.

use fitup_core::build::{Build, Carrying, Change, Measurement, Presence, Seating};
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::quantity::{Length, Mass, Tool, shortest};

use super::{BuildFile, ChangeFile, MeasuredFile, ToolFile};

/// The greatest length a build may state, in millimetres: a hundred metres. Common sense, no
/// source; it keeps a slip of the decimal point from drawing a machine as long as a street.
const LONGEST_MM: f64 = 1e5;
/// The greatest mass a build may state, in kilograms: a hundred tonnes; as above.
const HEAVIEST_KG: f64 = 1e5;

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
            ChangeFile::Ramps { length_mm } => {
                let length = self.length(place, *length_mm)?;
                self.note_unless(length > Length::ZERO, place, &format!("{} mm", shortest(*length_mm)));
                (length > Length::ZERO).then_some(Change::Ramps { length })?
            }
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

    fn length(&mut self, place: UnresolvedIn, mm: f64) -> Option<Length> {
        let possible = mm.is_finite() && mm.abs() <= LONGEST_MM;
        self.note_unless(possible, place, &format!("{} mm", shortest(mm)));
        possible.then(|| Length::from_mm(mm))
    }
}

#[cfg(test)]
mod tests {
    use fitup_core::item::{Body, Implement, ImplementId, ImplementKind, Mount};

    use super::*;

    fn catalogue() -> Catalogue {
        let implement = Implement {
            body: Body { id: "auger".into(), ..Body::default() },
            kind: ImplementKind::Auger,
            mount: Mount::ThreePoint,
            arm: None,
            console: None,
            worked_from_seat: false,
            hydraulics: None,
            power_least: None,
            power_most: None,
            own_seat: false,
            transport_width: None,
        };
        Catalogue { implements: vec![implement], ..Catalogue::default() }
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
    fn a_build_survives_the_file_and_back() {
        let catalogue = catalogue();
        let auger = ItemRef::Implement(ImplementId(0));
        let mut build = Build { implement: Some(ImplementId(0)), carrying: Carrying::Hitch, ..Build::default() };
        build.changes.push(Change::TakeOff("belly mower".into()));
        build.changes.push(Change::Ballast { mass: Mass::from_kg(120.0), x: Length::from_mm(1850.0) });
        build.changes.push(Change::Ramps { length: Length::from_mm(2600.0) });
        build.looked.insert((auger, "spacer holes".into()), Presence::No);
        build.serials.insert(auger, 40_211);
        build.on_hand.insert(auger);
        let file = BuildFile::of(&catalogue, &build);
        assert_eq!(file.resolve(&catalogue), (build, Vec::new()));
    }
}
