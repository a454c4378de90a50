//! Outlines by chance, of blocks that come near each other.

use super::chance::Chance;
use crate::item::{Carrier, PathCommand, Shape, ShapeRole, View};
use crate::quantity::Length;

fn mm(value: f64) -> Length {
    Length::from_mm(value)
}

/// A rectangle in a view, from corner to corner.
fn rectangle(role: ShapeRole, view: View, from: (f64, f64), to: (f64, f64)) -> Shape {
    let corner = |x: f64, z: f64| PathCommand::Line(mm(x), mm(z));
    let path = vec![
        PathCommand::Move(mm(from.0), mm(from.1)),
        corner(to.0, from.1),
        corner(to.0, to.1),
        corner(from.0, to.1),
        PathCommand::Close,
    ];
    Shape { name: "block".to_owned(), view, role, carrier: Carrier::Item, clearance: true, path }
}

/// A block from the side, from corner to corner, and mostly from above, of one of two widths.
pub fn block(chance: &Chance, role: ShapeRole, from: (f64, f64), to: (f64, f64)) -> Vec<Shape> {
    let half = chance.one(&[250.0, 250.0, 500.0]);
    let mut shapes = vec![rectangle(role, View::Side, from, to)];
    if !chance.once_in(4) {
        shapes.push(rectangle(role, View::Plan, (from.0, -half), (to.0, half)));
    }
    shapes
}

/// As [`block`], seldom none.
pub fn outline(chance: &Chance, role: ShapeRole, from: (f64, f64), to: (f64, f64)) -> Vec<Shape> {
    if chance.seldom() { Vec::new() } else { block(chance, role, from, to) }
}

/// A hull, a window that an implement or a seat may reach into, and a bar that may stand in the way or fold into it.
pub fn machine_shapes(chance: &Chance) -> Vec<Shape> {
    let mut shapes = outline(chance, ShapeRole::Body, (0.0, 500.0), (1500.0, 1000.0));
    if chance.once_in(2) {
        let window = chance.one(&[ShapeRole::Glass, ShapeRole::Cab]);
        shapes.extend(block(chance, window, (-150.0, 900.0), (-100.0, 1900.0)));
    }
    if chance.once_in(2) {
        shapes.extend(block(chance, ShapeRole::RollOverBar, (-100.0, 900.0), (-50.0, 2100.0)));
    }
    if chance.once_in(3) {
        shapes.extend(block(chance, ShapeRole::RollOverBarFolded, (-300.0, 1000.0), (-50.0, 1100.0)));
    }
    if !chance.once_in(4) {
        let low = if chance.once_in(2) { 800.0 } else { 1250.0 };
        shapes.extend(block(chance, ShapeRole::Seat, (100.0, low), (500.0, low + 100.0)));
        if chance.once_in(2) {
            shapes.extend(block(chance, ShapeRole::SeatFolded, (250.0, low), (550.0, low + 50.0)));
        }
    }
    shapes
}
