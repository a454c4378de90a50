//! What every item has.

use fitup_core::item as core;
use fitup_core::item::PartsListRow;
use fitup_core::ordered::Map;
use fitup_core::quantity::shortest;

use super::path::PathFault;
use super::units::{self, Units};
use super::{path, port};
use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
use crate::wire::body::{Body, Point, Serials, Stock};
use crate::wire::shape::{Carrier, Shape, ShapeRole, View};

/// Parts list rows by item id.
pub type PartsLists = Map<String, Vec<PartsListRow>>;

/// An item's common fields; `at` is the place of its row.
pub fn body(row: Body<'_>, at: At<'_>, units: Units, lists: &mut PartsLists, report: &mut Report) -> core::Body {
    let underside = path::polylines(row.underside, units).unwrap_or_else(|fault| {
        report.add(unreadable(fault, row.underside, at.field("underside")));
        Vec::new()
    });
    let place = at.field("shapes");
    let shapes = row.shapes.iter().enumerate().map(|(i, one)| shape(one, place.index(i), units, report));
    core::Body {
        id: row.id.to_owned(),
        label: row.label.to_owned(),
        series: row.series.to_owned(),
        years: row.years.map_or((None, None), |years| (years.first, years.last)),
        serials: serials(row.serials),
        note: row.note.to_owned(),
        price: row.price.map(units::money),
        stock: match row.stock {
            None => core::Stock::Unsaid,
            Some(Stock::New(count)) => core::Stock::New(count),
            Some(Stock::Used(count)) => core::Stock::Used(count),
            Some(Stock::Discontinued) => core::Stock::Discontinued,
        },
        mass: row.mass.map(|mass| units.stated_mass(mass)),
        centre_of_gravity: row.centre_of_gravity.map(|p| point(p, units)),
        shapes: shapes.collect(),
        underside,
        ports: row.ports.iter().map(|one| port::port(one, units)).collect(),
        parts_list: core::PartsList { rows: lists.remove(row.id).unwrap_or_default() },
        listed_with: row.listed_with.to_vec(),
    }
}

/// A range of serial numbers; nothing said is open.
pub fn serials(range: Option<Serials>) -> core::Serials {
    range.map_or(core::Serials::default(), |range| core::Serials { first: range.first, last: range.last })
}

/// A point.
pub fn point(p: Point, units: Units) -> core::Point3 {
    core::Point3 { x: units.length(p.x), y: units.length(p.y), z: units.length(p.z) }
}

fn shape(shape: &Shape, at: At<'_>, units: Units, report: &mut Report) -> core::Shape {
    let steps = path::steps(&shape.path, units).unwrap_or_else(|fault| {
        report.add(unreadable(fault, &shape.path, at.field("path")));
        Vec::new()
    });
    core::Shape {
        name: shape.name.clone(),
        view: match shape.view {
            View::Side => core::View::Side,
            View::Plan => core::View::Plan,
            View::Rear => core::View::Rear,
        },
        role: role(shape.role),
        carrier: match shape.carrier {
            Carrier::Item => core::Carrier::Item,
            Carrier::Boom => core::Carrier::Boom,
            Carrier::Dipper => core::Carrier::Dipper,
            Carrier::Bucket => core::Carrier::Bucket,
        },
        clearance: shape.clearance.unwrap_or(true),
        path: steps,
    }
}

fn unreadable(fault: PathFault, data: &str, at: At<'_>) -> Problem {
    match fault {
        PathFault::Unreadable => Problem::new(Code::PathUnreadable, at).with("found", shortened(data)),
        PathFault::OutOfRange => Problem::new(Code::PathOutOfRange, at).with("greatest", shortest(path::GREATEST)),
        PathFault::Curved => Problem::new(Code::PathCurved, at),
    }
}

const fn role(role: ShapeRole) -> core::ShapeRole {
    match role {
        ShapeRole::Body => core::ShapeRole::Body,
        ShapeRole::Bonnet => core::ShapeRole::Bonnet,
        ShapeRole::Detail => core::ShapeRole::Detail,
        ShapeRole::Glass => core::ShapeRole::Glass,
        ShapeRole::Cab => core::ShapeRole::Cab,
        ShapeRole::RollOverBar => core::ShapeRole::RollOverBar,
        ShapeRole::RollOverBarFolded => core::ShapeRole::RollOverBarFolded,
        ShapeRole::Tyre => core::ShapeRole::Tyre,
        ShapeRole::Seat => core::ShapeRole::Seat,
        ShapeRole::Control => core::ShapeRole::Control,
        ShapeRole::FrameRail => core::ShapeRole::FrameRail,
        ShapeRole::Rack => core::ShapeRole::Rack,
        ShapeRole::Hitch => core::ShapeRole::Hitch,
        ShapeRole::Boom => core::ShapeRole::Boom,
        ShapeRole::Dipper => core::ShapeRole::Dipper,
        ShapeRole::Bucket => core::ShapeRole::Bucket,
        ShapeRole::Cylinder => core::ShapeRole::Cylinder,
        ShapeRole::Stabiliser => core::ShapeRole::Stabiliser,
        ShapeRole::Console => core::ShapeRole::Console,
        ShapeRole::Tool => core::ShapeRole::Tool,
        ShapeRole::Guard => core::ShapeRole::Guard,
        ShapeRole::Weight => core::ShapeRole::Weight,
        ShapeRole::Adapter => core::ShapeRole::Adapter,
    }
}
