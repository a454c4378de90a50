//! Seats: what folds is outlined folded, and an own seat that is described is there.

use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::wire::CatalogueFile;
use crate::wire::seat::SeatMoves;
use crate::wire::shape::{Shape, ShapeRole, View};

/// Checks the seats of machines, arrangements and implements.
pub fn seats(file: &CatalogueFile, report: &mut Report) {
    let table = At::top("machines");
    for (index, row) in file.machines.iter().enumerate() {
        let at = table.index(index);
        let at = at.field("operator_seat");
        let folds = row.operator_seat.is_some_and(|seat| seat.flips_forward);
        outlined(&row.shapes, folds, at.field("flips_forward"), report);
    }
    let table = At::top("seats");
    for (index, row) in file.seats.iter().enumerate() {
        let at = table.index(index);
        let at = at.field("moves");
        outlined(&row.shapes, row.moves.folds, at.field("folds"), report);
    }
    let table = At::top("implements");
    for (index, row) in file.implements.iter().enumerate() {
        let at = table.index(index);
        let moves = at.field("own_seat_moves");
        outlined(&row.shapes, row.own_seat_moves.folds, moves.field("folds"), report);
        if row.own_seat != Some(true) {
            for (is_stated, field) in [
                (row.own_seat_index.is_some(), "own_seat_index"),
                (row.own_seat_moves != SeatMoves::default(), "own_seat_moves"),
            ] {
                if is_stated {
                    report.add(Problem::new(Code::OwnSeatNotThere, at.field(field)));
                }
            }
        }
    }
}

/// A seat that is drawn from the side is drawn folded if it folds, and only then.
fn outlined(shapes: &[Shape], folds: bool, at: At<'_>, report: &mut Report) {
    let draws = |role| shapes.iter().any(|shape| shape.view == View::Side && shape.role == role);
    match (folds, draws(ShapeRole::Seat), draws(ShapeRole::SeatFolded)) {
        (true, true, false) => report.add(Problem::new(Code::FoldedSeatNotOutlined, at)),
        (false, _, true) => report.add(Problem::new(Code::FoldedSeatNotStated, at)),
        _ => {}
    }
}
