//! What contradicts itself without being wrong in form: loads that do not add up, wheels that stand in
//! one another, a thing that weighs or costs another order of magnitude than its like.

use std::collections::BTreeMap;

use fitup_core::item::{Catalogue, ImplementKind, Machine, flatten};
use fitup_core::order;
use fitup_core::quantity::{Length, Mass, shortest};

use crate::at::At;
use crate::lower::Units;
use crate::problem::{Code, Problem};
use crate::report::Report;

/// How far the axle loads together may be from the mass, as a share: scales and rounding. Common
/// practice, no source.
const LOADS_OFF: f64 = 0.03;

/// How many times lighter, heavier, cheaper or dearer than the middle of its kind something is before
/// it is asked about, and how many of the kind have to be there. No source.
const FAR: f64 = 20.0;
const FEW: usize = 3;

/// How far before or behind its axles a machine's port may be, metres. Common practice, no source.
const REACH: f64 = 2.0;

/// Checks a lowered file for what contradicts itself, if its units are known.
pub fn sense(catalogue: &Catalogue, units: Units, report: &mut Report) {
    if !units.are_known() {
        return;
    }
    let mut look = Look { units, report };
    let table = At::top("machines");
    for (index, row) in catalogue.machines.iter().enumerate() {
        let at = table.index(index);
        look.loads(row, at);
        look.wheels(row, at);
        look.ports(row, at);
    }
    let table = At::top("implements");
    for (index, row) in catalogue.implements.iter().enumerate() {
        let Some(arm) = &row.arm else { continue };
        let links: Option<f64> = [&arm.boom, &arm.dipper, &arm.bucket].iter().map(|link| link.mass.map(Mass::kg)).sum();
        if let (Some(links), Some(mass)) = (links, row.body.mass.map(|mass| mass.value.kg()).filter(|mass| *mass > 0.0))
            && links > mass
        {
            let problem = Problem::new(Code::PartsOutweighWhole, table.index(index).field("mass"));
            look.add(problem.with("found", look.units.kg(mass)).with("parts", look.units.kg(links)));
        }
    }
    look.kinds(catalogue);
}

impl Units {
    /// A mass as the file writes it, to three decimals.
    fn kg(self, kilograms: f64) -> String {
        told(self.shown_mass(kilograms))
    }

    /// A length as the file writes it, to three decimals.
    fn m(self, metres: f64) -> String {
        told(self.shown_length(metres))
    }
}

fn told(number: f64) -> String {
    shortest((number * 1e3).round() / 1e3)
}

/// Rows and what each states, by table and kind.
type ByKind = BTreeMap<(&'static str, Option<ImplementKind>), Vec<(usize, f64)>>;

struct Look<'a> {
    units: Units,
    report: &'a mut Report,
}

impl Look<'_> {
    /// Of a value that is asked about already nothing more is said.
    fn add(&mut self, problem: Problem) {
        if self.report.problems().iter().all(|known| known.path != problem.path) {
            self.report.add(problem);
        }
    }

    fn loads(&mut self, row: &Machine, at: At<'_>) {
        let units = self.units;
        for (axle, name) in [(&row.rear, "rear"), (&row.front, "front")] {
            if let (Some(load), Some(rated)) = (axle.bare_load.map(Mass::kg), axle.rated.map(Mass::kg))
                && load > rated
            {
                let problem = Problem::new(Code::LoadAboveRating, at.field(name).field("bare_load"));
                self.add(problem.with("found", units.kg(load)).with("rated", units.kg(rated)));
            }
        }
        let loads = row.rear.bare_load.zip(row.front.bare_load).map(|(rear, front)| rear.kg() + front.kg());
        if let (Some(loads), Some(mass)) = (loads, row.body.mass.map(|mass| mass.value.kg()).filter(|mass| *mass > 0.0))
            && (loads - mass).abs() > LOADS_OFF * mass
        {
            let problem = Problem::new(Code::LoadsNotMass, at.field("mass"));
            self.add(problem.with("found", units.kg(mass)).with("loads", units.kg(loads)));
        }
    }

    fn wheels(&mut self, row: &Machine, at: At<'_>) {
        let units = self.units;
        let radius = |axle: &fitup_core::item::Axle| axle.overall_radius.or(axle.static_loaded_radius).map(Length::m);
        if let (Some(rear), Some(front), Some(base)) =
            (radius(&row.rear), radius(&row.front), row.wheelbase.map(|base| base.value.m()))
            && rear + front > base
            && base > 0.0
        {
            let problem = Problem::new(Code::WheelsOverlap, at.field("wheelbase")).with("found", units.m(base));
            self.add(problem.with("rear", units.m(rear)).with("front", units.m(front)));
        }
        let outlines =
            row.body.shapes.iter().filter(|shape| shape.view != fitup_core::item::View::Plan).flat_map(flatten);
        let top = outlines.flatten().map(|(_, z)| z).fold(f64::NEG_INFINITY, f64::max);
        for (axle, name) in [(&row.rear, "rear"), (&row.front, "front")] {
            let Some(loaded) = axle.static_loaded_radius.map(Length::m) else { continue };
            if top > 0.0 && 2.0 * loaded > top {
                let problem = Problem::new(Code::TyreAboveMachine, at.field(name).field("static_loaded_radius"));
                self.add(problem.with("found", units.m(2.0 * loaded)).with("top", units.m(top)));
            }
        }
    }

    /// Ports that are metres away from the machine.
    fn ports(&mut self, row: &Machine, at: At<'_>) {
        let front = row.wheelbase.map_or(0.0, |base| base.value.m());
        let place = at.field("ports");
        for (index, port) in row.body.ports.iter().enumerate() {
            let Some(pose) = port.pose else { continue };
            let x = pose.at.x.value.m();
            if !(-REACH..=front + REACH).contains(&x) {
                let at = place.index(index);
                let at = at.field("pose");
                let at = at.field("at");
                self.add(Problem::new(Code::PortFarAway, at.field("x")).with("found", self.units.m(x)));
            }
        }
    }

    /// Masses and prices of another order of magnitude than the middle of their kind.
    fn kinds(&mut self, catalogue: &Catalogue) {
        let (mut masses, mut prices) = (ByKind::new(), ByKind::new());
        let mut note = |table, kind, index, body: &fitup_core::item::Body| {
            if let Some(mass) = body.mass.map(|mass| mass.value.kg()).filter(|mass| *mass > 0.0) {
                masses.entry((table, kind)).or_default().push((index, mass));
            }
            if let Some(price) = body.price.map(|price| price.hundredths() as f64 / 100.0).filter(|price| *price > 0.0)
            {
                prices.entry((table, kind)).or_default().push((index, price));
            }
        };
        for (index, row) in catalogue.machines.iter().enumerate() {
            note("machines", None, index, &row.body);
        }
        for (index, row) in catalogue.frames.iter().enumerate() {
            note("frames", None, index, &row.body);
        }
        for (index, row) in catalogue.implements.iter().enumerate() {
            note("implements", Some(row.kind), index, &row.body);
        }
        for (field, all) in [("mass", masses), ("price", prices)] {
            for ((table, _), rows) in all {
                let mut values: Vec<f64> = rows.iter().map(|(_, value)| *value).collect();
                order::sort(&mut values, f64::total_cmp);
                let Some(middle) = values.get(values.len() / 2).copied().filter(|_| values.len() > FEW) else {
                    continue;
                };
                for (index, value) in rows {
                    if value > FAR * middle || value * FAR < middle {
                        let shown = |value: f64| if field == "mass" { self.units.kg(value) } else { told(value) };
                        let problem = Problem::new(Code::FarFromItsKind, At::top(table).index(index).field(field));
                        self.add(problem.with("found", shown(value)).with("usual", shown(middle)));
                    }
                }
            }
        }
    }
}
