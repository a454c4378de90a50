//! A catalogue laid out for judging: what can be worked out once is worked out once.

pub(crate) mod joined;
pub(crate) mod lineage;
pub(crate) mod low_edges;
pub(crate) mod outline;
pub(crate) mod plate_pair;
pub(crate) mod solid;

use std::collections::BTreeMap;

use std::sync::{Arc, OnceLock};

use crate::build::Side;
use crate::item::{
    Catalogue, End, FrameId, ImplementId, ItemRef, Machine, MachineId, Named, Port, Role, SeatId, Switched, View,
};
use crate::order;
use crate::quantity::Length;
use lineage::{PartSets, SetId};
use low_edges::{LowEdge, low_edges};
use outline::{FlatShape, flat_shapes};
use plate_pair::{PlatePair, PlatePairs};
use solid::Solids;

/// A catalogue with its listings and lineage indexed. Everything that judges starts from here.
#[derive(Debug, Clone)]
pub struct Desk {
    /// As it stands: each machine with its equipment.
    catalogue: Catalogue,
    /// The machines of the list, without their equipment.
    listed: Arc<Vec<Machine>>,
    /// What was put on or taken off.
    switched: Switched,
    /// The same catalogue with other equipment on, as it was first asked for.
    other: OnceLock<Box<Desk>>,
    sets: PartSets,
    /// Set of parts that bears a port, by item and port index.
    port_sets: BTreeMap<(ItemRef, usize), SetId>,
    /// What lists a pair of items, smaller item first.
    pairs: BTreeMap<(ItemRef, ItemRef), ListedBy>,
    listings: BTreeMap<Role, Vec<Listing>>,
    /// By ports of which no part number is known: what lists their item.
    one_sided: BTreeMap<(ItemRef, usize), Vec<OneSided>>,
    outlines: BTreeMap<ItemRef, Outline>,
    solids: BTreeMap<ItemRef, Solids>,
    plate_pairs: PlatePairs,
    /// The seat arrangements that name an item as going with them, by its id.
    naming: BTreeMap<String, Vec<SeatId>>,
}

/// An item's shapes, and what of them the ground may come against, worked out when first asked for.
#[derive(Debug, Clone)]
struct Outline {
    shapes: Vec<FlatShape>,
    low: OnceLock<Vec<LowEdge>>,
}

/// All the rest follows from the catalogue.
impl PartialEq for Desk {
    fn eq(&self, other: &Self) -> bool {
        self.catalogue == other.catalogue
    }
}

/// What lists two items together.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum ListedBy {
    /// This row of the guide.
    Guide(usize),
    /// The maker's own pairing outside the guide.
    Maker,
}

impl ListedBy {
    /// The guide's row, if it is the guide.
    pub const fn guide_row(self) -> Option<usize> {
        match self {
            Self::Guide(row) => Some(row),
            Self::Maker => None,
        }
    }
}

/// A joint of two items that the maker lists together.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Listing {
    /// Parts that bear the carrier's port.
    pub carrier: SetId,
    /// Parts that bear the carried port.
    pub carried: SetId,
    /// The two items.
    pub witness: (ItemRef, ItemRef),
    /// What lists it.
    pub by: ListedBy,
}

/// The half of a listing that bears known parts, for a port that bears none.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct OneSided {
    /// Parts that bear the other port.
    pub other: SetId,
    /// The item that has it.
    pub witness: ItemRef,
    /// What lists it.
    pub by: ListedBy,
}

impl Desk {
    /// Lays out a catalogue, each machine with the equipment that it is sold with.
    pub fn new(catalogue: Catalogue) -> Self {
        let listed = Arc::new(catalogue.machines.clone());
        Self::with(catalogue, listed, Switched::new())
    }

    /// This desk with the equipment on that a build has on: it is worked out once for each.
    pub fn standing(&self, side: &Side) -> &Self {
        let switched = side.switched();
        let mut desk = self;
        while desk.switched != switched {
            desk = desk.other.get_or_init(|| {
                Box::new(Self::with(self.catalogue.clone(), Arc::clone(&self.listed), switched.clone()))
            });
        }
        desk
    }

    /// The catalogue of the list: its machines without their equipment.
    pub fn listed_catalogue(&self) -> Catalogue {
        Catalogue { machines: self.listed.to_vec(), ..self.catalogue.clone() }
    }

    fn with(mut catalogue: Catalogue, listed: Arc<Vec<Machine>>, switched: Switched) -> Self {
        catalogue.machines = listed.iter().map(|machine| catalogue.standing(machine, &switched)).collect();
        let mut sets = PartSets::default();
        let mut port_sets = BTreeMap::new();
        for item in catalogue.items() {
            let body = catalogue.body(item);
            for (index, port) in body.ports.iter().enumerate() {
                if let Some(set) = sets.intern(&body.bearing(port)) {
                    port_sets.insert((item, index), set);
                }
            }
        }
        sets.link(&catalogue.parts);
        let pairs = listed_pairs(&catalogue);
        let outlines: BTreeMap<ItemRef, Outline> = catalogue
            .items()
            .map(|item| (item, Outline { shapes: flat_shapes(&catalogue, item), low: OnceLock::new() }))
            .collect();
        let solids = outlines.iter().map(|(&item, it)| (item, Solids::of(&catalogue, item, &it.shapes))).collect();
        let plate_pairs = PlatePairs::of(&catalogue);
        let listings = BTreeMap::new();
        let naming = naming(&catalogue);
        let one_sided = BTreeMap::new();
        let mut desk = Self {
            catalogue,
            listed,
            switched,
            other: OnceLock::new(),
            sets,
            port_sets,
            pairs,
            listings,
            one_sided,
            outlines,
            solids,
            plate_pairs,
            naming,
        };
        desk.listings = desk.find_listings();
        desk.one_sided = desk.find_one_sided();
        desk
    }

    /// The catalogue as it stands: each machine with its equipment.
    pub const fn catalogue(&self) -> &Catalogue {
        &self.catalogue
    }

    /// An item's flattened shapes, arms in their transport pose.
    pub fn outline(&self, item: ItemRef) -> &[FlatShape] {
        self.outlines.get(&item).map_or(&[], |outline| outline.shapes.as_slice())
    }

    /// Edges of an item's side view that the ground may come against, in its own axes.
    pub(crate) fn low_edges(&self, item: ItemRef) -> &[LowEdge] {
        let Some(outline) = self.outlines.get(&item) else { return &[] };
        outline.low.get_or_init(|| low_edges(&outline.shapes, &self.catalogue.body(item).underside))
    }

    /// What of an item others have to keep clear of.
    pub(crate) fn solids(&self, item: ItemRef) -> Option<&Solids> {
        self.solids.get(&item)
    }

    /// The foremost x of an item's side outline, in its own axes.
    pub(crate) fn foremost(&self, item: ItemRef) -> Option<Length> {
        let side = self.outline(item).iter().filter(|shape| shape.view == View::Side);
        let points = side.flat_map(|shape| shape.runs.iter().flatten());
        points.map(|&(x, _)| Length::from_m(x)).reduce(Length::max)
    }

    /// The lay of a carried port's pattern on a carrier's.
    pub(crate) fn plate_pair(&self, carrier: (ItemRef, usize), carried: (ItemRef, usize)) -> Option<&PlatePair> {
        self.plate_pairs.of_ports(carrier, carried)
    }

    /// The seat arrangements that name the item of this id as going with them.
    pub(crate) fn seats_naming(&self, id: &str) -> &[SeatId] {
        self.naming.get(id).map_or(&[], Vec::as_slice)
    }

    pub(crate) const fn sets(&self) -> &PartSets {
        &self.sets
    }

    pub(crate) fn port_set(&self, item: ItemRef, port: usize) -> Option<SetId> {
        self.port_sets.get(&(item, port)).copied()
    }

    /// Whether the maker lists two items together, and where.
    pub fn listed(&self, a: ItemRef, b: ItemRef) -> Option<ListedBy> {
        self.pairs.get(&ordered(a, b)).copied()
    }

    /// The items listed together with `item` that stand after it in the order of items.
    pub(crate) fn listed_after(&self, item: ItemRef) -> impl Iterator<Item = ItemRef> + '_ {
        let pairs = self.pairs.range((item, item)..).take_while(move |((first, _), _)| *first == item);
        pairs.map(|((_, second), _)| *second)
    }

    /// Like [`Desk::listed`], for a joint of `role`: a set that is carried by a frame says
    /// nothing about the hitch, neither for it nor against what the maker says elsewhere.
    pub(crate) fn listed_at(&self, role: Role, a: ItemRef, b: ItemRef) -> Option<ListedBy> {
        let row = self.listed(a, b)?;
        if role != Role::Hitch {
            return Some(row);
        }
        let guide = self.catalogue.guide.as_ref();
        match row {
            ListedBy::Maker => Some(row),
            ListedBy::Guide(_) => guide?
                .rows
                .iter()
                .position(|row| matches!(row.frame, Named::Without) && row.names_both(a, b))
                .map(ListedBy::Guide)
                .or_else(|| self.is_paired(a, b).then_some(ListedBy::Maker)),
        }
    }

    /// Whether the maker pairs two items outside the guide.
    fn is_paired(&self, a: ItemRef, b: ItemRef) -> bool {
        let (a, b) = (self.catalogue.body(a), self.catalogue.body(b));
        a.listed_with.contains(&b.id) || b.listed_with.contains(&a.id)
    }

    pub(crate) fn listings(&self, role: Role) -> &[Listing] {
        self.listings.get(&role).map_or(&[], Vec::as_slice)
    }

    /// What lists the item of a port that bears no known part, by the parts on the other side.
    pub(crate) fn one_sided(&self, item: ItemRef, port: usize) -> &[OneSided] {
        self.one_sided.get(&(item, port)).map_or(&[], Vec::as_slice)
    }

    /// A listing of two items speaks of a port that bears no known part only where the item has no other port of its role: it
    /// cannot be taken for another then.
    fn find_one_sided(&self) -> BTreeMap<(ItemRef, usize), Vec<OneSided>> {
        let mut found: BTreeMap<(ItemRef, usize), Vec<OneSided>> = BTreeMap::new();
        for &(a, b) in self.pairs.keys() {
            for (x, y) in [(a, b), (b, a)] {
                let (ports, others) = (&self.catalogue.body(x).ports, &self.catalogue.body(y).ports);
                for (at, port) in ports.iter().enumerate() {
                    let twins =
                        |all: &[Port], end| all.iter().filter(|it| it.role == port.role && it.end == end).count();
                    let other_end = if port.end == End::Carrier { End::Carried } else { End::Carrier };
                    let meets = |it: &&Port| it.role == port.role && it.end == other_end;
                    let is_clear = twins(ports, port.end) == 1 && twins(others, other_end) == 1;
                    let Some(other) = others.iter().position(|it| meets(&it)).filter(|_| is_clear) else { continue };
                    let (None, Some(other), Some(by)) =
                        (self.port_set(x, at), self.port_set(y, other), self.listed_at(port.role, x, y))
                    else {
                        continue;
                    };
                    found.entry((x, at)).or_default().push(OneSided { other, witness: y, by });
                }
            }
        }
        for all in found.values_mut() {
            order::sort(all, Ord::cmp);
        }
        found
    }

    fn find_listings(&self) -> BTreeMap<Role, Vec<Listing>> {
        let mut found: BTreeMap<Role, BTreeMap<(SetId, SetId), Listing>> = BTreeMap::new();
        for &(a, b) in self.pairs.keys() {
            for (x, y) in [(a, b), (b, a)] {
                for (i, carrier) in self.catalogue.body(x).ports.iter().enumerate() {
                    for (j, carried) in self.catalogue.body(y).ports.iter().enumerate() {
                        if carrier.role != carried.role || carrier.end != End::Carrier || carried.end != End::Carried {
                            continue;
                        }
                        let (Some(p), Some(q), Some(by)) =
                            (self.port_set(x, i), self.port_set(y, j), self.listed_at(carrier.role, x, y))
                        else {
                            continue;
                        };
                        let listing = Listing { carrier: p, carried: q, witness: (x, y), by };
                        found.entry(carrier.role).or_default().entry((p, q)).or_insert_with(|| listing);
                    }
                }
            }
        }
        found.into_iter().map(|(role, by_sets)| (role, by_sets.into_values().collect())).collect()
    }
}

fn ordered(a: ItemRef, b: ItemRef) -> (ItemRef, ItemRef) {
    if a <= b { (a, b) } else { (b, a) }
}

fn listed_pairs(catalogue: &Catalogue) -> BTreeMap<(ItemRef, ItemRef), ListedBy> {
    let mut pairs = Vec::new();
    let mut add = |a: ItemRef, b: ItemRef, by: ListedBy| pairs.push((ordered(a, b), by));
    for (index, row) in catalogue.guide.iter().flat_map(|guide| guide.rows.iter().enumerate()) {
        let columns: [Column; 4] = [
            column(row.machine, catalogue.machines.len(), |i| ItemRef::Machine(MachineId::at(i)), MachineId::index),
            column(row.frame, catalogue.frames.len(), |i| ItemRef::Frame(FrameId::at(i)), FrameId::index),
            column(row.seat, catalogue.seats.len(), |i| ItemRef::Seat(SeatId::at(i)), SeatId::index),
            column(
                row.implement,
                catalogue.implements.len(),
                |i| ItemRef::Implement(ImplementId::at(i)),
                ImplementId::index,
            ),
        ];
        for (first, left) in columns.iter().enumerate() {
            for right in &columns[first + 1..] {
                // Two columns of "any" say nothing about a pair.
                if left.by_name || right.by_name {
                    for &a in &left.items {
                        for &b in &right.items {
                            add(a, b, ListedBy::Guide(index));
                        }
                    }
                }
            }
        }
    }
    for item in catalogue.items() {
        for id in &catalogue.body(item).listed_with {
            if let Some(other) = catalogue.find(id) {
                add(item, other, ListedBy::Maker);
            }
        }
    }
    // Of all that list a pair the first counts.
    pairs.into_iter().rev().collect()
}

fn naming(catalogue: &Catalogue) -> BTreeMap<String, Vec<SeatId>> {
    let mut naming: BTreeMap<String, Vec<SeatId>> = BTreeMap::new();
    for (at, seat) in catalogue.seats.iter().enumerate() {
        for id in &seat.body.listed_with {
            naming.entry(id.clone()).or_default().push(SeatId::at(at));
        }
    }
    naming
}

struct Column {
    items: Vec<ItemRef>,
    by_name: bool,
}

fn column<T: Copy>(
    named: Named<T>,
    rows: usize,
    item: impl Fn(usize) -> ItemRef,
    index: impl Fn(T) -> usize,
) -> Column {
    match named {
        Named::Any => Column { items: (0..rows).map(item).collect(), by_name: false },
        Named::Without => Column { items: Vec::new(), by_name: false },
        Named::This(id) => Column { items: vec![item(index(id))], by_name: true },
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::CatalogueName;

    #[test]
    fn desks_are_alike_whose_catalogues_are() {
        let desk = |name: &str| {
            let name = CatalogueName { name: name.to_owned(), ..CatalogueName::default() };
            Desk::new(Catalogue { name, ..Catalogue::default() })
        };
        assert!(desk("yard") == desk("yard") && desk("yard") != desk("shed"));
    }
}
