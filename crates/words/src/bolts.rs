//! The bolt list in words: a line for the bolts that are alike, one for each kind of hole to make.

use fitup_core::fit::mating::thread::{System, Thread};
use fitup_core::fit::{Bolts, BoltsInto, HoleToMake};
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::quantity::Length;

use crate::reader::LengthStyle;
use crate::words::{Arg, Words};
use crate::{Reader, Units};

impl Words {
    /// The bolts of a joint, and after them a line for each kind of hole to make.
    pub fn bolt_lines(&self, catalogue: &Catalogue, bolts: &Bolts) -> Vec<String> {
        let mut lines = vec![self.bolts(catalogue, bolts)];
        lines.extend(self.holes_to_make(catalogue, bolts));
        lines
    }

    /// How many, which, how long, on what.
    fn bolts(&self, catalogue: &Catalogue, bolts: &Bolts) -> String {
        let part = |length: Length| Arg::from(self.reader().length(length, LengthStyle::Part));
        let item = |item: ItemRef| Arg::from(self.item(catalogue, item));
        let made = self.made_in(bolts);
        let named = bolts.thread.clone().or_else(|| bolts.size.map(|size| made.length(size, LengthStyle::Part)));
        let mut said = vec![match (bolts.number, named) {
            (Some(number), Some(thread)) => {
                self.ui("bolts-number", &[("number", number.into()), ("thread", thread.into())])
            }
            (None, Some(thread)) => self.ui("bolts-thread", &[("thread", thread.into())]),
            (Some(number), None) => self.ui("bolts-number-alone", &[("number", number.into())]),
            (None, None) => self.ui("bolts-as-in-manual", &[]),
        }];
        if bolts.on_both_sides {
            said.push(self.ui("bolts-on-both-sides", &[]));
        }
        said.push(match (bolts.length, bolts.grip) {
            (Some(length), Some(grip)) => self
                .ui("bolts-length", &[("length", made.length(length, LengthStyle::Part).into()), ("grip", part(grip))]),
            (None, Some(grip)) => self.ui("bolts-grip", &[("grip", part(grip))]),
            _ => self.ui("bolts-length-unknown", &[]),
        });
        match bolts.into {
            BoltsInto::Nuts => said.push(self.ui("bolts-nuts", &[])),
            BoltsInto::Tapped(of) => said.push(self.ui("bolts-tapped", &[("item", item(of))])),
            BoltsInto::Unknown => {}
        }
        if let Some(washers) = bolts.washers().filter(|washers| *washers > 0) {
            said.push(self.ui("bolts-washers", &[("count", washers.into())]));
        }
        said.extend(bolts.plate_washers.iter().map(|of| self.ui("bolts-plate-washer", &[("item", item(*of))])));
        match (&bolts.class, bolts.torque) {
            (None, None) => said.push(self.ui("bolts-class-and-torque-unknown", &[])),
            (class, torque) => {
                said.push(match class {
                    Some(class) => self.ui("bolts-class", &[("class", class.as_str().into())]),
                    None => self.ui("bolts-class-unknown", &[]),
                });
                said.push(match torque {
                    Some(torque) => self.ui("bolts-torque", &[("torque", self.reader().torque(torque).into())]),
                    None => self.ui("bolts-torque-unknown", &[]),
                });
            }
        }
        let ends = [bolts.carrier, bolts.carried].map(|item| catalogue.body(item).label.clone());
        let role = self.ui(
            "bolts-joint",
            &[
                ("role", self.role(bolts.role).into()),
                ("carrier", ends[0].as_str().into()),
                ("carried", ends[1].as_str().into()),
            ],
        );
        self.labelled(&role, &self.clauses(&said))
    }

    /// The reader of a bolt's own sizes: a metric bolt is bought in millimetres, one of inches in inches.
    fn made_in(&self, bolts: &Bolts) -> Reader {
        let reader = self.reader();
        let system = bolts.thread.as_deref().and_then(Thread::read).map(|thread| thread.system);
        let is_whole_mm = |size: Length| (size.mm() - size.mm().round()).abs() < 0.01;
        let units = match (system, bolts.size) {
            (Some(System::Metric), _) => Units::Metric,
            (Some(System::Inch), _) => Units::Us,
            (None, Some(size)) if is_whole_mm(size) => Units::Metric,
            (None, _) => reader.units,
        };
        Reader::new(reader.lang, units)
    }

    /// Holes that differ in their place alone are told once.
    fn holes_to_make(&self, catalogue: &Catalogue, bolts: &Bolts) -> Vec<String> {
        let mut lines: Vec<(&HoleToMake, usize)> = Vec::new();
        for hole in &bolts.holes {
            let alike = |known: &HoleToMake| HoleToMake { u: hole.u, v: hole.v, ..known.clone() } == *hole;
            match lines.iter_mut().find(|(known, _)| alike(known)) {
                Some((_, count)) => *count += 1,
                None => lines.push((hole, 1)),
            }
        }
        lines.into_iter().map(|(hole, count)| self.hole_to_make(catalogue, hole, count)).collect()
    }

    fn hole_to_make(&self, catalogue: &Catalogue, hole: &HoleToMake, count: usize) -> String {
        let part = |length: Length| Arg::from(self.reader().length(length, LengthStyle::Part));
        let key = if hole.is_opened { "bolts-open" } else { "bolts-drill" };
        let done = self.ui(
            key,
            &[
                ("count", count.into()),
                ("diameter", part(hole.diameter)),
                ("item", self.item(catalogue, hole.item).into()),
                ("port", hole.port.as_str().into()),
            ],
        );
        let edge = match hole.to_edge {
            Some(edge) => self.ui("bolts-edge", &[("edge", part(edge)), ("least", part(hole.least_to_edge))]),
            None => self.ui("bolts-edge-unknown", &[("least", part(hole.least_to_edge))]),
        };
        self.clauses(&[done, edge])
    }
}
