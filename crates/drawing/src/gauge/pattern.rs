//! Holes in a plate, as they are stated, and pairs of plates.

use fitup_core::item::{BoltPattern, End, Port, span_of};
use fitup_core::plane::Point;

use super::detail::{Detail, HOLE, Piece, SOLID};
use crate::sheet::Extent;

/// The picture of a dimension; `None` without holes where it is one of them.
pub(super) fn detail(pattern: &BoltPattern, port: &Port, dimension: &str) -> Option<Detail> {
    if dimension == "pair-width" {
        return Some(pair(port.end));
    }
    let holes: Vec<(Point, f64)> = pattern
        .holes
        .iter()
        .map(|hole| (Point::new(hole.u.value.m(), hole.v.value.m()), hole.diameter.value.m()))
        .collect();
    let (&(first, size), rest) = holes.split_first()?;
    let mut whole = Extent::NONE;
    whole.take(first);
    for &(at, _) in rest {
        whole.take(at);
    }
    let largest = holes.iter().map(|&(_, diameter)| diameter).fold(size, f64::max);
    let edge = pattern.edge.map_or(largest * 1.7, |edge| edge.value.m()).clamp(largest, largest * 4.0);
    let mut detail = Detail::default();
    let (low, high) =
        (Point::new(whole.left - edge, whole.low - edge), Point::new(whole.right + edge, whole.high + edge));
    detail.block(SOLID, low, high);
    for (index, &(at, diameter)) in holes.iter().enumerate() {
        detail.round(HOLE, at, diameter);
        // Beside its hole, on the side away from the middle of the plate.
        let out = if at.x >= f64::midpoint(whole.left, whole.right) { 1.0 } else { -1.0 };
        let beside = at + Point::new(out * (diameter / 2.0 + largest * 0.6), 0.0);
        detail.pieces.push(Piece::Number(beside, (index + 1).to_string()));
    }
    let hole = |name: &str| {
        let (number, what) = name.strip_prefix("hole-")?.split_once('-')?;
        holes.get(number.parse::<usize>().ok()?.checked_sub(1)?).copied().filter(|_| what == "diameter")
    };
    if let Some((_, [a, b])) = span_of(dimension) {
        detail.between(holes.get(a)?.0, holes.get(b)?.0, 0.0);
    } else if let Some((at, diameter)) = hole(dimension) {
        detail.across(at, diameter);
    } else if dimension == "edge" {
        let lowest = holes.iter().min_by(|a, b| a.0.y.total_cmp(&b.0.y))?.0;
        detail.between(lowest, Point::new(lowest.x, low.y), 0.0);
    } else if dimension == "bolt" {
        detail.across(first, size * 0.92);
    }
    Some(detail)
}

/// A pair of side plates, from behind: over the machine's two faces, between the frame's two plates.
fn pair(end: End) -> Detail {
    let mut detail = Detail::default();
    let (half, thick, high) = (0.16, 0.016, 0.1);
    let inner = if end == End::Carrier { half - thick } else { half };
    for way in [-1.0, 1.0] {
        detail.block(SOLID, Point::new(way * inner, -high), Point::new(way * (inner + thick), high));
    }
    let axle = 0.045;
    detail.block(HOLE, Point::new(-half + thick, -axle), Point::new(half - thick, axle));
    detail.between(Point::new(-half, high), Point::new(half, high), 1.7);
    detail
}

#[cfg(test)]
mod tests {
    use fitup_yard::{FRAME, Yard};

    use super::*;

    #[test]
    fn the_distance_of_two_holes_goes_from_centre_to_centre() {
        let mut yard = Yard::new();
        let port = yard.port(FRAME, "axle plate").clone();
        let pattern = port.kind.pattern().expect("it has holes").clone();
        let name = port.spans().first().expect("it has more than one hole").clone();
        let taken = detail(&pattern, &port, &name).and_then(|detail| detail.taken).expect("it is taken");
        let stated = port.stated(&name).expect("both holes have a place").value.m();
        assert!((taken.from.distance(taken.to) - stated).abs() < 1e-9);
        assert!(detail(&BoltPattern::default(), &port, &name).is_none(), "without holes there is nothing to show");
    }
}
