//! Edits of a build: each takes a build and leaves another.

use fitup_core::build::{ArmAngles, Build, Change, Measurement, NumberRead, Presence, Seating, Step, assembly};
use fitup_core::item::{AdapterId, Catalogue, EquipmentId, ItemRef, MachineId, SiteId, TrailerId};
use fitup_core::quantity::{Length, Mass};

use super::Pick;

/// One thing the user does to a build.
#[derive(Debug, Clone, PartialEq)]
pub enum Edit {
    /// Pick something in a step.
    Choose(Pick),
    /// Take the pick of a step out.
    Clear(Step),
    /// Take everything out.
    Empty,
    /// Enter measurements, each in place of an older one of the same dimension.
    Measure(Vec<Measurement>),
    /// Forget a measurement.
    Forget {
        /// The item.
        item: ItemRef,
        /// Its port.
        port: String,
        /// The dimension.
        dimension: String,
    },
    /// Enter part numbers that were read off a port, in place of older ones.
    Read(NumberRead),
    /// Forget the part numbers that were read off a port.
    Unread(ItemRef, String),
    /// Say whether something is there; `None` = not looked.
    Look(ItemRef, String, Option<Presence>),
    /// Say which serial number the unit has.
    Serial(ItemRef, Option<u64>),
    /// Put equipment on the machine, or take it off.
    Equip(EquipmentId, bool),
    /// Say whether an item is on hand.
    OnHand(ItemRef, bool),
    /// Put an adapter in.
    AddAdapter(AdapterId),
    /// Take the adapter at a place of the list out.
    RemoveAdapter(usize),
    /// Decide on work.
    Decide(Change),
    /// Drop work that was decided on.
    Drop(Change),
    /// Ramps of this length in place of the trailer's own.
    Ramps(Length),
    /// A gateway of this width in place of the site's own.
    Gateway(Length),
    /// A path of this width behind the gateway in place of the site's own.
    Path(Length),
    /// The digging arm shown in this pose.
    Pose(ArmAngles),
    /// Ballast of this mass at this place, in place of what hung there; a mass of zero takes it off.
    Ballast(Mass, Length),
    /// Choose a trailer, or none.
    Trailer(Option<TrailerId>),
    /// Choose a site, or none.
    Site(Option<SiteId>),
    /// Take another build whole: a remedy, a saved build, one that an option leads to.
    Take(Box<Build>),
}

impl Edit {
    /// The build after the edit.
    pub fn apply(self, catalogue: &Catalogue, build: &Build) -> Build {
        let mut next = build.clone();
        match self {
            Self::Choose(pick) => {
                pick.step.choose(&mut next, pick.option);
                settle(catalogue, build, &mut next);
            }
            Self::Clear(step) => {
                step.clear(&mut next);
                settle(catalogue, build, &mut next);
            }
            Self::Empty => next = Build::default(),
            Self::Measure(all) => {
                for measured in all {
                    forget(&mut next, measured.item, &measured.port, &measured.dimension);
                    next.side.measured.push(measured);
                }
            }
            Self::Forget { item, port, dimension } => forget(&mut next, item, &port, &dimension),
            Self::Read(read) => {
                unread(&mut next, read.item, &read.port);
                next.side.read.push(read);
            }
            Self::Unread(item, port) => unread(&mut next, item, &port),
            Self::Look(item, what, Some(seen)) => {
                next.side.looked.insert((item, what), seen);
            }
            Self::Look(item, what, None) => {
                next.side.looked.remove(&(item, what));
            }
            Self::Serial(item, Some(number)) => {
                next.side.serials.insert(item, number);
            }
            Self::Serial(item, None) => {
                next.side.serials.remove(&item);
            }
            Self::Equip(id, is_on) => equip(catalogue, &mut next, id, is_on),
            Self::OnHand(item, true) => {
                next.side.on_hand.insert(item);
            }
            Self::OnHand(item, false) => {
                next.side.on_hand.remove(&item);
            }
            Self::AddAdapter(id) => next.side.adapters.push(id),
            Self::RemoveAdapter(at) => {
                if at < next.side.adapters.len() {
                    next.side.adapters.remove(at);
                }
            }
            Self::Decide(Change::PutOn(id)) => equip(catalogue, &mut next, id, true),
            Self::Decide(Change::TakeOff(id)) => equip(catalogue, &mut next, id, false),
            Self::Decide(change) => {
                if !next.side.changes.contains(&change) {
                    next.side.changes.push(change);
                }
            }
            Self::Drop(change) => next.side.changes.retain(|kept| *kept != change),
            Self::Ramps(length) => instead(&mut next, Change::Ramps { length }),
            Self::Gateway(width) => instead(&mut next, Change::Gateway { width }),
            Self::Path(width) => instead(&mut next, Change::Path { width }),
            Self::Pose(pose) => next.side.pose = Some(pose),
            Self::Ballast(mass, x) => next.hang(mass, x),
            Self::Trailer(trailer) => {
                // Other ramps belong to the trailer they were tried with.
                next.side.changes.retain(|change| !matches!(change, Change::Ramps { .. }));
                next.side.trailer = trailer;
            }
            Self::Site(site) => {
                // So do other widths to the site.
                next.side.changes.retain(|change| !matches!(change, Change::Gateway { .. } | Change::Path { .. }));
                next.side.site = site;
            }
            Self::Take(whole) => next = *whole,
        }
        next
    }
}

/// Has equipment on the machine or off it; where it is sold so, nothing is left to decide.
fn equip(catalogue: &Catalogue, build: &mut Build, id: EquipmentId, is_on: bool) {
    build.side.changes.retain(|change| !matches!(change, Change::PutOn(of) | Change::TakeOff(of) if *of == id));
    let fitted = |machine: MachineId| catalogue.machine(machine).fitted.contains(&catalogue.equipment(id).body.id);
    if build.choices.machine.is_none_or(|machine| fitted(machine) != is_on) {
        build.side.changes.push(if is_on { Change::PutOn(id) } else { Change::TakeOff(id) });
    }
}

/// Puts a change in place of one of its kind.
fn instead(build: &mut Build, change: Change) {
    build.side.changes.retain(|kept| std::mem::discriminant(kept) != std::mem::discriminant(&change));
    build.side.changes.push(change);
}

fn forget(build: &mut Build, item: ItemRef, port: &str, dimension: &str) {
    build.side.measured.retain(|m| !(m.item == item && m.port == port && m.dimension == dimension));
}

fn unread(build: &mut Build, item: ItemRef, port: &str) {
    build.side.read.retain(|read| !(read.item == item && read.port == port));
}

/// After another pick: adapters that had a place before and have none now go, and so does work
/// on items that left. Measurements stay: they are true of the unit whatever it is tried with.
fn settle(catalogue: &Catalogue, before: &Build, after: &mut Build) {
    if !after.side.adapters.is_empty() {
        let was_loose = assembly(catalogue, before).unplaced().loose.clone();
        for &loose in &assembly(catalogue, after).unplaced().loose {
            if let ItemRef::Adapter(id) = loose
                && !was_loose.contains(&loose)
                && let Some(at) = after.side.adapters.iter().position(|&adapter| adapter == id)
            {
                after.side.adapters.remove(at);
            }
        }
    }
    let items = after.items();
    after.side.changes.retain(|change| match change {
        Change::Drill { item, .. } | Change::OpenUp { item, .. } => items.contains(item),
        Change::DriverSeat(_) | Change::RearSeat(_) => after.choices.seating != Seating::Open,
        Change::TakeOff(id) | Change::PutOn(id) => {
            after.choices.machine.is_some_and(|machine| catalogue.equipment_for(machine).any(|(piece, _)| piece == *id))
        }
        Change::FoldRollOverBar
        | Change::Ramps { .. }
        | Change::Gateway { .. }
        | Change::Path { .. }
        | Change::Ballast { .. } => true,
    });
    // A pose is within the limits of its own arm.
    if after.choices.implement != before.choices.implement {
        after.side.pose = None;
    }
}

#[cfg(test)]
mod tests {
    use fitup_core::item::ImplementId;
    use fitup_core::quantity::{Angle, Tool};

    use super::*;

    const ARM: ItemRef = ItemRef::Implement(ImplementId(0));

    fn measured(mm: f64) -> Edit {
        Edit::Measure(vec![Measurement {
            item: ARM,
            port: "rack".into(),
            dimension: "spread".into(),
            value: Length::from_mm(mm),
            tool: Tool::Tape,
            plus_minus: None,
            readings: Vec::new(),
            note: String::new(),
        }])
    }

    fn after(edits: impl IntoIterator<Item = Edit>) -> Build {
        let catalogue = Catalogue::default();
        edits.into_iter().fold(Build::default(), |build, edit| edit.apply(&catalogue, &build))
    }

    #[test]
    fn the_order_of_the_steps_does_not_matter() {
        let picks = [(Step::Machine, 1), (Step::Frame, 1), (Step::Seat, 2), (Step::Implement, 0)]
            .map(|(step, option)| Pick { step, option });
        let forward = after(picks.map(Edit::Choose));
        let mut turned = picks;
        turned.reverse();
        assert_eq!(after(turned.map(Edit::Choose)), forward);
        assert!(forward.is_complete());
    }

    #[test]
    fn a_second_measurement_takes_the_place_of_the_first() {
        let build = after([measured(410.0), measured(412.0)]);
        assert_eq!(build.side.measured.len(), 1);
        assert_eq!(build.side.measured[0].value, Length::from_mm(412.0));
        let forgotten = Edit::Forget { item: ARM, port: "rack".into(), dimension: "spread".into() };
        assert_eq!(after([measured(410.0), forgotten]), Build::default());
    }

    #[test]
    fn work_on_an_item_leaves_with_the_item_and_measurements_stay() {
        let drill = Edit::Decide(Change::Drill { item: ARM, port: "rack".into() });
        let build = after([
            Edit::Choose(Pick { step: Step::Implement, option: 0 }),
            drill,
            measured(410.0),
            Edit::Choose(Pick { step: Step::Implement, option: 1 }),
        ]);
        assert_eq!(build.side.changes, []);
        assert_eq!(build.side.measured.len(), 1);
    }

    #[test]
    fn deciding_twice_is_deciding_once_and_dropping_undoes_it() {
        let change = Change::FoldRollOverBar;
        let decide = || Edit::Decide(change.clone());
        assert_eq!(after([decide(), decide()]).side.changes.len(), 1);
        assert_eq!(after([decide(), Edit::Drop(change.clone())]), Build::default());
    }

    #[test]
    fn a_slider_let_go_again_leaves_one_change_and_none_at_nothing() {
        let hang = |kg: f64| Edit::Ballast(Mass::from_kg(kg), Length::from_mm(1800.0));
        let build =
            after([hang(20.0), hang(45.0), Edit::Ramps(Length::from_mm(1500.0)), Edit::Ramps(Length::from_m(2.0))]);
        let ballast = Change::Ballast { mass: Mass::from_kg(45.0), x: Length::from_mm(1800.0) };
        assert_eq!(build.side.changes, [ballast, Change::Ramps { length: Length::from_m(2.0) }]);
        assert_eq!(after([hang(20.0), hang(0.0)]), Build::default());
        assert_eq!(after([Edit::Ramps(Length::from_m(2.0)), Edit::Trailer(None)]), Build::default());
    }

    #[test]
    fn widths_leave_with_their_site_and_a_pose_with_its_implement() {
        let wide = |mm: f64| Edit::Gateway(Length::from_mm(mm));
        let site = Edit::Site(Some(SiteId(0)));
        let kept = after([site, wide(1500.0), Edit::Path(Length::from_m(2.0)), wide(1800.0)]);
        assert_eq!((kept.gateway(), kept.path()), (Some(Length::from_mm(1800.0)), Some(Length::from_m(2.0))));
        assert_eq!(kept.side.changes.len(), 2);
        assert_eq!(after([wide(1500.0), Edit::Path(Length::from_m(2.0)), Edit::Site(None)]), Build::default());
        let angle = Angle::from_deg(20.0);
        let pose = ArmAngles { boom: angle, dipper: -angle, bucket: angle };
        let arm = |option| Edit::Choose(Pick { step: Step::Implement, option });
        assert_eq!(after([arm(0), Edit::Pose(pose), arm(0)]).side.pose, Some(pose));
        assert_eq!(after([arm(0), Edit::Pose(pose), arm(1)]).side.pose, None);
    }

    #[test]
    fn removing_an_adapter_that_is_not_there_changes_nothing() {
        assert_eq!(after([Edit::RemoveAdapter(3)]), Build::default());
    }
}
