//! The units in the yard: the catalogue's ports as they were found there, and where joints then put what they carry.

use std::borrow::Cow;
use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};

use super::anchors;
use super::found::{found, refusal};
use crate::build::{Joined, Placement, Side};
use crate::fit::desk::Desk;
use crate::fit::desk::joined::{brought, stands};
use crate::fit::desk::plate_pair::{PlatePair, compare};
use crate::item::{Body, ItemRef, Port, PortKind};
use crate::space::RigidMotion;

/// An item and the index of a port of it.
type PortRef = (ItemRef, usize);

/// The ports that differ from the catalogue's by what was measured or looked for.
#[derive(Debug, Default)]
pub(crate) struct Units {
    ports: BTreeMap<PortRef, Port>,
    /// Plates of which at least one was found otherwise than drawn, laid on each other when that was first asked for.
    pairs: RefCell<BTreeMap<[Plate; 2], Option<PlatePair>>>,
}

/// A plate: one of the catalogue's patterns by its number, or as it was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Plate {
    Drawn(usize),
    Found(PortRef),
}

impl Units {
    /// What the side says of the units.
    pub fn of(desk: &Desk, side: &Side) -> Self {
        let mut ports = BTreeMap::new();
        let looked = side.looked.keys().map(|(item, _)| *item);
        let items: BTreeSet<ItemRef> = side.measured.iter().map(|measured| measured.item).chain(looked).collect();
        for item in items {
            let body = desk.catalogue().body(item);
            let changed = body.ports.iter().enumerate();
            ports.extend(changed.filter_map(|(index, port)| Some(((item, index), found(side, item, port)?))));
            enter_anchors(body, side, item, &mut ports);
        }
        Self { ports, pairs: RefCell::default() }
    }

    /// A port as it was found, or else as it is drawn.
    pub fn port<'p>(&'p self, desk: &'p Desk, port: PortRef) -> &'p Port {
        self.ports.get(&port).unwrap_or_else(|| &desk.catalogue().body(port.0).ports[port.1])
    }

    /// Whether a port was found otherwise than drawn.
    pub fn is_found(&self, port: PortRef) -> bool {
        self.ports.contains_key(&port)
    }

    /// The lay of a carried port's pattern on a carrier's, as both were found.
    pub fn plate_pair<'p>(&self, desk: &'p Desk, carrier: PortRef, carried: PortRef) -> Option<Cow<'p, PlatePair>> {
        if !self.is_found(carrier) && !self.is_found(carried) {
            return desk.plate_pair(carrier, carried).map(Cow::Borrowed);
        }
        let kinds = [carrier, carried].map(|port| &self.port(desk, port).kind);
        let (a, b) = kinds[0].pattern().zip(kinds[1].pattern())?;
        let plate = |port| match desk.lays_as(port) {
            Some(number) if !self.is_found(port) => Plate::Drawn(number),
            _ => Plate::Found(port),
        };
        let mut pairs = self.pairs.borrow_mut();
        pairs.entry([plate(carrier), plate(carried)]).or_insert_with(|| compare(a, b)).clone().map(Cow::Owned)
    }

    /// The motion from the carried item's axes into its carrier's; `None` if a port does not say where it is.
    pub fn brought(&self, desk: &Desk, carrier: PortRef, carried: PortRef) -> Option<RigidMotion> {
        let [on, of] = [carrier, carried].map(|port| self.port(desk, port));
        let is_plate = |port: &Port| !matches!(port.kind, PortKind::Pins(_));
        let pair = if is_plate(on) { self.plate_pair(desk, carrier, carried) } else { None };
        brought(on, of, pair.as_deref())
    }

    /// The units as what says where joints put things.
    pub const fn at<'p>(&'p self, desk: &'p Desk) -> AtUnits<'p> {
        AtUnits { units: self, desk }
    }
}

/// Where joints of the units put what they carry.
pub(crate) struct AtUnits<'p> {
    units: &'p Units,
    desk: &'p Desk,
}

impl Joined for AtUnits<'_> {
    fn joined(&self, carrier: PortRef, carried: PortRef) -> Option<Placement> {
        stands(&self.units.brought(self.desk, carrier, carried)?)
    }
}

/// Enters what was measured from anchor to anchor of an item.
fn enter_anchors(body: &Body, side: &Side, item: ItemRef, changed: &mut BTreeMap<PortRef, Port>) {
    let of = |name: &str| side.measured.iter().rev().find(|m| m.item == item && m.dimension == name);
    for measured in anchors::NAMES.into_iter().filter_map(of) {
        let Some(at) = anchors::anchors(body, &measured.port) else { continue };
        if refusal(&body.ports[at[1]], measured).is_some() {
            continue;
        }
        let port = |index: usize| changed.get(&(item, index)).unwrap_or(&body.ports[index]).clone();
        let mut both = at.map(port);
        anchors::enter(&mut both, [0, 1], measured);
        changed.extend(at.map(|index| (item, index)).into_iter().zip(both));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::build::{Build, Choices, Measurement};
    use crate::fit::context::Context;
    use crate::item::{End, MachineId, Role};
    use crate::quantity::{Length, Tool};
    use crate::search::tests::catalogues;
    use crate::search::tests::chance::Chance;

    #[test]
    fn an_item_stands_where_its_ports_were_found() {
        let mut moved = 0;
        for seed in 0..400 {
            let chance = &Chance::new(seed);
            let desk = Desk::new(catalogues::catalogue(chance));
            let build = Build { side: Side::default(), ..catalogues::build(chance, desk.catalogue()) };
            let before = Context::new(&desk, &build).stack;
            for joint in &before.joints {
                let (carrier, carried) = (before.placed[joint.carrier.0], before.placed[joint.carried.0]);
                let port = &desk.catalogue().body(carrier.item).ports[joint.carrier.1];
                let Some((pose, was)) = port.pose.zip(carried.placement) else { continue };
                let is_placed_by_it = matches!(joint.role, Role::AxleAnchor | Role::Rack);
                if !is_placed_by_it || carrier.placement.is_none_or(|at| at.pitch != crate::quantity::Angle::ZERO) {
                    continue;
                }
                let higher = pose.at.z.value + Length::from_mm(40.0);
                let entry = Measurement::new(carrier.item, port.name.clone(), "at-z", higher, Tool::Tape);
                let side = Side { measured: vec![entry], ..Side::default() };
                let measured = Build { side, ..build.clone() };
                let after = Context::new(&desk, &measured).stack;
                let now = after.placement(carried.item).expect("it stands where it was measured");
                let up = now.at.z - was.at.z;
                assert!((up - Length::from_mm(40.0)).abs() < Length::from_mm(1e-9), "seed {seed}: {up:?}");
                moved += 1;
            }
        }
        assert!(moved > 20, "{moved}");
    }

    #[test]
    fn a_plate_is_laid_as_it_was_found_and_only_once() {
        let (mut laid, mut asked, mut kept) = (0, 0, 0);
        for seed in 0..100 {
            let desk = Desk::new(catalogues::catalogue(&Chance::new(seed)));
            let machine = ItemRef::Machine(MachineId::at(0));
            let ports = &desk.catalogue().body(machine).ports;
            let axle = ports.iter().position(|port| port.role == Role::AxleAnchor && port.end == End::Carrier);
            let Some((at, hole)) = axle.and_then(|at| Some((at, ports[at].kind.pattern()?.holes.first()?))) else {
                continue;
            };
            let wide = hole.u.value + Length::from_mm(7.0);
            let entry = Measurement::new(machine, ports[at].name.clone(), "hole-1-u", wide, Tool::Caliper);
            let units = Units::of(&desk, &Side { measured: vec![entry], ..Side::default() });
            let choices = Choices { machine: Some(MachineId::at(0)), ..Choices::default() };
            assert_eq!(Build { choices, ..Build::default() }.items(), [machine]);
            for frame in desk.catalogue().items().filter(|item| matches!(item, ItemRef::Frame(_))) {
                for (index, port) in desk.catalogue().body(frame).ports.iter().enumerate() {
                    let Some(own) = port.kind.pattern().filter(|_| port.role == Role::AxleAnchor) else { continue };
                    let found = units.plate_pair(&desk, (machine, at), (frame, index)).map(Cow::into_owned);
                    let measured = units.port(&desk, (machine, at)).kind.pattern().expect("a pattern still");
                    assert_eq!(found, compare(measured, own));
                    laid += usize::from(found.is_some());
                    asked += 1;
                }
            }
            kept += units.pairs.borrow().len();
        }
        assert!(laid > 20 && kept < asked, "{laid} {kept} {asked}");
    }
}
