//! Sizes far from those that such things have: mostly a number in another unit than the header's.

use fitup_core::item::{Body, Catalogue};
use fitup_core::quantity::{Flow, Length, Mass, Power, Pressure, Stated, shortest};

use crate::at::At;
use crate::lower::Units;
use crate::problem::{Code, Problem};
use crate::report::Report;

/// Metres or kilograms from the least to the greatest that is taken without a word.
type Usual = [f64; 2];

// Wide enough for everything between a garden tractor and a road train, narrow enough that a number in another unit, ten
// times too great or a thousand times too small, stands out. Common practice, no source.
const WHEELBASE: Usual = [0.5, 6.0];
const TRACK: Usual = [0.3, 4.0];
const RADIUS: Usual = [0.1, 1.5];
const LINK: Usual = [0.1, 12.0];
const DECK: Usual = [0.5, 20.0];
const GATE: Usual = [0.3, 30.0];
const MACHINE: Usual = [50.0, 30_000.0];
const ITEM: Usual = [0.01, 30_000.0];
const PRESSURE: Usual = [1e6, 5e7];
const FLOW: Usual = [1.0 / 60_000.0, 500.0 / 60_000.0];
const POWER: Usual = [500.0, 500_000.0];
/// Between the ends of a link's range, radians: an arm that moves less moves nothing.
const RANGE: Usual = [0.1, std::f64::consts::TAU];

/// Checks the sizes that a lowered file tells, if its units are known.
pub fn sizes(catalogue: &Catalogue, units: Units, report: &mut Report) {
    if !units.are_known() {
        return;
    }
    let mut look = Look { units, report };
    let table = At::top("machines");
    for (index, row) in catalogue.machines.iter().enumerate() {
        let at = table.index(index);
        look.mass(row.body.mass.map(value), MACHINE, at.field("mass"));
        look.length(row.wheelbase.map(value), WHEELBASE, at.field("wheelbase"));
        look.flow(row.hydraulics.flow, at.field("hydraulics").field("flow"));
        look.pressure(row.hydraulics.relief, at.field("hydraulics").field("relief"));
        for (axle, name) in [(&row.rear, "rear"), (&row.front, "front")] {
            let at = at.field(name);
            look.length(axle.track, TRACK, at.field("track"));
            look.length(axle.static_loaded_radius, RADIUS, at.field("static_loaded_radius"));
        }
    }
    let table = At::top("implements");
    for (index, row) in catalogue.implements.iter().enumerate() {
        let at = table.index(index);
        look.power(row.power_least, at.field("power_least"));
        look.power(row.power_most, at.field("power_most"));
        if let Some(need) = &row.hydraulics {
            let at = at.field("hydraulics");
            look.flow(need.flow_min, at.field("flow_min"));
            look.flow(need.flow_max, at.field("flow_max"));
            look.pressure(need.pressure_min, at.field("pressure_min"));
            look.pressure(need.pressure_max, at.field("pressure_max"));
        }
        let Some(arm) = &row.arm else { continue };
        let at = at.field("arm");
        for (link, name) in [(&arm.boom, "boom"), (&arm.dipper, "dipper"), (&arm.bucket, "bucket")] {
            look.length(Some(link.length), LINK, at.field(name).field("length"));
            let range = link.greatest.rad() - link.least.rad();
            look.number(Some(range), RANGE, |it| units.shown_angle(it), at.field(name).field("greatest"));
        }
    }
    let bodies: [(&str, &mut dyn Iterator<Item = &Body>); 5] = [
        ("frames", &mut catalogue.frames.iter().map(|row| &row.body)),
        ("seats", &mut catalogue.seats.iter().map(|row| &row.body)),
        ("implements", &mut catalogue.implements.iter().map(|row| &row.body)),
        ("adapters", &mut catalogue.adapters.iter().map(|row| &row.body)),
        ("equipment", &mut catalogue.equipment.iter().map(|row| &row.body)),
    ];
    for (name, bodies) in bodies {
        let table = At::top(name);
        for (index, body) in bodies.enumerate() {
            look.mass(body.mass.map(value), ITEM, table.index(index).field("mass"));
        }
    }
    let table = At::top("trailers");
    for (index, row) in catalogue.trailers.iter().enumerate() {
        look.length(row.deck_length, DECK, table.index(index).field("deck_length"));
        look.length(row.deck_width, DECK, table.index(index).field("deck_width"));
    }
    let table = At::top("sites");
    for (index, row) in catalogue.sites.iter().enumerate() {
        look.length(row.gate_width, GATE, table.index(index).field("gate_width"));
        look.length(row.gate_height, GATE, table.index(index).field("gate_height"));
    }
}

fn value<T>(stated: Stated<T>) -> T {
    stated.value
}

struct Look<'a> {
    units: Units,
    report: &'a mut Report,
}

impl Look<'_> {
    fn length(&mut self, length: Option<Length>, usual: Usual, at: At<'_>) {
        let units = self.units;
        self.number(length.map(Length::m), usual, |metres| units.shown_length(metres), at);
    }

    fn mass(&mut self, mass: Option<Mass>, usual: Usual, at: At<'_>) {
        let units = self.units;
        self.number(mass.map(Mass::kg), usual, |kilograms| units.shown_mass(kilograms), at);
    }

    fn pressure(&mut self, pressure: Option<Pressure>, at: At<'_>) {
        let units = self.units;
        self.number(pressure.map(Pressure::pa), PRESSURE, |pascals| units.shown_pressure(pascals), at);
    }

    fn flow(&mut self, flow: Option<Flow>, at: At<'_>) {
        let units = self.units;
        self.number(flow.map(Flow::m3_s), FLOW, |it| units.shown_flow(it), at);
    }

    fn power(&mut self, power: Option<Power>, at: At<'_>) {
        let units = self.units;
        self.number(power.map(Power::w), POWER, |watts| units.shown_power(watts), at);
    }

    fn number(&mut self, number: Option<f64>, [least, greatest]: Usual, shown: impl Fn(f64) -> f64, at: At<'_>) {
        // What is not above zero is an error of its own.
        let Some(number) = number.filter(|number| *number > 0.0 && !(least..=greatest).contains(number)) else {
            return;
        };
        let told = |number| shortest((shown(number) * 1e3).round() / 1e3);
        let problem = Problem::new(Code::UnlikelySize, at).with("found", shortest(shown(number)));
        self.report.add(problem.with("least", told(least)).with("greatest", told(greatest)));
    }
}
