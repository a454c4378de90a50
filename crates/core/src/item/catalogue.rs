//! The whole catalogue, with its tables indexed.

use std::collections::BTreeMap;

use super::{
    Adapter, AdapterId, Body, Equipment, EquipmentId, Frame, FrameId, Guide, Implement, ImplementId, ItemRef, Machine,
    MachineId, Part, PartNumber, Port, Seat, SeatId, Site, SiteId, Trailer, TrailerId,
};

/// What the catalogue calls itself.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct CatalogueName {
    /// Name.
    pub name: String,
    /// Edition or date.
    pub edition: String,
    /// A note shown with results, such as that the data are invented.
    pub notice: String,
    /// Currency code of every price, ISO 4217.
    pub currency: String,
}

/// A dealer's catalogue.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Catalogue {
    /// What it calls itself.
    pub name: CatalogueName,
    /// Machines.
    pub machines: Vec<Machine>,
    /// Mounting frames.
    pub frames: Vec<Frame>,
    /// Seat arrangements.
    pub seats: Vec<Seat>,
    /// Implements.
    pub implements: Vec<Implement>,
    /// Adapters.
    pub adapters: Vec<Adapter>,
    /// Equipment.
    pub equipment: Vec<Equipment>,
    /// Trailers.
    pub trailers: Vec<Trailer>,
    /// Sites.
    pub sites: Vec<Site>,
    /// Parts by number.
    pub parts: BTreeMap<PartNumber, Part>,
    /// The guide, if there is one.
    pub guide: Option<Guide>,
}

impl Catalogue {
    /// The machine of an id this catalogue gave out.
    pub fn machine(&self, id: MachineId) -> &Machine {
        &self.machines[id.index()]
    }

    /// The frame of an id this catalogue gave out.
    pub fn frame(&self, id: FrameId) -> &Frame {
        &self.frames[id.index()]
    }

    /// The seat arrangement of an id this catalogue gave out.
    pub fn seat(&self, id: SeatId) -> &Seat {
        &self.seats[id.index()]
    }

    /// The implement of an id this catalogue gave out.
    pub fn implement(&self, id: ImplementId) -> &Implement {
        &self.implements[id.index()]
    }

    /// The adapter of an id this catalogue gave out.
    pub fn adapter(&self, id: AdapterId) -> &Adapter {
        &self.adapters[id.index()]
    }

    /// The piece of equipment of an id this catalogue gave out.
    pub fn equipment(&self, id: EquipmentId) -> &Equipment {
        &self.equipment[id.index()]
    }

    /// The trailer of an id this catalogue gave out.
    pub fn trailer(&self, id: TrailerId) -> &Trailer {
        &self.trailers[id.index()]
    }

    /// The site of an id this catalogue gave out.
    pub fn site(&self, id: SiteId) -> &Site {
        &self.sites[id.index()]
    }

    /// What every item has, of any item.
    pub fn body(&self, item: ItemRef) -> &Body {
        match item {
            ItemRef::Machine(id) => &self.machine(id).body,
            ItemRef::Frame(id) => &self.frame(id).body,
            ItemRef::Seat(id) => &self.seat(id).body,
            ItemRef::Implement(id) => &self.implement(id).body,
            ItemRef::Adapter(id) => &self.adapter(id).body,
            ItemRef::Equipment(id) => &self.equipment(id).body,
        }
    }

    /// Every item, tables in order.
    pub fn items(&self) -> impl Iterator<Item = ItemRef> + '_ {
        (0..self.machines.len())
            .map(|i| ItemRef::Machine(MachineId::at(i)))
            .chain((0..self.frames.len()).map(|i| ItemRef::Frame(FrameId::at(i))))
            .chain((0..self.seats.len()).map(|i| ItemRef::Seat(SeatId::at(i))))
            .chain((0..self.implements.len()).map(|i| ItemRef::Implement(ImplementId::at(i))))
            .chain((0..self.adapters.len()).map(|i| ItemRef::Adapter(AdapterId::at(i))))
            .chain((0..self.equipment.len()).map(|i| ItemRef::Equipment(EquipmentId::at(i))))
    }

    /// The item whose row has this id.
    pub fn find(&self, id: &str) -> Option<ItemRef> {
        self.items().find(|&item| self.body(item).id == id)
    }

    /// A port of an item by its name; of a machine also one that a piece of equipment for it adds.
    pub fn port(&self, item: ItemRef, name: &str) -> Option<&Port> {
        let own = &self.body(item).ports;
        let pieces = self
            .equipment
            .iter()
            .filter(|piece| matches!(item, ItemRef::Machine(_)) && piece.machines.contains(&self.body(item).id));
        own.iter().chain(pieces.flat_map(|piece| &piece.body.ports)).find(|port| port.name == name)
    }

    /// Whether a machine as it stands has a piece of a kind on it.
    pub fn has_on(&self, machine: MachineId, kind: &str) -> bool {
        self.machine(machine).on.iter().any(|on| self.equipment(on.id).kind == kind)
    }

    /// The pieces of equipment that are for a machine.
    pub fn equipment_for(&self, machine: MachineId) -> impl Iterator<Item = (EquipmentId, &Equipment)> {
        let id = &self.machine(machine).body.id;
        let all = self.equipment.iter().enumerate().map(|(at, piece)| (EquipmentId::at(at), piece));
        all.filter(move |(_, piece)| piece.machines.contains(id))
    }

    /// The trailer whose row has this id.
    pub fn find_trailer(&self, id: &str) -> Option<TrailerId> {
        self.trailers.iter().position(|row| row.id == id).map(TrailerId::at)
    }

    /// The site whose row has this id.
    pub fn find_site(&self, id: &str) -> Option<SiteId> {
        self.sites.iter().position(|row| row.id == id).map(SiteId::at)
    }
}
