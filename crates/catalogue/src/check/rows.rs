//! The figures of each table's own fields.

use fitup_core::quantity::shortest;

use super::figures::{above_zero, any_value, not_below_zero, price, share};
use super::ranges::{inside, upright, upright_whole};
use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::wire::CatalogueFile;
use crate::wire::adapter::Adapter;
use crate::wire::body::{Body, Serials, Years};
use crate::wire::equipment::{AxleChange, Changes};
use crate::wire::implement::{ArmLink, DiggingArm, HydraulicNeed, Implement};
use crate::wire::machine::{Axle, FrontAxle, HydraulicSupply, Machine};
use crate::wire::seat::{FrontSeatEffect, Seat};
use crate::wire::site::Site;
use crate::wire::trailer::{Ramp, Trailer};

/// Applies a check to several fields of a record.
macro_rules! fields {
    ($check:ident($record:expr, $at:expr, $report:expr): $($field:ident),+) => {
        $( $check($record.$field, $at.field(stringify!($field)), $report); )+
    };
}

/// Reports text that is empty or all blanks.
pub fn not_blank(text: &str, at: At<'_>, report: &mut Report) {
    if text.trim().is_empty() {
        report.add(Problem::new(Code::BlankText, at));
    }
}

/// Reports a record of optional fields that has none of them.
pub fn not_empty<T: PartialEq>(record: Option<&T>, empty: &T, at: At<'_>, report: &mut Report) {
    if record == Some(empty) {
        report.add(Problem::new(Code::EmptyRecord, at));
    }
}

/// Checks the header.
pub fn header(file: &CatalogueFile, report: &mut Report) {
    not_blank(&file.name, At::top("name"), report);
}

/// Checks what every item has, ports and shapes aside.
pub fn body(at: At<'_>, body: Body<'_>, report: &mut Report) {
    not_blank(body.label, at.field("label"), report);
    not_empty(body.years.as_ref(), &Years::default(), at.field("years"), report);
    not_empty(body.serials.as_ref(), &Serials::default(), at.field("serials"), report);
    if let Some(years) = body.years {
        upright_whole(years.first, years.last, at.field("years"), report);
    }
    if let Some(serials) = body.serials {
        upright_whole(serials.first, serials.last, at.field("serials"), report);
    }
    price(body.price, at.field("price"), report);
    above_zero(body.mass, at.field("mass"), report);
}

/// Checks the fields that each table has for itself.
pub fn own_fields(file: &CatalogueFile, report: &mut Report) {
    macro_rules! tables {
        ($($table:ident $check:ident),+) => { $(
            let table = At::top(stringify!($table));
            for (index, row) in file.$table.iter().enumerate() {
                $check(row, table.index(index), report);
            }
        )+ };
    }
    tables!(machines machine, seats seat, implements implement, adapters adapter, trailers trailer, sites site);
    let parts = At::top("parts");
    for (index, row) in file.parts.iter().enumerate() {
        not_blank(&row.name, parts.index(index).field("name"), report);
    }
    let lists = At::top("parts_lists");
    for (index, row) in file.parts_lists.iter().enumerate() {
        if row.quantity == 0 {
            report.add(Problem::new(Code::NotPositive, lists.index(index).field("quantity")).with("found", 0));
        }
    }
}

fn machine(row: &Machine, at: At<'_>, report: &mut Report) {
    fields!(above_zero(row, at, report): wheelbase, centre_of_gravity_height, turning_radius);
    not_empty(row.rear.as_ref(), &Axle::default(), at.field("rear"), report);
    not_empty(row.front.as_ref(), &Axle::default(), at.field("front"), report);
    not_empty(row.hydraulics.as_ref(), &HydraulicSupply::default(), at.field("hydraulics"), report);
    if let Some(rear) = &row.rear {
        axle(rear, at.field("rear"), report);
    }
    if let Some(front) = &row.front {
        axle(front, at.field("front"), report);
    }
    if let Some(FrontAxle::Oscillating(pivot)) = row.front_axle {
        let place = at.field("front_axle");
        above_zero(pivot.pivot_height, place.field("oscillating").field("pivot_height"), report);
    }
    if let Some(bar) = row.roll_over_bar {
        let place = at.field("roll_over_bar");
        fields!(above_zero(bar, place, report): height_up, height_folded);
        let (folded, up) = (bar.height_folded.map(|it| it.0), Some(bar.height_up.0));
        upright(folded, up, place, report);
    }
    if let Some(seat) = row.operator_seat {
        let place = at.field("operator_seat");
        fields!(above_zero(seat, place, report): index_z);
        fields!(not_below_zero(seat, place, report): slides_forward);
    }
    if let Some(supply) = row.hydraulics {
        fields!(above_zero(supply, at.field("hydraulics"), report): flow, relief);
    }
}

fn axle(axle: &Axle, at: At<'_>, report: &mut Report) {
    fields!(above_zero(axle, at, report): track, tyre_width, static_loaded_radius, overall_radius);
    fields!(above_zero(axle, at, report): rated, tyre_rated, bare_load);
    // A loaded tyre is never higher than the same tyre unloaded.
    let (loaded, unloaded) = (axle.static_loaded_radius.map(|it| it.0), axle.overall_radius.map(|it| it.0));
    upright(loaded, unloaded, at.field("overall_radius"), report);
}

/// Checks what a piece of equipment changes at an axle; a track may become narrower.
pub fn axle_change(change: &AxleChange, at: At<'_>, report: &mut Report) {
    fields!(above_zero(change, at, report): tyre_width, static_loaded_radius, overall_radius, tyre_rated);
    let (loaded, unloaded) = (change.static_loaded_radius.map(|it| it.0), change.overall_radius.map(|it| it.0));
    upright(loaded, unloaded, at.field("overall_radius"), report);
}

/// Checks what a piece of equipment changes in hitch and hydraulics.
pub fn lift_and_supply(changes: Changes, at: At<'_>, report: &mut Report) {
    fields!(above_zero(changes, at, report): lift);
    if let Some(supply) = changes.hydraulics {
        fields!(above_zero(supply, at.field("hydraulics"), report): flow, relief);
    }
}

fn seat(row: &Seat, at: At<'_>, report: &mut Report) {
    fields!(above_zero(row, at, report): swivel_radius, greatest_reach);
    fields!(not_below_zero(row, at, report): least_room);
    upright(row.least_room.map(|it| it.0), row.greatest_reach.map(|it| it.0), at.field("greatest_reach"), report);
    if let FrontSeatEffect::SlidesForward(by) = row.front_seat {
        above_zero(by, at.field("front_seat").field("slides_forward"), report);
    }
}

fn implement(row: &Implement, at: At<'_>, report: &mut Report) {
    fields!(above_zero(row, at, report): power_least, power_most, transport_width);
    upright(row.power_least.map(|it| it.0), row.power_most.map(|it| it.0), at.field("power_most"), report);
    if let Some(need) = row.hydraulics {
        hydraulics(need, at.field("hydraulics"), report);
    }
    if let Some(it) = &row.arm {
        arm(it, at.field("arm"), report);
    }
}

fn hydraulics(need: HydraulicNeed, at: At<'_>, report: &mut Report) {
    fields!(above_zero(need, at, report): flow_min, flow_max, pressure_min, pressure_max);
    upright(need.flow_min.map(|it| it.0), need.flow_max.map(|it| it.0), at.field("flow_max"), report);
    upright(need.pressure_min.map(|it| it.0), need.pressure_max.map(|it| it.0), at.field("pressure_max"), report);
}

fn arm(arm: &DiggingArm, at: At<'_>, report: &mut Report) {
    link(&arm.boom, at.field("boom"), report);
    link(&arm.dipper, at.field("dipper"), report);
    link(&arm.bucket, at.field("bucket"), report);
    fields!(not_below_zero(arm, at, report): swing);
    fields!(above_zero(arm, at, report): lift_at_full_reach);
    if let Some(stabilisers) = arm.stabilisers {
        fields!(above_zero(stabilisers, at.field("stabilisers"), report): spread, transport_width);
    }
}

fn link(link: &ArmLink, at: At<'_>, report: &mut Report) {
    fields!(above_zero(link, at, report): length, mass);
    fields!(any_value(link, at, report): centre);
    upright(Some(link.least.0), Some(link.greatest.0), at.field("greatest"), report);
    inside(link.transport.0, link.least.0, link.greatest.0, at.field("transport"), report);
}

fn adapter(row: &Adapter, at: At<'_>, report: &mut Report) {
    fields!(not_below_zero(row, at, report): hours);
    let Some(sleeve) = row.sleeve else { return };
    let place = at.field("sleeve");
    fields!(above_zero(sleeve, place, report): outer, inner);
    if sleeve.inner >= sleeve.outer {
        let problem = Problem::new(Code::SleeveInsideOut, place).with("inner", shortest(sleeve.inner.0));
        report.add(problem.with("outer", shortest(sleeve.outer.0)));
    }
    if sleeve.count == 0 {
        report.add(Problem::new(Code::NotPositive, place.field("count")).with("found", 0));
    }
}

fn trailer(row: &Trailer, at: At<'_>, report: &mut Report) {
    not_blank(&row.label, at.field("label"), report);
    fields!(above_zero(row, at, report): deck_length, deck_width, deck_height, beaver_length, beaver_angle, coupling);
    fields!(above_zero(row, at, report): empty_mass, rated_total, rated_axle, rated_nose);
    fields!(share(row, at, report): nose_least, nose_most);
    upright(row.nose_least.map(|it| it.0), row.nose_most.map(|it| it.0), at.field("nose_most"), report);
    match row.ramp {
        Some(Ramp::Length(length)) => above_zero(length, at.field("ramp").field("length"), report),
        Some(Ramp::Angle(angle)) => above_zero(angle, at.field("ramp").field("angle"), report),
        None => {}
    }
}

fn site(row: &Site, at: At<'_>, report: &mut Report) {
    not_blank(&row.label, at.field("label"), report);
    fields!(above_zero(row, at, report): gate_width, gate_height, path_width, greatest_axle_load);
}
