//! Part numbers that were read off the units, against those that the catalogue lists.

use std::collections::{BTreeMap, BTreeSet};

use crate::build::{Build, NumberRead};
use crate::finding::{ChainStep, ReadOff};
use crate::fit::desk::Desk;
use crate::fit::desk::lineage::{PartSets, SetId};
use crate::item::{ItemRef, PartNumber, plain_number};

/// What was read off the piece that bears a port.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Read {
    /// The numbers as the catalogue writes them, where it knows them.
    pub parts: Vec<PartNumber>,
    /// The numbers that the catalogue lists for the port; none if it lists none.
    pub listed: Vec<PartNumber>,
    /// Whether the numbers read are not those that are listed.
    pub differs: bool,
    off: ReadOff,
}

/// What was read of each port of a build's items, by item and index of the port.
pub(crate) fn read(desk: &Desk, build: &Build) -> BTreeMap<(ItemRef, usize), Read> {
    let mut all = BTreeMap::new();
    if build.side.read.is_empty() {
        return all;
    }
    let items = build.items();
    for entry in build.side.read.iter().filter(|entry| items.contains(&entry.item)) {
        let body = desk.catalogue().body(entry.item);
        let Some(index) = body.ports.iter().position(|port| port.name == entry.port) else { continue };
        let parts = as_written(entry, desk.sets());
        if !parts.is_empty() {
            let listed = body.bearing(&body.ports[index]);
            let set = |numbers: &[PartNumber]| numbers.iter().cloned().collect::<BTreeSet<_>>();
            let differs = !listed.is_empty() && set(&listed) != set(&parts);
            let NumberRead { item, port, by, when, .. } = entry.clone();
            let off = ReadOff { item, port, parts: parts.clone(), by, when };
            all.insert((entry.item, index), Read { parts, listed, differs, off });
        }
    }
    all
}

/// The numbers read, as the catalogue writes them.
fn as_written(entry: &NumberRead, sets: &PartSets) -> Vec<PartNumber> {
    let mut parts: Vec<PartNumber> = Vec::new();
    for number in entry.parts.iter().map(|number| number.trim()).filter(|number| !plain_number(number).is_empty()) {
        let number = sets.as_written(number).cloned().unwrap_or_else(|| number.to_owned());
        if !parts.contains(&number) {
            parts.push(number);
        }
    }
    parts
}

/// The parts that bear a port: as read, else as listed.
pub(crate) enum Borne<'c> {
    /// As the catalogue lists them.
    Listed(SetId),
    /// As they were read.
    Read(&'c Read, Option<SetId>),
}

impl<'c> Borne<'c> {
    pub fn of(desk: &Desk, read: Option<&'c Read>, item: ItemRef, port: usize) -> Option<Self> {
        match read {
            Some(read) => Some(Self::Read(read, desk.sets().find(&read.parts))),
            None => desk.port_set(item, port).map(Self::Listed),
        }
    }

    /// Steps by which they serve for a listed set.
    pub fn serves(&self, desk: &Desk, want: SetId) -> Option<Vec<ChainStep>> {
        match self {
            Self::Listed(have) | Self::Read(_, Some(have)) => desk.sets().serves(*have, want).map(<[_]>::to_vec),
            Self::Read(read, None) => desk.sets().serves_unlisted(&read.parts, want, &desk.catalogue().parts),
        }
    }

    /// The numbers.
    pub fn numbers(&self, desk: &Desk) -> Vec<PartNumber> {
        match self {
            Self::Listed(set) => desk.sets().numbers(*set),
            Self::Read(read, _) => read.parts.clone(),
        }
    }
}

impl Read {
    /// As evidence names it.
    pub fn evidence(&self) -> ReadOff {
        self.off.clone()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::build::Choices;
    use crate::fit::context::Context;
    use crate::item::{Body, MachineId};
    use crate::search::tests::catalogues;
    use crate::search::tests::chance::Chance;

    fn entry(parts: &[&str]) -> NumberRead {
        NumberRead {
            item: ItemRef::Machine(MachineId::at(0)),
            port: "plate".to_owned(),
            parts: parts.iter().map(|&part| part.to_owned()).collect(),
            by: "the workshop".to_owned(),
            when: "today".to_owned(),
        }
    }

    #[test]
    fn a_number_is_read_as_the_catalogue_writes_it_whatever_stands_between_its_letters() {
        let mut sets = PartSets::default();
        sets.intern(&["AX-1104", "AX-11 05"].map(str::to_owned));
        let read = |parts: &[&str]| as_written(&entry(parts), &sets);
        assert_eq!(read(&["ax 1104"]), ["AX-1104"]);
        assert_eq!(read(&["AX1105", " AX-1105 ", ""]), ["AX-11 05"]);
        assert_eq!(read(&["QQ-1"]), ["QQ-1"], "one that nobody lists stays as it was read");
    }

    #[test]
    fn of_two_readings_of_one_port_the_later_counts_and_unknown_ports_say_nothing() {
        let catalogue = catalogues::catalogue(&Chance::new(3));
        let item = ItemRef::Machine(MachineId::at(0));
        let choices = Choices { machine: Some(MachineId::at(0)), ..Choices::default() };
        let mut build = Build { choices, ..Build::default() };
        let body: &Body = catalogue.body(item);
        let port = body.ports[0].name.clone();
        for number in ["first", "second"] {
            build.side.read.push(NumberRead { port: port.clone(), ..entry(&[number]) });
        }
        build.side.read.push(NumberRead { port: "no such".to_owned(), ..entry(&["third"]) });
        let desk = Desk::new(catalogue);
        let found = read(&desk, &build);
        assert_eq!(found.keys().copied().collect::<Vec<_>>(), [(item, 0)]);
        assert_eq!(found[&(item, 0)].parts, ["second"]);
        assert_eq!(Context::new(&desk, &build).bearing(item, 0), ["second"]);
    }
}
