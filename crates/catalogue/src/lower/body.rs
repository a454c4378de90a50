//! What every item has.

use std::collections::BTreeMap;

use fitup_core::item as core;
use fitup_core::item::PartsListRow;
use fitup_core::quantity::shortest;

use super::path::PathFault;
use super::{Lower, Units, path};
use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
use crate::wire::body::{Body, Stock};
use crate::wire::shape::Shape;

/// Parts list rows by item id.
pub type PartsLists = BTreeMap<String, Vec<PartsListRow>>;

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
        serials: row.serials.lower(units).unwrap_or_default(),
        note: row.note.to_owned(),
        price: row.price.lower(units),
        stock: match row.stock {
            None => core::Stock::Unsaid,
            Some(Stock::New(count)) => core::Stock::New(count),
            Some(Stock::Used(count)) => core::Stock::Used(count),
            Some(Stock::Discontinued) => core::Stock::Discontinued,
        },
        mass: row.mass.lower(units),
        centre_of_gravity: row.centre_of_gravity.lower(units),
        shapes: shapes.collect(),
        underside,
        ports: row.ports.iter().map(|port| port.lower(units)).collect(),
        parts_list: core::PartsList { rows: lists.remove(row.id).unwrap_or_default() },
        listed_with: row.listed_with.to_vec(),
    }
}

fn shape(shape: &Shape, at: At<'_>, units: Units, report: &mut Report) -> core::Shape {
    let steps = path::steps(&shape.path, units).unwrap_or_else(|fault| {
        report.add(unreadable(fault, &shape.path, at.field("path")));
        Vec::new()
    });
    core::Shape {
        name: shape.name.clone(),
        view: shape.view.lower(units),
        role: shape.role.lower(units),
        carrier: shape.carrier.lower(units),
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
