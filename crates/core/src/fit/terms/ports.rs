//! Ports in classes that mate alike.

use crate::build::Step;
use crate::item::{Catalogue, End, ItemRef, PartNumber, Port, Role};
use crate::ordered::{Map, Set};

/// The class of every port among those of its role and end.
#[derive(Debug)]
pub(super) struct PortClasses {
    of: Map<ItemRef, Vec<usize>>,
    counts: Map<(Role, End), usize>,
}

/// A class with a port of it and the parts that bear that port.
type Known<'c> = (usize, &'c Port, Vec<PartNumber>);

impl PortClasses {
    /// Ports of one role and end are in one class if they state the same; those of the items
    /// `apart` stay by themselves.
    pub fn new(catalogue: &Catalogue, apart: &Set<(Step, usize)>) -> Self {
        let mut classes = Self { of: Map::new(), counts: Map::new() };
        let mut open: Map<(Role, End), Vec<Known>> = Map::new();
        for item in catalogue.items() {
            let own = Step::of(item).is_none_or(|at| apart.contains(&at));
            let body = catalogue.body(item);
            let of = body.ports.iter().map(|port| {
                let end = (port.role, port.end);
                let bearing = body.bearing(port);
                let alike = |(_, other, borne): &&Known| !own && *borne == bearing && mates_alike(port, other);
                if let Some(&(class, ..)) = open.get(&end).into_iter().flatten().find(alike) {
                    return class;
                }
                let count = classes.counts.or_insert_with(end, || 0);
                *count += 1;
                if !own {
                    open.or_insert_with(end, Vec::new).push((*count - 1, port, bearing));
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

    pub fn count(&self, role: Role, end: End) -> usize {
        self.counts.get(&(role, end)).copied().unwrap_or_default()
    }
}

/// Whether every joint but the closure judges two ports that the same parts bear the same: all but name, place and serial
/// numbers is equal. Where ports sit is asked by the closure alone, which is judged for each pair
/// of items; serial numbers by the rule on presence.
fn mates_alike(a: &Port, b: &Port) -> bool {
    a.kind == b.kind && a.tolerance == b.tolerance && a.source == b.source
}
