//! Ports in classes that mate alike.

use std::collections::{BTreeMap, BTreeSet};

use crate::build::Step;
use crate::fit::desk::Desk;
use crate::fit::desk::lineage::SetId;
use crate::item::{End, ItemRef, PartNumber, Port, Pose, Role};

/// The class of every port among those of its role and end.
#[derive(Debug)]
pub(super) struct PortClasses {
    of: BTreeMap<ItemRef, Vec<usize>>,
    /// For each port, which of the poses that occur it has.
    places: BTreeMap<ItemRef, Vec<usize>>,
    counts: BTreeMap<(Role, End), usize>,
}

/// A class with a port of it, the parts that bear that port, and where it bears none, by which parts its item is listed.
type Known<'c> = (usize, &'c Port, Vec<PartNumber>, BTreeSet<SetId>);

impl PortClasses {
    /// Ports of one role and end are in one class if they state the same; those of the items
    /// `apart` stay by themselves.
    pub fn new(desk: &Desk, apart: &BTreeSet<(Step, usize)>) -> Self {
        let mut classes = Self { of: BTreeMap::new(), places: BTreeMap::new(), counts: BTreeMap::new() };
        let mut poses: BTreeMap<Role, Vec<Option<Pose>>> = BTreeMap::new();
        let mut open: BTreeMap<(Role, End), Vec<Known>> = BTreeMap::new();
        let catalogue = desk.catalogue();
        for item in catalogue.items() {
            let own = Step::of(item).is_none_or(|at| apart.contains(&at));
            let body = catalogue.body(item);
            let places = body.ports.iter().map(|port| number(poses.entry(port.role).or_default(), port.pose)).collect();
            classes.places.insert(item, places);
            let of = body.ports.iter().enumerate().map(|(at, port)| {
                let end = (port.role, port.end);
                let bearing = body.bearing(port);
                let listed: BTreeSet<SetId> = desk.one_sided(item, at).iter().map(|listing| listing.other).collect();
                let alike = |(_, other, borne, with): &&Known| {
                    !own && *borne == bearing && *with == listed && mates_alike(port, other)
                };
                if let Some(&(class, ..)) = open.get(&end).into_iter().flatten().find(alike) {
                    return class;
                }
                let count = classes.counts.entry(end).or_insert_with(|| 0);
                *count += 1;
                if !own {
                    open.entry(end).or_default().push((*count - 1, port, bearing, listed));
                }
                *count - 1
            });
            let of = of.collect();
            classes.of.insert(item, of);
        }
        classes
    }

    pub fn of(&self, item: ItemRef, port: usize) -> usize {
        self.of.get(&item).expect("the ports of every item are classed")[port]
    }

    /// Equal for ports that sit at the same place of their items and look the same way.
    pub fn place_of(&self, item: ItemRef, port: usize) -> usize {
        self.places.get(&item).expect("the ports of every item are placed")[port]
    }

    pub fn count(&self, role: Role, end: End) -> usize {
        self.counts.get(&(role, end)).copied().unwrap_or_default()
    }
}

/// Which of the poses seen this one is.
fn number(seen: &mut Vec<Option<Pose>>, pose: Option<Pose>) -> usize {
    seen.iter().position(|other| *other == pose).unwrap_or_else(|| {
        seen.push(pose);
        seen.len() - 1
    })
}

/// Whether every joint but the closure judges two ports that the same parts bear the same: all but name, place and serial
/// numbers is equal. Where ports sit is asked by the closure alone ([`PortClasses::place_of`]); serial numbers by the rule on
/// presence.
fn mates_alike(a: &Port, b: &Port) -> bool {
    let looks = |port: &Port| port.pose.map(|pose| (pose.faces, pose.up));
    a.kind == b.kind && a.tolerance == b.tolerance && a.source == b.source && looks(a) == looks(b)
}
