//! What one build holds, put into another.

use fitup_core::build::{Build, Change, Step};
use fitup_core::item::Catalogue;

use super::{Edit, Pick};

/// `build` with everything that `more` holds put in, edit by edit, as a reader would.
pub fn merge(catalogue: &Catalogue, build: &Build, more: &Build) -> Build {
    edits(more).into_iter().fold(build.clone(), |build, edit| edit.apply(catalogue, &build))
}

/// The edits that put in what a build holds: the choices first, since another choice takes out what went with the one
/// before it.
fn edits(of: &Build) -> Vec<Edit> {
    let side = &of.side;
    let mut edits: Vec<Edit> = Step::ALL.into_iter().filter_map(|step| Pick::of(of, step)).map(Edit::Choose).collect();
    edits.extend(side.trailer.map(|trailer| Edit::Trailer(Some(trailer))));
    edits.extend(side.site.map(|site| Edit::Site(Some(site))));
    edits.extend(side.adapters.iter().copied().map(Edit::AddAdapter));
    edits.extend(side.changes.iter().cloned().map(put_in));
    edits.push(Edit::Measure(side.measured.clone()));
    edits.extend(side.read.iter().cloned().map(Edit::Read));
    edits.extend(side.looked.iter().map(|((item, what), &seen)| Edit::Look(*item, what.clone(), Some(seen))));
    edits.extend(side.serials.iter().map(|(&item, &number)| Edit::Serial(item, Some(number))));
    edits.extend(side.on_hand.iter().map(|&item| Edit::OnHand(item, true)));
    edits.extend(side.pose.map(Edit::Pose));
    edits
}

/// The edit that makes a change: of some kinds there is one in a build, and another takes its place.
fn put_in(change: Change) -> Edit {
    match change {
        Change::Ramps { length } => Edit::Ramps(length),
        Change::Gateway { width } => Edit::Gateway(width),
        Change::Path { width } => Edit::Path(width),
        Change::Ballast { mass, x } => Edit::Ballast(mass, x),
        work => Edit::Decide(work),
    }
}

#[cfg(test)]
mod tests {
    use fitup_core::build::{ArmAngles, Carrying, Choices, Measurement, NumberRead, Presence, Seating};
    use fitup_core::item::{AdapterId, FrameId, ImplementId, ItemRef, MachineId, SeatId, SeatState, SiteId, TrailerId};
    use fitup_core::quantity::{Angle, Length, Mass, Tool};

    use super::*;

    const MACHINE: ItemRef = ItemRef::Machine(MachineId(0));

    fn measured(mm: f64) -> Measurement {
        Measurement {
            item: MACHINE,
            port: "rack".into(),
            dimension: "spread".into(),
            value: Length::from_mm(mm),
            tool: Tool::Tape,
            plus_minus: None,
            readings: Vec::new(),
            note: String::new(),
        }
    }

    /// A build that has something of everything.
    fn full() -> Build {
        let choices = Choices {
            machine: Some(MachineId(0)),
            carrying: Carrying::Frame(FrameId(1)),
            seating: Seating::This(SeatId(2)),
            implement: Some(ImplementId(3)),
        };
        Build::from(choices).changed(|build| {
            let side = &mut build.side;
            side.adapters = vec![AdapterId(0), AdapterId(0)];
            side.changes = vec![
                Change::Drill { item: MACHINE, port: "rack".into() },
                Change::DriverSeat(SeatState::Folded),
                Change::Ramps { length: Length::from_m(2.0) },
                Change::Gateway { width: Length::from_m(1.5) },
                Change::Path { width: Length::from_m(1.8) },
                Change::Ballast { mass: Mass::from_kg(40.0), x: Length::from_m(1.6) },
            ];
            side.measured = vec![measured(412.0)];
            let (port, parts) = ("rack".to_owned(), vec!["HP-1".to_owned()]);
            side.read = vec![NumberRead { item: MACHINE, port, parts, by: String::new(), when: String::new() }];
            side.looked.insert((MACHINE, "cab".into()), Presence::No);
            side.serials.insert(MACHINE, 40_123);
            side.on_hand.insert(MACHINE);
            side.trailer = Some(TrailerId(0));
            side.site = Some(SiteId(0));
            side.pose = Some(ArmAngles { boom: Angle::ZERO, dipper: Angle::ZERO, bucket: Angle::ZERO });
        })
    }

    #[test]
    fn a_whole_build_put_into_nothing_is_that_build() {
        assert_eq!(merge(&Catalogue::default(), &Build::default(), &full()), full());
    }

    #[test]
    fn nothing_put_into_a_build_leaves_it() {
        assert_eq!(merge(&Catalogue::default(), &full(), &Build::default()), full());
    }

    #[test]
    fn what_stands_once_is_replaced_and_the_rest_stays() {
        let more = Build::default().changed(|build| {
            build.side.measured.push(measured(415.0));
            build.side.looked.insert((MACHINE, "cab".into()), Presence::Yes);
            build.side.changes.push(Change::Ramps { length: Length::from_m(3.0) });
        });
        let merged = merge(&Catalogue::default(), &full(), &more);
        assert_eq!(merged.side.measured, [measured(415.0)]);
        assert_eq!(merged.side.looked[&(MACHINE, "cab".into())], Presence::Yes);
        assert_eq!((merged.ramps(), merged.side.changes.len()), (Some(Length::from_m(3.0)), 6));
        assert_eq!((merged.choices, merged.side.serials), (full().choices, full().side.serials));
    }
}
