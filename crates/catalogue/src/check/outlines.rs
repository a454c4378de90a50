//! Outlines: closed runs do not cross themselves, shapes hang on links that are there, and the
//! centre of gravity is where the item is.

use fitup_core::build::{ArmAngles, ArmPose, arm_pose};
use fitup_core::item::{Body, Carrier, Catalogue, Machine, Shape, View, flatten};
use fitup_core::quantity::shortest;

use super::centre::is_inside;
use super::crossing::{Budget, Crossing, crossing};
use crate::at::At;
use crate::lower::Units;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;

/// A point of a view, metres.
type Point = (f64, f64);

/// Checks the outlines of every item of a lowered file.
pub fn outlines(catalogue: &Catalogue, units: Units, report: &mut Report) {
    let mut look = Look { units, budget: Budget::new(), report };
    for (index, row) in catalogue.machines.iter().enumerate() {
        look.item(&row.body, At::top("machines").index(index), None, wheels(row));
    }
    for (index, row) in catalogue.frames.iter().enumerate() {
        look.item(&row.body, At::top("frames").index(index), None, Vec::new());
    }
    for (index, row) in catalogue.seats.iter().enumerate() {
        look.item(&row.body, At::top("seats").index(index), None, Vec::new());
    }
    for (index, row) in catalogue.implements.iter().enumerate() {
        let pose = row.arm.as_ref().map(|arm| arm_pose(arm, ArmAngles::transport(arm)));
        look.item(&row.body, At::top("implements").index(index), pose, Vec::new());
    }
    for (index, row) in catalogue.adapters.iter().enumerate() {
        look.item(&row.body, At::top("adapters").index(index), None, Vec::new());
    }
    for (index, row) in catalogue.equipment.iter().enumerate() {
        look.item(&row.body, At::top("equipment").index(index), None, Vec::new());
    }
}

/// Corners of the boxes that hold a machine's wheels, side view.
fn wheels(machine: &Machine) -> Vec<Point> {
    let wheelbase = machine.wheelbase.map(|stated| stated.value.m());
    let axles = [(Some(0.0), &machine.rear), (wheelbase, &machine.front)];
    let boxes = axles.into_iter().filter_map(|(x, axle)| Some((x?, axle.static_loaded_radius?.m())));
    boxes.flat_map(|(x, r)| [(x - r, 0.0), (x + r, 0.0), (x - r, 2.0 * r), (x + r, 2.0 * r)]).collect()
}

struct Look<'a> {
    units: Units,
    budget: Budget,
    report: &'a mut Report,
}

impl Look<'_> {
    fn item(&mut self, body: &Body, at: At<'_>, pose: Option<ArmPose>, wheels: Vec<Point>) {
        if body.shapes.is_empty() {
            return;
        }
        let (mut side, mut plan) = (wheels, Vec::new());
        for (index, shape) in body.shapes.iter().enumerate() {
            let place = at.field("shapes");
            let place = place.index(index);
            let runs = flatten(shape);
            for run in &runs {
                self.run(run, shape, place);
            }
            let drawn = |run: &Vec<Point>| run.iter().any(|point| Some(point) != run.first());
            if !runs.iter().any(drawn) {
                let problem = Problem::new(Code::DrawsNothing, place.field("path"));
                // A path that cannot be read has been reported already.
                if self.report.problems().iter().all(|known| known.path != problem.path) {
                    self.report.add(problem.with("shape", shortened(&shape.name)));
                }
            }
            if shape.carrier != Carrier::Item && pose.is_none() {
                let problem = Problem::new(Code::CarrierWithoutArm, place.field("carrier"));
                let problem = problem.with("shape", shortened(&shape.name));
                self.report.add(problem.with("carrier", carrier(shape.carrier)));
            }
            let link = pose.as_ref().and_then(|pose| pose.link(shape.carrier));
            let points = runs.into_iter().flatten();
            match (shape.view, link) {
                (View::Side, None) => side.extend(points),
                (View::Side, Some(link)) => side.extend(points.map(|(along, up)| {
                    let length = fitup_core::quantity::Length::from_m;
                    let (x, z) = link.point(length(along), length(up));
                    (x.m(), z.m())
                })),
                (View::Plan, None) => plan.extend(points),
                _ => {}
            }
        }
        self.centre(body, at, &side, &plan);
    }

    fn run(&mut self, run: &[Point], shape: &Shape, at: At<'_>) {
        let is_closed = run.len() > 3 && run.first() == run.last();
        if !is_closed {
            return;
        }
        let named = |code| Problem::new(code, at.field("path")).with("shape", shortened(&shape.name));
        match crossing(run, &mut self.budget) {
            Crossing::None => {}
            Crossing::At((x, y)) => {
                let problem = named(Code::OutlineCrosses).with("x", self.shown(x)).with("y", self.shown(y));
                self.report.add(problem);
            }
            Crossing::TooMuch => self.report.add(named(Code::OutlineTooDetailed)),
        }
    }

    fn centre(&mut self, body: &Body, at: At<'_>, side: &[Point], plan: &[Point]) {
        // Of an item with an invented value it cannot be told.
        let Some(centre) = body.centre_of_gravity.filter(|_| !self.report.is_silent(&at.to_string())) else { return };
        let (x, y, z) = (centre.x.m(), centre.y.m(), centre.z.m());
        for (view, point, points) in [("side", (x, z), side), ("plan", (x, y), plan)] {
            if !is_inside(point, points) {
                let problem = Problem::new(Code::CentreOutside, at.field("centre_of_gravity")).with("view", view);
                let problem = problem.with("x", self.shown(point.0)).with("y", self.shown(point.1));
                self.report.add(problem);
            }
        }
    }

    /// A length in the file's unit, to three decimals.
    fn shown(&self, metres: f64) -> String {
        let rounded = (self.units.shown_length(metres) * 1e3).round() / 1e3;
        shortest(if rounded == 0.0 { 0.0 } else { rounded })
    }
}

const fn carrier(carrier: Carrier) -> &'static str {
    match carrier {
        Carrier::Item => "item",
        Carrier::Boom => "boom",
        Carrier::Dipper => "dipper",
        Carrier::Bucket => "bucket",
    }
}
