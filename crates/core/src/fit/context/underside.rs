//! The underside of the stack as the ground meets it.

use super::Context;
use crate::item::ItemRef;
use crate::plane::Point;
use crate::quantity::Length;

/// What of the stack, or of the bare machine alone, the ground may come against: items and edges, (x, z) in the
/// machine's axes, the roll-over bar as the build leaves it.
pub(crate) fn underside(context: &Context, bare: bool) -> (Vec<ItemRef>, Vec<[Point; 2]>) {
    let (mut items, mut edges) = (Vec::new(), Vec::new());
    for (item, placement) in context.stand(bare) {
        let move_there = |p: Point| {
            let (x, z) = placement.side(Length::from_m(p.x), Length::from_m(p.y));
            Point::new(x.m(), z.m())
        };
        for edge in context.desk.low_edges(item) {
            if edge.role.is_some_and(|role| !context.shows(item, role, bare)) {
                continue;
            }
            items.push(item);
            edges.push(edge.ends.map(move_there));
        }
    }
    (items, edges)
}
